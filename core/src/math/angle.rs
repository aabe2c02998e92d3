//! Angles in the court's convention: 0 points to −y (at the ring), growing clockwise as seen with
//! the ring at the top.

use super::{Vec2, atan2, cos, sin};
use core::f64::consts::{PI, TAU};

/// Facing of direction `v`, radians in (−π, π]: 0 points at the ring (−y), clockwise on screen.
///
/// ```
/// use backcut::math::{angle_of, Vec2};
/// assert_eq!(angle_of(Vec2::new(0.0, -1.0)), 0.0);
/// assert!((angle_of(Vec2::new(1.0, 0.0)) - core::f64::consts::FRAC_PI_2).abs() < 1e-15);
/// ```
#[must_use]
pub fn angle_of(v: Vec2) -> f64 {
    atan2(v.x, -v.y)
}

/// The unit vector that faces `angle`; the inverse of [`angle_of`].
#[must_use]
pub fn unit(angle: f64) -> Vec2 {
    Vec2::new(sin(angle), -cos(angle))
}

/// `angle` brought into (−π, π].
#[must_use]
pub fn wrap_angle(angle: f64) -> f64 {
    let a = angle - TAU * super::floor((angle + PI) / TAU);
    if a <= -PI { a + TAU } else { a }
}

/// The turn from `from` to `to` the short way round, in (−π, π].
#[must_use]
pub fn turn_between(from: f64, to: f64) -> f64 {
    wrap_angle(to - from)
}

/// `v` turned by `angle` (clockwise on screen, as facings grow).
#[must_use]
pub fn rotated(v: Vec2, angle: f64) -> Vec2 {
    let (s, c) = (sin(angle), cos(angle));
    Vec2::new(c * v.x - s * v.y, s * v.x + c * v.y)
}
