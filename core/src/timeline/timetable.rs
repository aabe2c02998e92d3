//! When everything happens: what a tool prints and the strip draws.

use crate::set::{ActionId, Edge, Kind, Mark, PlayerId, Verb};
use alloc::vec::Vec;

/// One action of one player with its instants, seconds.
#[derive(Clone, Debug, PartialEq)]
pub struct TimedAction {
    /// Which action of the set. Two screeners of a gate have one id and a row each.
    pub id: ActionId,
    /// Whose row.
    pub who: PlayerId,
    /// What.
    pub verb: Verb,
    /// The trade's name, where written.
    pub kind: Option<Kind>,
    /// First movement (of a set-up walk, of a wind-up).
    pub start: f64,
    /// Last movement; of a screen, until the screener may leave.
    pub end: f64,
    /// How much later it could be without making the goal later; `None`: nobody waits for it.
    pub slack: Option<f64>,
    /// Whether it holds up the goal.
    pub critical: bool,
    /// Its instants in time order, `start` and `end` included.
    pub marks: Vec<Mark>,
    /// Where it stands and waits inside, for example at the plant before a screen is set.
    pub waits: Vec<Wait>,
}

impl TimedAction {
    /// The instant of that edge (the first of several `pass-by`s).
    #[must_use]
    pub fn at(&self, edge: Edge) -> Option<f64> {
        self.marks.iter().find(|m| m.edge == edge).map(|m| m.t)
    }
}

/// Standing still on purpose.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wait {
    /// Seconds.
    pub start: f64,
    /// Seconds.
    pub end: f64,
}

/// One end of a tie: an instant of a row of the timetable.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TieEnd {
    /// Index into [`super::Timeline::actions`].
    pub action: usize,
    /// Which instant.
    pub edge: Edge,
    /// Seconds.
    pub t: f64,
}

/// "This waits for that", as scheduled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TimedTie {
    /// What is waited for.
    pub from: TieEnd,
    /// What waits.
    pub to: TieEnd,
    /// Least seconds between.
    pub lag: f64,
    /// Whether the author wrote it (else it was inferred).
    pub written: bool,
    /// Whether it holds up the goal.
    pub critical: bool,
}

/// A beat with its times.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TimedBeat {
    /// When its first action starts, seconds; the strip's rule and the caption change stand here.
    pub start: f64,
    /// When the next beat starts, or the set ends.
    pub end: f64,
}
