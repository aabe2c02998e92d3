//! Where a player looks: what is wished for, at a bounded turn rate.

use crate::math::{turn_between, wrap_angle};
use alloc::vec::Vec;

/// Fastest turn of a body, radians a second: 540° a second. Common practice, no source.
pub const TURN_RATE: f64 = 3.0 * core::f64::consts::PI;

/// Samples a second.
const RATE: f64 = 30.0;
/// A turn begins up to this many samples (a sixth of a second) before it is wanted, to be done in time.
const AHEAD: usize = 5;
/// Longest track, in samples: ten minutes.
const LONGEST: f64 = 18_000.0;

/// Samples of a track of `duration` seconds.
#[must_use]
pub fn samples(duration: f64) -> usize {
    let wanted = if duration.is_finite() {
        duration * RATE
    } else {
        0.0
    };
    crate::math::ceil(wanted.clamp(0.0, LONGEST)) as usize + 1
}

/// When sample `i` is, seconds.
#[must_use]
pub fn time_of(i: usize) -> f64 {
    i as f64 / RATE
}

/// The sample nearest to `t`.
#[must_use]
pub fn sample_of(t: f64) -> usize {
    (t * RATE + 0.5).max(0.0) as usize
}

/// Facing over time.
#[derive(Clone, Debug, Default)]
pub struct Track {
    /// Not wrapped, so that neighbours can be blended.
    samples: Vec<f64>,
}

impl Track {
    /// Follows `wish(t)` from `first` on until `t_end`, the short way round, turning by no more
    /// than `max_rate` radians a second. Where there is no wish, the last one holds.
    ///
    /// A turn that takes time starts early, so that the wish is met when it is wished, as far as a
    /// sixth of a second of foresight allows.
    #[must_use]
    pub fn build(
        mut wish: impl FnMut(f64) -> Option<f64>,
        t_end: f64,
        max_rate: f64,
        first: f64,
    ) -> Self {
        let count = crate::math::ceil((t_end * RATE).clamp(0.0, LONGEST)) as usize + 1;
        let step = max_rate.abs() / RATE;
        let mut samples = Vec::with_capacity(count);
        let mut now = wrap_angle(first);
        for i in 0..count {
            let wished = wish(time_of(i)).filter(|w| w.is_finite());
            // Each the short way on from the one before: a curve without seams.
            now = wished.map_or(now, |w| now + turn_between(now, w));
            samples.push(now);
        }
        follow(&mut samples, step, wrap_angle(first));
        Self { samples }
    }

    /// This track up to sample `at`, and `rest`, which begins there, from then on.
    #[cfg(feature = "authoring")]
    #[must_use]
    pub(crate) fn then(&self, rest: &Self, at: usize) -> Self {
        let last = self.samples.last().copied().unwrap_or(0.0);
        let own = self.samples.iter().copied().chain(core::iter::repeat(last));
        let mut samples: Vec<f64> = own.take(at + 1).collect();
        // The rest is not wrapped either, from another turn perhaps.
        let seam = samples.last().copied().unwrap_or(0.0);
        let first = rest.samples.first().copied().unwrap_or(seam);
        let later = rest.samples.iter().skip(1);
        samples.extend(later.map(|a| a - first + seam));
        Self { samples }
    }

    /// Facing at `t`, radians in (−π, π].
    #[must_use]
    pub fn at(&self, t: f64) -> f64 {
        let x = (t * RATE)
            .max(0.0)
            .min(self.samples.len().saturating_sub(1) as f64);
        let i = x as usize;
        let a = self.samples.get(i).copied().unwrap_or(0.0);
        let b = self.samples.get(i + 1).copied().unwrap_or(a);
        wrap_angle(a + (b - a) * (x - i as f64))
    }
}

/// Turns wished facings into ones a body can do.
fn follow(samples: &mut [f64], step: f64, first: f64) {
    let mut now = first;
    if let Some(sample) = samples.first_mut() {
        *sample = first;
    }
    // The next sample whose wish leaps from the one before.
    let mut leap = 0;
    for i in 1..samples.len() {
        let here = samples.get(i).copied().unwrap_or(now);
        let mut turn = turn_between(now, here);
        if leap <= i {
            leap = next_leap(samples, i, step);
        }
        if leap <= i + AHEAD {
            turn = urgent(samples, i, leap, step, turn);
        }
        now += turn.clamp(-step, step);
        if let Some(sample) = samples.get_mut(i) {
            *sample = now;
        }
    }
}

