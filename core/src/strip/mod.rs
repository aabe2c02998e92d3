//! The strip under the court as data: a row a player and one for the ball, what stands in each,
//! and the ties between rows. Times in seconds; nothing here knows of pixels.

mod ball;
mod build;
mod row;
#[cfg(test)]
mod tests;

pub use build::build;
#[cfg(feature = "authoring")]
pub(crate) use row::instants;

use crate::set::PlayerId;
use alloc::string::String;
use alloc::vec::Vec;

/// A whole strip.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Strip {
    /// Seconds the set lasts.
    pub duration: f64,
    /// The beats in order, one after the other.
    pub bands: Vec<Band>,
    /// One row a player, in number order.
    pub rows: Vec<Row>,
    /// The ball's row.
    pub ball: Vec<BallBit>,
    /// What waits for what, between rows.
    pub slurs: Vec<Slur>,
    /// Where it parts, in time order; filled by who knows the branches.
    #[cfg(feature = "authoring")]
    pub forks: Vec<Fork>,
}

/// Where a read leaves the line that is shown, or where the line shown left another.
#[cfg(feature = "authoring")]
#[derive(Clone, Debug, PartialEq)]
pub struct Fork {
    /// When, seconds.
    pub t: f64,
    /// What waits there: a line that is not shown.
    pub to: ForkTo,
}

/// A line that is not shown.
#[cfg(feature = "authoring")]
#[derive(Clone, Debug, PartialEq)]
pub enum ForkTo {
    /// The one that no read leaves, or the one this was left for.
    Drawn,
    /// That of a read, counted from 0, with its name where the author gave one.
    Read(usize, Option<String>),
}

/// A beat.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    /// Seconds.
    pub start: f64,
    /// Seconds.
    pub end: f64,
    /// Its name, where the author gave one.
    pub title: Option<String>,
}

/// What one player does.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// Whose.
    pub who: PlayerId,
    /// In time order.
    pub bits: Vec<Bit>,
    /// When they plant, read a screen, are set and catch, seconds; not in order.
    #[cfg(feature = "authoring")]
    pub instants: Vec<f64>,
}

/// One drawn thing of a row.
#[derive(Clone, Debug, PartialEq)]
pub struct Bit {
    /// What.
    pub what: BitKind,
    /// Seconds.
    pub start: f64,
    /// Seconds.
    pub end: f64,
    /// Whether it holds up the goal.
    pub critical: bool,
    /// Time to spare after it, seconds; `None`: nobody waits for it, or more of the same action
    /// follows.
    pub slack: Option<f64>,
}

/// What a bit of a row is.
#[derive(Clone, Debug, PartialEq)]
pub enum BitKind {
    /// A run; speeds in m/s at equal steps of time from its start to its end, both included.
    Move(Vec<f64>),
    /// A dribble.
    Dribble,
    /// Standing still on purpose.
    Wait,
    /// A screen from the instant it is set, for as long as it stands; when its gate shuts.
    Screen(Option<(f64, f64)>),
    /// A pass in the air.
    Pass,
    /// A hand-off; start and end are the instant of the exchange.
    Handoff,
    /// A shot, from its start to its release.
    Shot,
    /// A fake.
    Fake,
}

/// A stretch of the ball's row.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BallBit {
    /// Seconds.
    pub start: f64,
    /// Seconds.
    pub end: f64,
    /// Who has it, or how it flies.
    pub what: BallRow,
}

/// Who has the ball, or how it flies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BallRow {
    /// Held or dribbled.
    With(PlayerId),
    /// On its way to a team mate.
    Pass,
    /// On its way to the ring, and through it.
    Shot,
}

/// A tie between two rows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slur {
    /// Whose instant is waited for.
    pub from: PlayerId,
    /// When that is, seconds.
    pub from_t: f64,
    /// Who waits.
    pub to: PlayerId,
    /// When the waiting ends, seconds.
    pub to_t: f64,
    /// Whether it holds up the goal.
    pub critical: bool,
}
