//! The courts against figures worked out by hand from the rule books.
//!
//! Sources of the published values, by column:
//! FIBA: FIBA Official Basketball Rules 2022 (Turkish federation's edition), Art. 2.1–2.5, 27, and
//! its 2024 changes, Diagram 1; lane-space marks: court table of sportypy 1.0.0.
//! NBA: Official Rules 2025-26, diagram p. 8, Rules 1, 4, 10. WNBA: Official Rules 2025, diagram p. A.
//! NCAA: court diagram of 17 June 2019; rule changes 2020-21 (men), 2021-22 (women).
//! NFHS: Basketball Rules Book 2025-26, Rules 1, 4-10, 4-13.
//! 1 ft = 0.3048 m and 1 in = 0.0254 m exactly (international yard and pound agreement, 1959).
//!
//! Printed values stand here as numbers of their own: nothing is taken from the library but
//! what it is asked for.

use backcut::court::{Court, LineRole, Marks, RuleSet, Side, Spot, SpotName, mirrored};
use backcut::math::Point;
use proptest::prelude::*;

const FT: f64 = 0.3048;
const IN: f64 = 0.0254;

const NCAA: [RuleSet; 2] = [RuleSet::NcaaMen, RuleSet::NcaaWomen];
const IMPERIAL: [RuleSet; 5] = [
    RuleSet::Nba,
    RuleSet::Wnba,
    RuleSet::NcaaMen,
    RuleSet::NcaaWomen,
    RuleSet::Nfhs,
];

fn marks(rules: RuleSet) -> Marks {
    *Court::of(rules).marks()
}

#[track_caller]
fn within(found: f64, expected: f64, tolerance: f64) {
    assert!(
        (found - expected).abs() <= tolerance,
        "found {found}, expected {expected}"
    );
}

#[track_caller]
fn is(found: f64, expected: f64) {
    within(found, expected, 1e-6);
}

/// Length of the straight three-point line from the end line.
fn straight(m: &Marks) -> f64 {
    m.baseline + m.join
}

/// Angle at the ring between the axis through both corners and the join, degrees.
fn join_deg(m: &Marks) -> f64 {
    m.join.atan2(m.corner).to_degrees()
}

/// Ring to the outer corner of lane and free-throw line.
fn elbow(m: &Marks) -> f64 {
    m.lane.hypot(m.free_throw)
}

/// Lane-space mark edges from the end line.
fn lane_edges(m: &Marks) -> Vec<f64> {
    let from_end = |y: f64| y + m.baseline;
    m.lane_marks
        .iter()
        .flat_map(|mark| [from_end(mark.from), from_end(mark.to)])
        .collect()
}

#[track_caller]
fn all_are(found: &[f64], expected: &[f64]) {
    assert_eq!(found.len(), expected.len());
    for (f, e) in found.iter().zip(expected) {
        is(*f, *e);
    }
}

/// Check 1. FIBA Art. 2.5.4: arc 6.75, corner 7.50 − 0.90; √(45.5625 − 43.56).
#[test]
fn check_01_fiba_join_above_the_ring() {
    is(marks(RuleSet::Fiba).join, 1.415_097);
}

/// Check 2. FIBA Art. 2.5.4: ring 1.575 from the end line, plus check 1.
#[test]
fn check_02_fiba_straight_part() {
    is(straight(&marks(RuleSet::Fiba)), 2.990_097);
}

/// Check 3. FIBA Art. 2.5.4: atan(1.415097 / 6.60).
#[test]
fn check_03_fiba_span_of_the_arc() {
    let side = join_deg(&marks(RuleSet::Fiba));
    within(side, 12.1015, 1e-3);
    within(180.0 - 2.0 * side, 155.7970, 1e-3);
}

/// Check 4. FIBA Art. 2.5.4 and 2.5.6: the arc's top is level with the throw-in line's far edge.
#[test]
fn check_04_fiba_top_of_the_arc_is_the_throw_in_line() {
    let m = marks(RuleSet::Fiba);
    is(m.baseline + m.arc, 8.325);
    is(m.throw_in, m.arc);
}

/// Check 5. FIBA Art. 2.5.4: √(6.60² + 1.575²), and 6.60 beside the ring.
#[test]
fn check_05_fiba_corner_distances() {
    let m = marks(RuleSet::Fiba);
    is(m.corner.hypot(m.baseline), 6.785_324);
    is(m.corner, 6.60);
}

/// Check 6. FIBA Art. 2.5.3 and 2.5.7: far edge 5.80, ring 1.575, board 1.20 from the end line.
#[test]
fn check_06_fiba_free_throw_line() {
    let m = marks(RuleSet::Fiba);
    is(m.free_throw, 4.225);
    is(m.free_throw + m.board, 4.60);
}

