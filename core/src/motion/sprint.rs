//! The sprint model in closed form.
//!
//! Source: the mono-exponential model of Furusawa, Hill and Parkinson (1927), as used by Clark et
//! al. (2017) and Samozino et al. (2016): v(t) = V(1 − e^(−t/τ)), for short sprints without
//! fatigue.

use super::Sample;
use crate::athlete::{Effort, Limits};
use crate::math::{bisect, exp, ln};

/// An athlete speeding up: acceleration (V − v)/τ.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sprint {
    /// V, the speed that is approached, m/s.
    pub top: f64,
    /// τ, the time constant, s.
    pub tau: f64,
}

impl Sprint {
    /// The sprint of an athlete who uses the share `accel` of full acceleration.
    #[must_use]
    pub fn new(limits: &Limits, accel: f64) -> Self {
        Self {
            top: limits.v_max.max(0.1),
            tau: limits.tau.max(0.01) / accel.max(0.01),
        }
    }

    /// Acceleration at speed `v`, m/s².
    #[must_use]
    pub fn acceleration(&self, v: f64) -> f64 {
        (self.top - v) / self.tau
    }

    /// Speed after `t` seconds from rest.
    #[must_use]
    pub fn speed(&self, t: f64) -> f64 {
        self.at(t).v
    }

    /// Metres after `t` seconds from rest.
    #[must_use]
    pub fn distance(&self, t: f64) -> f64 {
        self.at(t).s
    }

    /// Both after `t` seconds from rest: they share what costs most.
    pub(super) fn at(&self, t: f64) -> Sample {
        let share = 1.0 - exp(-t / self.tau);
        Sample {
            s: self.top * (t - self.tau * share),
            v: self.top * share,
        }
    }

    /// Seconds from rest until speed `v`, kept a hair below the top so that it is finite.
    #[must_use]
    pub fn time_to_speed(&self, v: f64) -> f64 {
        -self.tau * ln(1.0 - (v / self.top).clamp(0.0, 1.0 - 1e-12))
    }

    /// Metres from rest until speed `v`: X(v) = −Vτ ln(1 − v/V) − τv.
    #[must_use]
    pub fn distance_to_speed(&self, v: f64) -> f64 {
        self.top * self.time_to_speed(v) - self.tau * v
    }

    /// Seconds from rest until `d` metres: the root of u + e^(−u) = 1 + d/(Vτ), times τ.
    #[must_use]
    pub fn time_to_distance(&self, d: f64) -> f64 {
        let k = d.max(0.0) / (self.top * self.tau);
        // Both starts lie above the root; Newton falls from there without crossing it.
        let sqrt_2k = crate::math::sqrt(2.0 * k);
        self.time_near(d, self.tau * (1.0 + k).min(sqrt_2k + k))
    }

    /// As [`time_to_distance`](Self::time_to_distance), starting from a guess at or above it.
    pub(super) fn time_near(&self, d: f64, guess: f64) -> f64 {
        let k = d.max(0.0) / (self.top * self.tau);
        let mut u = guess / self.tau;
        for _ in 0..32 {
            let e = exp(-u);
            let slope = 1.0 - e;
            if slope < 1e-9 {
                break;
            }
            let step = (u - slope - k) / slope;
            u -= step;
            if step.abs() < 1e-13 * (1.0 + u) {
                break;
            }
        }
        u.max(0.0) * self.tau
    }
}

/// Seconds an athlete takes over `d` metres from rest, flat out, without stopping.
///
/// ```
/// use backcut::{athlete::Level, motion::sprint_time};
/// // Men of a national team: 2.06 s over 10 m (Haugen et al. 2019, PLoS One 14(7):e0215551).
/// assert!((sprint_time(&Level::Elite.limits(), 10.0) - 2.06).abs() < 0.02);
/// ```
#[must_use]
pub fn sprint_time(limits: &Limits, d: f64) -> f64 {
    Sprint::new(limits, 1.0).time_to_distance(d)
}

/// Seconds from standing to standing over `d` metres of straight floor.
///
/// The peak solves X(v) + v²/2b = d; a cap below it is held for the rest of the way.
#[must_use]
pub fn rest_to_rest(limits: &Limits, effort: Effort, d: f64) -> f64 {
    let sprint = Sprint::new(limits, effort.accel);
    let need = |v: f64| sprint.distance_to_speed(v) + v * v / (2.0 * limits.brake);
    let peak = bisect(0.0, sprint.top, |v| need(v) - d.max(0.0));
    let v = peak.min(effort.top);
    let held = if v < peak { (d - need(v)) / v } else { 0.0 };
    sprint.time_to_speed(v) + v / limits.brake + held
}
