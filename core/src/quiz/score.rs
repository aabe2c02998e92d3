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

#[cfg(test)]
mod tests {
    use super::super::{Ask, Choice, Hidden};
    use super::*;
    use crate::math::Point;
    use proptest::prelude::*;

    /// A question with this answer alone.
    fn about(answer: Answer) -> Question {
        Question {
            ask: Ask::Ball { row: 0 },
            t: 0.0,
            hidden: Hidden::default(),
            choices: [Choice::AsDrawn, Choice::Read(0)].into(),
            answer,
            told: 0.0,
        }
    }

    #[test]
    fn a_place_is_worth_all_within_half_a_metre_nothing_from_three_on_and_even_in_between() {
        let question = about(Answer::Place(Point::new(1.0, 2.0)));
        let points = |x: f64, y: f64| question.score(Answer::Place(Point::new(x, y))).points;
        assert_eq!(points(1.0, 2.0), 100);
        assert_eq!(points(1.0, 2.5), 100);
        assert_eq!(points(1.0, 3.75), 50);
        assert_eq!(points(4.0, 2.0), 0);
        assert_eq!(points(-40.0, 2.0), 0);
        let score = question.score(Answer::Place(Point::new(2.2, 3.6)));
        assert_eq!((score.points, score.off_s), (40, None));
        assert!((score.off_m.unwrap() - 2.0).abs() < 1e-12);
    }

    #[test]
    fn an_instant_is_worth_all_within_a_seventh_of_a_second_and_nothing_from_one_on() {
        let question = about(Answer::Instant(2.0));
        let score = |t: f64| question.score(Answer::Instant(t));
        assert_eq!(score(2.0).points, 100);
        assert_eq!(score(1.85).points, 100);
        assert_eq!(score(2.575).points, 50);
        assert_eq!(score(1.425).points, 50);
        assert_eq!(score(3.0).points, 0);
        assert!(
            (score(1.5).off_s.unwrap() + 0.5).abs() < 1e-12,
            "early is below 0"
        );
    }

    #[test]
    fn a_choice_is_right_or_wrong_and_other_sorts_of_answers_are_no_answer() {
        let question = about(Answer::Choice(1));
        assert_eq!(question.score(Answer::Choice(1)).points, 100);
        assert_eq!(question.score(Answer::Choice(0)).points, 0);
        assert_eq!(question.score(Answer::Choice(99)).points, 0);
        assert_eq!(question.score(Answer::Instant(1.0)), Score::default());
        let place = about(Answer::Place(Point::ZERO));
        assert_eq!(place.score(Answer::Choice(0)), Score::default());
    }

    #[test]
    fn what_is_no_number_is_worth_nothing() {
        for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            let place = about(Answer::Place(Point::ZERO));
            for at in [Point::new(bad, 0.0), Point::new(0.0, bad)] {
                assert_eq!(place.score(Answer::Place(at)), Score::default());
            }
            let instant = about(Answer::Instant(1.0));
            assert_eq!(instant.score(Answer::Instant(bad)), Score::default());
        }
    }

    proptest! {
        #[test]
        fn prop_farther_off_is_never_worth_more(
            right in (-8.0..8.0_f64, -2.0..12.0_f64), way in 0.0..6.3_f64,
            a in 0.0..20.0_f64, b in 0.0..20.0_f64,
        ) {
            let right = Point::new(right.0, right.1);
            let at = |off: f64| right + crate::math::unit(way) * off;
            let (near, far) = (a.min(b), a.max(b));
            let place = about(Answer::Place(right));
            let points = |off: f64| place.score(Answer::Place(at(off))).points;
            prop_assert!(points(near) >= points(far) && points(near) <= 100);
            let instant = about(Answer::Instant(5.0));
            for sign in [1.0, -1.0] {
                let points = |off: f64| instant.score(Answer::Instant(5.0 + sign * off)).points;
                prop_assert!(points(near) >= points(far) && points(near) <= 100);
            }
        }
    }
}
