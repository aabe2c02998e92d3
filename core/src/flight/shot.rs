//! Shots: from the hands through the middle of the ring.

use super::pass::over;
use super::{Arc, Flight, GRAVITY, Spot3};
use crate::math::{Point, atan, distance, sqrt, tan};
use crate::set::Kind;
use core::f64::consts::FRAC_PI_4;

/// Above the angle that needs the slowest ball, radians. Players shoot about there: the best free
/// throw leaves at 52° (Tran C, Silverberg L (2008), J Sports Sci), 0.84° above the slowest one.
const ABOVE_SLOWEST: f64 = 1.0 * DEG;
/// The same for a floater, which is to clear a hand. Common practice, no source.
const FLOATER_ABOVE: f64 = 6.0 * DEG;
/// Flattest entry at which the ball fits the ring: 32.7° (J Hum Kinet, on common movement patterns
/// of the jump shot; the sine is ball over ring).
const FLATTEST_ENTRY: f64 = 32.7 * DEG;
/// Top of a layup above ring and hands, metres. Common practice, no source.
const LAYUP_RISE: f64 = 0.35;
/// Nearer to the ring's middle than this, metres, a shot is laid in, whatever it is called.
const AT_THE_RING: f64 = 1.2;

const DEG: f64 = core::f64::consts::PI / 180.0;

/// The flight of a shot from the hands to the middle of the ring, `ring_height` above the floor,
/// falling.
///
/// The angle is the one that needs the slowest ball, 45° + ½ atan(h/L), plus a margin, and never so
/// flat that the ball could not fall in. A layup goes by its height instead.
///
/// ```
/// use backcut::flight::{shot, Spot3};
/// let free_throw = shot(Spot3 { x: 0.0, y: 4.191, z: 2.134 }, None, 3.05);
/// assert!((free_throw.duration() - 0.95).abs() < 0.02);
/// ```
#[must_use]
pub fn shot(from: Spot3, kind: Option<Kind>, ring_height: f64) -> Flight {
    let to = Spot3 {
        x: 0.0,
        y: 0.0,
        z: ring_height,
    };
    let l = distance(from.floor(), Point::ZERO);
    let h = ring_height - from.z;
    if kind == Some(Kind::Layup) || l < AT_THE_RING {
        return over(from, to, from.z.max(ring_height) + LAYUP_RISE);
    }
    let margin = if kind == Some(Kind::Floater) {
        FLOATER_ABOVE
    } else {
        ABOVE_SLOWEST
    };
    let slowest = FRAC_PI_4 + 0.5 * atan(h / l);
    let clean = atan(tan(FLATTEST_ENTRY) + 2.0 * h / l);
    let angle = (slowest + margin).max(clean);
    Flight {
        first: Arc {
            from,
            to,
            time: shot_time(l, h, angle),
        },
        second: None,
    }
}

/// T = L/(v cos θ) with v = √(g L² / (2 cos²θ (L tan θ − h))), which is √(2(L tan θ − h)/g).
fn shot_time(l: f64, h: f64, angle: f64) -> f64 {
    sqrt(2.0 * (l * tan(angle) - h).max(1e-3) / GRAVITY)
}
