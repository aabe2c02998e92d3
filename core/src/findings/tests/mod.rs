//! Each checker: a case that triggers it, and a near miss that must not.

mod against;
mod ball;
mod court;
mod cure;
mod mirror;
mod pass;
mod read;
mod rhythm;
mod screen;
mod spacing;

use super::*;
use crate::play::{Options, Play};
use std::format;
use std::string::{String, ToString};
use std::vec;

/// The text of a set: players, then the actions of its one beat.
fn text(head: &str, players: &str, actions: &str) -> String {
    let head = if head.is_empty() {
        String::new()
    } else {
        format!("{head},")
    };
    format!(
        r#"{{ "backcut": 1, "title": "T", {head} "players": {{ {players} }},
              "beats": [ {{ "actions": [ {actions} ] }} ] }}"#
    )
}

fn open(text: &str) -> Play {
    match Play::open(text.as_bytes(), &Options::default()) {
        Ok(play) => play,
        Err(faults) => panic!("{faults:?}\n{text}"),
    }
}

fn judge(play: &Play) -> Vec<Finding> {
    check(
        play.set(),
        play.court(),
        play.timeline(),
        &Settings::default(),
    )
}

/// What is found in a set of one beat on the default court.
fn found(players: &str, actions: &str) -> Vec<Finding> {
    judge(&open(&text("", players, actions)))
}

/// The findings of that code.
fn of<'a>(found: &'a [Finding], code: &str) -> Vec<&'a Finding> {
    found.iter().filter(|f| f.code() == code).collect()
}

/// Fails where nothing of that code was found.
#[track_caller]
fn has(found: &[Finding], code: &str) -> Finding {
    let codes: Vec<String> = found.iter().map(|f| f.code().to_string()).collect();
    match of(found, code).first() {
        Some(f) => (*f).clone(),
        None => panic!("no {code} among {codes:?}"),
    }
}

#[track_caller]
fn has_no(found: &[Finding], code: &str) {
    assert!(of(found, code).is_empty(), "{:?}", of(found, code));
}

fn numbers(f: &Finding) -> Vec<u8> {
    f.players.iter().map(|p| p.number()).collect()
}
