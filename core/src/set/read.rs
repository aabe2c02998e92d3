//! Branches and the defence, as plain data.

use super::{ActionId, Beat, Edge, PlayerId, Pointer};
use crate::court::Side;
use crate::spelling::same_word;
use alloc::string::String;
use alloc::vec::Vec;

/// How the defence plays screens and cuts.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(missing_docs, reason = "the trade's own words")]
pub enum Coverage {
    #[default]
    Chase,
    Over,
    Through,
    Under,
    TopLock,
    Switch,
    Show,
    Drop,
    Ice,
    Blitz,
    WeakSideTag,
}

impl Coverage {
    /// All with the name in a set file and the other accepted words.
    pub const TABLE: [(Self, &'static str, &'static [&'static str]); 11] = [
        (Self::Chase, "chase", &["trail", "lock"]),
        (Self::Over, "over", &[]),
        (Self::Through, "through", &[]),
        (Self::Under, "under", &["shoot the gap"]),
        (Self::TopLock, "top-lock", &[]),
        (Self::Switch, "switch", &[]),
        (Self::Show, "show", &["hedge"]),
        (Self::Drop, "drop", &[]),
        (Self::Ice, "ice", &["down"]),
        (Self::Blitz, "blitz", &["trap"]),
        (Self::WeakSideTag, "weak-side-tag", &["tag"]),
    ];

    /// The name in a set file.
    #[must_use]
    pub fn name(self) -> &'static str {
        let mut table = Self::TABLE.iter();
        table.find(|row| row.0 == self).map_or("", |row| row.1)
    }

    /// The coverage of that name or other accepted word.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        let named = |(_, name, others): &&(Self, &str, &[&str])| {
            same_word(text, name) || others.iter().any(|o| same_word(text, o))
        };
        Self::TABLE.iter().find(named).map(|row| row.0)
    }
}

/// What a single defender does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the trade's own words")]
pub enum Deed {
    Trails,
    GoesRound,
    ShootsTheGap,
    TopLocks,
    Switches,
    StepsOut,
    Sags,
    TurnsHead,
    StaysLow,
}

impl Deed {
    /// All with the name in a set file.
    pub const TABLE: [(Self, &'static str); 9] = [
        (Self::Trails, "trails"),
        (Self::GoesRound, "goes round"),
        (Self::ShootsTheGap, "shoots the gap"),
        (Self::TopLocks, "top-locks"),
        (Self::Switches, "switches"),
        (Self::StepsOut, "steps out"),
        (Self::Sags, "sags"),
        (Self::TurnsHead, "turns head"),
        (Self::StaysLow, "stays low"),
    ];
}

/// What decides a read.
#[derive(Clone, Debug, PartialEq)]
pub enum Condition {
    /// The whole defence plays this coverage.
    Coverage(Coverage),
    /// One defender does this.
    Does {
        /// The defender, named by the number of the own man.
        who: PlayerId,
        /// What.
        does: Deed,
        /// On which side.
        side: Option<Side>,
    },
    /// The own defender is nearer than so many metres.
    Separation {
        /// Whose defender.
        who: PlayerId,
        /// Metres.
        under: f64,
    },
    /// A passing lane is closed.
    LaneClosed {
        /// From whom.
        from: PlayerId,
        /// To whom.
        to: PlayerId,
    },
}

/// When a read is made.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadInstant {
    /// The action whose instant it is: an id of the main line, or of an earlier read's beats.
    pub action: String,
    /// That action where it belongs to the main line.
    pub main: Option<ActionId>,
    /// The instant.
    pub edge: Edge,
    /// Which screener a `pass-by` or `cue` means.
    pub of: Option<PlayerId>,
}

/// A branch: if the defence does this at this instant, these players do that instead.
#[derive(Clone, Debug, PartialEq)]
pub struct Read {
    /// Its name.
    pub title: Option<String>,
    /// When.
    pub at: ReadInstant,
    /// Who must see it.
    pub by: Vec<PlayerId>,
    /// What decides.
    pub condition: Condition,
    /// What replaces the rest of the named players' actions.
    pub beats: Vec<Beat>,
    /// Reads within this branch.
    pub reads: Vec<Self>,
    /// Where it stands in the file.
    pub place: Pointer,
}

/// An instruction to one defender on one action.
#[derive(Clone, Debug, PartialEq)]
pub struct Directive {
    /// The action, by its written name.
    pub action: String,
    /// The defender, named by the number of the own man.
    pub who: PlayerId,
    /// What they do.
    pub does: Deed,
    /// On which side.
    pub side: Option<Side>,
}

/// How the defence is asked to play.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Defence {
    /// The coverage of every screen that nothing else names.
    pub all: Option<Coverage>,
    /// Instructions for single actions.
    pub on: Vec<Directive>,
}
