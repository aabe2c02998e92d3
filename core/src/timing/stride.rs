//! Catches in stride: where on the receiver's run the ball and the hands meet.

use super::ball::{WIND_UP, hand_time};
use super::block::{At, Instant, OpenPass, Wait, What, Why, soft};
use super::network::seconds;
use super::solve::{Solved, Solver};

use crate::choreography::Part;
use crate::fault::Faults;
use crate::math::first_root;
use crate::set::Edge;

/// A backdoor's pass leaves so long after the plant. Common practice, no source: 0.5–0.8 s.
const AFTER_PLANT: f64 = 0.5;
/// A pass to a cutter leaves so long after the cutter is by the screen.
const AFTER_BY: f64 = 0.1;
/// Without either, the cutter has this share of the way behind.
const SHARE: f64 = 0.35;

impl Solver<'_> {
    /// Finds each catch on the run in written order and welds the pass to the run there.
    pub(super) fn strides(&mut self) -> Result<Solved, Faults> {
        let mut solved = self.earliest()?;
        for i in 0..self.woven.stride.len() {
            let Some(pass) = self.woven.stride.get(i).copied() else {
                continue;
            };
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

    pub(super) fn set_flight(&mut self, block: usize, takes: f64) {
        if let Some(What::Still(stops)) = self.woven.blocks.get_mut(block).map(|b| &mut b.what) {
            stops.catch = WIND_UP + takes;
            stops.end = WIND_UP + takes;
        }
    }
}
