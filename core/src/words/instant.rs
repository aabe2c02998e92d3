//! An instant in words, for who cannot see the picture.

use super::place::Told;
use super::{names, phrases};
use crate::court::Court;
use crate::math::{Point, push_decimal};
use crate::set::{Action, Set, Target, Verb};
use crate::timeline::{TimedAction, Timeline};
use crate::voice::Voice;
use crate::voice::messages::{action as m, instant};
use alloc::string::String;
use alloc::vec::Vec;

/// What a picture at `t` shows: time, beat, where the ball is and who does what.
#[must_use]
pub fn describe(timeline: &Timeline, set: &Set, t: f64, voice: Voice) -> String {
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
        ("t", voice.number(t, 1)),
        ("all", voice.number(timeline.duration(), 1)),
        ("n", n),
        ("title", named),
    ];
    let parts = parts.each_ref().map(|(name, text)| (*name, text.as_str()));
    let mut out = voice.fill(instant::INSTANT, &parts);
    out.push(' ');
    let mut clauses: Vec<String> = Vec::from([ball(timeline, &court, t, voice)]);
    for action in timeline.actions() {
        let now = action.start <= t && t < action.end && action.verb != Verb::Hold;
        if now {
            let clause = doing(set, &court, action, voice);
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

fn ball(timeline: &Timeline, court: &Court, t: f64, voice: Voice) -> String {
    let held = timeline
        .ball(t)
        .holder
        .and_then(|who| timeline.player(who, t).map(|m| (who, m)));
    let Some((who, m)) = held else {
        return String::from(voice.word(instant::IN_THE_AIR));
    };
    let spot = Told::of(Point::new(m.x, m.y), court).whereabouts(voice);
    let who = names([who], voice);
    voice.fill(instant::HAS_BALL, &[("who", &who), ("where", &spot)])
}

fn doing(set: &Set, court: &Court, timed: &TimedAction, voice: Voice) -> String {
    let written = set.action(timed.id);
    let to = match written.and_then(|a| a.to.as_ref()) {
        Some(Target::Place(p)) => Told::written(p, court).whither(voice),
        _ => String::new(),
    };
    let whom = written.map_or_else(Vec::new, |a| match a.receiver() {
        Some(p) => Vec::from([p]),
        None => a.for_whom.clone(),
    });
    let whom = if whom.is_empty() {
        String::new()
    } else {
        let message = if timed.verb == Verb::Screen {
            m::FOR
        } else {
            m::TO_WHOM
        };
        voice.fill(message, &[("whom", &names(whom, voice))])
    };
    // The taker's way to a hand-off is a row of the same action.
    let takes = timed.verb == Verb::Handoff && written.and_then(Action::actor) != Some(timed.who);
    let message = if takes {
        instant::COMES
    } else {
        phrases::doing(timed.verb)
    };
    let who = names([timed.who], voice);
    voice.fill(message, &[("who", &who), ("to", &to), ("for", &whom)])
}
