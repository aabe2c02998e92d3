use super::arc::arc_to;
use super::{Court, CourtLine, LineRole, RuleSet, Side, Spot, SpotName, mirrored};
use crate::math::{BezPath, PathEl, Point, distance, unit};
use proptest::prelude::*;
use std::vec::Vec;

fn lines(rules: RuleSet, role: LineRole) -> Vec<CourtLine> {
    let mut all = Court::of(rules).lines();
    all.retain(|l| l.role == role);
    all
}

/// All end points of a path's pieces.
fn corners(path: &BezPath) -> Vec<Point> {
    path.elements()
        .iter()
        .filter_map(PathEl::end_point)
        .collect()
}

/// Points along every piece of a path, close enough to judge its shape.
fn samples(path: &BezPath) -> Vec<Point> {
    use kurbo::ParamCurve;
    path.segments()
        .flat_map(|s| (0..=64).map(move |i| s.eval(f64::from(i) / 64.0)))
        .collect()
}

fn near(a: f64, b: f64) {
    assert!((a - b).abs() < 1e-9, "{a} is not {b}");
}

fn is_sided(name: SpotName) -> bool {
    SpotName::TABLE.iter().any(|r| r.0 == name && r.3)
}

fn every_spot() -> Vec<Spot> {
    SpotName::TABLE
        .iter()
        .flat_map(|r| {
            let sides = if is_sided(r.0) {
                std::vec![Some(Side::Left), Some(Side::Right)]
            } else {
                std::vec![None]
            };
            sides.into_iter().map(move |side| Spot { name: r.0, side })
        })
        .collect()
}

proptest! {
    #[test]
    fn prop_an_arc_stays_on_its_circle_and_ends_where_it_should(
        r in 0.2..8.0_f64, start in -3.2..3.2_f64, sweep in 0.05..6.2_f64,
    ) {
        let centre = Point::new(0.3, -1.2);
        let (from, to) = (centre + unit(start) * r, centre + unit(start + sweep) * r);
        let mut path = BezPath::new();
        path.move_to(from);
        arc_to(&mut path, centre, from, to);
        for p in samples(&path) {
            prop_assert!((distance(p, centre) - r).abs() < 1e-4, "{p} leaves the circle");
        }
        prop_assert_eq!(corners(&path).pop(), Some(to));
        // The middle of the arc, so that the long way round is not taken for the short one.
        let middle = centre + unit(start + 0.5 * sweep) * r;
        let nearest = samples(&path)
            .into_iter()
            .map(|p| distance(p, middle))
            .fold(f64::MAX, f64::min);
        prop_assert!(nearest < 0.01 * r + 1e-4, "misses its middle by {nearest}");
    }

    #[test]
    fn prop_a_point_mirrored_twice_has_the_same_bits(x in -9.0..9.0_f64, y in -3.0..15.0_f64) {
        let p = mirrored(mirrored(Point::new(x, y)));
        prop_assert_eq!((p.x.to_bits(), p.y.to_bits()), (x.to_bits(), y.to_bits()));
    }

    #[test]
    fn prop_areas_are_the_same_on_both_sides(x in -9.0..9.0_f64, y in -3.0..15.0_f64) {
        let p = Point::new(x, y);
        for rules in RuleSet::ALL {
            let court = Court::of(rules);
            prop_assert_eq!(court.is_three(p), court.is_three(mirrored(p)));
            prop_assert_eq!(court.in_lane(p), court.in_lane(mirrored(p)));
            prop_assert_eq!(court.in_bounds(p, 0.2), court.in_bounds(mirrored(p), 0.2));
        }
    }
}

#[test]
fn a_mirrored_spot_has_the_bits_of_the_mirrored_place() {
    for rules in RuleSet::ALL {
        let court = Court::of(rules);
        for spot in every_spot() {
            let (a, b) = (court.spot(spot.mirrored()), mirrored(court.spot(spot)));
            assert_eq!(a.x.to_bits(), b.x.to_bits(), "{} {rules:?}", spot.title());
            assert_eq!(a.y.to_bits(), b.y.to_bits(), "{} {rules:?}", spot.title());
        }
    }
}

#[test]
fn every_spot_reads_back_from_its_title() {
    for spot in every_spot() {
        assert_eq!(Spot::parse(&spot.title()), Some(spot));
    }
}

#[test]
fn boundary_lines_lie_outside_the_court() {
    for rules in RuleSet::ALL {
        let m = *Court::of(rules).marks();
        for line in lines(rules, LineRole::Boundary) {
            for p in corners(&line.path) {
                near(p.x.abs() - 0.5 * line.width, m.sideline);
                assert!(p.y == m.half || (p.y + 0.5 * line.width + m.baseline).abs() < 1e-9);
            }
        }
    }
}

#[test]
fn the_outer_edge_of_the_three_point_line_is_the_published_one() {
    for rules in RuleSet::ALL {
        let court = Court::of(rules);
        let m = court.marks();
        let [line] = <[CourtLine; 1]>::try_from(lines(rules, LineRole::Arc)).unwrap();
        for p in samples(&line.path) {
            let half = 0.5 * line.width;
            let outer = if p.x.abs() + half >= m.corner - 1e-9 {
                p.x.abs() + half - m.corner
            } else {
                distance(p, Point::ORIGIN) + half - m.arc
            };
            assert!(outer.abs() < 1e-4, "{rules:?} at {p}: {outer}");
            assert!(!court.is_three(p), "{rules:?}: the line is two-point area");
        }
    }
}

