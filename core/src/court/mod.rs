//! The half court of each rule set: marks, named spots, lines.
//!
//! Frame: the origin is the floor under the centre of the ring, `y` runs from the ring toward half
//! court, `x` to the offence's right as it faces the ring; metres.

mod arc;
mod area;
mod lines;
mod marks;
mod rules;
mod spots;
mod table;
#[cfg(test)]
mod tests;

pub use lines::{CourtLine, LineRole};
pub use marks::{Court, LaneMark, Marks, NoCharge};
pub use rules::RuleSet;
pub use spots::{Spot, SpotName};

use crate::math::Point;

/// A side of the court or of a body, as the offence sees it when it faces the ring.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Side {
    /// `x < 0`.
    Left,
    /// `x > 0`.
    Right,
}

impl Side {
    /// −1 on the left, +1 on the right: the sign of `x` on that side.
    #[must_use]
    pub fn sign(self) -> f64 {
        match self {
            Self::Left => -1.0,
            Self::Right => 1.0,
        }
    }

    /// The other side.
    #[must_use]
    pub fn mirrored(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }
}

/// `p` on the other side of the line from ring to half court. Exact: a sign changes, nothing else.
#[must_use]
pub fn mirrored(p: Point) -> Point {
    // 0.0 - x, not -x: a point on the axis must keep its bits (no negative zero).
    Point::new(0.0 - p.x, p.y)
}
