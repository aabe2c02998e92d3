//! Team mates who run into each other.

use super::case::{Case, ScreenUse};
use super::finding::{Finding, Severity};
use super::what::What;
use crate::math::{Point, distance};
use crate::set::{PlayerId, Verb};
use alloc::vec::Vec;

/// Seconds around a pass-by or an exchange in which the two are meant to be near.
const MEANT: f64 = 0.5;

/// Bodies that overlap outside a marked contact.
pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    for (a, b) in case.pairs() {
        let touch = case.touch(a, b);
        let met = case.stretches((0.0, case.timeline.duration()), |f| {
            case.gap(a, b, f.t) < touch && !meant(case, a, b, f.t)
        });
        for (from, to) in met {
            let mut gap = (f64::INFINITY, from);
            for f in case.frames.iter().filter(|f| f.t >= from && f.t <= to) {
                let d = case.gap(a, b, f.t);
                if d < gap.0 {
                    gap = (d, f.t);
                }
            }
            let (gap, t) = gap;
            let closing = closing(case, a, b, from);
            if closing < s.closing {
                continue;
            }
            let at = case.player(a, t).at().midpoint(case.player(b, t).at());
            let under_ring = distance(at, Point::ZERO) < s.under_ring;
            let severity = if under_ring {
                Severity::Violation
            } else {
                Severity::Warning
            };
            let ids = [a, b].map(|p| case.last_move(p, t).map(|x| x.id));
            out.push(
                Finding::new(
                    What::Collision {
                        gap,
                        closing,
                        under_ring,
                    },
                    severity,
                    t,
                )
                .of([a, b])
                .at(at)
                .about(ids.into_iter().flatten()),
            );
        }
    }
    out
}

/// Speed of one against the other just before they meet: both ways count, whether or not the
/// gap itself closes that fast.
fn closing(case: &Case<'_>, a: PlayerId, b: PlayerId, t: f64) -> f64 {
    const STEP: f64 = 0.04;
    let p = |who, t| case.player(who, t).at();
    let before = p(b, t - STEP) - p(a, t - STEP);
    let after = p(b, t) - p(a, t);
    crate::math::length(after - before) / STEP
}

/// Whether `a` and `b` are meant to be near at `t`: a cutter and the screener, posts of one screen,
/// giver and taker.
fn meant(case: &Case<'_>, a: PlayerId, b: PlayerId, t: f64) -> bool {
    let pair = |x: PlayerId, y: PlayerId| (x, y) == (a, b) || (y, x) == (a, b);
    let passes = |u: &ScreenUse| pair(u.cutter, u.screener) && (u.by - t).abs() < MEANT;
    let handed = case.timeline.actions().iter().any(|x| {
        let written = case.set.action(x.id);
        x.verb == Verb::Handoff
            && written.is_some_and(|w| w.receiver().is_some_and(|r| pair(x.who, r)))
            && t > x.start - MEANT
            && t < x.end + MEANT
    });
    let posts = case.timeline.actions().iter().any(|x| {
        let written = case.set.action(x.id);
        x.verb == Verb::Screen
            && written.is_some_and(|w| w.who.contains(&a) && w.who.contains(&b))
            && t > x.start
            && t < x.end + MEANT
    });
    case.uses.iter().any(passes) || handed || posts
}
