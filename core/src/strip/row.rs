//! One player's row.

use super::{Bit, BitKind};
use crate::math::{Listed, ceil, sort_short};
use crate::set::{Action, Edge, Kind, PlayerId, Set, Verb};
use crate::timeline::{TimedAction, Timeline};
use alloc::vec::Vec;

/// Seconds between two samples of a speed profile: two film frames.
const STEP: f64 = 1.0 / 30.0;
/// A pause shorter than this is no wait, seconds. Common practice, no source.
const PAUSE: f64 = 0.12;
/// Slower than this a post of a gate stands, m/s.
const STANDS: f64 = 0.05;

/// What stands in the row of `who`.
pub(super) fn bits(timeline: &Timeline, set: &Set, who: PlayerId) -> Vec<Bit> {
    let mut out: Vec<Bit> = Vec::new();
    for (index, action) in timeline.actions().iter().enumerate() {
        if action.who == who {
            gap(timeline, index, action, &mut out);
            own(timeline, set, action, &mut out);
            if let Some(last) = out.last_mut() {
                last.slack = action.slack;
            }
        }
    }
    out.extend(taken(timeline, set, who));
    sort_short(&mut out, |a, b| a.start.total_cmp(&b.start));
    out
}

/// The instants of one row of the timetable that its player, or whoever catches, has to hit.
#[cfg(feature = "authoring")]
pub(crate) fn instants(set: &Set, action: &TimedAction) -> Vec<(PlayerId, f64)> {
    let receiver = set.action(action.id).and_then(Action::receiver);
    let marks = action.marks.iter().filter_map(|mark| {
        let who = match mark.edge {
            // Who goes without a set-up plants as they start.
            Edge::Plant if mark.t > action.start + 0.1 => action.who,
            Edge::Cue | Edge::Set => action.who,
            Edge::Catch if action.verb == Verb::Pass => receiver?,
            _ => return None,
        };
        Some((who, mark.t))
    });
    marks.listed()
}

/// Dots from the end of the last action to the start of this one, where this one waits for
/// somebody.
fn gap(timeline: &Timeline, index: usize, action: &TimedAction, out: &mut Vec<Bit>) {
    let Some(last) = out.last() else { return };
    let waits = timeline.ties().iter().any(|tie| {
        tie.to.action == index
            && timeline
                .actions()
                .get(tie.from.action)
                .is_some_and(|from| from.who != action.who)
    });
    if waits && action.start - last.end > PAUSE {
        let start = last.end;
        push(out, BitKind::Wait, start, action.start, action.critical);
    }
}

/// The bits of one of the player's own actions.
fn own(timeline: &Timeline, set: &Set, action: &TimedAction, out: &mut Vec<Bit>) {
    let critical = action.critical;
    let release = action.at(Edge::Release).unwrap_or(action.start);
    match action.verb {
        Verb::Cut => run(timeline, action, action.end, out),
        Verb::Dribble => dribble(action, out),
        Verb::Screen => {
            let set = action.at(Edge::Set).unwrap_or(action.start);
            run(timeline, action, set, out);
            let shut = (action.kind == Some(Kind::Gate))
                .then(|| shutting(timeline, action, set))
                .flatten();
            push(out, BitKind::Screen(shut), set, action.end, critical);
        }
        Verb::Pass => {
            let catch = action.at(Edge::Catch).unwrap_or(action.end);
            push(out, BitKind::Pass, release, catch, critical);
        }
        Verb::Handoff if gives(set, action) => {
            let stop = action.at(Edge::Set).unwrap_or(release);
            run(timeline, action, stop, out);
            push(out, BitKind::Handoff, release, release, critical);
        }
        // The taker's own way to it.
        Verb::Handoff => run(timeline, action, action.end, out),
        Verb::Shot => push(out, BitKind::Shot, action.start, release, critical),
        Verb::Hold => push(out, BitKind::Wait, action.start, action.end, critical),
        Verb::Fake => push(out, BitKind::Fake, action.start, action.end, critical),
    }
}

fn gives(set: &Set, action: &TimedAction) -> bool {
    set.action(action.id).and_then(Action::actor) == Some(action.who)
}

/// A hand-off stands in the taker's row too: it crosses the taker's line.
fn taken(timeline: &Timeline, set: &Set, who: PlayerId) -> Vec<Bit> {
    let takes = |action: &&TimedAction| {
        action.verb == Verb::Handoff
            && action.kind != Some(Kind::Keep)
            && gives(set, action)
            && set.action(action.id).and_then(Action::receiver) == Some(who)
    };
    timeline
        .actions()
        .iter()
        .filter(takes)
        .filter_map(|action| {
            let at = action.at(Edge::Release)?;
            Some(Bit {
                what: BitKind::Handoff,
                start: at,
                end: at,
                critical: action.critical,
                slack: None,
            })
        })
        .listed()
}

/// Runs and the waits between them, from the action's start until `end`.
fn run(timeline: &Timeline, action: &TimedAction, end: f64, out: &mut Vec<Bit>) {
    pieces(action, end, out, |start, end| {
        BitKind::Move(profile(timeline, action.who, start, end))
    });
}

fn dribble(action: &TimedAction, out: &mut Vec<Bit>) {
    pieces(action, action.end, out, |_, _| BitKind::Dribble);
}

fn pieces(
    action: &TimedAction,
    end: f64,
    out: &mut Vec<Bit>,
    mut piece: impl FnMut(f64, f64) -> BitKind,
) {
    let mut from = action.start;
    for wait in &action.waits {
        let (start, stop) = (wait.start.clamp(from, end), wait.end.min(end));
        if stop - start > PAUSE {
            push(out, piece(from, start), from, start, action.critical);
            push(out, BitKind::Wait, start, stop, action.critical);
            from = stop;
        }
    }
    push(out, piece(from, end), from, end, action.critical);
}

fn push(out: &mut Vec<Bit>, what: BitKind, start: f64, end: f64, critical: bool) {
    // An instant has no length, anything else that has none is not there.
    if end > start || what == BitKind::Handoff {
        out.push(Bit {
            what,
            start,
            end,
            critical,
            slack: None,
        });
    }
}

/// Speeds at equal steps, both ends included.
fn profile(timeline: &Timeline, who: PlayerId, start: f64, end: f64) -> Vec<f64> {
    let steps = ceil((end - start) / STEP).clamp(1.0, 2000.0);
    let mut speeds = Vec::with_capacity(steps as usize + 1);
    for i in 0..=steps as u32 {
        let t = start + (end - start) * f64::from(i) / steps;
        speeds.push(timeline.speed(who, t));
    }
    speeds
}

/// When the post slides, between `set` and its end.
fn shutting(timeline: &Timeline, action: &TimedAction, set: f64) -> Option<(f64, f64)> {
    let speeds = profile(timeline, action.who, set, action.end);
    let step = (action.end - set) / (speeds.len().max(2) - 1) as f64;
    // The first sample may still see the arrival.
    let first = speeds.iter().skip(1).position(|v| *v > STANDS)? + 1;
    let last = speeds.iter().rposition(|v| *v > STANDS)?;
    (last > first).then_some((set + first as f64 * step, set + last as f64 * step))
}
