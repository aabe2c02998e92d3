//! What is worth trying for each finding, in order.

use super::Edit;
use super::place::{SPOTS, elsewhere, ends_at, on, spots_near, steps};
use crate::athlete::Pace;
use crate::court::SpotName;
use crate::findings::case::Case;
use crate::findings::{Finding, What};
use crate::math::{Point, distance, sort_short};
use crate::set::{Action, ActionId, Kind, PlayerId};
use alloc::vec::Vec;

/// Shorter by this much is tried, seconds, and nothing shorter than this is left.
const SHORTER: f64 = 0.5;
const SHORTEST: f64 = 0.3;

/// What is worth trying, in order.
pub(super) fn edits(case: &Case<'_>, f: &Finding) -> Vec<Edit> {
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
            out.extend(shorter(case));
        }
        What::ThreeSeconds { .. } => {
            out.extend(out_of_the_way(case, f));
            out.extend(shorter(case));
        }
        What::LaneCrowd { .. } => {
            out.extend(out_of_the_way(case, f));
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
        What::OutOfBounds { .. } | What::Backcourt => {
            out.extend(f.actions.iter().flat_map(|a| steps(case, *a)));
        }
        What::CornersEmpty => out.extend(ends_at(case, &[SpotName::Corner])),
        What::NoSafety => out.extend(ends_at(case, &[SpotName::Top, SpotName::Slot])),
        What::GateLate { .. } | What::GateOnCutter { .. } => {
            out.extend(last.map(|action| Edit::Wait { action }));
            out.extend(last.and_then(|a| faster(case, a)));
            out.extend(last.iter().flat_map(|a| shifts(case, *a, 1.0)));
            out.extend(first.iter().flat_map(|a| steps(case, *a)));
        }
        What::HolderStands { .. }
        | What::CloselyGuarded { .. }
        | What::ShotClock { .. }
        | What::LongSet { .. } => out.extend(shorter(case)),
        What::Statue { .. } => {
            out.extend(f.players.iter().flat_map(|who| starts(case, *who, true)));
        }
        What::SideNotEmptied | What::Parked | What::SideLoaded { .. } => {
            out.extend(out_of_the_way(case, f));
            out.extend(first.iter().flat_map(|a| elsewhere(case, *a)));
        }
        What::LongPass { .. } => out.extend(thrown(first, &[Kind::Overhead, Kind::Skip])),
        What::PassThroughBoard => out.extend(thrown(first, &[Kind::Bounce])),
        What::OneSpeed { .. } => {
            out.extend(first.map(|action| Edit::Wait { action }));
            out.extend(first.and_then(|a| faster(case, a)));
        }
        What::Marching => {
            out.extend(f.actions.iter().flat_map(|a| shifts(case, *a, 1.0)));
        }
        What::PassStolen { .. }
        | What::LaneShut { .. }
        | What::PassTooSoon { .. }
        | What::TightCatch { .. } => {
            out.extend(passing(case, f, first));
            // Nobody lobs to the perimeter.
            let rim = f.players.get(1).is_some_and(|to| {
                distance(case.player(*to, f.until.unwrap_or(f.t)).at(), Point::ZERO)
                    < case.settings.rim
            });
            let high = if rim { Kind::Lob } else { Kind::Overhead };
            out.extend(thrown(first, &[Kind::Bounce, high]));
            out.extend(first.iter().flat_map(|a| shifts(case, *a, -1.0)));
        }
        What::ScreenTooClose { .. } => {
            out.extend(last.iter().flat_map(|a| shifts(case, *a, 1.0)));
            out.extend(first.iter().flat_map(|a| shifts(case, *a, -1.0)));
            out.extend(first.iter().flat_map(|a| steps(case, *a)));
        }
        What::ScreenContact { .. } | What::RunsInto { .. } => {
            out.extend(first.iter().flat_map(|a| shifts(case, *a, 1.0)));
            out.extend(first.iter().flat_map(|a| steps(case, *a)));
        }
        What::DecoyIgnored { .. } => {
            out.extend(first.and_then(|a| faster(case, a)));
            out.extend(last.iter().flat_map(|a| shifts(case, *a, 1.0)));
        }
        // What is to be left out, or who is to have the ball, is the coach's to say.
        What::OneSide { .. }
        | What::NoLook { .. }
        | What::ReadNever { .. }
        | What::ReadWorse { .. }
        | What::ReadStolen { .. }
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

fn thrown(pass: Option<ActionId>, kinds: &[Kind]) -> Vec<Edit> {
    let edits = |action| {
        kinds.iter().map(move |kind| Edit::Throw {
            action,
            kind: *kind,
        })
    };
    pass.into_iter().flat_map(edits).collect()
}

/// What was written to take long takes less: the longest first.
fn shorter(case: &Case<'_>) -> Vec<Edit> {
    let mut long: Vec<(ActionId, f64)> = case
        .set
        .actions()
        .filter_map(|(id, a)| Some((id, a.takes?)))
        .collect();
    sort_short(&mut long, |a, b| b.1.total_cmp(&a.1));
    let mut out = Vec::new();
    for (action, takes) in long {
        let steps = ((takes - SHORTEST) / SHORTER).max(0.0) as u32;
        out.extend((1..=steps).map(|i| Edit::Takes {
            action,
            seconds: takes - SHORTER * f64::from(i),
        }));
    }
    out
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

/// A player starts on one of the nearest spots instead; `corners`: in a corner, where to stand is a
/// part.
fn starts(case: &Case<'_>, who: PlayerId, corners: bool) -> Vec<Edit> {
    let near = spots_near(case.court, case.player(who, 0.0).at());
    near.into_iter()
        .filter(|(spot, _)| !corners || spot.name == SpotName::Corner)
        .take(SPOTS)
        .map(|(spot, _)| Edit::Start { who, to: on(spot) })
        .collect()
}

/// Whoever stands there starts, or ends, elsewhere, or gets through sooner.
fn out_of_the_way(case: &Case<'_>, f: &Finding) -> Vec<Edit> {
    let mut out = Vec::new();
    for who in &f.players {
        let here = case.player(*who, f.t).at();
        if distance(here, case.player(*who, 0.0).at()) < 0.3 {
            out.extend(starts(case, *who, false));
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
