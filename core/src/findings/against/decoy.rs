//! A loud side that is to pull help off a quiet one.

use super::Against;
use crate::findings::case::{Throw, is_move};
use crate::findings::{Finding, Severity, What};
use crate::math::{Point, distance};
use crate::set::{Family, PlayerId};
use crate::timeline::TimedAction;
use alloc::vec::Vec;

/// The quiet catch comes no later than this after the loud run ends, seconds. Common practice, no
/// source.
const AFTER: f64 = 1.5;

/// A cut to the ring that gets the ball while somebody runs off screens and gets none: the loud
/// side's defenders should be with their men, and one is at the ring.
pub(super) fn check(a: &Against<'_>) -> Vec<Finding> {
    let mut out = Vec::new();
    for (loud, screeners) in loud(a) {
        let quiet = a.case.throws.iter().find(|t| quiet(a, t, loud, &screeners));
        let Some(throw) = quiet else { continue };
        let t = throw.catch;
        let at = a.case.player(throw.to, t).at();
        let mut side: Vec<PlayerId> = screeners.clone();
        side.push(loud.who);
        let helper = a
            .defenders()
            .filter(|x| side.contains(&a.defence.man_of(*x, t)))
            .filter(|x| a.gap(*x, a.defence.man_of(*x, t), t) > a.case.settings.left_alone)
            .map(|x| (x, distance(a.defender(x, t).at(), at)))
            .filter(|(_, gap)| *gap < a.case.settings.helper)
            .reduce(|a, b| if b.1 < a.1 { b } else { a });
        if let Some((x, gap)) = helper {
            out.push(
                Finding::new(What::DecoyIgnored { gap }, Severity::Warning, t)
                    .of([loud.who, throw.to])
                    .by([x])
                    .at(a.defender(x, t).at())
                    .about([loud.id, throw.id]),
            );
        }
    }
    out
}

/// Runs off screens whose runner gets no pass until the end, with the screeners.
fn loud<'a>(a: &'a Against<'_>) -> impl Iterator<Item = (&'a TimedAction, Vec<PlayerId>)> {
    let actions = a.case.timeline.actions().iter().enumerate();
    actions.filter_map(|(i, row)| {
        let uses = a.case.uses.iter().filter(|u| u.cut == i);
        let screeners: Vec<PlayerId> = uses.map(|u| u.screener).collect();
        let mut throws = a.case.throws.iter();
        let gets = throws.any(|t| t.to == row.who && t.catch > row.start);
        let has = a.case.timeline.ball(row.start).holder == Some(row.who);
        (is_move(row) && !screeners.is_empty() && !gets && !has).then_some((row, screeners))
    })
}

/// Whether the pass goes to somebody else's cut to the ring at the time of the loud run.
fn quiet(a: &Against<'_>, throw: &Throw, loud: &TimedAction, screeners: &[PlayerId]) -> bool {
    let cut = a.case.last_move(throw.to, throw.catch);
    let rim = cut.is_some_and(|c| {
        c.kind.is_some_and(|k| k.row().family == Family::Rim)
            && distance(a.case.player(c.who, c.end).at(), Point::ZERO) < a.case.settings.rim
    });
    let now = throw.catch > loud.start && throw.release < loud.end + AFTER;
    let other = throw.to != loud.who && !screeners.contains(&throw.to);
    rim && now && other
}
