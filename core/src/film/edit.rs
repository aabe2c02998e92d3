//! Marks, edited: what a reader ties keeps the order that a set file asks for.

use super::APART;
use crate::math::round;
use crate::set::FilmMark;
use alloc::vec::Vec;

/// A mark so near to another, in the set, takes its place, seconds: nobody ties one instant twice.
/// Common practice, no source.
const SAME: f64 = 0.05;

/// Why an instant cannot be tied.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotTied {
    /// The film would run backwards between this mark and another.
    Backwards,
    /// One of the instants lies outside what a set file can say.
    OutOfRange,
    /// There are as many marks as a set may have.
    Full,
}

/// `marks`, in order of time, with one more; a mark of the same instant of the set gives way. Times
/// are kept to the thousandth.
///
/// # Errors
/// Why there can be no such mark.
pub fn tied(marks: &[FilmMark], t: f64, film: f64) -> Result<Vec<FilmMark>, NotTied> {
    let within = |x: f64, most: i32| (0.0..=f64::from(most)).contains(&x);
    if !within(t, FilmMark::LATEST) || !within(film, FilmMark::LATEST_OF_FILM) {
        return Err(NotTied::OutOfRange);
    }
    let new = FilmMark {
        t: round(t * 1000.0) / 1000.0,
        film: round(film * 1000.0) / 1000.0,
    };
    let mut out: Vec<FilmMark> = Vec::with_capacity(marks.len() + 1);
    out.extend(marks.iter().filter(|m| (m.t - new.t).abs() >= SAME));
    if out.len() >= FilmMark::MOST {
        return Err(NotTied::Full);
    }
    let at = out.partition_point(|m| m.t < new.t);
    let before = at.checked_sub(1).and_then(|i| out.get(i));
    let forwards = before.is_none_or(|b| new.film - b.film > APART)
        && out.get(at).is_none_or(|a| a.film - new.film > APART);
    if !forwards {
        return Err(NotTied::Backwards);
    }
    out.insert(at, new);
    Ok(out)
}
