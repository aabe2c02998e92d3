//! Each kind as a coach would check it on the floor.

mod ways;

use crate::math::{Point, Vec2, angle_of, direction, distance, turn_between, unit};
use crate::play::{Options, Play};
use crate::set::{Edge, PlayerId};
use crate::timeline::{BallUse, Frame, TimedAction};
use std::format;
use std::vec::Vec;

/// A set of five (or fewer) with these actions in one beat.
fn open(players: &str, actions: &str) -> Play {
    let text = format!(
        r#"{{"backcut": 1, "title": "T", "players": {{{players}}},
            "beats": [{{"actions": [{actions}]}}]}}"#
    );
    Play::open(text.as_bytes(), &Options::default()).unwrap_or_else(|f| panic!("{f}"))
}

const FIVE: &str = r#""1": {"at": "top", "ball": true}, "2": {"at": "right wing"}, "3": {"at": "right corner"},
    "4": {"at": "left block"}, "5": {"at": "right elbow"}"#;

fn p(n: u8) -> PlayerId {
    PlayerId::new(n).unwrap()
}

fn row(play: &Play, beat_action: (u16, u16)) -> &TimedAction {
    let at = |a: &&TimedAction| (a.id.beat, a.id.action) == beat_action;
    play.timeline().actions().iter().find(at).unwrap()
}

fn at(play: &Play, n: u8, t: f64) -> Point {
    let m = play.timeline().player(p(n), t).unwrap();
    Point::new(m.x, m.y)
}

fn speed(play: &Play, n: u8, t: f64) -> f64 {
    play.timeline().player(p(n), t).unwrap().speed
}

/// Directions of travel at every hundredth of a second in which the player moves.
fn headings(play: &Play, n: u8, from: f64, to: f64) -> Vec<Vec2> {
    let mut out = Vec::new();
    let mut t = from;
    while t < to {
        if let Some(d) = direction(at(play, n, t + 0.01) - at(play, n, t))
            && speed(play, n, t) > 0.2
        {
            out.push(d);
        }
        t += 0.01;
    }
    out
}

/// The sharpest turn between neighbouring headings, degrees.
fn sharpest(headings: &[Vec2]) -> f64 {
    headings
        .windows(2)
        .map(|w| {
            turn_between(angle_of(w[0]), angle_of(w[1]))
                .abs()
                .to_degrees()
        })
        .fold(0.0, f64::max)
}

fn nearest(play: &Play, a: u8, b: u8, from: f64, to: f64) -> f64 {
    let mut t = from;
    let mut least = f64::INFINITY;
    while t < to {
        least = least.min(distance(at(play, a, t), at(play, b, t)));
        t += 0.005;
    }
    least
}

// --- cuts ----------------------------------------------------------------------------------

#[test]
fn a_v_cut_has_two_legs_and_a_sharp_plant() {
    let play = open(
        FIVE,
        r#"{"who": 2, "do": "cut", "kind": "v-cut", "to": [3.2, 6.6]}"#,
    );
    let cut = row(&play, (0, 0));
    let plant = cut.at(Edge::Plant).unwrap();
    assert!(plant > cut.start + 0.3 && plant < cut.end - 0.5);
    let [start, turn, end] = [cut.start, plant, cut.end].map(|t| at(&play, 2, t));
    assert!(
        turn.to_vec2().hypot() < start.to_vec2().hypot(),
        "goes in first"
    );
    let corner = turn_between(angle_of(start - turn), angle_of(end - turn))
        .abs()
        .to_degrees();
    assert!((40.0..=120.0).contains(&corner), "{corner}");
    assert!(sharpest(&headings(&play, 2, cut.start, cut.end)) > 45.0);
}

#[test]
fn an_l_cut_turns_square() {
    let play = open(
        FIVE,
        r#"{"who": 4, "do": "cut", "kind": "l-cut", "to": "left wing"}"#,
    );
    let cut = row(&play, (0, 0));
    let turn = at(&play, 4, cut.at(Edge::Plant).unwrap());
    assert!(
        (turn.x - at(&play, 4, cut.start).x).abs() < 1e-6,
        "straight up the lane line"
    );
    let corner = sharpest(&headings(&play, 4, cut.start, cut.end));
    assert!((80.0..=100.0).contains(&corner), "{corner}");
}

