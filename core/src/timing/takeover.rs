//! How a set goes on from where another was left: who is under way, and where the ball is.

use crate::choreography::{Entry, Leg};
use crate::math::Point;
use crate::set::{ActionId, PlayerId};
use alloc::vec::Vec;

/// What is left of a way that was under way.
#[derive(Clone, Debug, PartialEq)]
pub struct Onward {
    /// The action of the set that takes over.
    pub id: ActionId,
    /// Whose way.
    pub who: PlayerId,
    /// What is left of it; takes the place of what would be laid.
    pub legs: Vec<Leg>,
}

/// A ball that is in the air when a set takes over.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Coming {
    /// Who catches it.
    pub to: PlayerId,
    /// From where it was thrown.
    pub from: Point,
    /// When it is caught, seconds.
    pub at: f64,
}

/// What a set that takes over starts from.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Takeover {
    /// Who comes in under way, by [`PlayerId::index`]; a first own move goes on from there.
    pub entries: [Option<Entry>; 5],
    /// Ways to go on with.
    pub onward: Vec<Onward>,
    /// Seconds until the ball is in its holder's hands.
    pub ball: f64,
    /// The pass that is under way.
    pub coming: Option<Coming>,
}

#[cfg(feature = "authoring")]
impl Takeover {
    /// Puts what is left of ways in the place of what was laid.
    pub(super) fn onward(
        &self,
        mut ch: crate::choreography::Choreography,
    ) -> crate::choreography::Choreography {
        use crate::choreography::Step;
        for onward in &self.onward {
            let rows = ch.rows.iter();
            let Some(row) = rows
                .zip(0..)
                .find(|(r, _)| r.id == onward.id && r.who == onward.who)
                .map(|(_, i)| i)
            else {
                continue;
            };
            let of_row = |s: &Step| matches!(s, Step::Leg(leg) if leg.row == row);
            let Some(at) = ch.steps.iter().position(of_row) else {
                continue;
            };
            ch.steps.retain(|s| !of_row(s));
            let legs = onward
                .legs
                .iter()
                .map(|leg| Step::Leg(Leg { row, ..leg.clone() }));
            ch.steps.splice(at..at, legs);
        }
        ch
    }
}
