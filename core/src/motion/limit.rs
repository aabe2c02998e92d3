//! What holds a run back, along its line: the cap on w = v² as a chain of straight pieces.
//!
//! Constant braking is a straight line in w over s, and so is every cap here; that is why the rest
//! needs no fine grid.

use super::Leg;
use super::brake::NOTHING;
use super::law::SLOWEST;
use crate::athlete::Limits;
use crate::math::{Listed, sin};
use crate::path::{Path, Plant, Span};
use alloc::vec::Vec;
use core::f64::consts::PI;

/// Nobody has to run slower than this to get round a bend, m/s: a slow step has no radius.
/// Common practice, no source.
const SLOW_STEP: f64 = 0.4;
/// The cap between two nodes is a chord of the true one; stretches are halved until the chord is
/// this near, as a share of w, and the ends differ by less than this factor.
const CHORD_ACCURACY: f64 = 0.02;
const CHORD_RATIO: f64 = 2.0;
const HALVINGS: u32 = 5;
/// From this turn on a plant also holds the foot; see [`hold`].
const HOLD_FROM: f64 = 2.0 * PI / 3.0;

/// A stretch with its limit on w at both ends, before any leg's effort.
#[derive(Clone, Copy, Debug)]
pub(super) struct Stretch {
    pub(super) s: [f64; 2],
    pub(super) w: [f64; 2],
    pub(super) leg: usize,
    /// Cap on w at the end, for a plant.
    pub(super) w_end: f64,
    /// Seconds the foot holds at the end.
    pub(super) hold: f64,
}

/// The stretches of `path`, cut where a leg ends and wherever a cap bends below the fastest leg's
/// speed. On one list of stretches a law is monotone in the efforts of its legs.
pub(super) fn stretches(path: &Path, legs: &[Leg], limits: &Limits) -> Vec<Stretch> {
    let fastest = (legs.iter().map(|l| l.effort.top)).fold(SLOWEST, f64::max);
    let fastest = if legs.is_empty() {
        limits.v_max
    } else {
        fastest.min(limits.v_max)
    };
    let mut cut = Cutter {
        path,
        limits,
        fastest: fastest * fastest,
        leg_ends: legs.iter().map(|l| l.end).listed(),
        leg: 0,
        made: Vec::new(),
    };
    let mut plants = path.plants().iter().peekable();
    for span in path.spans() {
        cut.span(span);
        while let Some(plant) = plants.next_if(|p| p.s <= span.s[1]) {
            if let Some(last) = cut.made.last_mut() {
                last.w_end = plant_cap(plant, limits);
                last.hold = hold(plant, limits);
            }
        }
    }
    cut.made
}

/// Cap on w at a plant: the velocity changes by at most Δv, so v ≤ Δv / (2 sin(θ/2)).
fn plant_cap(plant: &Plant, limits: &Limits) -> f64 {
    let half = sin(0.5 * plant.angle).max(1e-6);
    let v = limits.plant_dv / (2.0 * half);
    v * v
}

/// Seconds a foot holds: the plant time on a turn straight back, less on smaller turns, nothing up
/// to 120°. Between the two a straight line, so that no small change of a line makes a jump.
/// Common practice, no source.
fn hold(plant: &Plant, limits: &Limits) -> f64 {
    let share = (plant.angle - HOLD_FROM) / (PI - HOLD_FROM);
    limits.plant_time * share.clamp(0.0, 1.0)
}

struct Cutter<'a> {
    path: &'a Path,
    limits: &'a Limits,
    /// Of all legs, as w.
    fastest: f64,
    leg_ends: Vec<f64>,
    leg: usize,
    made: Vec<Stretch>,
}

impl Cutter<'_> {
    fn span(&mut self, span: Span) {
        let [mut from, to] = span.s;
        let mut w = self.cap(span.curvature[0]);
        // Every leg but the last ends where it says; the last goes on.
        while let Some(&end) = self.leg_ends.get(self.leg) {
            if self.leg + 1 >= self.leg_ends.len() || end > to - NOTHING {
                break;
            }
            if end > from + NOTHING {
                let w_end = self.cap_at(end, span);
                self.halve([from, end], [w, w_end], span, HALVINGS);
                (from, w) = (end, w_end);
            }
            self.leg += 1;
        }
        self.halve([from, to], [w, self.cap(span.curvature[1])], span, HALVINGS);
    }

    fn halve(&mut self, s: [f64; 2], w: [f64; 2], span: Span, left: u32) {
        let mid = 0.5 * (s[0] + s[1]);
        let chord = 0.5 * (w[0] + w[1]);
        let straight = span.curvature[0] == 0.0 && span.curvature[1] == 0.0;
        if !straight && left > 0 {
            let w_mid = self.cap_at(mid, span);
            let ratio = w[0].max(w[1]) / w[0].min(w[1]);
            if (w_mid - chord).abs() > CHORD_ACCURACY * w_mid || ratio > CHORD_RATIO {
                self.halve([s[0], mid], [w[0], w_mid], span, left - 1);
                self.halve([mid, s[1]], [w_mid, w[1]], span, left - 1);
                return;
            }
        }
        self.made.push(Stretch {
            s,
            w,
            leg: self.leg,
            w_end: f64::INFINITY,
            hold: 0.0,
        });
    }

    fn cap_at(&self, s: f64, span: Span) -> f64 {
        if span.curvature[0] == 0.0 && span.curvature[1] == 0.0 {
            return self.cap(0.0);
        }
        self.cap(self.path.curvature(s))
    }

    /// v² ≤ lateral · r, and no more than the fastest leg.
    fn cap(&self, curvature: f64) -> f64 {
        let k = curvature.abs();
        if k * self.fastest <= self.limits.lateral {
            return self.fastest;
        }
        (self.limits.lateral / k).max(self.fastest.min(SLOW_STEP * SLOW_STEP))
    }
}
