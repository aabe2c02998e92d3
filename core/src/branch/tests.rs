//! Branches of small sets, and what holds for all of them.

use super::{Dropped, Line, NotPlayed};
use crate::document;
use crate::math::{distance, turn_between};
use crate::set::{PlayerId, Set};
use crate::timeline::{Frame, Timeline};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use proptest::prelude::*;

/// Two at the top, a cutter; the read is made in the middle of the cut.
fn written(edge: &str, by: &str, beats: &str) -> String {
    format!(
        r#"{{ "backcut": 1, "title": "T", "players": {{
            "1": {{"at": "top", "ball": true}}, "2": {{"at": "left wing"}},
            "3": {{"at": "right corner"}}, "4": {{"at": "left elbow"}} }},
          "beats": [ {{ "actions": [
            {{"who": 1, "do": "dribble", "to": "right slot"}},
            {{"who": 4, "do": "screen", "for": 2}},
            {{"id": "cut", "who": 2, "do": "cut", "off": 4, "to": "right block"}},
            {{"who": 3, "do": "cut", "to": "right wing", "pace": "jog"}} ] }},
            {{ "actions": [ {{"who": 1, "do": "pass", "to": 3}},
            {{"who": 3, "do": "shot", "after": "cut"}} ] }} ],
          "reads": [ {{ "title": "R", "at": {{"id": "cut", "edge": "{edge}"}}, "by": {by},
            "if": {{"who": "X2", "does": "trails"}}, "beats": [ {{ "actions": [ {beats} ] }} ] }} ] }}"#
    )
}

fn set(edge: &str, by: &str, beats: &str) -> Set {
    document::read(written(edge, by, beats).as_bytes()).unwrap()
}

fn forked(set: &Set) -> (Line, Line, f64) {
    let court = set.floor();
    let main = Line::main(set, &court).unwrap();
    let read = &set.reads[0];
    let at = super::fork_instant(set, main.timeline(), read).unwrap();
    let branch = main.fork(read, &court).unwrap();
    (main, branch, at)
}

fn who(n: u8) -> PlayerId {
    PlayerId::new(n).unwrap()
}

const FADE: &str = r#"{"who": 2, "do": "cut", "kind": "fade", "to": "left corner"},
    {"who": 1, "do": "pass", "to": 2}, {"who": 2, "do": "shot"}"#;

/// The largest step of velocity between frames, m/s, and of the ball's place, metres.
fn steps(tl: &Timeline, from: f64, until: f64) -> (f64, f64, f64) {
    const DT: f64 = 1.0 / 240.0;
    let (mut jolt, mut ball, mut turn) = (0.0_f64, 0.0_f64, 0.0_f64);
    let mut frames: Vec<Frame> = Vec::new();
    let mut t = from;
    while t < until {
        let mut frame = Frame::default();
        tl.frame(t, &mut frame);
        frames.push(frame);
        t += DT;
    }
    for three in frames.windows(3) {
        for i in 0..5 {
            let at = |k: usize| three[k].players[i].map(|p| kurbo::Point::new(p.x, p.y));
            if let (Some(a), Some(b), Some(c)) = (at(0), at(1), at(2)) {
                jolt = jolt.max(distance(b + (b - a), c) / DT);
                let face = |k: usize| three[k].players[i].unwrap().facing;
                turn = turn.max(turn_between(face(0), face(1)).abs() / DT);
            }
        }
        let b = |k: usize| three[k].ball;
        let flat = (b(1).x - b(0).x).hypot(b(1).y - b(0).y);
        ball = ball.max(flat.hypot(b(1).z - b(0).z));
    }
    (jolt, ball, turn)
}

fn equal_until(a: &Timeline, b: &Timeline, at: f64) -> bool {
    let (mut x, mut y) = (Frame::default(), Frame::default());
    let mut k = 0;
    while f64::from(k) / 97.0 < at {
        let t = f64::from(k) / 97.0;
        a.frame(t, &mut x);
        b.frame(t, &mut y);
        if format!("{x:?}") != format!("{y:?}") {
            return false;
        }
        k += 1;
    }
    true
}

#[test]
fn branch_is_its_line_up_to_the_fork_and_another_after_it() {
    let (main, branch, at) = forked(&set("cue", "[2, 1]", FADE));
    assert!(equal_until(main.timeline(), branch.timeline(), at));
    assert!(!equal_until(main.timeline(), branch.timeline(), at + 1.0));
}

