use super::*;

const PLAYERS: &str = r#""1": {"at": "top", "ball": true}, "2": {"at": "left corner"},
    "4": {"at": "left elbow"}"#;

/// 4 screens for 2; `screen` and `cut` are added to the two actions.
fn pin_down(screen: &str, cut: &str) -> Vec<Finding> {
    let actions = format!(
        r#"{{"id": "pin", "who": 4, "do": "screen", "kind": "pin-down", "for": 2, "at": [-4.9, 2.6] {screen}}},
           {{"id": "cut", "who": 2, "do": "cut", "off": 4, "to": "left slot" {cut}}}"#
    );
    found(PLAYERS, &actions)
}

#[test]
fn a_cutter_who_does_not_wait_makes_the_screen_late_and_moving() {
    let flawed = pin_down(
        r#", "after": {"id": "cut", "edge": "start", "lag": 0.5}"#,
        r#", "free": true"#,
    );
    let late = has(&flawed, "screen-late");
    assert_eq!(numbers(&late), [4, 2]);
    assert!(matches!(late.what, What::ScreenLate { after } if after > 0.0));
    has(&flawed, "moving-screen");

    let good = pin_down("", "");
    for code in [
        "screen-late",
        "moving-screen",
        "screen-early",
        "cutter-early",
        "screen-left",
    ] {
        has_no(&good, code);
    }
}

#[test]
fn a_cutter_who_runs_at_a_screener_still_on_the_way_is_early() {
    let arrives = |lag: f64| {
        let tie = format!(
            r#", "pace": "sprint", "free": true, "with": {{"id": "pin", "edge": "set", "lag": {lag}, "mine": "pass-by"}}"#
        );
        pin_down("", &tie)
    };
    assert_eq!(numbers(&has(&arrives(0.3), "cutter-early")), [4, 2]);
    has_no(&arrives(0.9), "cutter-early");
    has_no(&pin_down("", ""), "cutter-early");
}

/// 4 screens for 2, whose cut is `cut`.
fn cut_off_4(cut: &str) -> Vec<Finding> {
    let actions = format!(
        r#"{{"who": 4, "do": "screen", "kind": "pin-down", "for": 2, "at": [-4.9, 2.6]}},
           {{"who": 2, "do": "cut", {cut}}}"#
    );
    found(PLAYERS, &actions)
}

