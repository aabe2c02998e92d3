//! The loop: see, want, move, meet bodies.

use super::body::{Body, Solid, Want, radius};
use super::coverage::{self, Order};
use super::offence::{Offence, Step};
use super::place::{Eyes, drive, inside};
use super::plan::{Meeting, meetings};
use super::{Defence, DefenderState, Event, Incident, STEPS};
use crate::athlete::Limits;
use crate::court::Court;
use crate::math::{Point, Vec2, angle_of, direction, distance, length, turn_between};
use crate::set::{Coverage, PlayerId, Set};
use crate::timeline::Timeline;
use alloc::vec::Vec;

/// Added to the reaction while a defender looks elsewhere. Common practice, no source.
const UNSEEN: f64 = 0.15;
/// Half the field of view, radians: more than this off the nose, a man is not seen.
const VIEW: f64 = 1.75;
/// An attacker slower than this stands.
const STANDS: f64 = 0.15;
/// A body on the straight way is gone round at this clearance between the surfaces, metres.
const CLEAR: f64 = 0.08;
/// A brush may overlap a moving attacker so deep, and so long.
const BRUSH_DEPTH: f64 = 0.05;
const BRUSH_TIME: f64 = 0.1;
/// A defender steps aside for an attacker who would be there within so many seconds, until this
/// far off the attacker's way, metres.
const YIELD: f64 = 0.6;
const ASIDE: f64 = 0.5;
/// Who stands against a body for so long tries another way.
const PATIENCE: f64 = 0.3;

impl Defence {
    /// Plays five defenders against `timeline` under `coverage`.
    #[must_use]
    pub fn simulate(set: &Set, court: &Court, timeline: &Timeline, coverage: Coverage) -> Self {
        let offence = Offence::new(timeline);
        let mut sim = Simulation::new(set, court, timeline, &offence, coverage);
        let dt = 1.0 / f64::from(STEPS);
        for i in 0..offence.len() {
            sim.step(i as f64 * dt, dt, i > 0);
        }
        Self {
            coverage,
            tracks: sim.tracks,
            men: sim.men,
            events: sim.events,
            meetings: sim.meetings,
        }
    }
}

struct Defender {
    who: PlayerId,
    man: PlayerId,
    body: Body,
    limits: Limits,
    /// Seconds without way against a standing body, and whose.
    stuck: (f64, Option<PlayerId>),
    /// A way round that was chosen after being stuck.
    round: Option<(PlayerId, Vec2)>,
    /// Overlap with a moving attacker: since when, how deep, with whom.
    brush: Option<(f64, f64, PlayerId)>,
}

struct Simulation<'a> {
    court: &'a Court,
    timeline: &'a Timeline,
    offence: &'a Offence,
    defenders: Vec<Defender>,
    meetings: Vec<Meeting>,
    switched: Vec<bool>,
    tracks: [Vec<DefenderState>; 5],
    men: Vec<[PlayerId; 5]>,
    events: Vec<Event>,
}

impl<'a> Simulation<'a> {
    fn new(
        set: &Set,
        court: &'a Court,
        timeline: &'a Timeline,
        offence: &'a Offence,
        coverage: Coverage,
    ) -> Self {
        let first = offence.at(0.0);
        let defenders = set
            .players
            .iter()
            .map(|p| {
                let eyes = Eyes {
                    step: &first,
                    court,
                    man: p.id,
                };
                let at = inside(court, eyes.usual().0);
                let look = direction(eyes.ball() - at).unwrap_or(Vec2::new(0.0, 1.0));
                Defender {
                    who: p.id,
                    man: p.id,
                    body: Body {
                        at,
                        v: Vec2::ZERO,
                        facing: angle_of(look),
                    },
                    limits: *timeline.limits(p.id),
                    stuck: (0.0, None),
                    round: None,
                    brush: None,
                }
            })
            .collect();
        let meetings = meetings(set, timeline, coverage);
        Self {
            court,
            timeline,
            offence,
            defenders,
            switched: alloc::vec![false; meetings.len()],
            meetings,
            tracks: [const { Vec::new() }; 5],
            men: Vec::new(),
            events: Vec::new(),
        }
    }

    fn step(&mut self, t: f64, dt: f64, moves: bool) {
        let now = self.offence.at(t);
        if moves {
            self.switch(t);
            let wants: Vec<(Want, Option<Vec2>)> =
                (0..self.defenders.len()).map(|i| self.want(i, t)).collect();
            for (i, (want, round)) in wants.into_iter().enumerate() {
                self.advance(i, want, round, &now, dt);
            }
            self.collide(&now, t, dt);
        }
        self.record();
    }

