//! What is wrong, and what to do about it. Never blame: what happens, to whom, by how much.
//!
//! `a`, `b`, `c` are the finding's players in order, `all` those together, `rest` all but the first;
//! `x` is its first defender; `n` a number with its unit, `m` a second one; `where` a place.

use crate::findings::{Rung, What};
use crate::set::Coverage;

pub(in crate::words) const SECONDS: &str = "{n} s";
pub(in crate::words) const SPEED: &str = "{n} m/s";
pub(in crate::words) const DEGREES: &str = "{n}°";

/// What leads the sentence of a finding that holds under one coverage; `screens`: whether the set
/// has any to chase over.
pub(in crate::words) fn under(coverage: Coverage, screens: bool) -> &'static str {
    match coverage {
        _ if !screens => "Against five who stay with their own: ",
        Coverage::Chase => "If they chase: ",
        Coverage::Over => "If they go over: ",
        Coverage::Through => "If they go through: ",
        Coverage::Under => "If they go under: ",
        Coverage::TopLock => "If they top-lock: ",
        Coverage::Switch => "If they switch: ",
        Coverage::Show => "If they show: ",
        Coverage::Drop => "If the big drops: ",
        Coverage::Ice => "If they ice it: ",
        Coverage::Blitz => "If they trap: ",
        Coverage::WeakSideTag => "If they tag from the weak side: ",
    }
}

/// The sentence of a finding.
pub(in crate::words) fn sentence(what: What) -> &'static str {
    match what {
        What::ScreenLate { after } if after > 0.0 => "{a} arrives {n} late: {b} is already past.",
        What::ScreenLate { .. } => "{a} is set only {n} before {b} comes by.",
        What::ScreenEarly { .. } => {
            "{a} stands {n} before {b} comes by: the defence sees the screen."
        }
        What::CutterEarly { .. } => "{b} runs before {a}’s feet are down.",
        What::MovingScreen { .. } => {
            "{a} is still on the move as {b} comes by: contact now is likely a moving screen; the referee decides."
        }
        What::LooseBrush { .. } => "{b} leaves {n} to {a}: a defender fits between.",
        What::ThroughScreener { .. } => "{b} runs through {a}.",
        What::ScreenAngle { .. } => "{a} is {n} off square: {b}’s own defender slides by.",
        What::ScreenSpot { .. } => {
            "From here {a} cannot block the way of {b}’s own defender, however {a} turns."
        }
        What::ScreenLeft { .. } => "{a} leaves {n} before {b} is by.",
        What::ScreenStays { .. } => "{a} stands {n} after {b} is by.",
        What::GateLate { .. } => {
            "The gate of {all} is shut {n} after the chaser comes: likely a moving screen; the referee decides."
        }
        What::GateOnCutter { .. } => "{a} shuts the gate on {b}.",
        What::HandoffFar { .. } => "{a} and {b} are {n} apart, hand to hand: too far to hand off.",
        What::GiverMoves { .. } => {
            "{a}’s feet move in the hand-off: likely a moving screen; the referee decides."
        }
        What::PassBeforeOpen { .. } => "{a} passes {n} before {b} is past the screen.",
        What::PassOffDribble { .. } => "{a} throws it off the dribble, still running at {n}.",
        What::FastCatch { .. } => "{b} catches at {n}: too fast to shoot.",
        What::NotLooking { .. } => "{b} does not see the ball coming.",
        What::PasserTurned { .. } => "{a} passes with the chest turned {n} away from {b}.",
        What::PassThroughBody { .. } => "The pass from {a} to {b} goes through {c}.",
        What::ThreeSeconds { seconds, limit } if seconds > limit => {
            "{a} is in the lane for {n}: likely a three-second call; the referee decides."
        }
        What::ThreeSeconds { .. } => "{a} is in the lane for {n}: close to three seconds.",
        What::LaneCrowd { .. } => {
            "{all} are in the lane together for {n}: their defenders are too."
        }
        What::ThrowInCount { seconds, limit } if seconds > limit => {
            "The throw-in leaves {a}’s hands after {n}, and {m} are allowed."
        }
        What::ThrowInCount { .. } => {
            "The throw-in leaves {a}’s hands after {n}. That is tight: {m} are allowed."
        }
        What::ShotClock { .. } => "The shot comes after {n}, and the shot clock gives {m}.",
        What::LongSet { .. } => "The set takes {n}: that is long.",
        What::HolderStands { .. } => {
            "{a} stands with the ball for {n}: a close defender makes that five seconds."
        }
        What::Statue { .. } => "{a} has no part for {n}, and no look.",
        What::OutOfBounds { screens: true, .. } => "{a} screens with a foot on the line{where}.",
        What::OutOfBounds { ball: true, .. } => "{a} has the ball with a foot on the line{where}.",
        What::OutOfBounds { .. } => "{a} steps on the line{where}.",
        What::Backcourt => "{a} goes back over the half-court line with the ball.",
        What::Collision {
            under_ring: true, ..
        } => {
            "{a} and {b} run into each other under the ring at {m}. Danger: do not run it like this."
        }
        What::Collision { .. } => "{a} and {b} run into each other{where} at {m}.",
        What::Crowding { .. } => "{a} and {b} come within {n}{where}: one defender guards both.",
        What::CornersEmpty => "Both corners are empty at the end.",
        What::SideNotEmptied => "{b} is in the way of {a}’s backdoor cut: help is already there.",
        What::NoSafety => "Nobody is back at the end.",
        What::LongPass { .. } => "{a} throws {n} to {b}: long enough for any defence to get there.",
        What::PassThroughBoard => "The pass from {a} to {b} hits the board.",
        What::OneSide { .. } => "The ball stays on one side for {n}: the help need not move.",
        What::OneSpeed { .. } => "{a} comes off {rest} no faster than to it: no change of pace.",
        What::Marching => "{all} start in the same instant: nobody reads anybody.",
        What::SideLoaded { .. } => "{all} are on one side for {n}: so are their defenders.",
        What::Parked => "{b} has parked in the way of {a}’s drive: help is already there.",
        What::CloselyGuarded { seconds, limit } if seconds > limit => {
            "{x} stays close to {a} for {n}: likely a call after {m}; the referee decides."
        }
        What::CloselyGuarded { .. } => "{x} stays close to {a} for {n}, and {m} are counted.",
        What::PassStolen { .. } => "{x} has a hand on the pass from {a} to {b}.",
        What::LaneShut { .. } => "{x} can get a hand on the pass from {a} to {b}.",
        What::PassTooSoon { .. } => {
            "{a} passes too soon: {x} is {n} from {b} at the catch, and {b} is open {m} later."
        }
        What::TightCatch { .. } => "{b} catches with {x} only {n} away.",
        What::ScreenTooClose { moving: true, .. } => {
            "{a} leaves {x} {n} to stop, and {m} are due: likely a call; the referee decides."
        }
        What::ScreenTooClose { .. } => {
            "{x} cannot see {a}’s screen and has {n} left, not {m}: likely a call; the referee decides."
        }
        What::ScreenContact { .. } => {
            "{a} runs into {x} at {n} on the way: likely a moving screen; the referee decides."
        }
        What::RunsInto { .. } => {
            "{a} runs into {x}{where} at {n}: contact that {a} may answer for; the referee decides."
        }
        What::DecoyIgnored { .. } => {
            "{a} pulls nobody: {x} is still there, {n} away, as {b} catches."
        }
        What::NoLook { .. } => {
            "Every chance is contested: {n} of room is the most, and {a} has it."
        }
        What::AboveLevel { what } => match what {
            Rung::Screens => {
                "A screen like {a}’s is for later: under 12, a screen away is enough. The supervising coach decides."
            }
            Rung::Chains => {
                "Screens that follow each other, as {a}’s here, are for later. The supervising coach decides."
            }
            Rung::Blind => "{a} sets a blind screen: for later. The supervising coach decides.",
            Rung::Gates => "{a} sets a gate: for later. The supervising coach decides.",
        },
    }
}

