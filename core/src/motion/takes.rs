//! Moves that are to take their time.

use super::law::SLOWEST;
use super::limit::stretches;
use super::{Law, Leg};
use crate::athlete::Limits;
use crate::math::pow;
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
        let stretches = stretches(path, legs, limits);
        let mut legs: Vec<Leg> = legs.to_vec();
        let mut start = 0.0;
        for i in 0..legs.len() {
            let Some(leg) = legs.get(i).copied() else {
                break;
            };
            let last = i + 1 == legs.len();
            let end = if last {
                path.length()
            } else {
                leg.end.min(path.length())
            };
            let wanted = takes.get(i).copied().flatten().unwrap_or(0.0);
            let taken = |law: &Self| law.time_at(end) - law.time_at(start);
            if end > start && taken(&law) < wanted {
                // By share of the cap, from as fast as the law ever is down to a crawl.
                let (mut slow, mut fast) = (0.0, 1.0);
                let top = leg.effort.top.min(limits.v_max).max(SLOWEST);
                for _ in 0..40 {
                    let mid = 0.5 * (slow + fast);
                    if let Some(leg) = legs.get_mut(i) {
                        leg.effort.top = top * pow(SLOWEST / top, 1.0 - mid);
                    }
                    let tried = Self::solve(&stretches, &legs, limits, entry, exit);
                    if taken(&tried) >= wanted {
                        (slow, law) = (mid, tried);
                    } else {
                        fast = mid;
                    }
                }
                if let Some(leg) = legs.get_mut(i) {
                    leg.effort.top = top * pow(SLOWEST / top, 1.0 - slow);
                }
            }
            start = end.max(start);
        }
        law
    }
}
