//! The loop: see, want, move, meet bodies, remember.

use super::body::{Body, Solid, radius};
use super::contact::Touch;
use super::coverage;
use super::known::{Courses, Knowledge, Past};
use super::offence::{Offence, Step};
use super::place::{Eyes, Manner, drive, inside};
use super::{Contact, Defence, DefenderState, Event, Incident, STEPS};
use crate::athlete::Limits;
use crate::court::Court;
use crate::math::{Point, Vec2, angle_of, direction, distance};
use crate::set::{Coverage, Deed, PlayerId, Set};
use crate::timeline::Timeline;
use alloc::vec::Vec;

/// A helper stays with the ball for so long after the drive has ended, seconds.
const LINGERS: f64 = 0.25;
/// Who has helped less than this ago lets the next one take the first pass out, seconds.
const ROTATES: f64 = 1.2;
/// That one must be nearer to the receiver by so much, metres, and the helper at least so far away.
/// Common practice, no source, for these four.
const NEARER: (f64, f64) = (1.0, 2.5);

impl Defence {
    /// Plays five defenders against `timeline` under `coverage`.
    ///
    /// ```
    /// use backcut::play::{Options, Play};
    /// use backcut::set::{Coverage, PlayerId};
    /// let text = br#"{ "backcut": 1, "title": "One", "players": {
    ///     "1": {"at": "top", "ball": true}, "2": {"at": "right wing"} },
    ///   "beats": [ { "actions": [ {"who": 1, "do": "pass", "to": 2} ] } ] }"#;
    /// let play = Play::open(text, &Options::default())?;
    /// let defence = play.defence(Coverage::Chase);
    /// let x1 = PlayerId::new(1).and_then(|p| defence.state(p, 0.0)).unwrap_or_default();
    /// assert!(x1.x.abs() < 0.01 && (4.0..6.5).contains(&x1.y), "between ball and ring");
    /// # Ok::<(), backcut::fault::Faults>(())
    /// ```
    #[must_use]
    pub fn simulate(set: &Set, court: &Court, timeline: &Timeline, coverage: Coverage) -> Self {
        Self::after(&[], set, court, timeline, coverage)
    }

    /// The same against a branch, after the lines that it has left: before each fork the five know
    /// nothing of what is to come, and for a reaction after it they still believe in what was.
    #[must_use]
    pub fn after(
        past: &[Past],
        set: &Set,
        court: &Court,
        timeline: &Timeline,
        coverage: Coverage,
    ) -> Self {
        Trial {
            court,
            courses: &Courses::new(past, set, timeline),
            coverage,
            later: 0.0,
        }
        .play()
    }
}

/// What one simulation is of.
#[derive(Clone, Copy, Debug)]
pub(super) struct Trial<'a> {
    pub court: &'a Court,
    pub courses: &'a Courses<'a>,
    pub coverage: Coverage,
    /// Added to everybody's reaction, seconds.
    pub later: f64,
}

impl Trial<'_> {
    pub(super) fn play(self) -> Defence {
        let mut sim = Simulation::new(self);
        let dt = 1.0 / f64::from(STEPS);
        let count = self.courses.last.offence.len();
        for i in 0..count {
            sim.step(i as f64 * dt, dt);
        }
        sim.finish(count as f64 * dt);
        Defence {
            coverage: self.coverage,
            tracks: sim.tracks,
            men: sim.men,
            deeds: sim.deeds,
            events: sim.events,
            contacts: sim.contacts,
            meetings: sim.knowledge.last.meetings,
        }
    }
}

/// One defender under way.
pub(super) struct Defender {
    pub who: PlayerId,
    pub man: PlayerId,
    pub body: Body,
    pub limits: Limits,
    pub touch: Touch,
    /// When this one last helped.
    helped: Option<f64>,
    /// What this one is about, where it leaves the own man.
    does: Option<Deed>,
}

/// Somebody leaves the own man for a ball that nobody stops.
#[derive(Clone, Copy)]
pub(super) struct Help {
    pub who: PlayerId,
    pub meet: Point,
    /// Seconds.
    until: f64,
}

