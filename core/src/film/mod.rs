//! The user's own film beside the set: which instant of the one is which of the other, and where
//! what was filmed differs from what was drawn.
//!
//! Marks tie instants of both. Between two marks time runs evenly; before the first and after the
//! last it runs on as between the two nearest. A single mark, or none, leaves it at the film's own
//! speed, so a film without marks starts with the set.

mod differ;
mod edit;
#[cfg(test)]
mod tests;

pub use differ::{Difference, Happening, differences};
pub use edit::{NotTied, tied};

use crate::math::Listed;
use crate::set::FilmMark;
use alloc::vec::Vec;

/// Two marks are further apart than this in both times, seconds: a thousandth, to which marks are
/// written, or a rate between them would mean nothing.
const APART: f64 = 0.0005;
/// No instant that is asked for is further from 0, seconds: eleven days.
const FURTHEST: f64 = 1e6;

/// Instants of the set to instants of the film, and back.
///
/// ```
/// use backcut::film::FilmMap;
/// use backcut::set::FilmMark;
/// let map = FilmMap::of(&[FilmMark { t: 0.0, film: 3.0 }, FilmMark { t: 1.0, film: 4.5 }]);
/// assert_eq!(map.film_at(0.5), 3.75);
/// assert_eq!(map.set_at(3.75), 0.5);
/// assert_eq!(map.rate_at(0.5), 1.5, "it was run slower than drawn: more film goes by");
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FilmMap {
    marks: Vec<FilmMark>,
}

impl FilmMap {
    /// By these marks, in order of time; one that is not later than the one before, in both times,
    /// does not count.
    #[must_use]
    pub fn of(marks: &[FilmMark]) -> Self {
        let mut kept: Vec<FilmMark> = Vec::with_capacity(marks.len());
        for mark in marks {
            let far = |x: f64| x.abs() <= FURTHEST;
            let later =
                |before: &FilmMark| mark.t - before.t > APART && mark.film - before.film > APART;
            if far(mark.t) && far(mark.film) && kept.last().is_none_or(later) {
                kept.push(*mark);
            }
        }
        Self { marks: kept }
    }

    /// What it goes by.
    #[must_use]
    pub fn marks(&self) -> &[FilmMark] {
        &self.marks
    }

    /// The film's instant at an instant of the set, seconds; before the film begins it is below 0.
    #[must_use]
    pub fn film_at(&self, t: f64) -> f64 {
        along(&self.marks, t)
    }

    /// The set's instant at an instant of the film, seconds; before the set begins it is below 0.
    #[must_use]
    pub fn set_at(&self, film: f64) -> f64 {
        let turned = self.marks.iter().map(|m| turned(*m)).listed();
        along(&turned, film)
    }

    /// Seconds of film that go by in a second of the set, at `t`; at a mark, of what comes after.
    #[must_use]
    pub fn rate_at(&self, t: f64) -> f64 {
        around(&self.marks, bounded(t)).map_or(1.0, |(before, after)| slope(before, after))
    }
}

fn turned(mark: FilmMark) -> FilmMark {
    FilmMark {
        t: mark.film,
        film: mark.t,
    }
}

/// `film` at `t`, on the broken line through the marks.
fn along(marks: &[FilmMark], t: f64) -> f64 {
    let t = bounded(t);
    let Some((before, after)) = around(marks, t) else {
        let Some(only) = marks.first() else { return t };
        return only.film + (t - only.t);
    };
    let rate = slope(before, after);
    // From the nearer end: exact at both, and none of the rounding takes it past the other.
    if t < after.t {
        (before.film + (t - before.t) * rate).min(after.film)
    } else {
        after.film + (t - after.t) * rate
    }
}

/// The two marks that `t` lies between, or the two at that end; `None` of fewer than two.
fn around(marks: &[FilmMark], t: f64) -> Option<(&FilmMark, &FilmMark)> {
    let last = marks.len().checked_sub(2)?;
    let passed = marks.partition_point(|m| m.t <= t);
    let from = passed.saturating_sub(1).min(last);
    marks.get(from).zip(marks.get(from + 1))
}

fn slope(before: &FilmMark, after: &FilmMark) -> f64 {
    (after.film - before.film) / (after.t - before.t)
}

/// What is no number counts as the start.
fn bounded(t: f64) -> f64 {
    if t.is_nan() {
        0.0
    } else {
        t.clamp(-FURTHEST, FURTHEST)
    }
}
