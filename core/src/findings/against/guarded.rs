//! The count of a closely guarded holder.

use super::Against;
use crate::findings::{Finding, Severity, What};
use crate::math::{Point, angle_of, direction, distance, turn_between};
use crate::set::PlayerId;
use crate::timeline::BallUse;
use alloc::vec::Vec;

/// A defender on guard faces the holder within this, radians. Common practice, no source.
const FACES: f64 = core::f64::consts::FRAC_PI_2;

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
        let (who, dribbled) = match span.what {
            BallUse::Held(who) => (who, false),
            BallUse::Dribbled(who) if case.rules.guarded_dribble => (who, true),
            _ => continue,
        };
        let window = (span.start.max(live), span.end.min(goal));
        let guarded = case.stretches(window, |f| {
            let counts = !case.rules.guarded_front || in_front(a, who, f.t);
            counts
                && a.defenders()
                    .any(|x| guards(a, x, who, dribbled, within, f.t))
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

/// Whether `x` stands in front of `who`, near enough; a dribbler who is past ends the count.
fn guards(
    a: &Against<'_>,
    x: PlayerId,
    who: PlayerId,
    dribbled: bool,
    within: f64,
    t: f64,
) -> bool {
    let (guard, man) = (a.defender(x, t), a.case.player(who, t).at());
    let way = man - guard.at();
    let faces =
        direction(way).is_none_or(|d| turn_between(guard.facing, angle_of(d)).abs() < FACES);
    let far = |p: Point| distance(p, Point::ZERO);
    let past = dribbled && far(man) < far(guard.at());
    a.gap(x, who, t) - 2.0 * a.case.settings.foot <= within && faces && !past
}
