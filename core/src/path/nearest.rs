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
        let mut search = Search {
            path: self,
            p,
            range: [s0, s1],
            best: (s0, distance(self.point(s0), p)),
        };
        search.offer(s1);
        search.among(&self.nodes);
        search.best
    }
}

struct Search<'a> {
    path: &'a Path,
    p: Point,
    range: [f64; 2],
    best: (f64, f64),
}

impl Search<'_> {
    fn offer(&mut self, s: f64) -> f64 {
        let d = distance(self.path.point(s), self.p);
        if d < self.best.1 {
            self.best = (s, d);
        }
        d
    }

    /// Looks between the first and the last of `nodes`, in halves, and leaves out what is too far.
    fn among(&mut self, nodes: &[Node]) {
        let [a, .., b] = nodes else { return };
        let (lo, hi) = (a.s.max(self.range[0]), b.s.min(self.range[1]));
        if lo >= hi {
            return;
        }
        // No place of a stretch is nearer than its middle less half its length.
        if self.offer(0.5 * (lo + hi)) - 0.5 * (hi - lo) >= self.best.1 {
            return;
        }
        if nodes.len() > 2 {
            let half = nodes.len() / 2;
            self.among(nodes.get(..=half).unwrap_or_default());
            self.among(nodes.get(half..).unwrap_or_default());
        } else if let Some(c) = self.path.pieces.get(a.piece) {
            self.offer(foot(c, [a, b], self.p, [lo, hi]));
        }
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
