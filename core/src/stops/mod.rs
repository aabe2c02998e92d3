//! Where a walk through a set stops: at each beat, and wherever somebody waits for somebody else,
//! with the reason as data.

mod build;
#[cfg(test)]
mod tests;

pub use build::build;

use crate::set::{ActionId, Edge, PlayerId};
use alloc::vec::Vec;

/// An instant at which a walk through a set stops.
#[derive(Clone, Debug, PartialEq)]
pub struct Stop {
    /// Seconds.
    pub t: f64,
    /// Why; never empty. What a beat does comes first, then waits in time order.
    pub why: Vec<Why>,
}

/// Why a walk stops.
#[derive(Clone, Debug, PartialEq)]
pub enum Why {
    /// A beat starts, counted from 0.
    Beat(usize),
    /// It starts as the ball goes from one to another.
    Ball(Transfer),
    /// Somebody has waited for somebody else until now.
    Wait(Waiting),
}

/// The ball leaves one player, or comes to another.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Transfer {
    /// Whose it was.
    pub from: PlayerId,
    /// Whose it will be.
    pub to: PlayerId,
    /// From hand to hand.
    pub handoff: bool,
    /// Release or catch.
    pub edge: Edge,
    /// When, seconds.
    pub t: f64,
}

/// A wait that holds somebody up.
#[derive(Clone, Debug, PartialEq)]
pub struct Waiting {
    /// Who waits; both posts of a gate.
    pub who: Vec<PlayerId>,
    /// Which of their actions …
    pub action: ActionId,
    /// … and which instant of it may not come earlier.
    pub edge: Edge,
    /// When that is, seconds.
    pub t: f64,
    /// Until when they stand, seconds; `None`: they come on the run, and whoever is awaited stands
    /// so that both are there together.
    pub goes: Option<f64>,
    /// For what.
    pub awaited: Awaited,
    /// So many seconds after it; negative: before.
    pub lag: f64,
    /// Whether the author wrote it; else it follows from what is done.
    pub written: bool,
}

/// What is waited for: an instant of somebody's action.
#[derive(Clone, Debug, PartialEq)]
pub struct Awaited {
    /// Whose; both posts of a gate.
    pub who: Vec<PlayerId>,
    /// Which action.
    pub action: ActionId,
    /// Which instant of it.
    pub edge: Edge,
    /// When that is, seconds.
    pub t: f64,
    /// The other one of that instant: the screener who is passed, the receiver who catches.
    pub other: Option<PlayerId>,
}

impl Stop {
    /// Everybody who is named by the reasons, in number order.
    #[must_use]
    pub fn players(&self) -> Vec<PlayerId> {
        let named = |who: &PlayerId| {
            self.why.iter().any(|why| match why {
                Why::Beat(_) => false,
                Why::Ball(ball) => [ball.from, ball.to].contains(who),
                Why::Wait(wait) => wait.who.contains(who) || wait.awaited.who.contains(who),
            })
        };
        PlayerId::ALL.into_iter().filter(named).collect()
    }
}
