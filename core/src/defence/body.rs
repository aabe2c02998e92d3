//! What a defender's body can do in one step, and what stops it.

use crate::athlete::Limits;
use crate::math::{
    Point, Vec2, angle_of, direction, distance, length, sqrt, turn_between, unit, wrap_angle,
};
use crate::motion::facing::TURN_RATE;

/// A moving body is a disc whose radius is this share of the shoulders' breadth: between half the
/// breadth and half the depth.
const DISC: f64 = 0.37;
/// Faster than this share of a shuffle, and farther than this to go, a defender turns and runs.
const TURN_AND_RUN: (f64, f64) = (0.9, 0.5);
/// Braking into a place uses this share of full braking, and ends this near to it, metres.
const EASE: f64 = 0.7;
const STILL: f64 = 0.03;
/// Bodies whose middles are farther apart have nothing to do with each other, metres.
const NEAR: f64 = 1.2;
/// No body's shoulder line is longer, metres.
const BROAD: f64 = 0.5;
/// The most of the top speed a body under way uses: the sprint model reaches it only in the limit.
const FLAT_OUT: f64 = 0.97;
// Common practice, no source, for all of these.

/// A moving defender.
#[derive(Clone, Copy, Debug)]
pub(super) struct Body {
    pub at: Point,
    pub v: Vec2,
    pub facing: f64,
}

/// What a defender wants of the next step.
#[derive(Clone, Copy, Debug)]
pub(super) struct Want {
    /// Where to be.
    pub to: Point,
    /// How that place moves.
    pub v: Vec2,
    /// What to look at where the feet leave the choice.
    pub face: Point,
    /// No faster than this, m/s.
    pub top: f64,
    /// At least so fast that way, whatever else is wanted: out of somebody who is felt.
    pub out: Vec2,
}

/// Something solid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Solid {
    /// Ends of the shoulder line; the same point for a disc.
    pub ends: [Point; 2],
    pub radius: f64,
    pub standing: bool,
}

impl Solid {
    /// A standing attacker: a capsule along the shoulders.
    pub(super) fn capsule(at: Point, facing: f64, limits: &Limits) -> Self {
        let n = unit(facing);
        let half = 0.5 * (limits.shoulder - limits.depth);
        let across = Vec2::new(-n.y, n.x) * half;
        Self {
            ends: [at - across, at + across],
            radius: 0.5 * limits.depth,
            standing: true,
        }
    }

    /// A moving attacker: a disc.
    pub(super) fn disc(at: Point, limits: &Limits) -> Self {
        Self {
            ends: [at, at],
            radius: DISC * limits.shoulder,
            standing: false,
        }
    }

    /// The wall that two standing bodies make when they leave less than `gap` between them: its
    /// outer ends.
    pub(super) fn joined(&self, other: &Self, gap: f64) -> Option<[Point; 2]> {
        // Roots only for bodies that may be near enough, from whatever end.
        let most = gap + self.radius + other.radius + 2.0 * BROAD;
        if (self.ends[0] - other.ends[0]).hypot2() > most * most {
            return None;
        }
        let pairs = self
            .ends
            .map(|a| other.ends.map(|b| (distance(a, b), [a, b])));
        let all = || pairs.iter().flatten();
        let near = all().map(|p| p.0).fold(f64::INFINITY, f64::min);
        let outer = all().fold(None, |best: Option<&(f64, [Point; 2])>, p| {
            best.filter(|b| b.0 >= p.0).or(Some(p))
        });
        outer
            .filter(|_| near - self.radius - other.radius < gap)
            .map(|p| p.1)
    }

    /// The nearest point of the middle line, and how far it is.
    pub(super) fn nearest(&self, p: Point) -> (Point, f64) {
        let [a, b] = self.ends;
        let way = b - a;
        let share = if way.hypot2() > 1e-12 {
            ((p - a).dot(way) / way.hypot2()).clamp(0.0, 1.0)
        } else {
            0.0
        };
        let q = a + way * share;
        (q, length(p - q))
    }

    /// Whether a body at `p` could touch or feel it: cheap, and never wrong about who could.
    pub(super) fn is_near(&self, p: Point) -> bool {
        (p - self.ends[0]).hypot2() < NEAR * NEAR
    }

