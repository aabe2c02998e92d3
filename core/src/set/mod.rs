//! A set as plain data: what a coach wrote, resolved to the project's words, nothing computed yet.

mod action;
mod beat;
mod kind;
mod mirror;
mod possession;
mod read;

pub use action::{Action, Edge, Mark, Off, OffSide, Scope, Target, Tie, TieRelation, Verb, Via};
#[cfg(feature = "authoring")]
pub use beat::SlowEnd;
pub use beat::{Beat, Beside, FilmMark, Player, Pointer, SetPlace, SlowStretch};
pub use kind::{Family, Kind, KindRow};
pub use possession::holder_after;
pub use read::{Condition, Coverage, Deed, Defence, Directive, Read, ReadInstant};

use crate::athlete::{Level, Limits};
use crate::court::{Court, RuleSet};
use alloc::string::String;
use alloc::vec::Vec;

/// An offensive player, 1–5. Numbers are roles in this set, not shirts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PlayerId(u8);

impl PlayerId {
    /// Player `n`, or `None` outside 1–5.
    #[must_use]
    pub fn new(n: u8) -> Option<Self> {
        (1..=5).contains(&n).then_some(Self(n))
    }

    /// 1–5.
    #[must_use]
    pub fn number(self) -> u8 {
        self.0
    }

    /// 0–4, to index an array of five.
    #[must_use]
    pub fn index(self) -> usize {
        usize::from(self.0) - 1
    }

    /// All five in order.
    pub const ALL: [Self; 5] = [Self(1), Self(2), Self(3), Self(4), Self(5)];
}

/// One scripted half-court play, one file.
#[derive(Clone, Debug, PartialEq)]
pub struct Set {
    /// Its name.
    pub title: String,
    /// A paragraph about it.
    pub about: Option<String>,
    /// When it is called: half court, sideline, baseline, after a time-out.
    pub when: Option<String>,
    /// Teaching points.
    pub points: Vec<String>,
    /// Whose set it is.
    pub credit: Option<String>,
    /// Free words to find it by.
    pub tags: Vec<String>,
    /// Rule set.
    pub court: RuleSet,
    /// Athlete level.
    pub level: Level,
    /// Two to five players, in number order.
    pub players: Vec<Player>,
    /// The stages, in order.
    pub beats: Vec<Beat>,
    /// Branches off the main line.
    pub reads: Vec<Read>,
    /// How the defence is asked to play.
    pub defence: Defence,
    /// Slow stretches of the walk-through.
    pub slow: Vec<SlowStretch>,
    /// Marks that tie set instants to film instants.
    pub film: Vec<FilmMark>,
    /// The author's own `x-…` fields, kept for when the set is written again.
    pub extras: Vec<Extra>,
}

/// A field `x-…` that means nothing to the program.
#[derive(Clone, Debug, PartialEq)]
pub struct Extra {
    /// JSON Pointer of the object it stands in.
    pub within: String,
    /// Its name.
    pub name: String,
    /// Its value, as JSON text.
    pub json: String,
}

/// Which action of a set's main line, by beat and place in the beat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ActionId {
    /// Index of the beat.
    pub beat: u16,
    /// Index in the beat.
    pub action: u16,
}

impl Set {
    /// The floor it is played on: the rule set's court, with the spots of its level.
    #[must_use]
    pub fn floor(&self) -> Court {
        let court = Court::of(self.court);
        if self.level.is_youth() {
            court.for_youth()
        } else {
            court
        }
    }

    /// The player who is written with the ball.
    #[must_use]
    pub fn first_holder(&self) -> Option<PlayerId> {
        self.players.iter().find(|p| p.ball).map(|p| p.id)
    }

    /// The player of that number, where the set has one.
    #[must_use]
    pub fn player(&self, id: PlayerId) -> Option<&Player> {
        self.players.iter().find(|p| p.id == id)
    }

    /// What a player can do at the own level, else at the set's.
    #[must_use]
    pub fn limits_of(&self, id: PlayerId) -> Limits {
        let own = self.player(id).and_then(|p| p.level);
        own.unwrap_or(self.level).limits()
    }

    /// What everybody can do, by [`PlayerId::index`].
    #[must_use]
    pub fn limits(&self) -> [Limits; 5] {
        PlayerId::ALL.map(|id| self.limits_of(id))
    }

    /// All actions of the main line with their ids, in written order.
    pub fn actions(&self) -> impl Iterator<Item = (ActionId, &Action)> {
        self.beats.iter().zip(0u16..).flat_map(|(beat, b)| {
            beat.actions
                .iter()
                .zip(0u16..)
                .map(move |(action, a)| (ActionId { beat: b, action: a }, action))
        })
    }

    /// One action of the main line.
    #[must_use]
    pub fn action(&self, id: ActionId) -> Option<&Action> {
        self.beats
            .get(usize::from(id.beat))?
            .actions
            .get(usize::from(id.action))
    }

    /// The action that carries the written name `name`.
    #[must_use]
    pub fn named(&self, name: &str) -> Option<ActionId> {
        self.actions()
            .find(|(_, a)| a.id.as_deref() == Some(name))
            .map(|(id, _)| id)
    }

    /// The read at `path`, each counted from 0 among those within the one before.
    #[must_use]
    pub fn read(&self, path: &[usize]) -> Option<&Read> {
        let (first, rest) = path.split_first()?;
        rest.iter()
            .try_fold(self.reads.get(*first)?, |read, i| read.reads.get(*i))
    }
}