// Cures.
/// Waits where somebody else is waited for.
pub(in crate::words) const WAIT_FOR: &str = "Let {who} wait for {whom}.";
pub(in crate::words) const WAIT_TO_PASS: &str = "Let {who} hold the ball until {whom} is open.";
pub(in crate::words) const STOP_TO_PASS: &str = "Let {who} stop first, then pass.";
pub(in crate::words) const WAIT_FOR_CATCH: &str = "Let {who} pass to where {whom} stops.";
pub(in crate::words) const WAIT: &str = "Let {who} wait.";
pub(in crate::words) const LATER: &str = "Start {who} {n} later.";
pub(in crate::words) const SOONER: &str = "Start {who} {n} earlier.";
pub(in crate::words) const PASS_LATER: &str = "Pass {n} later.";
pub(in crate::words) const PASS_SOONER: &str = "Pass {n} earlier.";
pub(in crate::words) const HOLD: &str = "Let {who} hold for {n}.";
pub(in crate::words) const TAKE: &str = "Let {who} take {n} for it.";
pub(in crate::words) const THROW: &str = "Throw {what}.";
pub(in crate::words) const PACE: &str = "Let {who} {pace}.";
pub(in crate::words) const MOVE: &str = "Move {what} {n}{place}.";
pub(in crate::words) const SEND: &str = "Send {who}{place} instead, {n} away.";
pub(in crate::words) const BEGIN: &str = "Start {who}{place}.";
pub(in crate::words) const END_OF: &str = "the end of {who}’s way";
pub(in crate::words) const WAY_OF: &str = "{who}’s way";
pub(in crate::words) const PLACE_OF: &str = "{who}";
pub(in crate::words) const COSTS: &str = " Costs {n}.";
pub(in crate::words) const SAVES: &str = " Saves {n}.";
pub(in crate::words) const FREE: &str = " Costs no time.";
