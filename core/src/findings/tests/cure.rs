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

#[test]
fn every_cure_against_five_holds_under_the_same_coverage() {
    use crate::set::Coverage;
    let sets = [
        include_str!("../../../../web-demo/sets/gangway.json"),
        include_str!("../../../../web-demo/sets/turnstile.json"),
        include_str!("../../../../web-demo/sets/slipway.json"),
    ];
    let settings = Settings::default();
    for (set, coverage) in sets
        .into_iter()
        .zip([Coverage::Under, Coverage::Chase, Coverage::Over])
    {
        let play = open(set);
        let mut shown = 0;
        for finding in play.findings_against(&play.defence(coverage), &settings) {
            let Some(cure) = &finding.cure else { continue };
            shown += 1;
            let again = Play::of(cure.apply(play.set()), &Options::default()).unwrap();
            let left = check_against(
                again.set(),
                again.court(),
                again.timeline(),
                &again.defence(coverage),
                &settings,
            );
            assert!(!left.iter().any(|f| f.is_like(&finding)), "{finding:?}");
        }
        assert!(shown > 0, "{set}");
    }
}

/// The cure of the first finding of that code, in words.
#[track_caller]
fn told(code: &str, players: &str, actions: &str) -> String {
    let (play, found) = cured(&text("", players, actions));
    play.cure(&has(&found, code)).unwrap_or_default()
}

#[test]
fn a_holder_who_stands_holds_for_less() {
    let cure = told(
        "holder-stands",
        r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}"#,
        r#"{"who": 1, "do": "hold", "takes": 5.5}, {"who": 1, "do": "pass", "to": 2}"#,
    );
    assert!(cure.starts_with("Let 1 hold for 4."), "{cure}");
    assert!(cure.contains("Saves"), "{cure}");
}

#[test]
fn a_statue_goes_to_a_corner() {
    let cure = told(
        "statue",
        r#""1": {"at": "top", "ball": true}, "5": {"at": "right wing"}"#,
        r#"{"who": 1, "do": "hold", "takes": 6}, {"who": 1, "do": "shot"}"#,
    );
    assert!(cure.starts_with("Start 5 in the right corner."), "{cure}");
}

#[test]
fn a_dribble_over_the_half_court_line_ends_before_it() {
    let cure = told(
        "backcourt",
        r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}"#,
        r#"{"who": 1, "do": "dribble", "to": [0, 12.4]}"#,
    );
    assert!(cure.starts_with("Move the end of 1’s way 0."), "{cure}");
}

#[test]
fn who_is_in_the_way_of_a_backdoor_starts_elsewhere() {
    let cure = told(
        "side-not-emptied",
        r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}, "3": {"at": "right wing"},
            "4": {"at": "left block"}, "5": {"at": "right corner"}"#,
        r#"{"who": 2, "do": "cut", "kind": "backdoor", "to": "rim"},
           {"who": 1, "do": "pass", "kind": "bounce", "to": 2}, {"who": 2, "do": "shot", "kind": "layup"}"#,
    );
    assert!(cure.starts_with("Start 4 "), "{cure}");
}

#[test]
fn a_set_that_is_too_long_loses_what_it_waits() {
    let cure = told(
        "shot-clock",
        r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}"#,
        r#"{"who": 1, "do": "hold", "takes": 25}, {"who": 1, "do": "shot"}"#,
    );
    assert!(cure.starts_with("Let 1 hold for "), "{cure}");
}