#[test]
fn a_backdoor_cut_sells_plants_and_bursts() {
    let play = open(
        FIVE,
        r#"{"who": 2, "do": "cut", "kind": "backdoor", "to": "rim"}, {"who": 1, "do": "pass", "kind": "bounce", "to": 2}"#,
    );
    let cut = row(&play, (0, 0));
    let plant = cut.at(Edge::Plant).unwrap();
    let ball = at(&play, 1, 0.0);
    let (start, turn) = (at(&play, 2, cut.start), at(&play, 2, plant));
    assert!(
        distance(turn, ball) < distance(start, ball) - 0.4,
        "shows for the ball"
    );
    let slow = distance(start, turn) / (plant - cut.start);
    let fast = distance(turn, at(&play, 2, plant + 1.0));
    assert!(fast > 1.5 * slow, "{slow} then {fast} m/s");
    let release = row(&play, (0, 1)).at(Edge::Release).unwrap();
    assert!(
        (0.45..=1.0).contains(&(release - plant)),
        "pass {} after the plant",
        release - plant
    );
}

#[test]
fn a_basket_cut_steps_away_from_its_pass_first() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "pass", "to": 2}, {"who": 1, "do": "cut", "kind": "basket", "to": "rim"}"#,
    );
    let cut = row(&play, (0, 1));
    let (start, turn) = (
        at(&play, 1, cut.start),
        at(&play, 1, cut.at(Edge::Plant).unwrap()),
    );
    assert!(distance(turn, at(&play, 2, 1.0)) > distance(start, at(&play, 2, 1.0)) + 0.3);
    let release = row(&play, (0, 0)).at(Edge::Release).unwrap();
    assert!(cut.start - release <= 0.6, "no standing after the pass");
}

#[test]
fn a_curl_wraps_the_screener() {
    let play = open(
        FIVE,
        r#"{"who": 5, "do": "screen", "kind": "down", "for": 3, "at": [4.6, 3.2]},
           {"who": 3, "do": "cut", "kind": "curl", "off": 5, "to": "low paint"}"#,
    );
    let cut = row(&play, (0, 1));
    let by = cut.at(Edge::PassBy).unwrap();
    let near = nearest(&play, 3, 5, by - 0.3, by + 0.6);
    assert!((0.5..=0.9).contains(&near), "{near}");
    let way = headings(&play, 3, cut.at(Edge::Plant).unwrap(), cut.end);
    assert!(by > cut.at(Edge::Plant).unwrap());
    let turn: f64 = way
        .windows(2)
        .map(|w| turn_between(angle_of(w[0]), angle_of(w[1])))
        .sum();
    assert!(
        (70.0..=190.0).contains(&turn.abs().to_degrees()),
        "{}",
        turn.to_degrees()
    );
}

#[test]
fn a_fade_stops_at_the_screen_and_bounces_away() {
    let play = open(
        FIVE,
        r#"{"who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.9, 2.6]},
           {"who": 3, "do": "cut", "kind": "fade", "off": 5, "to": "right corner"}"#,
    );
    let cut = row(&play, (0, 1));
    let plant = cut.marks.iter().rfind(|m| m.edge == Edge::Plant).unwrap().t;
    let stop = at(&play, 3, plant);
    assert!((0.6..=1.0).contains(&distance(stop, Point::new(4.9, 2.6))));
    assert!(distance(at(&play, 3, cut.end), stop) > 1.5);
}

#[test]
fn a_rejecting_cutter_shows_the_screen_and_goes_the_other_way() {
    let play = open(
        FIVE,
        r#"{"who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.9, 2.6]},
           {"who": 3, "do": "cut", "kind": "reject", "off": 5, "to": "rim"}"#,
    );
    let cut = row(&play, (0, 1));
    let plant = cut.marks.iter().rfind(|m| m.edge == Edge::Plant).unwrap().t;
    let [start, turn, end] = [cut.start, plant, cut.end].map(|t| at(&play, 3, t));
    assert!(distance(turn, Point::new(4.9, 2.6)) < distance(start, Point::new(4.9, 2.6)));
    assert!(
        distance(turn, Point::new(4.9, 2.6)) > 0.6,
        "does not use it"
    );
    assert!(distance(end, Point::ZERO) < 1.0);
}