    fn record(&mut self) {
        let mut men = PlayerId::ALL;
        for d in &self.defenders {
            if let (Some(track), Some(man)) = (
                self.tracks.get_mut(d.who.index()),
                men.get_mut(d.who.index()),
            ) {
                *man = d.man;
                let b = d.body;
                track.push(DefenderState {
                    x: b.at.x,
                    y: b.at.y,
                    facing: b.facing,
                    vx: b.v.x,
                    vy: b.v.y,
                });
            }
        }
        self.men.push(men);
    }

    /// Both defenders of a switched screen change men, once.
    fn switch(&mut self, t: f64) {
        for (m, done) in self.meetings.iter().zip(&mut self.switched) {
            if *done || !coverage::switches(m, t) {
                continue;
            }
            *done = true;
            for d in &mut self.defenders {
                let other = if d.man == m.cutter {
                    m.screener
                } else if d.man == m.screener {
                    m.cutter
                } else {
                    continue;
                };
                d.man = other;
                self.events.push(Event {
                    t,
                    who: d.who,
                    what: Incident::TookOver { man: other },
                });
            }
        }
    }

    /// What one defender wants, and on which side of a screen to go by.
    fn want(&self, i: usize, t: f64) -> (Want, Option<Vec2>) {
        let Some(d) = self.defenders.get(i) else {
            let nowhere = Want {
                to: Point::ZERO,
                v: Vec2::ZERO,
                face: Point::ZERO,
            };
            return (nowhere, None);
        };
        let reaction = self.reaction(d, t);
        let seen = self.offence.seen(t, reaction);
        let eyes = Eyes {
            step: &seen,
            court: self.court,
            man: d.man,
        };
        let (to, v) = eyes.usual();
        let face = if seen.with == Some(d.man) {
            eyes.man_at()
        } else {
            eyes.ball()
        };
        let mind = t - reaction;
        let order = self
            .help(d, &seen)
            .or_else(|| self.ordered(d, mind, &seen, reaction))
            .unwrap_or(Order { to, v, round: None });
        if let Some(aside) = self.out_of_the_way(d, &seen) {
            return (
                Want {
                    to: inside(self.court, aside),
                    v: Vec2::ZERO,
                    face,
                },
                None,
            );
        }
        let to = inside(self.court, order.to);
        (
            Want {
                to,
                v: order.v,
                face,
            },
            order.round.or(d.round.map(|r| r.1)),
        )
    }

    /// A step out of the way of an attacker who would run through the defender; the own man is the
    /// defender's to stay in front of.
    fn out_of_the_way(&self, d: &Defender, seen: &Step) -> Option<Point> {
        let others = PlayerId::ALL.iter().filter(|p| **p != d.man);
        others
            .filter_map(|p| {
                let v = seen.velocity(*p);
                let way = direction(v).filter(|_| length(v) > 1.5)?;
                let apart = d.body.at - seen.place(*p)?;
                let (ahead, aside) = (apart.dot(way), way.cross(apart));
                let near = ahead > -0.2 && ahead < length(v) * YIELD && aside.abs() < ASIDE;
                let across = Vec2::new(-way.y, way.x) * if aside >= 0.0 { 1.0 } else { -1.0 };
                near.then(|| d.body.at + across * (ASIDE - aside.abs() + 0.1))
            })
            .next()
    }

    /// Reaction, longer while the own man is out of view.
    fn reaction(&self, d: &Defender, t: f64) -> f64 {
        let man = self.offence.at(t).place(d.man);
        let off = man
            .and_then(|m| direction(m - d.body.at))
            .map_or(0.0, |way| turn_between(d.body.facing, angle_of(way)).abs());
        d.limits.reaction + if off > VIEW { UNSEEN } else { 0.0 }
    }

