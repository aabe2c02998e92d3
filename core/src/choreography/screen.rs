//! Where a screener stands, which way the body looks, on which side a cutter goes by.

use super::bind::Binding;
use crate::athlete::Limits;
use crate::guard::{Guarded, drawn, nominal};
use crate::math::{Point, Vec2, angle_of, direction, distance, length, unit};
use crate::set::{Action, Family, OffSide, PlayerId};

/// Clearance between hips at a brush, metres: shoulder to hip, a hand's breadth.
const BRUSH: f64 = 0.04;
/// Gap between the inner shoulders of an open gate. Common practice, no source.
const OPEN_GAP: f64 = 0.80;
/// The same when it is shut.
pub const SHUT_GAP: f64 = 0.08;
/// The same when it cannot be still in time and only stands.
const STAND_GAP: f64 = 0.60;

/// A body that others use as a screen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Screen {
    /// The screen action's row; `None` where somebody is used where they stand.
    pub row: Option<usize>,
    /// Who.
    pub who: PlayerId,
    /// Where.
    pub at: Point,
    /// Which way the chest looks, radians.
    pub facing: f64,
    /// Of a gate's post: where it slides to when it shuts.
    pub shut_at: Option<Point>,
    /// Of a gate: the screen index of the other post.
    pub twin: Option<usize>,
}

/// What the geometry of a screen depends on.
#[derive(Clone, Copy, Debug)]
pub(super) struct Scene {
    /// Where the cutter starts.
    pub from: Point,
    /// Where the cutter goes.
    pub to: Point,
    /// Whether the cutter has the ball.
    pub ball_screen: bool,
    /// Where the ball is.
    pub ball: Point,
}

impl Scene {
    fn defender(&self) -> Point {
        if self.ball_screen {
            let player = Guarded {
                at: self.from,
                ball: true,
            };
            return nominal(player, self.ball);
        }
        drawn(self.from, self.ball)
    }
}

/// Which way the screener's chest looks: square to the way of the screened defender.
///
/// Off the ball the chest looks at the defender and the back at the catch: the bisector of the two
/// directions. On the ball the chest looks at the defender's hip.
/// Common practice, no source.
pub(super) fn facing(at: Point, scene: &Scene) -> f64 {
    let x = direction(scene.defender() - at);
    let n = if scene.ball_screen {
        x
    } else {
        let c = direction(scene.to - at);
        match (x, c) {
            (Some(x), Some(c)) => direction(x - c).or(Some(x)),
            (x, c) => x.or(c.map(|c| -c)),
        }
    };
    angle_of(n.unwrap_or(Vec2::new(0.0, -1.0)))
}

/// Where a screen goes that was written without a place: on the defender's way, a step off.
pub(super) fn default_place(scene: &Scene, binding: &Binding) -> Point {
    let x = scene.defender();
    let way = direction(scene.to - scene.from).unwrap_or(Vec2::new(0.0, 1.0));
    match binding.family {
        // Beside the on-ball defender, on the side to which the dribbler goes.
        Some(Family::Ball) => x + side_of(way, scene.to - x) * 0.75,
        _ => x + direction(scene.to - x).unwrap_or(way) * 0.9,
    }
}

fn side_of(way: Vec2, toward: Vec2) -> Vec2 {
    let left = Vec2::new(way.y, -way.x);
    if left.dot(toward) >= 0.0 { left } else { -left }
}

/// The two posts of a gate with its middle at `middle`, across the way on which the cutter leaves it;
/// the nearer man takes the nearer side. Returns (place, place when shut) for both.
pub(super) fn gate_posts(
    middle: Point,
    scene: &Scene,
    first_from: Point,
    second_from: Point,
    limits: &Limits,
    in_time: bool,
) -> [(Point, Point); 2] {
    let way = direction(scene.to - middle).unwrap_or(Vec2::new(0.0, 1.0));
    let across = Vec2::new(way.y, -way.x);
    let open = 0.5 * (OPEN_GAP + limits.shoulder);
    let shut = 0.5 * (if in_time { SHUT_GAP } else { STAND_GAP } + limits.shoulder);
    let post = |sign: f64| {
        (
            middle + across * (sign * open),
            middle + across * (sign * shut),
        )
    };
    let (a, b) = (post(1.0), post(-1.0));
    let straight = distance(first_from, a.0) + distance(second_from, b.0);
    let crossed = distance(first_from, b.0) + distance(second_from, a.0);
    if straight <= crossed { [a, b] } else { [b, a] }
}

/// Which way a gate's posts look: against the way on which the cutter leaves it.
pub(super) fn gate_facing(middle: Point, scene: &Scene) -> f64 {
    angle_of(direction(middle - scene.to).unwrap_or(Vec2::new(0.0, -1.0)))
}

/// Where a cutter's middle is when level with the screener's hips, and which way the cutter goes
/// there: along the way past the body, so that nothing of it comes nearer than the brush.
pub(super) fn brush(
    screen: &Screen,
    from: Point,
    to: Point,
    side: Option<OffSide>,
    cutter: &Limits,
    screener: &Limits,
) -> (Point, Vec2) {
    let gap = 0.5 * (cutter.shoulder + screener.shoulder) + BRUSH;
    let ahead = direction(screen.at - from).zip(direction(to - screen.at));
    let along = ahead
        .and_then(|(a, b)| direction(a + b))
        .or_else(|| direction(to - from))
        .unwrap_or_else(|| -unit(screen.facing));
    let across = Vec2::new(along.y, -along.x);
    let (a, b) = (screen.at + across * gap, screen.at - across * gap);
    let (near, far) = if length(a.to_vec2()) <= length(b.to_vec2()) {
        (a, b)
    } else {
        (b, a)
    };
    let left_first = if a.x <= b.x { (a, b) } else { (b, a) };
    let at = match side {
        Some(OffSide::Over) => far,
        Some(OffSide::Under) => near,
        Some(OffSide::Left) => left_first.0,
        Some(OffSide::Right) => left_first.1,
        Some(OffSide::Between) | None => {
            let way = |p: Point| distance(from, p) + distance(p, to);
            let (wa, wb) = (way(a), way(b));
            // A tie within a centimetre goes to the high side: the same on both sides of the court.
            if (wa - wb).abs() < 0.01 {
                far
            } else if wa < wb {
                a
            } else {
                b
            }
        }
    };
    (at, along)
}

/// Which screen family an action belongs to, where it has a kind.
pub(super) fn family(action: &Action) -> Option<Family> {
    action.kind.map(|k| k.row().family)
}
