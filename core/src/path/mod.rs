//! The line a player runs: cubic Béziers with an arc-length table.
//!
//! Smooth where nobody stops or plants, sharp at a plant, straight between two knots. Lengths are
//! metres along the floor; `s` is the distance run from the start.

mod nearest;
mod smooth;
mod table;

use crate::math::{BezPath, CubicBez, Listed, Point, Vec2, direction};
use alloc::vec::Vec;
use kurbo::ParamCurve;
use table::Node;

pub(crate) use table::Span;

/// A place the line goes through.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Knot {
    /// Passed in a smooth line.
    Smooth(Point),
    /// A foot is planted and the direction changes at once.
    Plant(Point),
    /// Passed in that direction.
    Toward(Point, Vec2),
}

/// A sharp turn on the way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plant {
    /// Where, metres from the start.
    pub s: f64,
    /// How far the direction turns, radians in [0, π].
    pub angle: f64,
}

/// A line over the floor that is known by arc length.
///
/// ```
/// use backcut::math::Point;
/// use backcut::path::{Knot, Path};
/// let p = Path::through(&[Knot::Smooth(Point::new(0.0, 1.0)), Knot::Smooth(Point::new(3.0, 5.0))]);
/// assert!((p.length() - 5.0).abs() < 1e-12);
/// assert!((p.point(2.5).x - 1.5).abs() < 1e-12);
/// ```
#[derive(Clone, Debug)]
pub struct Path {
    start: Point,
    pieces: Vec<CubicBez>,
    nodes: Vec<Node>,
    plants: Vec<Plant>,
    knots: Vec<f64>,
}

impl Path {
    /// The line through `knots` in their order; the first and the last are its ends.
    ///
    /// Knots at one place count once. Fewer than two places make a line of length 0.
    #[must_use]
    pub fn through(knots: &[Knot]) -> Self {
        let line = smooth::lay(knots);
        let (nodes, ends) = table::measure(&line.pieces);
        // `ends` holds the arc length after each piece; a place is where a piece begins.
        let s_of = |place: usize| match place.checked_sub(1) {
            Some(before) => ends.get(before).copied().unwrap_or(0.0),
            None => 0.0,
        };
        Self {
            start: line.start,
            plants: (line.plants.iter())
                .map(|&(place, angle)| Plant {
                    s: s_of(place),
                    angle,
                })
                .listed(),
            knots: line.places.iter().map(|&place| s_of(place)).listed(),
            pieces: line.pieces,
            nodes,
        }
    }

    /// Metres from start to end.
    #[must_use]
    pub fn length(&self) -> f64 {
        self.nodes.last().map_or(0.0, |n| n.s)
    }

    /// The place after `s` metres; the ends hold beyond the ends.
    #[must_use]
    pub fn point(&self, s: f64) -> Point {
        self.locate(s).map_or(self.start, |(c, u)| c.eval(u))
    }

    /// The direction of running at `s`, of length one; at a plant the direction out of it. A line
    /// of length 0 looks at the ring: (0, −1).
    #[must_use]
    pub fn tangent(&self, s: f64) -> Vec2 {
        self.pose(s).1
    }

    fn pose(&self, s: f64) -> (Point, Vec2) {
        self.pose_of(self.place(s))
    }

    /// Point and tangent at `s`, for who asks for later and later places: `node` is where the last
    /// answer was found.
    pub(crate) fn pose_onward(&self, s: f64, node: &mut usize) -> (Point, Vec2) {
        let behind = self.nodes.iter().skip(*node).take_while(|n| n.s <= s);
        *node += behind.count();
        self.pose_of(self.between_nodes(*node, s))
    }

    fn pose_of(&self, place: Option<(usize, f64)>) -> (Point, Vec2) {
        let here = self.piece(place);
        let way = here.and_then(|(c, u)| direction(table::derivative(c, u)));
        (
            here.map_or(self.start, |(c, u)| c.eval(u)),
            way.unwrap_or(Vec2::new(0.0, -1.0)),
        )
    }

    /// Signed curvature at `s`, 1/m; positive turns from +x toward +y.
    #[must_use]
    pub fn curvature(&self, s: f64) -> f64 {
        self.locate(s).map_or(0.0, |(c, u)| table::curvature(c, u))
    }

    /// The sharp turns, in running order.
    #[must_use]
    pub fn plants(&self) -> &[Plant] {
        &self.plants
    }

    /// Metres from the start to the knot `i` as it was given; the whole length past the last.
    #[must_use]
    pub fn knot_s(&self, i: usize) -> f64 {
        self.knots.get(i).copied().unwrap_or_else(|| self.length())
    }

    /// The part of the line from `s0` to `s1`, exactly, for drawing.
    #[must_use]
    pub fn between(&self, s0: f64, s1: f64) -> BezPath {
        let mut drawn = BezPath::new();
        drawn.move_to(self.point(s0));
        let (Some((first, u0)), Some((last, u1))) = (self.place(s0), self.place(s1)) else {
            return drawn;
        };
        for (i, piece) in self.pieces.iter().enumerate() {
            if i < first || i > last {
                continue;
            }
            let from = if i == first { u0 } else { 0.0 };
            let to = if i == last { u1 } else { 1.0 };
            if from < to {
                let c = piece.subsegment(from..to);
                drawn.curve_to(c.p1, c.p2, c.p3);
            }
        }
        drawn
    }

    fn locate(&self, s: f64) -> Option<(&CubicBez, f64)> {
        self.piece(self.place(s))
    }

    fn piece(&self, place: Option<(usize, f64)>) -> Option<(&CubicBez, f64)> {
        let (piece, u) = place?;
        Some((self.pieces.get(piece)?, u))
    }

    /// Piece and parameter at `s`; where two pieces meet, the start of the later one.
    fn place(&self, s: f64) -> Option<(usize, f64)> {
        let s = if s.is_nan() { 0.0 } else { s };
        let after = if s < self.length() {
            self.nodes.partition_point(|n| n.s <= s)
        } else {
            self.nodes.len()
        };
        self.between_nodes(after, s)
    }

    /// Piece and parameter at `s`, which lies before the node `after` and not before others.
    fn between_nodes(&self, after: usize, s: f64) -> Option<(usize, f64)> {
        let after = after.min(self.nodes.len().checked_sub(1)?).max(1);
        let (a, b) = (self.nodes.get(after - 1)?, self.nodes.get(after)?);
        Some((a.piece, table::parameter(a, b, s)))
    }
}

#[cfg(test)]
mod tests;
