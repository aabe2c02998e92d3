//! The steps that sell a cut before it goes where it goes.

use crate::math::{Point, Vec2, atan2, direction, distance, rotated};
use crate::set::Kind;

/// Length of the step that sells a cut the other way. Common practice, no source: 0.5–1 m.
const SELL: f64 = 0.7;
/// Length of the first leg of a V-cut. Common practice, no source: 1–2 m.
const V_LEG: f64 = 1.3;
/// Turn at the plant of a backdoor cut, degrees. Common practice, no source: 100–150.
const BACKDOOR_TURN: [f64; 2] = [105.0, 145.0];
/// Turn at the plant of a V-cut, degrees. Common practice, no source: 60–120.
const V_TURN: [f64; 2] = [65.0, 115.0];
/// Step of the search for the first leg, degrees.
const STEP: f64 = 5.0;

/// The plant with which a cut of this kind from `from` to `to` begins, if it begins with one.
pub(super) fn plant(
    kind: Option<Kind>,
    from: Point,
    to: Point,
    ball: Point,
    screened: bool,
) -> Option<Point> {
    let toward = |p: Point| direction(p - from);
    match kind? {
        Kind::Backdoor => Some(first_leg(from, toward(ball)?, SELL, to, BACKDOOR_TURN)),
        Kind::Basket | Kind::FortyFive if !screened => {
            let (d, goal) = (toward(ball)?, toward(to)?);
            // Away from the ball, but not away from the ring: the cut then crosses the
            // defender's face.
            Some(from + direction(goal * 0.4 - d).unwrap_or(-d) * SELL)
        }
        Kind::VCut => Some(first_leg(from, toward(Point::ZERO)?, V_LEG, to, V_TURN)),
        Kind::LCut => {
            let corner = Point::new(from.x, to.y);
            let bends = distance(from, corner) > 0.3 && distance(corner, to) > 0.3;
            bends.then_some(corner)
        }
        _ => None,
    }
}

/// The end of a first leg that runs as nearly along `d` as a turn onto `to` within `turn`
/// degrees allows.
fn first_leg(from: Point, d: Vec2, long: f64, to: Point, turn: [f64; 2]) -> Point {
    let [least, most] = turn.map(f64::to_radians);
    let fits = |p: &Point| {
        let (into, out) = (*p - from, to - *p);
        let turn = atan2(into.cross(out).abs(), into.dot(out));
        (least..=most).contains(&turn)
    };
    // A mirrored cut tries the mirrored legs in the same order; one that is its own mirror image
    // has no side to turn to.
    let sides = [d.cross(to - from), d.cross(Point::ZERO - from), from.x];
    let Some(side) = sides.into_iter().find(|c| c.abs() > 1e-9) else {
        return from + d * long;
    };
    let side = side.signum();
    let leg = |deg: f64| from + rotated(d, -side * deg.to_radians()) * long;
    (0..=24_i32)
        .map(|i| STEP * f64::from(i))
        .flat_map(|deg| [leg(deg), leg(-deg)])
        .find(fits)
        .unwrap_or(from + d * long)
}