    /// How deep a disc at `p` is in it, metres; negative where they do not touch.
    pub(super) fn depth(&self, p: Point, radius: f64) -> f64 {
        self.radius + radius - self.nearest(p).1
    }
}

/// Radius of a defender's disc.
pub(super) fn radius(limits: &Limits) -> f64 {
    DISC * limits.shoulder
}

impl Body {
    /// One step of `dt` seconds toward what is wanted, under the limits.
    pub(super) fn step(&mut self, want: &Want, limits: &Limits, dt: f64) {
        let away = want.to - self.at;
        let left = length(away);
        let way = direction(away);
        // The speed from which braking still ends in the wanted place.
        let close = way.map_or(Vec2::ZERO, |d| {
            d * sqrt(2.0 * EASE * limits.brake * (left - STILL).max(0.0))
        });
        let mut wish = want.v + close;
        if let Some(out) = direction(want.out) {
            wish += out * (length(want.out) - wish.dot(out)).max(0.0);
        }
        let speed = length(wish);
        let runs = speed > TURN_AND_RUN.0 * limits.shuffle * limits.v_max && left > TURN_AND_RUN.1;
        let look = if runs {
            direction(wish)
        } else {
            direction(want.face - self.at)
        };
        if let Some(look) = look {
            let turn = turn_between(self.facing, angle_of(look));
            self.facing = wrap_angle(self.facing + turn.clamp(-TURN_RATE * dt, TURN_RATE * dt));
        }
        let cap = self.cap(wish, limits).min(want.top);
        let wish = if speed > cap {
            wish * (cap / speed)
        } else {
            wish
        };
        self.v += push(self.v, (wish - self.v) / dt, limits) * dt;
        self.at += self.v * dt;
    }

    /// Fastest speed in that direction for feet that stand as they do: forward, sideways, backward.
    fn cap(&self, wish: Vec2, limits: &Limits) -> f64 {
        let ahead = direction(wish).map_or(1.0, |d| d.dot(unit(self.facing)));
        let share = if ahead > 0.5 {
            limits.shuffle + (FLAT_OUT - limits.shuffle) * ((ahead - 0.5) / 0.4).min(1.0)
        } else if ahead < -0.5 {
            limits.backpedal
        } else {
            limits.shuffle
        };
        share * limits.v_max
    }
}

/// The acceleration a body can give of the one it wants: sprint model ahead, braking behind, the
/// lateral limit across.
fn push(v: Vec2, wanted: Vec2, limits: &Limits) -> Vec2 {
    let speed = length(v);
    let drive = ((limits.v_max - speed) / limits.tau).max(0.5);
    let Some(ahead) = direction(v).filter(|_| speed > 0.3) else {
        let a = length(wanted);
        return if a > drive {
            wanted * (drive / a)
        } else {
            wanted
        };
    };
    let along = wanted.dot(ahead);
    let across = wanted - ahead * along;
    let side = length(across);
    let across = if side > limits.lateral {
        across * (limits.lateral / side)
    } else {
        across
    };
    ahead * along.clamp(-limits.brake, drive) + across
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::athlete::Level;

    #[test]
    fn nobody_outruns_the_limits() {
        let limits = Level::Adult.limits();
        let mut body = Body {
            at: Point::ZERO,
            v: Vec2::ZERO,
            facing: 0.0,
        };
        let want = Want {
            to: Point::new(0.0, -12.0),
            v: Vec2::ZERO,
            face: Point::new(5.0, 0.0),
            top: f64::INFINITY,
            out: Vec2::ZERO,
        };
        let (dt, mut before) = (1.0 / 60.0, Vec2::ZERO);
        for _ in 0..300 {
            body.step(&want, &limits, dt);
            assert!(length(body.v) <= limits.v_max);
            assert!(length(body.v - before) / dt <= limits.v_max / limits.tau + 1e-9);
            before = body.v;
        }
        assert!(length(body.at - want.to) < 0.1, "{:?}", body.at);
    }

    #[test]
    fn a_shuffle_is_slower_than_a_run() {
        let limits = Level::Adult.limits();
        let body = Body {
            at: Point::ZERO,
            v: Vec2::ZERO,
            facing: 0.0,
        };
        let [ahead, side, back] =
            [(0.0, -9.0), (9.0, 0.0), (0.0, 9.0)].map(|(x, y)| body.cap(Vec2::new(x, y), &limits));
        assert!(side < back && back < ahead);
    }
}
