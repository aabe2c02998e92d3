//! What a checker found, as data.

use super::{Cure, What};
use crate::math::Point;
use crate::set::{ActionId, Coverage, PlayerId};
use alloc::vec::Vec;

/// How much it matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Worth a look.
    Note,
    /// It will not work as drawn, or may be called.
    Warning,
    /// Against a rule or dangerous: do not run it like this.
    Violation,
}

impl Severity {
    /// The word for it.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Note => "note",
            Self::Warning => "warning",
            Self::Violation => "violation",
        }
    }
}

/// Something a checker noticed.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// What.
    pub what: What,
    /// How much it matters.
    pub severity: Severity,
    /// When, seconds.
    pub t: f64,
    /// Until when, where it lasts.
    pub until: Option<f64>,
    /// Who, in the order that [`What`] names.
    pub players: Vec<PlayerId>,
    /// Which defenders, named by the numbers of their men at the start.
    pub defenders: Vec<PlayerId>,
    /// Under which coverage it holds; `None`: whatever the defence does.
    pub coverage: Option<Coverage>,
    /// Where on the floor.
    pub place: Option<Point>,
    /// The actions it is about.
    pub actions: Vec<ActionId>,
    /// The read it is about, each of its path counted from 0; empty: none.
    pub read: Vec<usize>,
    /// What can be done about it, verified.
    pub cure: Option<Cure>,
}

impl Finding {
    /// A finding at the instant `t`.
    pub(super) fn new(what: What, severity: Severity, t: f64) -> Self {
        Self {
            what,
            severity,
            t,
            until: None,
            players: Vec::new(),
            defenders: Vec::new(),
            coverage: None,
            place: None,
            actions: Vec::new(),
            read: Vec::new(),
            cure: None,
        }
    }

    pub(super) fn until(mut self, t: f64) -> Self {
        self.until = Some(t);
        self
    }

    pub(super) fn of(mut self, players: impl IntoIterator<Item = PlayerId>) -> Self {
        self.players.extend(players);
        self
    }

    pub(super) fn by(mut self, defenders: impl IntoIterator<Item = PlayerId>) -> Self {
        self.defenders.extend(defenders);
        self
    }

    pub(super) fn at(mut self, place: impl Into<Option<Point>>) -> Self {
        self.place = place.into();
        self
    }

    pub(super) fn about(mut self, actions: impl IntoIterator<Item = ActionId>) -> Self {
        for id in actions {
            if !self.actions.contains(&id) {
                self.actions.push(id);
            }
        }
        self
    }

    /// Its stable name, in kebab case.
    #[must_use]
    pub fn code(&self) -> &'static str {
        self.what.code()
    }

    /// Whether `other` says the same, in another version of the set.
    #[must_use]
    pub fn is_like(&self, other: &Self) -> bool {
        // Who is in a crowd may change while the crowd stays.
        let crowd = matches!(self.what, What::LaneCrowd { .. });
        self.code() == other.code() && (crowd || self.players == other.players)
    }
}