pub(super) struct Simulation<'a> {
    pub court: &'a Court,
    /// As it is played now.
    pub offence: &'a Offence,
    pub knowledge: Knowledge<'a>,
    pub defenders: Vec<Defender>,
    pub help: Option<Help>,
    /// Whom the defence takes to have the ball.
    ball_with: Option<PlayerId>,
    /// Everybody's reaction, for what they do together, seconds.
    reaction: f64,
    tracks: [Vec<DefenderState>; 5],
    men: Vec<[PlayerId; 5]>,
    deeds: Vec<[Option<Deed>; 5]>,
    pub events: Vec<Event>,
    pub contacts: Vec<Contact>,
}

impl<'a> Simulation<'a> {
    fn new(trial: Trial<'a>) -> Self {
        let Trial { court, courses, .. } = trial;
        let (set, timeline) = (courses.set(), courses.timeline());
        let knowledge = Knowledge::new(courses, trial.coverage);
        let offence = knowledge.at(0.0).offence;
        let first = offence.at(0.0);
        let defenders: Vec<Defender> = set
            .players
            .iter()
            .map(|p| {
                let mut limits = *timeline.limits(p.id);
                limits.reaction += trial.later;
                stand(&first, court, p.id, limits)
            })
            .collect();
        let count = courses.last.offence.len();
        let mut sim = Self {
            court,
            offence,
            knowledge,
            defenders,
            help: None,
            ball_with: first.with,
            reaction: set.level.limits().reaction + trial.later,
            tracks: [const { Vec::new() }; 5],
            men: Vec::with_capacity(count),
            deeds: Vec::with_capacity(count),
            events: Vec::new(),
            contacts: Vec::new(),
        };
        sim.settle();
        sim
    }

    /// Nobody starts inside somebody else.
    fn settle(&mut self) {
        let bodies = self.offence.bodies(0.0);
        for _ in 0..8 {
            for i in 0..self.defenders.len() {
                let (before, rest) = self.defenders.split_at_mut(i);
                let Some(d) = rest.first_mut() else { continue };
                let others = before.iter().map(|o| Solid::disc(o.body.at, &o.limits));
                for body in others.chain(bodies.iter().flatten().copied()) {
                    let (q, far) = body.nearest(d.body.at);
                    let least = body.radius + radius(&d.limits);
                    if let Some(out) = direction(d.body.at - q).filter(|_| far < least) {
                        d.body.at = q + out * least;
                    }
                }
            }
        }
    }

    fn step(&mut self, t: f64, dt: f64) {
        if t > 0.0 {
            self.offence = self.knowledge.at(t).offence;
            self.watch(t);
            self.switch(t);
            let wants: Vec<_> = self.defenders.iter().map(|d| self.intent(d, t)).collect();
            for (d, (want, does)) in self.defenders.iter_mut().zip(wants) {
                d.touch.from = d.body.at;
                d.body.step(&want, &d.limits, dt);
                d.does = does;
            }
            self.collide(t, dt);
        }
        self.record();
    }

