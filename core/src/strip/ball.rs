//! The ball's row.

use super::{BallBit, BallRow};
use crate::timeline::{BallUse, Timeline};
use alloc::vec::Vec;

/// The ball's stretches; what one player holds and dribbles is one bar.
pub(super) fn row(timeline: &Timeline) -> Vec<BallBit> {
    let mut out: Vec<BallBit> = Vec::new();
    for span in timeline.ball_spans() {
        let what = match span.what {
            BallUse::Held(who) | BallUse::Dribbled(who) => BallRow::With(who),
            // From hand to hand: the receiver's bar begins where the giver's ends.
            BallUse::Handoff { to, .. } => BallRow::With(to),
            BallUse::Pass { .. } => BallRow::Pass,
            BallUse::Shot(_) | BallUse::Through => BallRow::Shot,
        };
        match out.last_mut() {
            Some(last) if last.what == what => last.end = span.end,
            _ => out.push(BallBit {
                start: span.start,
                end: span.end,
                what,
            }),
        }
    }
    out
}
