//! Screens: in time, still, near enough, square, and held long enough.

use super::case::{Case, ScreenUse, goes};
use super::finding::{Finding, Severity};
use super::what::What;
use crate::choreography::Screen;
use crate::guard::{Guarded, nominal};
use crate::math::{Point, angle_of, direction, turn_between};
use crate::set::{ActionId, Family, Kind, Off, OffSide, PlayerId, Via};
use crate::timeline::{TimedAction, TimedScreen};
use alloc::vec::Vec;

/// Seconds before and after the pass-by in which bodies come nearest.
const AROUND: f64 = 0.4;
/// A tight defender stands so far from the cutter, toward the ball.
const TIGHT: f64 = 1.2;

/// Late, early, or left by a cutter who does not wait.
pub(super) fn lead(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    for u in &case.uses {
        let Some(set) = u.screen.map(|s| s.set) else {
            continue;
        };
        let lead = u.by - set;
        let at = u.screen.map(|s| s.screen.at);
        let pair = [u.screener, u.cutter];
        let ids = ids(case, u);
        let found = |what, severity, t| {
            Finding::new(what, severity, t)
                .of(pair)
                .at(at)
                .about(ids.clone())
        };
        if lead < s.lead {
            let late = What::ScreenLate { after: -lead };
            out.push(found(late, Severity::Warning, u.by).until(set.max(u.by)));
        } else if u.first && lead > s.scouted && walks_to(case, u) {
            let early = What::ScreenEarly { stands: lead };
            out.push(found(early, Severity::Note, set).until(u.by));
        } else if let Some(by) = runs_before(case, u, set) {
            let what = What::CutterEarly { by };
            out.push(found(what, Severity::Warning, set - by).until(set));
        }
    }
    out
}

/// Whether the screener had to come: who screens where they stand cannot be too early.
fn walks_to(case: &Case<'_>, u: &ScreenUse) -> bool {
    let row = u.screen.and_then(|s| s.screen.row);
    row.and_then(|r| case.action(r))
        .is_some_and(|a| u.screen.is_some_and(|s| s.set > a.start + 0.1))
}

/// How long before the screen stands the cutter runs at it, where there was no time to spare.
fn runs_before(case: &Case<'_>, u: &ScreenUse, set: f64) -> Option<f64> {
    let s = case.settings;
    let cut = case.action(u.cut).filter(|_| u.first)?;
    if u.by - set > 2.0 * s.lead {
        return None;
    }
    let runs = case.stretches((cut.start, set), |f| {
        case.player(u.cutter, f.t).speed > s.waits
    });
    let (from, to) = *runs.last()?;
    (to > set - s.early && set - from > s.early).then_some(set - from)
}

/// Feet that move when the chaser comes. The chaser is a nominal one: a reaction and a little
/// behind the cutter.
pub(super) fn moving(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    for u in &case.uses {
        let chaser = u.by + case.set.level.limits().reaction + s.chase;
        let at = case.player(u.screener, u.by).at();
        // A gate's slide has its own checker; a giver of a hand-off too.
        let moves = match u.screen {
            Some(screen) => {
                let row = screen.screen.row.and_then(|r| case.action(r));
                let begun = row.is_some_and(|a| a.start < chaser);
                screen.set > u.by - s.feet && begun
            }
            None => !gives(case, u) && case.player(u.screener, u.by - s.feet).speed > s.still,
        };
        if moves {
            let speed = case.player(u.screener, u.by).speed;
            out.push(
                Finding::new(What::MovingScreen { speed }, Severity::Warning, u.by)
                    .until(chaser)
                    .of([u.screener, u.cutter])
                    .at(at)
                    .about(ids(case, u)),
            );
        }
    }
    out
}

/// Whether the screener is the giver of a hand-off to the cutter.
fn gives(case: &Case<'_>, u: &ScreenUse) -> bool {
    case.set.actions().any(|(_, a)| {
        a.verb == crate::set::Verb::Handoff
            && a.actor() == Some(u.screener)
            && a.receiver() == Some(u.cutter)
    })
}

/// A loose brush, and a way through the screener's body.
pub(super) fn distance(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    for u in &case.uses {
        // A screener who is not there yet, or gone, is another finding.
        let there = u.screen.is_none_or(|w| w.set <= u.by + 1e-6);
        if !there || round_a_gate(case, u) {
            continue;
        }
        let mut near = (f64::INFINITY, u.by);
        for f in &case.frames {
            if (f.t - u.by).abs() <= AROUND {
                let gap = case.gap(u.screener, u.cutter, f.t);
                if gap < near.0 {
                    near = (gap, f.t);
                }
            }
        }
        let (gap, t) = near;
        let found = |what, severity| {
            Finding::new(what, severity, t)
                .of([u.screener, u.cutter])
                .at(case.player(u.screener, t).at())
                .about(ids(case, u))
        };
        if gap < case.touch(u.screener, u.cutter) {
            out.push(found(What::ThroughScreener { gap }, Severity::Warning));
        } else if gap >= s.loose && gap.is_finite() {
            out.push(found(What::LooseBrush { gap }, Severity::Note));
        }
    }
    out
}

