//! Bodies that meet: nobody passes through anybody, nobody is thrown.

use super::body::{Solid, radius};
use super::offence::Bodies;
use super::simulate::{Defender, Simulation};
use super::{Contact, Incident};
use crate::math::{Point, Vec2, direction, length};
use crate::set::PlayerId;
use alloc::vec::Vec;

/// A brush may overlap a moving attacker so deep, metres, and for so long, seconds.
const BRUSH: (f64, f64) = (0.05, 0.1);
/// Who stands against a body for so long tries another way, seconds.
const PATIENCE: f64 = 0.3;
/// Who comes nearer to the man no faster than this against a body is held, m/s; a hold shorter than this is a bump, s.
const HELD: (f64, f64) = (0.6, 0.12);
/// Who comes this near, metres between the surfaces, is felt by arm and hip, without a reaction;
/// who is overlapped wants to be clear of it in so many seconds.
const FEELS: f64 = 0.25;
const CLEARS: f64 = 0.1;
/// Team mates who touch slide past each other: a sweep moves each no faster than this, m/s.
const SLIDE: f64 = 1.25;
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
    /// The way out of everybody who is felt, as fast as one would go, m/s.
    pub felt: Vec2,
    /// Overlap with moving attackers, by [`PlayerId::index`].
    brushes: [Option<Contact>; 5],
}

