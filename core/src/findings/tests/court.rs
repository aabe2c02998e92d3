use super::*;

#[test]
fn the_lane_is_left_in_time_or_not() {
    let stay = |seconds: f64| {
        found(
            r#""1": {"at": "top", "ball": true}, "5": {"at": "mid paint"}"#,
            &format!(r#"{{"who": 1, "do": "dribble", "to": "left wing", "takes": {seconds}}}"#),
        )
    };
    assert_eq!(
        has(&stay(3.6), "three-seconds").severity,
        Severity::Violation
    );
    has_no(&stay(2.6), "three-seconds");
    // A low post stands outside.
    let block = found(
        r#""1": {"at": "top", "ball": true}, "5": {"at": "right block"}"#,
        r#"{"who": 1, "do": "dribble", "to": "left wing", "takes": 4}"#,
    );
    has_no(&block, "three-seconds");
}

#[test]
fn three_in_the_lane_are_a_crowd_and_two_are_none() {
    let players = |third: &str| {
        format!(
            r#""1": {{"at": "top", "ball": true}}, "3": {{"at": [-2, 1]}}, "4": {{"at": [2, 1]}}, "5": {{"at": {third}}}"#
        )
    };
    let actions = r#"{"who": 1, "do": "pass", "to": 3}"#;
    let crowd = has(&found(&players("[0, 3]"), actions), "lane-crowd");
    assert_eq!(numbers(&crowd), [3, 4, 5]);
    has_no(&found(&players(r#""right elbow""#), actions), "lane-crowd");
}

#[test]
fn a_foot_on_the_line_is_out_and_a_thrower_is_not() {
    let run = |y: f64| {
        found(
            r#""1": {"at": "top", "ball": true}, "2": {"at": "left corner"}"#,
            &format!(r#"{{"who": 2, "do": "cut", "to": [-3, {y}]}}"#),
        )
    };
    assert_eq!(has(&run(-1.5), "out-of-bounds").severity, Severity::Warning);
    has_no(&run(-1.2), "out-of-bounds");
    let dribble = found(
        r#""1": {"at": "right wing", "ball": true}, "2": {"at": "top"}"#,
        r#"{"who": 1, "do": "dribble", "to": [7.45, 1]}"#,
    );
    assert_eq!(has(&dribble, "out-of-bounds").severity, Severity::Violation);
    let thrown = found(
        r#""1": {"at": "top"}, "3": {"at": "right sideline throw-in", "ball": true}"#,
        r#"{"who": 3, "do": "pass", "to": 1}, {"who": 3, "do": "cut", "to": "right corner"}"#,
    );
    has_no(&thrown, "out-of-bounds");
}

#[test]
fn the_ball_does_not_go_back_over_the_line() {
    let to = |y: f64| {
        found(
            r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}"#,
            &format!(r#"{{"who": 1, "do": "dribble", "to": [0, {y}]}}"#),
        )
    };
    has(&to(12.4), "backcourt");
    has_no(&to(11.8), "backcourt");
    // Coming up the court is no return.
    let up = found(
        r#""1": {"at": [0, 12.4], "ball": true}, "2": {"at": "left wing"}"#,
        r#"{"who": 1, "do": "dribble", "to": "top"}"#,
    );
    has_no(&up, "backcourt");
}

#[test]
fn a_long_wait_is_told_by_what_it_costs() {
    let hold = |seconds: f64| {
        found(
            r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}"#,
            &format!(
                r#"{{"who": 1, "do": "hold", "takes": {seconds}}}, {{"who": 1, "do": "pass", "to": 2}}"#
            ),
        )
    };
    has(&hold(5.5), "holder-stands");
    has_no(&hold(4.0), "holder-stands");
    has(&hold(17.0), "long-set");
    has_no(&hold(17.0), "shot-clock");
    has(&hold(25.0), "shot-clock");
}
