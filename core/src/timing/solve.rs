//! From waits to a schedule: earliest, catches in stride, just in time, slack.

use super::cycle;
use super::network::{Constraint, Earliest, Network, seconds, ticks};
use super::schedule::{PlacedRun, RowTimes, Schedule, ScreenTimes, TieTimes, TransferTimes};
use super::weave::{
    At, Instant, OpenPass, WIND_UP, Wait, What, Why, Woven, hand_time, soft, weave,
};
use crate::athlete::Limits;
use crate::choreography::{Choreography, Part};
use crate::fault::Faults;
use crate::math::first_root;
use crate::set::{Edge, Mark, PlayerId, Set, Verb};
use alloc::vec::Vec;

/// A backdoor's pass leaves so long after the plant. Common practice, no source: 0.5–0.8 s.
const AFTER_PLANT: f64 = 0.5;
/// A pass to a cutter leaves so long after the cutter is by the screen.
const AFTER_BY: f64 = 0.1;
/// Without either, the cutter has this share of the way behind.
const SHARE: f64 = 0.35;
/// Rounds of a free pass's flight.
const FREE_ROUNDS: usize = 8;

/// Everything the solver works with.
struct Solver<'a> {
    set: &'a Set,
    ch: Choreography,
    woven: Woven,
    limits: [Limits; 5],
}

struct Solved {
    net: Network,
    /// Index of the wait behind each constraint.
    waits: Vec<usize>,
    earliest: Earliest,
}

