//! Moves that are to take their time.

use super::law::SLOWEST;
use super::limit::{Stretch, stretches};
use super::{Law, Leg};
use crate::athlete::Limits;
use crate::math::{exp, ln};
use crate::path::Path;
use alloc::vec::Vec;

impl Law {
    /// As [`build`](Self::build), where leg `i` takes at least `takes[i]` seconds: the cap on its
    /// speed is lowered until it does, which only ever lengthens.
    #[must_use]
    pub fn build_taking(
        path: &Path,
        legs: &[Leg],
        takes: &[Option<f64>],
        limits: &Limits,
        entry: f64,
        exit: f64,
    ) -> Self {
        let mut law = Self::build(path, legs, limits, entry, exit);
        if takes.iter().all(Option::is_none) {
            return law;
        }
        let mut run = Run {
            stretches: &stretches(path, legs, limits),
            legs: legs.to_vec(),
            limits,
            ends: [entry, exit],
        };
        let mut start = 0.0;
        for (i, leg) in legs.iter().enumerate() {
            let last = i + 1 == legs.len();
            let end = path
                .length()
                .min(if last { f64::INFINITY } else { leg.end });
            let wanted = takes.get(i).copied().flatten().unwrap_or(0.0);
            let taken = |law: &Self| law.time_at(end) - law.time_at(start);
            if end > start && taken(&law) < wanted {
                law = run.slowed(i, |law| taken(law) >= wanted);
            }
            start = end.max(start);
        }
        law
    }
}

/// A run whose legs are being slowed.
struct Run<'a> {
    stretches: &'a [Stretch],
    legs: Vec<Leg>,
    limits: &'a Limits,
    ends: [f64; 2],
}

impl Run<'_> {
    /// The fastest law that is slow `enough` by the cap of leg `i` alone; the slowest if none is.
    fn slowed(&mut self, i: usize, enough: impl Fn(&Law) -> bool) -> Law {
        let effort = self.legs.get(i).map_or(SLOWEST, |l| l.effort.top);
        let top = effort.min(self.limits.v_max).max(SLOWEST);
        // By powers, down to a crawl; so many halvings meet a time to a part in a million.
        let (mut slow, mut fast) = (0.0, 1.0);
        for _ in 0..24 {
            let mid = 0.5 * (slow + fast);
            if enough(&self.capped(i, top, mid)) {
                slow = mid;
            } else {
                fast = mid;
            }
        }
        self.capped(i, top, slow)
    }

    fn capped(&mut self, i: usize, top: f64, share: f64) -> Law {
        if let Some(leg) = self.legs.get_mut(i) {
            leg.effort.top = top * exp((1.0 - share) * ln(SLOWEST / top));
        }
        let [entry, exit] = self.ends;
        Law::solve(self.stretches, &self.legs, self.limits, entry, exit)
    }
}