/// Check 7. FIBA Art. 2.5.3: √(2.45² + 4.225²).
#[test]
fn check_07_fiba_elbow() {
    is(elbow(&marks(RuleSet::Fiba)), 4.883_966);
}

/// Check 8. FIBA Art. 2.5.7: straight piece 1.575 − 1.20, top by the inner edge 1.575 + 1.25.
#[test]
fn check_08_fiba_no_charge_area() {
    let m = marks(RuleSet::Fiba);
    let area = m.no_charge.unwrap();
    is(area.straight, 0.375);
    is(m.baseline + area.inner, 2.825);
}

/// Check 9. sportypy 1.0.0: 1.75 + .05 + .85 + .40 + .85 + .05 + .85 + .05 = 4.85.
#[test]
fn check_09_fiba_lane_marks() {
    all_are(
        &lane_edges(&marks(RuleSet::Fiba)),
        &[1.75, 1.80, 2.65, 3.05, 3.90, 3.95, 4.80, 4.85],
    );
}

/// Check 10. Corner line and its gap make half the width: FIBA Art. 2.1, 2.5.4; NCAA changes 2020-21;
/// NBA Rule 1 Sec. I(d).
#[test]
fn check_10_widths_close() {
    let fiba = marks(RuleSet::Fiba);
    is(2.0 * (fiba.corner + 0.90), 15.0);
    is(2.0 * fiba.sideline, 15.0);
    for rules in NCAA {
        let m = marks(rules);
        is(m.corner, 21.0 * FT + 7.875 * IN);
        is(2.0 * (m.corner + 40.125 * IN), 15.24);
        is(2.0 * m.sideline, 300.0 * 2.0 * IN);
    }
    let nba = marks(RuleSet::Nba);
    is(nba.corner, 22.0 * FT);
    is(2.0 * (nba.corner + 3.0 * FT), 50.0 * FT);
    is(2.0 * nba.sideline, 50.0 * FT);
}

/// Check 11. NBA Rule 1 Sec. I(d): √(23.75² − 22²) ft = 8.947765 ft.
#[test]
fn check_11_nba_join_above_the_ring() {
    is(marks(RuleSet::Nba).join, 2.727_279);
}

/// Check 12. NBA diagram p. 8: 5'3" + 8.947765 ft; the printed 14' is 60.3 mm short.
#[test]
fn check_12_nba_straight_part() {
    let m = marks(RuleSet::Nba);
    is(straight(&m), 4.327_479);
    within(straight(&m), 14.0 * FT, 0.061);
}

/// Check 13. NBA diagram p. 8: atan(8.947765 / 22); 5'3" + 23'9" = 29', 1' past the 28' mark.
#[test]
fn check_13_nba_arc() {
    let m = marks(RuleSet::Nba);
    within(join_deg(&m), 22.1324, 1e-3);
    within(180.0 - 2.0 * join_deg(&m), 135.7352, 1e-3);
    is(m.baseline + m.arc, 8.8392);
    is(m.arc - m.throw_in, FT);
}

/// Check 14. WNBA Rule 1 Sec. I(d): R = 22'1 3/4", corner 22'; straight part 93.4477 in.
#[test]
fn check_14_wnba_join() {
    let m = marks(RuleSet::Wnba);
    is(m.arc, 22.0 * FT + 1.75 * IN);
    is(m.join, 0.773_372);
    is(straight(&m), 2.373_572);
}

/// Check 15. NCAA changes 2020-21 and 2021-22: R = 22'1 3/4", corner 21'7 7/8"; printed 118.375 in.
#[test]
fn check_15_ncaa_join() {
    for rules in NCAA {
        let m = marks(rules);
        is(m.join, 1.411_483);
        is(straight(&m), 3.011_683);
        within(straight(&m), 118.375 * IN, 0.0051);
    }
}

/// Check 16. NFHS Rule 1-4-1: a semicircle with tangents; 5'3" + 19'9" = 25' = half the width.
#[test]
fn check_16_nfhs_semicircle() {
    let m = marks(RuleSet::Nfhs);
    is(m.join, 0.0);
    is(m.baseline + m.arc, 7.62);
    is(m.sideline - m.corner, 1.6002);
}

/// Check 17. NBA diagram p. 8, NFHS Rules 1-8 to 1-11: 4' + 6" + 9" = 63"; 19' − 5'3" = 13'9".
#[test]
fn check_17_imperial_ring_and_free_throw_line() {
    for rules in IMPERIAL {
        let m = marks(rules);
        is(m.baseline, 1.6002);
        is(m.baseline - m.board, 4.0 * FT);
        is(m.board - m.ring, 6.0 * IN);
        is(m.ring, 9.0 * IN);
        is(m.free_throw, 4.191);
    }
}

