//! Lengths, places, curvature and nearest places of our lines against `lyon_geom`, a geometry
//! library of another origin (Bézier lengths by closed-form quadratics, flattening by tolerance).
#![allow(missing_docs, reason = "tests")]

use backcut::math::{PathEl, Point, Vec2};
use backcut::path::{Knot, Path};
use lyon_geom::{CubicBezierSegment, point};
use proptest::prelude::*;

type Cubic = CubicBezierSegment<f64>;

fn cubics(path: &Path) -> Vec<Cubic> {
    let mut from = point(0.0, 0.0);
    let mut made = Vec::new();
    for el in path.between(0.0, path.length()).elements() {
        let at = |p: Point| point(p.x, p.y);
        match *el {
            PathEl::MoveTo(p) => from = at(p),
            PathEl::CurveTo(a, b, c) => {
                let (ctrl1, ctrl2, to) = (at(a), at(b), at(c));
                made.push(Cubic {
                    from,
                    ctrl1,
                    ctrl2,
                    to,
                });
                from = to;
            }
            // Our lines have nothing else; a part that went missing would show in the length.
            _ => {}
        }
    }
    made
}

fn far(a: Point, b: lyon_geom::Point<f64>) -> f64 {
    (a.x - b.x).hypot(a.y - b.y)
}

fn knots() -> impl Strategy<Value = Vec<Knot>> {
    let knot = (-7.0..7.0f64, -1.0..11.0f64, 0..6u8, 0.0..6.3f64).prop_map(|(x, y, kind, way)| {
        let p = Point::new(x, y);
        match kind {
            0 => Knot::Plant(p),
            1 => Knot::Toward(p, Vec2::new(way.cos(), way.sin())),
            _ => Knot::Smooth(p),
        }
    });
    prop::collection::vec(knot, 2..6)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn lengths_and_places_agree(knots in knots()) {
        let path = Path::through(&knots);
        let mut s = 0.0;
        for cubic in cubics(&path) {
            // From 1: the length of no line is no number there.
            for i in 1..=16 {
                let t = f64::from(i) / 16.0;
                let ours = path.point(s + cubic.before_split(t).approximate_length(1e-8));
                let off = far(ours, cubic.sample(t));
                prop_assert!(off < 1e-5, "{off} off at {t}");
            }
            s += cubic.approximate_length(1e-8);
        }
        prop_assert!((s - path.length()).abs() < 1e-5, "{} for {s}", path.length());
    }

    #[test]
    fn bends_agree(knots in knots()) {
        let path = Path::through(&knots);
        let mut s = 0.0;
        for cubic in cubics(&path) {
            for i in 1..8 {
                let t = f64::from(i) / 8.0;
                let d = cubic.derivative(t);
                let h = 1e-4;
                let dd = (cubic.derivative(t + h) - cubic.derivative(t - h)) / (2.0 * h);
                let theirs = d.cross(dd) / d.length().powi(3);
                let at = s + cubic.before_split(t).approximate_length(1e-9);
                let ours = path.curvature(at);
                // Where a line bends hard, a micrometre along it matters.
                prop_assert!((ours - theirs).abs() < 1e-3 * (1.0 + theirs.abs()).powi(2),
                    "{ours} for {theirs}");
            }
            s += cubic.approximate_length(1e-9);
        }
    }

    #[test]
    fn nearest_places_agree(knots in knots(), x in -8.0..8.0f64, y in -2.0..12.0f64) {
        let path = Path::through(&knots);
        let mut theirs = f64::INFINITY;
        for cubic in cubics(&path) {
            cubic.for_each_flattened(1e-7, &mut |line| {
                theirs = theirs.min(line.distance_to_point(point(x, y)));
            });
        }
        let (s, ours) = path.nearest(Point::new(x, y));
        prop_assert!((ours - theirs).abs() < 1e-5, "{ours} for {theirs}");
        prop_assert!((far(path.point(s), point(x, y)) - ours).abs() < 1e-9);
    }
}
