//! When everything happens: nobody writes a clock time, this finds out.
//!
//! A row alternates runs and waits. A run is rigid: one unknown, its start. What waits for what is
//! woven from the written order (`weave`), the earliest schedule and the just-in-time one come from
//! a simple temporal network (`network`), catches in stride and detours are found in rounds around
//! it (`solve`, `detour`, `gate`).

mod ball;
mod block;
mod bond;
mod cycle;
mod detour;
mod gate;
pub mod network;
mod result;
mod run;
mod schedule;
mod solve;
mod stride;
mod takeover;
mod weave;

pub use run::{Run, RunLeg, RunMark};
pub use schedule::{PlacedRun, RowTimes, Schedule, ScreenTimes, TieTimes, TransferTimes};
pub use takeover::{Coming, Onward, Takeover};

// What is waited for by the trade's habit, for who tells it.
#[cfg(feature = "authoring")]
pub(crate) use {
    ball::{EARLY, GIVE},
    bond::{BEHIND, GONE, SAME_SPOT, SPLIT},
    weave::{LEAD, STAY},
};

use crate::choreography::{self, Revision};
use crate::court::Court;
use crate::fault::Faults;
use crate::set::Set;
#[cfg(feature = "authoring")]
use alloc::vec::Vec;

/// Rounds of laying anew: ways led round standing team mates, gates that would be late.
const ROUNDS: usize = 4;

/// The schedule of a set's main line on `court`.
///
/// # Errors
/// `contradictory-waits`: written ties that ask for more time than there is, told as the chain of
/// waits with each tie's place in the file and the seconds that are missing.
pub fn build(set: &Set, court: &Court) -> Result<Schedule, Faults> {
    scheduled(set, court, None)
}

/// The schedule of a set that goes on from where another was left.
///
/// # Errors
/// `contradictory-waits`, as [`build`].
#[cfg(feature = "authoring")]
pub fn resume(set: &Set, court: &Court, takeover: &Takeover) -> Result<Schedule, Faults> {
    scheduled(set, court, Some(takeover))
}

fn scheduled(set: &Set, court: &Court, takeover: Option<&Takeover>) -> Result<Schedule, Faults> {
    let mut revision = Revision::default();
    let mut rounds = 0;
    loop {
        let choreography = choreography::lay(set, court, &revision);
        #[cfg(feature = "authoring")]
        let choreography = match takeover {
            Some(takeover) => takeover.onward(choreography),
            None => choreography,
        };
        let schedule = solve::solve(set, choreography, takeover)?;
        #[cfg(feature = "authoring")]
        let schedule = Schedule {
            coming: takeover.and_then(|t| t.coming),
            ..schedule
        };
        let detours = detour::needed(&schedule, &revision.detours);
        // Whoever comes in under way has no say in the first steps; a detour laid from a standing
        // start would lead them back.
        #[cfg(feature = "authoring")]
        let detours: Vec<choreography::Detour> = detours
            .into_iter()
            .filter(|d| {
                let who = schedule.choreography.rows.get(d.row).map(|r| r.who.index());
                let entry = takeover.zip(who).and_then(|(t, who)| t.entries.get(who));
                entry.copied().flatten().is_none()
            })
            .collect();
        let gates = gate::late(set, &schedule);
        if rounds == ROUNDS || detours.is_empty() && gates.is_empty() {
            return Ok(schedule);
        }
        revision.detours.extend(detours);
        revision.late_gates.extend(gates);
        rounds += 1;
    }
}

#[cfg(test)]
mod tests;
