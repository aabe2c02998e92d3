//! Written ties as the end of a sentence: "as 3 passes 5".

use super::{count, names, phrases};
use crate::set::{Action, ActionId, Edge, Mark, Set, Tie, TieRelation};
use crate::voice::Voice;
use crate::voice::messages::tie as m;
use alloc::string::String;

/// Shorter than this nobody can tell, seconds.
pub(super) const AT_ONCE: f64 = 0.1;

/// What `action` waits for, as written: its first tie.
pub(super) fn clause(set: &Set, action: &Action, voice: Voice) -> String {
    let Some(tie) = action.ties.first() else {
        return String::new();
    };
    let (message, form) = match tie.relation {
        _ if tie.lag <= -AT_ONCE => (m::BEFORE, "that"),
        _ if tie.lag >= AT_ONCE => (m::AFTER, "that"),
        TieRelation::With => (m::AS, ""),
        TieRelation::After => (m::ONCE, ""),
    };
    let Some(event) = event(set, tie, form, voice) else {
        return String::new();
    };
    let mut out = String::new();
    if tie.mine == Edge::Plant {
        out.push_str(voice.word(m::PLANTS));
    }
    out.push(' ');
    let lag = voice.fill(m::SECONDS, &[("n", &voice.number(tie.lag.abs(), 1))]);
    out.push_str(&voice.fill(message, &[("seconds", &lag), ("event", &event)]));
    out
}

fn event(set: &Set, tie: &Tie, form: &str, voice: Voice) -> Option<String> {
    let mark = Mark {
        edge: tie.edge,
        of: tie.of,
        t: 0.0,
    };
    happening(set, tie.to, mark, form, voice)
}

/// An instant of an action as something that happens; whom a pass-by or a cue is about, where that
/// is not said, is the first.
pub(super) fn happening(
    set: &Set,
    action: ActionId,
    mark: Mark,
    form: &str,
    voice: Voice,
) -> Option<String> {
    let theirs = set.action(action)?;
    let who = names(theirs.who.iter().copied(), voice);
    // A pass-by is by somebody; a catch is somebody else's.
    let other = mark
        .of
        .or_else(|| theirs.off.first().map(|o| o.who))
        .filter(|_| matches!(mark.edge, Edge::PassBy | Edge::Cue))
        .or(theirs.receiver())
        .map(|p| names([p], voice))
        .unwrap_or_default();
    let parts = [
        ("who", who.as_str()),
        ("count", &count(theirs.who.len())),
        ("other", &other),
    ];
    Some(voice.form(phrases::event(mark.edge, theirs.verb), form, &parts))
}
