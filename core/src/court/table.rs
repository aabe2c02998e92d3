//! The published numbers of each court, in the unit in which its rules print them.
//!
//! `y` values count from the inner edge of the end line into the court, `x` values from the line
//! between the baskets. Sources, a column each:
//!
//! * **FIBA** (mm): FIBA Official Basketball Rules 2022, Turkish federation's edition (in force
//!   1 July 2023), Art. 2.1–2.5 and 27; two throw-in lines a sideline: the same federation's
//!   presentation of the 2024 changes, Diagram 1. Ring: Official Basketball Rules 2024, Basketball
//!   Equipment, through an encyclopedia article. Board size: from memory. Lane-space marks: the
//!   court table of sportypy 1.0.0, the 1.75 m and 0.85 m also in a line-marking guide.
//! * **NBA** (in): NBA Official Rules 2025-26, court diagram p. 8, Rule 1 Sec. I–II; frontcourt Rule
//!   4 Sec. VI; lane area behind the end line Rule 10 Sec. VI, which has no closely guarded count.
//! * **WNBA** (in): WNBA Official Rules 2025, court diagram p. A, Rule 1 Sec. I–II, Rule 4 Sec. VI,
//!   Rule 10. The diagram gives the outer edge of the no-charge arc (the NBA's gives the inner).
//! * **NCAA** men and women (in): Men's and Women's Basketball Court diagram of 17 June 2019. The
//!   three-point line: lists of rule changes, men 2020-21 (Rule 2-11.6), women 2021-22 and 2022-23
//!   (Rule 1-7.1); the diagram's 20'9" women's arc is out of date. Board and ring height, end of
//!   the no-charge arc below the board: from memory. Order of the lane-space marks: sportypy 1.0.0.
//!   Closely guarded: NCAA Rules 2011-13, Rule 4-35.2 (men), report on the 2013-14 changes (women).
//! * **NFHS** (in): Basketball Rules Book 2025-26, Rule 1 (court and equipment), 4-10 and 4-13-1,
//!   7-5 (throw-in spots); start of the lane-space marks: sportypy 1.0.0.

use super::RuleSet;

/// The unit of a column. A length is a short decimal or binary fraction of it, so that sums in the
/// unit are exact and the one division below rounds once: 4225 mm is the very number 4.225.
#[derive(Clone, Copy, Debug)]
pub(super) enum Unit {
    Millimetre,
    Inch,
}

impl Unit {
    /// `length` in metres. 1 in = 25.4 mm exactly.
    pub(super) fn metres(self, length: f64) -> f64 {
        match self {
            Self::Millimetre => length / 1000.0,
            Self::Inch => length * 254.0 / 10_000.0,
        }
    }
}

/// Which edge of the throw-in mark the published distance reaches, and on which side of the
/// sideline the mark lies.
#[derive(Clone, Copy, Debug)]
pub(super) enum ThrowInMark {
    /// To the edge farther from the end line; drawn outside the court.
    FarEdgeOutside,
    /// To the edge nearer to the end line; drawn onto the court.
    NearEdgeInside,
    /// To the edge nearer to the end line; drawn outside the court.
    NearEdgeOutside,
}

/// A column of the table; every length in `unit`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Published {
    pub(super) unit: Unit,
    /// Inner edge to inner edge of the end lines.
    pub(super) length: f64,
    /// Inner edge to inner edge of the sidelines.
    pub(super) width: f64,
    pub(super) line: f64,
    /// How far the centre line runs on beyond the outer edge of each sideline.
    pub(super) centre_beyond: f64,
    /// Centre of the ring, `y`.
    pub(super) basket: f64,
    /// Inner diameter.
    pub(super) ring: f64,
    /// Floor to the ring's upper edge.
    pub(super) ring_height: f64,
    /// Front face of the board, `y`.
    pub(super) board: f64,
    pub(super) board_width: f64,
    /// Ring to the outer edge of the arc.
    pub(super) arc: f64,
    /// Inner edge of the sideline to the outer edge of the straight three-point line.
    pub(super) corner_gap: f64,
    /// Outer edge to outer edge.
    pub(super) lane_width: f64,
    /// Far edge of the free-throw line, `y`.
    pub(super) free_throw: f64,
    /// Outer radius of the free-throw and the centre circle.
    pub(super) circle: f64,
    /// Inner radius of the small circle in the middle of the court.
    pub(super) small_circle: Option<f64>,
    /// Whether the half of the free-throw circle towards the basket is drawn, dashed.
    pub(super) dashed_half: bool,
    /// Ring to the inner edge of the no-charge arc.
    pub(super) no_charge: Option<f64>,
    /// Throw-in mark, `y`.
    pub(super) throw_in: f64,
    pub(super) throw_in_mark: ThrowInMark,
    pub(super) throw_in_length: f64,
    /// Lane-space marks: the edges nearer to and farther from the end line of each, `y`.
    pub(super) lane_marks: [(f64, f64); 4],
    /// How far they stick out of the lane.
    pub(super) lane_mark_depth: f64,
    /// End-line hash: outer edge of the lane to the near edge of the mark, and its length.
    pub(super) end_hash: Option<(f64, f64)>,
    /// Marks in the lane that bound the lower defensive box: `y` of the near edge, distance from
    /// the lane's outer edge, length.
    pub(super) box_mark: Option<(f64, f64, f64)>,
    /// Distance of a closely guarding defender.
    pub(super) closely_guarded: Option<f64>,
    /// How far the area of the offensive three-second rule runs on behind the end line.
    pub(super) lane_behind: f64,
}

