use super::*;
use crate::set::Coverage;

/// 3 comes off 5's pin-down; the read, at the pass-by, has the condition, and 1 throws to 2 instead,
/// who stands there.
fn with_read(condition: &str, two: &str) -> Play {
    let text = format!(
        r#"{{ "backcut": 1, "title": "T", "players": {{
             "1": {{"at": "top", "ball": true}}, "2": {{"at": {two}}},
             "3": {{"at": "right corner"}}, "5": {{"at": "right elbow"}} }},
           "beats": [ {{ "actions": [
             {{"who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.9, 2.6]}},
             {{"id": "cut", "who": 3, "do": "cut", "off": 5, "to": "right wing", "pace": "sprint"}},
             {{"who": 1, "do": "pass", "to": 3}}, {{"who": 3, "do": "shot"}} ] }} ],
           "reads": [ {{ "title": "Other side", "at": {{"id": "cut", "edge": "pass-by"}},
             "by": [1, 2], "if": {condition},
             "beats": [ {{ "actions": [
               {{"who": 1, "do": "pass", "to": 2}}, {{"who": 2, "do": "shot"}} ] }} ] }} ] }}"#
    );
    open(&text)
}

fn found_of(play: &Play) -> Vec<Finding> {
    check_reads(
        &play.lines().unwrap(),
        &play.answers().unwrap(),
        &Settings::default(),
    )
}

#[test]
fn a_read_for_a_coverage_that_the_set_cannot_meet_never_comes_up() {
    let never = found_of(&with_read(r#"{"coverage": "drop"}"#, r#""left corner""#));
    let never = has(&never, "read-never");
    assert_eq!((never.read, never.coverage), (vec![0], None));
    let met = with_read(r#"{"coverage": "switch"}"#, r#""left corner""#);
    has_no(&found_of(&met), "read-never");
}

#[test]
fn a_read_that_only_an_instruction_makes_true_is_none_that_never_comes_up() {
    // 2 uses no screen, so nobody switches with X2; X3 can be told to look elsewhere.
    let two = with_read(r#"{"who": "X2", "does": "switches"}"#, r#""left corner""#);
    has(&found_of(&two), "read-never");
    let looks = with_read(r#"{"who": "X3", "does": "turns head"}"#, r#""left corner""#);
    has_no(&found_of(&looks), "read-never");
}

#[test]
fn a_read_whose_instant_comes_after_the_shot_cannot_be_played() {
    let play = with_read(r#"{"coverage": "switch"}"#, r#""left corner""#);
    let mut set = play.set().clone();
    set.beats[0].actions[3].id = Some("shot".to_string());
    set.reads[0].at.action = "shot".to_string();
    set.reads[0].at.edge = crate::set::Edge::End;
    let play = Play::of(set, &Options::default()).unwrap();
    let never = has(&found_of(&play), "read-never");
    assert!(play.finding(&never).contains("cannot be played"));
}

#[test]
fn a_read_that_ends_less_open_than_what_is_drawn_is_worse() {
    // Near the ring 2 has X2 on the body; the main line gives 3 a step.
    let worse = with_read(r#"{"coverage": "chase"}"#, r#"[-1.2, 0.8]"#);
    let found = found_of(&worse);
    let worse = has(&found, "read-worse");
    assert_eq!(worse.coverage, Some(Coverage::Chase));
    assert_eq!(worse.read, [0]);
    // The same where X3 has to be told what no coverage shows.
    let told = with_read(r#"{"who": "X3", "does": "turns head"}"#, r#"[-1.2, 0.8]"#);
    has(&found_of(&told), "read-worse");
    // As open as anybody where X2 helps from afar.
    let better = with_read(r#"{"coverage": "chase"}"#, r#""left corner""#);
    has_no(&found_of(&better), "read-worse");
}
