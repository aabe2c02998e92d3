use super::*;
use crate::scene::fixture::{Played, p, play, turnstile};
use crate::voice::Voice;
use crate::words;
use std::format;
use std::string::String;
use std::vec;

fn told(played: &Played) -> Vec<String> {
    let stops = build(&played.timeline, &played.set);
    stops
        .iter()
        .map(|s| words::stop(s, &played.set, Voice::ENGLISH))
        .collect()
}

/// Three players, the ball with 1; what they do in one beat.
fn three(actions: &str) -> Played {
    play(&format!(
        r#"{{ "backcut": 1, "title": "x", "players": {{
            "1": {{"at": "top", "ball": true}}, "2": {{"at": "left wing"}},
            "3": {{"at": "right block"}} }},
          "beats": [ {{ "actions": [ {actions} ] }} ] }}"#
    ))
}

fn waits(played: &Played) -> Vec<Waiting> {
    let whys = build(&played.timeline, &played.set)
        .into_iter()
        .flat_map(|s| s.why);
    whys.filter_map(|why| match why {
        Why::Wait(wait) => Some(wait),
        _ => None,
    })
    .collect()
}

#[test]
fn each_beat_is_a_stop() {
    let played = turnstile();
    let stops = build(&played.timeline, &played.set);
    for (n, beat) in played.timeline.beats().iter().enumerate() {
        let at = stops
            .iter()
            .find(|s| s.why.contains(&Why::Beat(n)))
            .unwrap();
        assert!((at.t - beat.start).abs() < 1e-9);
    }
}

#[test]
fn who_waits_for_a_cutter_to_get_there_is_named_with_them() {
    let played = three(
        r#"{"id": "clear", "who": 3, "do": "cut", "to": "right corner"},
           {"who": 2, "do": "cut", "to": "left block", "after": "clear"}"#,
    );
    let waits = waits(&played);
    assert_eq!(waits.len(), 1);
    assert_eq!(
        (&waits[0].who, &waits[0].awaited.who),
        (&vec![p(2)], &vec![p(3)])
    );
    assert_eq!(told(&played), ["Beat 1.", "2 waits for 3 to get there."]);
}

#[test]
fn a_lag_is_more_waiting_and_a_negative_one_is_none() {
    let lagged = |lag: &str| {
        told(&three(&format!(
            r#"{{"id": "clear", "who": 3, "do": "cut", "to": "right corner"}},
               {{"who": 2, "do": "cut", "to": "left block", "after": {{"id": "clear", "lag": {lag}}}}}"#
        )))
        .pop()
        .unwrap()
    };
    assert_eq!(
        lagged("0.5"),
        "2 waits for 3 to get there, and 0.5 seconds more."
    );
    assert_eq!(lagged("-0.4"), "2 goes 0.4 seconds before 3 gets there.");
    assert_eq!(lagged("0.05"), "2 waits for 3 to get there.");
}

#[test]
fn a_tie_that_is_kept_anyway_is_no_stop() {
    // 2 is far from done when 3 is there.
    let played = three(
        r#"{"id": "step", "who": 3, "do": "cut", "to": "right dunker spot"},
           {"who": 2, "do": "cut", "to": "right corner"},
           {"who": 2, "do": "cut", "to": "right wing", "after": "step"}"#,
    );
    assert_eq!(waits(&played), []);
}

#[test]
fn two_posts_wait_as_one() {
    let gate = waits(&turnstile());
    let shut = gate.iter().find(|w| w.edge == Edge::Shut).unwrap();
    assert_eq!(
        (&shut.who, &shut.awaited.who),
        (&vec![p(4), p(5)], &vec![p(3)])
    );
}

#[test]
fn who_is_ready_just_in_time_is_waited_for_by_nobody() {
    // 4 could stand long before 2 comes up.
    let down = turnstile();
    assert!(waits(&down).iter().all(|w| w.who != [p(2)]));
}

#[test]
fn a_giver_stands_until_the_taker_comes() {
    let played = three(
        r#"{"who": 1, "do": "handoff", "kind": "dho", "to": 3},
           {"who": 3, "do": "dribble", "to": "left slot"}"#,
    );
    assert!(
        told(&played)
            .concat()
            .contains("1 stands until 3 takes the ball.")
    );
}

#[test]
fn a_beat_says_whose_pass_it_opens_with() {
    let played = play(
        r#"{ "backcut": 1, "title": "x", "players": {
            "1": {"at": "top", "ball": true}, "2": {"at": "left wing"} },
          "beats": [ { "actions": [ {"who": 1, "do": "pass", "to": 2} ] },
            { "title": "Go", "actions": [ {"who": 1, "do": "cut", "to": "rim"} ] } ] }"#,
    );
    assert_eq!(told(&played)[1], "Beat 2: Go. It opens as 2 catches.");
}

#[test]
fn waits_near_each_other_are_one_stop_and_those_near_a_beat_stand_at_its_start() {
    let at = |lag: &str| {
        let played = three(&format!(
            r#"{{"id": "clear", "who": 3, "do": "cut", "to": "right corner"}},
               {{"who": 2, "do": "cut", "to": "left block", "after": "clear"}},
               {{"who": 1, "do": "dribble", "to": "left slot", "after": {{"id": "clear", "lag": {lag}}}}}"#
        ));
        build(&played.timeline, &played.set).len()
    };
    assert_eq!((at("0.2"), at("0.4")), (2, 3));
    let played = three(
        r#"{"who": 1, "do": "dribble", "id": "push", "to": "right slot"},
           {"who": 2, "do": "cut", "to": "rim", "after": {"id": "push", "edge": "start", "lag": 0.05}}"#,
    );
    let stops = build(&played.timeline, &played.set);
    assert_eq!((stops.len(), stops[0].why.len(), stops[0].t), (1, 2, 0.0));
}
