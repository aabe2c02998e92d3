//! Where each kind of move runs: round bodies, on the right side, with its angles.
//!
//! Common practice, no source, for every bound.

use crate::math::{Point, Vec2, atan2, direction, distance, wrap_angle};
use crate::scene::fixture::{Played, p, play};
use crate::set::{Edge, Verb};
use crate::timeline::TimedAction;
use alloc::format;
use alloc::vec::Vec;

/// A set of one beat.
fn one(players: &str, actions: &str) -> Played {
    play(&format!(
        r#"{{"backcut": 1, "title": "x", "players": {{{players}}}, "beats": [{{"actions": [{actions}]}}]}}"#
    ))
}

fn at(set: &Played, who: u8, t: f64) -> Point {
    let m = set.timeline.player(p(who), t).unwrap();
    Point::new(m.x, m.y)
}

fn gap(set: &Played, a: u8, b: u8, t: f64) -> f64 {
    distance(at(set, a, t), at(set, b, t))
}

/// Degrees between two ways.
fn angle(a: Vec2, b: Vec2) -> f64 {
    atan2(a.cross(b).abs(), a.dot(b)).to_degrees()
}

/// Places of a player from `from` to `to`, a hundredth of a second apart.
fn way(set: &Played, who: u8, from: f64, to: f64) -> Vec<Point> {
    (0..=((to - from) * 100.0) as i32)
        .map(|i| at(set, who, from + 0.01 * f64::from(i)))
        .collect()
}

/// How far the way of an action turns at its plant, degrees.
fn plant_turn(set: &Played, who: u8, action: &TimedAction) -> f64 {
    let t = action.at(Edge::Plant).unwrap();
    let (before, after) = (t - 0.02, t + 0.02);
    let here = at(set, who, t);
    angle(here - at(set, who, before), at(set, who, after) - here)
}

fn fastest(set: &Played, who: u8, from: f64, to: f64) -> f64 {
    (0..=100)
        .map(|i| from + (to - from) * f64::from(i) / 100.0)
        .map(|t| set.timeline.player(p(who), t).unwrap().speed)
        .fold(0.0, f64::max)
}

const PIN: &str = r#""1": {"at": "top", "ball": true}, "2": {"at": "right corner"}, "5": {"at": "right mid post"}"#;

fn pin_down(cut: &str) -> Played {
    one(
        PIN,
        &format!(
            r#"{{"who": 5, "do": "screen", "kind": "pin-down", "for": 2, "at": [4.9, 2.6]}},
               {{"who": 2, "do": "cut", {cut}, "off": 5}}, {{"who": 1, "do": "pass", "to": 2}}"#
        ),
    )
}

