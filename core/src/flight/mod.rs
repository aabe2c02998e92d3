//! The ball in the air: passes and shots under gravity.
//!
//! No drag and no spin. Drag (a coefficient of about 0.5, from memory) would ask 7 % more speed and 3 % more
//! time of a long shot and 6 % more time of a 5 m pass; the closed forms leave it out.

mod pass;
mod shot;

pub use pass::{catch_height, pass, pass_speed, pass_time, release_height};
pub use shot::shot;

use crate::athlete::Level;
use crate::math::Point;

/// Standard gravity, m/s². Source: third General Conference on Weights and Measures (1901).
pub const GRAVITY: f64 = 9.80665;

/// Radius of a size 7 ball, from a circumference of 0.75 to 0.77 m. From memory.
pub const BALL_RADIUS: f64 = 0.1205;
/// Radius of a size 6 ball, from a circumference of 0.715 to 0.73 m. From memory.
pub const BALL_RADIUS_6: f64 = 0.115;
/// Radius of a size 5 ball, from a circumference of 0.69 to 0.71 m. From memory.
pub const BALL_RADIUS_5: f64 = 0.111;

/// Radius of the ball that a level plays with, metres. Common practice, no source.
#[must_use]
pub fn ball_radius(level: Level) -> f64 {
    match level {
        Level::EliteWomen | Level::U14 => BALL_RADIUS_6,
        Level::U12 => BALL_RADIUS_5,
        Level::Elite | Level::Adult | Level::HighSchool | Level::Recreational => BALL_RADIUS,
    }
}

/// A place in the air, metres in the court's frame.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Spot3 {
    /// To the offence's right of the ring.
    pub x: f64,
    /// From the ring toward half court.
    pub y: f64,
    /// Above the floor.
    pub z: f64,
}

impl Spot3 {
    /// `z` above `floor`.
    #[must_use]
    pub fn above(floor: Point, z: f64) -> Self {
        Self {
            x: floor.x,
            y: floor.y,
            z,
        }
    }

    /// The place on the floor below.
    #[must_use]
    pub fn floor(self) -> Point {
        Point::new(self.x, self.y)
    }
}

/// A ball on its way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flight {
    first: Arc,
    /// After a bounce.
    second: Option<Arc>,
}

impl Flight {
    /// Seconds from release to the end.
    #[must_use]
    pub fn duration(&self) -> f64 {
        self.first.time + self.second.map_or(0.0, |a| a.time)
    }

    /// Where the ball's middle is `tau` seconds after release; the ends hold beyond the ends.
    #[must_use]
    pub fn at(&self, tau: f64) -> Spot3 {
        match self.second {
            Some(second) if tau > self.first.time => second.at(tau - self.first.time),
            _ => self.first.at(tau),
        }
    }

    /// The same way in `seconds`: what a schedule has settled before the hands were known.
    #[must_use]
    pub fn lasting(mut self, seconds: f64) -> Self {
        let share = seconds.max(1e-3) / self.duration().max(1e-3);
        self.first.time *= share;
        if let Some(second) = &mut self.second {
            second.time *= share;
        }
        self
    }

    /// Greatest height of the ball's middle, metres.
    #[must_use]
    pub fn apex(&self) -> f64 {
        let second = self.second.map_or(0.0, |a| a.apex());
        self.first.apex().max(second)
    }

    /// When (seconds after release) and where it meets the floor.
    #[must_use]
    pub fn bounce(&self) -> Option<(f64, Point)> {
        self.second.map(|a| (self.first.time, a.from.floor()))
    }
}

/// One parabola, by its ends and its time.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Arc {
    from: Spot3,
    to: Spot3,
    time: f64,
}

impl Arc {
    /// Upward speed at the start, (z₁ − z₀)/T + gT/2.
    fn rise(&self) -> f64 {
        (self.to.z - self.from.z) / self.time + 0.5 * GRAVITY * self.time
    }

    fn at(&self, t: f64) -> Spot3 {
        let share = (t / self.time).clamp(0.0, 1.0);
        let t = share * self.time;
        let blend = |a: f64, b: f64| a * (1.0 - share) + b * share;
        // Above the straight line between the ends by g t (T − t)/2: exact at both.
        Spot3 {
            x: blend(self.from.x, self.to.x),
            y: blend(self.from.y, self.to.y),
            z: blend(self.from.z, self.to.z) + 0.5 * GRAVITY * t * (self.time - t),
        }
    }

    fn apex(&self) -> f64 {
        let t = self.rise() / GRAVITY;
        self.at(t).z
    }
}

#[cfg(test)]
mod tests;