    /// The order of the screen that concerns a defender now, the latest one first.
    fn ordered(&self, d: &Defender, mind: f64, seen: &Step, reaction: f64) -> Option<Order> {
        self.meetings
            .iter()
            .zip(&self.switched)
            .rev()
            .find_map(|(m, switched)| {
                if mind < m.burst - 1.5 || *switched {
                    return None;
                }
                if d.man == m.cutter {
                    coverage::screened(m, mind, seen, self.offence, reaction)
                } else if d.man == m.screener {
                    coverage::screener(m, mind, seen)
                } else if coverage::tagged(m, mind).is_some()
                    && self.is_low_man(d, &[m.cutter, m.screener])
                {
                    let roller = seen.place(m.screener)?;
                    let to_ring = direction(Point::ZERO - roller)?;
                    Some(Order {
                        to: roller + to_ring * 0.8,
                        v: seen.velocity(m.screener),
                        round: None,
                    })
                } else {
                    None
                }
            })
    }

    /// The low man leaves for a ball whose own defender is beaten.
    fn help(&self, d: &Defender, seen: &Step) -> Option<Order> {
        let holder = seen.with?;
        if d.man == holder || seen.over {
            return None;
        }
        let own = self
            .defenders
            .iter()
            .find(|o| o.man == holder)
            .map(|o| o.body.at);
        let meet = drive(seen, own)?;
        self.is_low_man(d, &[holder]).then_some(Order {
            to: meet,
            v: Vec2::ZERO,
            round: None,
        })
    }

    /// Whether of all defenders but those of `but`, this one is nearest to the front of the ring.
    fn is_low_man(&self, d: &Defender, but: &[PlayerId]) -> bool {
        let front = Point::new(0.0, 1.25);
        let others = self.defenders.iter().filter(|o| !but.contains(&o.man));
        let nearest = others.map(|o| (distance(o.body.at, front), o.who)).fold(
            (f64::INFINITY, None),
            |best, (far, who)| {
                if far < best.0 { (far, Some(who)) } else { best }
            },
        );
        nearest.1 == Some(d.who)
    }

    /// One step of legs, round the first standing body on the straight way.
    fn advance(&mut self, i: usize, mut want: Want, round: Option<Vec2>, now: &Step, dt: f64) {
        let solids = self.solids(now);
        let Some(d) = self.defenders.get_mut(i) else {
            return;
        };
        if let Some(by) = way_round(d, &want, round, &solids) {
            want = Want {
                to: by,
                v: Vec2::ZERO,
                face: want.face,
            };
            // Keeps the pace: a way round is no place to stop at.
            want.v = direction(by - d.body.at).map_or(Vec2::ZERO, |w| w * 3.0);
        }
        d.body.step(&want, &d.limits, dt);
    }

    /// All attackers as bodies.
    fn solids(&self, now: &Step) -> Vec<(PlayerId, Solid)> {
        PlayerId::ALL
            .iter()
            .filter_map(|p| {
                let at = now.place(*p)?;
                let facing = now.facing.get(p.index()).copied().unwrap_or(0.0);
                let limits = self.timeline.limits(*p);
                let stands = length(now.velocity(*p)) < STANDS;
                let solid = if stands {
                    Solid::capsule(at, facing, limits)
                } else {
                    Solid::disc(at, limits)
                };
                Some((*p, solid))
            })
            .collect()
    }

    /// Bodies do not pass through each other: three sweeps in fixed order.
    fn collide(&mut self, now: &Step, t: f64, dt: f64) {
        let solids = self.solids(now);
        for _ in 0..3 {
            for i in 0..self.defenders.len() {
                self.against_attackers(i, &solids);
                self.against_each_other(i);
            }
        }
        for i in 0..self.defenders.len() {
            self.note(i, &solids, t, dt);
        }
    }

    fn against_attackers(&mut self, i: usize, solids: &[(PlayerId, Solid)]) {
        let Some(d) = self.defenders.get_mut(i) else {
            return;
        };
        for (_, solid) in solids {
            let (q, far) = solid.nearest(d.body.at);
            let least = solid.radius + radius(&d.limits);
            let Some(out) = direction(d.body.at - q).filter(|_| far < least) else {
                continue;
            };
            if solid.standing {
                d.body.at = q + out * least;
            }
            // Into a moving attacker nobody is pushed; but nobody runs on into one either.
            let into = d.body.v.dot(out);
            if into < 0.0 {
                d.body.v -= out * into;
            }
        }
    }

    fn against_each_other(&mut self, i: usize) {
        let (before, rest) = self.defenders.split_at_mut(i);
        let Some(d) = rest.first_mut() else { return };
        for o in before {
            let least = radius(&d.limits) + radius(&o.limits);
            let apart = d.body.at - o.body.at;
            let far = length(apart);
            let Some(out) = direction(apart).filter(|_| far < least) else {
                continue;
            };
            let half = out * (0.5 * (least - far));
            d.body.at += half;
            o.body.at -= half;
        }
    }

