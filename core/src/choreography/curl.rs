//! Round a screener: in along the tangent, round the body, out along the tangent.

use crate::math::{Point, Vec2, acos, atan2, direction, distance, rotated};
use crate::path::Knot;
use core::f64::consts::{FRAC_PI_2, PI, TAU};

/// A curl keeps so far from the screener's middle where it turns, metres, and where it leaves.
/// Common practice, no source: 0.6–0.9 m.
const MIDDLE: f64 = 0.68;
const OUT: f64 = 0.75;
/// A bend up to this counts as wrapped, radians; a farther way round is the wrong side.
const MOST: f64 = 1.15 * PI;

/// Where a curl to `to` brushes the screener at `s` and which way it goes there: on the tangent of
/// a circle of radius `gap`. `choose` takes the side where the author wrote one.
pub(super) fn entry(
    s: Point,
    from: Point,
    to: Point,
    gap: f64,
    choose: impl Fn(Point, Point) -> Option<bool>,
) -> Option<(Point, Vec2)> {
    let back = direction(from - s)?;
    let lean = acos((gap / distance(from, s)).min(1.0));
    let side = |sense: f64| {
        let arm = rotated(back, sense * lean);
        (s + arm * gap, rotated(arm, sense * FRAC_PI_2))
    };
    let (a, b) = (side(1.0), side(-1.0));
    let first = choose(a.0, b.0).unwrap_or_else(|| {
        // The side on which the way bends round the body.
        let bend = |(at, along): (Point, Vec2)| sweep(s, at, along, to).map_or(0.0, |x| x.0);
        let (p, q) = (bend(a), bend(b));
        // Of two equal ones the high side, which a mirrored set mirrors.
        if (p - q).abs() < 1e-6 {
            a.0.to_vec2().hypot2() >= b.0.to_vec2().hypot2()
        } else {
            p > q
        }
    });
    Some(if first { a } else { b })
}

/// The points of the bend after the brush.
pub(super) fn round(s: Point, at: Point, along: Vec2, to: Point) -> [Option<Knot>; 2] {
    let Some((turn, sense)) = sweep(s, at, along, to).filter(|x| x.0 > 0.35) else {
        return [None, None];
    };
    let Some(arm) = direction(at - s) else {
        return [None, None];
    };
    let knot = |share: f64, radius: f64| {
        let arm = rotated(arm, sense * share * turn);
        Some(Knot::Toward(
            s + arm * radius,
            rotated(arm, sense * FRAC_PI_2),
        ))
    };
    [knot(0.5, MIDDLE), knot(1.0, OUT)]
}

/// How far the way turns round `s` from the brush until it leaves on the tangent to `to`, and in
/// which sense; `None` where it leaves before it wraps.
fn sweep(s: Point, at: Point, along: Vec2, to: Point) -> Option<(f64, f64)> {
    let (arm, goal) = (direction(at - s)?, direction(to - s)?);
    let sense = if arm.cross(along) >= 0.0 { 1.0 } else { -1.0 };
    let leave = acos((OUT / distance(to, s)).min(1.0));
    let turn = sense * atan2(arm.cross(goal), arm.dot(goal)) - leave;
    let turn = if turn < -1e-9 { turn + TAU } else { turn };
    (turn <= MOST).then_some((turn, sense))
}
