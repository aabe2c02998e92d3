//! Hand-offs: near enough, from a giver who stands.

use super::case::Case;
use super::finding::{Finding, Severity};
use super::what::What;
use crate::math::distance;
use crate::set::{Edge, Verb};
use crate::timeline::BallUse;
use alloc::vec::Vec;

/// A ball that jumps from hand to hand, and a giver whose feet move.
pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    for span in case.timeline.ball_spans() {
        let BallUse::Handoff { from, to } = span.what else {
            continue;
        };
        let t = 0.5 * (span.start + span.end);
        let (giver, taker) = (case.player(from, t), case.player(to, t));
        let row = case.timeline.actions().iter().find(|a| {
            let release = a.at(Edge::Release).unwrap_or(f64::INFINITY);
            a.verb == Verb::Handoff && a.who == from && (release - t).abs() < 0.2
        });
        let found = |what| {
            Finding::new(what, Severity::Warning, t)
                .of([from, to])
                .at(giver.at())
                .about(row.map(|a| a.id))
        };
        let gap = distance(giver.hands(), taker.hands());
        if gap > s.handoff {
            out.push(found(What::HandoffFar { gap }));
        }
        let speed = case
            .frames
            .iter()
            .filter(|f| f.t >= t - s.giver && f.t <= t + 0.05)
            .map(|f| case.player(from, f.t).speed)
            .fold(0.0, f64::max);
        if speed > s.still {
            out.push(found(What::GiverMoves { speed }));
        }
    }
    out
}
