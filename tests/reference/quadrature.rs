//! The time law against plain stepping: two passes over a fine even grid, with none of the law's
//! closed forms.
#![allow(
    missing_docs,
    clippy::indexing_slicing,
    reason = "a test, which may panic"
)]

use backcut::athlete::{Level, Limits, Pace};
use backcut::math::Point;
use backcut::motion::{Law, Leg};
use backcut::path::{Knot, Path};

/// Grid of the stepping, metres.
const STEP: f64 = 1e-4;

/// A fixed sequence of numbers in [0, 1): the multiplier of L'Ecuyer (1999), tables of linear
/// congruential generators.
struct Numbers(u64);

impl Numbers {
    fn next(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(2_862_933_555_777_941_757)
            .wrapping_add(1);
        (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }

    fn pick(&mut self, n: usize) -> usize {
        (self.next() * n as f64) as usize
    }
}

/// A run as sets have them: steps of one to six metres that turn by up to 100°, or plants.
fn run(numbers: &mut Numbers) -> (Path, Vec<Leg>, Limits) {
    let mut at = Point::new(8.0 * numbers.next() - 4.0, 8.0 * numbers.next());
    let mut way = core::f64::consts::TAU * numbers.next();
    let mut knots = vec![Knot::Smooth(at)];
    for _ in 0..=numbers.pick(4) {
        let step = 1.0 + 5.0 * numbers.next();
        at = Point::new(at.x + step * way.cos(), at.y + step * way.sin());
        let plant = numbers.next() < 0.3;
        knots.push(if plant {
            Knot::Plant(at)
        } else {
            Knot::Smooth(at)
        });
        way += (numbers.next() - 0.5) * if plant { 4.0 } else { 3.5 };
    }
    let path = Path::through(&knots);
    let limits = Level::ALL[numbers.pick(7)].limits();
    let middle = path.length() * numbers.next();
    let legs = [middle, path.length()].map(|end| Leg {
        end,
        effort: limits.effort(Pace::ALL[numbers.pick(4)], numbers.next() < 0.3),
    });
    (path, legs.to_vec(), limits)
}

/// Seconds by stepping: caps, braking backward, speeding up forward, all in v² over s.
fn stepped(path: &Path, legs: &[Leg], limits: &Limits, entry: f64, exit: f64) -> f64 {
    let n = (path.length() / STEP).ceil() as usize;
    let ds = path.length() / n as f64;
    let leg = |s: f64| {
        legs.iter()
            .find(|l| s < l.end)
            .unwrap_or(&legs[legs.len() - 1])
    };
    let mut cap: Vec<f64> = (0..=n)
        .map(|i| {
            let s = i as f64 * ds;
            let (a, b) = (leg(s - 0.5 * ds).effort.top, leg(s + 0.5 * ds).effort.top);
            let bend = limits.lateral / path.curvature(s).abs().max(1e-12);
            a.min(b).powi(2).min(bend.max(0.4 * 0.4))
        })
        .collect();
    let mut hold = 0.0;
    for plant in path.plants() {
        let v = limits.plant_dv / (2.0 * (0.5 * plant.angle).sin());
        let i = (plant.s / ds).round() as usize;
        cap[i] = cap[i].min(v * v);
        let back = (plant.angle.to_degrees() - 120.0) / 60.0;
        hold += limits.plant_time * back.clamp(0.0, 1.0);
    }
    cap[n] = cap[n].min(exit * exit);
    for i in (0..n).rev() {
        cap[i] = cap[i].min(cap[i + 1] + 2.0 * limits.brake * ds);
    }
    let mut w = cap[0].min(entry * entry);
    let mut time = hold;
    for i in 0..n {
        let gain = |w: f64| {
            let accel = leg((i as f64 + 0.5) * ds).effort.accel;
            2.0 * accel * (limits.v_max - w.sqrt()) / limits.tau * ds
        };
        let next = (w + gain(w + 0.5 * gain(w))).min(cap[i + 1]);
        time += 2.0 * ds / (w.sqrt() + next.sqrt());
        w = next;
    }
    time
}

#[test]
fn the_law_takes_as_long_as_stepping_does() {
    let mut numbers = Numbers(7);
    for case in 0..40 {
        let (path, legs, limits) = run(&mut numbers);
        let [entry, exit] = [3.0, 3.0].map(|v| {
            if numbers.next() < 0.5 {
                0.0
            } else {
                v * numbers.next()
            }
        });
        let ours = Law::build(&path, &legs, &limits, entry, exit).duration();
        let theirs = stepped(&path, &legs, &limits, entry, exit);
        // 1 ms, and what the chords of the caps in bends may cost.
        let most = 1e-3 + 5e-3 * theirs;
        assert!(
            (ours - theirs).abs() < most,
            "case {case}: {ours} for {theirs}"
        );
    }
}

#[test]
fn on_straight_ground_they_agree_to_a_tenth_of_a_millisecond() {
    for level in Level::ALL {
        let limits = level.limits();
        for (d, entry, exit) in [
            (3.0, 0.0, 0.0),
            (6.0, 0.0, 2.0),
            (8.0, 2.5, 0.0),
            (1.0, 1.0, 1.0),
        ] {
            let ends = [Point::new(0.0, 1.0), Point::new(0.0, 1.0 + d)];
            let path = Path::through(&ends.map(Knot::Smooth));
            let effort = limits.effort(Pace::Run, false);
            let legs = [Leg { end: d, effort }];
            let ours = Law::build(&path, &legs, &limits, entry, exit).duration();
            let theirs = stepped(&path, &legs, &limits, entry, exit);
            assert!(
                (ours - theirs).abs() < 1e-4,
                "{level:?} {d}: {ours} for {theirs}"
            );
        }
    }
}