/// Who goes round a gate's post leaves room on purpose.
fn round_a_gate(case: &Case<'_>, u: &ScreenUse) -> bool {
    let Some(cut) = case.id(u.cut).and_then(|id| case.set.action(id)) else {
        return false;
    };
    let own = |o: &Off| (o.who == u.screener).then_some(o.side).flatten();
    let via = cut.via.iter().find_map(|v| match v {
        Via::Off(o) => own(o),
        Via::Place(_) => None,
    });
    let side = cut.off.iter().find_map(own).or(via).or(cut.side);
    matches!(side, Some(OffSide::Left | OffSide::Right))
}

/// A body that is not square to the way of the screened defender, or stands where none can be.
///
/// The defender is, as the cutter starts, the nominal one or one who plays tight: what is found is
/// wrong against both.
pub(super) fn angle(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    for u in &case.uses {
        let Some(timed) = u.screen else { continue };
        let screen = timed.screen;
        let row = screen.row.and_then(|r| case.action(r));
        let kind = row.and_then(|a| a.kind);
        let single = kind.is_none_or(|k| k.row().family == Family::Single);
        let ball = case.timeline.ball(timed.set).holder == Some(u.cutter);
        if !single || ball || !u.first {
            continue;
        }
        // Before the cutter walks the defender at the screen.
        let Some(cut) = case.action(u.cut) else {
            continue;
        };
        let from = case.player(u.cutter, cut.start).at();
        let b = case.timeline.ball(cut.start);
        let guarded = Guarded {
            at: from,
            ball: false,
        };
        let ball = Point::new(b.x, b.y);
        let c = case.player(u.cutter, cut.end).at();
        let near = from.lerp(ball, TIGHT / crate::math::distance(from, ball).max(TIGHT));
        let seen = [nominal(guarded, ball), near]
            .into_iter()
            .filter_map(|x| against(&screen, x, c))
            .reduce(|a, b| (a.0.min(b.0), a.1.min(b.1)));
        let Some((apart, off)) = seen else { continue };
        let found = |what, severity| {
            Finding::new(what, severity, timed.set)
                .of([u.screener, u.cutter])
                .at(screen.at)
                .about(ids(case, u))
        };
        if apart > s.spot {
            out.push(found(What::ScreenSpot { apart }, Severity::Note));
        } else if off > s.square {
            out.push(found(What::ScreenAngle { off }, Severity::Note));
        }
    }
    out
}

/// How far apart chest and back want to look, and how far the body is off square, against a
/// defender at `x` on the way to `c`.
fn against(screen: &Screen, x: Point, c: Point) -> Option<(f64, f64)> {
    let to_x = direction(x - screen.at)?;
    let from_c = direction(screen.at - c)?;
    let way = direction(c - x)?;
    let apart = turn_between(angle_of(to_x), angle_of(from_c)).abs();
    let off = turn_between(screen.facing, angle_of(-way)).abs();
    Some((apart, off))
}

/// A screener who leaves before the cutter is by, or stands on with a move of their own to make.
pub(super) fn leaves(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    for u in &case.uses {
        let Some(timed) = u.screen else { continue };
        let last = case
            .uses
            .iter()
            .filter(|o| same_screen(o, u))
            .map(|o| o.by)
            .fold(u.by, f64::max);
        let next = next_move(case, u.screener, timed.set);
        // A later beat opens when the coach has it open.
        let same_beat = |timed: &TimedScreen, next: Option<&TimedAction>| {
            let row = timed.screen.row.and_then(|r| case.id(r));
            timed.shut.is_none() && row.map(|r| r.beat) == next.map(|a| a.id.beat)
        };
        let found = |what, severity, t| {
            Finding::new(what, severity, t)
                .of([u.screener, u.cutter])
                .at(timed.screen.at)
                .about(ids(case, u).into_iter().chain(next.map(|a| a.id)))
        };
        let Some(start) = next.map(|a| a.start) else {
            continue;
        };
        if start < u.by - 0.02 && timed.set < u.by {
            let by = u.by - start;
            out.push(found(What::ScreenLeft { by }, Severity::Warning, start));
        } else if u.by >= last && start > last + s.stays && same_beat(&timed, next) {
            let stays = start - last;
            out.push(found(What::ScreenStays { stays }, Severity::Note, last).until(start));
        }
    }
    out
}

fn same_screen(a: &ScreenUse, b: &ScreenUse) -> bool {
    let row = |u: &ScreenUse| u.screen.and_then(|s| s.screen.row);
    a.screener == b.screener && row(a) == row(b)
}

/// The first move that `who` begins after `t`.
fn next_move<'a>(case: &Case<'a>, who: PlayerId, t: f64) -> Option<&'a TimedAction> {
    case.timeline
        .actions()
        .iter()
        .filter(|a| a.who == who && goes(a) && a.start > t)
        .min_by(|a, b| a.start.total_cmp(&b.start))
}

/// The screen's action, then the cut.
pub(super) fn ids(case: &Case<'_>, u: &ScreenUse) -> Vec<ActionId> {
    let screen = u.screen.and_then(|s| s.screen.row).and_then(|r| case.id(r));
    screen.into_iter().chain(case.id(u.cut)).collect()
}

/// Whether an action of that kind is a blind screen.
pub(super) fn blind(kind: Option<Kind>) -> bool {
    const BLIND: [Kind; 5] = [
        Kind::Back,
        Kind::Rip,
        Kind::Hammer,
        Kind::Flare,
        Kind::BackOnTheRoller,
    ];
    kind.is_some_and(|k| BLIND.contains(&k))
}
