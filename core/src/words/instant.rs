//! An instant in words, for who cannot see the picture.

use super::phrases::{self, fill};
use super::place::Told;
use super::{names, seconds};
use crate::court::Court;
use crate::math::{Point, push_decimal};
use crate::set::{Action, Set, Target, Verb};
use crate::timeline::{TimedAction, Timeline};
use alloc::string::String;
use alloc::vec::Vec;

/// What a picture at `t` shows: time, beat, where the ball is and who does what.
#[must_use]
pub fn describe(timeline: &Timeline, set: &Set, t: f64) -> String {
    let court = set.floor();
    let beat = timeline.beat_at(t);
    let title = set.beats.get(beat).and_then(|b| b.title.as_deref());
    let mut named = String::new();
    if let Some(title) = title {
        named.push_str(", ");
        named.push_str(title);
    }
    let mut n = String::new();
    push_decimal(&mut n, beat as f64 + 1.0, 0);
    let parts = [
        ("t", seconds(t)),
        ("all", seconds(timeline.duration())),
        ("n", n),
        ("title", named),
    ];
    let parts = parts.each_ref().map(|(name, text)| (*name, text.as_str()));
    let mut out = fill(phrases::INSTANT, &parts);
    let mut clauses: Vec<String> = Vec::from([ball(timeline, &court, t)]);
    for action in timeline.actions() {
        let now = action.start <= t && t < action.end && action.verb != Verb::Hold;
        if now {
            let clause = doing(set, &court, action);
            // Two posts of a gate have a row each.
            if !clauses.contains(&clause) {
                clauses.push(clause);
            }
        }
    }
    for (i, clause) in clauses.iter().enumerate() {
        if i > 0 {
            out.push_str("; ");
        }
        out.push_str(clause);
    }
    out.push('.');
    out
}

fn ball(timeline: &Timeline, court: &Court, t: f64) -> String {
    let held = timeline
        .ball(t)
        .holder
        .and_then(|who| timeline.player(who, t).map(|m| (who, m)));
    let Some((who, m)) = held else {
        return String::from(phrases::IN_THE_AIR);
    };
    let spot = Told::of(Point::new(m.x, m.y), court).whereabouts();
    fill(
        phrases::HAS_BALL,
        &[("who", &names([who])), ("where", &spot)],
    )
}

fn doing(set: &Set, court: &Court, timed: &TimedAction) -> String {
    let written = set.action(timed.id);
    let to = match written.and_then(|a| a.to.as_ref()) {
        Some(Target::Place(p)) => Told::written(p, court).whither(),
        _ => String::new(),
    };
    let whom = written.map_or_else(Vec::new, |a| match a.receiver() {
        Some(p) => Vec::from([p]),
        None => a.for_whom.clone(),
    });
    let whom = if whom.is_empty() {
        String::new()
    } else {
        let template = if timed.verb == Verb::Screen {
            phrases::FOR
        } else {
            phrases::AT_WHOM
        };
        fill(template, &[("whom", &names(whom))])
    };
    // The taker's way to a hand-off is a row of the same action.
    let takes = timed.verb == Verb::Handoff && written.and_then(Action::actor) != Some(timed.who);
    let template = if takes {
        phrases::COMES
    } else {
        phrases::doing(timed.verb)
    };
    fill(
        template,
        &[("who", &names([timed.who])), ("to", &to), ("for", &whom)],
    )
}
