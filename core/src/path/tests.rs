use super::*;
use crate::math::{distance, length, unit};
use proptest::prelude::*;

fn p(x: f64, y: f64) -> Point {
    Point::new(x, y)
}

fn points(knots: &[Knot]) -> Vec<Point> {
    (knots.iter())
        .map(|k| match *k {
            Knot::Smooth(p) | Knot::Plant(p) | Knot::Toward(p, _) => p,
        })
        .collect()
}

#[test]
fn two_knots_make_a_straight_line() {
    let path = Path::through(&[Knot::Smooth(p(1.0, 1.0)), Knot::Smooth(p(4.0, 5.0))]);
    assert!((path.length() - 5.0).abs() < 1e-12);
    for i in 0..=10 {
        let s = 0.5 * f64::from(i);
        assert!(distance(path.point(s), p(1.0 + 0.6 * s, 1.0 + 0.8 * s)) < 1e-12);
        assert!(path.curvature(s).abs() < 1e-12);
    }
}

#[test]
fn no_knots_or_one_place_make_a_line_of_no_length() {
    let q = p(2.0, 3.0);
    for knots in [
        &[][..],
        &[Knot::Plant(q)],
        &[Knot::Smooth(q), Knot::Toward(q, Vec2::ZERO)],
    ] {
        let path = Path::through(knots);
        assert_eq!(path.length(), 0.0);
        assert_eq!(path.tangent(0.0), Vec2::new(0.0, -1.0));
        assert_eq!(path.nearest(p(0.0, 0.0)).0, 0.0);
        assert!(path.point(1.0).is_finite());
        assert_eq!(path.knot_s(1), 0.0);
        assert_eq!(path.between(0.0, 1.0).elements().len(), 1);
    }
}

#[test]
fn numbers_that_are_none_do_not_spread() {
    let path = Path::through(&[
        Knot::Smooth(p(f64::NAN, 0.0)),
        Knot::Smooth(p(0.0, 0.0)),
        Knot::Toward(p(f64::INFINITY, 1.0), Vec2::new(f64::NAN, 0.0)),
        Knot::Smooth(p(3.0, 4.0)),
    ]);
    assert!((path.length() - 5.0).abs() < 1e-12);
    assert!(path.point(f64::NAN).is_finite());
    assert!(
        path.nearest_between(p(1.0, 1.0), f64::NAN, f64::NAN)
            .1
            .is_finite()
    );
}

#[test]
fn a_plant_is_sharp_and_a_smooth_knot_is_not() {
    let corner = |k: fn(Point) -> Knot| {
        Path::through(&[
            Knot::Smooth(p(0.0, 0.0)),
            k(p(0.0, 4.0)),
            Knot::Smooth(p(4.0, 4.0)),
        ])
    };
    let sharp = corner(Knot::Plant);
    assert!((sharp.length() - 8.0).abs() < 1e-12);
    let plant = sharp.plants()[0];
    assert!((plant.s - 4.0).abs() < 1e-12);
    assert!((plant.angle - core::f64::consts::FRAC_PI_2).abs() < 1e-12);
    assert!(length(sharp.tangent(4.0) - Vec2::new(1.0, 0.0)) < 1e-12);
    let smooth = corner(Knot::Smooth);
    assert!(smooth.plants().is_empty());
    let s = smooth.knot_s(1);
    assert!(length(smooth.tangent(s - 1e-7) - smooth.tangent(s + 1e-7)) < 1e-5);
    assert!(distance(smooth.point(s), p(0.0, 4.0)) < 1e-9);
}

#[test]
fn a_direction_asked_for_is_kept() {
    let way = unit(0.7);
    let path = Path::through(&[
        Knot::Toward(p(0.0, 8.0), Vec2::new(2.0, 0.0)),
        Knot::Toward(p(1.0, 4.0), way),
        Knot::Smooth(p(-2.0, 1.0)),
    ]);
    assert!(length(path.tangent(0.0) - Vec2::new(1.0, 0.0)) < 1e-9);
    assert!(length(path.tangent(path.knot_s(1)) - way) < 1e-9);
}

#[test]
fn a_line_straight_back_goes_round_on_the_rings_side_mirrored_or_not() {
    let path = |m: f64| {
        Path::through(&[
            Knot::Smooth(p(3.0 * m, 8.0)),
            Knot::Smooth(p(3.0 * m, 4.0)),
            Knot::Smooth(p(3.0 * m, 8.0)),
        ])
    };
    let (a, b) = (path(1.0), path(-1.0));
    for i in 0..=20 {
        let s = a.length() * f64::from(i) / 20.0;
        let (a, b) = (a.point(s), b.point(s));
        assert!((a.x + b.x).abs() < 1e-9 && (a.y - b.y).abs() < 1e-9);
    }
}

