//! Round team mates who stand in the way.

use super::schedule::{PlacedRun, Schedule};
use crate::choreography::{Detour, Part, Step};
use crate::math::{Listed, Point, Vec2, direction, distance, length, sqrt};
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

/// Somebody at rest: where, from when to when.
struct Rest {
    who: PlayerId,
    at: Point,
    from: f64,
    to: f64,
}

/// The detours that the schedule still needs; each pair of leg and body only once.
pub(super) fn needed(schedule: &Schedule, known: &[Detour]) -> Vec<Detour> {
    let rests = rests(schedule);
    let mut found: Vec<Detour> = Vec::new();
    for placed in &schedule.runs {
        for leg in placed.run.legs.iter().filter(|l| l.part != Part::Shut) {
            for (round, body) in in_the_way(placed, leg.s, &rests) {
                let same = |d: &Detour| d.row == leg.row && d.part == leg.part && d.round == round;
                if known.iter().any(same)
                    || found.iter().any(same)
                    || uses(schedule, leg.row, round)
                {
                    continue;
                }
                if let Some(through) = way_round(placed, leg.s, body) {
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

/// Everybody's stays between runs.
fn rests(schedule: &Schedule) -> Vec<Rest> {
    let mut out = Vec::new();
    for who in PlayerId::ALL {
        let Some(mut at) = schedule
            .choreography
            .starts
            .get(who.index())
            .copied()
            .flatten()
        else {
            continue;
        };
        let mut from = f64::NEG_INFINITY;
        for r in schedule.runs.iter().filter(|r| r.run.who == who) {
            out.push(Rest {
                who,
                at,
                from,
                to: r.start,
            });
            from = r.start + r.run.duration();
            at = r.run.path().point(r.run.path().length());
        }
        out.push(Rest {
            who,
            at,
            from,
            to: f64::INFINITY,
        });
    }
    out
}

/// The bodies that a leg runs too near to while they stand, each with its nearest place.
fn in_the_way(placed: &PlacedRun, [s0, s1]: [f64; 2], rests: &[Rest]) -> Vec<(PlayerId, Point)> {
    let mut found: Vec<(PlayerId, Point, f64)> = Vec::new();
    let (from, to) = (s0 + ENDS, s1 - ENDS);
    let steps = crate::math::floor((to - from) / STEP) as i32;
    let (start, end) = (placed.start, placed.start + placed.run.duration());
    let meets = |r: &Rest| r.who != placed.run.who && r.from <= end && r.to >= start;
    let (mut i, mut node) = (0, 0);
    while i <= steps {
        let s = from + STEP * f64::from(i);
        let (p, _) = placed.run.path().pose_onward(s, &mut node);
        let mut nearest = f64::INFINITY;
        for rest in rests.iter().filter(|r| meets(r)) {
            let near = (rest.at - p).hypot2();
            nearest = nearest.min(near);
            if near >= TOO_NEAR * TOO_NEAR {
                continue;
            }
            let t = placed.start + placed.run.law().time_at(s);
            if t < rest.from || t > rest.to {
                continue;
            }
            match found.iter_mut().find(|f| f.0 == rest.who) {
                Some(f) if f.2 <= near => {}
                Some(f) => *f = (rest.who, rest.at, near),
                None => found.push((rest.who, rest.at, near)),
            }
        }
        // Nobody comes nearer than by the way that is run.
        i += ((sqrt(nearest) - TOO_NEAR) / STEP).max(1.0) as i32;
    }
    found.into_iter().map(|(who, at, _)| (who, at)).listed()
}

/// Whether the leg's action has to do with that body: its screen, its hand-off.
fn uses(schedule: &Schedule, row: usize, who: PlayerId) -> bool {
    let ch = &schedule.choreography;
    let mine = ch.rows.get(row).map(|r| r.who);
    ch.uses
        .iter()
        .any(|u| u.cutter == row && ch.screens.get(u.screen).is_some_and(|s| s.who == who))
        || ch.steps.iter().any(|step| match step {
            Step::Handoff(t) => {
                let from = ch.rows.get(t.row).map(|r| r.who);
                Some(t.to) == mine && from == Some(who) || from == mine && t.to == who
            }
            _ => false,
        })
}

/// The point beside a body through which the leg is led: on the shorter way.
fn way_round(placed: &PlacedRun, [s0, s1]: [f64; 2], body: Point) -> Option<Point> {
    let path = placed.run.path();
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
