//! What an answer is worth.

use super::{Answer, Question};
use crate::math::{distance, round};

/// Within this of the right place an answer is worth all, metres. Common practice, no source: an
/// arm's reach.
pub const FULL_M: f64 = 0.5;
/// From here on it is worth nothing, metres. Common practice, no source: the next spot.
pub const NONE_M: f64 = 3.0;
/// Within this of the right instant an answer is worth all, seconds. Common practice, no source.
pub const FULL_S: f64 = 0.15;
/// From here on it is worth nothing, seconds. Common practice, no source: a screen is used up.
pub const NONE_S: f64 = 1.0;

/// How good an answer is.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Score {
    /// 0 to 100.
    pub points: u8,
    /// How far from the right place, metres, where one was asked for and given.
    pub off_m: Option<f64>,
    /// How long after the right instant, seconds; below 0 before it.
    pub off_s: Option<f64>,
}

impl Question {
    /// What `reply` is worth; nothing where it is no answer to this question, or no number.
    #[must_use]
    pub fn score(&self, reply: Answer) -> Score {
        match (self.answer, reply) {
            (Answer::Place(right), Answer::Place(given)) => {
                let off = distance(right, given);
                Score {
                    points: fading(off, FULL_M, NONE_M),
                    off_m: Some(off).filter(|off| off.is_finite()),
                    off_s: None,
                }
            }
            (Answer::Instant(right), Answer::Instant(given)) => {
                let off = given - right;
                Score {
                    points: fading(off.abs(), FULL_S, NONE_S),
                    off_m: None,
                    off_s: Some(off).filter(|off| off.is_finite()),
                }
            }
            (Answer::Choice(right), Answer::Choice(given)) => Score {
                points: if right == given { 100 } else { 0 },
                ..Score::default()
            },
            _ => Score::default(),
        }
    }
}

/// All up to `full`, nothing from `none` on, even in between.
fn fading(off: f64, full: f64, none: f64) -> u8 {
    let share = (none - off) / (none - full);
    // What is no number is no share either, and casts to 0.
    round(100.0 * share.clamp(0.0, 1.0)) as u8
}
