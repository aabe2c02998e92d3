//! Two sets that between them have every mark: a gate set and a hand-off.

use super::{Item, Scene};
use crate::court::Court;
use crate::document;
use crate::set::{Edge, PlayerId, Set, Verb};
use crate::timeline::{TimedAction, Timeline};
use crate::timing;
use alloc::vec::Vec;

pub(crate) fn p(n: u8) -> PlayerId {
    PlayerId::new(n).unwrap()
}

/// A set, scheduled.
pub(crate) struct Played {
    pub(crate) set: Set,
    pub(crate) timeline: Timeline,
    pub(crate) court: Court,
}

impl Played {
    /// The `n`th action (from 0) of that player and verb.
    pub(crate) fn action(&self, who: u8, verb: Verb, n: usize) -> &TimedAction {
        let mut all = self.timeline.actions().iter();
        let own = |a: &&TimedAction| a.who == p(who) && a.verb == verb;
        all.by_ref().filter(own).nth(n).unwrap()
    }

    /// When an instant of it is.
    pub(crate) fn time(&self, who: u8, verb: Verb, n: usize, edge: Edge) -> f64 {
        self.action(who, verb, n).at(edge).unwrap()
    }
}

pub(crate) fn play(text: &str) -> Played {
    let set = document::read(text.as_bytes()).unwrap();
    let court = set.floor();
    let schedule = timing::build(&set, &court).unwrap();
    let timeline = Timeline::build(&set, &court, schedule);
    Played {
        set,
        timeline,
        court,
    }
}

pub(crate) fn turnstile() -> Played {
    play(
        r#"{ "backcut": 1, "title": "Turnstile", "court": "fiba", "level": "adult",
  "players": {
    "1": {"at": "top", "ball": true}, "2": {"at": "left block"}, "3": {"at": "right block"},
    "4": {"at": "left elbow"}, "5": {"at": "right elbow"} },
  "beats": [
    { "title": "Zipper", "actions": [
        { "who": 1, "do": "dribble", "kind": "push", "to": "right slot" },
        { "who": 4, "do": "screen", "kind": "down", "for": 2, "at": "left elbow" },
        { "who": 2, "do": "cut", "kind": "zipper", "off": 4, "to": [-2.2, 6.7] },
        { "who": 1, "do": "pass", "to": 2 },
        { "who": 1, "do": "cut", "to": "right wing" } ] },
    { "title": "Through the gate", "actions": [
        { "who": [4, 5], "do": "screen", "kind": "gate", "for": 3, "at": [0, 4.95] },
        { "who": 2, "do": "dribble", "to": [-4.9, 5.2] },
        { "who": 3, "do": "cut", "off": [4, 5], "to": "top", "pace": "sprint" } ] },
    { "title": "Shot", "actions": [
        { "who": 2, "do": "pass", "to": 3 },
        { "who": 3, "do": "shot", "kind": "catch-and-shoot" } ] } ] }"#,
    )
}

pub(crate) fn breakwater() -> Played {
    play(
        r#"{ "backcut": 1, "title": "Breakwater", "court": "fiba", "level": "adult",
  "players": {
    "1": {"at": "left wing"}, "2": {"at": "right mid post"}, "3": {"at": "left corner"},
    "4": {"at": "right corner"}, "5": {"at": "top", "ball": true} },
  "beats": [
    { "title": "Hand-off", "actions": [
        { "who": 5, "do": "dribble", "kind": "dribble-at", "to": [-1.9, 6.5] },
        { "id": "give", "who": 5, "do": "handoff", "kind": "dho", "to": 1 } ] },
    { "title": "Wall behind the drop", "actions": [
        { "who": 2, "do": "screen", "kind": "back-on-the-roller", "for": 5, "at": [-0.1, 3.95],
          "after": {"id": "give", "edge": "set", "lag": 0.1} },
        { "who": 1, "do": "dribble", "kind": "hard", "to": [1.7, 4.5] },
        { "who": 5, "do": "cut", "kind": "roll", "off": 2, "to": [-0.5, 1.3] },
        { "who": 2, "do": "cut", "kind": "pop", "to": "top" } ] } ] }"#,
    )
}

/// What is written in a scene.
pub(super) fn texts(scene: &Scene) -> Vec<&str> {
    let said = scene.items.iter().filter_map(|item| match item {
        Item::Text { text, .. } => Some(text.as_str()),
        _ => None,
    });
    said.collect()
}