    fn record(&mut self) {
        let mut men = PlayerId::ALL;
        let mut deeds = [None; 5];
        for d in &self.defenders {
            let i = d.who.index();
            if let Some(deed) = deeds.get_mut(i) {
                *deed = d.does;
            }
            if let (Some(track), Some(man)) = (self.tracks.get_mut(i), men.get_mut(i)) {
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
        self.deeds.push(deeds);
    }

    fn finish(&mut self, t: f64) {
        for i in 0..self.defenders.len() {
            self.let_go(i, t);
            self.part_all(i, t);
        }
        crate::math::sort_short(&mut self.contacts, |a, b| a.from.total_cmp(&b.from));
        crate::math::sort_short(&mut self.events, |a, b| a.t.total_cmp(&b.t));
    }

    pub(super) fn event(&mut self, t: f64, who: PlayerId, what: Incident) {
        self.events.push(Event { t, who, what });
    }

    /// What the defence sees together: a drive that somebody must meet, a pass out of the help.
    fn watch(&mut self, t: f64) {
        let seen = self.offence.seen(t, self.reaction);
        let passed = seen.with.filter(|_| seen.with != self.ball_with);
        self.ball_with = seen.with;
        if let Some(to) = passed {
            self.rotate(to, &seen, t);
        }
        let own = seen.with.and_then(|h| self.guard_of(h)).map(|d| d.body.at);
        match (drive(&seen, own), self.help) {
            (Some(meet), Some(help)) if Some(self.man_of(help.who)) != seen.with => {
                let until = t + LINGERS;
                self.help = Some(Help {
                    meet,
                    until,
                    ..help
                });
            }
            (Some(meet), _) => {
                let low = self.low_man(&[seen.with]);
                self.help = low.map(|who| Help {
                    who,
                    meet,
                    until: t + LINGERS,
                });
                if let Some((who, with)) = low.zip(seen.with) {
                    self.event(t, who, Incident::Helped { against: with });
                }
            }
            (None, Some(help)) if t > help.until || seen.over => self.help = None,
            _ => {}
        }
        if let Some(help) = self.help
            && let Some(d) = self.defenders.iter_mut().find(|d| d.who == help.who)
        {
            d.helped = Some(t);
        }
    }

    /// The first pass out of the help goes to the man who was left: the next one takes him, and
    /// the helper runs to the other (the X-out).
    fn rotate(&mut self, to: PlayerId, seen: &Step, t: f64) {
        let Some(at) = seen.place(to) else { return };
        let left = self.guard_of(to).filter(|d| {
            d.helped.is_some_and(|h| t - h < ROTATES) && distance(d.body.at, at) > NEARER.1
        });
        let Some((helper, far)) = left.map(|d| (d.who, distance(d.body.at, at))) else {
            return;
        };
        let next = self
            .defenders
            .iter()
            .filter(|d| d.who != helper)
            .map(|d| (d.who, d.man, distance(d.body.at, at)))
            .fold(None, nearest);
        if let Some((who, man, near)) = next
            && near + NEARER.0 < far
        {
            for d in &mut self.defenders {
                if d.who == helper {
                    d.man = man;
                } else if d.who == who {
                    d.man = to;
                }
            }
            self.event(t, helper, Incident::TookOver { man });
            self.event(t, who, Incident::TookOver { man: to });
        }
    }

    pub(super) fn guard_of(&self, man: PlayerId) -> Option<&Defender> {
        self.defenders.iter().find(|d| d.man == man)
    }

    fn man_of(&self, who: PlayerId) -> PlayerId {
        let d = self.defenders.iter().find(|d| d.who == who);
        d.map_or(who, |d| d.man)
    }

    /// Of all defenders but those of `but`, the one nearest to the front of the ring.
    pub(super) fn low_man(&self, but: &[Option<PlayerId>]) -> Option<PlayerId> {
        let front = Point::new(0.0, 1.25);
        self.defenders
            .iter()
            .filter(|d| !but.contains(&Some(d.man)))
            .map(|d| (d.who, d.man, distance(d.body.at, front)))
            .fold(None, nearest)
            .map(|(who, ..)| who)
    }

    /// Both defenders of a switched screen change men: once a use, and once for the two posts of a
    /// gate.
    fn switch(&mut self, t: f64) {
        let seen = t - self.reaction;
        let mut i = 0;
        loop {
            let known = self.knowledge.at(seen);
            let Some((m, done)) = known.meetings.get(i).zip(known.switched.get(i)) else {
                break;
            };
            let (m, done) = (*m, *done);
            i += 1;
            if done || !coverage::switches(&m, t) {
                continue;
            }
            self.knowledge.switched(&m);
            for d in &mut self.defenders {
                let man = match d.man {
                    p if p == m.cutter => m.screener,
                    p if p == m.screener => m.cutter,
                    _ => continue,
                };
                d.man = man;
                let (who, what) = (d.who, Incident::TookOver { man });
                self.events.push(Event { t, who, what });
            }
        }
    }
}

/// The nearer of two; a tie goes to the first.
fn nearest(
    best: Option<(PlayerId, PlayerId, f64)>,
    next: (PlayerId, PlayerId, f64),
) -> Option<(PlayerId, PlayerId, f64)> {
    best.filter(|b| b.2 <= next.2).or(Some(next))
}

/// A defender before anything happens.
fn stand(first: &Step, court: &Court, who: PlayerId, limits: Limits) -> Defender {
    let eyes = Eyes {
        step: first,
        man: who,
        manner: Manner::Usual,
    };
    let at = inside(court, eyes.usual().0);
    let look = direction(eyes.ball() - at).unwrap_or(Vec2::new(0.0, 1.0));
    Defender {
        who,
        man: who,
        body: Body {
            at,
            v: Vec2::ZERO,
            facing: angle_of(look),
        },
        limits,
        touch: Touch::default(),
        helped: None,
        does: None,
    }
}
