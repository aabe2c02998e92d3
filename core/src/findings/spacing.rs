//! Spacing: gaps, corners, the side of a backdoor, the safety.

use super::case::{Case, place};
use super::finding::{Finding, Severity};
use super::what::What;
use crate::athlete::Level;
use crate::math::{Point, length};
use crate::set::{ActionId, Edge, Kind, PlayerId, Verb};
use crate::timeline::Frame;
use alloc::vec::Vec;

/// Seconds before and after an action two share in which they may be near.
const SHARED: f64 = 1.0;
/// So far inside the arc one still counts as on the perimeter …
const PERIMETER: f64 = 0.3;
/// … and young players, who stand inside it.
const YOUTH: f64 = 0.9;

/// Two team mates whom one defender can guard.
pub(super) fn crowding(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    let (live, _) = case.live();
    let window = (live, case.goal);
    for (a, b) in case.pairs() {
        let from = window.0.max(formed(case, a, b));
        let near = |f: &Frame, least: f64| case.gap(a, b, f.t) < least && !shared(case, a, b, f.t);
        let wide = |f: &Frame| {
            let out = |p: PlayerId| place(f, p).is_some_and(|p| perimeter(case, p));
            out(a) && out(b) && near(f, s.neighbours)
        };
        let close = case
            .stretches((from, window.1), |f| near(f, s.apart))
            .into_iter()
            .filter(|(x, y)| y - x > s.apart_for);
        let wide = case
            .stretches((from, window.1), wide)
            .into_iter()
            .filter(|(x, y)| y - x > s.neighbours_for);
        // The nearer trouble tells the wider one too.
        let mut told: Vec<(f64, f64)> = Vec::new();
        for (x, y) in close.chain(wide) {
            if told.iter().any(|(p, q)| *p < y && x < *q) {
                continue;
            }
            told.push((x, y));
            out.push(crowded(case, [a, b], x, y));
        }
    }
    out
}

fn crowded(case: &Case<'_>, [a, b]: [PlayerId; 2], from: f64, to: f64) -> Finding {
    let mut best = (f64::INFINITY, from);
    for f in case.frames.iter().filter(|f| f.t >= from && f.t <= to) {
        let gap = case.gap(a, b, f.t);
        if gap < best.0 {
            best = (gap, f.t);
        }
    }
    let (gap, t) = best;
    let ids = [a, b].map(|p| case.last_move(p, t).map(|x| x.id));
    let what = What::Crowding {
        gap,
        seconds: to - from,
    };
    Finding::new(what, Severity::Warning, from)
        .until(to)
        .of([a, b])
        .at(case.player(a, t).at().midpoint(case.player(b, t).at()))
        .about(ids.into_iter().flatten())
}

/// Until one of the two first moves they stand in their starting formation.
fn formed(case: &Case<'_>, a: PlayerId, b: PlayerId) -> f64 {
    let first = |who: PlayerId| {
        let rows = case.timeline.actions().iter();
        rows.filter(|x| x.who == who && super::case::goes(x))
            .map(|x| x.start)
            .fold(case.timeline.duration(), f64::min)
    };
    first(a).min(first(b))
}

fn perimeter(case: &Case<'_>, p: Point) -> bool {
    let inside = match case.set.level {
        Level::U12 | Level::U14 => YOUTH,
        _ => PERIMETER,
    };
    length(p.to_vec2()) > case.court.marks().arc - inside
}

/// Whether `a` and `b` are in a common action around `t`: one screens for the other, both screen
/// for the same cutter, one hands off to the other, one comes as the other leaves.
fn shared(case: &Case<'_>, a: PlayerId, b: PlayerId, t: f64) -> bool {
    let both = |list: &[PlayerId]| list.contains(&a) && list.contains(&b);
    let mut together: Vec<PlayerId> = Vec::new();
    for x in case.timeline.actions() {
        let Some(w) = case.set.action(x.id) else {
            continue;
        };
        let now = t > x.start - SHARED && t < x.end + SHARED;
        if !now || !(w.who.contains(&a) || w.who.contains(&b)) {
            continue;
        }
        together.clear();
        together.extend(&w.who);
        match w.verb {
            Verb::Screen => together.extend(&w.for_whom),
            Verb::Handoff => together.extend(w.receiver()),
            Verb::Cut | Verb::Dribble => together.extend(used(case, x.id, x.who)),
            Verb::Pass | Verb::Shot | Verb::Hold | Verb::Fake => {}
        }
        if both(&together) {
            return true;
        }
    }
    // Two screeners of one cutter.
    let by = |who: PlayerId| {
        case.uses
            .iter()
            .filter(move |u| u.screener == who && (u.by - t).abs() < 2.0 * SHARED)
    };
    by(a).any(|u| by(b).any(|v| v.cut == u.cut))
}

fn used(case: &Case<'_>, id: ActionId, who: PlayerId) -> Vec<PlayerId> {
    let mine = |u: &&super::ScreenUse| u.cutter == who && case.id(u.cut) == Some(id);
    case.uses.iter().filter(mine).map(|u| u.screener).collect()
}

/// At the shot, or at the end: nobody in a corner, nobody back.
pub(super) fn floor(case: &Case<'_>) -> Vec<Finding> {
    let s = case.settings;
    let mut out = Vec::new();
    if case.set.players.len() < 5 {
        return out;
    }
    let t = case.goal;
    // Who is on the way there counts as there.
    let ends = |who: PlayerId| case.moving(who, t).map_or(t, |a| a.end);
    let ids = case.set.players.iter().map(|p| p.id);
    let places: Vec<Point> = ids.map(|p| case.player(p, ends(p)).at()).collect();
    if !places.iter().any(|p| case.in_corner(*p)) {
        out.push(Finding::new(What::CornersEmpty, Severity::Note, t));
    }
    let back = case.court.marks().free_throw + s.safety;
    if places.iter().all(|p| p.y < back) {
        out.push(Finding::new(What::NoSafety, Severity::Warning, t));
    }
    out
}

/// A backdoor into a side where a team mate, and so a defender, already is.
pub(super) fn backdoor(case: &Case<'_>) -> Vec<Finding> {
    let m = case.court.marks();
    let mut out = Vec::new();
    for x in case.timeline.actions() {
        let Some(t) = x.at(Edge::Plant).filter(|_| x.kind == Some(Kind::Backdoor)) else {
            continue;
        };
        let from = case.player(x.who, t).at();
        let Some(side) = (from.x.abs() > 0.9).then(|| from.x.signum()) else {
            continue;
        };
        let passer = case
            .throws
            .iter()
            .find(|p| p.to == x.who && p.catch > t)
            .map(|p| p.from);
        for player in &case.set.players {
            let p = case.player(player.id, x.end.min(case.goal)).at();
            let before = case.player(player.id, t).at();
            let inside = |p: Point| {
                let low = p.x * side > 0.0 && p.y < m.free_throw;
                low && !case.court.is_three(p) && !case.in_corner(p)
            };
            if player.id != x.who && Some(player.id) != passer && inside(p) && inside(before) {
                out.push(
                    Finding::new(What::SideNotEmptied, Severity::Note, t)
                        .of([x.who, player.id])
                        .at(before)
                        .about([x.id]),
                );
            }
        }
    }
    out
}
