//! Counts of the whole set: throw-in, shot clock, length, and how long the ball stands.

use super::case::Case;
use super::finding::{Finding, Severity};
use super::what::What;
use crate::timeline::BallUse;
use alloc::vec::Vec;

/// What takes too long.
pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let mut out = Vec::new();
    out.extend(throw_in(case));
    out.extend(length(case));
    out.extend(holder(case));
    out
}

fn throw_in(case: &Case<'_>) -> Option<Finding> {
    let (who, _) = case.throw_in?;
    let limit = case.rules.throw_in;
    let throw = case.throws.iter().find(|t| t.from == who);
    let seconds = throw.map_or(case.timeline.duration(), |t| t.release);
    if seconds <= case.settings.throw_in {
        return None;
    }
    let severity = if seconds > limit {
        Severity::Violation
    } else {
        Severity::Note
    };
    Some(
        Finding::new(
            What::ThrowInCount { seconds, limit },
            severity,
            seconds.min(limit),
        )
        .of([who])
        .at(case.player(who, 0.0).at())
        .about(throw.map(|t| t.id)),
    )
}

fn length(case: &Case<'_>) -> Option<Finding> {
    // The clock starts when the ball is touched on the court.
    let from = case.throw_in.map_or(0.0, |t| t.1);
    let seconds = case.goal - from;
    match case.rules.shot_clock {
        Some(limit) if seconds > limit => Some(Finding::new(
            What::ShotClock { seconds, limit },
            Severity::Violation,
            from + limit,
        )),
        Some(_) if seconds > case.settings.long_set => Some(Finding::new(
            What::LongSet { seconds },
            Severity::Note,
            from + case.settings.long_set,
        )),
        _ => None,
    }
}

/// Holders who stand: spans of the same player join, the dribble breaks them.
fn holder(case: &Case<'_>) -> Vec<Finding> {
    let mut out = Vec::new();
    let (live, _) = case.live();
    for span in case.timeline.ball_spans() {
        let BallUse::Held(who) = span.what else {
            continue;
        };
        // The picture goes on a little after the last action.
        let (from, to) = (span.start.max(live), span.end.min(case.goal));
        if to - from > case.settings.holder {
            out.push(
                Finding::new(
                    What::HolderStands { seconds: to - from },
                    Severity::Warning,
                    from + case.settings.holder,
                )
                .until(to)
                .of([who])
                .at(case.player(who, to).at()),
            );
        }
    }
    out
}
