//! Who uses whose screen: decided from the written order alone, before anything is laid.

use crate::set::{Action, ActionId, Edge, Family, Off, PlayerId, Set, Verb, Via};
use alloc::vec::Vec;

/// One use of a screener by a cutter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Binding {
    /// The cut or dribble.
    pub cut: ActionId,
    /// Who cuts.
    pub cutter: PlayerId,
    /// Who screens.
    pub screener: PlayerId,
    /// The screen action; `None`: a hand-off's giver, or a man used where he stands.
    pub screen: Option<ActionId>,
    /// The family of the screen's kind.
    pub family: Option<Family>,
}

/// All bindings of the main line, in the cutters' running order.
pub(super) fn bind(set: &Set) -> Vec<Binding> {
    let mut out: Vec<Binding> = Vec::new();
    for (cut, action) in set.actions() {
        let Some(cutter) = action.actor().filter(|_| is_move(action)) else {
            continue;
        };
        for off in offs(action) {
            let gives = handoff_of(set, cut, cutter, off.who).is_some();
            let screen = if gives {
                None
            } else {
                next_unused(set, &out, cut, cutter, off.who)
            };
            let family = screen
                .and_then(|s| set.action(s))
                .and_then(|a| a.kind)
                .map(|k| k.row().family);
            out.push(Binding {
                cut,
                cutter,
                screener: off.who,
                screen,
                family,
            });
        }
    }
    out
}

/// Cuts and dribbles move through others' screens.
pub(super) fn is_move(action: &Action) -> bool {
    matches!(action.verb, Verb::Cut | Verb::Dribble)
}

/// The screeners an action uses, in running order.
pub(super) fn offs(action: &Action) -> impl Iterator<Item = &Off> {
    action
        .off
        .iter()
        .chain(action.via.iter().filter_map(|v| match v {
            Via::Off(off) => Some(off),
            Via::Place(_) => None,
        }))
}

/// `off: 5` is 5's next screen that this cutter has not used: the last one written before the cut
/// that is still standing, else the first one after it.
fn next_unused(
    set: &Set,
    taken: &[Binding],
    cut: ActionId,
    cutter: PlayerId,
    screener: PlayerId,
) -> Option<ActionId> {
    let mut before = None;
    let mut moved_on = false;
    for (id, action) in set.actions() {
        if !action.who.contains(&screener) {
            // A hand-off brings its taker along.
            moved_on |=
                id < cut && action.verb == Verb::Handoff && action.receiver() == Some(screener);
            continue;
        }
        let mine = action.verb == Verb::Screen
            && (action.for_whom.is_empty() || action.for_whom.contains(&cutter))
            && !taken
                .iter()
                .any(|b| b.cutter == cutter && b.screener == screener && b.screen == Some(id));
        if id < cut {
            if mine {
                (before, moved_on) = (Some(id), false);
            } else if is_move(action) && !waits_for(action, cut) {
                moved_on = true;
            }
        } else if mine && (before.is_none() || moved_on) {
            // A giver of a hand-off or a man used where he stands has no screen of his own later.
            let hands_off = set.actions().any(|(h, a)| {
                h < id
                    && a.verb == Verb::Handoff
                    && a.actor() == Some(screener)
                    && a.receiver() == Some(cutter)
            });
            return if hands_off { None } else { Some(id) };
        }
    }
    before.filter(|_| !moved_on)
}

/// Whether a move is written as waiting for the cut, so the screen before it still stands.
fn waits_for(action: &Action, cut: ActionId) -> bool {
    action
        .ties
        .iter()
        .any(|t| t.to == cut && t.mine == Edge::Start)
}

/// The hand-off of `giver` to which `cutter` comes with the move `cut`: one that names both, with
/// nothing else of either between.
pub(super) fn handoff_of(
    set: &Set,
    cut: ActionId,
    cutter: PlayerId,
    giver: PlayerId,
) -> Option<ActionId> {
    let mut actions = set.actions();
    let found = actions.find(|(id, a)| {
        let (first, last) = ((*id).min(cut), (*id).max(cut));
        a.verb == Verb::Handoff
            && a.actor() == Some(giver)
            && a.receiver() == Some(cutter)
            && last.beat - first.beat <= 1
            && !set.actions().any(|(i, between)| {
                i > first
                    && i < last
                    && !matches!(between.verb, Verb::Hold | Verb::Fake)
                    && [giver, cutter]
                        .iter()
                        .any(|p| between.who.contains(p) || between.receiver() == Some(*p))
            })
    });
    found.map(|(id, _)| id)
}
