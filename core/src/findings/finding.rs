//! What a checker found, as data.

use super::Cure;
use crate::math::Point;
use crate::set::{ActionId, PlayerId};
use alloc::vec::Vec;

/// How much it matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Worth a look.
    Note,
    /// It will not work as drawn, or may be called.
    Warning,
    /// Against a rule or dangerous: do not run it like this.
    Violation,
}

impl Severity {
    /// The word for it.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Note => "note",
            Self::Warning => "warning",
            Self::Violation => "violation",
        }
    }
}

/// What is taught later than at this level.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rung {
    /// Screens other than away from the ball, under 12.
    Screens,
    /// Chains of screens, under 14.
    Chains,
    /// Screens that the screened defender cannot see.
    Blind,
    /// Gates.
    Gates,
}

/// What was found, with its numbers (metres, seconds, m/s, radians). Who is who in
/// [`Finding::players`] stands beside each.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum What {
    /// Screener, cutter: the screener stands `after` seconds after the cutter is by (negative: so
    /// little before).
    ScreenLate {
        /// Seconds from pass-by to set.
        after: f64,
    },
    /// Screener, cutter: the screen stands so long before the cutter is by that it is scouted.
    ScreenEarly {
        /// Seconds from set to pass-by.
        stands: f64,
    },
    /// Screener, cutter: the cutter runs before the screener is set.
    CutterEarly {
        /// Seconds from that to set.
        by: f64,
    },
    /// Screener, cutter: the screener's feet move when the chaser comes.
    MovingScreen {
        /// Speed of the screener.
        speed: f64,
    },
    /// Screener, cutter: so far apart at the pass-by that a defender fits between.
    LooseBrush {
        /// Between the bodies' middles.
        gap: f64,
    },
    /// Screener, cutter: so near that the bodies overlap.
    ThroughScreener {
        /// Between the bodies' middles.
        gap: f64,
    },
    /// Screener, cutter: the body is not square to the way of the own defender.
    ScreenAngle {
        /// Off square.
        off: f64,
    },
    /// Screener, cutter: no way to face from here closes the defender's way.
    ScreenSpot {
        /// Between the chest's and the back's wanted direction.
        apart: f64,
    },
    /// Screener, cutter: the screener leaves before the cutter is by.
    ScreenLeft {
        /// Seconds before the pass-by.
        by: f64,
    },
    /// Screener, cutter: the screener stands on though the next move is theirs.
    ScreenStays {
        /// Seconds after the pass-by.
        stays: f64,
    },
    /// Posts: the gate is not still when the chaser comes.
    GateLate {
        /// Seconds.
        by: f64,
    },
    /// Posts, cutter: the gate shuts on its own cutter.
    GateOnCutter {
        /// Between the bodies' middles.
        gap: f64,
    },
    /// Giver, taker: too far apart to hand the ball over.
    HandoffFar {
        /// Between their hands.
        gap: f64,
    },
    /// Giver, taker: the giver's feet move.
    GiverMoves {
        /// Speed of the giver.
        speed: f64,
    },
    /// Passer, receiver: the ball leaves before the receiver is by the screen.
    PassBeforeOpen {
        /// Seconds.
        by: f64,
    },
    /// Passer, receiver: thrown off a running dribble.
    PassOffDribble {
        /// Speed of the passer.
        speed: f64,
    },
    /// Passer, receiver: too fast to catch and do something.
    FastCatch {
        /// Speed of the receiver.
        speed: f64,
    },
    /// Passer, receiver: the receiver's eyes are elsewhere.
    NotLooking {
        /// Between the chest and the ball.
        angle: f64,
    },
    /// Passer, receiver: the passer's chest is turned away.
    PasserTurned {
        /// Between the chest and the target.
        angle: f64,
    },
    /// Passer, receiver, the body in between.
    PassThroughBody {
        /// Between the ball and that body's middle, over the floor.
        gap: f64,
    },
    /// The player: in the lane longer than the rule allows, or nearly so.
    ThreeSeconds {
        /// In the lane.
        seconds: f64,
        /// Seconds allowed.
        limit: f64,
    },
    /// Those in the lane together.
    LaneCrowd {
        /// Together.
        seconds: f64,
    },
    /// The thrower: the ball is in play too late, or nearly so.
    ThrowInCount {
        /// Until the ball leaves.
        seconds: f64,
        /// Seconds allowed.
        limit: f64,
    },
    /// The shot comes after the shot clock.
    ShotClock {
        /// Until the shot.
        seconds: f64,
        /// Seconds allowed.
        limit: f64,
    },
    /// The set is long.
    LongSet {
        /// Until the shot.
        seconds: f64,
    },
    /// The holder: stands with the ball.
    HolderStands {
        /// So long.
        seconds: f64,
    },
    /// The player: no part and no look for so long.
    Statue {
        /// So long.
        seconds: f64,
    },
    /// The player: a foot on or over a line; `screens`, `ball`: what they do there.
    OutOfBounds {
        /// As a screener.
        screens: bool,
        /// With the ball.
        ball: bool,
    },
    /// The player: back over the half-court line with the ball.
    Backcourt,
    /// Both: team mates run into each other.
    Collision {
        /// Between the bodies' middles.
        gap: f64,
        /// Speed at which the gap closes.
        closing: f64,
        /// Under the ring, where most get hurt.
        under_ring: bool,
    },
    /// Both: one defender can guard two.
    Crowding {
        /// Between them.
        gap: f64,
        /// So long.
        seconds: f64,
    },
    /// Nobody in either corner.
    CornersEmpty,
    /// Cutter, who is in the way: the backdoor's side is not emptied.
    SideNotEmptied,
    /// Nobody back at the shot.
    NoSafety,
    /// Taught later than at this level.
    AboveLevel {
        /// What.
        what: Rung,
    },
}