/// Check 18. NBA diagram p. 8: √(8² + 13.75²) ft; NCAA diagram, NFHS Rule 1-5-1: √(6² + 13.75²) ft.
#[test]
fn check_18_elbows() {
    is(elbow(&marks(RuleSet::Nba)), 4.848_740);
    is(elbow(&marks(RuleSet::Wnba)), 4.848_740);
    for rules in [RuleSet::NcaaMen, RuleSet::NcaaWomen, RuleSet::Nfhs] {
        is(elbow(&marks(rules)), 4.572_635);
    }
}

/// Check 19. NBA diagram p. 8: from the end line 4' 3' 1' 3' 2" 3' 2" 4'6" to the near edge of the
/// free-throw line at 18'10".
#[test]
fn check_19_nba_lane_marks() {
    let m = marks(RuleSet::Nba);
    let edges = lane_edges(&m);
    let chain = [
        7.0,
        8.0,
        11.0,
        11.0 + 2.0 / 12.0,
        14.0 + 2.0 / 12.0,
        14.0 + 4.0 / 12.0,
    ];
    let found = [edges[0], edges[3], edges[4], edges[5], edges[6], edges[7]];
    all_are(&found, &chain.map(|feet| feet * FT));
    let near_edge = m.baseline + m.free_throw - m.line_width;
    is(near_edge, 18.0 * FT + 10.0 * IN);
    is(near_edge - edges[7], 4.0 * FT + 6.0 * IN);
    is(near_edge + 2.0 * IN, 19.0 * FT);
}

/// Check 20. FIBA Art. 2.4, 2.5.2; NBA and WNBA Rule 4 Sec. VI; NCAA 2011-13 Rule 4-3; NFHS Rule 4-13-1:
/// the frontcourt ends at the nearer edge of the half-court line.
#[test]
fn check_20_frontcourt_limit() {
    let limit = |rules| marks(rules).frontcourt + marks(rules).baseline;
    is(limit(RuleSet::Fiba), 13.975);
    is(marks(RuleSet::Fiba).frontcourt, 12.40);
    for rules in [
        RuleSet::Nba,
        RuleSet::Wnba,
        RuleSet::NcaaMen,
        RuleSet::NcaaWomen,
    ] {
        is(limit(rules), 14.3002);
    }
    is(limit(RuleSet::Nfhs), 12.7762);
}

/// Check 21. FIBA Art. 27; NCAA 2013-14 changes; NFHS Rule 4-10; NBA and WNBA Rule 10 (no count, Sec. VI
/// for the lane behind the end line).
#[test]
fn check_21_closely_guarded_and_lane_behind_the_end_line() {
    is(marks(RuleSet::Fiba).closely_guarded.unwrap(), 1.00);
    for rules in [RuleSet::NcaaMen, RuleSet::NcaaWomen, RuleSet::Nfhs] {
        is(marks(rules).closely_guarded.unwrap(), 1.8288);
        is(marks(rules).lane_behind, 0.0);
    }
    for rules in [RuleSet::Nba, RuleSet::Wnba] {
        assert_eq!(marks(rules).closely_guarded, None);
        is(marks(rules).lane_behind, 1.2192);
    }
}

/// WNBA diagram p. A gives 4' to the outer edge, the others 4' to the inner; NFHS Rule 1 has none.
#[test]
fn no_charge_arc_by_its_published_edge() {
    let inner = |rules| marks(rules).no_charge.map(|area| area.inner);
    is(inner(RuleSet::Nba).unwrap(), 4.0 * FT);
    is(inner(RuleSet::Wnba).unwrap() + 2.0 * IN, 4.0 * FT);
    for rules in NCAA {
        is(inner(rules).unwrap(), 4.0 * FT);
    }
    assert_eq!(inner(RuleSet::Nfhs), None);
}

/// NBA diagram p. 8 prints 20'11" from the board's face to the top of the free-throw circle.
#[test]
fn free_throw_circle_is_centred_in_the_width_of_the_line() {
    let m = marks(RuleSet::Nba);
    is(m.board + m.circle_centre + m.circle, 20.0 * FT + 11.0 * IN);
}

fn every_spot() -> Vec<Spot> {
    SpotName::TABLE
        .iter()
        .flat_map(|(name, .., sided)| {
            let sides: &[Option<Side>] = if *sided {
                &[Some(Side::Left), Some(Side::Right)]
            } else {
                &[None]
            };
            sides.iter().map(|side| Spot {
                name: *name,
                side: *side,
            })
        })
        .collect()
}

