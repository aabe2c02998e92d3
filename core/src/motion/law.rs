//! The time law of one run: where on its line a player is at any time.

use super::brake::bounds;
use super::forward::Runner;
use super::limit::{Stretch, stretches};
use super::{Leg, Sprint};
use crate::athlete::{Limits, Pace};
use crate::math::sqrt;
use crate::path::Path;
use alloc::vec::Vec;

/// No leg is capped lower than this, m/s, so that every run ends.
pub(super) const SLOWEST: f64 = 1e-3;

/// Place and speed at one instant.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Sample {
    /// Metres from the start of the path.
    pub s: f64,
    /// m/s; 0 while a foot holds in a turn.
    pub v: f64,
}

/// Arc length over time for a whole run.
///
/// A chain of phases, each in closed form: sprinting, or constant acceleration (braking, holding a
/// speed, following a bend). Speed is continuous but for the hold of a turn straight back.
#[derive(Clone, Debug, Default)]
pub struct Law {
    pub(super) phases: Vec<Phase>,
    pub(super) end: (f64, Sample),
}

#[derive(Clone, Copy, Debug)]
pub(super) struct Phase {
    pub(super) t: f64,
    pub(super) from: Sample,
    pub(super) kind: Kind,
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Kind {
    /// Of the sprint model, begun `since` seconds and `gone` metres after its rest.
    Sprint {
        sprint: Sprint,
        since: f64,
        gone: f64,
    },
    /// Constant acceleration.
    Even(f64),
    /// The foot holds.
    Hold,
}

impl Law {
    /// The fastest run along `path` that keeps every cap: pace by leg, curve, plant, the sprint
    /// model and braking, entering at `entry` and leaving at no more than `exit`, m/s.
    ///
    /// Caps hold exactly at the nodes of the line and within a percent of speed between. An
    /// entry that is too fast for what follows is taken as the fastest that is not.
    #[must_use]
    pub fn build(path: &Path, legs: &[Leg], limits: &Limits, entry: f64, exit: f64) -> Self {
        let stretches = stretches(path, legs, limits);
        let efforts: Vec<Leg> = if legs.is_empty() {
            let effort = limits.effort(Pace::Run, false);
            Vec::from([Leg {
                end: path.length(),
                effort,
            }])
        } else {
            legs.to_vec()
        };
        Self::solve(&stretches, &efforts, limits, entry, exit)
    }

    pub(super) fn solve(
        stretches: &[Stretch],
        legs: &[Leg],
        limits: &Limits,
        entry: f64,
        exit: f64,
    ) -> Self {
        let bounds = bounds(stretches, legs, limits.brake.max(0.1), exit * exit);
        let fastest = bounds.first().map_or(0.0, |b| b.w[0]);
        let mut run = Runner::new(sqrt((entry * entry).min(fastest)));
        for bound in &bounds {
            if let Some(leg) = legs.get(bound.leg) {
                run.through(bound, Sprint::new(limits, leg.effort.accel));
                run.hold(bound.hold);
            }
        }
        run.finish()
    }

    /// Seconds from start to end.
    #[must_use]
    pub fn duration(&self) -> f64 {
        self.end.0
    }

    /// Place and speed at `t` seconds after the start; the ends hold beyond the ends.
    #[must_use]
    pub fn at(&self, t: f64) -> Sample {
        let (lasts, end) = self.end;
        if t < lasts {
            let after = self.phases.partition_point(|p| p.t <= t);
            if let Some(phase) = self.phases.get(after.max(1) - 1) {
                return phase.after((t - phase.t).max(0.0), end.s);
            }
        }
        end
    }

    /// Seconds after the start at which `s` metres are first reached.
    #[must_use]
    pub fn time_at(&self, s: f64) -> f64 {
        if s >= self.end.1.s {
            // A hold at the very end comes after the end is reached; there is none by design.
            return self.end.0;
        }
        let after = self.phases.partition_point(|p| p.from.s < s);
        match self.phases.get(after.max(1) - 1) {
            Some(phase) => (phase.t + phase.time(s - phase.from.s)).min(self.end.0),
            None => 0.0,
        }
    }
}

impl Phase {
    fn after(&self, t: f64, end: f64) -> Sample {
        let Sample { s, v } = self.from;
        let now = match self.kind {
            Kind::Hold => Sample { s, v: 0.0 },
            Kind::Even(a) => Sample {
                s: s + t * (v + 0.5 * a * t),
                v: (v + a * t).max(0.0),
            },
            Kind::Sprint {
                sprint,
                since,
                gone,
            } => {
                let now = sprint.at(since + t);
                Sample {
                    s: s + now.s - gone,
                    v: now.v,
                }
            }
        };
        Sample {
            s: now.s.min(end),
            v: now.v,
        }
    }

    /// Seconds it takes to get `d` metres on.
    fn time(&self, d: f64) -> f64 {
        let d = d.max(0.0);
        match self.kind {
            Kind::Hold => 0.0,
            Kind::Even(a) => {
                let v = self.from.v;
                2.0 * d / (v + sqrt((v * v + 2.0 * a * d).max(0.0))).max(1e-12)
            }
            Kind::Sprint {
                sprint,
                since,
                gone,
            } => sprint.time_to_distance(gone + d) - since,
        }
    }
}
