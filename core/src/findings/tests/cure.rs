use super::*;

const LATE: &str = r#"{"id": "pin", "who": 4, "do": "screen", "kind": "pin-down", "for": 2, "at": [-4.9, 2.6],
      "after": {"id": "cut", "edge": "start", "lag": 0.5}},
    {"id": "cut", "who": 2, "do": "cut", "off": 4, "to": "left slot", "free": true}"#;
const PLAYERS: &str =
    r#""1": {"at": "top", "ball": true}, "2": {"at": "left corner"}, "4": {"at": "left elbow"}"#;

fn cured(text: &str) -> (Play, Vec<Finding>) {
    let play = open(text);
    let found = play.findings(&Settings::default());
    (play, found)
}

#[test]
fn every_cure_that_is_shown_cures() {
    let sets = [
        text("", PLAYERS, LATE),
        text(
            "",
            r#""1": {"at": "top", "ball": true}, "5": {"at": "mid paint"}"#,
            r#"{"who": 1, "do": "dribble", "to": "left wing", "takes": 4}"#,
        ),
        text(
            "",
            r#""1": {"at": "top", "ball": true}, "3": {"at": [5, 0.5]}, "4": {"at": [-5, 0.5]}"#,
            r#"{"id": "a", "who": 3, "do": "cut", "to": [-5, 0.5], "pace": "sprint", "free": true},
               {"who": 4, "do": "cut", "to": [5, 0.5], "pace": "sprint", "free": true, "with": {"id": "a", "edge": "start"}}"#,
        ),
    ];
    for set in &sets {
        let (play, found) = cured(set);
        let mut shown = 0;
        for finding in &found {
            let Some(cure) = &finding.cure else { continue };
            shown += 1;
            let again = Play::of(cure.apply(play.set()), &Options::default()).unwrap();
            let left = judge(&again);
            assert!(!left.iter().any(|f| f.is_like(finding)), "{finding:?}");
            assert!(play.cure(finding).is_some());
        }
        assert!(shown > 0, "{found:?}");
    }
}

#[test]
fn a_late_screen_is_cured_by_waiting_and_says_its_price() {
    let (play, found) = cured(&text("", PLAYERS, LATE));
    let late = has(&found, "screen-late");
    let told = play.finding(&late);
    assert!(told.starts_with("4 arrives 0."), "{told}");
    assert!(told.ends_with("late: 2 is already past."), "{told}");
    let cure = play.cure(&late).unwrap();
    assert!(cure.starts_with("Let 2 wait for 4."), "{cure}");
}

#[test]
fn an_edit_of_what_is_not_there_changes_nothing() {
    let play = open(&text("", PLAYERS, LATE));
    let nowhere = crate::set::ActionId { beat: 9, action: 9 };
    let edits = [
        Edit::Wait { action: nowhere },
        Edit::Pace {
            action: nowhere,
            pace: crate::athlete::Pace::Walk,
        },
    ];
    for edit in edits {
        assert_eq!(edit.apply(play.set()), *play.set());
    }
}
