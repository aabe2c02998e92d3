//! The count of a closely guarded holder.

use super::Against;
use crate::findings::{Finding, Severity, What};
use crate::set::PlayerId;
use crate::timeline::BallUse;
use alloc::vec::Vec;

/// A holder, and by some rules a dribbler, whom a defender guards closely for as long as the rules
/// count, or nearly so. From forward foot to forward foot. Advice: the defence may choose to give
/// room.
pub(super) fn closely(a: &Against<'_>) -> Vec<Finding> {
    let case = a.case;
    let mut out = Vec::new();
    let Some(within) = case.court.marks().closely_guarded else {
        return out;
    };
    let (live, goal) = case.live();
    let limit = case.rules.guarded;
    for span in case.timeline.ball_spans() {
        let who = match span.what {
            BallUse::Held(who) => who,
            BallUse::Dribbled(who) if case.rules.guarded_dribble => who,
            _ => continue,
        };
        let window = (span.start.max(live), span.end.min(goal));
        let guarded = case.stretches(window, |f| {
            let counts = !case.rules.guarded_front || in_front(a, who, f.t);
            let feet = 2.0 * case.settings.foot;
            let near = |x: PlayerId| a.gap(x, who, f.t) - feet <= within;
            counts && a.defenders().any(near)
        });
        for (from, to) in guarded {
            let seconds = to - from;
            if seconds <= case.settings.guarded {
                continue;
            }
            let (severity, t) = if seconds > limit {
                (Severity::Warning, from + limit)
            } else {
                (Severity::Note, from + case.settings.guarded)
            };
            let at = case.player(who, t).at();
            let actions = case.timeline.actions().iter();
            let ids = actions.filter(|x| x.who == who && x.start < to && x.end > from);
            out.push(
                Finding::new(What::CloselyGuarded { seconds, limit }, severity, t)
                    .until(to)
                    .of([who])
                    .by(a.nearest(at, t).map(|n| n.0))
                    .at(at)
                    .about(ids.map(|x| x.id)),
            );
        }
    }
    out
}

fn in_front(a: &Against<'_>, who: PlayerId, t: f64) -> bool {
    a.case.player(who, t).y + a.case.settings.foot < a.case.court.marks().frontcourt
}
