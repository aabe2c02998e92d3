//! The painted lines, the ring and the board of the half court.

use super::arc::arc_to;
use super::marks::join;
use super::table::{Published, ThrowInMark, published};
use super::{Court, Marks};
use crate::math::{BezPath, Point, Vec2, unit};
use alloc::vec::Vec;
use core::f64::consts::{FRAC_PI_2, PI};

/// Thickness of the ring's metal, metres. From memory: FIBA's equipment rules allow 16 to 20 mm.
const RING_METAL: f64 = 0.018;
/// Depth of the board as seen from above, metres. From memory: 30 mm of glass.
const BOARD_DEPTH: f64 = 0.03;
/// Dashes in the half of the free-throw circle towards the basket. The rules print no number that
/// could be read; dashes and gaps are equal here, with a gap at either end.
const DASHES: u8 = 6;

/// What a line of the court is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LineRole {
    /// End line and sidelines; they lie outside the court.
    Boundary,
    /// Half-court line and the half of the centre circle on this side.
    Centre,
    /// Lane lines and free-throw line.
    Lane,
    /// Free-throw circle.
    FreeThrow,
    /// Three-point line.
    Arc,
    /// No-charge arc.
    NoCharge,
    /// Lane-space marks, throw-in marks, hashes.
    Mark,
    /// The ring, as seen from above.
    Ring,
    /// The board, as seen from above.
    Board,
}

/// One line, to be stroked with butt ends and mitred corners.
#[derive(Clone, Debug, PartialEq)]
pub struct CourtLine {
    /// What it is.
    pub role: LineRole,
    /// The middle of the stroke, metres in the court frame; closed where the line is.
    pub path: BezPath,
    /// Width of the stroke, metres.
    pub width: f64,
}

impl Court {
    /// Every line of the half court at true width, each edge where the rules measure it.
    ///
    /// The half of the free-throw circle away from the basket is drawn on every court, the other
    /// half, dashed, on those of the NBA and the WNBA. Marks that belong to the benches
    /// (substitution, team bench, coaching box) are left out.
    #[must_use]
    pub fn lines(&self) -> Vec<CourtLine> {
        let pen = Pen {
            m: self.marks(),
            p: published(self.rules()),
        };
        let mut all = Vec::new();
        pen.boundary(&mut all);
        pen.centre(&mut all);
        pen.lane(&mut all);
        pen.free_throw_circle(&mut all);
        pen.three_point(&mut all);
        pen.no_charge(&mut all);
        pen.lane_marks(&mut all);
        pen.throw_in_marks(&mut all);
        pen.hashes(&mut all);
        pen.basket(&mut all);
        all
    }
}

struct Pen<'a> {
    m: &'a Marks,
    p: &'a Published,
}

