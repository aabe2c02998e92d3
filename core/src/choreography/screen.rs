//! Where a screener stands, which way the body looks, on which side a cutter goes by.

use super::bind::Binding;
use crate::athlete::Limits;
use crate::guard::{Guarded, drawn, nominal};
use crate::math::{Point, Vec2, angle_of, direction, distance, length, unit};
use crate::set::{Action, Family, Kind, OffSide, PlayerId};

/// Clearance between hips at a brush, metres: shoulder to hip, a hand's breadth.
const BRUSH: f64 = 0.04;
/// A ball screen stands so far from the defender's middle. Common practice, no source.
const BESIDE: f64 = 0.75;
/// How far a ball screen looks past the defender's middle, away from the ring: about 20°.
/// Common practice, no source.
const HIP: f64 = 0.36;
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
    /// Of two who stand as one, a gate or a double screen: the screen index of the other.
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
    /// The trade's name of the screen.
    pub kind: Option<Kind>,
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
/// Common practice, no source.
pub(super) fn facing(at: Point, scene: &Scene) -> f64 {
    let ring = direction(at - Point::ZERO).unwrap_or(Vec2::new(0.0, 1.0));
    match scene.kind {
        // The back to the basket; the back to the baseline.
        Some(Kind::Flat) => angle_of(ring),
        Some(Kind::StepUp) => angle_of(Vec2::new(0.0, 1.0)),
        _ => toward(at, scene.defender(), scene.to, scene.ball_screen),
    }
}

/// Off the ball the chest looks at the defender `x` and the back at the catch `c`: the bisector of
/// the two directions. On the ball it looks at the hip of the defender that is farther from the
/// ring, so that the shoulders point the dribbler downhill.
pub(super) fn toward(at: Point, x: Point, c: Point, ball_screen: bool) -> f64 {
    let (x, c) = (direction(x - at), direction(c - at));
    let n = if ball_screen {
        let out = direction(at - Point::ZERO).unwrap_or(Vec2::ZERO);
        x.and_then(|x| direction(x + HIP * out))
    } else {
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
        // Behind the on-ball defender.
        Some(Family::Ball) if scene.kind == Some(Kind::Flat) => {
            x + direction(Point::ZERO - x).unwrap_or(-way) * BESIDE
        }
        Some(Family::Ball) if scene.kind == Some(Kind::StepUp) => x - Vec2::new(0.0, BESIDE),
        // Beside the on-ball defender, on the side to which the dribbler goes.
        Some(Family::Ball) => x + side_of(way, scene.to - x) * BESIDE,
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
    let gap = gap(cutter, screener);
    let ahead = direction(screen.at - from).zip(direction(to - screen.at));
    let along = ahead
        .and_then(|(a, b)| direction(a + b))
        .or_else(|| direction(to - from))
        .unwrap_or_else(|| -unit(screen.facing));
    let across = Vec2::new(along.y, -along.x);
    let (a, b) = (screen.at + across * gap, screen.at - across * gap);
    let first = on_side(side, a, b).unwrap_or_else(|| {
        let way = |p: Point| distance(from, p) + distance(p, to);
        let (wa, wb) = (way(a), way(b));
        // A tie within a centimetre goes to the high side: the same on both sides of the court.
        if (wa - wb).abs() < 0.01 {
            on_side(Some(OffSide::Over), a, b).unwrap_or(true)
        } else {
            wa < wb
        }
    });
    (if first { a } else { b }, along)
}

/// Middle to middle at a brush.
pub(super) fn gap(cutter: &Limits, screener: &Limits) -> f64 {
    0.5 * (cutter.shoulder + screener.shoulder) + BRUSH
}

/// Where two who stand shoulder to shoulder are passed: round the end of the wall, from the chests
/// to the backs.
pub(super) fn round_wall(
    [a, b]: [&Screen; 2],
    from: Point,
    to: Point,
    side: Option<OffSide>,
    gap: f64,
) -> (Point, Vec2) {
    let across = direction(a.at - b.at).unwrap_or(Vec2::new(1.0, 0.0));
    let (p, q) = (a.at + across * gap, b.at - across * gap);
    let way = |e: Point| distance(from, e) + distance(e, to);
    let first = on_side(side, p, q).unwrap_or_else(|| {
        let (wp, wq) = (way(p), way(q));
        if (wp - wq).abs() < 1e-6 {
            on_side(Some(OffSide::Over), p, q).unwrap_or(true)
        } else {
            wp < wq
        }
    });
    (if first { p } else { q }, -unit(a.facing))
}

/// Whether `a` rather than `b` lies on the written side of a screener; `None`: nothing is written.
pub(super) fn on_side(side: Option<OffSide>, a: Point, b: Point) -> Option<bool> {
    let high = length(a.to_vec2()) > length(b.to_vec2());
    match side? {
        OffSide::Over => Some(high),
        OffSide::Under => Some(!high),
        OffSide::Left => Some(a.x <= b.x),
        OffSide::Right => Some(a.x > b.x),
        OffSide::Between => None,
    }
}

/// Which screen family an action belongs to, where it has a kind.
pub(super) fn family(action: &Action) -> Option<Family> {
    action.kind.map(|k| k.row().family)
}
