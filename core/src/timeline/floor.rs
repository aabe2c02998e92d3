//! Where everybody is at every sample of a facing track: worked out once for all eyes.

use crate::math::{Point, Vec2};
use crate::motion::facing;
use crate::set::PlayerId;
use crate::timing::PlacedRun;
use alloc::vec::Vec;

/// Slower than this a player does not have to look where the feet go, m/s.
const STROLL: f64 = 0.7;

/// One player at one sample.
#[derive(Clone, Copy, Debug)]
pub(super) struct Foot {
    pub at: Point,
    /// The way the feet go, where they go faster than a stroll.
    pub way: Option<Vec2>,
}

/// All players at all samples.
#[derive(Debug)]
pub(super) struct Floor {
    feet: [Vec<Foot>; 5],
}

impl Floor {
    /// Samples from 0 to `duration`; `runs` in order of start.
    pub(super) fn new(starts: &[Option<Point>; 5], runs: &[PlacedRun], duration: f64) -> Self {
        let count = facing::samples(duration);
        let feet = PlayerId::ALL.map(|who| {
            let Some(mut at) = starts.get(who.index()).copied().flatten() else {
                return Vec::new();
            };
            let mut own = runs.iter().filter(|r| r.run.who == who).peekable();
            let mut now: Option<&PlacedRun> = None;
            let mut feet = Vec::with_capacity(count);
            for i in 0..count {
                let t = facing::time_of(i);
                while let Some(next) = own.next_if(|r| r.start <= t) {
                    now = Some(next);
                }
                let mut way = None;
                if let Some(r) = now {
                    let since = t - r.start;
                    let sample = r.run.law().at(since);
                    at = r.run.path().point(sample.s);
                    if since >= r.run.duration() {
                        now = None;
                    } else if sample.v > STROLL {
                        way = Some(r.run.path().tangent(sample.s));
                    }
                }
                feet.push(Foot { at, way });
            }
            feet
        });
        Self { feet }
    }

    /// A player at the sample nearest to `t`.
    pub(super) fn foot(&self, who: PlayerId, t: f64) -> Option<&Foot> {
        let feet = self.feet.get(who.index())?;
        feet.get(facing::sample_of(t).min(feet.len().checked_sub(1)?))
    }
}
