//! Which sentence a finding has.

use crate::findings::{Rung, What};
use crate::set::Coverage;
use crate::voice::messages::finding as m;
use crate::voice::{Message, Text};

/// What leads the sentence of a finding that holds under one coverage; `screens`: whether the set
/// has any to chase over.
pub(in crate::words) fn under(coverage: Coverage, screens: bool) -> Text {
    match coverage {
        _ if !screens => m::IF_THEIRS,
        Coverage::Chase => m::IF_CHASE,
        Coverage::Over => m::IF_OVER,
        Coverage::Through => m::IF_THROUGH,
        Coverage::Under => m::IF_UNDER,
        Coverage::TopLock => m::IF_TOP_LOCK,
        Coverage::Switch => m::IF_SWITCH,
        Coverage::Show => m::IF_SHOW,
        Coverage::Drop => m::IF_DROP,
        Coverage::Ice => m::IF_ICE,
        Coverage::Blitz => m::IF_BLITZ,
        Coverage::WeakSideTag => m::IF_TAG,
    }
}

/// The sentence of a finding.
pub(in crate::words) fn sentence(what: What) -> Message {
    match what {
        What::ScreenLate { after } if after > 0.0 => m::SCREEN_LATE,
        What::ScreenLate { .. } => m::SCREEN_JUST,
        What::ScreenEarly { .. } => m::SCREEN_EARLY,
        What::CutterEarly { .. } => m::CUTTER_EARLY,
        What::MovingScreen { .. } => m::MOVING_SCREEN,
        What::LooseBrush { .. } => m::LOOSE_BRUSH,
        What::ThroughScreener { .. } => m::THROUGH_SCREENER,
        What::ScreenAngle { .. } => m::SCREEN_ANGLE,
        What::ScreenSpot { .. } => m::SCREEN_SPOT,
        What::ScreenLeft { .. } => m::SCREEN_LEFT,
        What::ScreenStays { .. } => m::SCREEN_STAYS,
        What::GateLate { .. } => m::GATE_LATE,
        What::GateOnCutter { .. } => m::GATE_ON_CUTTER,
        What::HandoffFar { .. } => m::HANDOFF_FAR,
        What::GiverMoves { .. } => m::GIVER_MOVES,
        What::PassBeforeOpen { .. } => m::PASS_BEFORE_OPEN,
        What::PassOffDribble { .. } => m::PASS_OFF_DRIBBLE,
        What::FastCatch { .. } => m::FAST_CATCH,
        What::NotLooking { .. } => m::NOT_LOOKING,
        What::PasserTurned { .. } => m::PASSER_TURNED,
        What::PassThroughBody { .. } => m::PASS_THROUGH_BODY,
        What::ThreeSeconds { seconds, limit } if seconds > limit => m::THREE_SECONDS,
        What::ThreeSeconds { .. } => m::NEAR_THREE_SECONDS,
        What::LaneCrowd { .. } => m::LANE_CROWD,
        What::ThrowInCount { seconds, limit } if seconds > limit => m::THROW_IN_LATE,
        What::ThrowInCount { .. } => m::THROW_IN_TIGHT,
        What::ShotClock { .. } => m::SHOT_CLOCK,
        What::LongSet { .. } => m::LONG_SET,
        What::HolderStands { .. } => m::HOLDER_STANDS,
        What::Statue { .. } => m::STATUE,
        What::OutOfBounds { screens: true, .. } => m::OUT_SCREENING,
        What::OutOfBounds { ball: true, .. } => m::OUT_WITH_BALL,
        What::OutOfBounds { .. } => m::OUT,
        What::Backcourt => m::BACKCOURT,
        What::Collision {
            under_ring: true, ..
        } => m::COLLISION_UNDER_RING,
        What::Collision { .. } => m::COLLISION,
        What::Crowding { .. } => m::CROWDING,
        What::CornersEmpty => m::CORNERS_EMPTY.into(),
        What::SideNotEmptied => m::SIDE_NOT_EMPTIED,
        What::NoSafety => m::NO_SAFETY.into(),
        What::LongPass { .. } => m::LONG_PASS,
        What::PassThroughBoard => m::PASS_THROUGH_BOARD,
        What::OneSide { .. } => m::ONE_SIDE,
        What::OneSpeed { .. } => m::ONE_SPEED,
        What::Marching => m::MARCHING,
        What::SideLoaded { .. } => m::SIDE_LOADED,
        What::Parked => m::PARKED,
        What::CloselyGuarded { seconds, limit } if seconds > limit => m::CLOSELY_GUARDED,
        What::CloselyGuarded { .. } => m::NEARLY_CLOSELY_GUARDED,
        What::PassStolen { .. } => m::PASS_STOLEN,
        What::LaneShut { .. } => m::LANE_SHUT,
        What::PassTooSoon { .. } => m::PASS_TOO_SOON,
        What::TightCatch { .. } => m::TIGHT_CATCH,
        What::ScreenTooClose { moving: true, .. } => m::SCREEN_TOO_CLOSE_MOVING,
        What::ScreenTooClose { .. } => m::SCREEN_TOO_CLOSE,
        What::ScreenContact { .. } => m::SCREEN_CONTACT,
        What::RunsInto { .. } => m::RUNS_INTO,
        What::DecoyIgnored { .. } => m::DECOY_IGNORED,
        What::NoLook { .. } => m::NO_LOOK,
        What::ReadNever { comes: true } => m::READ_NEVER,
        What::ReadNever { comes: false } => m::READ_NOT_PLAYED,
        What::ReadWorse { .. } => m::READ_WORSE,
        What::ReadStolen { .. } => m::READ_STOLEN,
        What::AboveLevel { what } => match what {
            Rung::Screens => m::ABOVE_SCREENS,
            Rung::Chains => m::ABOVE_CHAINS,
            Rung::Blind => m::ABOVE_BLIND,
            Rung::Gates => m::ABOVE_GATES,
        },
    }
}
