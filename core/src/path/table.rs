//! Arc length: nodes along each cubic, and the parameter between them.

use crate::math::{CubicBez, Vec2, direction, length, sqrt};
use alloc::vec::Vec;

/// Turn of the control arms that one interval may carry, radians.
///
/// Between nodes the parameter is a cubic in arc length that has the right slope at both, so the
/// error falls with the fourth power of their spacing. This spacing keeps a place within 10 µm for
/// the lines that sets make; an independent geometry library checks that.
const TURN_PER_INTERVAL: f64 = 0.2;

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
    let intervals: Vec<u32> = pieces.iter().map(intervals).collect();
    let mut nodes = Vec::with_capacity(intervals.iter().map(|&n| n as usize + 1).sum());
    let mut ends = Vec::with_capacity(pieces.len());
    let mut s = 0.0;
    for (piece, (c, &n)) in pieces.iter().zip(&intervals).enumerate() {
        let step = 1.0 / f64::from(n);
        for i in 0..=n {
            let u = f64::from(i) * step;
            if i > 0 {
                s += arc(c, u - step, step);
            }
            let speed = length(derivative(c, u)).max(1e-9);
            nodes.push(Node {
                s,
                u,
                rate: 1.0 / speed,
                curvature: if n == 1 { 0.0 } else { curvature(c, u) },
                piece,
            });
        }
        ends.push(s);
    }
    (nodes, ends)
}

/// How many intervals a piece needs; a straight one has one.
fn intervals(c: &CubicBez) -> u32 {
    let arms = [c.p1 - c.p0, c.p2 - c.p1, c.p3 - c.p2];
    let [a, b, d] = arms.map(|v| direction(v).unwrap_or_default());
    // Twice the sine of half the turn is near enough to the turn, and free of inverse functions.
    let turn = length(b - a) + length(d - b);
    if turn < 1e-9 {
        return 1;
    }
    let wanted = 4.0 + turn / TURN_PER_INTERVAL;
    // Between 4 and 24 by the clamp, so the cast is exact enough.
    wanted.clamp(4.0, 24.0) as u32
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
