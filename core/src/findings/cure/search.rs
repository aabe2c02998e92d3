//! The search: a fixed list of edits a finding, tried in order; the first that holds is taken.
//!
//! An edit holds when the edited set can be scheduled, the finding is gone from it, and all that is
//! found in it together weighs less than before: no cure at the price of another illness.

use super::place::{SPOTS, elsewhere, ends_at, on, spots_near, steps};
use super::{Cure, Edit};
use crate::athlete::Pace;
use crate::court::{Court, SpotName};
use crate::findings::case::Case;
use crate::findings::{Finding, Settings, Severity, What, check};
use crate::math::{distance, sort_short};
use crate::set::{Action, ActionId, Set};
use crate::timeline::Timeline;
use crate::timing;
use alloc::vec::Vec;

/// Edits tried for one finding at most.
const TRIES: usize = 60;

/// All findings of a scheduled set in time order, each with its cure where one is found.
#[must_use]
pub fn with_cures(
    set: &Set,
    court: &Court,
    timeline: &Timeline,
    settings: &Settings,
) -> Vec<Finding> {
    let found = check(set, court, timeline, settings);
    let case = Case::new(set, court, timeline, settings);
    let cures: Vec<Option<Cure>> = found
        .iter()
        .map(|f| {
            edits(&case, f)
                .into_iter()
                .take(TRIES)
                .find_map(|edit| proved(&case, &found, f, edit))
        })
        .collect();
    let mut found = found;
    for (finding, cure) in found.iter_mut().zip(cures) {
        finding.cure = cure;
    }
    found
}

/// The edit with its price, where it holds.
fn proved(case: &Case<'_>, all: &[Finding], finding: &Finding, edit: Edit) -> Option<Cure> {
    let set = edit.apply(case.set);
    if set == *case.set {
        return None;
    }
    let schedule = timing::build(&set, case.court).ok()?;
    let timeline = Timeline::build(&set, case.court, schedule);
    let left = check(&set, case.court, &timeline, case.settings);
    let gone = !left.iter().any(|f| f.is_like(finding));
    if !gone || weight(&left) >= weight(all) {
        return None;
    }
    let goal = Case::new(&set, case.court, &timeline, case.settings).goal;
    Some(Cure {
        edit,
        price: goal - case.goal,
    })
}

fn weight(found: &[Finding]) -> u32 {
    let of = |f: &Finding| match f.severity {
        Severity::Note => 1,
        Severity::Warning => 10,
        Severity::Violation => 100,
    };
    found.iter().map(of).sum()
}

/// What is worth trying, in order.
fn edits(case: &Case<'_>, f: &Finding) -> Vec<Edit> {
    let (first, last) = (f.actions.first().copied(), f.actions.last().copied());
    let mut out: Vec<Edit> = Vec::new();
    match f.what {
        What::ScreenLate { .. } | What::MovingScreen { .. } | What::CutterEarly { .. } => {
            out.extend(last.map(|action| Edit::Wait { action }));
            out.extend(last.iter().flat_map(|a| shifts(case, *a, 1.0)));
            out.extend(first.iter().flat_map(|a| shifts(case, *a, -1.0)));
            out.extend(first.and_then(|a| faster(case, a)));
        }
        What::ScreenEarly { .. } | What::ScreenStays { .. } => {
            out.extend(first.iter().flat_map(|a| shifts(case, *a, 1.0)));
        }
        What::LooseBrush { .. }
        | What::ThroughScreener { .. }
        | What::ScreenAngle { .. }
        | What::ScreenSpot { .. } => {
            out.extend(first.iter().flat_map(|a| steps(case, *a)));
        }
        What::ScreenLeft { .. } => out.extend(last.map(|action| Edit::Wait { action })),
        What::FastCatch { .. } => {
            out.extend(passing(case, f, first));
            out.extend(last.and_then(|a| slower(case, a)));
        }
        What::HandoffFar { .. }
        | What::GiverMoves { .. }
        | What::PassBeforeOpen { .. }
        | What::PassOffDribble { .. }
        | What::NotLooking { .. }
        | What::PasserTurned { .. }
        | What::PassThroughBody { .. } => out.extend(passing(case, f, first)),
        What::ThrowInCount { .. } => {
            out.extend(first.iter().flat_map(|a| shifts(case, *a, -1.0)));
        }
        What::ThreeSeconds { .. } => out.extend(out_of_the_lane(case, f)),
        What::LaneCrowd { .. } => {
            out.extend(out_of_the_lane(case, f));
            out.extend(f.actions.iter().flat_map(|a| shifts(case, *a, 1.0)));
        }
        What::Collision { .. } => {
            out.extend(f.actions.iter().flat_map(|a| shifts(case, *a, 1.0)));
            out.extend(f.actions.iter().flat_map(|a| steps(case, *a)));
        }
        What::Crowding { .. } => {
            // Whoever comes last looks for another place.
            let mut later = f.actions.clone();
            sort_short(&mut later, |a, b| {
                end_of(case, *b).total_cmp(&end_of(case, *a))
            });
            out.extend(later.iter().flat_map(|a| elsewhere(case, *a)));
            out.extend(f.actions.iter().flat_map(|a| shifts(case, *a, 1.0)));
        }
        What::OutOfBounds { .. } => out.extend(f.actions.iter().flat_map(|a| steps(case, *a))),
        What::CornersEmpty => out.extend(ends_at(case, &[SpotName::Corner])),
        What::NoSafety => out.extend(ends_at(case, &[SpotName::Top, SpotName::Slot])),
        What::GateLate { .. }
        | What::GateOnCutter { .. }
        | What::ShotClock { .. }
        | What::LongSet { .. }
        | What::HolderStands { .. }
        | What::Statue { .. }
        | What::Backcourt
        | What::SideNotEmptied
        | What::AboveLevel { .. } => {}
    }
    out
}

