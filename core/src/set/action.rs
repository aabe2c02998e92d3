//! What one player does, and what it waits for.

use super::{ActionId, Kind, PlayerId, Pointer, SetPlace};
use crate::athlete::Pace;
use alloc::string::String;
use alloc::vec::Vec;

/// The eight verbs of a set file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(missing_docs, reason = "the trade's own words")]
pub enum Verb {
    Cut,
    Dribble,
    Screen,
    Pass,
    Handoff,
    Shot,
    Hold,
    Fake,
}

impl Verb {
    /// All, in the order in which they are listed to people.
    pub const ALL: [Self; 8] = [
        Self::Cut,
        Self::Dribble,
        Self::Screen,
        Self::Pass,
        Self::Handoff,
        Self::Shot,
        Self::Hold,
        Self::Fake,
    ];

    /// The name in a set file.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Cut => "cut",
            Self::Dribble => "dribble",
            Self::Screen => "screen",
            Self::Pass => "pass",
            Self::Handoff => "handoff",
            Self::Shot => "shot",
            Self::Hold => "hold",
            Self::Fake => "fake",
        }
    }
}

/// Where an action goes to.
#[derive(Clone, Debug, PartialEq)]
pub enum Target {
    /// A place on the court.
    Place(SetPlace),
    /// A team mate: who catches a pass, takes a hand-off, is faked at.
    Player(PlayerId),
}

/// A point of the way: a place, or a screener to pass.
#[derive(Clone, Debug, PartialEq)]
pub enum Via {
    /// Through this place.
    Place(SetPlace),
    /// By this screener.
    Off(Off),
}

/// Use of one screener.
#[derive(Clone, Debug, PartialEq)]
pub struct Off {
    /// Whose screen.
    pub who: PlayerId,
    /// Which side of it; `None`: the program chooses.
    pub side: Option<OffSide>,
}

/// On which side a cutter passes a screener.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OffSide {
    /// The high side, away from the ring.
    Over,
    /// The low side, between the screener and the ring.
    Under,
    /// Through a gate, between its posts.
    Between,
    /// Outside the gate's left post.
    Left,
    /// Outside the gate's right post.
    Right,
}

/// An instant of an action.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(
    missing_docs,
    reason = "`design`: the table of instants in the guide describes each"
)]
pub enum Edge {
    Start,
    End,
    Plant,
    Cue,
    PassBy,
    Set,
    Shut,
    Free,
    Release,
    Catch,
}

impl Edge {
    /// All.
    pub const ALL: [Self; 10] = [
        Self::Start,
        Self::End,
        Self::Plant,
        Self::Cue,
        Self::PassBy,
        Self::Set,
        Self::Shut,
        Self::Free,
        Self::Release,
        Self::Catch,
    ];

    /// The name in a set file.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Start => "start",
            Self::End => "end",
            Self::Plant => "plant",
            Self::Cue => "cue",
            Self::PassBy => "pass-by",
            Self::Set => "set",
            Self::Shut => "shut",
            Self::Free => "free",
            Self::Release => "release",
            Self::Catch => "catch",
        }
    }

    /// The edges that an action of `verb` has.
    #[must_use]
    pub fn of(verb: Verb) -> &'static [Self] {
        match verb {
            Verb::Cut | Verb::Dribble => {
                &[Self::Start, Self::Plant, Self::Cue, Self::PassBy, Self::End]
            }
            Verb::Screen => &[Self::Start, Self::Set, Self::Shut, Self::Free, Self::End],
            Verb::Pass => &[Self::Start, Self::Release, Self::Catch, Self::End],
            Verb::Handoff => &[
                Self::Start,
                Self::Set,
                Self::Release,
                Self::Catch,
                Self::End,
            ],
            Verb::Shot => &[Self::Start, Self::Release, Self::End],
            Verb::Hold | Verb::Fake => &[Self::Start, Self::End],
        }
    }
}

/// "No earlier than" or "exactly then".
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TieRelation {
    /// Mine is no earlier than theirs plus the lag.
    After,
    /// Mine is theirs plus the lag.
    With,
}

/// In which beats the other action of a tie stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Scope {
    /// The set's main line; always so for ties of the main line.
    #[default]
    Main,
    /// The beats of a read: 0 is the one the tie itself stands in, 1 the read around that, …
    Read(u8),
}

/// A timing relation between an instant of this action and one of another.
#[derive(Clone, Debug, PartialEq)]
pub struct Tie {
    /// How.
    pub relation: TieRelation,
    /// The other action, by beat and place within `scope`.
    pub to: ActionId,
    /// Where that action stands: the main line, or a read.
    pub scope: Scope,
    /// Its instant.
    pub edge: Edge,
    /// Which screener a `pass-by` or `cue` means; `None`: the first.
    pub of: Option<PlayerId>,
    /// Seconds between.
    pub lag: f64,
    /// The instant of the action that carries the tie.
    pub mine: Edge,
    /// Where it stands in the file.
    pub place: Pointer,
}

/// What one player (or several as one) does.
#[derive(Clone, Debug, PartialEq)]
pub struct Action {
    /// Name for ties, as written.
    pub id: Option<String>,
    /// Who, in written order; several only for screens, holds and fakes.
    pub who: Vec<PlayerId>,
    /// What.
    pub verb: Verb,
    /// The trade's name for it.
    pub kind: Option<Kind>,
    /// Where to, or to whom.
    pub to: Option<Target>,
    /// Where a screen, a hand-off or a catch is.
    pub at: Option<SetPlace>,
    /// The way, in running order.
    pub via: Vec<Via>,
    /// Whom a screen is for.
    pub for_whom: Vec<PlayerId>,
    /// Whose screens are used, in running order.
    pub off: Vec<Off>,
    /// Which side of a screen or gate, for all of `off` that say nothing.
    pub side: Option<OffSide>,
    /// How hard; `None`: what the kind asks.
    pub pace: Option<Pace>,
    /// Seconds it takes at least.
    pub takes: Option<f64>,
    /// What it waits for.
    pub ties: Vec<Tie>,
    /// Drops inferred waits, so that a flawed set can be written.
    pub free: bool,
    /// The author's words.
    pub say: Option<String>,
    /// What a fake pretends.
    pub of: Option<Verb>,
    /// Where it stands in the file.
    pub place: Pointer,
}

impl Action {
    /// The first (mostly the only) player of the action.
    #[must_use]
    pub fn actor(&self) -> Option<PlayerId> {
        self.who.first().copied()
    }

    /// The team mate a pass, hand-off or fake goes to.
    #[must_use]
    pub fn receiver(&self) -> Option<PlayerId> {
        match self.to {
            Some(Target::Player(p)) => Some(p),
            _ => None,
        }
    }
}

/// A named instant with the player it is about; what a timetable lists.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mark {
    /// Which instant.
    pub edge: Edge,
    /// Which screener a `pass-by` or `cue` is about.
    pub of: Option<PlayerId>,
    /// Seconds.
    pub t: f64,
}
