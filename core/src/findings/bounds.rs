//! Lines: out of bounds, and back over the half-court line.

use super::case::{Case, place};
use super::finding::{Finding, Severity};
use super::what::What;
use crate::set::Verb;
use alloc::vec::Vec;

/// A foot on or over a line, one finding a stay. The thrower is out until they first step in.
///
/// A holder out of bounds loses the ball; a screener must touch the court (NFHS 4-40, NCAA 4-35)
/// and may not leave it (NBA); a runner is only told.
pub(super) fn out(case: &Case<'_>) -> Vec<Finding> {
    let foot = case.settings.foot;
    let mut out = Vec::new();
    for player in &case.set.players {
        let who = player.id;
        let inside = |t: f64| case.court.in_bounds(case.player(who, t).at(), foot);
        let mut from = 0.0;
        if case.throw_in.is_some_and(|t| t.0 == who) {
            let stepped = case.frames.iter().find(|f| inside(f.t)).map(|f| f.t);
            from = stepped.unwrap_or(case.timeline.duration());
        }
        let m = case.court.marks();
        // Half court is no line to step over: the court goes on behind it.
        let over =
            |p: crate::math::Point| p.x.abs() + foot > m.sideline || p.y - foot < -m.baseline;
        let stays = case.stretches((from, case.timeline.duration()), |f| {
            place(f, who).is_some_and(over)
        });
        for (a, b) in stays {
            let ball = case
                .frames
                .iter()
                .any(|f| f.t >= a && f.t <= b && f.ball.holder == Some(who));
            let doing = case.last_move(who, b);
            let screens = doing.is_some_and(|x| x.verb == Verb::Screen);
            let severity = if ball || screens {
                Severity::Violation
            } else {
                Severity::Warning
            };
            let what = What::OutOfBounds { screens, ball };
            out.push(
                Finding::new(what, severity, a)
                    .until(b)
                    .of([who])
                    .at(case.player(who, 0.5 * (a + b)).at())
                    .about(doing.map(|x| x.id)),
            );
        }
    }
    out
}

/// Back over the line with the ball, once it has been in the frontcourt.
pub(super) fn backcourt(case: &Case<'_>) -> Vec<Finding> {
    let line = case.court.marks().frontcourt;
    let foot = case.settings.foot;
    // A throw-in is taken from the frontcourt here; where the rules let it go back, the first catch
    // settles where the ball is.
    let mut front = case.throw_in.is_some() && case.rules.throw_in_stays;
    let live = case.live().0;
    for f in case.frames.iter().filter(|f| f.t >= live) {
        let Some(who) = f.ball.holder else { continue };
        let Some(p) = place(f, who) else { continue };
        if front && p.y + foot > line && case.court.in_bounds(p, -1.0) {
            let doing = case.last_move(who, f.t);
            return Vec::from([Finding::new(What::Backcourt, Severity::Violation, f.t)
                .of([who])
                .at(p)
                .about(doing.map(|a| a.id))]);
        }
        front |= p.y + foot < line;
    }
    Vec::new()
}
