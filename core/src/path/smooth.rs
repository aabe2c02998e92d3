//! From knots to cubics: which way the line runs at each knot and how far that is felt.

use super::Knot;
use crate::math::{CubicBez, Listed, Point, Vec2, atan2, direction, distance};
use alloc::vec::Vec;

/// Places nearer than this are one place.
const SAME_PLACE: f64 = 1e-6;
/// Longest control arm as a share of its chord. A quarter circle takes 0.39, so all gentler turns
/// come out round; a sharper one is drawn tighter instead of swinging wide.
const ARM_SHARE: f64 = 0.4;
/// Longest control arm, metres, where the line hardly turns and where it turns by a right angle or
/// more: runners turn within a few steps and run straight in between. Common practice, no source.
const ARM_MAX: [f64; 2] = [3.0, 1.6];

/// The line before it is measured.
pub(super) struct Line {
    pub(super) start: Point,
    pub(super) pieces: Vec<CubicBez>,
    /// Place and angle of each sharp turn.
    pub(super) plants: Vec<(usize, f64)>,
    /// The place of each knot as given: place `i` is where piece `i` begins.
    pub(super) places: Vec<usize>,
}

#[derive(Clone, Copy)]
struct Place {
    at: Point,
    /// A direction that was asked for.
    toward: Option<Vec2>,
    plant: bool,
}

pub(super) fn lay(knots: &[Knot]) -> Line {
    let (places, place_of) = gather(knots);
    let tangents: Vec<Option<Vec2>> = (0..places.len()).map(|i| tangent(&places, i)).listed();
    let mut pieces = Vec::with_capacity(places.len().saturating_sub(1));
    for (i, pair) in places.windows(2).enumerate() {
        let [a, b] = pair else { continue };
        let before = i.checked_sub(1).and_then(|j| places.get(j));
        let ends = [
            End {
                at: a.at,
                tangent: tangents.get(i).copied().flatten(),
                neighbour: before.map(|p| distance(p.at, a.at)),
            },
            End {
                at: b.at,
                tangent: tangents.get(i + 1).copied().flatten(),
                neighbour: places.get(i + 2).map(|p| distance(b.at, p.at)),
            },
        ];
        pieces.push(piece(ends));
    }
    let mut plants = Vec::new();
    for (i, pair) in pieces.windows(2).enumerate() {
        let [into, out] = pair else { continue };
        if places.get(i + 1).is_some_and(|p| p.plant) {
            let (a, b) = (into.p3 - into.p2, out.p1 - out.p0);
            plants.push((i + 1, atan2(a.cross(b).abs(), a.dot(b))));
        }
    }
    Line {
        start: places.first().map_or(Point::ZERO, |p| p.at),
        pieces,
        plants,
        places: place_of,
    }
}

/// Knots at one place become one; a place no number describes counts as the one before.
fn gather(knots: &[Knot]) -> (Vec<Place>, Vec<usize>) {
    let mut places: Vec<Place> = Vec::with_capacity(knots.len());
    let mut place_of = Vec::with_capacity(knots.len());
    for knot in knots {
        let (at, toward, plant) = match *knot {
            Knot::Smooth(p) => (p, None, false),
            Knot::Plant(p) => (p, None, true),
            Knot::Toward(p, d) => (p, direction(d), false),
        };
        match places.last_mut() {
            Some(last) if !at.is_finite() || distance(last.at, at) < SAME_PLACE => {
                last.plant |= plant;
                last.toward = last.toward.or(toward);
            }
            _ if at.is_finite() => places.push(Place { at, toward, plant }),
            _ => {}
        }
        place_of.push(places.len().saturating_sub(1));
    }
    (places, place_of)
}

/// The direction in which place `i` is passed; `None` where the line is free: at ends and plants.
fn tangent(places: &[Place], i: usize) -> Option<Vec2> {
    let here = places.get(i)?;
    if here.plant {
        return None;
    }
    if here.toward.is_some() {
        return here.toward;
    }
    // Along the line between its neighbours: a long run stays straight and a short one bends.
    let (before, after) = (places.get(i.checked_sub(1)?)?.at, places.get(i + 1)?.at);
    direction(after - before).or_else(|| {
        // Straight back: round on the ring's side, which a mirrored set mirrors.
        let into = direction(here.at - before)?;
        let side = Vec2::new(-into.y, into.x);
        let ring = Point::ZERO - here.at;
        Some(if side.dot(ring) < 0.0 { -side } else { side })
    })
}

struct End {
    at: Point,
    tangent: Option<Vec2>,
    /// Length of the chord on the other side of the knot.
    neighbour: Option<f64>,
}

fn piece([a, b]: [End; 2]) -> CubicBez {
    let chord = b.at - a.at;
    let length = distance(a.at, b.at);
    let along = direction(chord).unwrap_or(Vec2::new(0.0, -1.0));
    let out = a.tangent.unwrap_or_else(|| free(b.tangent, along));
    let into = b.tangent.unwrap_or_else(|| free(a.tangent, along));
    let arm = |end: &End, tangent: Vec2| {
        let cos = tangent.dot(along).max(0.0);
        if tangent.cross(along).abs() < 1e-12 && cos > 0.0 {
            return length / 3.0;
        }
        // What makes a circle's arc of an even turn.
        let round = 2.0 / (3.0 * (1.0 + cos));
        let [gentle, sharp] = ARM_MAX;
        // A short step into a long run turns within about a step.
        let cap = end.neighbour.unwrap_or(length);
        (length * round.min(ARM_SHARE))
            .min(cap)
            .min(sharp + (gentle - sharp) * cos)
    };
    CubicBez::new(
        a.at,
        a.at + arm(&a, out) * out,
        b.at - arm(&b, into) * into,
        b.at,
    )
}

/// The direction at a free end whose other end is passed along `other`: half its angle from the
/// chord, on the other side, so that the line begins (or ends) without curvature.
fn free(other: Option<Vec2>, along: Vec2) -> Vec2 {
    let Some(other) = other else { return along };
    let mirrored = 2.0 * other.dot(along) * along - other;
    direction(mirrored + along).unwrap_or(along)
}
