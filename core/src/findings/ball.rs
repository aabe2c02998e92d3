//! The ball: how far it flies, what it flies into, how long it stays on one side.

use super::case::Case;
use super::finding::{Finding, Severity};
use super::what::What;
use crate::math::distance;
use crate::set::Kind;
use crate::timeline::Frame;
use alloc::vec::Vec;

/// Lower and upper edge of the board above the floor, metres. From memory, the lowest and the
/// highest of all rule sets.
const BOARD: [f64; 2] = [2.75, 3.97];
/// Nearer to the middle than this the ball is on both sides, metres. Common practice, no source.
const MIDDLE: f64 = 0.9;

/// Passes that are made to go far.
const FAR: [Kind; 6] = [
    Kind::Skip,
    Kind::Lob,
    Kind::Overhead,
    Kind::Outlet,
    Kind::Baseball,
    Kind::Inbound,
];

/// A pass that is too long for its kind.
pub(super) fn far(case: &Case<'_>) -> Vec<Finding> {
    let mut out = Vec::new();
    for throw in &case.throws {
        let from = case.player(throw.from, throw.release).at();
        let gap = distance(from, case.player(throw.to, throw.catch).at());
        let made_for_it = throw.kind.is_some_and(|k| FAR.contains(&k));
        if gap > case.settings.far_pass && !made_for_it {
            out.push(
                Finding::new(What::LongPass { gap }, Severity::Note, throw.release)
                    .until(throw.catch)
                    .of([throw.from, throw.to])
                    .at(from)
                    .about([throw.id]),
            );
        }
    }
    out
}

/// A pass into the board.
pub(super) fn board(case: &Case<'_>) -> Vec<Finding> {
    let m = case.court.marks();
    let mut out = Vec::new();
    for throw in &case.throws {
        let flight = case
            .frames
            .iter()
            .filter(|f| f.t >= throw.release && f.t <= throw.catch);
        let mut before: Option<&Frame> = None;
        for f in flight {
            let hit = before.is_some_and(|b| {
                let crosses = (b.ball.y + m.board) * (f.ball.y + m.board) < 0.0;
                let x = 0.5 * (b.ball.x + f.ball.x);
                let z = 0.5 * (b.ball.z + f.ball.z);
                crosses && x.abs() < m.board_half && BOARD[0] < z && z < BOARD[1]
            });
            if hit {
                out.push(
                    Finding::new(What::PassThroughBoard, Severity::Warning, f.t)
                        .of([throw.from, throw.to])
                        .at(case.player(throw.from, throw.release).at())
                        .about([throw.id]),
                );
                break;
            }
            before = Some(f);
        }
    }
    out
}

/// A ball that stays on one side: the help can stand.
pub(super) fn one_side(case: &Case<'_>) -> Vec<Finding> {
    let mut out = Vec::new();
    for side in [-1.0, 1.0] {
        for (from, to) in case.stretches(case.live(), |f| f.ball.x * side > MIDDLE) {
            let seconds = to - from;
            if seconds > case.settings.one_side {
                let t = from + case.settings.one_side;
                out.push(
                    Finding::new(What::OneSide { seconds }, Severity::Note, t)
                        .until(to)
                        .of(case.timeline.ball(t).holder),
                );
            }
        }
    }
    out
}
