//! The offence as the defence can see it: tables at the steps of the simulation.

use super::STEPS;
use crate::math::{Point, Vec2};
use crate::set::PlayerId;
use crate::timeline::{BallUse, Frame, Timeline};
use alloc::vec::Vec;

/// One step.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Step {
    pub at: [Option<Point>; 5],
    pub v: [Vec2; 5],
    pub facing: [f64; 5],
    pub ball: Point,
    /// Who has the ball, or is about to: on the release of a pass everybody knows to whom.
    pub with: Option<PlayerId>,
    pub dribbled: bool,
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

/// The whole set in steps.
#[derive(Debug)]
pub(super) struct Offence {
    steps: Vec<Step>,
}

impl Offence {
    pub(super) fn new(timeline: &Timeline) -> Self {
        let dt = 1.0 / f64::from(STEPS);
        let count = (timeline.duration() * f64::from(STEPS)) as usize + 1;
        let mut steps: Vec<Step> = Vec::with_capacity(count);
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
            for (slot, p) in step.facing.iter_mut().zip(&frame.players) {
                *slot = p.map_or(0.0, |p| p.facing);
            }
            if let Some(before) = steps.last() {
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
            steps.push(step);
        }
        Self { steps }
    }

    pub(super) fn len(&self) -> usize {
        self.steps.len()
    }

    /// The step at `t` seconds; the ends hold.
    pub(super) fn at(&self, t: f64) -> Step {
        let i = (t * f64::from(STEPS) + 0.5).max(0.0) as usize;
        self.steps
            .get(i)
            .or(self.steps.last())
            .copied()
            .unwrap_or_default()
    }

    /// What somebody who reacts after `reaction` seconds has in mind at `t`: what was there then,
    /// carried on at the pace it had.
    pub(super) fn seen(&self, t: f64, reaction: f64) -> Step {
        let mut step = self.at(t - reaction);
        for (at, v) in step.at.iter_mut().zip(&step.v) {
            *at = at.map(|p| p + *v * reaction);
        }
        step
    }
}
