//! Where a defender wants to be while no screen asks for more: on the ball, denying, helping.
//!
//! Common practice, no source, for every figure.

use super::offence::Step;
use crate::court::Court;
use crate::math::{Point, Vec2, direction, distance, length};
use crate::set::PlayerId;

/// Metres to a man who holds the ball, to one who dribbles, and to one who is given room.
const HELD: f64 = 0.9;
const DRIBBLED: f64 = 1.2;
const ROOM: f64 = 1.8;
/// A man nearer to the ball than this is one pass away, metres.
const ONE_PASS: f64 = 6.0;
/// Shares of the way from the man to the ball, then from there to the ring: hand in the lane; off
/// the lane; two passes away.
const DENY: (f64, f64) = (0.15, 0.04);
const GAP: (f64, f64) = (0.35, 0.20);
const HELP: (f64, f64) = (0.47, 0.30);
/// Who comes for the ball at this pace is denied; who stands is not. Between, something between.
const COMES: [f64; 2] = [0.5, 1.5];
/// A man this near to the ring is guarded in the post: so far from the chest, toward the ball.
const POST: f64 = 3.4;
const FRONT: f64 = 0.7;
/// Help is measured against a ball no deeper than this, so that a throw-in from the end line does
/// not draw all five under the ring.
const DEEP: f64 = 1.5;
/// The lowest helper stands no higher than this in front of the ring, and none is behind it.
const LOWEST: [f64; 2] = [0.8, 2.0];
/// Where help meets a drive: the front of the no-charge arc, metres from the ring.
const MEET: f64 = 1.25;
/// But no nearer to the driver, and no farther, than this, metres.
const STEP: [f64; 2] = [0.3, 1.6];
/// A ball nearer to the ring than this with nobody between is a drive that needs help.
const DRIVE: f64 = 5.0;
/// A pace toward the ring that is a drive, m/s.
const DRIVES: f64 = 1.2;
/// A defender farther than this from the driver's way is beaten.
const BEATEN: f64 = 0.9;

/// How close a defender is told to play.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Manner {
    Usual,
    Denies,
    Sags,
}

/// What one defender goes by.
#[derive(Clone, Copy, Debug)]
pub(super) struct Eyes<'a> {
    /// What is in the defender's mind.
    pub step: &'a Step,
    /// Whom the defender guards.
    pub man: PlayerId,
    pub manner: Manner,
}

impl Eyes<'_> {
    /// Where the own man is; the ring for one who does not play.
    pub(super) fn man_at(&self) -> Point {
        self.step.place(self.man).unwrap_or(Point::ZERO)
    }

    /// The ball, or where a pass under way will be caught.
    pub(super) fn ball(&self) -> Point {
        self.step
            .with
            .and_then(|p| self.step.place(p))
            .unwrap_or(self.step.ball)
    }

    /// Whether the own man has the ball, or a pass is on its way there.
    pub(super) fn on_ball(&self) -> bool {
        self.step.with == Some(self.man)
    }

    /// Whether the own man is two passes away.
    pub(super) fn helps(&self) -> bool {
        !self.on_ball() && distance(self.man_at(), self.ball()) > ONE_PASS
    }

    /// The usual place, and how fast it moves.
    pub(super) fn usual(&self) -> (Point, Vec2) {
        let m = self.man_at();
        let v = self.step.velocity(self.man);
        let to_ring = direction(Point::ZERO - m).unwrap_or(Vec2::ZERO);
        let far = length(m.to_vec2());
        if self.step.over {
            // Between the man and the rebound.
            return (m + to_ring * (0.35 * far).min(1.0), v * 0.5);
        }
        if self.on_ball() {
            let (gap, v) = match (self.manner, self.step.dribbled) {
                (Manner::Sags, _) => (ROOM, v),
                (_, true) => (DRIBBLED, v),
                // Who catches on the run is taken to stop: a closeout brakes.
                (_, false) => (HELD, v * 0.5),
            };
            // No place behind the ring: at the rim the defender stays between ball and ring.
            return (m + to_ring * gap.min(0.6 * far), v);
        }
        let ball = self.ball();
        let to_ball = direction(ball - m).unwrap_or(Vec2::ZERO);
        if self.helps() {
            return (self.help(m, ball), v * 0.4);
        }
        if far < POST && self.manner != Manner::Sags {
            // Three quarters: more toward the ball the lower the ball is.
            let front = if ball.y < DEEP { 1.0 } else { 0.55 };
            let way = direction(to_ball * front + to_ring * (1.0 - front) * 0.9);
            return (m + way.unwrap_or(to_ring) * FRONT, v * 0.9);
        }
        let place = |(along, sag): (f64, f64)| m.lerp(ball, along).lerp(Point::ZERO, sag);
        match self.manner {
            Manner::Denies => (place(DENY), v * 0.9),
            Manner::Sags => (place(HELP), v * 0.6),
            Manner::Usual => {
                let comes = (v.dot(to_ball) - COMES[0]) / (COMES[1] - COMES[0]);
                (place(GAP).lerp(place(DENY), comes.clamp(0.0, 1.0)), v * 0.9)
            }
        }
    }

    /// The flat triangle ball, me, man, off the ball's side no farther than the line between the rings.
    fn help(&self, m: Point, ball: Point) -> Point {
        let ball_seen = Point::new(ball.x, ball.y.max(DEEP));
        let mut p = m.lerp(ball_seen, HELP.0).lerp(Point::ZERO, HELP.1);
        if m.x * ball.x < 0.0 && p.x * m.x < 0.0 {
            p.x = 0.0;
        }
        p.y = p.y.max(LOWEST[0]);
        if self.lowest() {
            p.y = p.y.min(LOWEST[1]);
        }
        p
    }

    /// Whether no other attacker off the ball stands nearer to the end line.
    fn lowest(&self) -> bool {
        let own = self.man_at().y;
        PlayerId::ALL
            .iter()
            .filter(|p| **p != self.man && self.step.with != Some(**p))
            .filter_map(|p| self.step.place(*p))
            .all(|p| p.y >= own)
    }
}

/// Where somebody must meet the ball because its own defender, now at `own`, is beaten; `None`
/// while nobody is.
pub(super) fn drive(step: &Step, own: Option<Point>) -> Option<Point> {
    let holder = step.with.filter(|_| !step.over)?;
    let at = step.place(holder)?;
    let far = length(at.to_vec2());
    let toward = direction(Point::ZERO - at)?;
    let fast = step.velocity(holder).dot(toward) > DRIVES;
    let beaten = own.is_none_or(|x| {
        let behind = (x - at).dot(toward) < 0.1;
        let aside = (x - at).cross(toward).abs() > BEATEN;
        behind || aside
    });
    (far < DRIVE && fast && beaten).then(|| at + toward * (far - MEET).clamp(STEP[0], STEP[1]))
}

/// The nearest place inside the lines; defenders stay there.
pub(super) fn inside(court: &Court, p: Point) -> Point {
    let m = court.marks();
    Point::new(
        p.x.clamp(-m.sideline, m.sideline),
        p.y.clamp(-m.baseline, m.half),
    )
}
