//! The words a set file may use, list by list, and what each means.

use crate::athlete::{Level, Pace};
use crate::court::{RuleSet, Side, Spot, SpotName};
use crate::set::{Coverage, Deed, Edge, Kind, OffSide, Verb};
use crate::spelling::same_word;
use crate::voice::messages::fault as m;
use crate::voice::{Said, Text};
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// Which list a word must come from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Words {
    Court,
    Level,
    Verb,
    /// Kinds of the action's own verb.
    Kind,
    Spot,
    Pace,
    Side,
    OffSide,
    Edge,
    Coverage,
    Deed,
    Faked,
    Closed,
}

pub(super) const SIDES: [(&str, Side); 2] = [("left", Side::Left), ("right", Side::Right)];

pub(super) const OFF_SIDES: [(&str, OffSide); 5] = [
    ("over", OffSide::Over),
    ("under", OffSide::Under),
    ("between", OffSide::Between),
    ("left", OffSide::Left),
    ("right", OffSide::Right),
];

/// What a fake may pretend.
const FAKED: [Verb; 3] = [Verb::Pass, Verb::Cut, Verb::Shot];

pub(super) fn court(text: &str) -> Option<RuleSet> {
    RuleSet::ALL.get(Words::Court.find(text)?).copied()
}

pub(super) fn verb(text: &str) -> Option<Verb> {
    Verb::ALL.get(Words::Verb.find(text)?).copied()
}

pub(super) fn pace(text: &str) -> Option<Pace> {
    Pace::ALL.get(Words::Pace.find(text)?).copied()
}

pub(super) fn side(text: &str) -> Option<Side> {
    SIDES.get(Words::Side.find(text)?).map(|s| s.1)
}

pub(super) fn off_side(text: &str) -> Option<OffSide> {
    OFF_SIDES.get(Words::OffSide.find(text)?).map(|s| s.1)
}

pub(super) fn edge(text: &str) -> Option<Edge> {
    Edge::ALL.get(Words::Edge.find(text)?).copied()
}

pub(super) fn coverage(text: &str) -> Option<Coverage> {
    Coverage::TABLE
        .get(Words::Coverage.find(text)?)
        .map(|c| c.0)
}

pub(super) fn deed(text: &str) -> Option<Deed> {
    Deed::TABLE.get(Words::Deed.find(text)?).map(|d| d.0)
}

pub(super) fn faked(text: &str) -> Option<Verb> {
    FAKED.get(Words::Faked.find(text)?).copied()
}

/// A word with its other accepted spellings.
type Row = (&'static str, &'static [&'static str]);

impl Words {
    /// The `n`th word of the list, counted from 0; spots without their sides, kinds of all verbs.
    fn row(self, n: usize) -> Option<Row> {
        Some(match self {
            Self::Court => (RuleSet::ALL.get(n)?.name(), &[]),
            Self::Level => (Level::ALL.get(n)?.name(), &[]),
            Self::Verb => (Verb::ALL.get(n)?.name(), &[]),
            Self::Kind => Kind::table().get(n).map(|k| (k.name, k.aliases))?,
            Self::Spot => SpotName::TABLE.get(n).map(|s| (s.1, s.2))?,
            Self::Pace => (Pace::ALL.get(n)?.name(), &[]),
            Self::Side => (SIDES.get(n)?.0, &[]),
            Self::OffSide => (OFF_SIDES.get(n)?.0, &[]),
            Self::Edge => (Edge::ALL.get(n)?.name(), &[]),
            Self::Coverage => Coverage::TABLE.get(n).map(|c| (c.1, c.2))?,
            Self::Deed => (Deed::TABLE.get(n)?.1, &[]),
            Self::Faked => (FAKED.get(n)?.name(), &[]),
            Self::Closed => (["closed"].get(n)?, &[]),
        })
    }

    fn rows(self) -> impl Iterator<Item = Row> {
        (0..).map_while(move |n| self.row(n))
    }

    fn find(self, text: &str) -> Option<usize> {
        self.rows().position(|(name, also)| {
            same_word(text, name) || also.iter().any(|a| same_word(text, a))
        })
    }

    /// Whether `text` is one of these words; `of` is the action's verb, for its kinds.
    pub(super) fn knows(self, text: &str, of: Option<Verb>) -> bool {
        match self {
            // Where the verb is unknown, that is fault enough.
            Self::Kind => of.is_none_or(|v| Kind::parse(v, text).is_some()),
            Self::Spot => Spot::parse(text).is_some(),
            _ => self.find(text).is_some(),
        }
    }

    /// The code of the fault for a word that is not known.
    pub(super) fn code(self) -> &'static str {
        match self {
            Self::Court => "unknown-court",
            Self::Level => "unknown-level",
            Self::Verb => "unknown-verb",
            Self::Kind => "unknown-kind",
            Self::Spot => "unknown-spot",
            Self::Pace => "unknown-pace",
            Self::Side | Self::OffSide => "unknown-side",
            Self::Edge => "unknown-edge",
            Self::Coverage => "unknown-coverage",
            Self::Deed => "unknown-deed",
            Self::Faked => "unknown-fake",
            Self::Closed => "unknown-word",
        }
    }

    /// What one such word is called.
    pub(super) fn noun(self) -> Text {
        match self {
            Self::Court => m::COURT,
            Self::Level => m::LEVEL,
            Self::Verb => m::VERB,
            Self::Kind => m::KIND,
            Self::Spot => m::SPOT,
            Self::Pace => m::PACE,
            Self::Side => m::SIDE,
            Self::OffSide => m::OFF_SIDE,
            Self::Edge => m::EDGE,
            Self::Coverage => m::COVERAGE,
            Self::Deed => m::DEED,
            Self::Faked => m::FAKED,
            Self::Closed => m::CLOSED,
        }
    }

    /// The words themselves, each by its main name, in the order in which they are listed.
    pub(super) fn names(self, of: Option<Verb>) -> Vec<String> {
        let mut names = Vec::new();
        for ((name, _), n) in self.rows().zip(0..) {
            self.push(&mut names, name, n, of);
        }
        names
    }

    /// The other spellings that are accepted too.
    pub(super) fn aliases(self, of: Option<Verb>) -> Vec<String> {
        let mut names = Vec::new();
        for ((_, also), n) in self.rows().zip(0..) {
            for name in also {
                self.push(&mut names, name, n, of);
            }
        }
        names
    }

    /// Adds a name of the `n`th word: with its sides where it is a spot, and not at all where it
    /// is a kind of another verb.
    fn push(self, names: &mut Vec<String>, name: &str, n: usize, of: Option<Verb>) {
        let sided = self == Self::Spot && SpotName::TABLE.get(n).is_some_and(|s| s.3);
        let foreign = |verb| Kind::table().get(n).is_some_and(|k| k.verb != verb);
        if sided {
            names.extend(SIDES.iter().map(|(side, _)| [side, " ", name].concat()));
        } else if self != Self::Kind || !of.is_some_and(foreign) {
            names.push(name.to_string());
        }
    }
}

/// All spots, those with sides named once.
pub(super) fn spots_in_brief() -> Said {
    let named = |sided| {
        let rows = SpotName::TABLE.iter().filter(move |r| r.3 == sided);
        super::shape::join(rows.map(|r| r.1))
    };
    m::SIDED
        .with("words", named(false))
        .with("sided", named(true))
}
