//! Change of pace, and who starts when.

use super::case::{Case, is_move};
use super::finding::{Finding, Severity};
use super::screen::ids;
use super::what::What;
use crate::set::{Edge, PlayerId, Verb};
use alloc::vec::Vec;

/// Without a plant the way to a screen ends so long before the pass-by, seconds. Common practice, no
/// source.
const LAST: f64 = 0.5;
/// The burst may go on for so long after it, seconds. Common practice, no source.
const BURST: f64 = 0.3;
/// Moves that begin so near to each other begin together, seconds. Common practice, no source.
const TOGETHER: f64 = 0.04;
/// So many of them are a march. Common practice, no source.
const MARCH: usize = 4;

/// A cutter who comes off a screen at the pace at which they came to it. Where the screen is late
/// there is nothing to change pace for, and that is told.
pub(super) fn one_speed(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    for u in case.uses.iter().filter(|u| u.first) {
        let Some(cut) = case.action(u.cut).filter(|a| a.verb == Verb::Cut) else {
            continue;
        };
        let turn = cut.at(Edge::Plant).unwrap_or(u.by - LAST);
        let late = u.screen.is_some_and(|w| w.set > u.by - s.lead);
        let (to, off) = (
            fastest(case, u.cutter, cut.start, turn),
            fastest(case, u.cutter, turn, u.by + BURST),
        );
        let ratio = off / to.max(s.still);
        if !late && to > s.waits && ratio < s.fast {
            out.push(
                Finding::new(What::OneSpeed { ratio }, Severity::Note, turn)
                    .until(u.by)
                    .of([u.cutter, u.screener])
                    .at(case.player(u.cutter, turn).at())
                    .about(ids(case, u).into_iter().rev()),
            );
        }
    }
    out
}

fn fastest(case: &Case<'_>, who: PlayerId, from: f64, to: f64) -> f64 {
    let frames = case.frames.iter().filter(|f| f.t >= from && f.t <= to);
    frames
        .map(|f| case.player(who, f.t).speed)
        .fold(0.0, f64::max)
}

/// Four or more who start to move in one instant: nobody waits for anybody.
pub(super) fn marching(case: &Case<'_>) -> Vec<Finding> {
    let mut out: Vec<Finding> = Vec::new();
    let moves = || case.timeline.actions().iter().filter(|a| is_move(a));
    let mut told = f64::NEG_INFINITY;
    for first in moves() {
        let t = first.start;
        let with = || moves().filter(|a| a.start >= t && a.start < t + TOGETHER);
        let mut who: Vec<PlayerId> = with().map(|a| a.who).collect();
        who.sort_unstable();
        who.dedup();
        if who.len() >= MARCH && t > told + TOGETHER {
            told = t;
            out.push(
                Finding::new(What::Marching, Severity::Note, t)
                    .of(who)
                    .about(with().map(|a| a.id)),
            );
        }
    }
    out
}
