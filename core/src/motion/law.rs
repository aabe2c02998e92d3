//! The time law of one run: where on its line a player is at any time.

use super::limit::{Stretch, stretches};
use super::{Leg, Sprint};
use crate::athlete::{Limits, Pace};
use crate::math::sqrt;
use crate::path::Path;
use alloc::vec::Vec;

/// No leg is capped lower than this, m/s, so that every run ends.
pub(super) const SLOWEST: f64 = 1e-3;
const SLOWEST_W: f64 = SLOWEST * SLOWEST;

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
    phases: Vec<Phase>,
    end: (f64, Sample),
}

#[derive(Clone, Copy, Debug)]
struct Phase {
    t: f64,
    from: Sample,
    kind: Kind,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Kind {
    /// Of the sprint model, begun `since` seconds after its rest.
    Sprint { sprint: Sprint, since: f64 },
    /// Constant acceleration.
    Even(f64),
    /// The foot holds.
    Hold,
}

impl Law {
    /// The fastest run along `path` that keeps every cap: pace by leg, curve, plant, the sprint
    /// model and braking, entering at `entry` and leaving at no more than `exit`, m/s.
    ///
    /// Caps hold exactly at the nodes of the line and within half a percent of speed between. An
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
        let brake = limits.brake.max(0.1);
        let bounds = bounds(stretches, legs, brake, exit * exit);
        let mut run = Runner::new(
            bounds
                .first()
                .map_or(0.0, |b| (entry * entry).min(b.w[0]).max(0.0)),
        );
        for bound in &bounds {
            let Some(leg) = legs.get(bound.leg) else {
                continue;
            };
            run.through(bound, Sprint::new(limits, leg.effort.accel));
            if bound.hold > 0.0 {
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
        let after = self.phases.partition_point(|p| p.t <= t);
        match self.phases.get(after.max(1) - 1) {
            Some(phase) if t < self.end.0 => phase.after((t - phase.t).max(0.0), self.end.1.s),
            _ => self.end.1,
        }
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
            Kind::Sprint { sprint, since } => Sample {
                s: s + sprint.distance(since + t) - sprint.distance(since),
                v: sprint.speed(since + t),
            },
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
            Kind::Sprint { sprint, since } => {
                sprint.time_to_distance(sprint.distance(since) + d) - since
            }
        }
    }
}

/// A stretch whose straight line in w is kept by whoever is to keep all later ones.
#[derive(Clone, Copy, Debug)]
struct Bound {
    s: [f64; 2],
    w: [f64; 2],
    leg: usize,
    hold: f64,
}

/// The backward pass: caps lowered to what braking can still obey.
fn bounds(stretches: &[Stretch], legs: &[Leg], brake: f64, exit: f64) -> Vec<Bound> {
    let mut made = Vec::with_capacity(stretches.len() * 2);
    let mut next = exit;
    for stretch in stretches.iter().rev() {
        let top = legs
            .get(stretch.leg)
            .map_or(0.0, |l| l.effort.top.max(SLOWEST));
        let [w0, w1] = stretch.w.map(|w| w.min(top * top).max(SLOWEST_W));
        let [s0, s1] = stretch.s;
        let length = s1 - s0;
        let end = w1.min(stretch.w_end).min(next);
        let braked = end + 2.0 * brake * length;
        let bound = |s: [f64; 2], w: [f64; 2], hold: f64| Bound {
            s,
            w,
            leg: stretch.leg,
            hold,
        };
        // Braking line and cap are straight: they cross at most once.
        let rise = (w1 - w0) / length + 2.0 * brake;
        let back = (w1 - end) / rise;
        if braked <= w0 || rise <= 0.0 || back >= length {
            made.push(bound([s0, s1], [braked.min(w0), end], stretch.hold));
            next = braked.min(w0);
        } else {
            if back > 1e-12 {
                let w = end + 2.0 * brake * back;
                made.push(bound([s1 - back, s1], [w, end], stretch.hold));
                made.push(bound([s0, s1 - back], [w0, w], 0.0));
            } else {
                made.push(bound([s0, s1], [w0, end], stretch.hold));
            }
            next = w0;
        }
    }
    made.reverse();
    made
}

/// The forward pass.
struct Runner {
    t: f64,
    now: Sample,
    phases: Vec<Phase>,
}

impl Runner {
    fn new(w: f64) -> Self {
        Self {
            t: 0.0,
            now: Sample { s: 0.0, v: sqrt(w) },
            phases: Vec::new(),
        }
    }

