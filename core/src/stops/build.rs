//! From timeline to stops.

use super::{Awaited, Stop, Transfer, Waiting, Why};
use crate::math::{distance, sort_short};
use crate::set::{Action, Edge, PlayerId, Set, TieRelation, Verb};
use crate::timeline::{BallUse, TieEnd, TimedAction, TimedTie, Timeline};
use alloc::vec;
use alloc::vec::Vec;

/// Stops nearer than this are one, seconds: nobody could tell two pictures apart. Common practice,
/// no source.
const NEAR: f64 = 0.3;
/// A beat that starts no further than this from a release or a catch opens with it, seconds: it does
/// one reaction after the ball goes.
const OPENS: f64 = 0.5;
/// A wait that lets pass more time than this does not hold anybody up, seconds; the strip draws a
/// tie by the same measure.
const TIGHT: f64 = 0.08;
/// Who has not stood for so long does not wait, seconds. Common practice, no source.
const PAUSE: f64 = 0.12;
/// Who has come no further than this stands, metres.
const STILL: f64 = 0.03;

/// The stops of `timeline`, which was built from `set`, in time order.
#[must_use]
pub fn build(timeline: &Timeline, set: &Set) -> Vec<Stop> {
    let mut stops = beats(timeline);
    let mut waits = waits(timeline, set);
    sort_short(&mut waits, |a, b| a.0.total_cmp(&b.0));
    let mut between: Vec<Stop> = Vec::new();
    for (t, wait) in waits {
        let near = |stop: &&mut Stop| (stop.t - t).abs() < NEAR;
        // A beat's start is where its picture and its words change, so it keeps its instant.
        let stop = stops.iter_mut().find(near);
        match stop.or_else(|| between.last_mut().filter(near)) {
            Some(stop) => stop.why.push(Why::Wait(wait)),
            None => between.push(Stop {
                t,
                why: vec![Why::Wait(wait)],
            }),
        }
    }
    stops.extend(between);
    stops.retain(|stop| stop.t < timeline.duration());
    sort_short(&mut stops, |a, b| a.t.total_cmp(&b.t));
    stops
}

/// A stop at the start of each beat; of two that start together one.
fn beats(timeline: &Timeline) -> Vec<Stop> {
    let mut stops: Vec<Stop> = Vec::new();
    for (beat, times) in timeline.beats().iter().enumerate() {
        let mut why = vec![Why::Beat(beat)];
        if beat > 0 {
            why.extend(transfer(timeline, times.start).map(Why::Ball));
        }
        match stops.last_mut().filter(|s| times.start - s.t < NEAR) {
            Some(stop) => stop.why.extend(why),
            None => stops.push(Stop {
                t: times.start,
                why,
            }),
        }
    }
    stops
}

/// The release or catch nearest to `t`, if one is near.
fn transfer(timeline: &Timeline, t: f64) -> Option<Transfer> {
    let instants = timeline.ball_spans().iter().flat_map(|span| {
        let (from, to, handoff) = match span.what {
            BallUse::Pass { from, to, .. } => (from, to, false),
            BallUse::Handoff { from, to } => (from, to, true),
            _ => return [None, None],
        };
        let at = |edge, t| {
            Some(Transfer {
                from,
                to,
                handoff,
                edge,
                t,
            })
        };
        [at(Edge::Release, span.start), at(Edge::Catch, span.end)]
    });
    let near = instants.flatten().filter(|i| (i.t - t).abs() < OPENS);
    near.min_by(|a, b| (a.t - t).abs().total_cmp(&(b.t - t).abs()))
}

/// Every wait that holds somebody up, with the instant at which it is shown.
fn waits(timeline: &Timeline, set: &Set) -> Vec<(f64, Waiting)> {
    let mut out: Vec<(f64, Waiting)> = Vec::new();
    for tie in timeline.ties() {
        let Some((t, wait)) = told(timeline, set, tie) else {
            continue;
        };
        let same = |(_, other): &&mut (f64, Waiting)| {
            (other.action, other.edge) == (wait.action, wait.edge)
                && (other.awaited.action, other.awaited.edge)
                    == (wait.awaited.action, wait.awaited.edge)
        };
        // Posts of one gate have a row each but are one to whoever watches.
        match out.iter_mut().find(same) {
            Some((_, other)) => {
                add(&mut other.who, &wait.who);
                add(&mut other.awaited.who, &wait.awaited.who);
            }
            None => out.push((t, wait)),
        }
    }
    out
}

fn add(to: &mut Vec<PlayerId>, more: &[PlayerId]) {
    for who in more {
        if !to.contains(who) {
            to.push(*who);
        }
    }
}

