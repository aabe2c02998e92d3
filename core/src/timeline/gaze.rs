//! Where everybody looks: what is wished for when, before the body's turn rate has its say.

use super::floor::Floor;
use super::possession::instant;
use crate::choreography::Step;
use crate::math::{Point, Vec2, angle_of, direction, turn_between};
use crate::set::{Edge, Kind, PlayerId, Set, Verb};
use crate::timing::Schedule;
use alloc::vec::Vec;

/// A receiver looks for the ball so long before the catch, and after it.
const LOOK: f64 = 0.5;
const AFTER_CATCH: f64 = 0.25;
/// A screener turns square so long before being set.
const SQUARE: f64 = 0.3;
/// A runner can turn the chest so far off the way, radians.
const TWIST: f64 = core::f64::consts::FRAC_PI_3;

/// What a stretch of time asks of the eyes.
#[derive(Clone, Copy, Debug)]
enum Toward {
    Angle(f64),
    Point(Point),
}

#[derive(Clone, Copy, Debug)]
struct Glance {
    from: f64,
    to: f64,
    toward: Toward,
    /// Only as far as a running body can twist.
    twist: bool,
}

/// The wishes of one player.
#[derive(Debug)]
pub(super) struct Gaze<'a> {
    who: PlayerId,
    glances: Vec<Glance>,
    schedule: &'a Schedule,
    floor: &'a Floor,
    retreats: Vec<(f64, f64)>,
    /// How far off the place lay that was looked at last, and the facing toward it.
    last: (Vec2, Option<f64>),
}

impl<'a> Gaze<'a> {
    pub(super) fn new(who: PlayerId, set: &Set, schedule: &'a Schedule, floor: &'a Floor) -> Self {
        let mut gaze = Self {
            who,
            glances: Vec::new(),
            schedule,
            floor,
            retreats: Vec::new(),
            last: (Vec2::ZERO, None),
        };
        #[cfg(feature = "authoring")]
        if let Some(coming) = schedule.coming.filter(|c| c.to == who) {
            let (from, to) = (coming.at - LOOK, coming.at + AFTER_CATCH);
            gaze.look(from, to, Toward::Point(coming.from), true);
        }
        gaze.screens();
        gaze.transfers();
        gaze.steps(set);
        gaze
    }

    fn look(&mut self, from: f64, to: f64, toward: Toward, twist: bool) {
        self.glances.push(Glance {
            from,
            to,
            toward,
            twist,
        });
    }

    fn screens(&mut self) {
        for s in &self.schedule.screens {
            let Some(screen) = self.schedule.choreography.screens.get(s.screen) else {
                continue;
            };
            if screen.who == self.who {
                self.look(s.set - SQUARE, s.free, Toward::Angle(screen.facing), false);
            }
        }
    }

    fn transfers(&mut self) {
        for t in &self.schedule.transfers {
            let (Some((from, _)), Some((to, _))) = (
                self.schedule.place(t.from, t.release),
                self.schedule.place(t.to, t.catch),
            ) else {
                continue;
            };
            if t.from == self.who {
                let start = self.schedule.rows.get(t.row).map_or(t.release, |r| r.start);
                self.look(start, t.release + 0.1, Toward::Point(to), false);
            }
            if t.to == self.who && !t.handoff {
                self.look(
                    t.catch - LOOK,
                    t.catch + AFTER_CATCH,
                    Toward::Point(from),
                    true,
                );
            }
        }
    }

    fn steps(&mut self, set: &Set) {
        for step in &self.schedule.choreography.steps {
            let row = match step {
                Step::Shot { row, .. } | Step::Still { row, .. } => *row,
                Step::Leg(leg) => leg.row,
                _ => continue,
            };
            let (Some(r), Some(times)) = (
                self.schedule.choreography.rows.get(row),
                self.schedule.rows.get(row),
            ) else {
                continue;
            };
            if r.who != self.who {
                continue;
            }
            match (r.verb, r.kind) {
                (Verb::Shot, _) => {
                    let release = instant(times, Edge::Release).unwrap_or(times.end);
                    self.look(
                        times.start,
                        release + 0.5,
                        Toward::Point(Point::ZERO),
                        false,
                    );
                }
                (Verb::Fake, _) => {
                    let at = set.action(r.id).and_then(crate::set::Action::receiver);
                    let at = at.and_then(|p| self.schedule.place(p, times.start));
                    let at = at.map_or(Point::ZERO, |p| p.0);
                    self.look(times.start, times.end, Toward::Point(at), false);
                }
                (Verb::Dribble, Some(Kind::Retreat)) => {
                    self.retreats.push((times.start, times.end));
                }
                _ => {}
            }
        }
    }

    /// The wished facing at `t`.
    pub(super) fn at(&mut self, t: f64) -> Option<f64> {
        let foot = *self.floor.foot(self.who, t)?;
        let way = foot.way.map(angle_of);
        let glance = self.glances.iter().rfind(|g| g.from <= t && t < g.to);
        if let Some(&Glance { toward, twist, .. }) = glance {
            let wish = match toward {
                Toward::Angle(a) => Some(a),
                Toward::Point(p) => self.toward(p - foot.at),
            };
            return match (wish, way) {
                (Some(wish), Some(way)) if twist => {
                    Some(way + turn_between(way, wish).clamp(-TWIST, TWIST))
                }
                (wish, _) => wish,
            };
        }
        if self.retreats.iter().any(|(a, b)| *a <= t && t < *b) {
            return self.toward(Point::ZERO - foot.at);
        }
        way.or_else(|| {
            let ball = self.floor.ball(self.who, t).unwrap_or(Point::ZERO);
            self.toward(ball - foot.at)
        })
    }

    /// The facing toward a place that lies so far off.
    fn toward(&mut self, off: Vec2) -> Option<f64> {
        // Whoever stands and looks at somebody who stands does so for many samples.
        if self.last.0 != off {
            self.last = (off, direction(off).map(angle_of));
        }
        self.last.1
    }
}
