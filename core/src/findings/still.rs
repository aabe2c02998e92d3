//! Statues: players without a part and without a look.

use super::case::Case;
use super::finding::{Finding, Severity};
use super::what::What;
use crate::math::turn_between;
use alloc::vec::Vec;

/// A chest that turns by more than this looks at something, radians.
const LOOKS: f64 = 0.17;

/// Nobody stands for long without moving a foot or turning the head. Whoever holds a corner or
/// screens has a part.
pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    for player in &case.set.players {
        let who = player.id;
        let mut facing = case.player(who, 0.0).facing;
        let mut since = 0.0;
        let mut longest = (0.0, 0.0);
        for f in case.frames.iter().filter(|f| f.t <= case.goal) {
            let p = case.player(who, f.t);
            let busy = p.speed > s.still
                || case.in_corner(p.at())
                || turn_between(facing, p.facing).abs() > LOOKS
                || f.ball.holder == Some(who)
                || case
                    .timeline
                    .actions()
                    .iter()
                    .any(|a| a.who == who && a.start <= f.t && f.t <= a.end);
            if busy {
                (facing, since) = (p.facing, f.t);
            }
            if f.t - since > longest.1 - longest.0 {
                longest = (since, f.t);
            }
        }
        let (from, to) = longest;
        if to - from > s.statue {
            out.push(
                Finding::new(What::Statue { seconds: to - from }, Severity::Note, from)
                    .until(to)
                    .of([who])
                    .at(case.player(who, from).at()),
            );
        }
    }
    out
}