#[test]
fn a_fill_goes_when_the_leaver_is_two_metres_gone() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "pass", "to": 2}, {"who": 1, "do": "cut", "kind": "basket", "to": "rim"},
           {"who": 4, "do": "cut", "kind": "fill", "to": "top"}"#,
    );
    let fill = row(&play, (0, 2));
    let gone = distance(at(&play, 1, fill.start), Point::new(0.0, 7.15));
    assert!((1.6..=3.2).contains(&gone), "{gone}");
}

#[test]
fn a_lift_goes_with_the_drive() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "dribble", "kind": "hard", "to": "nail"},
           {"who": 3, "do": "cut", "kind": "lift", "to": [6.6, 2.2]}"#,
    );
    assert!(row(&play, (0, 1)).start >= row(&play, (0, 0)).start - 1e-6);
}

#[test]
fn splitting_cutters_do_not_go_at_once() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "pass", "to": 5}, {"who": 1, "do": "cut", "kind": "split", "to": "right slot"},
           {"who": 2, "do": "cut", "kind": "split", "to": "left slot"}"#,
    );
    let apart = row(&play, (0, 2)).start - row(&play, (0, 1)).start;
    assert!(apart >= 0.4, "{apart}");
}

#[test]
fn clearing_out_goes_by_way_of_the_ring() {
    let play = open(
        FIVE,
        r#"{"who": 2, "do": "cut", "kind": "through", "to": "left corner"}"#,
    );
    let cut = row(&play, (0, 0));
    let mut t = cut.start;
    let mut least = f64::INFINITY;
    while t < cut.end {
        least = least.min(distance(at(&play, 2, t), Point::ZERO));
        t += 0.02;
    }
    assert!(least < 1.5, "{least}");
}

// --- dribbles ------------------------------------------------------------------------------

#[test]
fn a_hesitation_slows_and_goes_again() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "dribble", "kind": "hesitation", "to": "low paint"}"#,
    );
    let d = row(&play, (0, 0));
    let speeds: Vec<f64> = (1..100)
        .map(|i| speed(&play, 1, d.start + (d.end - d.start) * f64::from(i) / 100.0))
        .collect();
    let slowest = speeds[20..75].iter().copied().fold(f64::INFINITY, f64::min);
    let before = speeds[..40].iter().copied().fold(0.0, f64::max);
    let after = speeds[50..].iter().copied().fold(0.0, f64::max);
    assert!(
        slowest < 1.6 && before > 2.5 && after > 2.5,
        "{before} {slowest} {after}"
    );
}

#[test]
fn a_crossover_changes_direction_at_a_plant() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "dribble", "kind": "crossover", "to": "left elbow"}"#,
    );
    let d = row(&play, (0, 0));
    let plant = d.at(Edge::Plant).unwrap();
    let way = |from: f64| direction(at(&play, 1, from + 0.05) - at(&play, 1, from)).unwrap();
    let turn = turn_between(angle_of(way(plant - 0.06)), angle_of(way(plant + 0.01)));
    let turn = turn.abs().to_degrees();
    assert!((30.0..=90.0).contains(&turn), "{turn}");
}

#[test]
fn a_retreating_dribbler_keeps_eyes_on_the_ring() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "dribble", "kind": "retreat", "to": [0, 9.4]}"#,
    );
    let d = row(&play, (0, 0));
    let half = 0.5 * (d.start + d.end);
    assert!(play.timeline().player(p(1), half).unwrap().facing.abs() < 0.3);
}

