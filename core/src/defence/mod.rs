//! Five defenders who react, under a coverage.
//!
//! A fixed-step simulation (60 Hz, semi-implicit) over a compiled timeline. Each defender sees the
//! offence a reaction ago and carries on in the mind what moved evenly; so a change of pace or
//! direction is noticed late, and a beaten defender stays beaten: nobody is moved but by legs under
//! the athlete's limits. Standing bodies are impassable. The offence's schedule stays as written.
//!
//! The rules of place and coverage are common practice, no source.

mod body;
mod contact;
mod coverage;
mod known;
mod mind;
mod offence;
mod place;
mod plan;
mod simulate;

pub use known::Past;
pub use plan::Meeting;

#[cfg(test)]
mod tests;

use crate::math::Point;
use crate::set::{Coverage, Deed, PlayerId, Set};
use crate::timeline::Timeline;
use alloc::vec::Vec;

/// Steps a second.
pub const STEPS: u32 = 60;

/// One defender at one instant.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct DefenderState {
    /// Metres to the offence's right of the ring.
    pub x: f64,
    /// Metres from the ring toward half court.
    pub y: f64,
    /// Radians in the court's convention.
    pub facing: f64,
    /// Metres a second, across and along the court.
    pub vx: f64,
    /// The same along the court.
    pub vy: f64,
}

impl DefenderState {
    /// Where the defender is.
    #[must_use]
    pub fn at(&self) -> Point {
        Point::new(self.x, self.y)
    }
}

/// Something that happened to the defence.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Event {
    /// Seconds.
    pub t: f64,
    /// The defender, named by the number of the man at the start.
    pub who: PlayerId,
    /// What.
    pub what: Incident,
}

/// What happened.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Incident {
    /// Ran into a standing body and was stopped for so many seconds.
    Held {
        /// Whose body.
        by: PlayerId,
        /// Seconds without way.
        lasts: f64,
    },
    /// Took over another man: at a switched screen, or in the rotation after help.
    TookOver {
        /// Whom.
        man: PlayerId,
    },
    /// Left the own man for a ball that nobody stopped.
    Helped {
        /// Who had, or was about to catch, that ball.
        against: PlayerId,
    },
}

/// A defender and a moving attacker who ran into each other: more than a brush, in depth or in
/// time. A defender yields as far as legs allow and is not pushed, so some overlap may be left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contact {
    /// The defender, named by the number of the man at the start.
    pub who: PlayerId,
    /// The attacker.
    pub with: PlayerId,
    /// First touch, seconds.
    pub from: f64,
    /// When they are clear of each other again, seconds.
    pub to: f64,
    /// When the overlap is deepest, seconds.
    pub deepest: f64,
    /// That overlap of the bodies, metres.
    pub depth: f64,
    /// Where they touch at that instant.
    pub at: Point,
    /// How fast they came together at the first touch, m/s; not below 0.
    pub closing: f64,
}

/// The defence of one set under one coverage, for its whole length.
#[derive(Clone, Debug, PartialEq)]
pub struct Defence {
    coverage: Coverage,
    /// By [`PlayerId::index`] of the man at the start; empty where the set has no such player.
    tracks: [Vec<DefenderState>; 5],
    /// Who guards whom at each step, by the same index.
    men: Vec<[PlayerId; 5]>,
    /// What everybody is about at each step, where it leaves the own man, by the same index.
    deeds: Vec<[Option<Deed>; 5]>,
    events: Vec<Event>,
    contacts: Vec<Contact>,
    meetings: Vec<Meeting>,
}