#[test]
fn curl_wraps_the_screener_and_turns_to_the_rim() {
    let set = pin_down(r#""kind": "curl", "to": "rim""#);
    let (by, end) = (
        set.time(2, Verb::Cut, 0, Edge::PassBy),
        set.time(2, Verb::Cut, 0, Edge::End),
    );
    let s = Point::new(4.9, 2.6);
    let path = way(&set, 2, by, end);
    // While the cutter is beside the screener they keep near and clear.
    let wrapped: Vec<f64> = path.iter().map(|q| distance(*q, s)).collect();
    let near = wrapped.iter().copied().fold(f64::INFINITY, f64::min);
    assert!((0.50..=0.62).contains(&near), "{near}");
    let beyond = path.iter().find(|q| q.x < s.x).unwrap();
    assert!((0.6..=0.9).contains(&distance(*beyond, s)), "{beyond:?}");
    assert!(beyond.y > s.y, "round the high side");
    let into = at(&set, 2, by) - at(&set, 2, by - 0.05);
    let out = at(&set, 2, end - 0.2) - at(&set, 2, end - 0.3);
    assert!(
        (90.0..=150.0).contains(&angle(into, out)),
        "{}",
        angle(into, out)
    );
}

#[test]
fn fade_stops_short_of_the_screen_and_bounces_away() {
    let set = one(
        r#""1": {"at": "top", "ball": true}, "2": {"at": "right slot"}, "5": {"at": "right elbow"}"#,
        r#"{"who": 5, "do": "screen", "kind": "flare", "for": 2, "at": [4.0, 5.2]},
           {"who": 2, "do": "cut", "kind": "fade", "off": 5, "to": "right corner"}"#,
    );
    let cut = set.action(2, Verb::Cut, 0);
    let plant = cut.at(Edge::Plant).unwrap();
    let near = gap(&set, 2, 5, plant);
    assert!((0.6..=1.1).contains(&near), "{near}");
    let (before, after) = (at(&set, 2, plant), at(&set, 2, cut.end));
    let ball = Point::new(0.0, 7.15);
    assert!(distance(after, ball) > distance(before, ball) + 2.0);
    // The way out leaves the body alone.
    for q in way(&set, 2, plant, cut.end) {
        assert!(distance(q, Point::new(4.0, 5.2)) > 0.5, "{q:?}");
    }
}

#[test]
fn reject_shows_the_screen_and_turns() {
    let set = pin_down(r#""kind": "reject", "to": "rim""#);
    let cut = set.action(2, Verb::Cut, 0);
    let plant = cut.at(Edge::Plant).unwrap();
    assert!((0.5..=1.0).contains(&gap(&set, 2, 5, plant)));
    assert!(plant_turn(&set, 2, cut) > 40.0);
    for q in way(&set, 2, plant, cut.end) {
        assert!(distance(q, Point::new(4.9, 2.6)) > 0.6, "{q:?}");
    }
}

#[test]
fn v_cut_plants_between_60_and_120_degrees() {
    for (from, to) in [
        ("right wing", "right slot"),
        ("right wing", "right corner"),
        ("left slot", "left wing"),
        ("right block", "right wing"),
        ("left corner", "left wing"),
    ] {
        let set = one(
            &format!(r#""1": {{"at": "top", "ball": true}}, "2": {{"at": "{from}"}}"#),
            &format!(
                r#"{{"who": 2, "do": "cut", "kind": "v-cut", "to": "{to}"}}, {{"who": 1, "do": "pass", "to": 2}}"#
            ),
        );
        let turn = plant_turn(&set, 2, set.action(2, Verb::Cut, 0));
        assert!((58.0..=122.0).contains(&turn), "{from} to {to}: {turn}");
    }
}

#[test]
fn backdoor_sells_plants_and_changes_speed() {
    for from in ["right wing", "left slot", "right corner", "left low wing"] {
        let set = one(
            &format!(r#""1": {{"at": "top", "ball": true}}, "2": {{"at": "{from}"}}"#),
            r#"{"who": 2, "do": "cut", "kind": "backdoor"}, {"who": 1, "do": "pass", "kind": "bounce", "to": 2}"#,
        );
        let cut = set.action(2, Verb::Cut, 0);
        let plant = cut.at(Edge::Plant).unwrap();
        let turn = plant_turn(&set, 2, cut);
        assert!((98.0..=152.0).contains(&turn), "{from}: {turn}");
        let (slow, fast) = (
            fastest(&set, 2, cut.start, plant),
            fastest(&set, 2, plant, cut.end),
        );
        assert!(fast >= 1.5 * slow, "{from}: {slow} then {fast}");
        let release = set.time(1, Verb::Pass, 0, Edge::Release);
        assert!(
            (0.3..=1.2).contains(&(release - plant)),
            "{from}: {}",
            release - plant
        );
    }
}

#[test]
fn cutter_over_the_elbows_goes_over_them() {
    let set = one(
        r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}, "4": {"at": "left elbow"}, "5": {"at": "right elbow"}"#,
        r#"{"who": 1, "do": "dribble", "to": [-0.9, 7.9]},
           {"who": 2, "do": "cut", "kind": "over-the-elbows", "off": [4, 5], "to": "right wing"}"#,
    );
    let cut = set.action(2, Verb::Cut, 0);
    for mark in cut.marks.iter().filter(|m| m.edge == Edge::PassBy) {
        let q = at(&set, 2, mark.t);
        assert!((5.0..=5.7).contains(&q.y), "{q:?}");
    }
}

#[test]
fn shallow_cut_passes_the_dribbler_at_a_distance() {
    let set = one(
        r#""1": {"at": "top", "ball": true}, "2": {"at": "right wing"}"#,
        r#"{"who": 1, "do": "dribble", "kind": "dribble-at", "to": "right wing"},
           {"who": 2, "do": "cut", "kind": "shallow", "to": "top"}"#,
    );
    let near = (0..=(set.timeline.duration() * 50.0) as i32)
        .map(|i| gap(&set, 1, 2, f64::from(i) * 0.02))
        .fold(f64::INFINITY, f64::min);
    assert!(near >= 1.5, "{near}");
}

#[test]
fn double_screen_stands_shoulder_to_shoulder() {
    let set = one(
        r#""1": {"at": "top", "ball": true}, "2": {"at": "right corner"}, "4": {"at": "left elbow"}, "5": {"at": "right elbow"}"#,
        r#"{"who": [4, 5], "do": "screen", "kind": "double", "for": 2, "at": [4.4, 3.2]},
           {"who": 2, "do": "cut", "off": [4, 5], "to": "right slot"}"#,
    );
    let t = set.time(2, Verb::Cut, 0, Edge::PassBy);
    let shoulder = set.timeline.limits(p(4)).shoulder;
    let between = gap(&set, 4, 5, t) - shoulder;
    assert!((0.0..=0.10).contains(&between), "{between}");
    // Nobody runs through them.
    for i in 0..=(set.timeline.duration() * 100.0) as i32 {
        for s in [4, 5] {
            let near = gap(&set, 2, s, f64::from(i) * 0.01);
            assert!(near > 0.42, "{near} from {s} at {i}");
        }
    }
}

#[test]
fn ball_screens_with_a_fixed_back_look_away_from_ring_or_baseline() {
    for (kind, want) in [("flat", 180.0), ("step-up", 180.0)] {
        let set = one(
            r#""1": {"at": "top", "ball": true}, "5": {"at": "nail"}"#,
            &format!(
                r#"{{"who": 5, "do": "screen", "kind": "{kind}", "for": 1}}, {{"who": 1, "do": "dribble", "off": 5, "to": "right elbow"}}"#
            ),
        );
        let screen = set.timeline.screens().first().unwrap();
        let off = wrap_angle(screen.screen.facing - f64::to_radians(want)).to_degrees();
        assert!(off.abs() < 20.0, "{kind}: {off}");
    }
}

#[test]
fn snake_goes_to_both_sides() {
    let set = one(
        r#""1": {"at": "right slot", "ball": true}, "2": {"at": "left corner"}"#,
        r#"{"who": 1, "do": "dribble", "kind": "snake", "to": [0.5, 2.0]}"#,
    );
    let d = set.action(1, Verb::Dribble, 0);
    let (from, to) = (at(&set, 1, d.start), at(&set, 1, d.end));
    let line = direction(to - from).unwrap();
    let off: Vec<f64> = way(&set, 1, d.start, d.end)
        .iter()
        .map(|q| line.cross(*q - from))
        .collect();
    let (least, most) = (
        off.iter().copied().fold(f64::INFINITY, f64::min),
        off.iter().copied().fold(f64::NEG_INFINITY, f64::max),
    );
    assert!(least < -0.3 && most > 0.3, "{least} to {most}");
}

#[test]
fn kept_hand_off_leaves_the_ball_with_the_giver() {
    let set = one(
        r#""1": {"at": "left wing"}, "5": {"at": "top", "ball": true}"#,
        r#"{"who": 5, "do": "dribble", "kind": "dribble-at", "to": [-2.0, 6.5]},
           {"who": 5, "do": "handoff", "kind": "keep", "to": 1},
           {"who": 5, "do": "dribble", "kind": "hard", "to": [0.5, 1.8]}, {"who": 5, "do": "shot", "kind": "layup"}"#,
    );
    let t = set.time(5, Verb::Handoff, 0, Edge::Release);
    let near = gap(&set, 1, 5, t);
    assert!((0.50..=0.65).contains(&near), "{near}");
    assert_eq!(set.timeline.ball(t + 0.3).holder, Some(p(5)));
}

#[test]
fn mirrored_kinds_run_mirrored_ways() {
    use crate::play::{Options, Play};
    for action in [
        r#"{"who": 2, "do": "cut", "kind": "v-cut", "to": "right slot"}"#,
        r#"{"who": 2, "do": "cut", "kind": "backdoor"}"#,
        r#"{"who": 2, "do": "cut", "kind": "shallow", "to": "top"}"#,
        r#"{"who": 2, "do": "cut", "kind": "loop", "to": "left slot"}"#,
        r#"{"who": 2, "do": "cut", "kind": "through", "to": "left corner"}"#,
        r#"{"who": 2, "do": "cut", "kind": "curl", "off": 5, "to": "rim"}"#,
        r#"{"who": 1, "do": "dribble", "kind": "crossover", "to": [0, 2]}"#,
        r#"{"who": 1, "do": "dribble", "kind": "snake", "to": [0, 2]}"#,
        r#"{"who": 1, "do": "dribble", "kind": "hesitation", "to": [0, 2]}"#,
    ] {
        let text = format!(
            r#"{{"backcut": 1, "title": "x", "players": {{"1": {{"at": "top", "ball": true}},
               "2": {{"at": "right wing"}}, "5": {{"at": "right elbow"}}}}, "beats": [{{"actions": [{action}]}}]}}"#
        );
        let open = |mirror| {
            let options = Options {
                mirror,
                ..Options::default()
            };
            Play::open(text.as_bytes(), &options).unwrap()
        };
        let (a, b) = (open(false), open(true));
        for i in 0..=50 {
            let t = a.timeline().duration() * f64::from(i) / 50.0;
            for who in [1, 2, 5] {
                let (m, n) = (
                    a.timeline().player(p(who), t).unwrap(),
                    b.timeline().player(p(who), t).unwrap(),
                );
                assert_eq!((m.x, m.y), (-n.x, n.y), "{action} at {t}");
            }
        }
    }
}
