use super::*;

const TWO: &str = r#""1": {"at": "right wing", "ball": true}, "2": {"at": "left wing"}"#;

#[test]
fn a_chest_pass_across_the_court_is_too_long_and_a_skip_is_made_for_it() {
    let throw = |kind: &str, to: u8| {
        let players = format!(r#"{TWO}, "3": {{"at": "right slot"}}"#);
        found(
            &players,
            &format!(r#"{{"who": 1, "do": "pass", "kind": "{kind}", "to": {to}}}"#),
        )
    };
    assert_eq!(numbers(&has(&throw("chest", 2), "long-pass")), [1, 2]);
    has_no(&throw("skip", 2), "long-pass");
    has_no(&throw("chest", 3), "long-pass");
}

#[test]
fn a_lob_from_behind_the_board_hits_it_and_a_bounce_pass_does_not() {
    let throw = |kind: &str| {
        found(
            r#""1": {"at": [0.3, -1.4], "ball": true}, "2": {"at": [0.3, 1.2]}"#,
            &format!(r#"{{"who": 1, "do": "pass", "kind": "{kind}", "to": 2}}"#),
        )
    };
    assert_eq!(numbers(&has(&throw("lob"), "pass-through-board")), [1, 2]);
    has_no(&throw("bounce"), "pass-through-board");
}

#[test]
fn a_ball_that_never_changes_sides_lets_the_help_stand() {
    let hold = |at: &str| {
        found(
            &format!(r#""1": {{"at": "{at}", "ball": true}}, "2": {{"at": "left wing"}}"#),
            r#"{"who": 1, "do": "hold", "takes": 9}, {"who": 1, "do": "shot"}"#,
        )
    };
    has(&hold("right wing"), "one-side");
    has(&hold("left corner"), "one-side");
    has_no(&hold("top"), "one-side");
}
