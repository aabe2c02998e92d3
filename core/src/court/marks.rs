//! The marks of a court in the court frame.

use super::RuleSet;
use super::table::{Published, published};
use crate::math::sqrt;

/// The marks that spots, lines and rules need, metres in the court frame, measured to the edge by
/// which the rules measure them. Sources: the head of the court's table, a column each.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Marks {
    /// Axis → inner edge of the sideline.
    pub sideline: f64,
    /// Ring → inner edge of the end line (a positive length; the line lies at `y = -baseline`).
    pub baseline: f64,
    /// Ring → the middle of the half-court line.
    pub half: f64,
    /// Ring → the edge of the half-court line nearer to it: here the frontcourt ends, the line is
    /// backcourt.
    pub frontcourt: f64,
    /// Width of every line.
    pub line_width: f64,
    /// Ring → far edge of the free-throw line.
    pub free_throw: f64,
    /// Axis → outer edge of the lane line.
    pub lane: f64,
    /// How far the area of the three-second rule runs on behind the end line; zero where it ends
    /// there.
    pub lane_behind: f64,
    /// Outer radius of the free-throw and the centre circle.
    pub circle: f64,
    /// Ring → centre of the free-throw circle, the middle of the free-throw line's width.
    pub circle_centre: f64,
    /// Ring → outer edge of the three-point arc.
    pub arc: f64,
    /// Axis → outer edge of the straight three-point line.
    pub corner: f64,
    /// Ring → the height at which arc and straight line join, by their outer edges.
    pub join: f64,
    /// The no-charge area; `None` where the rules draw none.
    pub no_charge: Option<NoCharge>,
    /// Inner radius of the ring.
    pub ring: f64,
    /// Floor → upper edge of the ring.
    pub ring_height: f64,
    /// Ring → front face of the board (a positive length; it lies at `y = -board`).
    pub board: f64,
    /// Half the width of the board.
    pub board_half: f64,
    /// Ring → where a low post stands beside the block.
    pub block: f64,
    /// The lane-space marks of one lane line, nearest to the end line first.
    pub lane_marks: [LaneMark; 4],
    /// How far the lane-space marks stick out of the lane.
    pub lane_mark_depth: f64,
    /// Ring → the sideline throw-in mark of a frontcourt possession: its edge away from the end
    /// line in FIBA's rules, its edge toward the end line in all others.
    pub throw_in: f64,
    /// Largest distance of a closely guarding defender; `None` where no count exists.
    pub closely_guarded: Option<f64>,
}

/// The area under the ring in which a defender's stance draws no charge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoCharge {
    /// Ring → inner edge of the arc.
    pub inner: f64,
    /// Length of the straight piece at each end of the arc, as far as below the board's face.
    pub straight: f64,
}

/// One lane-space mark: its edges along the lane line, `y` in the court frame.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LaneMark {
    /// The edge nearer to the end line.
    pub from: f64,
    /// The edge nearer to half court.
    pub to: f64,
}

/// The court of one rule set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Court {
    rules: RuleSet,
    marks: Marks,
    /// How far outside the arc the perimeter spots lie, metres; negative: inside.
    outside: f64,
}

/// Feet behind the arc. Common practice, no source.
const BEHIND_THE_ARC: f64 = 0.40;
/// Where young players stand to pass and shoot: well inside. Common practice, no source.
const YOUTH: f64 = -0.60;

impl Court {
    /// The half court of `rules`.
    ///
    /// ```
    /// use backcut::court::{Court, RuleSet};
    /// assert_eq!(Court::of(RuleSet::Fiba).marks().free_throw, 4.225);
    /// ```
    #[must_use]
    pub fn of(rules: RuleSet) -> Self {
        Self {
            rules,
            marks: in_court_frame(published(rules), block(rules)),
            outside: BEHIND_THE_ARC,
        }
    }

    /// The same floor with the perimeter spots where young players stand.
    #[must_use]
    pub fn for_youth(self) -> Self {
        Self {
            outside: YOUTH,
            ..self
        }
    }

    /// How far outside the arc the perimeter spots lie, metres; negative: inside.
    #[must_use]
    pub fn outside(&self) -> f64 {
        self.outside
    }

    /// Whose court it is.
    #[must_use]
    pub fn rules(&self) -> RuleSet {
        self.rules
    }

    /// Its marks.
    #[must_use]
    pub fn marks(&self) -> &Marks {
        &self.marks
    }
}

/// Ring → where a low post stands. Common practice, no source: beside the neutral zone.
fn block(rules: RuleSet) -> f64 {
    match rules {
        RuleSet::Fiba => 1.23,
        _ => 0.69,
    }
}

/// Sums are taken in the published unit, where they are exact, and turned into metres last.
fn in_court_frame(p: &Published, block: f64) -> Marks {
    let m = |length: f64| p.unit.metres(length);
    let from_ring = |y: f64| m(y - p.basket);
    let corner = m(0.5 * p.width - p.corner_gap);
    let arc = m(p.arc);
    Marks {
        sideline: m(0.5 * p.width),
        baseline: m(p.basket),
        half: from_ring(0.5 * p.length),
        frontcourt: from_ring(0.5 * p.length - 0.5 * p.line),
        line_width: m(p.line),
        free_throw: from_ring(p.free_throw),
        lane: m(0.5 * p.lane_width),
        lane_behind: m(p.lane_behind),
        circle: m(p.circle),
        circle_centre: from_ring(p.free_throw - 0.5 * p.line),
        arc,
        corner,
        join: join(arc, corner),
        no_charge: p.no_charge.map(|inner| NoCharge {
            inner: m(inner),
            straight: m(p.basket - p.board),
        }),
        ring: m(0.5 * p.ring),
        ring_height: m(p.ring_height),
        board: m(p.basket - p.board),
        board_half: m(0.5 * p.board_width),
        block,
        lane_marks: p.lane_marks.map(|(from, to)| LaneMark {
            from: from_ring(from),
            to: from_ring(to),
        }),
        lane_mark_depth: m(p.lane_mark_depth),
        throw_in: from_ring(p.throw_in),
        closely_guarded: p.closely_guarded.map(m),
    }
}

/// The height at which a circle of radius `arc` about the ring meets the straight line at
/// `x = corner`. Printed lengths of the straight line are rounded, in part by centimetres; this
/// closes the line.
pub(super) fn join(arc: f64, corner: f64) -> f64 {
    sqrt((arc * arc - corner * corner).max(0.0))
}
