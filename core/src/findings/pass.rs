//! Passes: when they leave, how they are caught, what they fly through.

use super::case::{Case, Throw};
use super::finding::{Finding, Severity};
use super::what::What;
use crate::math::{Point, angle_of, direction, distance, length, turn_between};
use crate::set::{Family, Kind, PlayerId};
use alloc::vec::Vec;

/// Releases a little before the pass-by still find the receiver open.
const NEARLY_BY: f64 = 0.05;
/// A pass right beside the passer or the receiver is no pass through a body.
const ENDS: f64 = 0.06;
/// A body's head is this far above its stature's mark, ball radius included.
const OVERHEAD: f64 = 0.12;

fn found(case: &Case<'_>, throw: &Throw, what: What, severity: Severity, t: f64) -> Finding {
    let who = if t < throw.catch {
        throw.from
    } else {
        throw.to
    };
    Finding::new(what, severity, t)
        .of([throw.from, throw.to])
        .at(case.player(who, t).at())
        .about([throw.id])
}

/// Before the receiver is open, off a running dribble, with the chest turned away.
pub(super) fn release(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    for throw in &case.throws {
        let t = throw.release;
        let by = case
            .uses
            .iter()
            .filter(|u| u.cutter == throw.to && u.by > t + NEARLY_BY)
            .filter(|u| case.action(u.cut).is_some_and(|a| a.start < t))
            .map(|u| (u.by, u.cut))
            .reduce(|a, b| if b.0 > a.0 { b } else { a });
        if let Some((by, cut)) = by {
            let what = What::PassBeforeOpen { by: by - t };
            let early = found(case, throw, what, Severity::Warning, t);
            out.push(early.until(by).about(case.id(cut)));
        }
        let passer = case.player(throw.from, t);
        // A pocket pass is thrown off the dribble by its nature.
        if throw.dribbled && passer.speed > s.still && throw.kind != Some(Kind::Pocket) {
            let what = What::PassOffDribble {
                speed: passer.speed,
            };
            let off = found(case, throw, what, Severity::Warning, t);
            let dribble = case.moving(throw.from, t).map(|a| a.id);
            out.push(off.about(dribble));
        }
        let target = case.player(throw.to, throw.catch).at();
        if let Some(way) = direction(target - passer.at()) {
            let angle = turn_between(passer.facing, angle_of(way)).abs();
            if angle > s.chest {
                let what = What::PasserTurned { angle };
                out.push(found(case, throw, what, Severity::Note, t));
            }
        }
    }
    out
}

/// Caught too fast, or by somebody who looks elsewhere.
pub(super) fn caught(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    for throw in &case.throws {
        let receiver = case.player(throw.to, throw.catch - 1e-3);
        let cut = case.last_move(throw.to, throw.catch);
        let kind = cut.and_then(|a| a.kind).map(|k| k.row().family);
        let end = cut.map_or(receiver.at(), |a| case.player(throw.to, a.end).at());
        let rim = kind == Some(Family::Rim)
            || distance(end, Point::ZERO) < s.rim && distance(receiver.at(), Point::ZERO) < s.rim;
        let top = if rim { s.rim_catch } else { s.catch };
        if receiver.speed > top {
            let what = What::FastCatch {
                speed: receiver.speed,
            };
            let fast = found(case, throw, what, Severity::Warning, throw.catch);
            out.push(fast.about(cut.map(|a| a.id)));
        }
        let t = (throw.release + s.look_after)
            .max(throw.catch - s.look_before)
            .min(throw.catch);
        let (eyes, ball) = (case.player(throw.to, t), case.timeline.ball(t));
        if let Some(way) = direction(Point::new(ball.x, ball.y) - eyes.at()) {
            let angle = turn_between(eyes.facing, angle_of(way)).abs();
            if angle > s.look {
                let what = What::NotLooking { angle };
                out.push(found(case, throw, what, Severity::Warning, t));
            }
        }
    }
    out
}

/// Through the body of a third player, at a height at which it is in the way.
pub(super) fn through(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    for throw in &case.throws {
        let others = PlayerId::ALL
            .into_iter()
            .filter(|p| *p != throw.from && *p != throw.to && case.set.player(*p).is_some());
        for other in others {
            let head = case.timeline.limits(other).stature + OVERHEAD;
            let mut near: Option<(f64, f64)> = None;
            for f in &case.frames {
                if f.t < throw.release + ENDS || f.t > throw.catch - ENDS || f.ball.z > head {
                    continue;
                }
                let at = case.player(other, f.t).at();
                let gap = length(at - Point::new(f.ball.x, f.ball.y));
                if gap < s.pass_clear && near.is_none_or(|n| gap < n.0) {
                    near = Some((gap, f.t));
                }
            }
            if let Some((gap, t)) = near {
                let what = What::PassThroughBody { gap };
                out.push(
                    Finding::new(what, Severity::Warning, t)
                        .of([throw.from, throw.to, other])
                        .at(case.player(other, t).at())
                        .about([throw.id]),
                );
            }
        }
    }
    out
}
