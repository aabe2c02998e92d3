//! The place of a line nearest to a point.

use super::Path;
use super::table::{Node, curvature, derivative, parameter};
use crate::math::{CubicBez, Point, direction, distance};
use kurbo::ParamCurve;

impl Path {
    /// Arc length of the place nearest to `p`, and its distance. The first of equals.
    #[must_use]
    pub fn nearest(&self, p: Point) -> (f64, f64) {
        self.nearest_between(p, 0.0, self.length())
    }

    /// As [`nearest`](Self::nearest), among the places from `s0` to `s1`.
    #[must_use]
    pub fn nearest_between(&self, p: Point, s0: f64, s1: f64) -> (f64, f64) {
        let s0 = s0.max(0.0).min(self.length());
        let s1 = s1.min(self.length()).max(s0);
        let mut best = (s0, distance(self.point(s0), p));
        let mut offer = |s: f64, d: f64| {
            if d < best.1 {
                best = (s, d);
            }
            best.1
        };
        let mut limit = offer(s1, distance(self.point(s1), p));
        for (a, b) in self.nodes.iter().zip(self.nodes.iter().skip(1)) {
            let (lo, hi) = (a.s.max(s0), b.s.min(s1));
            if a.piece != b.piece || lo >= hi {
                continue;
            }
            let Some(c) = self.pieces.get(a.piece) else {
                continue;
            };
            // No place of the stretch is nearer than its middle less half its length.
            let mid = 0.5 * (lo + hi);
            let at_mid = distance(c.eval(parameter(a, b, mid)), p);
            if at_mid - 0.5 * (hi - lo) < limit {
                let s = foot(c, [a, b], p, [lo, hi]);
                limit = offer(s, distance(c.eval(parameter(a, b, s)), p));
            }
        }
        best
    }
}

/// Where in a short stretch the line is square to the way to `p`: Newton inside a bracket.
fn foot(c: &CubicBez, [a, b]: [&Node; 2], p: Point, [mut lo, mut hi]: [f64; 2]) -> f64 {
    // How far behind the foot a place is, and how fast that shrinks.
    let behind = |s: f64| {
        let u = parameter(a, b, s);
        let tangent = direction(derivative(c, u)).unwrap_or_default();
        let way = c.eval(u) - p;
        (way.dot(tangent), 1.0 + curvature(c, u) * tangent.cross(way))
    };
    if behind(lo).0 >= 0.0 {
        return lo;
    }
    if behind(hi).0 <= 0.0 {
        return hi;
    }
    let mut s = 0.5 * (lo + hi);
    for _ in 0..24 {
        let (g, slope) = behind(s);
        if g < 0.0 {
            lo = s;
        } else {
            hi = s;
        }
        let newton = s - g / slope;
        let next = if slope > 1e-9 && newton >= lo && newton <= hi {
            newton
        } else {
            0.5 * (lo + hi)
        };
        let moved = (next - s).abs();
        s = next;
        if moved < 1e-12 {
            break;
        }
    }
    s
}