impl Pen<'_> {
    /// Half the width of a line.
    fn hw(&self) -> f64 {
        0.5 * self.m.line_width
    }

    fn line(&self, role: LineRole, path: BezPath) -> CourtLine {
        CourtLine {
            role,
            path,
            width: self.m.line_width,
        }
    }

    /// A straight mark from `a` to `b` on the right, and its mirror image.
    fn mark_pair(&self, all: &mut Vec<CourtLine>, width: f64, a: Point, b: Point) {
        for side in [-1.0, 1.0] {
            let path = through(&[Point::new(side * a.x, a.y), Point::new(side * b.x, b.y)]);
            all.push(CourtLine {
                width,
                ..self.line(LineRole::Mark, path)
            });
        }
    }

    fn boundary(&self, all: &mut Vec<CourtLine>) {
        let (x, y) = (self.m.sideline + self.hw(), -self.m.baseline - self.hw());
        let path = bracket(x, self.m.half, y);
        all.push(self.line(LineRole::Boundary, path));
    }

    fn centre(&self, all: &mut Vec<CourtLine>) {
        let m = self.m;
        let x = m.sideline + m.line_width + self.p.unit.metres(self.p.centre_beyond);
        let path = through(&[Point::new(-x, m.half), Point::new(x, m.half)]);
        all.push(self.line(LineRole::Centre, path));
        let small = self
            .p
            .small_circle
            .map(|r| self.p.unit.metres(r) + self.hw());
        for r in [m.circle - self.hw()].into_iter().chain(small) {
            let path = arc(
                Point::new(0.0, m.half),
                Vec2::new(-r, 0.0),
                Vec2::new(r, 0.0),
            );
            all.push(self.line(LineRole::Centre, path));
        }
    }

    fn lane(&self, all: &mut Vec<CourtLine>) {
        let (x, y) = (self.m.lane - self.hw(), self.m.free_throw - self.hw());
        let path = bracket(x, -self.m.baseline, y);
        all.push(self.line(LineRole::Lane, path));
    }

    fn free_throw_circle(&self, all: &mut Vec<CourtLine>) {
        let centre = Point::new(0.0, self.m.circle_centre);
        let r = self.m.circle - self.hw();
        let away = arc(centre, Vec2::new(r, 0.0), Vec2::new(-r, 0.0));
        all.push(self.line(LineRole::FreeThrow, away));
        if self.p.dashed_half {
            let part = PI / f64::from(2 * DASHES + 1);
            for dash in 0..DASHES {
                let start = -FRAC_PI_2 + part * f64::from(2 * dash + 1);
                let path = arc(centre, unit(start) * r, unit(start + part) * r);
                all.push(self.line(LineRole::FreeThrow, path));
            }
        }
    }

    fn three_point(&self, all: &mut Vec<CourtLine>) {
        let (r, x) = (self.m.arc - self.hw(), self.m.corner - self.hw());
        // The middle lines meet lower than the outer edges do (2.7 mm on FIBA's court).
        let path = arch(x, -self.m.baseline, join(r, x));
        all.push(self.line(LineRole::Arc, path));
    }

    fn no_charge(&self, all: &mut Vec<CourtLine>) {
        if let Some(area) = self.m.no_charge {
            let path = arch(area.inner + self.hw(), -area.straight, 0.0);
            all.push(self.line(LineRole::NoCharge, path));
        }
    }

    fn lane_marks(&self, all: &mut Vec<CourtLine>) {
        let m = self.m;
        for mark in m.lane_marks {
            let y = 0.5 * (mark.from + mark.to);
            let (a, b) = (m.lane, m.lane + m.lane_mark_depth);
            self.mark_pair(all, mark.to - mark.from, Point::new(a, y), Point::new(b, y));
        }
    }

    fn throw_in_marks(&self, all: &mut Vec<CourtLine>) {
        let m = self.m;
        let outer = m.sideline + m.line_width;
        let long = self.p.unit.metres(self.p.throw_in_length);
        let (y, from, to) = match self.p.throw_in_mark {
            ThrowInMark::FarEdgeOutside => (m.throw_in - self.hw(), outer, outer + long),
            ThrowInMark::NearEdgeOutside => (m.throw_in + self.hw(), outer, outer + long),
            ThrowInMark::NearEdgeInside => (m.throw_in + self.hw(), m.sideline - long, m.sideline),
        };
        self.mark_pair(all, m.line_width, Point::new(from, y), Point::new(to, y));
    }

    fn hashes(&self, all: &mut Vec<CourtLine>) {
        let (m, unit) = (self.m, self.p.unit);
        if let Some((gap, long)) = self.p.end_hash {
            let x = m.lane + unit.metres(gap) + self.hw();
            let (a, b) = (-m.baseline, -m.baseline + unit.metres(long));
            self.mark_pair(all, m.line_width, Point::new(x, a), Point::new(x, b));
        }
        if let Some((y, gap, long)) = self.p.box_mark {
            let y = unit.metres(y - self.p.basket) + self.hw();
            // Which way the mark runs from there could not be read: drawn away from the lane line.
            let x = m.lane - unit.metres(gap);
            let end = Point::new(x - unit.metres(long), y);
            self.mark_pair(all, m.line_width, Point::new(x, y), end);
        }
    }

    fn basket(&self, all: &mut Vec<CourtLine>) {
        let m = self.m;
        let r = Vec2::new(m.ring + 0.5 * RING_METAL, 0.0);
        let mut ring = arc(Point::ORIGIN, r, r);
        ring.close_path();
        all.push(CourtLine {
            role: LineRole::Ring,
            path: ring,
            width: RING_METAL,
        });
        let y = -m.board - 0.5 * BOARD_DEPTH;
        all.push(CourtLine {
            role: LineRole::Board,
            path: through(&[Point::new(-m.board_half, y), Point::new(m.board_half, y)]),
            width: BOARD_DEPTH,
        });
    }
}

fn through(points: &[Point]) -> BezPath {
    let mut path = BezPath::new();
    for (i, p) in points.iter().enumerate() {
        if i == 0 {
            path.move_to(*p);
        } else {
            path.line_to(*p);
        }
    }
    path
}

/// Three sides of a rectangle between `-x` and `x`: from height `open` to `shut` and back.
fn bracket(x: f64, open: f64, shut: f64) -> BezPath {
    through(&[
        Point::new(x, open),
        Point::new(x, shut),
        Point::new(-x, shut),
        Point::new(-x, open),
    ])
}

/// An arc about the ring from `(x, spring)` to `(-x, spring)`, with straight lines down to `foot`.
fn arch(x: f64, foot: f64, spring: f64) -> BezPath {
    let (right, left) = (Point::new(x, spring), Point::new(-x, spring));
    let mut path = through(&[Point::new(x, foot), right]);
    arc_to(&mut path, Point::ORIGIN, right, left);
    path.line_to((-x, foot));
    path
}

/// The arc about `centre` between two points given from it, clockwise with the ring at the top.
fn arc(centre: Point, from: Vec2, to: Vec2) -> BezPath {
    let mut path = through(&[centre + from]);
    arc_to(&mut path, centre, centre + from, centre + to);
    path
}