impl Simulation<'_> {
    /// Nobody goes deeper into anybody by the own step, three sweeps in fixed order. Who is run into
    /// feels it and gives way with the next step, as fast as legs can.
    pub(super) fn collide(&mut self, t: f64, dt: f64) {
        let bodies = self.offence.bodies(t);
        for _ in 0..3 {
            for i in 0..self.defenders.len() {
                self.against_each_other(i, SLIDE * dt);
            }
            for d in &mut self.defenders {
                against_attackers(d, bodies);
            }
        }
        for d in &mut self.defenders {
            // Where bodies leave no way out, the step is not made.
            let own = radius(&d.limits);
            let mut all = bodies
                .iter()
                .flatten()
                .filter(|b| b.standing && b.is_near(d.body.at));
            if all.any(|b| b.depth(d.body.at, own) > b.depth(d.touch.from, own).max(0.0) + 1e-6) {
                d.body.at = d.touch.from;
            }
        }
        for i in 0..self.defenders.len() {
            self.feel(i, bodies, t);
            self.note_hold(i, bodies, t, dt);
            self.note_brushes(i, bodies, t);
        }
    }

    /// Team mates slide past each other: by half each, no more than `most` metres.
    fn against_each_other(&mut self, i: usize, most: f64) {
        let (before, rest) = self.defenders.split_at_mut(i);
        let Some(d) = rest.first_mut() else { return };
        for o in before {
            let apart = d.body.at - o.body.at;
            let lacks = radius(&d.limits) + radius(&o.limits) - length(apart);
            let Some(out) = direction(apart).filter(|_| lacks > 0.0) else {
                continue;
            };
            let half = out * (0.5 * lacks).min(most);
            d.body.at += half;
            o.body.at -= half;
        }
    }

    /// Whom the body touches, and how fast it would have to go to be clear of them.
    fn feel(&mut self, i: usize, bodies: &Bodies, t: f64) {
        let step = self.offence.at(t);
        let Some(d) = self.defenders.get(i) else {
            return;
        };
        let own = radius(&d.limits);
        let mut felt = Vec2::ZERO;
        let mut press = |depth: f64, away: Vec2, v: Vec2| {
            if let Some(out) = direction(away).filter(|_| depth > -FEELS) {
                let share = (1.0 + depth / FEELS).min(1.0);
                felt += out * (v.dot(out).max(0.0) * share + depth.max(0.0) / CLEARS);
            }
        };
        for (p, body) in PlayerId::ALL.into_iter().zip(bodies) {
            if let Some(b) = body.filter(|b| b.is_near(d.body.at)) {
                let away = d.body.at - b.nearest(d.body.at).0;
                press(b.depth(d.body.at, own), away, step.velocity(p));
            }
        }
        if let Some(d) = self.defenders.get_mut(i) {
            d.touch.felt = felt;
        }
    }

    /// Holds against standing bodies.
    fn note_hold(&mut self, i: usize, bodies: &Bodies, t: f64, dt: f64) {
        let Some(d) = self.defenders.get_mut(i) else {
            return;
        };
        let own = radius(&d.limits);
        // Who slides along a wall is held as well: what counts is the way to the man.
        let man = self.offence.place(d.man, t);
        let way = man.and_then(|m| direction(m - d.body.at));
        let gains = way.map_or(length(d.body.v), |way| d.body.v.dot(way));
        let touching = PlayerId::ALL.iter().zip(bodies).find_map(|(p, b)| {
            let b = b.as_ref().filter(|b| b.standing && b.is_near(d.body.at))?;
            (b.nearest(d.body.at).1 < b.radius + own + 0.01).then_some((*p, b))
        });
        match touching {
            Some((by, body)) if gains < HELD.0 => {
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
        let mut screens = self.knowledge.at(t).meetings.iter();
        if screens.any(|m| m.screener == by && t - lasts > m.burst - 0.3 && t - lasts < m.by + 1.5)
        {
            self.event(t - lasts, who, Incident::Held { by, lasts });
        }
    }

    /// Overlaps with moving attackers: begun, under way, over.
    fn note_brushes(&mut self, i: usize, bodies: &Bodies, t: f64) {
        let Some(d) = self.defenders.get_mut(i) else {
            return;
        };
        let mut over = Vec::new();
        let all = PlayerId::ALL.into_iter().zip(bodies);
        for ((with, body), brush) in all.zip(&mut d.touch.brushes) {
            let touch = body
                .as_ref()
                .filter(|b| !b.standing && b.is_near(d.body.at));
            let touch = touch.and_then(|b| overlap(b, d.body.at, radius(&d.limits)));
            let Some((depth, at)) = touch else {
                over.extend(brush.take());
                continue;
            };
            let contact = brush.get_or_insert_with(|| {
                let way = direction(d.body.at - at).unwrap_or(Vec2::ZERO);
                let v = self.offence.at(t).velocity(with) - d.body.v;
                Contact {
                    who: d.who,
                    with,
                    from: t,
                    to: t,
                    deepest: t,
                    depth,
                    at,
                    closing: v.dot(way).max(0.0),
                }
            });
            if depth > contact.depth {
                (contact.depth, contact.deepest, contact.at) = (depth, t, at);
            }
        }
        self.tell(over, t);
    }

    /// The set is over: what still touches is told.
    pub(super) fn part_all(&mut self, i: usize, t: f64) {
        let touch = self.defenders.get_mut(i).map(|d| &mut d.touch.brushes);
        if let Some(brushes) = touch {
            let left = core::mem::take(brushes);
            self.tell(left.into_iter().flatten(), t);
        }
    }

    fn tell(&mut self, over: impl IntoIterator<Item = Contact>, t: f64) {
        let over = over.into_iter().map(|c| Contact { to: t, ..c });
        self.contacts
            .extend(over.filter(|c| c.depth > BRUSH.0 || c.to - c.from > BRUSH.1));
    }
}

/// The own step leads no deeper into an attacker than not to have made it would.
fn against_attackers(d: &mut Defender, bodies: &Bodies) {
    let own = radius(&d.limits);
    for body in bodies.iter().flatten() {
        if !body.is_near(d.body.at) {
            continue;
        }
        let (q, far) = body.nearest(d.body.at);
        let least = body.radius + own;
        let Some(out) = direction(d.body.at - q).filter(|_| far < least) else {
            continue;
        };
        let stayed = body.depth(d.touch.from, own).max(0.0);
        d.body.at += out * (least - far - stayed).max(0.0);
        let into = d.body.v.dot(out);
        if into < 0.0 {
            d.body.v -= out * into;
        }
    }
}

/// How deep a disc at `at` is in a body, and the point of that disc's edge that is deepest in it.
fn overlap(body: &Solid, at: Point, radius: f64) -> Option<(f64, Point)> {
    let (q, far) = body.nearest(at);
    let depth = body.depth(at, radius);
    (depth > 0.0).then(|| (depth, at.lerp(q, (radius / far.max(1e-9)).min(1.0))))
}