#[test]
fn a_drawn_part_begins_and_ends_where_it_should() {
    let path = Path::through(&[
        Knot::Smooth(p(0.0, 8.0)),
        Knot::Smooth(p(3.0, 5.0)),
        Knot::Plant(p(1.0, 2.0)),
        Knot::Smooth(p(-4.0, 1.0)),
    ]);
    let drawn = path.between(2.0, 9.0);
    let ends: Vec<Point> = (drawn.elements().iter())
        .map(|e| match *e {
            crate::math::PathEl::MoveTo(p) | crate::math::PathEl::CurveTo(_, _, p) => p,
            _ => panic!("only cubics"),
        })
        .collect();
    assert_eq!(ends.len(), 4);
    assert!(distance(ends[0], path.point(2.0)) < 1e-9);
    assert!(distance(ends[3], path.point(9.0)) < 1e-9);
    assert_eq!(path.between(5.0, 5.0).elements().len(), 1);
}

fn some_knots() -> impl Strategy<Value = Vec<Knot>> {
    let knot = (-7.0..7.0f64, -1.0..11.0f64, 0..4u8).prop_map(|(x, y, kind)| {
        if kind == 0 {
            Knot::Plant(p(x, y))
        } else {
            Knot::Smooth(p(x, y))
        }
    });
    prop::collection::vec(knot, 1..7)
}

proptest! {
    #[test]
    fn prop_lines_do_not_swing_wide(knots in some_knots()) {
        let path = Path::through(&knots);
        let corners = points(&knots);
        let straight = Path::through(&corners.iter().map(|&p| Knot::Plant(p)).collect::<Vec<_>>());
        prop_assert!(path.length() >= straight.length() - 1e-9);
        prop_assert!(path.length() <= 1.25 * straight.length(),
            "{} over {}", path.length(), straight.length());
        for i in 0..=200 {
            let at = path.point(path.length() * f64::from(i) / 200.0);
            let off = straight.nearest(at).1;
            prop_assert!(off < 1.5, "{off} off at {at:?}");
        }
    }

    #[test]
    fn prop_places_are_as_far_apart_as_their_arc_length_says(knots in some_knots()) {
        let path = Path::through(&knots);
        let n = 4000;
        let step = path.length() / f64::from(n);
        for i in 0..n {
            let [a, b] = [i, i + 1].map(|i| path.point(f64::from(i) * step));
            let d = distance(a, b);
            prop_assert!(d <= step * 1.01 + 1e-9, "{d} for {step}");
        }
    }

    #[test]
    fn prop_nearest_finds_its_own_places(knots in some_knots(), share in 0.0..1.0f64) {
        let path = Path::through(&knots);
        let at = path.point(share * path.length());
        prop_assert!(path.nearest(at).1 < 1e-6);
    }

    #[test]
    fn prop_no_sampled_place_is_nearer_than_the_nearest(
        knots in some_knots(), x in -8.0..8.0f64, y in -2.0..12.0f64, a in 0.0..1.0f64, b in 0.0..1.0f64
    ) {
        let path = Path::through(&knots);
        let (s0, s1) = (a.min(b) * path.length(), a.max(b) * path.length());
        let (s, d) = path.nearest_between(p(x, y), s0, s1);
        prop_assert!(s >= s0 && s <= s1);
        prop_assert!((distance(path.point(s), p(x, y)) - d).abs() < 1e-9);
        for i in 0..=300 {
            let at = path.point(s0 + (s1 - s0) * f64::from(i) / 300.0);
            prop_assert!(distance(at, p(x, y)) >= d - 1e-5);
        }
    }

    #[test]
    fn prop_a_mirrored_line_is_the_mirror_of_the_line(knots in some_knots()) {
        let mirrored: Vec<Knot> = knots.iter().map(|k| match *k {
            Knot::Smooth(q) => Knot::Smooth(p(-q.x, q.y)),
            Knot::Plant(q) => Knot::Plant(p(-q.x, q.y)),
            k => k,
        }).collect();
        let (a, b) = (Path::through(&knots), Path::through(&mirrored));
        for i in 0..=20 {
            let s = a.length() * f64::from(i) / 20.0;
            prop_assert_eq!(a.point(s).x, -b.point(s).x);
            prop_assert_eq!(a.point(s).y, b.point(s).y);
        }
    }
}
