//! The schedule as it came out: instants, room to spare, what holds up the goal.

use super::block::{At, Instant, What, Why};
use super::network::seconds;
use super::schedule::{PlacedRun, RowTimes, Schedule, ScreenTimes, TieTimes, TransferTimes};
use super::solve::{Solved, Solver};
use crate::choreography::{Choreography, Part};
use crate::math::{Listed, sort_short};
use crate::set::{Edge, Mark, PlayerId, Verb};
use alloc::vec::Vec;

impl Solver<'_> {
    pub(super) fn schedule(&mut self, solved: &Solved, start: &[i64]) -> Schedule {
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
            .listed();
        let screens = self.screen_times(&at);
        let transfers = self.transfers(&at);
        let ties = self.tie_times(solved, &chain, &at);
        let openings = self
            .woven
            .openings
            .iter()
            .map(|(i, lag)| at(*i).unwrap_or(0.0) + lag)
            .listed();
        let last = rows.iter().map(|r| r.end).fold(0.0, f64::max);
        let goal = goal.and_then(&at).unwrap_or(last);
        let mut runs: Vec<PlacedRun> = Vec::new();
        let mut made = core::mem::take(&mut self.woven.runs).into_iter();
        // Runs were made in the order of their blocks.
        for (b, block) in self.woven.blocks.iter().enumerate() {
            if matches!(block.what, What::Run(_))
                && let Some(run) = made.next()
            {
                let start = seconds(start.get(b).copied().unwrap_or(0));
                runs.push(PlacedRun { start, run });
            }
        }
        sort_short(&mut runs, |a, b| a.start.total_cmp(&b.start));
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
            #[cfg(feature = "authoring")]
            coming: None,
        }
    }

    fn row_times(
        &self,
        row: usize,
        at: &dyn Fn(Instant) -> Option<f64>,
        slack: &dyn Fn(usize) -> Option<f64>,
        on_chain: &dyn Fn(usize) -> bool,
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
        sort_short(&mut marks, |a, b| a.t.total_cmp(&b.t));
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

    fn screen_times(&self, at: &dyn Fn(Instant) -> Option<f64>) -> Vec<ScreenTimes> {
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

    fn transfers(&self, at: &dyn Fn(Instant) -> Option<f64>) -> Vec<TransferTimes> {
        let mut out: Vec<TransferTimes> = Vec::new();
        for step in &self.ch.steps {
            use crate::choreography::Step;
            let (t, handoff) = match step {
                Step::Pass(t) => (t, false),
                Step::Handoff(t) if !t.keeps => (t, true),
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
        sort_short(&mut out, |a, b| a.release.total_cmp(&b.release));
        out
    }

    /// Waits worth showing: one player's for another's, that a coach can do something about.
    fn tie_times(
        &self,
        solved: &Solved,
        chain: &[usize],
        at: &dyn Fn(Instant) -> Option<f64>,
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
