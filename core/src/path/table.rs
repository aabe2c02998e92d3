//! Arc length: nodes along each cubic, and the parameter between them.

use crate::math::{CubicBez, Vec2, length, sqrt};
use alloc::vec::Vec;

/// A curved piece is halved at least this often …
const HALVINGS_MIN: u32 = 2;
/// … and at most this often, where a short arm makes a tight bend at the end of a long run.
const HALVINGS_MAX: u32 = 9;
/// Halved until the middle of a stretch is looked up this well, metres. The middle becomes a node
/// too, and the error falls with the fourth power of the spacing, so what remains is under 10 µm;
/// an independent geometry library checks that.
const MIDDLE_ACCURACY: f64 = 1e-5;
/// … and until it turns by less than about half a right angle (this is the cosine), so that a point
/// has one nearest place on it.
const STRETCH_TURN: f64 = 0.7;

/// A sample of a cubic.
#[derive(Clone, Copy, Debug)]
pub(super) struct Node {
    pub(super) s: f64,
    pub(super) u: f64,
    /// du/ds.
    pub(super) rate: f64,
    /// On the side of this piece; signed, 1/m.
    pub(super) curvature: f64,
    pub(super) piece: usize,
}

/// A stretch between two nodes, with the curvature inside it at both ends.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Span {
    pub(crate) s: [f64; 2],
    pub(crate) curvature: [f64; 2],
}

impl super::Path {
    /// The stretches between nodes, in order. Curvature may jump between two of them.
    pub(crate) fn spans(&self) -> impl Iterator<Item = Span> {
        self.nodes
            .iter()
            .zip(self.nodes.iter().skip(1))
            .filter(|(a, b)| a.piece == b.piece)
            .map(|(a, b)| Span {
                s: [a.s, b.s],
                curvature: [a.curvature, b.curvature],
            })
    }
}

/// The nodes of all `pieces` and the arc length after each.
pub(super) fn measure(pieces: &[CubicBez]) -> (Vec<Node>, Vec<f64>) {
    let mut nodes = Vec::with_capacity(pieces.len() * 10);
    let mut ends = Vec::with_capacity(pieces.len());
    let mut s = 0.0;
    for (piece, c) in pieces.iter().enumerate() {
        let mut tape = Tape {
            c,
            piece,
            nodes: &mut nodes,
        };
        let mut start = tape.node(0.0, s);
        if is_straight(c) {
            start.curvature = 0.0;
            let end = tape.node(1.0, s + length(c.p3 - c.p0));
            tape.nodes.extend([
                start,
                Node {
                    curvature: 0.0,
                    ..end
                },
            ]);
        } else {
            tape.nodes.push(start);
            tape.lay(start, 1.0, arc(c, 0.0, 1.0), 0);
        }
        s = nodes.last().map_or(s, |n| n.s);
        ends.push(s);
    }
    (nodes, ends)
}

/// Whether the arms lie on the chord; such a piece is also even in its parameter.
fn is_straight(c: &CubicBez) -> bool {
    let chord = c.p3 - c.p0;
    let off = |v: Vec2| length(3.0 * v - chord);
    off(c.p1 - c.p0).max(off(c.p3 - c.p2)) < 1e-9 * length(chord)
}

/// The nodes of one piece, as they are laid.
struct Tape<'a> {
    c: &'a CubicBez,
    piece: usize,
    nodes: &'a mut Vec<Node>,
}

impl Tape<'_> {
    fn node(&self, u: f64, s: f64) -> Node {
        Node {
            s,
            u,
            rate: 1.0 / length(derivative(self.c, u)).max(1e-9),
            curvature: curvature(self.c, u),
            piece: self.piece,
        }
    }

    /// Lays the nodes after `a` up to the parameter `end`, `whole` metres on.
    fn lay(&mut self, a: Node, end: f64, whole: f64, depth: u32) {
        let half = 0.5 * (end - a.u);
        let (first, second) = (arc(self.c, a.u, half), arc(self.c, a.u + half, half));
        let mid = self.node(a.u + half, a.s + first);
        let b = self.node(end, a.s + first + second);
        // The error in the middle, and one that is nothing there but has a slope.
        let off = (parameter(&a, &b, mid.s) - mid.u).abs();
        let h = b.s - a.s;
        let slope = 1.5 * (end - a.u) / h - 0.25 * (a.rate + b.rate);
        let lean = 0.1 * h * (slope - mid.rate).abs();
        let off = off.max(lean) / mid.rate;
        let fine = off.max((first + second - whole).abs()) < MIDDLE_ACCURACY;
        let turn = derivative(self.c, a.u).dot(derivative(self.c, end)) * a.rate * b.rate;
        if depth < HALVINGS_MIN || (depth < HALVINGS_MAX && !(fine && turn > STRETCH_TURN)) {
            self.lay(a, mid.u, first, depth + 1);
            let mid = self.nodes.last().copied().unwrap_or(mid);
            self.lay(mid, end, second, depth + 1);
        } else {
            self.nodes.extend([mid, b]);
        }
    }
}

/// Length of the arc from `u` on over `step`: Gauss–Legendre with three points.
fn arc(c: &CubicBez, u: f64, step: f64) -> f64 {
    const OFF: f64 = 0.774_596_669_241_483_4;
    let half = 0.5 * step;
    let mid = u + half;
    let speed = |x: f64| length(derivative(c, mid + x * half));
    half * (8.0 * speed(0.0) + 5.0 * (speed(-OFF) + speed(OFF))) / 9.0
}

/// The parameter at `s` between two nodes of a piece.
pub(super) fn parameter(a: &Node, b: &Node, s: f64) -> f64 {
    let h = b.s - a.s;
    if h <= 0.0 {
        return a.u;
    }
    let x = ((s - a.s) / h).clamp(0.0, 1.0);
    let (m0, m1, du) = (a.rate * h, b.rate * h, b.u - a.u);
    let u = a.u + x * (m0 + x * ((3.0 * du - 2.0 * m0 - m1) + x * (m0 + m1 - 2.0 * du)));
    u.clamp(a.u, b.u)
}

/// dB/du.
pub(super) fn derivative(c: &CubicBez, u: f64) -> Vec2 {
    let w = 1.0 - u;
    3.0 * (w * w * (c.p1 - c.p0) + 2.0 * w * u * (c.p2 - c.p1) + u * u * (c.p3 - c.p2))
}

/// Signed curvature; not kurbo's, which uses `powf`.
pub(super) fn curvature(c: &CubicBez, u: f64) -> f64 {
    let d = derivative(c, u);
    let (a, b) = (c.p2 - c.p1 - (c.p1 - c.p0), c.p3 - c.p2 - (c.p2 - c.p1));
    let dd = 6.0 * ((1.0 - u) * a + u * b);
    let m = d.dot(d);
    if m < 1e-12 {
        return 0.0;
    }
    d.cross(dd) / (m * sqrt(m))
}