    /// Runs one stretch as fast as its bound and the sprint model let.
    fn through(&mut self, bound: &Bound, sprint: Sprint) {
        let slope = (bound.w[1] - bound.w[0]) / (bound.s[1] - bound.s[0]);
        let limit = |s: f64| bound.w[0] + slope * (s - bound.s[0]);
        // At most: catch the bound, follow it, lose it where it rises too fast.
        for _ in 0..3 {
            let Sample { s, v } = self.now;
            if s >= bound.s[1] {
                break;
            }
            let keeps_up = sprint.acceleration(v) >= 0.5 * slope;
            let w = limit(s);
            if v * v >= w * (1.0 - 1e-12) && keeps_up {
                // The speed beyond which the bound rises faster than the sprint model.
                let lost = sprint.top - 0.5 * slope * sprint.tau;
                let until = if slope > 0.0 && bound.w[1] > lost * lost {
                    (bound.s[0] + (lost * lost - bound.w[0]) / slope).clamp(s, bound.s[1])
                } else {
                    bound.s[1]
                };
                let v = sqrt(if until < bound.s[1] {
                    lost * lost
                } else {
                    bound.w[1]
                });
                self.go(Kind::Even(0.5 * slope), Sample { s: until, v });
                if until <= s {
                    self.sprint(sprint, bound.s[1]);
                }
            } else if keeps_up || slope <= 0.0 {
                self.catch(sprint, bound, slope);
            } else {
                self.sprint(sprint, bound.s[1]);
            }
        }
    }

    /// Sprints to `s`, with nothing in the way.
    fn sprint(&mut self, sprint: Sprint, s: f64) {
        let since = sprint.time_to_speed(self.now.v);
        let from = sprint.distance(since);
        let t = sprint.time_to_distance(from + s - self.now.s);
        self.go(
            Kind::Sprint { sprint, since },
            Sample {
                s,
                v: sprint.speed(t),
            },
        );
    }

    /// Sprints until the bound is met, or the stretch ends.
    fn catch(&mut self, sprint: Sprint, bound: &Bound, slope: f64) {
        let Sample { s, v } = self.now;
        let since = sprint.time_to_speed(v);
        let from = sprint.distance(since);
        let free = sprint.time_to_distance(from + bound.s[1] - s);
        let over = |t: f64| {
            let v = sprint.speed(t);
            v * v - (bound.w[0] + slope * (s + sprint.distance(t) - from - bound.s[0]))
        };
        if over(free) <= 0.0 {
            let end = Sample {
                s: bound.s[1],
                v: sprint.speed(free),
            };
            self.go(Kind::Sprint { sprint, since }, end);
            return;
        }
        // v² grows faster than the bound for as long as the sprint keeps up: one crossing.
        let mut bracket = [since, free];
        let mut t = 0.5 * (since + free);
        for _ in 0..60 {
            let gap = over(t);
            if gap > 0.0 {
                bracket[1] = t;
            } else {
                bracket[0] = t;
            }
            let v = sprint.speed(t);
            let rate = v * (2.0 * sprint.acceleration(v) - slope);
            let newton = t - gap / rate;
            let next = if newton >= bracket[0] && newton <= bracket[1] {
                newton
            } else {
                0.5 * (bracket[0] + bracket[1])
            };
            let moved = (next - t).abs();
            t = next;
            if moved < 1e-12 {
                break;
            }
        }
        let met = (s + sprint.distance(t) - from).min(bound.s[1]);
        let w = bound.w[0] + slope * (met - bound.s[0]);
        self.go(
            Kind::Sprint { sprint, since },
            Sample {
                s: met,
                v: sqrt(w.max(0.0)),
            },
        );
    }

    /// Adds a phase that ends at `to`.
    fn go(&mut self, kind: Kind, to: Sample) {
        let d = to.s - self.now.s;
        if d <= 0.0 {
            self.now = to;
            return;
        }
        let begins = Phase {
            t: self.t,
            from: self.now,
            kind,
        };
        let time = match kind {
            // From the speeds at both ends: no loss where one of them is nearly 0.
            Kind::Even(_) => 2.0 * d / (self.now.v + to.v).max(1e-12),
            _ => begins.time(d),
        };
        self.phases.push(begins);
        self.t += time;
        self.now = to;
    }

    fn hold(&mut self, time: f64) {
        self.phases.push(Phase {
            t: self.t,
            from: self.now,
            kind: Kind::Hold,
        });
        self.t += time;
    }

    fn finish(self) -> Law {
        Law {
            phases: self.phases,
            end: (self.t, self.now),
        }
    }
}