#[test]
fn takes_only_ever_lengthens() {
    let at = |takes: &str| {
        let action = format!(r#"{{"who": 1, "do": "dribble", "to": "right slot"{takes}}}"#);
        let play = open(FIVE, &action);
        let d = row(&play, (0, 0));
        d.end - d.start
    };
    let plain = at("");
    assert!((at(r#", "takes": 3"#) - 3.0).abs() < 0.01);
    assert!((at(r#", "takes": 0.2"#) - plain).abs() < 1e-9);
}

// --- screens -------------------------------------------------------------------------------

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
            r#""3": {"at": [-2.0, 1.4]}"#,
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
            off <= 35.0,
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

// --- the ball ------------------------------------------------------------------------------

#[test]
fn a_taker_gets_the_ball_in_stride_from_a_giver_who_stands() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "dribble", "kind": "dribble-at", "to": [3.2, 6.0]},
           {"who": 1, "do": "handoff", "kind": "dho", "to": 2},
           {"who": 2, "do": "dribble", "to": "left slot"}"#,
    );
    let give = row(&play, (0, 1));
    let (set, release) = (give.at(Edge::Set).unwrap(), give.at(Edge::Release).unwrap());
    assert!(release - set >= 0.2 - 1e-5);
    assert!(speed(&play, 1, release) < 0.01);
    assert!(
        speed(&play, 2, release) > 2.5,
        "{}",
        speed(&play, 2, release)
    );
    let apart = distance(at(&play, 1, release), at(&play, 2, release));
    assert!((0.50..=0.65).contains(&apart), "{apart}");
}

#[test]
fn a_pass_to_a_spot_comes_with_the_feet() {
    let play = open(
        FIVE,
        r#"{"who": 3, "do": "cut", "kind": "lift", "to": [6.4, 2.6]}, {"who": 1, "do": "pass", "to": 3}"#,
    );
    let (arrives, catch) = (
        row(&play, (0, 0)).end,
        row(&play, (0, 1)).at(Edge::Catch).unwrap(),
    );
    assert!(
        (-0.05 - 1e-5..=0.15 + 1e-5).contains(&(catch - arrives)),
        "{}",
        catch - arrives
    );
}

#[test]
fn a_free_pass_may_leave_off_the_running_dribble() {
    let play = open(
        FIVE,
        r#"{"id": "d", "who": 1, "do": "dribble", "to": "right slot"},
           {"who": 1, "do": "pass", "to": 2, "free": true, "with": {"id": "d", "edge": "end", "lag": -0.2, "mine": "release"}}"#,
    );
    let release = row(&play, (0, 1)).at(Edge::Release).unwrap();
    assert!((row(&play, (0, 0)).end - release - 0.2).abs() < 1e-5);
    assert!(speed(&play, 1, release) > 0.3);
}

#[test]
fn a_dribble_is_whole_bounces_with_the_ball_in_hand_at_both_ends() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "dribble", "to": "left wing"}, {"who": 1, "do": "pass", "to": 2}"#,
    );
    let tl = play.timeline();
    let span = tl
        .ball_spans()
        .iter()
        .find(|s| matches!(s.what, BallUse::Dribbled(_)))
        .unwrap();
    assert!(tl.ball(span.start + 1e-4).z > 0.9 && tl.ball(span.end - 1e-4).z > 0.9);
    let mut floor = 0;
    let mut low = false;
    let mut frame = Frame::default();
    let mut t = span.start;
    while t < span.end {
        tl.frame(t, &mut frame);
        let now = frame.ball.z < 0.2;
        floor += i32::from(now && !low);
        low = now;
        t += 0.005;
    }
    assert_eq!(
        floor,
        crate::math::round((span.end - span.start) / 0.5) as i32
    );
}

#[test]
fn nobody_runs_through_a_team_mate_who_stands() {
    let play = open(
        r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}, "4": {"at": [0, 4.2]}"#,
        r#"{"who": 2, "do": "cut", "to": "right wing"}"#,
    );
    let near = nearest(&play, 2, 4, 0.0, play.timeline().duration());
    assert!(near > 0.55, "{near}");
}

#[test]
fn ties_land_where_they_are_written() {
    let play = open(
        FIVE,
        r#"{"who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.9, 2.6]},
           {"id": "loud", "who": 3, "do": "cut", "off": 5, "to": "right slot"},
           {"who": 4, "do": "cut", "kind": "v-cut", "to": "left wing",
            "with": {"id": "loud", "edge": "pass-by", "of": 5, "lag": -0.25, "mine": "plant"}}"#,
    );
    let by = row(&play, (0, 1)).at(Edge::PassBy).unwrap();
    let plant = row(&play, (0, 2)).at(Edge::Plant).unwrap();
    assert!((plant - by + 0.25).abs() < 2e-6, "{plant} {by}");
}