#[test]
fn the_three_point_line_joins_where_its_middle_lines_meet() {
    // Stroke middles 6.725 and 6.575 meet 1.412445 m above the ring, not at the outer 1.415097.
    let [line] = <[CourtLine; 1]>::try_from(lines(RuleSet::Fiba, LineRole::Arc)).unwrap();
    let at = corners(&line.path);
    assert!((at[1].y - 1.412_445).abs() < 1e-6, "{}", at[1].y);
    assert!((at[1].x - 6.575).abs() < 1e-12);
}

#[test]
fn lane_lines_belong_to_the_lane_and_the_end_line_does_not() {
    for rules in RuleSet::ALL {
        let court = Court::of(rules);
        let m = court.marks();
        assert!(court.in_lane(Point::new(m.lane, m.free_throw)));
        assert!(!court.in_lane(Point::new(m.lane + 1e-6, 0.0)));
        assert!(!court.in_lane(Point::new(0.0, m.free_throw + 1e-6)));
        assert!(!court.in_lane(Point::new(0.0, -m.baseline - 1e-6)));
        let [lane] = <[CourtLine; 1]>::try_from(lines(rules, LineRole::Lane)).unwrap();
        let half = 0.5 * lane.width;
        for p in corners(&lane.path) {
            near(p.x.abs() + half, m.lane);
            assert!(p.y == -m.baseline || (p.y + half - m.free_throw).abs() < 1e-9);
        }
        for p in corners(&court.lane_area()) {
            near(p.x.abs(), m.lane);
        }
    }
}

#[test]
fn only_the_nba_and_the_wnba_dash_the_half_circle_towards_the_basket() {
    for rules in RuleSet::ALL {
        let dashed = matches!(rules, RuleSet::Nba | RuleSet::Wnba);
        let circle = lines(rules, LineRole::FreeThrow);
        assert_eq!(circle.len() > 1, dashed, "{rules:?}");
        let m = *Court::of(rules).marks();
        for line in circle {
            for p in samples(&line.path) {
                let r = distance(p, Point::new(0.0, m.circle_centre)) + 0.5 * line.width;
                assert!((r - m.circle).abs() < 1e-4);
            }
        }
    }
}

#[test]
fn no_charge_line_begins_at_its_published_inner_edge() {
    for rules in RuleSet::ALL {
        let found = lines(rules, LineRole::NoCharge);
        let Some(area) = Court::of(rules).marks().no_charge else {
            assert_eq!((rules, found.len()), (RuleSet::Nfhs, 0));
            continue;
        };
        let top = samples(&found[0].path)
            .into_iter()
            .map(|p| p.y)
            .fold(f64::MIN, f64::max);
        assert!((top - 0.5 * found[0].width - area.inner).abs() < 1e-9);
    }
}

#[test]
fn throw_in_marks_show_the_measured_edge() {
    for rules in RuleSet::ALL {
        let m = *Court::of(rules).marks();
        let edge = if rules == RuleSet::Fiba { 0.5 } else { -0.5 };
        let at_mark = |l: &CourtLine| {
            corners(&l.path)
                .iter()
                .all(|p| (p.y + edge * l.width - m.throw_in).abs() < 1e-9)
        };
        let found = lines(rules, LineRole::Mark);
        assert_eq!(found.iter().filter(|l| at_mark(l)).count(), 2, "{rules:?}");
    }
}

#[test]
fn lines_are_the_same_on_both_sides() {
    for rules in RuleSet::ALL {
        let all: Vec<Point> = Court::of(rules)
            .lines()
            .iter()
            .flat_map(|l| samples(&l.path))
            .collect();
        for p in &all {
            let q = mirrored(*p);
            assert!(
                all.iter().any(|o| distance(*o, q) < 1e-9),
                "{rules:?}: {p} has no image"
            );
        }
    }
}

#[test]
fn the_board_shows_its_face_and_the_ring_its_opening() {
    for rules in RuleSet::ALL {
        let m = *Court::of(rules).marks();
        let board = &lines(rules, LineRole::Board)[0];
        for p in corners(&board.path) {
            near(p.y + 0.5 * board.width, -m.board);
            near(p.x.abs(), m.board_half);
        }
        let ring = &lines(rules, LineRole::Ring)[0];
        for p in corners(&ring.path) {
            near(distance(p, Point::ORIGIN) - 0.5 * ring.width, m.ring);
        }
    }
}

#[test]
fn a_point_that_is_no_number_is_nowhere() {
    let court = Court::of(RuleSet::Fiba);
    for p in [Point::new(f64::NAN, 1.0), Point::new(1.0, f64::NAN)] {
        assert!(!court.in_bounds(p, 0.0) && !court.in_lane(p) && !court.is_three(p));
    }
}

#[test]
fn in_bounds_keeps_the_margin_from_sidelines_and_end_line() {
    let court = Court::of(RuleSet::Fiba);
    assert!(court.in_bounds(Point::new(7.3, 0.0), 0.2));
    assert!(!court.in_bounds(Point::new(7.31, 0.0), 0.2));
    assert!(!court.in_bounds(Point::new(0.0, -1.5), 0.2));
    assert!(court.in_bounds(Point::new(0.0, -1.9), -0.4));
    assert!(court.in_bounds(Point::new(0.0, 12.425), 0.2));
}