/// Feet and inches, in inches.
const fn ft(feet: f64, inches: f64) -> f64 {
    12.0 * feet + inches
}

const FIBA: Published = Published {
    unit: Unit::Millimetre,
    length: 28_000.0,
    width: 15_000.0,
    line: 50.0,
    centre_beyond: 150.0,
    basket: 1575.0,
    // The lower bound of the tolerance, 450 to 459.
    ring: 450.0,
    ring_height: 3050.0,
    // Art. 2.5.7. Not ring less equipment gap, which gives 1 mm less: the court rule goes first.
    board: 1200.0,
    board_width: 1800.0,
    arc: 6750.0,
    corner_gap: 900.0,
    lane_width: 4900.0,
    free_throw: 5800.0,
    circle: 1800.0,
    small_circle: None,
    dashed_half: false,
    no_charge: Some(1250.0),
    throw_in: 8325.0,
    throw_in_mark: ThrowInMark::FarEdgeOutside,
    throw_in_length: 150.0,
    lane_marks: [
        (1750.0, 1800.0),
        (2650.0, 3050.0),
        (3900.0, 3950.0),
        (4800.0, 4850.0),
    ],
    lane_mark_depth: 100.0,
    end_hash: None,
    box_mark: None,
    closely_guarded: Some(1000.0),
    lane_behind: 0.0,
};

const NBA: Published = Published {
    unit: Unit::Inch,
    length: ft(94.0, 0.0),
    width: ft(50.0, 0.0),
    line: 2.0,
    centre_beyond: 0.0,
    basket: ft(5.0, 3.0),
    // Rule 1 Sec. II(d). The diagram's "18 in radius" is a slip.
    ring: 18.0,
    ring_height: ft(10.0, 0.0),
    board: ft(4.0, 0.0),
    board_width: ft(6.0, 0.0),
    arc: ft(23.0, 9.0),
    corner_gap: ft(3.0, 0.0),
    lane_width: ft(16.0, 0.0),
    free_throw: ft(19.0, 0.0),
    circle: ft(6.0, 0.0),
    small_circle: Some(ft(2.0, 0.0)),
    dashed_half: true,
    no_charge: Some(ft(4.0, 0.0)),
    throw_in: ft(28.0, 0.0),
    throw_in_mark: ThrowInMark::NearEdgeInside,
    throw_in_length: ft(3.0, 0.0),
    // From the board's face: 3', a zone of 1' with a line at either end, 3', 2", 3', 2".
    lane_marks: [
        (ft(7.0, 0.0), ft(7.0, 2.0)),
        (ft(7.0, 10.0), ft(8.0, 0.0)),
        (ft(11.0, 0.0), ft(11.0, 2.0)),
        (ft(14.0, 2.0), ft(14.0, 4.0)),
    ],
    lane_mark_depth: 6.0,
    end_hash: Some((ft(3.0, 0.0), 6.0)),
    box_mark: Some((ft(13.0, 0.0), ft(3.0, 0.0), 6.0)),
    closely_guarded: None,
    lane_behind: ft(4.0, 0.0),
};

const WNBA: Published = Published {
    arc: ft(22.0, 1.75),
    // 4' to the outer edge of a 2" line.
    no_charge: Some(ft(4.0, -2.0)),
    // Rule 1 Sec. I(b); the diagram draws 6".
    lane_mark_depth: 8.0,
    ..NBA
};

const NCAA: Published = Published {
    arc: ft(22.0, 1.75),
    corner_gap: 40.125,
    lane_width: ft(12.0, 0.0),
    small_circle: None,
    dashed_half: false,
    throw_in_mark: ThrowInMark::NearEdgeOutside,
    // The end of the bench area; the length is from memory.
    throw_in_length: ft(1.0, 0.0),
    // A block of 1', then three lines 3' apart.
    lane_marks: [
        (ft(7.0, 0.0), ft(8.0, 0.0)),
        (ft(11.0, 0.0), ft(11.0, 2.0)),
        (ft(14.0, 2.0), ft(14.0, 4.0)),
        (ft(17.0, 4.0), ft(17.0, 6.0)),
    ],
    lane_mark_depth: 8.0,
    end_hash: None,
    box_mark: None,
    closely_guarded: Some(ft(6.0, 0.0)),
    lane_behind: 0.0,
    ..NBA
};

const NCAA_WOMEN: Published = Published {
    // Lower defensive box, women only.
    end_hash: Some((ft(3.0, 0.0), ft(1.0, 0.0))),
    ..NCAA
};

const NFHS: Published = Published {
    // The ideal length; a gym may have up to 94'.
    length: ft(84.0, 0.0),
    arc: ft(19.0, 9.0),
    // 25' less 19'9": the straight lines are tangents of the arc (on a floor 50' wide).
    corner_gap: ft(5.0, 3.0),
    no_charge: None,
    lane_marks: [
        (ft(7.0, 10.0), ft(8.0, 0.0)),
        (ft(11.0, 0.0), ft(11.0, 2.0)),
        (ft(14.0, 2.0), ft(14.0, 4.0)),
        (ft(17.0, 4.0), ft(17.0, 6.0)),
    ],
    ..NCAA
};

/// The column of `rules`.
pub(super) fn published(rules: RuleSet) -> &'static Published {
    match rules {
        RuleSet::Fiba => &FIBA,
        RuleSet::Nba => &NBA,
        RuleSet::Wnba => &WNBA,
        RuleSet::NcaaMen => &NCAA,
        RuleSet::NcaaWomen => &NCAA_WOMEN,
        RuleSet::Nfhs => &NFHS,
    }
}