/// The coverages a set can meet: those for screens off the ball where it has one, those for ball
/// screens where it has one; [`Coverage::Chase`] always, which is also "everybody stays with the own
/// man".
#[must_use]
pub fn coverages(set: &Set, timeline: &Timeline) -> Vec<Coverage> {
    let meetings = plan::meetings(set, timeline, Coverage::Chase);
    let on_ball = meetings.iter().any(|m| m.on_ball);
    let off_ball = meetings.iter().any(|m| !m.on_ball);
    let all = Coverage::TABLE.iter().map(|r| r.0);
    all.filter(|c| match c {
        Coverage::Chase => true,
        Coverage::TopLock => off_ball,
        Coverage::Over
        | Coverage::Drop
        | Coverage::Ice
        | Coverage::Blitz
        | Coverage::WeakSideTag => on_ball,
        Coverage::Under | Coverage::Switch | Coverage::Show | Coverage::Through => {
            on_ball || off_ball
        }
    })
    .collect()
}

impl Defence {
    /// The coverage that was asked for.
    #[must_use]
    pub fn coverage(&self) -> Coverage {
        self.coverage
    }

    /// A defender at `t` seconds; the ends hold beyond the ends.
    #[must_use]
    pub fn state(&self, who: PlayerId, t: f64) -> Option<DefenderState> {
        let track = self.tracks.get(who.index())?;
        let x = (t * f64::from(STEPS)).clamp(0.0, track.len().checked_sub(1)? as f64);
        let i = x as usize;
        let (a, share) = (track.get(i)?, x - i as f64);
        let b = track.get(i + 1).unwrap_or(a);
        let blend = |a: f64, b: f64| a + (b - a) * share;
        Some(DefenderState {
            x: blend(a.x, b.x),
            y: blend(a.y, b.y),
            facing: crate::math::wrap_angle(
                a.facing + crate::math::turn_between(a.facing, b.facing) * share,
            ),
            vx: blend(a.vx, b.vx),
            vy: blend(a.vy, b.vy),
        })
    }

    /// What a defender is about at `t` who leaves the own man, or the own man's way, because the
    /// coverage or the file asks for it: steps out, sags to tag, goes round; or turns the head.
    #[must_use]
    pub fn deed_of(&self, who: PlayerId, t: f64) -> Option<Deed> {
        let deeds = self.deeds.get(step_at(t)).or_else(|| self.deeds.last());
        deeds.and_then(|d| d.get(who.index())).copied().flatten()
    }

    /// Whom a defender guards at `t`.
    #[must_use]
    pub fn man_of(&self, who: PlayerId, t: f64) -> PlayerId {
        let i = step_at(t);
        let men = self.men.get(i).or_else(|| self.men.last());
        men.and_then(|m| m.get(who.index())).copied().unwrap_or(who)
    }

    /// What happened, in time order.
    #[must_use]
    pub fn events(&self) -> &[Event] {
        &self.events
    }

    /// Where defenders and moving attackers ran into each other, in the order of the first touch.
    #[must_use]
    pub fn contacts(&self) -> &[Contact] {
        &self.contacts
    }

    /// A hash over the bits of every state (FNV-1a, 64 bit): two builds that defend alike to the last
    /// bit have the same.
    #[must_use]
    pub fn hash(&self) -> u64 {
        let mut hash = 0xcbf2_9ce4_8422_2325_u64;
        for s in self.tracks.iter().flatten() {
            for x in [s.x, s.y, s.facing, s.vx, s.vy] {
                for byte in x.to_bits().to_le_bytes() {
                    hash = (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3);
                }
            }
        }
        hash
    }

    /// Every use of a screen with the coverage that met it.
    #[must_use]
    pub fn meetings(&self) -> &[Meeting] {
        &self.meetings
    }
}

#[cfg(test)]
impl Defence {
    /// With one defender put somewhere for the whole length, about that, and with that man since an
    /// instant: for tests of what is seen.
    pub(crate) fn with(
        mut self,
        who: PlayerId,
        state: DefenderState,
        (man, since): (PlayerId, f64),
        deed: Option<Deed>,
    ) -> Self {
        self.tracks[who.index()].fill(state);
        let men = self.men.iter_mut().skip(step_at(since));
        men.for_each(|m| m[who.index()] = man);
        self.deeds.iter_mut().for_each(|d| d[who.index()] = deed);
        self
    }
}

/// The step that is under way at `t`.
fn step_at(t: f64) -> usize {
    (t * f64::from(STEPS)).max(0.0) as usize
}
