//! Gates: shut in time, and not on the cutter.

use super::case::Case;
use super::finding::{Finding, Severity};
use super::screen::ids;
use super::what::What;
use alloc::vec::Vec;

/// A gate that is not still when the nominal chaser comes (a reaction and a little behind the
/// cutter), or that shuts while its cutter is between the posts.
pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let mut out: Vec<Finding> = Vec::new();
    for u in &case.uses {
        let Some(timed) = u.screen else { continue };
        let Some(shut) = timed.shut else { continue };
        let slides = case.stretches((shut, timed.free), |f| {
            case.player(u.screener, f.t).speed > case.settings.still
        });
        let Some(still) = slides.last().map(|s| s.1) else {
            continue;
        };
        let twins = case
            .uses
            .iter()
            .filter(|o| o.cut == u.cut && o.screener != u.screener)
            .filter(|o| o.screen.is_some_and(|s| s.shut.is_some()))
            .map(|o| o.screener);
        let mut posts: Vec<_> = core::iter::once(u.screener).chain(twins).collect();
        posts.sort_unstable();
        let first_post = posts.first() == Some(&u.screener);
        let chaser = u.by + case.set.level.limits().reaction + case.settings.chase;
        if first_post && still > chaser {
            let what = What::GateLate { by: still - chaser };
            out.push(
                Finding::new(what, Severity::Warning, chaser)
                    .until(still)
                    .of(posts)
                    .at(timed.screen.at)
                    .about(ids(case, u)),
            );
        }
        let near = case
            .stretches((shut, still), |f| {
                case.gap(u.screener, u.cutter, f.t) < case.touch(u.screener, u.cutter)
            })
            .first()
            .map(|s| s.0);
        if let Some(t) = near {
            let gap = case.gap(u.screener, u.cutter, t);
            out.push(
                Finding::new(What::GateOnCutter { gap }, Severity::Warning, t)
                    .of([u.screener, u.cutter])
                    .at(timed.screen.at)
                    .about(ids(case, u)),
            );
        }
    }
    out
}
