//! Where a defender wants to be while no screen asks for more: on the ball, denying, helping.
//!
//! Common practice, no source.

use super::offence::Step;
use crate::court::Court;
use crate::guard::{Guarded, nominal};
use crate::math::{Point, Vec2, direction, distance, length};
use crate::set::PlayerId;

/// Distance to a man who holds the ball, and to one who dribbles.
const ON_BALL: [f64; 2] = [0.9, 1.2];
/// The lowest helper stands no higher than this in front of the ring.
const LOWEST: f64 = 2.0;
/// Where help meets a drive: the front of the no-charge arc.
const MEET: f64 = 1.25;
/// A ball nearer to the ring than this with nobody between is a drive that needs help.
const DRIVE: f64 = 5.0;

/// What one defender goes by.
#[derive(Clone, Copy, Debug)]
pub(super) struct Eyes<'a> {
    /// What is in the defender's mind.
    pub step: &'a Step,
    pub court: &'a Court,
    /// Whom the defender guards.
    pub man: PlayerId,
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

    /// The usual place, and how fast it moves.
    pub(super) fn usual(&self) -> (Point, Vec2) {
        let m = self.man_at();
        let v = self.step.velocity(self.man);
        if self.step.with == Some(self.man) {
            let gap = if self.step.dribbled {
                ON_BALL[1]
            } else {
                ON_BALL[0]
            };
            let in_front = direction(Point::ZERO - m).unwrap_or(Vec2::ZERO);
            // No place behind the ring: at the rim the defender stays between ball and ring.
            return (m + in_front * gap.min(0.6 * length(m.to_vec2())), v);
        }
        let ball = self.ball();
        let mut p = nominal(Guarded { at: m, ball: false }, ball);
        let helps = distance(m, ball) > 6.0;
        if helps {
            // Off the ball's side, no farther than the line from ring to ring; never deep in the
            // corner of the own man.
            if m.x * ball.x < 0.0 && p.x * m.x < 0.0 {
                p.x = 0.0;
            }
            p.y = p.y.max(-0.6);
            if p.y < LOWEST && self.lowest() {
                p.y = p.y.max(0.8);
            }
        }
        (p, v * if helps { 0.4 } else { 0.9 })
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

/// Where somebody must meet the ball because its own defender is beaten; `None` while nobody is.
pub(super) fn drive(step: &Step, own: Option<Point>) -> Option<Point> {
    let holder = step.with?;
    let at = step.place(holder)?;
    let far = length(at.to_vec2());
    let toward = direction(Point::ZERO - at)?;
    let fast = step.velocity(holder).dot(toward) > 1.2;
    let beaten = own.is_none_or(|x| {
        let behind = (x - at).dot(toward) < 0.1;
        let aside = (x - at).cross(toward).abs() > 0.9;
        behind || aside
    });
    (far < DRIVE && fast && beaten).then(|| at + toward * (far - MEET).max(0.3).min(1.6))
}

/// Whether the court has that place inside its lines; defenders stay there.
pub(super) fn inside(court: &Court, p: Point) -> Point {
    let m = court.marks();
    Point::new(
        p.x.clamp(-m.sideline - 0.2, m.sideline + 0.2),
        p.y.clamp(-m.baseline - 0.2, m.half),
    )
}
