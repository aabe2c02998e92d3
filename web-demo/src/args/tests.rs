use super::*;

fn read(line: &str) -> Result<Request, String> {
    parse(line.split_whitespace().map(OsString::from))
}

#[test]
fn options_may_stand_before_or_after_the_file() {
    assert_eq!(read("time --json a.json"), read("time a.json --json"));
    assert!(matches!(
        read("time - --json").unwrap().command,
        Command::Time {
            file: Source::Standard,
            json: true
        }
    ));
}

#[test]
fn an_option_of_another_command_is_refused_by_name() {
    assert_eq!(
        read("time a.json --fps 60").unwrap_err(),
        "backcut time does not take --fps"
    );
    assert_eq!(
        read("schema --court nba").unwrap_err(),
        "backcut schema does not take --court"
    );
}

#[test]
fn a_coverage_may_be_called_by_its_other_name() {
    assert_eq!(
        read("looks a.json --coverage hedge"),
        read("looks a.json --coverage show")
    );
    assert!(matches!(
        read("check a.json --coverage hedge").unwrap().command,
        Command::Check {
            coverage: Some(Coverage::Show),
            ..
        }
    ));
    assert_eq!(read("looks a.json"), read("looks a.json --coverage all"));
}

#[test]
fn a_picture_needs_exactly_one_instant() {
    assert!(read("draw a.json").is_err());
    assert!(read("draw a.json --at 1 --beat 1").is_err());
    assert!(matches!(
        read("draw a.json --beat 2 -o x.svg").unwrap().command,
        Command::Draw(Picture {
            moment: Moment::Beat(2),
            ..
        })
    ));
}

#[test]
fn numbers_out_of_range_are_refused() {
    for line in [
        "frames a.json --fps 0",
        "frames a.json --fps NaN",
        "frames a.json --fps inf",
        "frames a.json --fps 1e999",
        "draw a.json --at -1",
        "draw a.json --beat 0",
        "serve . --port 70000",
    ] {
        assert!(read(line).is_err(), "{line}");
    }
}

#[test]
fn words_too_many_and_too_few_are_refused() {
    assert_eq!(read("").unwrap_err(), "no command; try `backcut help`");
    assert_eq!(
        read("time").unwrap_err(),
        "backcut time: the file is missing"
    );
    assert_eq!(
        read("time a.json b.json").unwrap_err(),
        "backcut time: one too many: b.json"
    );
    assert!(read("show -").is_err());
}

#[test]
fn a_court_or_level_that_does_not_exist_is_refused() {
    assert!(read("time a.json --court moon").is_err());
    assert!(read("time a.json --level hero").is_err());
    assert!(read("looks a.json --coverage zone").is_err());
    assert!(read("frames a.json --fps 60 --coverage all").is_err());
    assert!(read("check a.json --coverage all").is_err());
    assert_eq!(
        read("time a.json --level u14 --mirror")
            .unwrap()
            .overrides
            .level,
        Some(Level::U14)
    );
}
