//! The numbers of each court.

use super::RuleSet;

/// The marks that spots and rules need, metres in the court frame, measured to the edge by which
/// the rules measure them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Marks {
    /// Axis → inner edge of the sideline.
    pub sideline: f64,
    /// Ring → inner edge of the end line (a positive length; the line lies at `y = -baseline`).
    pub baseline: f64,
    /// Ring → the middle of the half-court line.
    pub half: f64,
    /// Ring → far edge of the free-throw line.
    pub free_throw: f64,
    /// Axis → outer edge of the lane line.
    pub lane: f64,
    /// Ring → outer edge of the three-point arc.
    pub arc: f64,
    /// Axis → outer edge of the straight three-point line.
    pub corner: f64,
    /// Ring → the height of the block mark.
    pub block: f64,
    /// Ring → the sideline throw-in mark of a frontcourt possession.
    pub throw_in: f64,
}

/// The court of one rule set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Court {
    rules: RuleSet,
    marks: Marks,
}

impl Court {
    /// The half court of `rules`.
    #[must_use]
    pub fn of(rules: RuleSet) -> Self {
        // PLACEHOLDER until the court tables land.
        Self {
            rules,
            marks: Marks {
                sideline: 7.5,
                baseline: 1.575,
                half: 12.425,
                free_throw: 4.225,
                lane: 2.45,
                arc: 6.75,
                corner: 6.6,
                block: 1.23,
                throw_in: 6.75,
            },
        }
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
