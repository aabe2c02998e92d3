//! Who has the ball when, from the schedule: stretches of holding, dribbling, flying.

use super::{BallSpan, BallUse};
use crate::choreography::Step;
use crate::set::{Edge, PlayerId, Verb};
use crate::timing::{RowTimes, Schedule};
use alloc::vec::Vec;

/// Half the time in which a hand-off goes from hand to hand.
pub(super) const EXCHANGE: f64 = 0.1;
/// A taker who runs on for longer than this with the ball dribbles it. Common practice, no
/// source: two steps are no travel.
const CARRIES: f64 = 0.45;

/// The ball is picked up so long before it is passed, handed on or shot, where it is picked up at
/// all. Common practice, no source.
const PICK_UP: f64 = 0.2;

/// One stay of the ball with one player.
struct Stay {
    who: PlayerId,
    from: f64,
    to: f64,
}

/// The life of the ball, without a gap, from 0 to `end`.
pub(super) fn spans(schedule: &Schedule, first: Option<PlayerId>, end: f64) -> Vec<BallSpan> {
    let Some(first) = first else {
        return Vec::new();
    };
    let mut out: Vec<BallSpan> = Vec::new();
    let mut holder = first;
    let mut since = 0.0;
    for t in &schedule.transfers {
        let half = if t.handoff { EXCHANGE } else { 0.0 };
        let stay = Stay {
            who: holder,
            from: since,
            to: (t.release - half).max(since),
        };
        stays(schedule, &stay, &mut out);
        let (start, finish) = (stay.to, (t.catch + half).max(stay.to));
        let what = if t.handoff {
            BallUse::Handoff {
                from: t.from,
                to: t.to,
            }
        } else {
            let kind = schedule.choreography.rows.get(t.row).and_then(|r| r.kind);
            BallUse::Pass {
                from: t.from,
                to: t.to,
                kind,
            }
        };
        out.push(BallSpan {
            start,
            end: finish,
            what,
        });
        (holder, since) = (t.to, finish);
    }
    match shot(schedule) {
        Some((who, release)) if release >= since => {
            stays(
                schedule,
                &Stay {
                    who: holder,
                    from: since,
                    to: release,
                },
                &mut out,
            );
            out.push(BallSpan {
                start: release,
                end,
                what: BallUse::Shot(who),
            });
        }
        _ => stays(
            schedule,
            &Stay {
                who: holder,
                from: since,
                to: end,
            },
            &mut out,
        ),
    }
    out
}

/// The last shot: who and when it leaves.
pub(super) fn shot(schedule: &Schedule) -> Option<(PlayerId, f64)> {
    let step = schedule
        .choreography
        .steps
        .iter()
        .rev()
        .find_map(|s| match s {
            Step::Shot { row, .. } => Some(*row),
            _ => None,
        })?;
    let who = schedule.choreography.rows.get(step)?.who;
    let release = instant(schedule.rows.get(step)?, Edge::Release)?;
    Some((who, release))
}

pub(super) fn instant(row: &RowTimes, edge: Edge) -> Option<f64> {
    row.marks.iter().find(|m| m.edge == edge).map(|m| m.t)
}

/// Holds, dribbles once from the first dribble action to the last, holds.
fn stays(schedule: &Schedule, stay: &Stay, out: &mut Vec<BallSpan>) {
    let Stay { who, from, to } = *stay;
    let mut dribble: Option<(f64, f64)> = None;
    let rows = schedule.choreography.rows.iter().zip(&schedule.rows);
    for (_, times) in rows.filter(|(r, _)| r.who == who && r.verb == Verb::Dribble) {
        // A dribble that began with an earlier ball, passed off before it ended, is over.
        let this_ball = times.start > from - CARRIES;
        if this_ball && times.start < to - 1e-9 && times.end > from + 1e-9 {
            let (a, b) = dribble.unwrap_or((times.start, times.end));
            dribble = Some((a.min(times.start), b.max(times.end)));
        }
    }
    let taken = out
        .last()
        .is_some_and(|s| matches!(s.what, BallUse::Handoff { .. }));
    if taken {
        // Whoever takes the ball on the run dribbles for as long as the run goes on.
        let run = schedule
            .runs
            .iter()
            .rfind(|r| r.run.who == who && r.start < from);
        if let Some(stops) = run.map(|r| r.start + r.run.duration())
            && stops > from + CARRIES
        {
            let (_, b) = dribble.unwrap_or((from, stops));
            dribble = Some((from, b.max(stops)));
        }
    }
    let mut push = |start: f64, end: f64, what: BallUse| {
        if end > start {
            out.push(BallSpan { start, end, what });
        }
    };
    match dribble {
        Some((a, b)) => {
            let mut b = b.clamp(from, to);
            if b < to {
                b = b.min(to - PICK_UP);
            }
            let a = a.clamp(from, to);
            let b = b.max(a);
            push(from, a, BallUse::Held(who));
            push(a, b, BallUse::Dribbled(who));
            push(b, to, BallUse::Held(who));
        }
        None => push(from, to, BallUse::Held(who)),
    }
}
