//! From waits to a schedule: earliest, catches in stride, just in time, slack.

use super::Takeover;
use super::ball::{WIND_UP, hand_time};
use super::block::{At, Instant, OpenPass, Why, Woven};
use super::cycle;
use super::network::{Constraint, Earliest, Network, seconds, ticks};
use super::schedule::Schedule;
use super::weave::weave;
use crate::athlete::Limits;
use crate::choreography::Choreography;
use crate::fault::Faults;
use crate::math::first_root;
use crate::set::{Edge, PlayerId, Set};
use alloc::vec::Vec;

/// Rounds of a free pass's flight.
const FREE_ROUNDS: usize = 8;

/// Everything the solver works with.
pub(super) struct Solver<'a> {
    pub(super) set: &'a Set,
    pub(super) ch: Choreography,
    pub(super) woven: Woven,
    pub(super) limits: [Limits; 5],
}

pub(super) struct Solved {
    pub(super) net: Network,
    /// Index of the wait behind each constraint.
    pub(super) waits: Vec<usize>,
    pub(super) earliest: Earliest,
}

/// Solves a laid set.
pub(super) fn solve(
    set: &Set,
    ch: Choreography,
    takeover: Option<&Takeover>,
) -> Result<Schedule, Faults> {
    let limits = set.limits();
    let woven = weave(set, &ch, &limits, takeover);
    let mut solver = Solver {
        set,
        ch,
        woven,
        limits,
    };
    let solved = solver.strides()?;
    let (solved, start) = solver.free_passes(solved)?;
    Ok(solver.schedule(&solved, &start))
}

impl Solver<'_> {
    pub(super) fn limits(&self, who: PlayerId) -> &Limits {
        self.limits.get(who.index()).unwrap_or(&self.limits[0])
    }

    pub(super) fn earliest(&self) -> Result<Solved, Faults> {
        let mut net = Network::new(self.woven.blocks.len());
        let mut waits = Vec::with_capacity(self.woven.waits.len());
        for (i, wait) in self.woven.waits.iter().enumerate() {
            let (Some(from), Some(to)) = (self.woven.offset(wait.from), self.woven.offset(wait.to))
            else {
                continue;
            };
            if wait.from.block == wait.to.block {
                continue;
            }
            let weight = |lag: f64| ticks(from) + ticks(lag) - ticks(to);
            net.add(Constraint {
                from: wait.from.block,
                to: wait.to.block,
                least: weight(wait.lag),
                wanted: weight(wait.wanted),
                softness: wait.softness,
            });
            waits.push(i);
        }
        // Nothing starts before the set does.
        match net.earliest() {
            Ok(earliest) => Ok(Solved {
                net,
                waits,
                earliest,
            }),
            Err(found) => Err(Faults::one(|| {
                cycle::fault(self.set, &self.ch, &self.woven, &waits, &found)
            })),
        }
    }

    fn just_in_time(&self, solved: &Solved) -> Vec<i64> {
        let fixed = |b: usize| self.woven.blocks.get(b).is_none_or(|b| !b.elastic);
        let cap = |b: usize| {
            let block = self.woven.blocks.get(b)?;
            let (next, lag) = *self.woven.openings.get(usize::from(block.beat) + 1)?;
            let at = solved.earliest.start.get(next.block).copied()?;
            Some(at + ticks(self.woven.offset(next)? + lag))
        };
        solved.net.just_in_time(&solved.earliest, fixed, cap)
    }

    /// A free pass meets the receiver wherever the schedule has put both.
    fn free_passes(&mut self, mut solved: Solved) -> Result<(Solved, Vec<i64>), Faults> {
        let mut start = self.just_in_time(&solved);
        for _ in 0..FREE_ROUNDS {
            let mut moved = false;
            for pass in self.loose(&solved) {
                let now = self.woven.offset(Instant {
                    block: pass.block,
                    at: At::Edge(Edge::Catch),
                    plus: -WIND_UP,
                });
                let Some((takes, now)) = self.free_flight(&pass, &start).zip(now) else {
                    continue;
                };
                if (takes - now).abs() > 1e-4 {
                    self.set_flight(pass.block, takes);
                    moved = true;
                }
            }
            if !moved {
                break;
            }
            solved = self.earliest()?;
            start = self.just_in_time(&solved);
        }
        Ok((solved, start))
    }

    /// Free passes, and those whose receiver cannot be where they were meant to be in time.
    fn loose(&self, solved: &Solved) -> Vec<OpenPass> {
        let missed = |pass: &OpenPass| {
            solved.net.dropped().iter().any(|c| {
                let wait = solved.waits.get(*c).and_then(|w| self.woven.waits.get(*w));
                wait.is_some_and(|w| {
                    w.to.block == pass.block && w.why == Why::Receiver
                        || w.from.block == pass.block && w.why == Why::Stride
                })
            })
        };
        let mut loose = self.woven.free.clone();
        for pass in self.woven.spots.iter().chain(&self.woven.stride) {
            if missed(pass) {
                loose.push(*pass);
            }
        }
        loose
    }

    fn free_flight(&self, pass: &OpenPass, start: &[i64]) -> Option<f64> {
        let t = &pass.transfer;
        let passer = self.ch.rows.get(t.row)?;
        let release = seconds(start.get(pass.block).copied()?) + WIND_UP;
        let from = self.place(passer.who, release, start)?;
        let takes = |f: f64| {
            let there = self.place(t.to, release + f, start).unwrap_or(t.target);
            hand_time(from, there, passer.kind, self.limits(passer.who))
        };
        first_root(0.05, 3.0, 60, |f| f - takes(f))
    }

    pub(super) fn place(&self, who: PlayerId, t: f64, start: &[i64]) -> Option<crate::math::Point> {
        let mut at = self.ch.starts.get(who.index()).copied().flatten();
        let mut since = f64::NEG_INFINITY;
        for (b, block) in self.woven.blocks.iter().enumerate() {
            let (Some(run), Some(begin)) = (self.woven.run_of(b), start.get(b)) else {
                continue;
            };
            let begin = seconds(*begin);
            if block.who == Some(who) && begin <= t && begin >= since {
                since = begin;
                at = Some(run.point(t - begin));
            }
        }
        at
    }
}
