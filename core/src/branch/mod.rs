//! Branches: what a set becomes when a read is made.
//!
//! A branch equals its line up to the fork, bit for bit. From there the players whom the read names
//! do its beats, in the place of what was left of their actions; all others carry on. Whoever is
//! under way goes on from that speed: into the next way where its bend and pace allow, else straight
//! on while the feet brake.

mod left;
mod names;
mod rest;
mod ways;

#[cfg(test)]
mod tests;

use crate::court::Court;
use crate::defence::Past;
use crate::fault::Faults;
use crate::motion::facing::{sample_of, time_of};
use crate::set::{ActionId, PlayerId, Read, Set};
use crate::timeline::{Splice, Timeline};
use crate::timing::{self, Schedule};
use alloc::string::String;
use alloc::vec::Vec;

/// Why a read cannot be played.
#[derive(Clone, Debug, PartialEq)]
pub enum NotPlayed {
    /// Its instant never comes in the line it leaves.
    NoInstant,
    /// The ball is on its way to the ring by then.
    AfterTheShot,
    /// Its waits ask for more time than there is.
    Waits(Faults),
}

/// What does not happen because a read is made.
#[derive(Clone, Debug, PartialEq)]
pub enum Dropped {
    /// An action that had not begun, or was broken off.
    Action {
        /// Who.
        who: PlayerId,
        /// Of the line that was left.
        id: ActionId,
    },
    /// A tie to an action that is no more.
    Tie {
        /// Who waited.
        who: PlayerId,
        /// Whose tie it was, by written name.
        of: Option<String>,
    },
}

/// The main line or a branch, with what it takes to leave it by a read.
#[derive(Clone, Debug)]
pub struct Line {
    pub(super) set: Set,
    pub(super) timeline: Timeline,
    schedule: Schedule,
    /// When the schedule begins, seconds.
    begins: f64,
    /// The schedule's actions with their ids in the line's set.
    ids: Vec<(ActionId, ActionId)>,
    /// The actions of the main line, of the first read taken, … as written, with their ids here.
    written: Vec<Vec<(ActionId, ActionId)>>,
    dropped: Vec<Dropped>,
    /// The lines that were left on the way here.
    past: Vec<Past>,
}

impl Line {
    /// The main line of a set.
    ///
    /// # Errors
    /// `contradictory-waits`.
    pub fn main(set: &Set, court: &Court) -> Result<Self, Faults> {
        let schedule = timing::build(set, court)?;
        let ids: Vec<_> = set.actions().map(|(id, _)| (id, id)).collect();
        Ok(Self {
            set: set.clone(),
            timeline: Timeline::build(set, court, schedule.clone()),
            schedule,
            begins: 0.0,
            written: [ids.clone()].into(),
            ids,
            dropped: Vec::new(),
            past: Vec::new(),
        })
    }

    /// The branch that a read of this line's set makes.
    ///
    /// # Errors
    /// When its instant does not come, comes after the shot, or its waits contradict each other.
    pub fn fork(&self, read: &Read, court: &Court) -> Result<Self, NotPlayed> {
        let at = fork_instant(&self.set, &self.timeline, read).ok_or(NotPlayed::NoInstant)?;
        let ball = self.timeline.ball_use(at).map(|b| b.what);
        let Some(holder) = left::holder(ball) else {
            return Err(NotPlayed::AfterTheShot);
        };
        let left = left::left(self, read, at, holder);
        let (rest, schedule) = rest::build(self, &left, read, at, holder, court)?;
        let later = Timeline::build(&rest.set, court, schedule.clone());
        let splice = Splice {
            at,
            before: &rest.before,
            after: &rest.after,
            beats: &rest.beats,
        };
        let timeline = self.timeline.spliced(later, &splice);
        let mut past = self.past.clone();
        past.push(Past {
            set: self.set.clone(),
            timeline: self.timeline.clone(),
            until: at,
            read: read.clone(),
        });
        Ok(Self {
            set: rest.line,
            timeline,
            schedule,
            begins: at,
            ids: rest.after,
            written: rest.written,
            dropped: rest.dropped,
            past,
        })
    }

    /// Its set, its timeline, and what its read has cost.
    #[must_use]
    pub fn into_parts(self) -> (Set, Timeline, Vec<Dropped>) {
        (self.set, self.timeline, self.dropped)
    }

    /// What is played in it.
    #[must_use]
    pub fn set(&self) -> &Set {
        &self.set
    }

    /// When it happens.
    #[must_use]
    pub fn timeline(&self) -> &Timeline {
        &self.timeline
    }

    /// The lines that were left on the way here, the main line first: a defence has to live through
    /// them.
    #[must_use]
    pub fn past(&self) -> &[Past] {
        &self.past
    }

    /// What the read that made it has cost.
    #[must_use]
    pub fn dropped(&self) -> &[Dropped] {
        &self.dropped
    }
}

/// When a read leaves its line, seconds: its instant, to the next thirtieth of a second. `None` where
/// that never comes.
#[must_use]
pub fn fork_instant(set: &Set, timeline: &Timeline, read: &Read) -> Option<f64> {
    let id = set.named(&read.at.action)?;
    let rows = timeline.actions().iter().filter(|a| a.id == id);
    let mut marks = rows.flat_map(|row| &row.marks);
    let of = read.at.of;
    let t = marks
        .find(|m| m.edge == read.at.edge && (of.is_none() || m.of == of))?
        .t;
    let begins = timeline.begins();
    if t < begins - 1e-9 {
        return None;
    }
    let sample = sample_of(t);
    let sample = sample + usize::from(time_of(sample) < t - 1e-9);
    // A read of what a read begins with comes a moment after it.
    let first = sample_of(begins) + usize::from(begins > 0.0);
    let at = time_of(sample.max(first));
    (at < timeline.duration()).then_some(at)
}
