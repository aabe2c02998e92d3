//! The offence as the defence can see it: tables at the steps of the simulation. They do not depend
//! on the coverage, so one of them serves all rows of an outcome table.

use super::STEPS;
use super::body::Solid;
use crate::math::{Point, Vec2, direction, length, sqrt};
use crate::set::PlayerId;
use crate::timeline::{BallUse, Frame, Timeline};
use alloc::vec::Vec;

/// An attacker slower than this stands, m/s. Common practice, no source.
const STANDS: f64 = 0.15;

/// Runs that pass the ring this near lead to it, and end so far before it, metres. Common
/// practice, no source.
const AT_RING: f64 = 0.7;

/// Ways to come are looked at in so many pieces of so many seconds.
pub(super) const LOOKS: (u32, f64) = (5, 0.1);

/// One step.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Step {
    pub at: [Option<Point>; 5],
    pub v: [Vec2; 5],
    pub ball: Point,
    /// Who has the ball, or is about to: on the release of a pass everybody knows to whom.
    pub with: Option<PlayerId>,
    pub dribbled: bool,
    /// The shot is up.
    pub over: bool,
}

impl Step {
    pub(super) fn place(&self, who: PlayerId) -> Option<Point> {
        self.at.get(who.index()).copied().flatten()
    }

    pub(super) fn velocity(&self, who: PlayerId) -> Vec2 {
        self.v.get(who.index()).copied().unwrap_or(Vec2::ZERO)
    }
}

/// The attackers' bodies at one step, by [`PlayerId::index`].
pub(super) type Bodies = [Option<Solid>; 5];

const NOBODY: &Bodies = &[None; 5];

/// The whole set in steps.
#[derive(Debug)]
pub(crate) struct Offence {
    steps: Vec<Step>,
    bodies: Vec<Bodies>,
    /// How far each attacker gets from where they are within the looks ahead, metres.
    roams: Vec<[f64; 5]>,
}

impl Offence {
    pub(crate) fn new(timeline: &Timeline) -> Self {
        let dt = 1.0 / f64::from(STEPS);
        let count = (timeline.duration() * f64::from(STEPS)) as usize + 1;
        let mut all = Self {
            steps: Vec::with_capacity(count),
            bodies: Vec::with_capacity(count),
            roams: Vec::with_capacity(count),
        };
        let mut frame = Frame::default();
        for i in 0..count {
            let t = i as f64 * dt;
            timeline.frame(t, &mut frame);
            let mut step = Step {
                ball: Point::new(frame.ball.x, frame.ball.y),
                ..Step::default()
            };
            for (slot, p) in step.at.iter_mut().zip(&frame.players) {
                *slot = p.map(|p| Point::new(p.x, p.y));
            }
            if let Some(before) = all.steps.last() {
                for ((v, a), b) in step.v.iter_mut().zip(&before.at).zip(&step.at) {
                    *v = a.zip(*b).map_or(Vec2::ZERO, |(a, b)| (b - a) / dt);
                }
            }
            let span = timeline.ball_spans().iter().rfind(|s| s.start <= t);
            match span.map(|s| s.what) {
                Some(BallUse::Held(p)) => step.with = Some(p),
                Some(BallUse::Dribbled(p)) => (step.with, step.dribbled) = (Some(p), true),
                Some(BallUse::Pass { to, .. } | BallUse::Handoff { to, .. }) => {
                    step.with = Some(to);
                }
                Some(BallUse::Shot(_) | BallUse::Through) => step.over = true,
                None => {}
            }
            let bodies = PlayerId::ALL.map(|who| {
                let (at, limits) = (step.place(who)?, timeline.limits(who));
                let facing = (*frame.players.get(who.index())?)?.facing;
                Some(if length(step.velocity(who)) < STANDS {
                    Solid::capsule(at, facing, limits)
                } else {
                    Solid::disc(at, limits)
                })
            });
            all.steps.push(step);
            all.bodies.push(bodies);
        }
        for i in 0..count {
            let roams = PlayerId::ALL.map(|who| all.roaming(who, i as f64 * dt));
            all.roams.push(roams);
        }
        all
    }

    fn roaming(&self, who: PlayerId, t: f64) -> f64 {
        let Some(here) = self.place(who, t) else {
            return 0.0;
        };
        let ahead = (1..=LOOKS.0).filter_map(|i| self.place(who, t + f64::from(i) * LOOKS.1));
        sqrt(ahead.map(|p| (p - here).hypot2()).fold(0.0, f64::max))
    }

    /// How far from where they are at `t` somebody gets within the looks ahead, metres.
    pub(super) fn roams(&self, who: PlayerId, t: f64) -> f64 {
        let at = self.roams.get(self.index(t));
        at.and_then(|r| r.get(who.index())).copied().unwrap_or(0.0)
    }

    /// The same with one player's body left out: for tests that ask what a body is worth.
    #[cfg(test)]
    pub(super) fn without_body(mut self, who: PlayerId) -> Self {
        for bodies in &mut self.bodies {
            bodies[who.index()] = None;
        }
        self
    }

    pub(super) fn len(&self) -> usize {
        self.steps.len()
    }

    fn index(&self, t: f64) -> usize {
        let i = (t * f64::from(STEPS) + 0.5).max(0.0) as usize;
        i.min(self.steps.len().saturating_sub(1))
    }

    /// The step at `t` seconds; the ends hold.
    pub(super) fn at(&self, t: f64) -> Step {
        self.steps.get(self.index(t)).copied().unwrap_or_default()
    }

    /// One player's place at `t` seconds.
    pub(super) fn place(&self, who: PlayerId, t: f64) -> Option<Point> {
        self.steps.get(self.index(t))?.place(who)
    }

    /// The bodies at `t` seconds.
    pub(super) fn bodies(&self, t: f64) -> &Bodies {
        self.bodies.get(self.index(t)).unwrap_or(NOBODY)
    }

    /// What somebody who reacts after `reaction` seconds has in mind at `t`: what was there then,
    /// carried on at the pace it had.
    pub(super) fn seen(&self, t: f64, reaction: f64) -> Step {
        let mut step = self.at(t - reaction);
        for (at, v) in step.at.iter_mut().zip(&mut step.v) {
            let Some(p) = at else { continue };
            // Who runs at the ring is taken to stop there.
            let ahead = direction(*v).map_or(0.0, |way| -p.to_vec2().dot(way));
            let aside = direction(*v).map_or(0.0, |way| p.to_vec2().cross(way).abs());
            if ahead > 0.0 && aside < AT_RING {
                let room = ((ahead - AT_RING) / reaction.max(1e-3)).max(0.0);
                *v = *v * (room / length(*v)).min(1.0);
            }
            *p += *v * reaction;
        }
        step
    }
}