/// The pass waits, else comes later.
fn passing(case: &Case<'_>, f: &Finding, pass: Option<ActionId>) -> Vec<Edit> {
    let Some(action) = pass else {
        return Vec::new();
    };
    let wait = core::iter::once(Edit::Wait { action });
    let moved = f.actions.iter().skip(1).map(|a| Edit::Wait { action: *a });
    wait.chain(shifts(case, action, 1.0)).chain(moved).collect()
}

/// Later (`sign` 1) or sooner by a tenth up to a second.
fn shifts(case: &Case<'_>, action: ActionId, sign: f64) -> Vec<Edit> {
    let after = anchor(case, action);
    (1..=10)
        .map(|i| Edit::Shift {
            action,
            by: sign * 0.1 * f64::from(i),
            after,
        })
        .collect()
}

/// What an action without ties waits for once it is to come later: the nearest start before it.
fn anchor(case: &Case<'_>, action: ActionId) -> Option<(ActionId, f64)> {
    let rows = case.timeline.actions();
    let start = rows.iter().find(|a| a.id == action)?.start;
    rows.iter()
        .filter(|a| a.id < action && a.start <= start)
        .max_by(|a, b| a.start.total_cmp(&b.start))
        .map(|a| (a.id, start - a.start))
}

fn faster(case: &Case<'_>, action: ActionId) -> Option<Edit> {
    let now = case.set.action(action)?.pace.unwrap_or_default();
    let pace = Pace::ALL.into_iter().find(|p| *p > now)?;
    Some(Edit::Pace { action, pace })
}

fn slower(case: &Case<'_>, action: ActionId) -> Option<Edit> {
    let now = case.set.action(action)?.pace.unwrap_or_default();
    let pace = Pace::ALL.into_iter().rfind(|p| *p < now)?;
    Some(Edit::Pace { action, pace })
}

fn end_of(case: &Case<'_>, action: ActionId) -> f64 {
    let rows = case.timeline.actions().iter().filter(|a| a.id == action);
    rows.map(|a| a.end).fold(0.0, f64::max)
}

/// Whoever stands in the lane starts, or ends, outside it.
fn out_of_the_lane(case: &Case<'_>, f: &Finding) -> Vec<Edit> {
    let mut out = Vec::new();
    for who in &f.players {
        let here = case.player(*who, f.t).at();
        let began = case.player(*who, 0.0).at();
        let stood = distance(here, began) < 0.3;
        if stood {
            let near = spots_near(case.court, began).into_iter().take(SPOTS);
            out.extend(near.map(|(spot, _)| Edit::Start {
                who: *who,
                to: on(spot),
            }));
        }
        let mine = |id: &&ActionId| {
            let a = case.set.action(**id);
            a.is_some_and(|a: &Action| a.who.contains(who))
        };
        for id in f.actions.iter().filter(mine) {
            out.extend(elsewhere(case, *id));
            out.extend(faster(case, *id));
        }
    }
    out
}
