//! Screens and gates.

use super::*;

/// Worked places of common practice: screen, own place of the cutter, catch, facing in degrees.
#[test]
fn screeners_stand_square_to_the_way_of_the_defender() {
    let rows: [(&str, &str, &str, f64); 4] = [
        // A pin-down on the right, a second screen above it, one on the lane line, a far elbow.
        (
            r#""3": {"at": [6.6, -0.4]}"#,
            "[4.9, 2.6]",
            r#""top""#,
            41.0,
        ),
        (r#""3": {"at": [4.9, 2.8]}"#, "[3.3, 4.6]", r#""top""#, 47.0),
        (
            r#""3": {"at": [2.8, 0.6]}"#,
            "[2.9, 2.4]",
            r#""right slot""#,
            355.0,
        ),
        (
            r#""3": {"at": "left block"}"#,
            "[-2.45, 4.6]",
            r#""left slot""#,
            354.0,
        ),
    ];
    for (three, place, to, facing) in rows {
        let players = format!(
            r#""1": {{"at": "deep top", "ball": true}}, {three}, "5": {{"at": "right elbow"}}"#
        );
        let actions = format!(
            r#"{{"who": 5, "do": "screen", "for": 3, "at": {place}}}, {{"who": 3, "do": "cut", "off": 5, "to": {to}}}"#
        );
        let play = open(&players, &actions);
        let stands = play.timeline().screens()[0];
        let off = turn_between(stands.screen.facing, f64::to_radians(facing))
            .abs()
            .to_degrees();
        assert!(
            off <= 20.0,
            "{place}: {} instead of {facing}",
            stands.screen.facing.to_degrees()
        );
    }
}

#[test]
fn a_stagger_is_passed_shoulder_to_hip_twice() {
    let play = open(
        FIVE,
        r#"{"who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.9, 2.6]},
           {"who": 2, "do": "screen", "kind": "stagger", "for": 3, "at": [3.3, 4.6]},
           {"who": 3, "do": "cut", "off": [5, 2], "to": "left slot"}"#,
    );
    let cut = row(&play, (0, 2));
    for (mark, screener) in cut
        .marks
        .iter()
        .filter(|m| m.edge == Edge::PassBy)
        .zip([5, 2])
    {
        assert_eq!(mark.of, Some(p(screener)));
        let near = nearest(&play, 3, screener, mark.t - 0.3, mark.t + 0.3);
        assert!((0.50..=0.62).contains(&near), "{screener}: {near}");
        let set = play
            .timeline()
            .screens()
            .iter()
            .find(|s| s.screen.who == p(screener))
            .unwrap();
        assert!(mark.t >= set.set + 0.3 - 1e-5 && set.free >= mark.t + 0.2 - 1e-5);
    }
}

#[test]
fn cutters_wait_at_the_plant_for_the_feet() {
    let play = open(
        FIVE,
        r#"{"who": 4, "do": "screen", "kind": "cross", "for": 3, "at": [4.9, 1.4]},
           {"who": 3, "do": "cut", "off": 4, "to": "right wing"}"#,
    );
    let cut = row(&play, (0, 1));
    let set = play.timeline().screens()[0].set;
    assert!(cut.at(Edge::Plant).unwrap() >= set - 0.8);
    assert!(cut.at(Edge::PassBy).unwrap() >= set + 0.3 - 1e-5);
    let wait = cut.waits[0];
    assert!(wait.end > wait.start && speed(&play, 3, 0.5 * (wait.start + wait.end)) < 0.05);
}

#[test]
fn a_double_screen_stands_shoulder_to_shoulder() {
    let play = open(
        FIVE,
        r#"{"who": [4, 5], "do": "screen", "kind": "double", "for": 3, "at": [2.8, 2.4]},
           {"who": 3, "do": "cut", "off": [4, 5], "to": "right slot"}"#,
    );
    let end = play.timeline().screens()[0].set + 0.1;
    let gap = distance(at(&play, 4, end), at(&play, 5, end)) - 0.52;
    assert!((0.0..=0.10).contains(&gap), "{gap}");
}

const GATE: &str = r#""1": {"at": "left wing", "ball": true}, "2": {"at": [1.6, 0.8]}, "3": {"at": [-1.2, 0.3]},
    "4": {"at": "left elbow"}, "5": {"at": "right elbow"}"#;

#[test]
fn a_gate_is_open_for_the_cutter_and_shut_behind() {
    let play = open(
        GATE,
        r#"{"who": [4, 5], "do": "screen", "kind": "gate", "for": 3, "at": [0, 4.95]},
           {"who": 3, "do": "cut", "off": [4, 5], "to": "top", "pace": "sprint"}"#,
    );
    let cut = row(&play, (0, 1));
    let by = cut.at(Edge::PassBy).unwrap();
    let set = play
        .timeline()
        .screens()
        .iter()
        .map(|s| s.set)
        .fold(0.0, f64::max);
    let open_gap = distance(at(&play, 4, set), at(&play, 5, set)) - 0.52;
    assert!((open_gap - 0.80).abs() < 0.01, "{open_gap}");
    let shut = row(&play, (0, 0)).at(Edge::Shut).unwrap();
    assert!(
        (by - 0.4..by + 0.1).contains(&shut),
        "shuts at {shut}, the cutter is by at {by}"
    );
    let end = play.timeline().duration();
    let gap = distance(at(&play, 4, end), at(&play, 5, end)) - 0.52;
    assert!((0.0..=0.10).contains(&gap), "{gap}");
    // Bodies: ellipses of shoulder by depth, square to the cutter's way.
    let mut t = by - 0.5;
    while t < by + 0.6 {
        for post in [4, 5] {
            let d = at(&play, 3, t) - at(&play, post, t);
            assert!(
                (d.x / 0.52).powi(2) + (d.y / 0.26).powi(2) >= 1.0,
                "{post} touches at {t}"
            );
        }
        t += 0.01;
    }
}

#[test]
fn a_gate_for_two_shuts_behind_the_last() {
    let play = open(
        GATE,
        r#"{"who": [4, 5], "do": "screen", "kind": "gate", "for": [3, 2], "at": [0, 4.95]},
           {"who": 3, "do": "cut", "off": [4, 5], "to": "left slot"},
           {"who": 2, "do": "cut", "off": [4, 5], "to": "right slot"}"#,
    );
    let last = row(&play, (0, 1))
        .at(Edge::PassBy)
        .unwrap()
        .max(row(&play, (0, 2)).at(Edge::PassBy).unwrap());
    let shut = row(&play, (0, 0)).at(Edge::Shut).unwrap();
    assert!(shut > last - 0.4, "{shut} {last}");
    assert!(nearest(&play, 2, 3, 0.0, play.timeline().duration()) > 0.42);
}

#[test]
fn round_a_post_the_gate_stays_open() {
    for side in ["left", "right"] {
        let play = open(
            GATE,
            &format!(
                r#"{{"who": [4, 5], "do": "screen", "kind": "gate", "for": 3, "at": [0, 4.95]}},
                   {{"who": 3, "do": "cut", "off": [4, 5], "side": "{side}", "to": "top"}}"#
            ),
        );
        assert_eq!(row(&play, (0, 0)).at(Edge::Shut), None);
        let by = row(&play, (0, 1))
            .marks
            .iter()
            .find(|m| m.edge == Edge::PassBy)
            .unwrap()
            .t;
        let x = at(&play, 3, by).x;
        assert!(
            if side == "left" { x < -1.0 } else { x > 1.0 },
            "{side}: {x}"
        );
    }
}

/// Posts who are told to wait too long stand closer instead of shutting into the chaser.
#[test]
fn a_gate_that_would_be_late_only_stands_closer() {
    let end_gap = |tie: &str| {
        let play = open(
            GATE,
            &format!(
                r#"{{"who": [4, 5], "do": "screen", "kind": "gate", "for": 3, "at": [0, 4.95]{tie}}},
                   {{"id": "cut", "who": 3, "do": "cut", "off": [4, 5], "to": "top", "pace": "sprint"}}"#
            ),
        );
        let end = play.timeline().duration();
        distance(at(&play, 4, end), at(&play, 5, end)) - 0.52
    };
    let in_time = end_gap("");
    assert!((in_time - 0.08).abs() < 0.01, "{in_time}");
    let late = end_gap(r#", "with": {"id": "cut", "edge": "pass-by", "lag": 0.3, "mine": "shut"}"#);
    assert!((late - 0.60).abs() < 0.01, "{late}");
}

#[test]
fn the_second_cutter_goes_once_the_first_is_by() {
    let play = open(
        FIVE,
        r#"{"who": 5, "do": "screen", "kind": "ball", "for": 1, "at": [0.9, 6.2]},
           {"who": 1, "do": "dribble", "off": 5, "to": [3.4, 4.2]}, {"who": 5, "do": "cut", "kind": "roll", "to": "rim"}"#,
    );
    let by = row(&play, (0, 1)).at(Edge::PassBy).unwrap();
    let roll = row(&play, (0, 2)).start - by;
    assert!((0.2 - 1e-5..=0.35).contains(&roll), "{roll}");
}

#[test]
fn somebody_used_where_they_stand_stays_until_the_cutter_is_by() {
    let play = open(
        FIVE,
        r#"{"who": 2, "do": "cut", "off": 5, "to": "left block"}, {"who": 5, "do": "cut", "kind": "pop", "to": "top"}"#,
    );
    let by = row(&play, (0, 0)).at(Edge::PassBy).unwrap();
    assert!(row(&play, (0, 1)).start >= by + 0.2 - 1e-5);
}

#[test]
fn screeners_look_where_their_bodies_do() {
    let play = open(
        FIVE,
        r#"{"who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.9, 2.6]},
           {"who": 3, "do": "cut", "off": 5, "to": "top"}"#,
    );
    let s = play.timeline().screens()[0];
    let m = play
        .timeline()
        .player(p(5), 0.5 * (s.set + s.free))
        .unwrap();
    assert!(unit(m.facing).dot(unit(s.screen.facing)) > 0.99);
}
