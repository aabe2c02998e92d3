//! A simple temporal network: unknown starts, "at least so long after" between them.
//!
//! Weights are whole ticks of 2⁻²⁰ s, so that sums are exact and no comparison needs a tolerance.
//! Method: longest paths by Bellman–Ford, as in Dechter, Meiri, Pearl (1991), Artificial
//! Intelligence 49:61–95 (simple temporal problems), in a fixed order of edges.

use crate::math::Listed;
use alloc::vec;
use alloc::vec::Vec;

/// Whole ticks in a second.
pub const TICKS: f64 = 1_048_576.0;

/// Seconds to ticks.
#[must_use]
pub fn ticks(seconds: f64) -> i64 {
    crate::math::round(seconds * TICKS) as i64
}

/// Ticks to seconds.
#[must_use]
pub fn seconds(ticks: i64) -> f64 {
    ticks as f64 / TICKS
}

/// `start[to] ≥ start[from] + least`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Constraint {
    /// What is waited for.
    pub from: usize,
    /// What waits.
    pub to: usize,
    /// Ticks.
    pub least: i64,
    /// Ticks that would be better, not less than `least`; used where there is room.
    pub wanted: i64,
    /// 0 never gives way; of a contradiction the highest gives way first.
    pub softness: u8,
}

/// A circle of waits that asks for more time than there is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Contradiction {
    /// Indices of its constraints, each waiting for the one after it.
    pub constraints: Vec<usize>,
    /// Ticks that are missing.
    pub short: i64,
}

/// The network; node 0 is the origin and starts at 0.
#[derive(Clone, Debug, Default)]
pub struct Network {
    nodes: usize,
    constraints: Vec<Constraint>,
    dropped: Vec<usize>,
}

/// The earliest start of every node with the constraint that holds it there.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Earliest {
    /// Ticks, by node.
    pub start: Vec<i64>,
}

impl Network {
    /// A network of `nodes` unknown starts.
    #[must_use]
    pub fn new(nodes: usize) -> Self {
        Self {
            nodes,
            constraints: Vec::new(),
            dropped: Vec::new(),
        }
    }

    /// Adds a constraint; one that names no node of this network is ignored.
    pub fn add(&mut self, c: Constraint) {
        self.constraints.push(c);
    }

    /// All constraints, those that gave way included.
    #[must_use]
    pub fn constraints(&self) -> &[Constraint] {
        &self.constraints
    }

    /// Constraints that gave way to break contradictions, in the order in which they did.
    #[must_use]
    pub fn dropped(&self) -> &[usize] {
        &self.dropped
    }

    fn live(&self) -> impl DoubleEndedIterator<Item = (usize, &Constraint)> {
        self.constraints
            .iter()
            .enumerate()
            .filter(|(i, c)| c.from < self.nodes && c.to < self.nodes && !self.dropped.contains(i))
    }

    /// The earliest starts. Soft constraints that take part in a contradiction give way, the
    /// softest first.
    ///
    /// # Errors
    /// A contradiction of hard constraints alone.
    pub fn earliest(&mut self) -> Result<Earliest, Contradiction> {
        loop {
            let found = match self.relax() {
                Ok(start) => return Ok(Earliest { start }),
                Err(cycle) => cycle,
            };
            let softest = found
                .constraints
                .iter()
                .filter_map(|i| self.constraints.get(*i).map(|c| (c.softness, *i)))
                .max()
                .filter(|(softness, _)| *softness > 0);
            match softest {
                Some((_, i)) => self.dropped.push(i),
                None => return Err(found),
            }
        }
    }

    fn relax(&self) -> Result<Vec<i64>, Contradiction> {
        let mut start = vec![0_i64; self.nodes];
        let mut held: Vec<Option<usize>> = vec![None; self.nodes];
        let live: Vec<(usize, Constraint)> = self.live().map(|(i, c)| (i, *c)).listed();
        let mut last = None;
        for _ in 0..=self.nodes {
            last = None;
            for (i, c) in &live {
                let Some(from) = start.get(c.from).copied() else {
                    continue;
                };
                let Some(to) = start.get_mut(c.to) else {
                    continue;
                };
                if from + c.least > *to {
                    *to = from + c.least;
                    if let Some(h) = held.get_mut(c.to) {
                        *h = Some(*i);
                    }
                    last = Some(c.to);
                }
            }
            if last.is_none() {
                return Ok(start);
            }
        }
        Err(self.cycle(&held, last.unwrap_or(0)))
    }

    /// The circle that `node` hangs on: back along what holds each node.
    fn cycle(&self, held: &[Option<usize>], node: usize) -> Contradiction {
        let before = |n: usize| {
            let i = held.get(n).copied().flatten()?;
            self.constraints.get(i).map(|c| (i, c.from))
        };
        let mut at = node;
        for _ in 0..self.nodes {
            at = before(at).map_or(at, |(_, from)| from);
        }
        let mut constraints = Vec::new();
        let mut short = 0;
        let first = at;
        while let Some((i, from)) = before(at) {
            constraints.push(i);
            short += self.constraints.get(i).map_or(0, |c| c.least);
            at = from;
            if at == first || constraints.len() > self.nodes {
                break;
            }
        }
        Contradiction { constraints, short }
    }

    /// The latest starts that keep every `fixed` node where `earliest` has it. `None`: nothing
    /// bounds that node from above.
    #[must_use]
    pub fn latest(&self, earliest: &Earliest, fixed: impl Fn(usize) -> bool) -> Vec<Option<i64>> {
        let bound = (0..self.nodes)
            .map(|n| {
                if fixed(n) {
                    earliest.start.get(n).copied()
                } else {
                    None
                }
            })
            .listed();
        self.tighten(bound, earliest, &fixed, |c| c.least)
    }