impl What {
    /// Its stable name.
    #[must_use]
    pub fn code(self) -> &'static str {
        match self {
            Self::ScreenLate { .. } => "screen-late",
            Self::ScreenEarly { .. } => "screen-early",
            Self::CutterEarly { .. } => "cutter-early",
            Self::MovingScreen { .. } => "moving-screen",
            Self::LooseBrush { .. } => "loose-brush",
            Self::ThroughScreener { .. } => "through-the-screener",
            Self::ScreenAngle { .. } => "screen-angle",
            Self::ScreenSpot { .. } => "screen-spot",
            Self::ScreenLeft { .. } => "screen-left",
            Self::ScreenStays { .. } => "screen-stays",
            Self::GateLate { .. } => "gate-late",
            Self::GateOnCutter { .. } => "gate-on-cutter",
            Self::HandoffFar { .. } => "handoff-far",
            Self::GiverMoves { .. } => "giver-moves",
            Self::PassBeforeOpen { .. } => "pass-before-open",
            Self::PassOffDribble { .. } => "pass-off-dribble",
            Self::FastCatch { .. } => "fast-catch",
            Self::NotLooking { .. } => "not-looking",
            Self::PasserTurned { .. } => "passer-turned",
            Self::PassThroughBody { .. } => "pass-through-body",
            Self::ThreeSeconds { .. } => "three-seconds",
            Self::LaneCrowd { .. } => "lane-crowd",
            Self::ThrowInCount { .. } => "throw-in-count",
            Self::ShotClock { .. } => "shot-clock",
            Self::LongSet { .. } => "long-set",
            Self::HolderStands { .. } => "holder-stands",
            Self::Statue { .. } => "statue",
            Self::OutOfBounds { .. } => "out-of-bounds",
            Self::Backcourt => "backcourt",
            Self::Collision { .. } => "collision",
            Self::Crowding { .. } => "crowding",
            Self::CornersEmpty => "corners-empty",
            Self::SideNotEmptied => "side-not-emptied",
            Self::NoSafety => "no-safety",
            Self::AboveLevel { .. } => "above-level",
        }
    }
}

/// Something a checker noticed.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// What.
    pub what: What,
    /// How much it matters.
    pub severity: Severity,
    /// When, seconds.
    pub t: f64,
    /// Until when, where it lasts.
    pub until: Option<f64>,
    /// Who, in the order that [`What`] names.
    pub players: Vec<PlayerId>,
    /// Where on the floor.
    pub place: Option<Point>,
    /// The actions it is about.
    pub actions: Vec<ActionId>,
    /// What can be done about it, verified.
    pub cure: Option<Cure>,
}

impl Finding {
    /// A finding at the instant `t`.
    pub(super) fn new(what: What, severity: Severity, t: f64) -> Self {
        Self {
            what,
            severity,
            t,
            until: None,
            players: Vec::new(),
            place: None,
            actions: Vec::new(),
            cure: None,
        }
    }

    pub(super) fn until(mut self, t: f64) -> Self {
        self.until = Some(t);
        self
    }

    pub(super) fn of(mut self, players: impl IntoIterator<Item = PlayerId>) -> Self {
        self.players.extend(players);
        self
    }

    pub(super) fn at(mut self, place: impl Into<Option<Point>>) -> Self {
        self.place = place.into();
        self
    }

    pub(super) fn about(mut self, actions: impl IntoIterator<Item = ActionId>) -> Self {
        for id in actions {
            if !self.actions.contains(&id) {
                self.actions.push(id);
            }
        }
        self
    }

    /// Its stable name, in kebab case.
    #[must_use]
    pub fn code(&self) -> &'static str {
        self.what.code()
    }

    /// Whether `other` says the same, in another version of the set.
    #[must_use]
    pub fn is_like(&self, other: &Self) -> bool {
        // Who is in a crowd may change while the crowd stays.
        let crowd = matches!(self.what, What::LaneCrowd { .. });
        self.code() == other.code() && (crowd || self.players == other.players)
    }
}