    /// Holds against standing bodies and contacts with moving ones.
    fn note(&mut self, i: usize, solids: &[(PlayerId, Solid)], t: f64, dt: f64) {
        let Some(d) = self.defenders.get_mut(i) else {
            return;
        };
        let touching = solids.iter().find(|(_, s)| {
            s.standing && s.nearest(d.body.at).1 < s.radius + radius(&d.limits) + 0.01
        });
        match touching {
            Some((by, solid)) if length(d.body.v) < 0.6 => {
                d.stuck = (d.stuck.0 + dt, Some(*by));
                if d.stuck.0 > PATIENCE && d.round.is_none() {
                    // The shorter end of the shoulders.
                    let away = direction(d.body.at - solid.nearest(d.body.at).0);
                    let middle = solid.ends[0].midpoint(solid.ends[1]);
                    let side = away.map(|n| {
                        let across = Vec2::new(n.y, -n.x);
                        if across.dot(d.body.at - middle) >= 0.0 {
                            across
                        } else {
                            -across
                        }
                    });
                    d.round = side.map(|s| (*by, s));
                }
            }
            _ => {
                if let (lasts, Some(by)) = d.stuck
                    && lasts > 0.12
                    && self
                        .meetings
                        .iter()
                        .any(|m| m.screener == by && t > m.burst && t < m.by + 2.0 && by != d.man)
                {
                    let what = Incident::Held { by, lasts };
                    self.events.push(Event {
                        t,
                        who: d.who,
                        what,
                    });
                }
                d.stuck = (0.0, None);
                if touching.is_none() && length(d.body.v) > 1.5 {
                    d.round = None;
                }
            }
        }
        let deepest = solids
            .iter()
            .filter(|(_, s)| !s.standing)
            .map(|(p, s)| (s.radius + radius(&d.limits) - s.nearest(d.body.at).1, *p))
            .fold((0.0, None), |best, (deep, p)| {
                if deep > best.0 { (deep, Some(p)) } else { best }
            });
        match (deepest, d.brush) {
            ((deep, Some(p)), None) if deep > BRUSH_DEPTH => d.brush = Some((t, deep, p)),
            ((deep, Some(p)), Some((since, most, with))) if deep > 0.0 && p == with => {
                d.brush = Some((since, most.max(deep), with));
            }
            (_, Some((since, depth, with))) => {
                if t - since > BRUSH_TIME {
                    let what = Incident::Contact { with, depth };
                    self.events.push(Event {
                        t: since,
                        who: d.who,
                        what,
                    });
                }
                d.brush = None;
            }
            _ => {}
        }
    }
}

/// The point beside the first standing body on the straight way; `None` where the way is clear.
fn way_round(
    d: &Defender,
    want: &Want,
    round: Option<Vec2>,
    solids: &[(PlayerId, Solid)],
) -> Option<Point> {
    let way = want.to - d.body.at;
    let long = length(way);
    let ahead = direction(way)?;
    let mut first: Option<(f64, Point, f64)> = None;
    for (_, solid) in solids.iter().filter(|(_, s)| s.standing) {
        let middle = solid.ends[0].midpoint(solid.ends[1]);
        let along = (middle - d.body.at).dot(ahead);
        let [a, b] = solid.ends.map(|e| (e - d.body.at).cross(ahead));
        let need = solid.radius + radius(&d.limits) + CLEAR;
        // On the straight way: the shoulder line crosses it, or comes too near.
        let off = if a * b <= 0.0 {
            0.0
        } else {
            a.abs().min(b.abs())
        };
        if along > 0.05 && along < long + 0.1 && off < need && first.is_none_or(|f| along < f.0) {
            let wide = 0.5 * length(solid.ends[1] - solid.ends[0]) + need;
            first = Some((along, middle, wide));
        }
    }
    let (_, middle, wide) = first?;
    let across = Vec2::new(ahead.y, -ahead.x);
    let lean = (middle - d.body.at).cross(ahead);
    let side = match round {
        Some(r) if r.dot(across).abs() > 0.1 => r.dot(across).signum(),
        // The shorter way; a tie goes toward the axis, which a mirrored set mirrors.
        _ if lean.abs() > 1e-6 => -lean.signum(),
        _ => -(middle.x * across.x).signum(),
    };
    Some(middle + across * (side * wide))
}