#[test]
fn whoever_is_not_named_carries_on() {
    let (main, branch, at) = forked(&set("cue", "[2, 1]", FADE));
    let (a, b) = (main.timeline(), branch.timeline());
    assert!(at < 2.5, "3 is under way at {at}");
    let ends = [a, b].map(|tl| tl.player(who(3), 4.0).unwrap());
    assert!((ends[0].x - ends[1].x).abs() < 0.01 && (ends[0].y - ends[1].y).abs() < 0.01);
}

#[test]
fn named_players_do_the_beats_of_the_read() {
    let (_, branch, _) = forked(&set("cue", "[2, 1]", FADE));
    let end = branch.timeline().player(who(2), 99.0).unwrap();
    assert!(end.x < -5.0, "2 ends in the left corner: {end:?}");
    let shots = branch.timeline().actions().iter();
    let shots: Vec<_> = shots.filter(|a| a.verb.name() == "shot").collect();
    assert_eq!(shots.len(), 1);
    assert_eq!(shots[0].who, who(2));
}

#[test]
fn ties_to_what_is_left_out_are_told() {
    let set = set(
        "cue",
        "[2]",
        r#"{"who": 2, "do": "cut", "kind": "fade", "to": "left corner"}"#,
    );
    let (_, branch, _) = forked(&set);
    let told = branch.dropped();
    assert!(
        told.iter()
            .any(|d| matches!(d, Dropped::Tie { who: w, .. } if *w == who(3)))
    );
    assert!(
        told.iter()
            .any(|d| matches!(d, Dropped::Action { who: w, .. } if *w == who(2)))
    );
}

/// 3 comes up through a gate of 4 and 5; 5 leaves it at that instant.
fn gate(edge: &str) -> (Line, Line, f64) {
    let text = format!(
        r#"{{ "backcut": 1, "title": "G", "players": {{
            "1": {{"at": "right slot", "ball": true}}, "3": {{"at": [1.5, 0.85]}},
            "4": {{"at": "left elbow"}}, "5": {{"at": "right elbow"}} }},
          "beats": [ {{ "actions": [
            {{"who": [4, 5], "do": "screen", "kind": "gate", "for": 3, "at": [0, 4.95]}},
            {{"id": "through", "who": 3, "do": "cut", "off": [4, 5], "to": "top", "pace": "sprint"}},
            {{"who": 1, "do": "pass", "to": 3}}, {{"who": 3, "do": "shot"}} ] }} ],
          "reads": [ {{ "at": {{"id": "through", "edge": "{edge}"}}, "by": [5, 1],
            "if": {{"who": "X5", "does": "steps out"}}, "beats": [ {{ "actions": [
            {{"who": 5, "do": "cut", "kind": "dive", "via": [[0.9, 2.6]], "to": "rim"}},
            {{"who": 1, "do": "pass", "kind": "lob", "to": 5}},
            {{"who": 5, "do": "shot", "kind": "layup"}} ] }} ] }} ] }}"#
    );
    forked(&document::read(text.as_bytes()).unwrap())
}

#[test]
fn a_gate_that_loses_a_post_stands_as_a_single_screen() {
    let (main, branch, at) = gate("cue");
    let place = |line: &Line, n: u8, t: f64| line.timeline().player(who(n), t).unwrap().at();
    let through = |line: &Line| {
        let mut rows = line.timeline().actions().iter();
        rows.find(|a| a.who == who(3)).unwrap().end
    };
    // In the main line the posts step together once the cutter is through; in the branch there is
    // nobody to shut it with, and who is left stays where the cutter went by.
    let (shut, stood) = (place(&main, 4, at + 1.0), place(&branch, 4, at + 1.0));
    assert!(distance(shut, place(&main, 4, at)) > 0.2);
    assert_eq!(stood, place(&branch, 4, at));
    // The cutter goes through all the same, as late as before.
    let end = through(&branch);
    assert!((through(&main) - end).abs() < 1e-4);
    assert!(distance(place(&branch, 3, end), place(&main, 3, end)) < 1e-3);
    assert!(place(&branch, 5, branch.timeline().duration()).y < 1.0);

    // Once the gate is shutting, who is left ends the step.
    let (main, branch, at) = gate("pass-by");
    let ends = [&main, &branch].map(|line| place(line, 4, at + 1.0));
    assert!(distance(ends[0], ends[1]) < 1e-9, "{ends:?}");
}

