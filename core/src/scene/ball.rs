//! The ball from above.

use super::shape::{Draw, disc};
use super::view::Camera;
use super::{Item, Role};
use crate::math::{Point, Vec2};
use crate::set::PlayerId;
use crate::timeline::{BallUse, Timeline};
use alloc::vec::Vec;

/// Radius, metres.
const RADIUS: f64 = 0.12;
/// Least diameter, pixels.
const LEAST_PX: f64 = 8.4;
/// Height at which hands have it, metres: from there on it grows.
const HANDS: f64 = 1.2;
/// Where the floor shadow falls, metres a metre of height.
const SHADOW: Vec2 = Vec2::new(0.10, 0.13);

/// The ball at `t`.
pub(super) fn draw(timeline: &Timeline, t: f64, camera: &Camera, out: &mut Vec<Item>) {
    let ball = timeline.ball(t);
    let floor = Point::new(ball.x, ball.y);
    let k = enlargement(timeline, camera);
    let middle = camera.px(floor + shift(timeline, t, floor, k));
    let r =
        (RADIUS * camera.scale * k).max(0.5 * LEAST_PX) * (1.0 + 0.1 * (ball.z - HANDS).max(0.0));
    if ball.holder.is_none() && !camera.print {
        let shadow = middle + SHADOW * (ball.z.max(0.0) * camera.scale);
        out.tint(disc(shadow, 0.9 * r), Role::Ink, 0.16);
    }
    disc_at(middle, r, camera.print, out);
}

/// The disc alone: filled with an ink rim; on paper white with a dot.
pub(super) fn disc_at(middle: Point, r: f64, print: bool, out: &mut Vec<Item>) {
    let rim = (0.235 * r).clamp(1.1, 1.6);
    out.fill(
        disc(middle, r),
        if print { Role::Paper } else { Role::Ball },
    );
    out.stroke(disc(middle, r), Role::Ink, rim);
    if print {
        out.fill(disc(middle, 0.34 * r), Role::Ink);
    }
}

fn enlargement(timeline: &Timeline, camera: &Camera) -> f64 {
    PlayerId::ALL
        .first()
        .map_or(1.0, |id| camera.enlargement(timeline.limits(*id).shoulder))
}

/// Bodies are drawn enlarged about their middles, so what lies in hands moves out with them. In
/// the air that shift fades from the passer's to the catcher's, so that the ball never jumps.
fn shift(timeline: &Timeline, t: f64, floor: Point, k: f64) -> Vec2 {
    let spans = timeline.ball_spans();
    let Some(span) = spans.iter().rfind(|s| s.start <= t).or(spans.first()) else {
        return Vec2::ZERO;
    };
    let from_body = |who: PlayerId, at: Point, t: f64| {
        timeline
            .player(who, t)
            .map_or(Vec2::ZERO, |m| (at - Point::new(m.x, m.y)) * (k - 1.0))
    };
    let hands = |who: PlayerId, t: f64| {
        let ball = timeline.ball(t);
        from_body(who, Point::new(ball.x, ball.y), t)
    };
    let u = ((t - span.start) / (span.end - span.start).max(1e-6)).clamp(0.0, 1.0);
    match span.what {
        BallUse::Held(who) | BallUse::Dribbled(who) => from_body(who, floor, t),
        BallUse::Pass { from, to, .. } | BallUse::Handoff { from, to } => {
            hands(from, span.start) * (1.0 - u) + hands(to, span.end) * u
        }
        BallUse::Shot(from) => hands(from, span.start) * (1.0 - u),
        BallUse::Through => Vec2::ZERO,
    }
}
