use super::*;

const FIVE: &str = r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}, "3": {"at": "right wing"},
    "4": {"at": "left corner"}, "5": {"at": "right corner"}"#;

#[test]
fn two_who_meet_on_the_run_collide_and_a_screen_is_no_collision() {
    let cross = |lag: f64| {
        found(
            r#""1": {"at": "top", "ball": true}, "3": {"at": [5, 0.5]}, "4": {"at": [-5, 0.5]}"#,
            &format!(
                r#"{{"id": "a", "who": 3, "do": "cut", "to": [-5, 0.5], "pace": "sprint", "free": true}},
                   {{"who": 4, "do": "cut", "to": [5, 0.5], "pace": "sprint", "free": true,
                     "with": {{"id": "a", "edge": "start", "lag": {lag}}}}}"#
            ),
        )
    };
    let hit = has(&cross(0.0), "collision");
    assert!(
        matches!(hit.what, What::Collision { under_ring: true, closing, .. } if closing > 6.0),
        "{hit:?}"
    );
    assert_eq!(hit.severity, Severity::Violation);
    let apart = found(
        r#""1": {"at": "top", "ball": true}, "3": {"at": [5, 0.3]}, "4": {"at": [-5, 1.3]}"#,
        r#"{"who": 3, "do": "cut", "to": [-5, 0.3], "pace": "sprint"},
           {"who": 4, "do": "cut", "to": [5, 1.3], "pace": "sprint"}"#,
    );
    has_no(&apart, "collision");
}

#[test]
fn neighbours_too_near_are_a_crowd_and_screeners_are_not() {
    let fill = |to: &str| {
        found(
            FIVE,
            &format!(
                r#"{{"id": "fill", "who": 1, "do": "dribble", "to": {to}}}, {{"who": 1, "do": "hold", "takes": 2}}"#
            ),
        )
    };
    assert_eq!(numbers(&has(&fill("[3.9, 5.8]"), "crowding")), [1, 3]);
    has_no(&fill(r#""right slot""#), "crowding");
    let screen = found(
        FIVE,
        r#"{"who": 4, "do": "screen", "kind": "pin-down", "for": 2, "at": [-5.0, 4.6]},
           {"who": 2, "do": "cut", "off": 4, "to": "left slot"}"#,
    );
    has_no(&screen, "crowding");
}

#[test]
fn a_set_ends_with_a_corner_filled_and_somebody_back() {
    let good = found(
        FIVE,
        r#"{"who": 1, "do": "pass", "to": 2}, {"who": 2, "do": "shot"}"#,
    );
    has_no(&good, "corners-empty");
    has_no(&good, "no-safety");
    let empty = found(
        FIVE,
        r#"{"who": 4, "do": "cut", "to": "left block"}, {"who": 5, "do": "cut", "to": "right block"},
           {"who": 1, "do": "dribble", "to": "nail"}, {"who": 1, "do": "shot"}"#,
    );
    has(&empty, "corners-empty");
    has(&empty, "no-safety");
}

#[test]
fn a_backdoor_goes_into_an_empty_side() {
    let actions = r#"{"who": 2, "do": "cut", "kind": "backdoor", "to": "rim"},
        {"who": 1, "do": "pass", "kind": "bounce", "to": 2}, {"who": 2, "do": "shot", "kind": "layup"}"#;
    has_no(&found(FIVE, actions), "side-not-emptied");
    let posted = FIVE.replace(
        r#""4": {"at": "left corner"}"#,
        r#""4": {"at": "left block"}"#,
    );
    assert_eq!(
        numbers(&has(&found(&posted, actions), "side-not-emptied")),
        [2, 4]
    );
}

#[test]
fn who_has_no_part_and_no_look_is_a_statue() {
    let hold = |at: &str| {
        found(
            &format!(r#""1": {{"at": "top", "ball": true}}, "5": {{"at": {at}}}"#),
            r#"{"who": 1, "do": "hold", "takes": 6}, {"who": 1, "do": "shot"}"#,
        )
    };
    assert_eq!(numbers(&has(&hold(r#""right wing""#), "statue")), [5]);
    // A held corner is a part.
    has_no(&hold(r#""right corner""#), "statue");
}

#[test]
fn young_players_leave_some_screens_for_later() {
    let at = |level: &str, kind: &str| {
        let set = text(
            &format!(r#""level": "{level}""#),
            FIVE,
            &format!(
                r#"{{"who": 1, "do": "pass", "to": 2}}, {{"who": 5, "do": "screen", "kind": "{kind}", "for": 3, "at": [4, 3]}},
                   {{"who": 3, "do": "cut", "off": 5, "to": "right slot"}}"#
            ),
        );
        judge(&open(&set))
    };
    let rung = |found: &[Finding]| has(found, "above-level").what;
    assert_eq!(
        rung(&at("u12", "pin-down")),
        What::AboveLevel {
            what: Rung::Screens
        }
    );
    assert_eq!(
        rung(&at("u14", "back")),
        What::AboveLevel { what: Rung::Blind }
    );
    assert_eq!(
        rung(&at("u14", "stagger")),
        What::AboveLevel { what: Rung::Chains }
    );
    // A screen is told once, by the latest that it is taught.
    assert_eq!(
        rung(&at("u12", "flare")),
        What::AboveLevel { what: Rung::Blind }
    );
    assert_eq!(of(&at("u12", "flare"), "above-level").len(), 1);
    let gate = |level: &str| {
        judge(&open(&text(
            &format!(r#""level": "{level}""#),
            r#""2": {"at": "left wing", "ball": true}, "3": {"at": [0, 1.2]},
                "4": {"at": "left elbow"}, "5": {"at": "right elbow"}"#,
            r#"{"who": [4, 5], "do": "screen", "kind": "gate", "for": 3, "at": [0, 4.6]},
               {"who": 3, "do": "cut", "off": [4, 5], "to": "top"}"#,
        )))
    };
    assert_eq!(rung(&gate("u14")), What::AboveLevel { what: Rung::Gates });
    has_no(&gate("adult"), "above-level");
    has_no(&at("u14", "away"), "above-level");
    has_no(&at("u12", "away"), "above-level");
    has_no(&at("u14", "pin-down"), "above-level");
    has_no(&at("adult", "back"), "above-level");
}
