//! Passes against hands, and receivers with a defender on them.

use super::Against;
use crate::findings::case::Throw;
use crate::findings::{Finding, Severity, What};
use crate::looks::{Chance, Look};
use crate::math::{Point, distance};
use alloc::vec::Vec;

/// Steps of a search for the instant at which a receiver is open, seconds.
const STEP: f64 = 0.05;
/// A look is one within so much of the arc, metres. Common practice, no source.
const RANGE: f64 = 0.6;

/// The catches of passes, each with its pass.
fn catches<'a>(a: &'a Against<'_>) -> impl Iterator<Item = (&'a Look, &'a Throw)> {
    a.looks.iter().filter_map(|look| {
        let mut throws = a.case.throws.iter();
        let is_it = |t: &&Throw| t.id == look.action && (t.catch - look.t).abs() < 1e-6;
        (look.chance == Chance::Catch)
            .then(|| throws.find(is_it))
            .flatten()
            .map(|throw| (look, throw))
    })
}

fn found(throw: &Throw, what: What, severity: Severity, t: f64) -> Finding {
    Finding::new(what, severity, t)
        .of([throw.from, throw.to])
        .about([throw.id])
}

/// A hand that is there before the ball: for sure, or if its owner gambles.
pub(super) fn lane(a: &Against<'_>) -> Vec<Finding> {
    let s = a.case.settings;
    catches(a)
        .filter_map(|(look, throw)| {
            let by = -look.lane.filter(|l| l.is_finite())?;
            let what = if by > s.stolen {
                What::PassStolen { by }
            } else if by > s.shut {
                What::LaneShut { by }
            } else {
                return None;
            };
            let severity = if by > s.stolen {
                Severity::Warning
            } else {
                Severity::Note
            };
            let thief = look.hand?;
            Some(
                found(throw, what, severity, throw.release)
                    .until(throw.catch)
                    .by([thief])
                    .at(a.defender(thief, throw.release).at()),
            )
        })
        .collect()
}

/// A receiver with a defender on them at the catch; worse if a moment later there were none.
pub(super) fn covered(a: &Against<'_>) -> Vec<Finding> {
    let s = a.case.settings;
    catches(a)
        .filter(|(look, _)| look.separation < s.tight)
        .map(|(look, throw)| {
            let gap = look.separation;
            let (what, severity) = match opens(a, look) {
                Some(by) => (What::PassTooSoon { gap, by }, Severity::Warning),
                None => (What::TightCatch { gap }, Severity::Note),
            };
            found(throw, what, severity, throw.catch)
                .by(look.nearest)
                .at(look.at)
        })
        .collect()
}

/// Seconds until a receiver who is covered at the catch has room, if soon.
fn opens(a: &Against<'_>, look: &Look) -> Option<f64> {
    let s = a.case.settings;
    let steps = (s.soon / STEP).max(0.0) as u32;
    (1..=steps)
        .map(|i| f64::from(i) * STEP)
        .take_while(|by| look.t + by <= a.case.goal)
        .find(|by| {
            let t = look.t + by;
            let near = a.nearest(a.case.player(look.who, t).at(), t);
            near.is_some_and(|n| n.1 >= s.open)
        })
}

/// A defender is there at once, whoever has a chance in range of the ring.
pub(super) fn no_look(a: &Against<'_>) -> Vec<Finding> {
    let reach = a.case.court.marks().arc + RANGE;
    let near = |l: &&Look| distance(l.at, Point::ZERO) < reach;
    let mut best: Option<&Look> = None;
    for look in a.looks.iter().filter(near) {
        if !look.contested() {
            return Vec::new();
        }
        if best.is_none_or(|b| look.separation > b.separation) {
            best = Some(look);
        }
    }
    // A set without a shot is half a set: what is not there cannot be judged.
    let Some(best) = best.filter(|_| a.case.shot.is_some()) else {
        return Vec::new();
    };
    let gap = best.separation;
    Vec::from([Finding::new(What::NoLook { gap }, Severity::Note, best.t)
        .of([best.who])
        .by(best.nearest)
        .at(best.at)
        .about([best.action])])
}
