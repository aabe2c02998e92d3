//! Five who do what a read asks for, so that its line is judged against what it is made for.

use super::scene::Scene;
use crate::branch::Line;
use crate::court::Court;
use crate::defence::{Defence, Past};
use crate::looks::{Look, looks};
use crate::set::{Condition, Coverage, Directive, Read, Set};
use crate::timeline::Timeline;
use alloc::vec::Vec;

/// A line's set and the lines that were left on the way to it, with what defenders are told there.
#[derive(Clone, Debug)]
pub(super) struct Told {
    pub past: Vec<Past>,
    pub set: Set,
    /// Whether the five then show what the last read asks for.
    pub shown: bool,
}

/// Five under `coverage` against a line that reads have made, `past` being the lines that those have
/// left. Where the five would not show of themselves what a read asks for, its defender is told to, as
/// far as anybody can be told: nobody is told a coverage, or where to be.
#[must_use]
pub fn defend(
    past: &[Past],
    set: &Set,
    court: &Court,
    timeline: &Timeline,
    coverage: Coverage,
) -> Defence {
    let five = Five { court, coverage };
    match Told::new(past, set, five) {
        Some(told) => five.against(&told.past, &told.set, timeline),
        None => five.against(past, set, timeline),
    }
}

/// The coverage that a line's reads ask for, the last of them first; of a line that reads have made,
/// `past` being the lines that those have left.
#[must_use]
pub fn asked_coverage(past: &[Past]) -> Option<Coverage> {
    past.iter()
        .rev()
        .find_map(|left| match left.read.condition {
            Condition::Coverage(coverage) => Some(coverage),
            _ => None,
        })
}

/// Five under a coverage.
#[derive(Clone, Copy, Debug)]
pub(super) struct Five<'a> {
    pub court: &'a Court,
    pub coverage: Coverage,
}

impl Five<'_> {
    pub(super) fn against(self, past: &[Past], set: &Set, timeline: &Timeline) -> Defence {
        Defence::after(past, set, self.court, timeline, self.coverage)
    }

    /// Whether they show what was asked of the line that was left after so many others.
    fn showed(self, past: &[Past], after: usize) -> bool {
        let Some((before, left)) = past.get(..after).zip(past.get(after)) else {
            return false;
        };
        let Past { set, timeline, .. } = left;
        let scene = Scene {
            set,
            timeline,
            defence: &self.against(before, set, timeline),
        };
        scene.seen(&left.read, left.until).holds
    }
}

impl Told {
    /// What has to be told; nothing where the five show all of it, or cannot be told.
    pub(super) fn new(past: &[Past], set: &Set, five: Five<'_>) -> Option<Self> {
        let mut told: Option<Self> = None;
        for (after, left) in past.iter().enumerate() {
            let (lines, line) = told.as_ref().map_or((past, set), |t| (&t.past, &t.set));
            let shown = five.showed(lines, after);
            let next = Self::by(&left.read, lines, line).filter(|_| !shown);
            match next.filter(|next| five.showed(&next.past, after)) {
                Some(next) => told = Some(next),
                None => told.iter_mut().for_each(|told| told.shown = shown),
            }
        }
        told
    }

    /// The same lines, in all of which a defender does what `read` asks for.
    fn by(read: &Read, past: &[Past], set: &Set) -> Option<Self> {
        let Condition::Does { who, does, side } = read.condition else {
            return None;
        };
        let order = Directive {
            action: read.at.action.clone(),
            who,
            does,
            side,
        };
        let (mut past, mut set) = (past.to_vec(), set.clone());
        let sets = past.iter_mut().map(|left| &mut left.set).chain([&mut set]);
        sets.for_each(|set| set.defence.on.push(order.clone()));
        Some(Self {
            past,
            set,
            shown: true,
        })
    }

    /// What is left open on the line that the last read left, and on the one it makes.
    pub(super) fn looks(&self, left: &Line, line: &Line, five: Five<'_>) -> Option<[Vec<Look>; 2]> {
        let (last, before) = self.past.split_last()?;
        let of = |past: &[Past], set: &Set, timeline: &Timeline| {
            looks(timeline, &five.against(past, set, timeline))
        };
        Some([
            of(before, &last.set, left.timeline()),
            of(&self.past, &self.set, line.timeline()),
        ])
    }
}
