//! Where a defender stands before anything happens: the static rule that screens are set against.
//!
//! Common practice, no source. The simulated defence starts from the same places.

use crate::math::{Point, Vec2, direction, distance};

/// Farthest a team mate is "one pass away", metres.
const ONE_PASS: f64 = 6.0;

/// What the rule needs to know of the player who is guarded.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Guarded {
    /// Where they stand.
    pub at: Point,
    /// Whether they have the ball.
    pub ball: bool,
}

/// Where the own defender of `player` stands while the ball is at `ball`, ring at the origin.
///
/// On the ball one metre toward the ring; one pass away denying, an arm in the lane; two passes
/// away nearly half way to the ball and sagging to the ring.
///
/// ```
/// use backcut::{guard::{nominal, Guarded}, math::Point};
/// let x = nominal(Guarded { at: Point::new(0.0, 7.0), ball: true }, Point::new(0.0, 7.0));
/// assert_eq!(x, Point::new(0.0, 6.0));
/// ```
#[must_use]
pub fn nominal(player: Guarded, ball: Point) -> Point {
    let m = player.at;
    if player.ball {
        return m + direction(Point::ZERO - m).unwrap_or(Vec2::ZERO);
    }
    let (along, sag) = if distance(m, ball) <= ONE_PASS {
        (0.15, 0.04)
    } else {
        (0.47, 0.30)
    };
    let q = m.lerp(ball, along);
    q.lerp(Point::ZERO, sag)
}

/// Added to the reaction of a defender who does not see the own man, seconds: the nominal chaser
/// through a screen is so much behind. Common practice, no source.
pub const UNSEEN: f64 = 0.15;

/// A man about to use a screen draws the own defender as near as this, metres.
const DRAWN: f64 = 0.9;

/// Where the own defender of a player stands who walks them into a screen: close, in the way to the
/// ball.
#[must_use]
pub fn drawn(own: Point, ball: Point) -> Point {
    own + direction(ball - own).unwrap_or(Vec2::ZERO) * DRAWN
}
