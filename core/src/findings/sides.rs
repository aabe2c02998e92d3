//! Sides: four on one of them, and a cutter parked in the way of a drive.

use super::case::{Case, place};
use super::finding::{Finding, Severity};
use super::what::What;
use crate::court::{Side, Spot, SpotName};
use crate::math::{Point, distance};
use crate::set::{PlayerId, Verb};
use crate::timeline::{BallUse, Frame};
use alloc::vec::Vec;

/// Nearer to the middle than this a player is on neither side, metres. Common practice, no source.
const MIDDLE: f64 = 0.9;
/// A drive has got there so near to the ring, metres: the edge of the paint. Common practice, no
/// source.
const PAINT: f64 = 2.5;

/// Four of five on one side for a while: the other has room that nobody uses, and their defenders
/// stand where the ball wants to go.
pub(super) fn loaded(case: &Case<'_>) -> Vec<Finding> {
    let mut out = Vec::new();
    if case.set.players.len() < 5 {
        return out;
    }
    for side in [-1.0, 1.0] {
        let those = |f: &Frame| -> Vec<PlayerId> {
            let players = case.set.players.iter().map(|p| p.id);
            players
                .filter(|p| place(f, *p).is_some_and(|p| p.x * side > MIDDLE))
                .collect()
        };
        for (from, to) in case.stretches(case.live(), |f| those(f).len() > 3) {
            let seconds = to - from;
            let middle = case.frames.iter().find(|f| f.t >= 0.5 * (from + to));
            let Some(f) = middle.filter(|_| seconds > case.settings.loaded) else {
                continue;
            };
            let who = those(f);
            let ids = who.iter().filter_map(|p| case.last_move(*p, f.t));
            out.push(
                Finding::new(What::SideLoaded { seconds }, Severity::Note, from)
                    .until(to)
                    .about(ids.map(|a| a.id))
                    .of(who),
            );
        }
    }
    out
}

/// Who has cut and stands at a dunker spot, or in the lane, when a drive gets to the paint: their
/// defender is the help.
pub(super) fn parked(case: &Case<'_>) -> Vec<Finding> {
    let mut out = Vec::new();
    for span in case.timeline.ball_spans() {
        let BallUse::Dribbled(driver) = span.what else {
            continue;
        };
        let mut inside = case.frames.iter().filter(|f| {
            let near = |p: Point| distance(p, Point::ZERO) < PAINT;
            f.t >= span.start && f.t <= span.end && place(f, driver).is_some_and(near)
        });
        // From the outside in.
        let Some(t) = inside.next().map(|f| f.t).filter(|t| *t > span.start + 0.1) else {
            continue;
        };
        for player in case.set.players.iter().filter(|p| p.id != driver) {
            let p = case.player(player.id, t);
            let cut = case
                .last_move(player.id, t)
                .filter(|a| a.verb == Verb::Cut && a.end < t);
            if let Some(cut) = cut
                && p.speed < case.settings.still
                && in_the_way(case, p.at())
            {
                let drive = case.last_move(driver, t).map(|a| a.id);
                out.push(
                    Finding::new(What::Parked, Severity::Note, t)
                        .of([driver, player.id])
                        .at(p.at())
                        .about(core::iter::once(cut.id).chain(drive)),
                );
            }
        }
    }
    out
}

fn in_the_way(case: &Case<'_>, p: Point) -> bool {
    let m = case.court.marks();
    let lane = p.x.abs() < m.lane && p.y < m.free_throw;
    let dunker = [Side::Left, Side::Right].into_iter().any(|side| {
        let spot = case.court.spot(Spot {
            name: SpotName::DunkerSpot,
            side: Some(side),
        });
        distance(p, spot) < case.settings.parked
    });
    lane || dunker
}
