use super::*;

const FIVE: &str = r#""1": {"at": "top", "ball": true}, "2": {"at": "left corner"}, "3": {"at": "right corner"},
    "4": {"at": "left elbow"}, "5": {"at": "right elbow"}"#;

#[test]
fn a_cutter_who_runs_at_a_screen_and_no_faster_off_it_has_one_speed() {
    let cut = |more: &str| {
        found(
            FIVE,
            &format!(
                r#"{{"who": 4, "do": "screen", "kind": "pin-down", "for": 2, "at": [-4.9, 2.6]}},
                   {{"who": 2, "do": "cut", "off": 4, {more}}}"#
            ),
        )
    };
    let fade = r#""kind": "fade", "to": "left low wing""#;
    assert_eq!(numbers(&has(&cut(fade), "one-speed")), [2, 4]);
    has_no(&cut(r#""to": "left slot""#), "one-speed");
}

#[test]
fn four_who_start_together_march() {
    let fill = |who: &str| {
        found(
            FIVE,
            &format!(
                r#"{{"id": "p", "who": 1, "do": "dribble", "to": "right slot"}},
                   {{"who": 2, "do": "cut", "to": "left wing", "free": true, "with": {{"id": "p", "edge": "start"}}}},
                   {{"who": 4, "do": "cut", "to": "left slot", "free": true, "with": {{"id": "p", "edge": "start"}}}},
                   {{"who": {who}, "do": "cut", "to": "right block", "free": true, "with": {{"id": "p", "edge": "start", "lag": {}}}}}"#,
                if who == "5" { 0.0 } else { 0.6 }
            ),
        )
    };
    assert_eq!(numbers(&has(&fill("5"), "marching")), [1, 2, 4, 5]);
    has_no(&fill("3"), "marching");
}

#[test]
fn four_on_one_side_for_long_load_it() {
    let hold = |at: &str| {
        found(
            &FIVE
                .replace(
                    r#""4": {"at": "left elbow"}"#,
                    &format!(r#""4": {{"at": "{at}"}}"#),
                )
                .replace(
                    r#""1": {"at": "top", "ball": true}"#,
                    r#""1": {"at": "right wing", "ball": true}"#,
                ),
            r#"{"who": 1, "do": "hold", "takes": 4}, {"who": 1, "do": "shot"}"#,
        )
    };
    assert_eq!(
        numbers(&has(&hold("right block"), "side-loaded")),
        [1, 3, 4, 5]
    );
    has_no(&hold("left elbow"), "side-loaded");
}

#[test]
fn a_cutter_who_stops_at_the_dunker_spot_is_parked_before_a_drive() {
    let drive = |to: &str| {
        found(
            FIVE,
            &format!(
                r#"{{"id": "c", "who": 2, "do": "cut", "to": "{to}"}},
                   {{"who": 1, "do": "dribble", "kind": "hard", "to": "rim", "after": "c"}},
                   {{"who": 1, "do": "shot", "kind": "layup"}}"#
            ),
        )
    };
    assert_eq!(numbers(&has(&drive("left dunker spot"), "parked")), [1, 2]);
    has_no(&drive("left wing"), "parked");
}
