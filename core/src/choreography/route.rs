//! The shape of a move by its kind: which knots it runs through, where it plants.

use super::LegMark;
use super::screen::Screen;
use super::{curl, feint};
use crate::court::Court;
use crate::math::{Point, Vec2, direction, distance, rotated};
use crate::path::Knot;
use crate::set::{Edge, Kind, PlayerId};
use alloc::vec::Vec;

/// The cue to read a screen: so far before the pass-by. Common practice, no source.
const CUE: f64 = 1.2;
/// Length of the walk that sets a screen up. Common practice, no source: 0.5–1.5 m.
const SET_UP: f64 = 0.65;
/// It keeps so far from the lines: a foot, and a little, metres.
const LINE: f64 = 0.25;
/// A shallow cut keeps so far from a dribbler who comes the other way, a loop still farther.
/// Common practice, no source: at least 1.5 m.
const SHALLOW: f64 = 1.75;
const LOOP: f64 = 2.2;
/// A cutter who clears out passes in front of the ring at this distance.
const RING_LANE: f64 = 1.3;
/// A way that leaves a screen keeps so far from the screener's middle.
const CLEAR: f64 = 0.62;
/// A fade stops so far from the screener, a rejecting cutter turns so far before.
const SHORT_OF_SCREEN: f64 = 0.8;

/// One screener passed on the way.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pass {
    /// Who.
    pub who: PlayerId,
    /// Where the cutter's middle is when level.
    pub at: Point,
    /// Which way the cutter goes there.
    pub along: Vec2,
    /// The body.
    pub screen: Screen,
    /// Of a gate: the other post, passed at the same point.
    pub with: Option<PlayerId>,
}

/// A point of the way in running order.
#[derive(Clone, Copy, Debug)]
pub(super) enum Stop {
    /// Through here.
    By(Point),
    /// Past a screener.
    Past(Pass),
}

/// What a route is made from.
#[derive(Clone, Copy, Debug)]
pub(super) struct Wanted<'a> {
    pub kind: Option<Kind>,
    pub from: Point,
    pub to: Point,
    pub stops: &'a [Stop],
    pub ball: Point,
    /// Whether the move flows out of another one, so its start is already the plant.
    pub flows: bool,
}

/// Knots and marks of a move.
#[derive(Clone, Debug)]
pub(super) struct Route {
    pub knots: Vec<Knot>,
    pub marks: Vec<LegMark>,
}

impl Route {
    fn new(from: Point) -> Self {
        Self {
            knots: alloc::vec![Knot::Smooth(from)],
            marks: Vec::new(),
        }
    }

    fn push(&mut self, knot: Knot) -> usize {
        self.knots.push(knot);
        self.knots.len() - 1
    }

    fn mark(&mut self, edge: Edge, of: Option<PlayerId>, knot: usize, before: f64) {
        self.marks.push(LegMark {
            edge,
            of,
            knot,
            before,
        });
    }

    fn plant(&mut self, at: Point) {
        let knot = self.push(Knot::Plant(at));
        self.mark(Edge::Plant, None, knot, 0.0);
    }

    fn past(&mut self, pass: &Pass, at: Knot) {
        let knot = self.push(at);
        for of in [Some(pass.who), pass.with].into_iter().flatten() {
            self.mark(Edge::Cue, Some(of), knot, CUE);
            self.mark(Edge::PassBy, Some(of), knot, 0.0);
        }
    }
}

/// The way of a move.
pub(super) fn route(w: &Wanted<'_>) -> Route {
    let mut r = Route::new(w.from);
    opening(w, &mut r);
    for stop in w.stops {
        match stop {
            Stop::By(p) => {
                r.push(Knot::Smooth(*p));
            }
            Stop::Past(pass) => {
                pass_screen(w, pass, &mut r);
            }
        }
    }
    bends(w, &mut r);
    if !r.marks.iter().any(|m| m.edge == Edge::Plant) {
        r.mark(Edge::Plant, None, 0, 0.0);
    }
    if distance(w.to, last(&r)) > 0.02 {
        r.push(Knot::Smooth(w.to));
    }
    r
}

fn last(r: &Route) -> Point {
    match r.knots.last() {
        Some(Knot::Smooth(p) | Knot::Plant(p) | Knot::Toward(p, _)) => *p,
        None => Point::ZERO,
    }
}

