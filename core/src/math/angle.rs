//! Angles in the court's convention: 0 points to −y (at the ring), growing clockwise as seen with
//! the ring at the top.

use super::{Vec2, atan2, sin_cos};
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
    let (s, c) = sin_cos(angle);
    Vec2::new(s, -c)
}

/// `angle` brought into (−π, π].
#[must_use]
pub fn wrap_angle(angle: f64) -> f64 {
    // Nearly always, and a tenth of the work.
    if angle > -PI && angle <= PI {
        return angle;
    }
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
    let (s, c) = sin_cos(angle);
    Vec2::new(c * v.x - s * v.y, s * v.x + c * v.y)
}

#[cfg(test)]
mod tests {
    use super::super::length;
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn facing_grows_clockwise_from_the_ring() {
        for (x, y, quarters) in [(0.0, -1.0, 0.0), (1.0, 0.0, 1.0), (0.0, 1.0, 2.0)] {
            let expected = quarters * 0.5 * PI;
            assert!((angle_of(Vec2::new(x, y)) - expected).abs() < 1e-15);
        }
        assert!((angle_of(Vec2::new(-1.0, 0.0)) + 0.5 * PI).abs() < 1e-15);
    }

    #[test]
    fn half_a_turn_stays_in_range_and_is_plus_pi() {
        for turns in -1000..1000 {
            let angle = wrap_angle(PI + TAU * f64::from(turns));
            assert!(
                (-PI..=PI).contains(&angle) && angle != -PI,
                "{turns}: {angle}"
            );
        }
        assert_eq!(wrap_angle(-PI), PI);
        assert_eq!(wrap_angle(PI), PI);
    }

    #[test]
    fn turns_go_the_short_way_round() {
        assert!((turn_between(3.0, -3.0) - (TAU - 6.0)).abs() < 1e-12);
        assert!((turn_between(-3.0, 3.0) + (TAU - 6.0)).abs() < 1e-12);
    }

    proptest! {
        #[test]
        fn prop_angle_of_undoes_unit(angle in -PI..PI, scale in 0.01..100.0_f64) {
            let v = unit(angle);
            prop_assert!((length(v) - 1.0).abs() < 4e-15);
            prop_assert!(turn_between(angle_of(v * scale), angle).abs() < 1e-14);
        }

        #[test]
        fn prop_rotating_adds_to_the_facing(a in -PI..PI, by in -9.0..9.0_f64) {
            let turned = rotated(unit(a), by);
            prop_assert!(length(turned - unit(a + by)) < 1e-14);
        }

        #[test]
        fn prop_wrapped_angles_lie_in_range_and_face_the_same_way(angle in -1e4..1e4_f64) {
            let wrapped = wrap_angle(angle);
            prop_assert!(wrapped > -PI && wrapped <= PI);
            prop_assert!(length(unit(wrapped) - unit(angle)) < 1e-11);
        }

        #[test]
        fn prop_a_turn_leads_from_one_facing_to_the_other(a in -9.0..9.0_f64, b in -9.0..9.0_f64) {
            prop_assert!(turn_between(a, b).abs() <= PI);
            prop_assert!(length(unit(a + turn_between(a, b)) - unit(b)) < 1e-13);
        }
    }
}
