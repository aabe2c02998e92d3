//! One instant.

use super::hands;
use crate::math::Point;
use crate::set::PlayerId;

/// One player at one instant; metres and radians in the court's convention, m/s.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct MoverState {
    /// Metres to the offence's right of the ring.
    pub x: f64,
    /// Metres from the ring toward half court.
    pub y: f64,
    /// 0 looks at −y (the ring), growing clockwise on screen.
    pub facing: f64,
    /// Speed over the floor, m/s.
    pub speed: f64,
}

impl MoverState {
    /// Where the player stands.
    #[must_use]
    pub fn at(&self) -> Point {
        Point::new(self.x, self.y)
    }

    /// Where the hands hold a ball, over the floor.
    #[must_use]
    pub fn hands(&self) -> Point {
        hands::hands(self)
    }
}

/// The ball at one instant.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct BallState {
    /// Metres.
    pub x: f64,
    /// Metres.
    pub y: f64,
    /// Height of its middle above the floor, metres.
    pub z: f64,
    /// Who has it, held or dribbled; `None` in the air or after the shot.
    pub holder: Option<PlayerId>,
}

/// All movers at one instant. The caller owns it; filling it allocates nothing.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Frame {
    /// Seconds since the set began.
    pub t: f64,
    /// By [`PlayerId::index`]; `None` where the set has no such player.
    pub players: [Option<MoverState>; 5],
    /// The ball.
    pub ball: BallState,
}