    /// Just in time: the greatest starts that keep the `fixed` nodes where `earliest` has them, no
    /// node later than its `cap`, wanted leads kept where there is room. A node that nobody waits
    /// for stays earliest. Unique: the greatest solution of a system of differences.
    #[must_use]
    pub fn just_in_time(
        &self,
        earliest: &Earliest,
        fixed: impl Fn(usize) -> bool,
        cap: impl Fn(usize) -> Option<i64>,
    ) -> Vec<i64> {
        let early = |n: usize| earliest.start.get(n).copied().unwrap_or(0);
        let bound: Vec<Option<i64>> = (0..self.nodes).map(|n| fixed(n).then(|| early(n))).listed();
        let free = self.tighten(bound, earliest, &fixed, |c| c.wanted);
        let anchored = free
            .iter()
            .enumerate()
            .map(|(n, x)| {
                let x = x.unwrap_or_else(|| early(n));
                Some(cap(n).map_or(x, |cap| x.min(cap.max(early(n)))))
            })
            .listed();
        let done = self.tighten(anchored, earliest, &fixed, |c| c.wanted);
        done.iter()
            .enumerate()
            .map(|(n, x)| x.unwrap_or_else(|| early(n)))
            .listed()
    }

    fn tighten(
        &self,
        mut x: Vec<Option<i64>>,
        earliest: &Earliest,
        fixed: &impl Fn(usize) -> bool,
        weight: impl Fn(&Constraint) -> i64,
    ) -> Vec<Option<i64>> {
        let live: Vec<Constraint> = self.live().map(|(_, c)| *c).listed();
        for _ in 0..=self.nodes {
            let mut changed = false;
            for c in live.iter().rev().filter(|c| !fixed(c.from)) {
                let Some(later) = x.get(c.to).copied().flatten() else {
                    continue;
                };
                let early = earliest.start.get(c.from).copied().unwrap_or(0);
                let limit = (later - weight(c)).max(early);
                if let Some(slot) = x.get_mut(c.from)
                    && slot.is_none_or(|now| limit < now)
                {
                    *slot = Some(limit);
                    changed = true;
                }
            }
            if !changed {
                break;
            }
        }
        x
    }

    /// The constraints that hold up `goal`, goal first: back over tight ones, lowest index first.
    #[must_use]
    pub fn critical(&self, earliest: &Earliest, goal: usize) -> Vec<usize> {
        let mut chain = Vec::new();
        let mut at = goal;
        for _ in 0..self.nodes {
            let tight = self.live().find(|(_, c)| {
                c.to == at
                    && earliest
                        .start
                        .get(c.from)
                        .zip(earliest.start.get(c.to))
                        .is_some_and(|(from, to)| {
                            from + c.least == *to && (*from < *to || c.from == 0)
                        })
            });
            let Some((i, c)) = tight else { break };
            chain.push(i);
            at = c.from;
            if at == 0 {
                break;
            }
        }
        chain
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn c(from: usize, to: usize, least: i64, softness: u8) -> Constraint {
        Constraint {
            from,
            to,
            least,
            wanted: least,
            softness,
        }
    }

    #[test]
    fn everything_starts_as_early_as_its_waits_allow() {
        let mut n = Network::new(4);
        for x in [c(0, 1, 5, 0), c(1, 2, 3, 0), c(0, 2, 9, 0), c(2, 3, 1, 0)] {
            n.add(x);
        }
        assert_eq!(n.earliest().unwrap().start, [0, 5, 9, 10]);
    }

    #[test]
    fn a_circle_without_slack_is_no_contradiction() {
        let mut n = Network::new(3);
        for x in [c(0, 1, 5, 0), c(1, 2, 3, 0), c(2, 1, -3, 0)] {
            n.add(x);
        }
        assert_eq!(n.earliest().unwrap().start, [0, 5, 8]);
    }

    #[test]
    fn the_softest_wait_of_a_contradiction_gives_way() {
        let mut n = Network::new(3);
        for x in [c(0, 1, 5, 0), c(1, 2, 3, 1), c(2, 1, -2, 3)] {
            n.add(x);
        }
        assert_eq!(n.earliest().unwrap().start, [0, 5, 8]);
        assert_eq!(n.dropped(), [2]);
    }

    #[test]
    fn hard_waits_that_contradict_are_told_with_what_is_missing() {
        let mut n = Network::new(3);
        for x in [c(0, 1, 5, 0), c(1, 2, 3, 0), c(2, 1, -2, 0)] {
            n.add(x);
        }
        let e = n.earliest().unwrap_err();
        assert_eq!(e.short, 1);
        let mut waits = e.constraints;
        waits.sort_unstable();
        assert_eq!(waits, [1, 2]);
    }

    #[test]
    fn just_in_time_moves_only_what_somebody_waits_for() {
        let mut n = Network::new(4);
        // 1 and 2 both lead to 3; 1 has room.
        for x in [c(0, 1, 0, 0), c(0, 2, 10, 0), c(1, 3, 2, 0), c(2, 3, 2, 0)] {
            n.add(x);
        }
        let e = n.earliest().unwrap();
        assert_eq!(
            n.just_in_time(&e, |i| i == 0 || i == 3, |_| None),
            [0, 10, 10, 12]
        );
        assert_eq!(
            n.just_in_time(&e, |i| i == 0 || i == 3, |_| Some(4)),
            [0, 4, 10, 12]
        );
    }
}
