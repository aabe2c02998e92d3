//! Written ties as the end of a sentence: "as 3 passes 5".

use super::phrases::{self, fill};
use super::{names, seconds};
use crate::set::{Action, Edge, Set, Tie, TieRelation};
use alloc::string::String;

/// Shorter than this nobody can tell, seconds.
const AT_ONCE: f64 = 0.1;

/// What `action` waits for, as written: its first tie.
pub(super) fn clause(set: &Set, action: &Action) -> String {
    let Some(tie) = action.ties.first() else {
        return String::new();
    };
    let Some(event) = event(set, tie) else {
        return String::new();
    };
    let mut out = String::new();
    if tie.mine == Edge::Plant {
        out.push_str(phrases::PLANTS);
    }
    let lag = fill(phrases::SECONDS, &[("n", &seconds(tie.lag.abs()))]);
    let template = match tie.relation {
        _ if tie.lag <= -AT_ONCE => phrases::BEFORE,
        _ if tie.lag >= AT_ONCE => phrases::AFTER,
        TieRelation::With => phrases::AS,
        TieRelation::After => phrases::ONCE,
    };
    out.push_str(&fill(template, &[("seconds", &lag), ("event", &event)]));
    out
}

fn event(set: &Set, tie: &Tie) -> Option<String> {
    let theirs = set.action(tie.to)?;
    let who = names(theirs.who.iter().copied());
    // A pass-by is by somebody; a catch is somebody else's.
    let other = tie
        .of
        .or_else(|| theirs.off.first().map(|o| o.who))
        .filter(|_| matches!(tie.edge, Edge::PassBy | Edge::Cue))
        .or(theirs.receiver())
        .map(|p| names([p]))
        .unwrap_or_default();
    let told = fill(
        phrases::event(tie.edge, theirs.verb),
        &[("who", &who), ("other", &other)],
    );
    Some(if theirs.who.len() > 1 {
        phrases::plural(&told)
    } else {
        told
    })
}
