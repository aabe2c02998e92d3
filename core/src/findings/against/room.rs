//! Room for the screened: a step for who cannot see the screen, a step or two for who is under way.
//!
//! FIBA Art. 33.7, NBA Rule 12-B Sec. III, NCAA Rule 4-60.7 (2011-13), NFHS Rule 4-40: one normal step
//! where the screen is out of view; one to two, by speed, where the opponent moves; nothing but no
//! contact where they stand and see it.

use super::Against;
use crate::findings::case::{ScreenUse, goes};
use crate::findings::screen::ids;
use crate::findings::{Finding, Severity, What};
use crate::math::{Vec2, angle_of, direction, distance, length, turn_between};
use crate::set::PlayerId;
use alloc::vec::Vec;

/// Slower than this toward a screen a defender stands, m/s. Common practice, no source.
const COMES: f64 = 1.0;
/// What happens so long after the cutter is by is no business of the screen, seconds. Common
/// practice, no source.
const AFTER: f64 = 1.0;

/// A screen that leaves the defender who runs into it less room than is due when it stands. Who
/// never gets there is owed nothing.
pub(super) fn check(a: &Against<'_>) -> Vec<Finding> {
    let mut out: Vec<Finding> = Vec::new();
    for u in &a.case.uses {
        let Some(stands) = stands(a, u) else { continue };
        let Some(x) = a.screened(u) else { continue };
        let (guard, body) = (a.defender(x, stands), a.case.player(u.screener, stands));
        let away = body.at() - guard.at();
        let Some(way) = direction(away) else { continue };
        let v = Vec2::new(guard.vx, guard.vy);
        let moving = v.dot(way) > COMES;
        let unseen = turn_between(guard.facing, angle_of(way)).abs() > a.case.settings.blind;
        let limits = a.case.timeline.limits(x);
        let step = a.case.settings.step * limits.stature;
        let due = if moving {
            step * (1.0 + (length(v) / limits.v_max).min(1.0))
        } else if unseen {
            step
        } else {
            continue;
        };
        let room = length(away) - limits.depth;
        if room >= due || !meets(a, x, u, stands) {
            continue;
        }
        let room = room.max(0.0);
        // Two posts are one screen: the nearer one tells it.
        let post = |f: &Finding| f.t == stands && f.actions == ids(a.case, u);
        let nearer =
            |f: &Finding| matches!(f.what, What::ScreenTooClose { room: r, .. } if r <= room);
        if out.iter().any(|f| post(f) && nearer(f)) {
            continue;
        }
        out.retain(|f| !post(f));
        out.push(
            Finding::new(
                What::ScreenTooClose { room, due, moving },
                Severity::Warning,
                stands,
            )
            .until(u.by.max(stands))
            .of([u.screener, u.cutter])
            .by([x])
            .at(body.at())
            .about(ids(a.case, u)),
        );
    }
    out
}

/// When the screener who came to screen stands: feet down, or the gate's slide over.
fn stands(a: &Against<'_>, u: &ScreenUse) -> Option<f64> {
    let screen = u.screen?;
    let row = a.case.action(screen.screen.row?)?;
    let came = goes(row) && screen.set > row.start + 0.1;
    let slid = screen.shut.and_then(|shut| {
        let slides = a.case.stretches((shut, screen.free), |f| {
            a.case.player(u.screener, f.t).speed > a.case.settings.still
        });
        slides.last().map(|s| s.1)
    });
    came.then(|| slid.unwrap_or(screen.set))
}

/// Whether the defender and the screener touch while the screen matters. Who has taken the screener
/// over comes to the own man.
fn meets(a: &Against<'_>, x: PlayerId, u: &ScreenUse, from: f64) -> bool {
    let touch = a.case.shoulders(u.screener, x);
    let to = (u.by.max(from) + AFTER).min(a.case.timeline.duration());
    let frames = a.case.frames.iter().filter(|f| f.t >= from && f.t <= to);
    frames.into_iter().any(|f| {
        let screener = a.case.player(u.screener, f.t).at();
        let runs_into = a.defence.man_of(x, f.t) != u.screener;
        runs_into && distance(a.defender(x, f.t).at(), screener) < touch
    })
}
