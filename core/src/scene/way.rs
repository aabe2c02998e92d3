//! A path on the picture measured by its length, so that marks can be set along it.

use super::view::Camera;
use crate::math::{BezPath, CubicBez, PathEl, Point, Vec2, direction, distance};
use alloc::vec::Vec;
use kurbo::ParamCurve;

/// Straight pieces a curve is measured in: on a court their error is far below a pixel.
const PIECES: u8 = 12;

/// Points along a path and their distance from its start, pixels.
pub(super) struct Way {
    points: Vec<(f64, Point)>,
}

impl Way {
    /// `path` (metres) as `camera` sees it.
    pub(super) fn of(path: &BezPath, camera: &Camera) -> Self {
        let mut way = Self { points: Vec::new() };
        let mut at = Point::ZERO;
        for el in camera.path(path).elements() {
            match *el {
                PathEl::CurveTo(a, b, c) => {
                    let curve = CubicBez::new(at, a, b, c);
                    for i in 1..=PIECES {
                        way.push(curve.eval(f64::from(i) / f64::from(PIECES)));
                    }
                    at = c;
                }
                PathEl::MoveTo(p) | PathEl::LineTo(p) | PathEl::QuadTo(_, p) => {
                    way.push(p);
                    at = p;
                }
                PathEl::ClosePath => {}
            }
        }
        way
    }

    /// The straight way between two places of the picture.
    pub(super) fn straight(a: Point, b: Point) -> Self {
        let mut way = Self { points: Vec::new() };
        way.push(a);
        way.push(b);
        way
    }

    fn push(&mut self, p: Point) {
        match self.points.last() {
            None => self.points.push((0.0, p)),
            Some((s, last)) => {
                let step = distance(*last, p);
                if step > 1e-9 {
                    let s = s + step;
                    self.points.push((s, p));
                }
            }
        }
    }

    pub(super) fn length(&self) -> f64 {
        self.points.last().map_or(0.0, |p| p.0)
    }

    /// The place `s` pixels from the start, and the direction there.
    pub(super) fn at(&self, s: f64) -> (Point, Vec2) {
        let i = self
            .points
            .partition_point(|p| p.0 < s)
            .clamp(1, self.points.len().saturating_sub(1).max(1));
        match (self.points.get(i - 1), self.points.get(i)) {
            (Some((s0, a)), Some((s1, b))) => {
                let u = ((s - s0) / (s1 - s0)).clamp(0.0, 1.0);
                let d = direction(*b - *a).unwrap_or(Vec2::ZERO);
                (*a + (*b - *a) * u, d)
            }
            (Some((_, only)), None) => (*only, Vec2::ZERO),
            _ => (Point::ZERO, Vec2::ZERO),
        }
    }

    /// The part from `from` to `to` pixels.
    pub(super) fn part(&self, from: f64, to: f64) -> BezPath {
        let mut path = BezPath::new();
        path.move_to(self.at(from).0);
        for (_, p) in self.points.iter().filter(|p| p.0 > from && p.0 < to) {
            path.line_to(*p);
        }
        path.line_to(self.at(to).0);
        path
    }
}

/// A wave along a way: length and height in pixels, straight at the end.
pub(super) struct Wave {
    /// Length of one whole wave.
    pub(super) length: f64,
    /// Height over the middle line.
    pub(super) height: f64,
    /// How much of the end is straight.
    pub(super) straight: f64,
}

impl Wave {
    /// The part of the wave along the whole of `way` that lies between `from` and `to` pixels.
    /// It is in step whatever part is drawn, so it does not crawl as it grows.
    pub(super) fn along(&self, way: &Way, from: f64, to: f64) -> BezPath {
        let half = 0.5 * self.length;
        let humps = ((way.length() - self.straight) / half).clamp(0.0, 4000.0) as u16;
        let mut path = BezPath::new();
        let mut side = self.height;
        for i in 0..humps {
            let start = half * f64::from(i);
            let (u0, u1) = ((from - start) / half, (to - start) / half);
            if u1 > 0.0 && u0 < 1.0 {
                let hump = hump(way, start, half, side);
                let part = hump.subsegment(u0.max(0.0)..u1.min(1.0));
                if path.elements().is_empty() {
                    path.move_to(part.p0);
                }
                path.curve_to(part.p1, part.p2, part.p3);
            }
            side = -side;
        }
        let rest = half * f64::from(humps);
        if to > rest {
            let tail = way.part(rest.max(from), to);
            let joined = !path.elements().is_empty();
            path.extend(tail.elements().iter().skip(usize::from(joined)).copied());
        }
        path
    }
}

/// Half a wave, `side` high, `half` pixels of the way from `start`.
fn hump(way: &Way, start: f64, half: f64, side: f64) -> CubicBez {
    // A cubic whose handles stand 4/3 high is as high as `side` in its middle.
    let lift = |u: f64| {
        let (p, d) = way.at(start + u * half);
        p + Vec2::new(-d.y, d.x) * (side * 4.0 / 3.0)
    };
    CubicBez::new(
        way.at(start).0,
        lift(0.33),
        lift(0.67),
        way.at(start + half).0,
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line() -> Way {
        Way::straight(Point::new(10.0, 0.0), Point::new(110.0, 0.0))
    }

    #[test]
    fn a_part_starts_and_ends_where_it_is_asked_to() {
        let part = line().part(20.0, 70.0);
        assert_eq!(
            part.elements().first(),
            Some(&PathEl::MoveTo(Point::new(30.0, 0.0)))
        );
        assert_eq!(
            part.elements().last(),
            Some(&PathEl::LineTo(Point::new(80.0, 0.0)))
        );
    }

    #[test]
    fn a_way_of_no_length_has_a_place_and_no_direction() {
        let way = Way::straight(Point::new(3.0, 4.0), Point::new(3.0, 4.0));
        assert_eq!(way.at(2.0), (Point::new(3.0, 4.0), Vec2::ZERO));
    }

    #[test]
    fn a_wave_run_in_two_parts_is_the_whole_wave() {
        let wave = Wave {
            length: 16.0,
            height: 4.0,
            straight: 20.0,
        };
        let way = line();
        let last = |p: &BezPath| match p.elements().last() {
            Some(PathEl::CurveTo(_, _, p) | PathEl::LineTo(p) | PathEl::MoveTo(p)) => *p,
            _ => Point::ZERO,
        };
        let run = last(&wave.along(&way, 0.0, 21.0));
        let rest = wave.along(&way, 21.0, 100.0);
        let Some(PathEl::MoveTo(first)) = rest.elements().first() else {
            panic!("no start");
        };
        assert!(distance(run, *first) < 1e-9);
        assert_eq!(last(&rest), Point::new(110.0, 0.0));
    }
}