/// The bends that belong to a kind, where the author has written no way of their own.
fn bends(w: &Wanted<'_>, r: &mut Route) {
    let before = last(r);
    let (Some(way), long) = (direction(w.to - before), distance(before, w.to)) else {
        return;
    };
    if w.stops.iter().any(|s| matches!(s, Stop::By(_))) {
        return;
    }
    let across = Vec2::new(-way.y, way.x);
    // Toward half court, whichever way the move goes; a mirrored move bends the mirrored way.
    let high = if across.y.abs() < 1e-9 {
        None
    } else {
        Some(across * across.y.signum())
    };
    let middle = before.midpoint(w.to);
    let ring = if across.dot(Point::ZERO - middle) >= 0.0 {
        across
    } else {
        -across
    };
    let mut by = |share: f64, off: Vec2| {
        r.push(Knot::Smooth(before + (w.to - before) * share + off));
    };
    match w.kind {
        // Under the dribbler, and the same with a curl.
        Some(Kind::Shallow) => by(0.5, ring * SHALLOW.min(0.3 * long)),
        Some(Kind::Loop) => by(0.5, ring * LOOP.min(0.4 * long)),
        // Out of the lane by way of the ring.
        Some(Kind::Through) if before.x * w.to.x < 0.0 => {
            r.push(Knot::Smooth(Point::new(0.0, RING_LANE)));
        }
        Some(Kind::Crossover) => {
            if let Some(h) = high {
                let knot = r.push(Knot::Plant(
                    before + (w.to - before) * 0.5 + h * (0.2 * long),
                ));
                r.mark(Edge::Plant, None, knot, 0.0);
            }
        }
        // Back over the top of a drop.
        Some(Kind::Snake) => high.into_iter().for_each(|h| {
            by(0.33, h * 0.45);
            by(0.67, h * -0.45);
        }),
        _ => {}
    }
}

/// The steps that sell the cut before it goes where it goes.
fn opening(w: &Wanted<'_>, r: &mut Route) {
    let screened = w.stops.iter().any(|s| matches!(s, Stop::Past(_)));
    match w.kind {
        Some(Kind::Backdoor) if w.flows => {
            if let Some(first) = r.knots.first_mut() {
                *first = Knot::Plant(w.from);
            }
            r.mark(Edge::Plant, None, 0, 0.0);
        }
        Some(Kind::Basket | Kind::FortyFive) if w.flows => {}
        kind => {
            if let Some(at) = feint::plant(kind, w.from, w.to, w.ball, screened) {
                r.plant(at);
            }
        }
    }
}

/// Past one screener: straight by, round, or short of.
fn pass_screen(w: &Wanted<'_>, pass: &Pass, r: &mut Route) {
    let s = pass.screen.at;
    match w.kind {
        Some(Kind::Curl) => {
            r.past(pass, Knot::Toward(pass.at, pass.along));
            for knot in curl::round(s, pass.at, pass.along, w.to)
                .into_iter()
                .flatten()
            {
                r.push(knot);
            }
        }
        Some(Kind::Fade) => {
            let at = s + direction(w.from - s).unwrap_or(Vec2::new(0.0, -1.0)) * SHORT_OF_SCREEN;
            r.past(pass, Knot::Plant(at));
            let knot = r.knots.len() - 1;
            r.mark(Edge::Plant, None, knot, 0.0);
            round(s, at, w, r);
        }
        Some(Kind::Reject) => {
            let d = distance(w.from, s);
            let go = (d - SHORT_OF_SCREEN).max(0.3 * d);
            if let Some(way) = direction(s - w.from) {
                let at = w.from + way * go;
                r.past(pass, Knot::Plant(at));
                let knot = r.knots.len() - 1;
                r.mark(Edge::Plant, None, knot, 0.0);
                round(s, at, w, r);
            }
        }
        _ => r.past(pass, Knot::Toward(pass.at, pass.along)),
    }
}

/// Round the body at `s` where the way out of the plant would run through it: a fade on the outside,
/// others on the shorter side, else away from the ball.
fn round(s: Point, at: Point, w: &Wanted<'_>, r: &mut Route) {
    let Some(way) = direction(w.to - at) else {
        return;
    };
    let (ahead, beside) = ((s - at).dot(way), way.cross(s - at));
    if ahead <= 0.0 || ahead >= distance(at, w.to) || beside.abs() >= CLEAR {
        return;
    }
    let across = Vec2::new(way.y, -way.x);
    let side = if w.kind == Some(Kind::Fade) {
        across.dot(s - Point::ZERO)
    } else if beside.abs() > 1e-6 {
        beside
    } else {
        across.dot(s - w.ball)
    };
    r.push(Knot::Toward(s + across * CLEAR.copysign(side), way));
}

/// Where the walk that sets a screen up ends: away from the use side, inside the court, clear of
/// everybody; `None` where there is no room for it.
pub(super) fn set_up_point(
    from: Point,
    first: Point,
    court: &Court,
    others: impl Fn(Point) -> bool,
) -> Option<Point> {
    let go = direction(first - from)?;
    let turned = |deg: f64| from + rotated(go, deg.to_radians()) * SET_UP;
    [150.0, 120.0, 180.0, 90.0].into_iter().find_map(|deg| {
        let (a, b) = (turned(deg), turned(-deg));
        // Toward the ring first: the defender is led into the traffic.
        let near = |p: &Point| p.to_vec2().hypot2();
        let (na, nb) = (near(&a), near(&b));
        // Two as near go inward, which a mirrored set mirrors.
        let first = if (na - nb).abs() < 1e-9 {
            a.x.abs() <= b.x.abs()
        } else {
            na < nb
        };
        let (p, q) = if first { (a, b) } else { (b, a) };
        [p, q]
            .into_iter()
            .find(|c| court.in_bounds(*c, LINE) && others(*c))
    })
}
