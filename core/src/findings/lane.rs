//! The lane: three seconds, and three bodies.

use super::case::{Case, place};
use super::finding::{Finding, Severity};
use super::what::What;
use crate::math::Point;
use crate::set::PlayerId;
use crate::timeline::Frame;
use alloc::vec::Vec;

/// Longer in the lane than the rules allow, or nearly so. One foot on a line is in; where the
/// rules' area goes on behind the end line, so does the count.
pub(super) fn three_seconds(case: &Case<'_>) -> Vec<Finding> {
    let limit = case.rules.lane;
    let mut out = Vec::new();
    for player in &case.set.players {
        let who = player.id;
        for (from, to) in case.stretches(case.live(), |f| inside(case, f, who)) {
            let seconds = to - from;
            if seconds <= case.settings.lane {
                continue;
            }
            let (severity, t) = if seconds > limit {
                (Severity::Violation, from + limit)
            } else {
                (Severity::Warning, from + case.settings.lane)
            };
            let what = What::ThreeSeconds { seconds, limit };
            let moves = case.timeline.actions().iter();
            let ids = moves.filter(|a| a.who == who && a.start < to && a.end > from);
            out.push(
                Finding::new(what, severity, t)
                    .until(to)
                    .of([who])
                    .at(case.player(who, t).at())
                    .about(ids.map(|a| a.id)),
            );
        }
    }
    out
}

/// Three or more in the lane at once: their defenders are there too.
pub(super) fn crowd(case: &Case<'_>) -> Vec<Finding> {
    let mut out = Vec::new();
    let many = |f: &Frame| those_inside(case, f).len() > 2;
    for (from, to) in case.stretches(case.live(), many) {
        let seconds = to - from;
        if seconds < case.settings.lane_crowd {
            continue;
        }
        let t = 0.5 * (from + to);
        let mut who: Vec<PlayerId> = Vec::new();
        for f in case.frames.iter().filter(|f| f.t >= from && f.t <= to) {
            for p in those_inside(case, f) {
                if !who.contains(&p) {
                    who.push(p);
                }
            }
        }
        who.sort_unstable();
        let ids: Vec<_> = who
            .iter()
            .filter_map(|p| case.last_move(*p, t))
            .map(|a| a.id)
            .collect();
        out.push(
            Finding::new(What::LaneCrowd { seconds }, Severity::Warning, from)
                .until(to)
                .at(Point::new(0.0, 0.5 * case.court.marks().free_throw))
                .of(who)
                .about(ids),
        );
    }
    out
}

fn those_inside(case: &Case<'_>, f: &Frame) -> Vec<PlayerId> {
    let players = case.set.players.iter().map(|p| p.id);
    players.filter(|p| inside(case, f, *p)).collect()
}

/// Whether a foot of `who` is in the lane.
fn inside(case: &Case<'_>, f: &Frame, who: PlayerId) -> bool {
    let m = case.court.marks();
    let foot = case.settings.foot;
    place(f, who).is_some_and(|p| {
        p.x.abs() <= m.lane + foot
            && p.y <= m.free_throw + foot
            && p.y >= -m.baseline - m.lane_behind
    })
}
