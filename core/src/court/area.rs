//! Which part of the court a point lies on.

use super::Court;
use crate::math::{BezPath, Point, length};

impl Court {
    /// The lane by its outer edges, from the end line to the far edge of the free-throw line: what
    /// is tinted. Closed.
    #[must_use]
    pub fn lane_area(&self) -> BezPath {
        let m = self.marks();
        let mut path = BezPath::new();
        path.move_to((-m.lane, -m.baseline));
        path.line_to((m.lane, -m.baseline));
        path.line_to((m.lane, m.free_throw));
        path.line_to((-m.lane, m.free_throw));
        path.close_path();
        path
    }

    /// Whether a shot by someone whose foot nearest to the basket is at `p` counts three.
    ///
    /// The line itself is two-point area. In the corner the line is nearer than the arc's radius,
    /// so distance alone does not tell.
    ///
    /// ```
    /// use backcut::court::{Court, RuleSet};
    /// use backcut::math::Point;
    /// let nba = Court::of(RuleSet::Nba);
    /// assert!(nba.is_three(Point::new(6.8, 0.0)));
    /// assert!(!nba.is_three(Point::new(0.0, 6.8)));
    /// ```
    #[must_use]
    pub fn is_three(&self, p: Point) -> bool {
        let m = self.marks();
        if p.y <= m.join {
            p.x.abs() > m.corner
        } else {
            length(p.to_vec2()) > m.arc
        }
    }

    /// Whether `p` lies in the lane. Its lines belong to it, the end line does not.
    ///
    /// The three-second rule's area goes on behind the end line by [`lane_behind`].
    ///
    /// [`lane_behind`]: super::Marks::lane_behind
    #[must_use]
    pub fn in_lane(&self, p: Point) -> bool {
        let m = self.marks();
        p.x.abs() <= m.lane && p.y >= -m.baseline && p.y <= m.free_throw
    }

    /// Whether `p` lies on the half court and at least `margin` metres from sidelines and end line
    /// (a negative margin reaches out of the court). The half-court line needs no margin: the
    /// court goes on behind it. False where a number is NaN.
    #[must_use]
    pub fn in_bounds(&self, p: Point, margin: f64) -> bool {
        let m = self.marks();
        p.x.abs() + margin <= m.sideline && p.y - margin >= -m.baseline && p.y <= m.half
    }
}
