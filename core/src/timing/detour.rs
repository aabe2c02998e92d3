//! Round team mates who stand in the way.

use super::schedule::{PlacedRun, Schedule};
use crate::choreography::{Detour, Part};
use crate::math::{Point, Vec2, direction, distance, length};
use crate::set::PlayerId;
use alloc::vec::Vec;

/// A runner who comes this near to a standing team mate goes round, metres between middles.
const TOO_NEAR: f64 = 0.55;
/// … at this distance.
const ROUND: f64 = 0.65;
/// Ends of a way are meant to be near somebody: a screen, a hand-off.
const ENDS: f64 = 0.45;
/// Step of the look along a way.
const STEP: f64 = 0.12;

/// The detours that the schedule still needs; each pair of leg and body only once.
pub(super) fn needed(schedule: &Schedule, known: &[Detour]) -> Vec<Detour> {
    let mut found = Vec::new();
    for placed in &schedule.runs {
        for leg in placed.run.legs.iter().filter(|l| l.part != Part::Shut) {
            for round in PlayerId::ALL {
                let seen = known
                    .iter()
                    .any(|d| d.row == leg.row && d.part == leg.part && d.round == round);
                if seen || round == placed.run.who || uses(schedule, leg.row, round) {
                    continue;
                }
                if let Some(through) = way_round(schedule, placed, leg.s, round) {
                    found.push(Detour {
                        row: leg.row,
                        part: leg.part,
                        round,
                        through,
                    });
                }
            }
        }
    }
    found
}

/// Whether the leg's action has to do with that body: its screen, its hand-off.
fn uses(schedule: &Schedule, row: usize, who: PlayerId) -> bool {
    let ch = &schedule.choreography;
    let mine = ch.rows.get(row).map(|r| r.who);
    ch.uses
        .iter()
        .any(|u| u.cutter == row && ch.screens.get(u.screen).is_some_and(|s| s.who == who))
        || schedule.transfers.iter().any(|t| {
            t.handoff
                && (Some(t.to) == mine && t.from == who || Some(t.from) == mine && t.to == who)
        })
}

fn way_round(
    schedule: &Schedule,
    placed: &PlacedRun,
    [s0, s1]: [f64; 2],
    round: PlayerId,
) -> Option<Point> {
    let path = placed.run.path();
    let mut nearest: Option<(f64, Point)> = None;
    let steps = crate::math::floor((s1 - s0) / STEP) as i32;
    for i in 0..=steps {
        let s = s0 + STEP * f64::from(i);
        if s < s0 + ENDS || s > s1 - ENDS {
            continue;
        }
        let t = placed.start + placed.run.law().time_at(s);
        let (body, moving) = schedule.place(round, t)?;
        let d = distance(path.point(s), body);
        if !moving && d < TOO_NEAR && nearest.is_none_or(|(n, _)| d < n) {
            nearest = Some((d, body));
        }
    }
    let (_, body) = nearest?;
    let (a, b) = (path.point(s0), path.point(s1));
    let way = direction(b - a)?;
    let across = Vec2::new(way.y, -way.x);
    let [p, q] = [body + across * ROUND, body - across * ROUND];
    let long = |p: Point| distance(a, p) + distance(p, b);
    // A tie goes away from the axis, so that a mirrored set is led round the mirrored side.
    let (lp, lq) = (long(p), long(q));
    let away = length(p.to_vec2()) >= length(q.to_vec2());
    Some(if (lp - lq).abs() < 1e-6 {
        if away { p } else { q }
    } else if lp < lq {
        p
    } else {
        q
    })
}
