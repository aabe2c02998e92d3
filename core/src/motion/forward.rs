//! The forward pass: as fast as the bounds and the sprint model let.

use super::Sprint;
use super::brake::Bound;
use super::law::{Kind, Law, Phase, Sample};
use crate::math::sqrt;
use alloc::vec::Vec;

/// A run as far as it has got.
///
/// While a sprint has nothing in its way its speed is not worked out: whether it meets the next
/// bound shows from where it would have the bound's speed.
pub(super) struct Runner {
    t: f64,
    /// Where the last phase ended.
    now: Sample,
    /// A sprint that began there.
    sprinting: Option<Sprinting>,
    /// The end of the last stretch, metres.
    reached: f64,
    phases: Vec<Phase>,
}

#[derive(Clone, Copy)]
struct Sprinting {
    sprint: Sprint,
    /// Seconds from its rest until it began.
    since: f64,
    /// Where its rest would have been, metres.
    origin: f64,
}

impl Sprinting {
    /// Where the speed is `v`.
    fn place(&self, v: f64) -> f64 {
        self.origin + self.sprint.distance_to_speed(v)
    }
}

impl Runner {
    pub(super) fn new(v: f64) -> Self {
        Self {
            t: 0.0,
            now: Sample { s: 0.0, v },
            sprinting: None,
            reached: 0.0,
            phases: Vec::with_capacity(8),
        }
    }

    /// Runs one stretch.
    pub(super) fn through(&mut self, bound: &Bound, sprint: Sprint) {
        if self.sprinting.is_some_and(|run| run.sprint != sprint) {
            self.settle();
        }
        if self.sprinting.is_none() {
            self.follow(bound, sprint);
        }
        if let Some(run) = self.sprinting
            && run.place(sqrt(bound.w[1])) < bound.s[1]
        {
            self.catch(run, bound);
            self.follow(bound, sprint);
        }
        self.reached = bound.s[1];
    }

    /// Holds the foot for `time` seconds.
    pub(super) fn hold(&mut self, time: f64) {
        if time > 0.0 {
            self.settle();
            self.push(Kind::Hold, time, self.now);
        }
    }

    pub(super) fn finish(mut self) -> Law {
        self.settle();
        Law {
            phases: self.phases,
            end: (self.t, self.now),
        }
    }

    /// Follows the bound for as long as it is reached and rises no faster than the athlete; begins
    /// a sprint where not.
    fn follow(&mut self, bound: &Bound, sprint: Sprint) {
        let slope = bound.slope();
        let Sample { s, v } = self.now;
        let limit = bound.w[0] + slope * (s - bound.s[0]);
        let reached = v * v >= limit * (1.0 - 1e-12);
        if reached && sprint.acceleration(v) >= 0.5 * slope {
            // The speed beyond which the bound rises faster than the sprint model.
            let lost = sprint.top - 0.5 * slope * sprint.tau;
            let w = if slope > 0.0 {
                bound.w[1].min(lost * lost)
            } else {
                bound.w[1]
            };
            let until = if w < bound.w[1] {
                (bound.s[0] + (w - bound.w[0]) / slope).clamp(s, bound.s[1])
            } else {
                bound.s[1]
            };
            let end = Sample {
                s: until,
                v: sqrt(w),
            };
            // From the speeds at both ends: no loss where one of them is nearly 0.
            let time = 2.0 * (until - s) / (v + end.v).max(1e-12);
            self.push(Kind::Even(0.5 * slope), time, end);
            if until >= bound.s[1] {
                return;
            }
        }
        let v = self.now.v;
        self.sprinting = Some(Sprinting {
            sprint,
            since: sprint.time_to_speed(v),
            origin: self.now.s - sprint.distance_to_speed(v),
        });
    }

    /// Ends the sprint where it meets the bound, which it does before the stretch ends.
    fn catch(&mut self, run: Sprinting, bound: &Bound) {
        let slope = bound.slope();
        let over = |v: f64| v * v - bound.w[0] - slope * (run.place(v) - bound.s[0]);
        // v² gains on the bound for as long as the sprint keeps up: one crossing.
        let mut bracket = [0.0, sqrt(bound.w[0].max(bound.w[1]))];
        // On a level bound the crossing is known; else not from the end, where the athlete may be at
        // top speed and the slope of `over` without bounds.
        let mut v = if slope == 0.0 {
            bracket[1]
        } else {
            0.5 * bracket[1]
        };
        for _ in 0..60 {
            if slope == 0.0 {
                break;
            }
            let gap = over(v);
            bracket = if gap > 0.0 {
                [bracket[0], v]
            } else {
                [v, bracket[1]]
            };
            let rate = v * (2.0 - slope / run.sprint.acceleration(v));
            let newton = v - gap / rate;
            let next = if newton >= bracket[0] && newton <= bracket[1] {
                newton
            } else {
                0.5 * (bracket[0] + bracket[1])
            };
            let moved = (next - v).abs();
            v = next;
            if moved < 1e-13 {
                break;
            }
        }
        let s = run.place(v).clamp(self.now.s.max(bound.s[0]), bound.s[1]);
        let v = sqrt((bound.w[0] + slope * (s - bound.s[0])).max(0.0));
        self.end_sprint(run, run.sprint.time_to_speed(v), Sample { s, v });
    }

    /// Ends a sprint at the end of the last stretch.
    fn settle(&mut self) {
        if let Some(run) = self.sprinting {
            let t = run.sprint.time_to_distance(self.reached - run.origin);
            let v = run.sprint.speed(t);
            self.end_sprint(run, t, Sample { s: self.reached, v });
        }
    }

    fn end_sprint(&mut self, run: Sprinting, t: f64, end: Sample) {
        self.sprinting = None;
        let Sprinting { sprint, since, .. } = run;
        let gone = sprint.distance(since);
        let kind = Kind::Sprint {
            sprint,
            since,
            gone,
        };
        self.push(kind, t - since, end);
    }

    /// Adds a phase of `time` seconds that ends at `end`.
    fn push(&mut self, kind: Kind, time: f64, end: Sample) {
        if time > 0.0 {
            self.phases.push(Phase {
                t: self.t,
                from: self.now,
                kind,
            });
            self.t += time;
        }
        self.now = end;
    }
}
