use super::*;

const TWO: &str = r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}"#;

#[test]
fn a_free_pass_leaves_a_running_dribble() {
    let dribble = |pass: &str| {
        format!(
            r#"{{"id": "push", "who": 1, "do": "dribble", "to": "right slot"}},
               {{"who": 1, "do": "pass", "to": 2 {pass}}}"#
        )
    };
    let early =
        r#", "free": true, "with": {"id": "push", "edge": "end", "lag": -0.4, "mine": "release"}"#;
    let flawed = found(TWO, &dribble(early));
    assert_eq!(numbers(&has(&flawed, "pass-off-dribble")), [1, 2]);
    has_no(&found(TWO, &dribble("")), "pass-off-dribble");
}

#[test]
fn a_pass_before_the_screen_is_used_is_too_early() {
    let players = r#""1": {"at": "top", "ball": true}, "2": {"at": "left corner"}, "4": {"at": "left elbow"}"#;
    let actions = |pass: &str| {
        format!(
            r#"{{"who": 4, "do": "screen", "kind": "pin-down", "for": 2, "at": [-4.9, 2.6]}},
               {{"id": "cut", "who": 2, "do": "cut", "off": 4, "to": "left slot"}},
               {{"who": 1, "do": "pass", "to": 2 {pass}}}"#
        )
    };
    let early = r#", "free": true, "with": {"id": "cut", "edge": "pass-by", "lag": -0.3, "mine": "release"}"#;
    let flawed = found(players, &actions(early));
    assert_eq!(numbers(&has(&flawed, "pass-before-open")), [1, 2]);
    has_no(&found(players, &actions("")), "pass-before-open");
}

#[test]
fn a_perimeter_catch_on_the_run_is_too_fast_and_one_at_the_rim_is_not() {
    let run = found(
        TWO,
        r#"{"id": "run", "who": 2, "do": "cut", "to": "left corner", "pace": "sprint", "free": true},
           {"who": 1, "do": "pass", "to": 2, "free": true, "with": {"id": "run", "edge": "start", "lag": 0.5, "mine": "release"}}"#,
    );
    let fast = has(&run, "fast-catch");
    assert!(matches!(fast.what, What::FastCatch { speed } if speed > 2.0));
    let rim = found(
        TWO,
        r#"{"who": 2, "do": "cut", "kind": "backdoor", "to": "rim"},
           {"who": 1, "do": "pass", "kind": "bounce", "to": 2},
           {"who": 2, "do": "shot", "kind": "layup"}"#,
    );
    has_no(&rim, "fast-catch");
}

#[test]
fn a_body_on_the_way_is_passed_through_unless_it_is_passed_over() {
    let players = |x: f64| {
        format!(
            r#""1": {{"at": [-4, 6], "ball": true}}, "2": {{"at": [4, 6]}}, "3": {{"at": [{x}, 6]}}"#
        )
    };
    let throw = |kind: &str| format!(r#"{{"who": 1, "do": "pass", "kind": "{kind}", "to": 2}}"#);
    let hit = found(&players(3.0), &throw("chest"));
    assert_eq!(numbers(&has(&hit, "pass-through-body")), [1, 2, 3]);
    has_no(&found(&players(0.0), &throw("lob")), "pass-through-body");
    let beside =
        r#""1": {"at": [-4, 6], "ball": true}, "2": {"at": [4, 6]}, "3": {"at": [3, 6.6]}"#;
    has_no(&found(beside, &throw("chest")), "pass-through-body");
}

/// 5 screens far away with the back to the ball, and the ball comes at once.
#[test]
fn a_screener_who_has_run_away_from_the_ball_does_not_see_it_coming() {
    let pass = |more: &str| {
        found(
            r#""1": {"at": "right corner", "ball": true}, "2": {"at": "right mid post"},
                "3": {"at": "right elbow"}, "4": {"at": "right slot"}, "5": {"at": "right block"}"#,
            &format!(
                r#"{{"who": 5, "do": "screen", "kind": "cross", "for": 2, "at": [-5.2, 4.7]}},
                   {{"id": "cut", "who": 2, "do": "cut", "off": 5, "to": "rim", "pace": "jog", "free": true}},
                   {{"who": 1, "do": "pass", "to": 5 {more}}}, {{"who": 5, "do": "shot"}}"#
            ),
        )
    };
    assert_eq!(numbers(&has(&pass(""), "not-looking")), [1, 5]);
    has_no(
        &pass(r#", "after": {"id": "cut", "lag": 1}"#),
        "not-looking",
    );
}

#[test]
fn who_looks_elsewhere_does_not_see_the_ball() {
    let actions = r#"{"who": 1, "do": "pass", "to": 2}"#;
    let good = found(TWO, actions);
    has_no(&good, "not-looking");
    has_no(&good, "passer-turned");
    let play = open(&text("", TWO, actions));
    let settings = Settings {
        look: -1.0,
        chest: -1.0,
        ..Settings::default()
    };
    let found = check(play.set(), play.court(), play.timeline(), &settings);
    has(&found, "not-looking");
    has(&found, "passer-turned");
}
