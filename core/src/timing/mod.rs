//! When everything happens: nobody writes a clock time, this finds out.
//!
//! A row alternates runs and waits. A run is rigid: one unknown, its start. What waits for what is
//! woven from the written order (`weave`), the earliest schedule and the just-in-time one come from
//! a simple temporal network (`network`), catches in stride and detours are found in rounds around
//! it (`solve`, `detour`).

mod ball;
mod block;
mod bond;
mod cycle;
mod detour;
pub mod network;
mod result;
mod run;
mod schedule;
mod solve;
mod stride;
mod weave;

pub use run::{Run, RunLeg, RunMark};
pub use schedule::{PlacedRun, RowTimes, Schedule, ScreenTimes, TieTimes, TransferTimes};

use crate::choreography;
use crate::court::Court;
use crate::fault::Faults;
use crate::set::Set;
use alloc::vec::Vec;

/// Rounds of leading ways round standing team mates.
const ROUNDS: usize = 4;

/// The schedule of a set's main line on `court`.
///
/// # Errors
/// `contradictory-waits`: written ties that ask for more time than there is, told as the chain of
/// waits with each tie's place in the file and the seconds that are missing.
pub fn build(set: &Set, court: &Court) -> Result<Schedule, Faults> {
    let mut detours = Vec::new();
    loop {
        let choreography = choreography::lay(set, court, &detours);
        let schedule = solve::solve(set, choreography)?;
        let more = detour::needed(&schedule, &detours);
        if more.is_empty() || detours.len() >= ROUNDS * 25 {
            return Ok(schedule);
        }
        detours.extend(more);
    }
}

#[cfg(test)]
mod tests;