#[test]
fn a_fade_that_swings_wide_leaves_a_loose_brush() {
    let fade = cut_off_4(r#""off": 4, "kind": "fade", "to": "left low wing""#);
    assert_eq!(numbers(&has(&fade, "loose-brush")), [4, 2]);
    let tight = cut_off_4(r#""off": 4, "to": "left slot""#);
    has_no(&tight, "loose-brush");
    has_no(&tight, "through-the-screener");
}

#[test]
fn a_way_that_is_written_through_the_screener_is_told() {
    let via = |x: f64| {
        cut_off_4(&format!(
            r#""via": [[{x}, 2.1], {{"off": 4}}, [{x}, 3.1]], "to": "left slot""#
        ))
    };
    assert_eq!(numbers(&has(&via(-4.8), "through-the-screener")), [4, 2]);
    has_no(&via(-6.0), "through-the-screener");
}

#[test]
fn a_screen_that_stands_for_long_is_scouted() {
    let early = pin_down("", r#", "after": {"id": "pin", "edge": "set", "lag": 1.4}"#);
    has(&early, "screen-early");
    let just = pin_down(
        "",
        r#", "after": {"id": "pin", "edge": "set", "lag": 0.2, "mine": "pass-by"}"#,
    );
    has_no(&just, "screen-early");
}

#[test]
fn a_screener_who_goes_before_the_cutter_is_by_leaves_early() {
    let actions = |screen: &str, cut: &str| {
        format!(
            r#"{{"id": "pin", "who": 4, "do": "screen", "kind": "pin-down", "for": 2, "at": [-4.9, 2.6] {screen}}},
               {{"id": "cut", "who": 2, "do": "cut", "off": 4, "to": "left slot"}},
               {{"who": 4, "do": "cut", "to": "left block" {cut}}}"#
        )
    };
    let early = r#", "free": true, "with": {"id": "cut", "edge": "pass-by", "lag": -0.15}"#;
    let flawed = found(PLAYERS, &actions(r#", "free": true"#, early));
    assert_eq!(numbers(&has(&flawed, "screen-left")), [4, 2]);
    let good = found(PLAYERS, &actions("", ""));
    has_no(&good, "screen-left");
    has_no(&good, "screen-stays");
    let long = r#", "after": {"id": "cut", "edge": "pass-by", "lag": 1.3}"#;
    has(&found(PLAYERS, &actions("", long)), "screen-stays");
}

#[test]
fn how_near_a_cutter_comes_by_is_measured_from_body_to_body() {
    let play = open(&text(
        "",
        PLAYERS,
        r#"{"who": 4, "do": "screen", "kind": "pin-down", "for": 2, "at": [-4.9, 2.6]},
           {"who": 2, "do": "cut", "off": 4, "to": "left slot"}"#,
    ));
    let judged = |loose: f64, touch: f64| {
        let settings = Settings {
            loose,
            touch,
            ..Settings::default()
        };
        check(play.set(), play.court(), play.timeline(), &settings)
    };
    // Hips a hand's breadth apart: 0.56 m between the middles of two adults 0.52 m wide.
    let good = judged(0.65, 1.0);
    has_no(&good, "loose-brush");
    has_no(&good, "through-the-screener");
    has(&judged(0.5, 0.8), "loose-brush");
    has(&judged(0.8, 1.2), "through-the-screener");
}

#[test]
fn a_screen_on_the_wrong_side_of_the_defender_is_at_the_wrong_spot() {
    let actions = |at: &str| {
        format!(
            r#"{{"who": 4, "do": "screen", "kind": "pin-down", "for": 2, "at": {at}}},
               {{"who": 2, "do": "cut", "off": 4, "to": "left slot"}}"#
        )
    };
    // Below the cutter, away from where they go.
    has(&found(PLAYERS, &actions("[-6.2, -1.2]")), "screen-spot");
    has_no(&found(PLAYERS, &actions("[-4.9, 2.6]")), "screen-spot");
}

const GATE: &str = r#""2": {"at": "left wing", "ball": true}, "3": {"at": [0, 1.2]},
    "4": {"at": "left elbow"}, "5": {"at": "right elbow"}"#;

fn gate(through: &str) -> Vec<Finding> {
    let actions = format!(
        r#"{{"id": "gate", "who": [4, 5], "do": "screen", "kind": "gate", "for": 3, "at": [0, 4.95]}},
           {{"who": 3, "do": "cut", "off": [4, 5], "to": "top", "pace": "sprint" {through}}},
           {{"who": 2, "do": "pass", "to": 3}}"#
    );
    found(GATE, &actions)
}

#[test]
fn a_gate_that_is_still_before_the_chaser_is_in_time() {
    let good = gate("");
    has_no(&good, "gate-late");
    has_no(&good, "gate-on-cutter");
}

#[test]
fn posts_who_come_as_the_cutter_runs_through_shut_too_late() {
    let posts = |lag: f64| {
        found(
            GATE,
            &format!(
                r#"{{"id": "gate", "who": [4, 5], "do": "screen", "kind": "gate", "for": 3, "at": [0, 4.95],
                     "free": true, "after": {{"id": "run", "edge": "start", "lag": {lag}}}}},
                   {{"id": "run", "who": 3, "do": "cut", "off": [4, 5], "to": "top", "free": true}}"#
            ),
        )
    };
    let late = posts(0.4);
    assert_eq!(numbers(&has(&late, "gate-late")), [4, 5]);
    has_no(&posts(0.0), "gate-late");
}

#[test]
fn a_late_gate_is_cured_by_a_cutter_who_waits_for_it() {
    let play = open(&text(
        "",
        GATE,
        r#"{"id": "gate", "who": [4, 5], "do": "screen", "kind": "gate", "for": 3, "at": [0, 4.95],
             "free": true, "after": {"id": "run", "edge": "start", "lag": 0.4}},
           {"id": "run", "who": 3, "do": "cut", "off": [4, 5], "to": "top", "free": true}"#,
    ));
    let found = play.findings(&Settings::default());
    let cure = play.cure(&has(&found, "gate-late")).unwrap();
    assert!(cure.starts_with("Let 3 wait for 4."), "{cure}");
}

#[test]
fn a_chaser_on_the_hip_finds_the_gate_moving() {
    let play = open(&text(
        "",
        GATE,
        r#"{"id": "gate", "who": [4, 5], "do": "screen", "kind": "gate", "for": 3, "at": [0, 4.95]},
           {"who": 3, "do": "cut", "off": [4, 5], "to": "top", "pace": "sprint"}"#,
    ));
    let settings = Settings {
        chase: -0.25,
        ..Settings::default()
    };
    let found = check(play.set(), play.court(), play.timeline(), &settings);
    assert_eq!(numbers(&has(&found, "gate-late")), [4, 5]);
    // Bodies three times as broad are in the way of the posts.
    let settings = Settings {
        touch: 2.4,
        ..Settings::default()
    };
    let found = check(play.set(), play.court(), play.timeline(), &settings);
    assert_eq!(numbers(&has(&found, "gate-on-cutter")), [4, 3]);
}

#[test]
fn a_giver_who_stands_and_is_reached_hands_off_well() {
    let players = r#""1": {"at": "left wing"}, "5": {"at": "top", "ball": true}"#;
    let good = found(
        players,
        r#"{"who": 5, "do": "dribble", "kind": "dribble-at", "to": [-1.9, 6.5]},
           {"who": 5, "do": "handoff", "to": 1},
           {"who": 1, "do": "dribble", "to": "right elbow"}"#,
    );
    has_no(&good, "handoff-far");
    has_no(&good, "giver-moves");
    // The same with hands that reach less far, and a giver who must stand for longer.
    let play = open(&text(
        "",
        players,
        r#"{"who": 5, "do": "dribble", "kind": "dribble-at", "to": [-1.9, 6.5]},
           {"who": 5, "do": "handoff", "to": 1},
           {"who": 1, "do": "dribble", "to": "right elbow"}"#,
    ));
    let settings = Settings {
        handoff: 0.01,
        giver: 3.0,
        ..Settings::default()
    };
    let found = check(play.set(), play.court(), play.timeline(), &settings);
    has(&found, "handoff-far");
    has(&found, "giver-moves");
}