#[test]
fn contradictory_ties_name_each_other_and_what_is_missing() {
    let text = r#"{"backcut": 1, "title": "T", "players": {"1": {"at": "top", "ball": true}, "2": {"at": "left wing"}},
        "beats": [{"actions": [
        {"id": "a", "who": 1, "do": "dribble", "to": "right slot", "after": {"id": "b", "lag": 0.5}},
        {"id": "b", "who": 2, "do": "cut", "to": "left corner", "after": {"id": "a", "lag": 0.5}}]}]}"#;
    let faults = Play::open(text.as_bytes(), &Options::default()).unwrap_err();
    let fault = &faults.list[0];
    assert_eq!(fault.code, "contradictory-waits");
    let places: Vec<&str> = [&fault.place]
        .into_iter()
        .chain(&fault.related)
        .map(|p| p.pointer.as_str())
        .collect();
    assert_eq!(
        places,
        ["/beats/0/actions/0/after", "/beats/0/actions/1/after"]
    );
    assert!(fault.found.contains(" s short"), "{}", fault.found);
}

#[test]
fn every_kind_of_move_can_be_written_and_moves() {
    use crate::set::{Kind, Verb};
    for kind in Kind::table()
        .iter()
        .filter(|k| matches!(k.verb, Verb::Cut | Verb::Dribble))
    {
        let (who, verb) = if kind.verb == Verb::Cut {
            (2, "cut")
        } else {
            (1, "dribble")
        };
        let play = open(
            FIVE,
            &format!(
                r#"{{"who": {who}, "do": "{verb}", "kind": "{}", "to": "left slot"}}"#,
                kind.name
            ),
        );
        let action = row(&play, (0, 0));
        assert!(action.end > action.start + 0.5, "{}", kind.name);
        assert!(
            distance(at(&play, who, action.end), at(&play, who, 0.0)) > 1.0,
            "{}",
            kind.name
        );
        // No loops: the way is never much longer than the way there.
        let mut way = 0.0;
        let mut t = action.start;
        while t < action.end {
            way += distance(at(&play, who, t), at(&play, who, t + 0.02));
            t += 0.02;
        }
        let straight = distance(at(&play, who, action.start), at(&play, who, action.end));
        assert!(
            way < 1.45 * straight + 3.2,
            "{}: {way} for {straight}",
            kind.name
        );
    }
}

#[test]
fn every_kind_of_screen_pass_and_shot_can_be_written() {
    use crate::set::{Kind, Verb};
    for kind in Kind::table() {
        let actions = match kind.verb {
            Verb::Screen if matches!(kind.name, "gate" | "double") => format!(
                r#"{{"who": [4, 5], "do": "screen", "kind": "{}", "for": 3, "at": [3.4, 3.4]}}, {{"who": 3, "do": "cut", "off": [4, 5], "to": "top"}}"#,
                kind.name
            ),
            Verb::Screen => format!(
                r#"{{"who": 5, "do": "screen", "kind": "{}", "for": 3}}, {{"who": 3, "do": "cut", "off": 5, "to": "right slot"}}"#,
                kind.name
            ),
            Verb::Pass => format!(
                r#"{{"who": 1, "do": "pass", "kind": "{}", "to": 2}}"#,
                kind.name
            ),
            Verb::Handoff => format!(
                r#"{{"who": 1, "do": "handoff", "kind": "{}", "to": 2}}"#,
                kind.name
            ),
            Verb::Shot => format!(r#"{{"who": 1, "do": "shot", "kind": "{}"}}"#, kind.name),
            Verb::Hold | Verb::Fake => {
                let of = if kind.verb == Verb::Fake {
                    r#", "of": "pass""#
                } else {
                    ""
                };
                let verb = if kind.verb == Verb::Fake {
                    "fake"
                } else {
                    "hold"
                };
                format!(
                    r#"{{"who": 1, "do": "{verb}", "kind": "{}"{of}}}"#,
                    kind.name
                )
            }
            Verb::Cut | Verb::Dribble => continue,
        };
        let play = open(FIVE, &actions);
        assert!(play.timeline().duration().is_finite() && play.timeline().duration() < 20.0);
    }
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
