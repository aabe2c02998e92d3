//! Bodies that meet: nobody passes through anybody, nobody is thrown.

use super::Incident;
use super::body::radius;
use super::offence::Bodies;
use super::simulate::Simulation;
use crate::math::{Point, Vec2, direction, length};
use crate::set::PlayerId;

/// A brush may overlap a moving attacker so deep, metres, and for so long, seconds.
const BRUSH: (f64, f64) = (0.05, 0.1);
/// Who stands against a body for so long tries another way, seconds.
const PATIENCE: f64 = 0.3;
/// Slower than this against a body, a defender is held, m/s; a hold shorter than this is a bump, s.
const HELD: (f64, f64) = (0.6, 0.12);
/// A body that comes over a defender moves them no faster than this, m/s: a stumble aside.
const STUMBLE: f64 = 2.5;
// Common practice, no source, for all of these.

/// What a defender's body remembers of others.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Touch {
    /// Where the step began.
    pub from: Point,
    /// Seconds without way against a standing body, and whose.
    stuck: (f64, Option<PlayerId>),
    /// A way round that was chosen after being stuck.
    pub round: Option<Vec2>,
    /// Overlap with a moving attacker.
    brush: Option<Brush>,
}

#[derive(Clone, Copy, Debug)]
struct Brush {
    since: f64,
    depth: f64,
    with: PlayerId,
}

impl Simulation<'_> {
    /// Bodies do not pass through each other: three sweeps in fixed order.
    pub(super) fn collide(&mut self, t: f64, dt: f64) {
        let bodies = self.offence.bodies(t);
        for sweep in 0..3 {
            for i in 0..self.defenders.len() {
                self.against_each_other(i, 0.5 * STUMBLE * dt);
            }
            let aside = if sweep == 0 { STUMBLE * dt } else { 0.0 };
            for i in 0..self.defenders.len() {
                self.against_attackers(i, &bodies, aside);
            }
        }
        for i in 0..self.defenders.len() {
            self.note_hold(i, &bodies, t, dt);
            self.note_brush(i, &bodies, t);
        }
    }

    /// A standing body undoes all of the step that led into it; beyond that, and by a moving one, a
    /// defender is shoved no more than `aside` metres. What is left is a contact to be told.
    fn against_attackers(&mut self, i: usize, bodies: &Bodies, aside: f64) {
        let Some(d) = self.defenders.get_mut(i) else {
            return;
        };
        let went = length(d.body.at - d.touch.from);
        for body in bodies.iter().flatten() {
            let (q, far) = body.nearest(d.body.at);
            let least = body.radius + radius(&d.limits);
            let Some(out) = direction(d.body.at - q).filter(|_| far < least) else {
                continue;
            };
            let undone = if body.standing { went } else { 0.0 };
            d.body.at += out * (least - far).min(undone + aside);
            let into = d.body.v.dot(out);
            if into < 0.0 {
                d.body.v -= out * into;
            }
        }
    }

    /// Team mates give way to each other by half, no more than `most` metres each.
    pub(super) fn against_each_other(&mut self, i: usize, most: f64) {
        let (before, rest) = self.defenders.split_at_mut(i);
        let Some(d) = rest.first_mut() else { return };
        for o in before {
            let least = radius(&d.limits) + radius(&o.limits);
            let apart = d.body.at - o.body.at;
            let far = length(apart);
            let Some(out) = direction(apart).filter(|_| far < least) else {
                continue;
            };
            let half = out * (0.5 * (least - far)).min(most);
            d.body.at += half;
            o.body.at -= half;
        }
    }

    /// Holds against standing bodies.
    fn note_hold(&mut self, i: usize, bodies: &Bodies, t: f64, dt: f64) {
        let Some(d) = self.defenders.get_mut(i) else {
            return;
        };
        let own = radius(&d.limits);
        let touching = PlayerId::ALL.iter().zip(bodies).find_map(|(p, b)| {
            let b = b.as_ref().filter(|b| b.standing)?;
            (b.nearest(d.body.at).1 < b.radius + own + 0.01).then_some((*p, b))
        });
        match touching {
            Some((by, body)) if length(d.body.v) < HELD.0 => {
                d.touch.stuck = (d.touch.stuck.0 + dt, Some(by));
                if d.touch.stuck.0 > PATIENCE && d.touch.round.is_none() {
                    // The shorter end of the shoulders.
                    let away = d.body.at - body.nearest(d.body.at).0;
                    let middle = body.ends[0].midpoint(body.ends[1]);
                    d.touch.round = direction(away).map(|n| {
                        let across = Vec2::new(n.y, -n.x);
                        let lean = across.dot(d.body.at - middle);
                        if lean >= 0.0 { across } else { -across }
                    });
                }
            }
            _ => {
                if touching.is_none() && length(d.body.v) > 1.5 {
                    d.touch.round = None;
                }
                self.let_go(i, t);
            }
        }
    }

    /// A hold ends; if a screen did it, it is told.
    pub(super) fn let_go(&mut self, i: usize, t: f64) {
        let Some(d) = self.defenders.get_mut(i) else {
            return;
        };
        let (lasts, by) = core::mem::take(&mut d.touch.stuck);
        let (who, man) = (d.who, d.man);
        let Some(by) = by.filter(|by| lasts > HELD.1 && *by != man) else {
            return;
        };
        let mut screens = self.meetings.iter();
        if screens.any(|m| m.screener == by && t - lasts > m.burst - 0.3 && t - lasts < m.by + 1.5)
        {
            self.event(t - lasts, who, Incident::Held { by, lasts });
        }
    }

    /// Contacts with moving attackers that are more than a brush.
    fn note_brush(&mut self, i: usize, bodies: &Bodies, t: f64) {
        let Some(d) = self.defenders.get_mut(i) else {
            return;
        };
        let own = radius(&d.limits);
        let deepest = PlayerId::ALL
            .iter()
            .zip(bodies)
            .filter_map(|(p, b)| {
                let b = b.as_ref().filter(|b| !b.standing)?;
                Some((*p, b.radius + own - b.nearest(d.body.at).1))
            })
            .fold(None, |best: Option<(PlayerId, f64)>, next| {
                best.filter(|b| b.1 >= next.1).or(Some(next))
            })
            .filter(|(_, depth)| *depth > 0.0);
        match (deepest, d.touch.brush) {
            (Some((with, depth)), Some(brush)) if with == brush.with => {
                d.touch.brush = Some(Brush {
                    depth: depth.max(brush.depth),
                    ..brush
                });
            }
            (now, before) => {
                d.touch.brush = now.map(|(with, depth)| Brush {
                    since: t,
                    depth,
                    with,
                });
                let who = d.who;
                if let Some(b) = before.filter(|b| b.depth > BRUSH.0 && t - b.since > BRUSH.1) {
                    let what = Incident::Contact {
                        with: b.with,
                        depth: b.depth,
                    };
                    self.event(b.since, who, what);
                }
            }
        }
    }
}
