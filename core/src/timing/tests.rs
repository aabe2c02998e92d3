//! When things happen: who waits for whom by the trade's own rules.
//!
//! Common practice, no source, for every bound.

use crate::choreography::SHUT_GAP;
use crate::court::Court;
use crate::math::{Point, distance};
use crate::scene::fixture::{Played, p, play, turnstile};
use crate::set::{Edge, Verb};
use crate::{document, timing};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

fn text(players: &str, beats: &[&str]) -> String {
    let beats: Vec<String> = beats
        .iter()
        .map(|b| format!(r#"{{"actions": [{b}]}}"#))
        .collect();
    format!(
        r#"{{"backcut": 1, "title": "x", "players": {{{players}}}, "beats": [{}]}}"#,
        beats.join(", ")
    )
}

fn one(players: &str, actions: &str) -> Played {
    play(&text(players, &[actions]))
}

fn at(set: &Played, who: u8, t: f64) -> Point {
    let m = set.timeline.player(p(who), t).unwrap();
    Point::new(m.x, m.y)
}

fn gap(set: &Played, a: u8, b: u8, t: f64) -> f64 {
    distance(at(set, a, t), at(set, b, t))
}

fn speed(set: &Played, who: u8, t: f64) -> f64 {
    set.timeline.player(p(who), t).unwrap().speed
}

/// Hundredths of a second from `from` to `to`.
fn times(from: f64, to: f64) -> impl Iterator<Item = f64> {
    (0..=((to - from) * 100.0) as i32).map(move |i| from + 0.01 * f64::from(i))
}

const PIN: &str =
    r#""1": {"at": "top", "ball": true}, "2": {"at": "right corner"}, "5": {"at": "right elbow"}"#;
const PIN_DOWN: &str = r#"{"who": 5, "do": "screen", "kind": "pin-down", "for": 2, "at": [4.9, 2.6]},
    {"who": 2, "do": "cut", "kind": "straight", "off": 5, "to": "right slot"},
    {"who": 1, "do": "pass", "to": 2}"#;

#[test]
fn screen_is_still_before_the_cutter_is_by_and_stays_after() {
    let set = one(PIN, PIN_DOWN);
    let screen = set.action(5, Verb::Screen, 0);
    let (stands, free) = (
        screen.at(Edge::Set).unwrap(),
        screen.at(Edge::Free).unwrap(),
    );
    let by = set.time(2, Verb::Cut, 0, Edge::PassBy);
    assert!(by - stands >= 0.3 && free - by >= 0.2 - 1e-6);
    assert!(times(stands + 0.01, free).all(|t| speed(&set, 5, t) < 1e-9));
}

#[test]
fn cutter_waits_at_the_plant_until_the_screen_is_set() {
    // From near by; a cutter with a long way leaves before, so that the screen stands no longer.
    let near = PIN.replace(r#""right corner""#, "[5.7, 1.6]");
    let set = one(
        &near,
        &PIN_DOWN.replace(r#""kind": "straight""#, r#""pace": "sprint""#),
    );
    let stands = set.time(5, Verb::Screen, 0, Edge::Set);
    let cut = set.action(2, Verb::Cut, 0);
    let plant = cut.at(Edge::Plant).unwrap();
    assert!(plant >= stands - 0.1, "{plant} {stands}");
    assert!(times(cut.start, plant - 0.01).all(|t| speed(&set, 2, t) < 1.5));
    let fast = times(plant, cut.end)
        .map(|t| speed(&set, 2, t))
        .fold(0.0, f64::max);
    assert!(fast > 3.0);
}

#[test]
fn roller_waits_until_the_dribbler_is_by() {
    let set = one(
        r#""1": {"at": "top", "ball": true}, "5": {"at": "right elbow"}"#,
        r#"{"who": 5, "do": "screen", "kind": "ball", "for": 1, "at": [0.75, 6.3]},
           {"who": 1, "do": "dribble", "kind": "hard", "off": 5, "to": [3.2, 3.6]},
           {"who": 5, "do": "cut", "kind": "roll"}"#,
    );
    let by = set.time(1, Verb::Dribble, 0, Edge::PassBy);
    let start = set.time(5, Verb::Cut, 0, Edge::Start);
    assert!((0.2 - 1e-6..=0.3).contains(&(start - by)), "{}", start - by);
}

#[test]
fn gate_opens_wide_and_shuts_behind_the_cutter() {
    let set = turnstile();
    let gate = set.action(4, Verb::Screen, 1);
    let shoulder = set.timeline.limits(p(4)).shoulder;
    let (open, shut) = (gate.at(Edge::Set).unwrap(), gate.at(Edge::Shut).unwrap());
    let by = set.time(3, Verb::Cut, 0, Edge::PassBy);
    assert!((gap(&set, 4, 5, by) - shoulder - 0.80).abs() < 0.05 || shut < by);
    assert!((gap(&set, 4, 5, open.max(shut - 0.05)) - shoulder - 0.80).abs() < 1e-6);
    assert!(gap(&set, 4, 5, gate.end) - shoulder <= 0.10);
    assert!((shut - by).abs() < 0.3, "at hips level");
    assert!(times(0.0, set.timeline.duration()).all(|t| gap(&set, 3, 4, t) > 0.42));
}

#[test]
fn gate_for_two_shuts_behind_the_second() {
    let set = one(
        r#""1": {"at": "top", "ball": true}, "2": {"at": "left block"}, "3": {"at": "right block"}, "4": {"at": "left elbow"}, "5": {"at": "right elbow"}"#,
        r#"{"who": [4, 5], "do": "screen", "kind": "gate", "for": [2, 3], "at": "nail"},
           {"who": 2, "do": "cut", "off": [4, 5], "to": "left slot"},
           {"who": 3, "do": "cut", "off": [4, 5], "to": "right slot", "after": {"id": "first", "edge": "pass-by"}}"#
            .replace(r#"{"who": 2,"#, r#"{"id": "first", "who": 2,"#)
            .as_str(),
    );
    let shut = set.time(4, Verb::Screen, 0, Edge::Shut);
    let by = set.time(3, Verb::Cut, 0, Edge::PassBy);
    assert!(by > set.time(2, Verb::Cut, 0, Edge::PassBy));
    assert!((shut - by).abs() < 0.3);
    assert!(
        (set.time(5, Verb::Screen, 0, Edge::Free) - shut) > 0.2,
        "shut for good"
    );
    assert!(gap(&set, 4, 5, set.action(4, Verb::Screen, 0).end) < 0.53 + SHUT_GAP);
}

#[test]
fn gate_that_is_gone_round_does_not_shut() {
    for side in ["left", "right"] {
        let set = one(
            r#""1": {"at": "top", "ball": true}, "3": {"at": "right block"}, "4": {"at": "left elbow"}, "5": {"at": "right elbow"}"#,
            &format!(
                r#"{{"who": [4, 5], "do": "screen", "kind": "gate", "for": 3, "at": "nail"}},
                   {{"who": 3, "do": "cut", "off": {{"who": 5, "side": "{side}"}}, "to": "right slot"}}"#
            ),
        );
        assert_eq!(set.action(4, Verb::Screen, 0).at(Edge::Shut), None);
        assert!(times(0.0, set.timeline.duration()).all(|t| gap(&set, 3, 5, t) > 0.42));
    }
}

const DHO: &str = r#""1": {"at": "left wing"}, "5": {"at": "top", "ball": true}"#;

#[test]
fn hand_off_meets_a_taker_in_stride_and_a_giver_who_stands() {
    for cut in [
        "",
        r#"{"who": 1, "do": "cut", "kind": "get", "off": 5, "to": [1.0, 4.5]},"#,
    ] {
        let set = one(
            DHO,
            &format!(
                r#"{{"who": 5, "do": "dribble", "kind": "dribble-at", "to": [-1.9, 6.5]}}, {cut}
                   {{"who": 5, "do": "handoff", "kind": "dho", "to": 1}},
                   {{"who": 1, "do": "dribble", "kind": "hard", "to": [1.7, 3.5]}}"#
            ),
        );
        let t = set.time(5, Verb::Handoff, 0, Edge::Release);
        assert!(
            times(t - 0.2, t).all(|t| speed(&set, 5, t) < 1e-6),
            "giver stands"
        );
        assert!(speed(&set, 1, t) >= 3.0, "{cut}: {}", speed(&set, 1, t));
        let near = gap(&set, 1, 5, t);
        assert!((0.50..=0.65).contains(&near), "{cut}: {near}");
    }
}

#[test]
fn pass_to_a_spot_arrives_with_the_receiver() {
    for cut in [
        r#""kind": "straight", "off": 5, "to": "right slot""#,
        r#""kind": "v-cut", "to": "right wing""#,
        r#""kind": "flash", "to": "right elbow""#,
    ] {
        let set = one(
            PIN,
            &format!(r#"{{"who": 2, "do": "cut", {cut}}}, {{"who": 1, "do": "pass", "to": 2}}"#),
        );
        let late = set.time(1, Verb::Pass, 0, Edge::Catch) - set.time(2, Verb::Cut, 0, Edge::End);
        assert!(
            (-0.05 - 1e-5..=0.15 + 1e-5).contains(&late),
            "{cut}: {late}"
        );
    }
}

#[test]
fn receiver_on_the_way_to_the_rim_catches_in_stride_and_goes_on() {
    let set = one(
        r#""1": {"at": "top", "ball": true}, "2": {"at": "right wing"}"#,
        r#"{"who": 2, "do": "cut", "kind": "backdoor"}, {"who": 1, "do": "pass", "kind": "bounce", "to": 2}, {"who": 2, "do": "shot", "kind": "layup"}"#,
    );
    let catch = set.time(1, Verb::Pass, 0, Edge::Catch);
    assert!(speed(&set, 2, catch) > 2.5 && speed(&set, 2, catch + 0.1) > 2.0);
}

#[test]
fn free_pass_may_leave_during_the_own_dribble() {
    let set = one(
        r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}"#,
        r#"{"who": 1, "do": "dribble", "to": "right wing"}, {"who": 1, "do": "pass", "to": 2, "free": true}"#,
    );
    let release = set.time(1, Verb::Pass, 0, Edge::Release);
    assert!(release < set.time(1, Verb::Dribble, 0, Edge::End));
    assert!(speed(&set, 1, release) > 0.5);
}

#[test]
fn runner_goes_round_a_standing_team_mate() {
    let set = one(
        r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}, "4": {"at": "nail"}"#,
        r#"{"who": 2, "do": "cut", "to": "right wing"}"#,
    );
    let near = times(0.0, set.timeline.duration())
        .map(|t| gap(&set, 2, 4, t))
        .fold(f64::INFINITY, f64::min);
    assert!(near >= 0.55, "{near}");
}

#[test]
fn takes_makes_a_move_last_longer() {
    for (takes, least) in [
        ("", 0.0),
        (r#", "takes": 4"#, 4.0),
        (r#", "takes": 0.1"#, 0.0),
    ] {
        let set = one(
            PIN,
            &format!(r#"{{"who": 2, "do": "cut", "to": "right wing"{takes}}}"#),
        );
        let cut = set.action(2, Verb::Cut, 0);
        let lasts = cut.end - cut.start;
        assert!(lasts >= least - 1e-3 && lasts < 4.1, "{takes}: {lasts}");
    }
}

#[test]
fn hold_and_fakes_stop_a_player() {
    for (action, lasts) in [
        (r#""do": "hold""#, 0.5),
        (r#""do": "hold", "takes": 1.2"#, 1.2),
        (r#""do": "fake", "of": "shot""#, 0.35),
    ] {
        let set = one(
            PIN,
            &format!(
                r#"{{"who": 1, "do": "dribble", "to": "right slot"}}, {{"who": 1, {action}}}, {{"who": 1, "do": "pass", "to": 2}}"#
            ),
        );
        let still = set
            .timeline
            .actions()
            .iter()
            .find(|a| matches!(a.verb, Verb::Hold | Verb::Fake))
            .unwrap();
        assert!((still.end - still.start - lasts).abs() < 1e-6);
        assert!(times(still.start, still.end).all(|t| speed(&set, 1, t) < 1e-6));
    }
}

#[test]
fn fill_starts_when_the_leaver_is_gone() {
    let set = play(&text(
        r#""1": {"at": "top", "ball": true}, "2": {"at": "right wing"}, "3": {"at": "left wing"}"#,
        &[
            r#"{"who": 1, "do": "pass", "to": 2}, {"who": 1, "do": "cut", "kind": "basket"},
             {"who": 3, "do": "cut", "kind": "fill", "to": "top"}"#,
        ],
    ));
    let start = set.time(3, Verb::Cut, 0, Edge::Start);
    let gone = distance(at(&set, 1, start), at(&set, 1, 0.0));
    assert!(gone >= 2.0 - 1e-6, "{gone}");
    assert!(gone < 2.6, "as soon as that: {gone}");
}

#[test]
fn lift_and_drift_start_with_the_drive() {
    for kind in ["lift", "drift"] {
        let set = play(&text(
            r#""1": {"at": "left wing"}, "2": {"at": "top", "ball": true}, "3": {"at": "right corner"}"#,
            &[&format!(
                r#"{{"who": 3, "do": "cut", "kind": "{kind}", "to": "right wing"}},
                   {{"who": 2, "do": "pass", "to": 1}}, {{"who": 1, "do": "dribble", "kind": "hard", "to": [-1.5, 1.5]}}"#
            )],
        ));
        let (mine, drive) = (
            set.time(3, Verb::Cut, 0, Edge::Start),
            set.time(1, Verb::Dribble, 0, Edge::Start),
        );
        assert!(mine >= drive - 1e-6, "{kind}: {mine} {drive}");
    }
}

#[test]
fn cutters_of_a_split_go_one_after_the_other() {
    let set = one(
        r#""1": {"at": "right slot", "ball": true}, "2": {"at": "right wing"}, "5": {"at": "right elbow"}"#,
        r#"{"who": 1, "do": "pass", "to": 5}, {"who": 1, "do": "cut", "kind": "split", "off": 5, "to": "right corner"},
           {"who": 2, "do": "cut", "kind": "split", "off": 5, "to": "top"}"#,
    );
    let (first, second) = (
        set.time(1, Verb::Cut, 0, Edge::Start),
        set.time(2, Verb::Cut, 0, Edge::Start),
    );
    assert!(
        (0.4..=0.9).contains(&(second - first)),
        "{}",
        second - first
    );
}

#[test]
fn decoy_meets_its_instant_to_the_tick() {
    for (edge, mine, lag) in [
        ("pass-by", "plant", -0.2),
        ("pass-by", "start", 0.1),
        ("end", "end", 0.0),
        ("plant", "start", 0.3),
    ] {
        let set = one(
            r#""1": {"at": "top", "ball": true}, "2": {"at": "right corner"}, "3": {"at": "left wing"}, "5": {"at": "right elbow"}"#,
            &format!(
                r#"{{"who": 5, "do": "screen", "kind": "pin-down", "for": 2, "at": [4.9, 2.6]}},
                   {{"id": "loud", "who": 2, "do": "cut", "off": 5, "to": "right slot"}},
                   {{"who": 3, "do": "cut", "kind": "backdoor", "with": {{"id": "loud", "edge": "{edge}", "of": 5, "lag": {lag}, "mine": "{mine}"}}}}"#
            )
            .replace(if edge == "pass-by" { "\u{0}" } else { r#", "of": 5"# }, ""),
        );
        let edge = Edge::ALL.into_iter().find(|e| e.name() == edge).unwrap();
        let mine = Edge::ALL.into_iter().find(|e| e.name() == mine).unwrap();
        let apart = set.time(3, Verb::Cut, 0, mine) - set.time(2, Verb::Cut, 0, edge);
        assert!(
            (apart - lag).abs() < 1e-6,
            "{edge:?} {mine:?}: {apart} for {lag}"
        );
    }
}

#[test]
fn ties_that_contradict_are_told_with_their_places_and_what_is_missing() {
    let text = text(
        r#""1": {"at": "top", "ball": true}, "2": {"at": "right wing"}, "3": {"at": "left wing"}"#,
        &[
            r#"{"id": "a", "who": 2, "do": "cut", "to": "right corner", "after": {"id": "b", "edge": "start", "lag": 0.5}},
             {"id": "b", "who": 3, "do": "cut", "to": "left corner", "after": {"id": "a", "edge": "start", "lag": 0.25}}"#,
        ],
    );
    let set = document::read(text.as_bytes()).unwrap();
    let faults = timing::build(&set, &Court::of(set.court)).unwrap_err();
    assert_eq!(faults.list.len(), 1);
    let fault = &faults.list[0];
    assert_eq!(fault.code, "contradictory-waits");
    assert!(
        fault.found.to_string().contains("0.75 s short"),
        "{}",
        fault.found
    );
    let mut places: Vec<String> = fault
        .related
        .iter()
        .chain([&fault.place])
        .map(|p| p.pointer.to_string())
        .collect();
    places.sort();
    assert_eq!(
        places,
        ["/beats/0/actions/0/after", "/beats/0/actions/1/after"]
    );
}

#[test]
fn screens_of_a_stagger_are_both_set_for_the_first_pass_by() {
    let set = one(
        r#""1": {"at": "top"}, "3": {"at": "right corner"}, "4": {"at": "left high elbow", "ball": true}, "5": {"at": "right elbow"}"#,
        r#"{"who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.9, 2.6]},
           {"who": 1, "do": "screen", "kind": "stagger", "for": 3, "at": [3.3, 4.6]},
           {"who": 3, "do": "cut", "off": [5, 1], "to": "top", "pace": "sprint"}"#,
    );
    let by = set.time(3, Verb::Cut, 0, Edge::PassBy);
    assert!(set.time(5, Verb::Screen, 0, Edge::Set) <= by - 0.3 + 1e-6);
    assert!(set.time(1, Verb::Screen, 0, Edge::Set) <= by + 0.3 + 1e-6);
}
