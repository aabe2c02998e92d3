//! Questions on a set, and what an answer to one is worth.
//!
//! A question stands at an instant and hides what it asks for: one player's way to come, one
//! defender, where the ball goes. Places and instants are measured against the timeline, so a near
//! miss is worth more than a far one. Which questions come, and in which order, follows from the set
//! and a number that the caller gives.

mod ask;
mod order;
mod score;
#[cfg(test)]
mod tests;

pub use ask::{Against, Asked, questions};
pub use score::{FULL_M, FULL_S, NONE_M, NONE_S, Score};

use crate::choice::Seen;
use crate::looks::Look;
use crate::math::Point;
use crate::set::PlayerId;
use alloc::vec::Vec;

/// What is asked.
#[derive(Clone, Debug, PartialEq)]
pub enum Ask {
    /// Where a player's next action ends: a row of [`Timeline::actions`].
    ///
    /// [`Timeline::actions`]: crate::timeline::Timeline::actions
    Where {
        /// Who goes.
        who: PlayerId,
        /// The row.
        row: usize,
    },
    /// When a player leaves.
    When {
        /// Who leaves.
        who: PlayerId,
        /// The row of [`Timeline::actions`].
        ///
        /// [`Timeline::actions`]: crate::timeline::Timeline::actions
        row: usize,
        /// What they wait for, of [`Timeline::ties`].
        ///
        /// [`Timeline::ties`]: crate::timeline::Timeline::ties
        tie: usize,
    },
    /// Where a defender is.
    Defender {
        /// Which one, named by the number of the man at the start.
        who: PlayerId,
        /// Whom they guard by then.
        man: PlayerId,
    },
    /// Which read the defence asks for, if any.
    Read {
        /// The index of that read; `None`: go on as drawn.
        read: Option<usize>,
        /// What shows it.
        seen: Seen,
    },
    /// Who can catch and shoot.
    Open {
        /// The right one's chance.
        look: Look,
    },
    /// Whom the ball goes to: a row of [`Timeline::actions`].
    ///
    /// [`Timeline::actions`]: crate::timeline::Timeline::actions
    Ball {
        /// The row of the pass.
        row: usize,
    },
}

/// One answer to choose.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Choice {
    /// A player.
    Player(PlayerId),
    /// The set goes on as it is drawn.
    AsDrawn,
    /// The read with this index.
    Read(usize),
}

/// The right answer, or a learner's.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Answer {
    /// A place on the floor, metres.
    Place(Point),
    /// An instant of the set, seconds.
    Instant(f64),
    /// One of the choices, by its index.
    Choice(usize),
}

/// What a picture leaves out while a question stands.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Hidden {
    /// Whose ways to come, and the passes to them, by [`PlayerId::index`].
    pub ways: [bool; 5],
    /// Which defender, named by the number of the man at the start.
    pub defender: Option<PlayerId>,
    /// Where the ball goes.
    pub ball: bool,
    /// Who is seen to stay from an instant on, seconds: they would tell when they leave.
    pub stays: Option<(PlayerId, f64)>,
}

impl Hidden {
    /// What one player is about to do.
    fn way(who: PlayerId) -> Self {
        Self {
            ways: PlayerId::ALL.map(|p| p == who),
            ..Self::default()
        }
    }

    /// The instant at which `who` is seen at `t`, seconds.
    #[must_use]
    pub fn seen_at(&self, who: PlayerId, t: f64) -> f64 {
        match self.stays {
            Some((stays, from)) if stays == who => t.min(from),
            _ => t,
        }
    }

    /// Whether the way of `who` is hidden.
    #[must_use]
    pub fn hides(&self, who: PlayerId) -> bool {
        self.ways.get(who.index()) == Some(&true)
    }
}

/// One question.
#[derive(Clone, Debug, PartialEq)]
pub struct Question {
    /// What is asked.
    pub ask: Ask,
    /// The instant at which it stands, or, where an instant is asked for, from which it plays.
    pub t: f64,
    /// What must not be seen.
    pub hidden: Hidden,
    /// What can be chosen; empty where a place or an instant is asked for.
    pub choices: Vec<Choice>,
    /// The right answer.
    pub answer: Answer,
    /// By this instant the set shows the answer, seconds; the same as `t` where it does not.
    pub told: f64,
}
