//! How actions are called in a branch, and where their ties lead.

use super::Dropped;
use super::rest::{From, Maker, Rest, id};
use crate::set::{ActionId, Beat, Scope, Set, Tie};
use alloc::vec::Vec;

impl Maker<'_> {
    /// The set of the whole branch, with everybody's names in it.
    pub(super) fn named(&self, set: Set, ids: &[(From, ActionId)], dropped: Vec<Dropped>) -> Rest {
        let own = &self.line.set;
        let mut line = Set {
            beats: Vec::new(),
            reads: self.read.reads.clone(),
            ..own.clone()
        };
        let (mut before, mut beats) = (Vec::new(), Vec::new());
        let goes_on = |id: ActionId| ids.iter().any(|(f, _)| *f == From::Line(id));
        let begun = |id: ActionId| {
            let mut rows = self.line.timeline.actions().iter();
            rows.any(|r| r.id == id && r.start < self.at)
        };
        let mut later: Vec<Beat> = Vec::new();
        let mut moved: Vec<(ActionId, usize)> = Vec::new();
        for (b, beat) in own.beats.iter().enumerate() {
            let open = self.line.timeline.beats().get(b);
            let open = open.is_none_or(|t| t.start < self.at);
            let mut kept = Beat {
                actions: Vec::new(),
                ..beat.clone()
            };
            for (a, action) in beat.actions.iter().enumerate() {
                let old = id(b, a);
                if !begun(old) && !goes_on(old) {
                    continue;
                }
                if open {
                    before.push((old, id(line.beats.len(), kept.actions.len())));
                } else {
                    moved.push((old, later.len()));
                }
                kept.actions.push(action.clone());
            }
            if open {
                beats.push((true, b));
                line.beats.push(kept);
            } else if !kept.actions.is_empty() {
                later.push(kept);
            }
        }
        let reads = line.beats.len();
        for (b, beat) in self.read.beats.iter().enumerate() {
            beats.push((false, b));
            let mut beat = beat.clone();
            // A coach names the read, seldom its first beat as well.
            if b == 0 {
                beat.title = beat.title.or_else(|| self.read.title.clone());
            }
            line.beats.push(beat);
        }
        let first = line.beats.len();
        for (b, beat) in later.into_iter().enumerate() {
            for (a, (old, _)) in moved.iter().filter(|m| m.1 == b).enumerate() {
                before.push((*old, id(first + b, a)));
            }
            beats.push((false, self.read.beats.len().max(1) + b));
            line.beats.push(beat);
        }
        let in_read = |i: ActionId| id(reads + usize::from(i.beat), usize::from(i.action));
        let new = |from: From| match from {
            From::Line(old) => before.iter().find(|b| b.0 == old).map(|b| b.1),
            From::Read(i) => Some(in_read(i)),
        };
        let after = ids
            .iter()
            .filter_map(|(from, rest)| Some((*rest, new(*from)?)))
            .collect();
        let mut written: Vec<Vec<(ActionId, ActionId)>> = Vec::new();
        for level in &self.line.written {
            let kept = level.iter();
            written.push(
                kept.filter_map(|(w, old)| Some((*w, new(From::Line(*old))?)))
                    .collect(),
            );
        }
        let own = self
            .read
            .beats
            .iter()
            .enumerate()
            .flat_map(|(b, beat)| (0..beat.actions.len()).map(move |a| id(b, a)));
        written.push(own.map(|i| (i, in_read(i))).collect());
        Rest {
            set,
            line,
            before,
            after,
            beats,
            written,
            dropped,
        }
    }

    /// Whether the instant that a tie waits for has come before the fork.
    fn over(&self, rest: &Rest, to: ActionId, tie: &Tie) -> bool {
        let old = rest.before.iter().find(|b| b.1 == to).map(|b| b.0);
        let rows = self.line.timeline.actions().iter();
        let mut rows = rows.filter(|r| Some(r.id) == old);
        rows.any(|r| r.at(tie.edge).is_some_and(|t| t <= self.at))
    }

    /// Leads every tie to where its other action is now; drops it where that is no more, or over.
    pub(super) fn tie(&self, rest: &mut Rest, ids: &[(From, ActionId)]) {
        let depth = self.line.written.len();
        // What a tie means, in the branch's set.
        let meant = |tie: &Tie, from: From| -> Option<ActionId> {
            if let From::Line(_) = from {
                return rest.before.iter().find(|b| b.0 == tie.to).map(|b| b.1);
            }
            let level = match tie.scope {
                Scope::Main => 0,
                Scope::Read(up) => depth.checked_sub(usize::from(up))?,
            };
            let level = rest.written.get(level)?;
            level.iter().find(|w| w.0 == tie.to).map(|w| w.1)
        };
        let mut dropped = Vec::new();
        let mut retied: Vec<(ActionId, Vec<Tie>)> = Vec::new();
        for (from, own) in ids {
            let Some(action) = rest.set.action(*own) else {
                continue;
            };
            let mut ties = Vec::new();
            for tie in &action.ties {
                let to = meant(tie, *from);
                let here = to.and_then(|to| rest.after.iter().find(|a| a.1 == to));
                match here {
                    Some((here, _)) => ties.push(Tie {
                        to: *here,
                        scope: Scope::Main,
                        ..tie.clone()
                    }),
                    None if !to.is_some_and(|to| self.over(rest, to, tie)) => {
                        dropped.extend(action.actor().map(|who| Dropped::Tie {
                            who,
                            of: action.id.clone(),
                        }));
                    }
                    None => {}
                }
            }
            retied.push((*own, ties));
        }
        for (own, ties) in retied {
            let beat = rest.set.beats.get_mut(usize::from(own.beat));
            let action = beat.and_then(|b| b.actions.get_mut(usize::from(own.action)));
            if let Some(action) = action {
                action.ties = ties;
            }
        }
        rest.dropped.extend(dropped);
        // The set of the whole branch is for words and pictures: its ties are in the timeline.
        for beat in &mut rest.line.beats {
            beat.actions.iter_mut().for_each(|a| a.ties.clear());
        }
    }
}