/// Common practice, no source: the places a coach means, in numbers on a FIBA court.
#[test]
fn fiba_spots_lie_where_a_coach_puts_them() {
    let court = Court::of(RuleSet::Fiba);
    for (text, x, y) in [
        ("top", 0.0, 7.15),
        ("deep top", 0.0, 9.15),
        ("right slot", 2.91, 6.53),
        ("right wing", 5.77, 4.23),
        ("right low wing", 6.83, 2.11),
        ("right corner", 7.00, -0.38),
        ("right short corner", 4.53, -0.68),
        ("right dunker spot", 2.90, -0.68),
        ("right block", 2.80, 1.23),
        ("right mid post", 2.80, 2.73),
        ("right elbow", 2.45, 4.58),
        ("right high elbow", 2.60, 5.63),
        ("high post", 0.0, 4.58),
        ("nail", 0.0, 4.23),
        ("mid paint", 0.0, 2.51),
        ("low paint", 0.0, 1.60),
        ("rim", 0.0, 0.60),
        ("right BLOB spot", 3.10, -1.93),
        ("right SLOB spot", 7.85, 6.75),
    ] {
        let at = court.spot(Spot::parse(text).unwrap());
        assert!(
            (at.x - x).abs() < 0.01 && (at.y - y).abs() < 0.01,
            "{text} lies at {at}"
        );
    }
}

#[test]
fn all_spots_but_the_throw_ins_lie_on_every_court() {
    for rules in RuleSet::ALL {
        let court = Court::of(rules);
        for spot in every_spot() {
            let outside = matches!(spot.name, SpotName::Blob | SpotName::Slob);
            let at = court.spot(spot);
            assert_eq!(
                court.in_bounds(at, 0.0),
                !outside,
                "{} {rules:?}",
                spot.title()
            );
        }
    }
}

/// A spot keeps its meaning from court to court: feet behind the line, in or out of the lane.
#[test]
fn spots_keep_their_meaning_on_every_court() {
    use SpotName as S;
    for rules in RuleSet::ALL {
        let court = Court::of(rules);
        for spot in every_spot() {
            let at = court.spot(spot);
            let three = matches!(
                spot.name,
                S::Top
                    | S::DeepTop
                    | S::Logo
                    | S::Slot
                    | S::Wing
                    | S::LowWing
                    | S::Corner
                    | S::Slob
            );
            let lane = matches!(spot.name, S::Nail | S::MidPaint | S::LowPaint | S::Rim);
            assert_eq!(court.is_three(at), three, "{} {rules:?}", spot.title());
            assert_eq!(court.in_lane(at), lane, "{} {rules:?}", spot.title());
        }
    }
}

#[test]
fn spots_mirror_to_the_bit() {
    for rules in RuleSet::ALL {
        let court = Court::of(rules);
        for spot in every_spot() {
            let (image, twice) = (
                court.spot(spot.mirrored()),
                mirrored(mirrored(court.spot(spot))),
            );
            assert_eq!(bits(image), bits(mirrored(court.spot(spot))));
            assert_eq!(bits(twice), bits(court.spot(spot)));
        }
    }
}

fn bits(p: Point) -> (u64, u64) {
    (p.x.to_bits(), p.y.to_bits())
}

#[test]
fn each_court_has_the_lines_of_its_rules() {
    for rules in RuleSet::ALL {
        let lines = Court::of(rules).lines();
        let count = |role| lines.iter().filter(|l| l.role == role).count();
        for role in [
            LineRole::Boundary,
            LineRole::Lane,
            LineRole::Arc,
            LineRole::Ring,
            LineRole::Board,
        ] {
            assert_eq!(count(role), 1, "{role:?} {rules:?}");
        }
        assert_eq!(
            count(LineRole::NoCharge),
            usize::from(rules != RuleSet::Nfhs)
        );
        // Eight lane-space marks and two throw-in marks at least.
        assert!(count(LineRole::Mark) >= 10, "{rules:?}");
    }
}

proptest! {
    /// The rule in words: beyond the straight line below the join, else beyond the arc.
    #[test]
    fn prop_three_points_begin_at_the_published_line(
        rules in prop::sample::select(&RuleSet::ALL[..]), x in -7.6..7.6_f64, y in -1.6..11.0_f64,
    ) {
        let m = marks(rules);
        let expected = x.abs() > m.corner || (y > 0.0 && x.hypot(y) > m.arc);
        prop_assume!((x.abs() - m.corner).abs() > 1e-9 && (x.hypot(y) - m.arc).abs() > 1e-9);
        prop_assert_eq!(Court::of(rules).is_three(Point::new(x, y)), expected);
    }
}

/// Youth spots lie inside the arc: common practice, no source.
#[test]
fn young_players_stand_inside_the_arc_on_every_court() {
    for rules in RuleSet::ALL {
        let court = Court::of(rules).for_youth();
        for name in ["top", "left slot", "right wing", "left corner"] {
            let p = court.spot(Spot::parse(name).unwrap());
            assert!(!court.is_three(p), "{name} of {rules:?}");
            assert!(
                court.in_bounds(p, -0.4) && !court.in_lane(p),
                "{name} of {rules:?}: {p:?}"
            );
        }
    }
}
