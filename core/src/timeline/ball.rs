//! Who has the ball when, and how it flies in between.

use crate::set::{Kind, PlayerId};

/// One stretch of the ball's life; stretches follow each other without a gap.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BallSpan {
    /// Seconds.
    pub start: f64,
    /// Seconds; the start of the next span.
    pub end: f64,
    /// What the ball does in it.
    pub what: BallUse,
}

/// What the ball does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BallUse {
    /// In two hands.
    Held(PlayerId),
    /// Bounced on the floor.
    Dribbled(PlayerId),
    /// Passed through the air.
    Pass {
        /// From whom.
        from: PlayerId,
        /// To whom.
        to: PlayerId,
        /// The trade's name, where written.
        kind: Option<Kind>,
    },
    /// From hand to hand.
    Handoff {
        /// From whom.
        from: PlayerId,
        /// To whom.
        to: PlayerId,
    },
    /// On its way to the ring.
    Shot(PlayerId),
    /// Through the ring and falling.
    Through,
}
