//! The words a set file may use, list by list, and what each means.

use crate::athlete::{Level, Pace};
use crate::court::{RuleSet, Side, Spot, SpotName};
use crate::set::{Coverage, Deed, Edge, Kind, OffSide, Verb};
use alloc::format;
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

/// Whether two words are the same but for letter case and hyphens.
fn same(a: &str, b: &str) -> bool {
    let plain = |c: u8| match c {
        b'-' | b'_' => b' ',
        c => c.to_ascii_lowercase(),
    };
    a.trim().bytes().map(plain).eq(b.bytes().map(plain))
}

pub(super) fn court(text: &str) -> Option<RuleSet> {
    RuleSet::ALL.into_iter().find(|r| same(text, r.name()))
}

pub(super) fn verb(text: &str) -> Option<Verb> {
    Verb::ALL.into_iter().find(|v| same(text, v.name()))
}

pub(super) fn pace(text: &str) -> Option<Pace> {
    Pace::ALL.into_iter().find(|p| same(text, p.name()))
}

pub(super) fn side(text: &str) -> Option<Side> {
    SIDES.into_iter().find(|s| same(text, s.0)).map(|s| s.1)
}

pub(super) fn off_side(text: &str) -> Option<OffSide> {
    OFF_SIDES.into_iter().find(|s| same(text, s.0)).map(|s| s.1)
}

pub(super) fn edge(text: &str) -> Option<Edge> {
    Edge::ALL.into_iter().find(|e| same(text, e.name()))
}

pub(super) fn coverage(text: &str) -> Option<Coverage> {
    Coverage::TABLE
        .iter()
        .find(|(_, name, also)| same(text, name) || also.iter().any(|a| same(text, a)))
        .map(|row| row.0)
}

pub(super) fn deed(text: &str) -> Option<Deed> {
    Deed::TABLE.iter().find(|d| same(text, d.1)).map(|d| d.0)
}

pub(super) fn faked(text: &str) -> Option<Verb> {
    verb(text).filter(|v| FAKED.contains(v))
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

impl Words {
    /// Whether `text` is one of these words; `verb` is the action's, for its kinds.
    pub(super) fn knows(self, text: &str, of: Option<Verb>) -> bool {
        match self {
            Self::Court => court(text).is_some(),
            Self::Level => Level::parse(text).is_some(),
            Self::Verb => verb(text).is_some(),
            // Where the verb is unknown, that is fault enough.
            Self::Kind => of.is_none_or(|v| Kind::parse(v, text).is_some()),
            Self::Spot => Spot::parse(text).is_some(),
            Self::Pace => pace(text).is_some(),
            Self::Side => side(text).is_some(),
            Self::OffSide => off_side(text).is_some(),
            Self::Edge => edge(text).is_some(),
            Self::Coverage => coverage(text).is_some(),
            Self::Deed => deed(text).is_some(),
            Self::Faked => faked(text).is_some(),
            Self::Closed => same(text, "closed"),
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
    pub(super) fn noun(self) -> &'static str {
        match self {
            Self::Court => "a court",
            Self::Level => "a level",
            Self::Verb => "something a player can do",
            Self::Kind => "a kind of this action",
            Self::Spot => "a spot",
            Self::Pace => "a pace",
            Self::Side => "a side",
            Self::OffSide => "a side of a screen",
            Self::Edge => "an instant of an action",
            Self::Coverage => "a coverage",
            Self::Deed => "something a defender does",
            Self::Faked => "something to fake",
            Self::Closed => "a word for a lane",
        }
    }

    /// The words themselves, each by its main name, in the order in which they are listed.
    pub(super) fn names(self, of: Option<Verb>) -> Vec<String> {
        let strings = |names: &mut dyn Iterator<Item = &'static str>| -> Vec<String> {
            names.map(ToString::to_string).collect()
        };
        match self {
            Self::Court => strings(&mut RuleSet::ALL.iter().map(|r| r.name())),
            Self::Level => strings(&mut Level::ALL.iter().map(|l| l.name())),
            Self::Verb => strings(&mut Verb::ALL.iter().map(|v| v.name())),
            Self::Kind => strings(
                &mut Kind::table()
                    .iter()
                    .filter(|r| of.is_none_or(|v| r.verb == v))
                    .map(|r| r.name),
            ),
            Self::Spot => SpotName::TABLE
                .iter()
                .flat_map(|row| with_sides(row.1, row.3))
                .collect(),
            Self::Pace => strings(&mut Pace::ALL.iter().map(|p| p.name())),
            Self::Side => strings(&mut SIDES.iter().map(|s| s.0)),
            Self::OffSide => strings(&mut OFF_SIDES.iter().map(|s| s.0)),
            Self::Edge => strings(&mut Edge::ALL.iter().map(|e| e.name())),
            Self::Coverage => strings(&mut Coverage::TABLE.iter().map(|c| c.1)),
            Self::Deed => strings(&mut Deed::TABLE.iter().map(|d| d.1)),
            Self::Faked => strings(&mut FAKED.iter().map(|v| v.name())),
            Self::Closed => strings(&mut ["closed"].into_iter()),
        }
    }

    /// The other spellings that are accepted too.
    pub(super) fn aliases(self, of: Option<Verb>) -> Vec<String> {
        match self {
            Self::Kind => Kind::table()
                .iter()
                .filter(|r| of.is_none_or(|v| r.verb == v))
                .flat_map(|r| r.aliases)
                .map(ToString::to_string)
                .collect(),
            Self::Spot => SpotName::TABLE
                .iter()
                .flat_map(|row| row.2.iter().flat_map(|name| with_sides(name, row.3)))
                .collect(),
            Self::Coverage => Coverage::TABLE
                .iter()
                .flat_map(|row| row.2)
                .map(ToString::to_string)
                .collect(),
            _ => Vec::new(),
        }
    }
}

/// All spots, those with sides named once.
pub(super) fn spots_in_brief() -> String {
    let named = |sided| {
        let rows = SpotName::TABLE.iter().filter(move |r| r.3 == sided);
        super::shape::join(rows.map(|r| r.1))
    };
    format!(
        "{}; with left or right before it: {}",
        named(false),
        named(true)
    )
}

fn with_sides(name: &str, sided: bool) -> Vec<String> {
    if sided {
        SIDES
            .iter()
            .map(|(side, _)| format!("{side} {name}"))
            .collect()
    } else {
        alloc::vec![name.to_string()]
    }
}