/// The first sample after `i` whose wish is out of reach from the wish before.
fn next_leap(samples: &[f64], i: usize, step: f64) -> usize {
    let later = samples.iter().zip(samples.iter().skip(1)).skip(i);
    let near = later.take_while(|(a, b)| (*b - *a).abs() <= step);
    i + 1 + near.count()
}

/// The turn that must begin now to meet a wish from `leap` on, or `turn` where none is pressing.
fn urgent(samples: &[f64], i: usize, leap: usize, step: f64, turn: f64) -> f64 {
    let Some(&here) = samples.get(i) else {
        return turn;
    };
    let ahead = samples.iter().enumerate().take(i + AHEAD + 1).skip(leap);
    for (j, &wish) in ahead {
        let later = wrap_angle(turn + (wish - here));
        if later.abs() > step * (j - i) as f64 {
            return later;
        }
    }
    turn
}

#[cfg(test)]
mod tests {
    use super::*;
    use core::f64::consts::PI;
    use proptest::prelude::*;

    #[test]
    fn a_wish_that_a_body_can_follow_is_met() {
        let track = Track::build(|t| Some(2.0 * t), 3.0, TURN_RATE, 0.0);
        for i in 0..=300 {
            let t = f64::from(i) / 100.0;
            assert!(turn_between(track.at(t), 2.0 * t).abs() < 1e-9);
        }
    }

    #[test]
    fn a_small_turn_is_done_when_it_is_wished() {
        let track = Track::build(
            |t| Some(if t < 1.0 { 0.0 } else { 1.2 }),
            2.0,
            TURN_RATE,
            0.0,
        );
        assert!((track.at(1.0) - 1.2).abs() < 1e-9);
        assert_eq!(track.at(0.79), 0.0);
    }

    #[test]
    fn a_large_turn_begins_no_earlier_than_foresight_allows() {
        let track = Track::build(
            |t| Some(if t < 1.0 { 0.0 } else { 3.0 }),
            2.0,
            TURN_RATE,
            0.0,
        );
        assert_eq!(track.at(0.79), 0.0);
        assert!(track.at(0.9) > 0.1);
        assert!(track.at(1.0) < 2.0);
        assert!((track.at(1.25) - 3.0).abs() < 1e-9);
    }

    #[test]
    fn turns_go_the_short_way_round() {
        let track = Track::build(|_| Some(-0.9 * PI), 1.0, TURN_RATE, 0.9 * PI);
        for i in 0..=60 {
            assert!(track.at(f64::from(i) / 60.0).abs() >= 0.9 * PI - 1e-9);
        }
        assert!((track.at(1.0) + 0.9 * PI).abs() < 1e-9);
    }

    #[test]
    fn without_a_wish_the_last_one_holds() {
        let track = Track::build(|t| (t < 0.5).then_some(1.0), 2.0, TURN_RATE, 1.0);
        assert_eq!(track.at(1.7), 1.0);
        assert_eq!(Track::default().at(0.3), 0.0);
        assert!(
            Track::build(|_| Some(f64::NAN), f64::NAN, TURN_RATE, 0.0)
                .at(1.0)
                .is_finite()
        );
    }

    proptest! {
        #[test]
        fn prop_nobody_turns_faster_than_a_body_can(
            wishes in prop::collection::vec(prop::option::of(-4.0..4.0f64), 1..12), first in -4.0..4.0f64
        ) {
            let wish = |t: f64| wishes.get((t * 4.0) as usize).copied().flatten();
            let track = Track::build(wish, 3.0, TURN_RATE, first);
            prop_assert!(turn_between(track.at(0.0), first).abs() < 1e-9);
            for i in 0..600 {
                let [a, b] = [i, i + 1].map(|i| track.at(f64::from(i) / 200.0));
                prop_assert!(turn_between(a, b).abs() <= TURN_RATE / 200.0 + 1e-9);
            }
        }
    }
}