/// The wait that `tie` is, where it holds somebody up who stands.
fn told(timeline: &Timeline, set: &Set, tie: &TimedTie) -> Option<(f64, Waiting)> {
    let row = |end: &TieEnd| timeline.actions().get(end.action);
    let (mut from, mut to) = (tie.from, tie.to);
    // In a hand-off the giver stands and the taker comes, whichever way round it was bound.
    let exchange = tie.lag == 0.0 && (tie.to.t - tie.from.t).abs() < TIGHT && !tie.written;
    let given = |end: &TieEnd| {
        let gives = |a: &TimedAction| {
            a.verb == Verb::Handoff && set.action(a.id).and_then(Action::actor) == Some(a.who)
        };
        exchange && end.edge == Edge::Release && row(end).is_some_and(gives)
    };
    if given(&from) {
        (from, to) = (to, from);
    }
    let (theirs, mine) = (row(&from)?, row(&to)?);
    if theirs.id == mine.id && given(&to) {
        // A way that is laid for the hand-off alone has no instant but its own.
        (from.edge, from.t) = (to.edge, to.t);
    }
    // What a player does before the next thing of their own is no wait, nor what two posts do as one.
    if theirs.who == mine.who || (theirs.id == mine.id && !given(&to)) {
        return None;
    }
    let goes = goes(mine, &to);
    let stands = stands(timeline, mine.who, goes);
    if !holds(tie, theirs, mine) || !stands && !together(timeline, set, tie, theirs, mine) {
        return None;
    }
    let shown = match to.edge {
        // They are seen to wait until they leave for the screen.
        Edge::PassBy | Edge::Cue if stands => goes,
        _ => to.t,
    };
    Some((
        shown.max(0.0),
        Waiting {
            who: vec![mine.who],
            action: mine.id,
            edge: to.edge,
            t: to.t,
            goes: stands.then_some(goes),
            awaited: Awaited {
                who: vec![theirs.who],
                action: theirs.id,
                edge: from.edge,
                t: from.t,
                other: other(set, theirs, &from),
            },
            lag: tie.lag,
            written: tie.written,
        },
    ))
}

/// Whether `tie` is why `mine` is no earlier.
fn holds(tie: &TimedTie, theirs: &TimedAction, mine: &TimedAction) -> bool {
    let tight = (tie.to.t - tie.from.t - tie.lag).abs() < TIGHT;
    let spare = |a: &TimedAction| a.slack.unwrap_or(f64::INFINITY);
    // Who could be ready earlier is only just in time; nobody waits for that.
    tight && (tie.written || spare(theirs) <= spare(mine) + TIGHT)
}

/// Whether the author wants both instants together, and the other one is who stands for it.
fn together(
    timeline: &Timeline,
    set: &Set,
    tie: &TimedTie,
    theirs: &TimedAction,
    mine: &TimedAction,
) -> bool {
    let with = set.action(mine.id).is_some_and(|a| {
        let mut ties = a.ties.iter();
        ties.any(|t| t.to == theirs.id && t.relation == TieRelation::With)
    });
    tie.written && with && stands(timeline, theirs.who, goes(theirs, &tie.from))
}

/// When whoever waits for that instant of `action` stops standing.
fn goes(action: &TimedAction, end: &TieEnd) -> f64 {
    match end.edge {
        // Both stand already: as a post, as the giver.
        Edge::Shut | Edge::Release if action.verb != Verb::Pass => end.t,
        _ => {
            let before = action.waits.iter().rfind(|w| w.end <= end.t);
            before.map_or(action.start, |w| w.end)
        }
    }
}

/// Whether `who` stands until `t`.
fn stands(timeline: &Timeline, who: PlayerId, t: f64) -> bool {
    let (before, then) = (timeline.place(who, t - PAUSE), timeline.place(who, t));
    before
        .zip(then)
        .is_some_and(|(a, b)| distance(a, b) < STILL)
}

/// The screener who is passed at that instant, or who catches.
fn other(set: &Set, action: &TimedAction, end: &TieEnd) -> Option<PlayerId> {
    let written = set.action(action.id)?;
    match end.edge {
        Edge::PassBy | Edge::Cue => {
            let marks = action.marks.iter().filter(|m| m.edge == end.edge);
            let nearest = marks.min_by(|a, b| (a.t - end.t).abs().total_cmp(&(b.t - end.t).abs()));
            nearest.and_then(|m| m.of)
        }
        Edge::Catch => written.receiver(),
        _ => None,
    }
}
