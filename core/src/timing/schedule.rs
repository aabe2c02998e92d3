//! The schedule: what the solver found, in seconds.

#[cfg(feature = "authoring")]
use super::Coming;
use super::run::Run;
use crate::choreography::Choreography;
use crate::math::{Point, distance};
use crate::set::{Edge, Mark, PlayerId};
use alloc::vec::Vec;

/// A run with its start.
#[derive(Clone, Debug)]
pub struct PlacedRun {
    /// Seconds since the set began.
    pub start: f64,
    /// The run.
    pub run: Run,
}

/// One row of the choreography with its instants.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct RowTimes {
    /// First movement.
    pub start: f64,
    /// Last movement; of a screen, when the screener may leave.
    pub end: f64,
    /// All instants in time order.
    pub marks: Vec<Mark>,
    /// How much later it could be; `None`: nobody waits.
    pub slack: Option<f64>,
    /// Whether it holds up the goal.
    pub critical: bool,
    /// Standing between two parts of the action: from, to.
    pub waits: Vec<(f64, f64)>,
}

/// The ball on its way from one player to another.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TransferTimes {
    /// Index into the choreography's rows.
    pub row: usize,
    /// From whom.
    pub from: PlayerId,
    /// To whom.
    pub to: PlayerId,
    /// When it leaves the hands.
    pub release: f64,
    /// When it is caught.
    pub catch: f64,
    /// From hand to hand.
    pub handoff: bool,
}

/// When a screen stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ScreenTimes {
    /// Index into the choreography's screens.
    pub screen: usize,
    /// Still from here …
    pub set: f64,
    /// … until the screener may leave.
    pub free: f64,
}

/// A wait of one row for another as it came out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TieTimes {
    /// Row and instant waited for.
    pub from: (usize, Edge, f64),
    /// Row and instant that wait.
    pub to: (usize, Edge, f64),
    /// Least seconds between.
    pub lag: f64,
    /// Written by the author.
    pub written: bool,
    /// Holds up the goal.
    pub critical: bool,
    /// Gave way to break a contradiction.
    pub dropped: bool,
}

/// When everything of a set happens.
#[derive(Clone, Debug)]
pub struct Schedule {
    /// The set laid on the floor.
    pub choreography: Choreography,
    /// All runs, in order of start within a player.
    pub runs: Vec<PlacedRun>,
    /// By row of the choreography.
    pub rows: Vec<RowTimes>,
    /// Passes and hand-offs in time order.
    pub transfers: Vec<TransferTimes>,
    /// By screen.
    pub screens: Vec<ScreenTimes>,
    /// Waits of one player for another.
    pub ties: Vec<TieTimes>,
    /// When each beat opens.
    pub openings: Vec<f64>,
    /// The last shot's release, else the last catch, else the end.
    pub goal: f64,
    /// The pass that was under way before.
    #[cfg(feature = "authoring")]
    pub coming: Option<Coming>,
}

impl Schedule {
    /// Where a player is at `t`, and whether they move.
    #[must_use]
    pub fn place(&self, who: PlayerId, t: f64) -> Option<(Point, bool)> {
        let now = self.runs.iter().rfind(|r| r.run.who == who && r.start <= t);
        match now {
            Some(r) => {
                let sample = r.run.law().at(t - r.start);
                Some((
                    r.run.path().point(sample.s),
                    t < r.start + r.run.duration() && sample.v > 0.05,
                ))
            }
            None => self
                .choreography
                .starts
                .get(who.index())
                .copied()
                .flatten()
                .map(|p| (p, false)),
        }
    }

    /// Distance between two players at `t`, metres.
    #[must_use]
    pub fn gap(&self, a: PlayerId, b: PlayerId, t: f64) -> Option<f64> {
        Some(distance(self.place(a, t)?.0, self.place(b, t)?.0))
    }
}
