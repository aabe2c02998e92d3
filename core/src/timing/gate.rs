//! Gates that would still be shutting when the chaser comes.

use super::schedule::Schedule;
use crate::choreography::{Part, SHUT_GAP, Screen};
use crate::guard::UNSEEN;
use crate::math::{Listed, distance};
use crate::set::{ActionId, Edge, Set};
use alloc::vec::Vec;

/// The gates whose slide ends after the nominal chaser, who is a reaction and a little behind the
/// last cutter, is there. One that only stands closer is not among them: it has been told already.
pub(super) fn late(set: &Set, schedule: &Schedule) -> Vec<ActionId> {
    let ch = &schedule.choreography;
    let is_late = |(index, screen): (usize, &Screen)| {
        let row = screen.row?;
        let (shut_at, twin) = (screen.shut_at?, ch.screens.get(screen.twin?)?);
        let who = ch.rows.get(row)?;
        let shoulder = set.limits_of(who.who).shoulder;
        if distance(shut_at, twin.shut_at?) > shoulder + 2.0 * SHUT_GAP {
            return None;
        }
        let still = schedule.runs.iter().find_map(|r| {
            let leg = r.run.leg(row, Part::Shut)?;
            Some(r.start + leg.t[1])
        })?;
        let last = ch.uses.iter().rfind(|u| u.screen == index)?;
        let by = schedule
            .rows
            .get(last.cutter)?
            .marks
            .iter()
            .find(|m| m.edge == Edge::PassBy && m.of == Some(screen.who))?;
        let chaser = by.t + set.level.limits().reaction + UNSEEN;
        (still > chaser).then_some(who.id)
    };
    let mut late: Vec<ActionId> = ch.screens.iter().enumerate().filter_map(is_late).listed();
    late.dedup();
    late
}
