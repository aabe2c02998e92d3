//! What is left of a line's actions when a read is made.

use super::Line;
use crate::set::{Action, ActionId, PlayerId, Read, Verb};
use crate::timeline::{BallUse, TimedAction};
use alloc::vec::Vec;

/// What becomes of one action of the line that is not over.
#[derive(Clone, Debug)]
pub(super) struct Left {
    /// Of the line.
    pub id: ActionId,
    /// Those of its players who carry on.
    pub who: Vec<PlayerId>,
    pub how: How,
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum How {
    /// As it was written: it has not begun.
    Whole,
    /// What is left of its way.
    Onward,
    /// A screen that comes or stands.
    Stands,
    /// A screen that stood for a cutter who now does something else: it only stays.
    Stays,
    /// Its player comes to a stop.
    Stops,
    /// Does not happen.
    Gone,
}

/// Who has the ball, or gets it: `None` when it is on its way to the ring; a set may have no ball.
pub(super) fn holder(ball: Option<BallUse>) -> Option<Option<PlayerId>> {
    match ball {
        Some(BallUse::Shot(_) | BallUse::Through) => None,
        Some(BallUse::Held(who) | BallUse::Dribbled(who)) => Some(Some(who)),
        Some(BallUse::Pass { to, .. } | BallUse::Handoff { to, .. }) => Some(Some(to)),
        None => Some(None),
    }
}

/// What is left of every action that is not over at `at`.
pub(super) fn left(line: &Line, read: &Read, at: f64, holder: Option<PlayerId>) -> Vec<Left> {
    let mut out: Vec<Left> = Vec::new();
    for (id, action) in line.set.actions() {
        for who in &action.who {
            let mut rows = line.timeline.actions().iter();
            let Some(row) = rows.find(|r| r.id == id && r.who == *who) else {
                continue;
            };
            let how = how(line, read, row, action, (at, holder));
            let Some(how) = how else { continue };
            match out.iter_mut().find(|l| l.id == id && l.how == how) {
                Some(left) => left.who.push(*who),
                None => out.push(Left {
                    id,
                    who: [*who].into(),
                    how,
                }),
            }
        }
    }
    // What is under way comes before what has not begun, whichever beats they are of.
    out.sort_by_key(|left| left.how == How::Whole);
    out
}

fn how(
    line: &Line,
    read: &Read,
    row: &TimedAction,
    action: &Action,
    (at, holder): (f64, Option<PlayerId>),
) -> Option<How> {
    let named = read.by.contains(&row.who);
    let moves = line.timeline.under_way(row.who, at).is_some();
    let this = moves && line.runs_at(row, at);
    if row.start >= at - 1e-9 && !this {
        return Some(if named { How::Gone } else { How::Whole });
    }
    if row.end <= at && !this {
        return None;
    }
    let released = row.at(crate::set::Edge::Release).is_some_and(|t| t < at);
    let catches = line.timeline.coming(at).is_some_and(|c| c.to == row.who);
    Some(match action.verb {
        Verb::Cut | Verb::Dribble if named && !(catches && this) => {
            match first_own(read, row.who) {
                Some(first) if is_way(first) => How::Gone,
                Some(first) if stops(first, holder == Some(row.who)) && this => How::Stops,
                _ if this => How::Onward,
                _ => How::Gone,
            }
        }
        Verb::Cut | Verb::Dribble => How::Onward,
        Verb::Screen if named => match first_own(read, row.who) {
            Some(first) if is_way(first) => How::Gone,
            _ if this => How::Stops,
            _ => How::Gone,
        },
        Verb::Screen if row.at(crate::set::Edge::Shut).is_some_and(|t| t <= at) => {
            if this {
                How::Onward
            } else {
                return None;
            }
        }
        Verb::Screen if !this && action.for_whom.iter().any(|c| read.by.contains(c)) => How::Stays,
        Verb::Screen => How::Stands,
        Verb::Pass | Verb::Handoff | Verb::Shot if !named && !released => How::Whole,
        Verb::Pass | Verb::Handoff | Verb::Shot if released => return None,
        Verb::Hold | Verb::Fake if !named => return None,
        _ => How::Gone,
    })
}

/// The first thing a read has a player do.
fn first_own(read: &Read, who: PlayerId) -> Option<&Action> {
    let actions = read.beats.iter().flat_map(|b| &b.actions);
    actions.into_iter().find(|a| a.who.contains(&who))
}

fn is_way(action: &Action) -> bool {
    matches!(action.verb, Verb::Cut | Verb::Dribble | Verb::Screen)
}

/// What is done standing: whoever gets the ball first goes on to get it.
fn stops(action: &Action, has_ball: bool) -> bool {
    match action.verb {
        Verb::Pass | Verb::Shot | Verb::Handoff | Verb::Fake => has_ball,
        Verb::Hold => true,
        _ => false,
    }
}