/// Solves a laid set.
pub(super) fn solve(set: &Set, ch: Choreography) -> Result<Schedule, Faults> {
    let limits = PlayerId::ALL.map(|p| {
        set.player(p)
            .and_then(|p| p.level)
            .unwrap_or(set.level)
            .limits()
    });
    let woven = weave(set, &ch, &limits);
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
    fn limits(&self, who: PlayerId) -> &Limits {
        self.limits.get(who.index()).unwrap_or(&self.limits[0])
    }

    fn earliest(&self) -> Result<Solved, Faults> {
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
            Err(found) => Err(cycle::fault(self.set, &self.ch, &self.woven, &waits, &found).into()),
        }
    }

    // --- catches in stride -----------------------------------------------------------------

    /// Finds each catch on the run in written order and welds the pass to the run there.
    fn strides(&mut self) -> Result<Solved, Faults> {
        let mut solved = self.earliest()?;
        for pass in self.woven.stride.clone() {
            let Some((run, row)) = pass.run else { continue };
            let at = |b: usize| seconds(solved.earliest.start.get(b).copied().unwrap_or(0));
            let ready = at(pass.block) + WIND_UP - at(run);
            let Some((offset, takes)) = self.catch_offset(&pass, run, row, ready) else {
                continue;
            };
            self.set_flight(pass.block, takes);
            let catch = Instant {
                block: pass.block,
                at: At::Edge(Edge::Catch),
                plus: 0.0,
            };
            let by = Instant {
                block: run,
                at: At::Plus(offset),
                plus: 0.0,
            };
            for (from, to, softness) in [(by, catch, 0), (catch, by, soft::STRIDE)] {
                self.woven.waits.push(Wait {
                    from,
                    to,
                    lag: 0.0,
                    wanted: 0.0,
                    softness,
                    why: Why::Stride,
                });
            }
            solved = self.earliest()?;
        }
        Ok(solved)
    }

    /// Offset of the receiver's run at which the ball is caught, and its flight: the first at
    /// which a ball that leaves no sooner than `ready` (seconds after the run's start), and not
    /// before the cutter is open, is there in time.
    fn catch_offset(
        &self,
        pass: &OpenPass,
        block: usize,
        row: usize,
        ready: f64,
    ) -> Option<(f64, f64)> {
        let run = self.woven.run_of(block)?;
        let leg = run.leg(row, Part::Way)?;
        let t = &pass.transfer;
        let passer = self.ch.rows.get(t.row)?;
        let takes = |o: f64| hand_time(t.from, run.point(o), passer.kind, self.limits(passer.who));
        if let Some(at) = t.at {
            let (s, _) = run.path().nearest_between(at, leg.s[0], leg.s[1]);
            let o = run.law().time_at(s);
            return Some((o, takes(o)));
        }
        let [begin, end] = leg.t;
        let by = run
            .marks
            .iter()
            .filter(|m| m.row == row && m.edge == Edge::PassBy)
            .map(|m| m.t + AFTER_BY)
            .fold(f64::NEG_INFINITY, f64::max);
        let plant = run
            .mark(row, Edge::Plant, None)
            .filter(|p| *p > begin || self.plants(row));
        let open = if by.is_finite() {
            by
        } else {
            plant.map_or(begin + SHARE * (end - begin), |p| p + AFTER_PLANT)
        };
        let need = ready.max(open);
        let o = first_root(begin, end, 48, |o| o - takes(o) - need).unwrap_or(end);
        Some((o, takes(o)))
    }

    /// Whether a cut has a plant at its very start: one that flowed out of another move.
    fn plants(&self, row: usize) -> bool {
        use crate::set::Kind;
        self.ch
            .rows
            .get(row)
            .is_some_and(|r| matches!(r.kind, Some(Kind::Backdoor)))
    }

    fn set_flight(&mut self, block: usize, takes: f64) {
        if let Some(What::Still(marks)) = self.woven.blocks.get_mut(block).map(|b| &mut b.what) {
            for (edge, t) in marks.iter_mut() {
                if matches!(edge, Edge::Catch | Edge::End) {
                    *t = WIND_UP + takes;
                }
            }
        }
    }

    // --- just in time ----------------------------------------------------------------------

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
            for pass in self.woven.free.clone() {
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

    fn place(&self, who: PlayerId, t: f64, start: &[i64]) -> Option<crate::math::Point> {
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

    // --- the result ------------------------------------------------------------------------

    fn schedule(&mut self, solved: &Solved, start: &[i64]) -> Schedule {
        let at = |i: Instant| {
            let block = start.get(i.block).copied()?;
            Some(seconds(block) + self.woven.offset(i)?)
        };
        let goal = self.woven.goal;
        let latest = goal.map(|g| {
            solved
                .net
                .latest(&solved.earliest, |b| b == 0 || b == g.block)
        });
        let chain = goal.map_or_else(Vec::new, |g| solved.net.critical(&solved.earliest, g.block));
        let on_chain = |block: usize| {
            chain.iter().any(|c| {
                solved
                    .net
                    .constraints()
                    .get(*c)
                    .is_some_and(|c| c.from == block || c.to == block)
            })
        };
        let slack = |block: usize| {
            let latest = latest.as_ref()?.get(block).copied().flatten()?;
            Some(seconds(
                latest - solved.earliest.start.get(block).copied().unwrap_or(0),
            ))
        };
        let rows: Vec<RowTimes> = (0..self.ch.rows.len())
            .map(|row| self.row_times(row, &at, &slack, &on_chain))
            .collect();
        let screens = self.screen_times(&at);
        let transfers = self.transfers(&at);
        let ties = self.tie_times(solved, &chain, &at);
        let openings = self
            .woven
            .openings
            .iter()
            .map(|(i, lag)| at(*i).unwrap_or(0.0) + lag)
            .collect();
        let last = rows.iter().map(|r| r.end).fold(0.0, f64::max);
        let goal = goal.and_then(at).unwrap_or(last);
        let mut runs: Vec<PlacedRun> = Vec::new();
        for (b, block) in self.woven.blocks.iter().enumerate() {
            if let What::Run(r) = block.what
                && let Some(run) = self.woven.runs.get(r)
            {
                let start = seconds(start.get(b).copied().unwrap_or(0));
                runs.push(PlacedRun {
                    start,
                    run: run.clone(),
                });
            }
        }
        runs.sort_by(|a, b| a.start.total_cmp(&b.start));
        Schedule {
            choreography: core::mem::replace(
                &mut self.ch,
                Choreography {
                    rows: Vec::new(),
                    steps: Vec::new(),
                    screens: Vec::new(),
                    uses: Vec::new(),
                    starts: [None; 5],
                },
            ),
            runs,
            rows,
            transfers,
            screens,
            ties,
            openings,
            goal,
        }
    }

    fn row_times(
        &self,
        row: usize,
        at: &impl Fn(Instant) -> Option<f64>,
        slack: &impl Fn(usize) -> Option<f64>,
        on_chain: &impl Fn(usize) -> bool,
    ) -> RowTimes {
        let Some(r) = self.ch.rows.get(row) else {
            return RowTimes::default();
        };
        let mut marks: Vec<Mark> = Vec::new();
        for edge in Edge::of(r.verb) {
            let repeats = matches!(edge, Edge::PassBy | Edge::Cue);
            let whom: Vec<Option<PlayerId>> = if repeats {
                self.passed(row)
            } else {
                [None].into()
            };
            for of in whom {
                let t = self.woven.locate(&self.ch, row, *edge, of).and_then(at);
                marks.extend(t.map(|t| Mark { edge: *edge, of, t }));
            }
        }
        marks.sort_by(|a, b| a.t.total_cmp(&b.t));
        let mark = |edge: Edge| marks.iter().find(|m| m.edge == edge).map(|m| m.t);
        let blocks = self.woven.row_blocks.get(row).cloned().unwrap_or_default();
        let mut waits = Vec::new();
        let leg = |part: Part| {
            let b = blocks.iter().copied().find(|b| {
                self.woven
                    .run_of(*b)
                    .is_some_and(|run| run.leg(row, part).is_some())
            })?;
            let instant = |at| Instant {
                block: b,
                at,
                plus: 0.0,
            };
            Some((
                at(instant(At::LegStart(row, part)))?,
                at(instant(At::LegEnd(row, part)))?,
            ))
        };
        if let (Some((_, from)), Some((to, _))) = (leg(Part::SetUp), leg(Part::Way))
            && to > from + 0.01
        {
            waits.push((from, to));
        }
        let main = blocks.last().copied();
        RowTimes {
            start: mark(Edge::Start).unwrap_or(0.0),
            end: mark(Edge::End).unwrap_or(0.0),
            waits,
            slack: main.and_then(slack),
            critical: blocks.iter().any(|b| on_chain(*b)),
            marks,
        }
    }

    /// The screeners a row passes, in running order.
    fn passed(&self, row: usize) -> Vec<Option<PlayerId>> {
        let mut out: Vec<Option<PlayerId>> = Vec::new();
        for b in self.woven.row_blocks.get(row).into_iter().flatten() {
            let Some(run) = self.woven.run_of(*b) else {
                continue;
            };
            for m in run
                .marks
                .iter()
                .filter(|m| m.row == row && m.edge == Edge::PassBy)
            {
                if !out.contains(&m.of) {
                    out.push(m.of);
                }
            }
        }
        out
    }

    fn screen_times(&self, at: &impl Fn(Instant) -> Option<f64>) -> Vec<ScreenTimes> {
        let mut out = Vec::new();
        for (index, screen) in self.ch.screens.iter().enumerate() {
            let Some(row) = screen.row else { continue };
            let set = self
                .woven
                .locate(&self.ch, row, Edge::Set, None)
                .and_then(at);
            let free = self
                .woven
                .locate(&self.ch, row, Edge::Free, None)
                .and_then(at);
            if let (Some(set), Some(free)) = (set, free) {
                out.push(ScreenTimes {
                    screen: index,
                    set,
                    free,
                });
            }
        }
        out
    }

    fn transfers(&self, at: &impl Fn(Instant) -> Option<f64>) -> Vec<TransferTimes> {
        let mut out: Vec<TransferTimes> = Vec::new();
        for step in &self.ch.steps {
            use crate::choreography::Step;
            let (t, handoff) = match step {
                Step::Pass(t) => (t, false),
                Step::Handoff(t) => (t, true),
                _ => continue,
            };
            let time = |edge| self.woven.locate(&self.ch, t.row, edge, None).and_then(at);
            let from = self.ch.rows.get(t.row).map(|r| r.who);
            if let (Some(from), Some(release), Some(catch)) =
                (from, time(Edge::Release), time(Edge::Catch))
            {
                out.push(TransferTimes {
                    row: t.row,
                    from,
                    to: t.to,
                    release,
                    catch,
                    handoff,
                });
            }
        }
        out.sort_by(|a, b| a.release.total_cmp(&b.release));
        out
    }

    /// Waits worth showing: one player's for another's, that a coach can do something about.
    fn tie_times(
        &self,
        solved: &Solved,
        chain: &[usize],
        at: &impl Fn(Instant) -> Option<f64>,
    ) -> Vec<TieTimes> {
        let mut out: Vec<TieTimes> = Vec::new();
        for (c, w) in solved.waits.iter().enumerate() {
            let Some(wait) = self.woven.waits.get(*w) else {
                continue;
            };
            let shown = matches!(
                wait.why,
                Why::Written { .. } | Why::Feet { .. } | Why::Shut | Why::Exchange
            );
            let ends = (self.end_of(wait.from), self.end_of(wait.to));
            let (Some((from, from_edge)), Some((to, to_edge))) = ends else {
                continue;
            };
            // The other half of "exactly then" says the same again.
            let twin = out
                .iter()
                .any(|t| t.from.0 == to && t.to.0 == from && t.from.1 == to_edge);
            if !shown || from == to || twin {
                continue;
            }
            let (Some(a), Some(b)) = (at(wait.from), at(wait.to)) else {
                continue;
            };
            out.push(TieTimes {
                from: (from, from_edge, a),
                to: (to, to_edge, b),
                lag: wait.lag,
                written: matches!(wait.why, Why::Written { .. }),
                critical: chain.contains(&c),
                dropped: solved.net.dropped().contains(&c),
            });
        }
        out
    }

    /// The row and edge an instant belongs to.
    fn end_of(&self, i: Instant) -> Option<(usize, Edge)> {
        let block = self.woven.blocks.get(i.block)?;
        Some(match i.at {
            At::Mark(row, edge, _) => (row, edge),
            At::LegStart(row, Part::Shut) => (row, Edge::Shut),
            At::LegStart(row, _) => (row, Edge::Start),
            At::LegEnd(row, _) => (row, Edge::End),
            At::Edge(edge) => (block.row?, edge),
            At::Plus(_) => (block.row?, Edge::PassBy),
            At::Start => {
                let row = block.row?;
                let shuts = self
                    .woven
                    .run_of(i.block)
                    .is_some_and(|r| r.leg(row, Part::Shut).is_some());
                let screen = self
                    .ch
                    .rows
                    .get(row)
                    .is_some_and(|r| r.verb == Verb::Screen);
                (
                    row,
                    if shuts && screen {
                        Edge::Shut
                    } else {
                        Edge::Start
                    },
                )
            }
        })
    }
}
