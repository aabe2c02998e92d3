//! Ties: whether the instants they name exist.

use super::{Checker, at, listed};
use crate::document::json::{Json, Value};
use crate::document::shape::join;
use crate::document::told::told;
use crate::math::Listed;
use crate::set::{
    Action, ActionId, Edge, Kind, PlayerId, ReadInstant, Scope, Tie, TieRelation, Verb, Via,
};
use crate::voice::Said;
use crate::voice::messages::fault as m;
use alloc::string::ToString;
use alloc::vec::Vec;

/// An instant as a tie or a read names it.
struct Named<'s> {
    action: &'s Action,
    edge: Edge,
    of: Option<PlayerId>,
}

impl<'s> Checker<'s, '_, '_> {
    /// The ties of `action`, each at its node.
    pub(super) fn ties(&mut self, action: &Action, node: &Json) {
        for (key, relation) in [("after", TieRelation::After), ("with", TieRelation::With)] {
            let Some(written) = node.get(key) else {
                continue;
            };
            let nodes = match &written.value {
                Value::List(items) => items.as_slice(),
                _ => core::slice::from_ref(written),
            };
            let ties: Vec<&Tie> = action
                .ties
                .iter()
                .filter(|t| t.relation == relation)
                .listed();
            // A tie to an unknown action is not in the set; then the two do not match up.
            if ties.len() != nodes.len() {
                continue;
            }
            for (tie, node) in ties.into_iter().zip(nodes) {
                self.tie(action, tie, node);
            }
        }
    }

    fn tie(&mut self, action: &Action, tie: &Tie, node: &Json) {
        let Some(to) = self.find(tie.scope, tie.to) else {
            return;
        };
        if core::ptr::eq(to, action) {
            self.report.add(node.start, "tie-to-itself", &|_| {
                told(m::WAITS_FOR_ITSELF, m::ANOTHER_ID)
            });
            return;
        }
        let theirs = Named {
            action: to,
            edge: tie.edge,
            of: tie.of,
        };
        self.named(&theirs, at(node, "edge"), at(node, "of"));
        let mine = Named {
            action,
            edge: tie.mine,
            of: None,
        };
        self.named(&mine, at(node, "mine"), node);
    }

    /// The instant at which a read is made.
    pub(super) fn instant(&mut self, instant: &ReadInstant, node: &Json) {
        let named = |a: &&Action| a.id.as_deref() == Some(instant.action.as_str());
        let action = self
            .scopes
            .iter()
            .rev()
            .find_map(|beats| beats.iter().flat_map(|b| &b.actions).find(named));
        if let Some(action) = action {
            let named = Named {
                action,
                edge: instant.edge,
                of: instant.of,
            };
            self.named(&named, at(node, "edge"), at(node, "of"));
        }
    }

    fn find(&self, scope: Scope, id: ActionId) -> Option<&'s Action> {
        let index = match scope {
            Scope::Main => 0,
            Scope::Read(up) => self.scopes.len().checked_sub(1 + usize::from(up))?,
        };
        self.scopes
            .get(index)?
            .get(usize::from(id.beat))?
            .actions
            .get(usize::from(id.action))
    }

    fn named(&mut self, named: &Named<'_>, edge_node: &Json, of_node: &Json) {
        let action = named.action;
        let edges = edges(action);
        if !edges.contains(&named.edge) {
            let passes = matches!(named.edge, Edge::PassBy | Edge::Cue);
            let moves = matches!(action.verb, Verb::Cut | Verb::Dribble);
            self.report.add(edge_node.start, "no-such-instant", &|_| {
                let told = told(
                    m::NO_INSTANT
                        .with("verb", action.verb.name())
                        .with("edge", named.edge.name()),
                    m::HAS_INSTANTS.with("edges", join(edges.iter().map(|e| e.name()))),
                );
                match named.edge {
                    _ if passes && moves => told.hint(m::ONLY_OFF),
                    Edge::Shut => told.hint(m::ONLY_GATE),
                    _ => told,
                }
            });
        }
        let screeners = screeners(action);
        if let Some(of) = named.of
            && !screeners.contains(&of)
        {
            self.report.add(of_node.start, "no-such-screener", &|_| {
                let allowed: Said = match screeners.len() {
                    0 => m::NO_SCREENERS.into(),
                    _ => m::SCREENERS_THERE.with("screeners", listed(&screeners)),
                };
                told(m::NO_SCREENER.with("who", of.number().to_string()), allowed)
            });
        }
    }
}

/// The instants that `action` itself has, of those that its verb may have.
fn edges(action: &Action) -> Vec<Edge> {
    let moves = matches!(action.verb, Verb::Cut | Verb::Dribble);
    let passes_nobody = moves && screeners(action).is_empty();
    Edge::of(action.verb)
        .iter()
        .copied()
        .filter(|edge| match edge {
            Edge::PassBy | Edge::Cue => !passes_nobody,
            Edge::Shut => action.kind == Some(Kind::Gate),
            _ => true,
        })
        .listed()
}

/// The screeners whom `action` passes, or who set it.
fn screeners(action: &Action) -> Vec<PlayerId> {
    if action.verb == Verb::Screen {
        return action.who.clone();
    }
    let via = action.via.iter().filter_map(|v| match v {
        Via::Off(off) => Some(off.who),
        Via::Place(_) => None,
    });
    action.off.iter().map(|o| o.who).chain(via).listed()
}