#[test]
fn hold_stops_a_runner() {
    let set = set("pass-by", "[2]", r#"{"who": 2, "do": "hold"}"#);
    let (_, branch, at) = forked(&set);
    let tl = branch.timeline();
    let [a, b] = [at, at + 3.0].map(|t| tl.player(who(2), t).unwrap());
    assert!(a.speed > 1.0 && b.speed == 0.0);
    let gone = (a.x - b.x).hypot(a.y - b.y);
    assert!(gone < 3.0, "{gone} m to stop");
}

#[test]
fn no_branch_leaves_after_the_shot() {
    let text = written("end", "[2]", r#"{"who": 2, "do": "hold"}"#)
        .replace(
            r#"{"id": "cut", "edge": "end"}"#,
            r#"{"id": "gone", "edge": "end"}"#,
        )
        .replace(
            r#"{"who": 3, "do": "shot""#,
            r#"{"id": "gone", "who": 3, "do": "shot""#,
        );
    let set = document::read(text.as_bytes()).unwrap();
    let court = set.floor();
    let main = Line::main(&set, &court).unwrap();
    let fork = main.fork(&set.reads[0], &court);
    assert_eq!(fork.unwrap_err(), NotPlayed::AfterTheShot);
}

#[test]
fn reads_nest() {
    let inner = r#"{"id": "fade", "who": 2, "do": "cut", "kind": "fade", "to": "left corner"} ] } ],
        "reads": [ { "at": {"id": "fade", "edge": "end"}, "by": [1, 4], "if": {"coverage": "switch"},
          "beats": [ { "actions": [ {"who": 1, "do": "pass", "to": 4}, {"who": 4, "do": "shot"}"#;
    let text = written("cue", "[2, 1]", inner) + " ] }";
    let set = document::read(text.as_bytes()).unwrap();
    let (_, branch, _) = forked(&set);
    let read = &branch.set().reads[0];
    let nested = branch.fork(read, &set.floor()).unwrap();
    let at = super::fork_instant(branch.set(), branch.timeline(), read).unwrap();
    assert!(equal_until(branch.timeline(), nested.timeline(), at));
    let last = nested.timeline().actions().last().unwrap();
    assert_eq!((last.who, last.verb.name()), (who(4), "shot"));
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, ..ProptestConfig::default() })]

    #[test]
    fn prop_branches_are_continuous_and_end(
        edge in prop::sample::select(alloc::vec!["start", "cue", "pass-by", "end"]),
        x in -6.5..6.5f64, y in 0.5..9.0f64,
        verb in 0..5usize, other in prop::bool::ANY,
    ) {
        let to = format!("[{x:.2}, {y:.2}]");
        let beats = [
            format!(r#"{{"who": 2, "do": "cut", "to": {to}}}, {{"who": 1, "do": "pass", "to": 2}}"#),
            format!(r#"{{"who": 1, "do": "dribble", "to": {to}}}, {{"who": 1, "do": "shot"}}"#),
            String::from(r#"{"who": 1, "do": "pass", "to": 2}, {"who": 2, "do": "shot"}"#),
            format!(r#"{{"who": 1, "do": "hold"}}, {{"who": 2, "do": "cut", "pace": "walk", "to": {to}}}"#),
            String::from(r#"{"who": 2, "do": "hold"}"#),
        ];
        let by = if other { "[1, 2, 3]" } else { "[1, 2]" };
        let set = set(edge, by, &beats[verb]);
        let (main, branch, at) = forked(&set);
        prop_assert!(equal_until(main.timeline(), branch.timeline(), at));
        let tl = branch.timeline();
        prop_assert!(tl.duration().is_finite() && tl.duration() > at);
        // Half a frame either side: nothing leaps at the seam itself.
        let (jolt, ball, turn) = steps(tl, at - 0.02, at + 0.02);
        prop_assert!(jolt < 0.2, "velocity leaps by {jolt} m/s");
        prop_assert!(ball < 0.12, "the ball leaps by {ball} m");
        prop_assert!(turn <= crate::motion::facing::TURN_RATE + 1e-6);
        // And nobody ever changes place but by running.
        let (jolt, _, _) = steps(tl, at, tl.duration());
        prop_assert!(jolt < 12.0, "somebody leaps");
    }
}
