//! Arc length: nodes along each cubic, and the parameter between them.

use crate::math::{CubicBez, Vec2, length, sqrt};
use alloc::vec::Vec;

/// A curved piece is laid in this many parts, each halved …
const PARTS: u32 = 4;
/// … at most this often, where a short arm makes a tight bend at the end of a long run.
const HALVINGS: u32 = 7;
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
            rate: Rate::of(c),
            piece,
            nodes: &mut nodes,
        };
        let mut from = tape.mark(0.0, s);
        if is_straight(c) {
            from.node.curvature = 0.0;
            let end = tape.mark(1.0, s + length(c.p3 - c.p0)).node;
            let end = Node {
                curvature: 0.0,
                ..end
            };
            tape.nodes.extend([from.node, end]);
        } else {
            tape.nodes.push(from.node);
            let step = 1.0 / f64::from(PARTS);
            for part in 1..=PARTS {
                let whole = tape.rate.arc(from.node.u, step);
                from = tape.lay(from, step * f64::from(part), whole, HALVINGS);
            }
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
    rate: Rate,
    piece: usize,
    nodes: &'a mut Vec<Node>,
}

/// A node and the derivative there.
#[derive(Clone, Copy)]
struct Mark {
    node: Node,
    rate: Vec2,
}

impl Tape<'_> {
    fn mark(&self, u: f64, s: f64) -> Mark {
        let rate = self.rate.at(u);
        let m = rate.dot(rate).max(1e-18);
        let speed = sqrt(m);
        let node = Node {
            s,
            u,
            rate: 1.0 / speed,
            curvature: rate.cross(self.rate.slope(u)) / (m * speed),
            piece: self.piece,
        };
        Mark { node, rate }
    }

    /// Lays the nodes after `from` up to the parameter `end`, `whole` metres on; the last of them.
    fn lay(&mut self, from: Mark, end: f64, whole: f64, halvings: u32) -> Mark {
        let a = from.node;
        let half = 0.5 * (end - a.u);
        let (first, second) = (self.rate.arc(a.u, half), self.rate.arc(a.u + half, half));
        let mid = self.mark(a.u + half, a.s + first);
        let to = self.mark(end, a.s + first + second);
        let (m, b) = (mid.node, to.node);
        // The error in the middle, and one that is nothing there but has a slope.
        let off = (parameter(&a, &b, m.s) - m.u).abs();
        let h = b.s - a.s;
        let slope = 1.5 * (end - a.u) / h - 0.25 * (a.rate + b.rate);
        let lean = 0.1 * h * (slope - m.rate).abs();
        let off = off.max(lean) / m.rate;
        let fine = off.max((first + second - whole).abs()) < MIDDLE_ACCURACY;
        let turn = from.rate.dot(to.rate) * a.rate * b.rate;
        if halvings == 0 || (fine && turn > STRETCH_TURN) {
            self.nodes.extend([m, b]);
            return to;
        }
        let mid = self.lay(from, m.u, first, halvings - 1);
        self.lay(mid, end, second, halvings - 1)
    }
}

/// dB/du as a polynomial in u.
struct Rate([Vec2; 3]);

impl Rate {
    fn of(c: &CubicBez) -> Self {
        let [a, b, d] = [c.p1 - c.p0, c.p2 - c.p1, c.p3 - c.p2];
        Self([3.0 * a, 6.0 * (b - a), 3.0 * (a - 2.0 * b + d)])
    }

    fn at(&self, u: f64) -> Vec2 {
        let [a, b, c] = self.0;
        a + u * (b + u * c)
    }

    /// The derivative of the derivative.
    fn slope(&self, u: f64) -> Vec2 {
        let [_, b, c] = self.0;
        b + 2.0 * u * c
    }

    /// Length of the arc from `u` on over `step`: Gauss–Legendre with three points.
    fn arc(&self, u: f64, step: f64) -> f64 {
        const OFF: f64 = 0.774_596_669_241_483_4;
        let half = 0.5 * step;
        let mid = u + half;
        let speed = |x: f64| length(self.at(mid + x * half));
        half * (8.0 * speed(0.0) + 5.0 * (speed(-OFF) + speed(OFF))) / 9.0
    }
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
    Rate::of(c).at(u)
}

/// Signed curvature; not kurbo's, which uses `powf`.
pub(super) fn curvature(c: &CubicBez, u: f64) -> f64 {
    let rate = Rate::of(c);
    let d = rate.at(u);
    let m = d.dot(d).max(1e-18);
    d.cross(rate.slope(u)) / (m * sqrt(m))
}
