//! Reads that ask something of a player, beside the step in which they are made.

use super::{Call, Doing, Source, Step};
use crate::branch::fork_instant;
use crate::math::Listed;
use crate::set::{Action, ActionId, PlayerId, Read, Verb};
use alloc::vec::Vec;

/// Puts each read of the set beside the step of this player that is on when it is made: that of the
/// action it is made in, where it is an own one.
pub(super) fn add_calls(source: &Source<'_>, steps: &mut [Step]) {
    for (index, read) in source.set.reads.iter().enumerate() {
        let Some(t) = fork_instant(source.set, source.timeline, read) else {
            continue;
        };
        let call = call(source.who, index, read, t);
        let seen = read.by.contains(&source.who);
        if call.does.is_empty() && call.gets.is_none() && !seen {
            continue;
        }
        let actions = source.timeline.actions();
        let own = steps.iter().position(|s| {
            let Doing::Does(row) = s.what else {
                return false;
            };
            actions.get(row).map(|a| a.id) == source.set.named(&read.at.action)
        });
        let on = steps.iter().rposition(|s| s.start <= t).unwrap_or(0);
        if let Some(step) = steps.get_mut(own.unwrap_or(on)) {
            step.calls.push(call);
        }
    }
}

/// What `read` asks of `who`.
fn call(who: PlayerId, index: usize, read: &Read, t: f64) -> Call {
    let actions = || {
        read.beats.iter().zip(0u16..).flat_map(|(beat, b)| {
            let within = beat.actions.iter().zip(0u16..);
            within.map(move |(action, a)| (ActionId { beat: b, action: a }, action))
        })
    };
    let does: Vec<ActionId> = actions()
        .filter(|(_, a)| a.who.contains(&who))
        .map(|(id, _)| id)
        .listed();
    let gives = |a: &Action| matches!(a.verb, Verb::Pass | Verb::Handoff);
    let gets = actions().find_map(|(id, a)| {
        let to_me = gives(a) && a.receiver() == Some(who);
        a.actor().filter(|_| to_me).map(|from| (from, id))
    });
    Call {
        read: index,
        t,
        does,
        gets,
    }
}
