//! What can be found, each with its numbers and its stable name.

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
/// [`Finding::players`](super::Finding::players) stands beside each; X is the first of
/// [`Finding::defenders`](super::Finding::defenders).
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
    /// Passer, receiver: farther than a pass is thrown well.
    LongPass {
        /// From hands to hands.
        gap: f64,
    },
    /// Passer, receiver: against the board.
    PassThroughBoard,
    /// The ball stays on one side.
    OneSide {
        /// So long.
        seconds: f64,
    },
    /// Cutter, screeners: no faster off the screen than on the way to it.
    OneSpeed {
        /// Fastest off the screen against fastest before.
        ratio: f64,
    },
    /// Those who start to move in one instant.
    Marching,
    /// Those on one side.
    SideLoaded {
        /// Together.
        seconds: f64,
    },
    /// Driver, who has parked in the way.
    Parked,
    /// The holder: X is near enough for so long that a count may run out.
    CloselyGuarded {
        /// X near.
        seconds: f64,
        /// Seconds allowed.
        limit: f64,
    },
    /// Passer, receiver: X has a hand on the ball.
    PassStolen {
        /// Seconds the hand is there before the ball.
        by: f64,
    },
    /// Passer, receiver: X can get a hand into the lane.
    LaneShut {
        /// Seconds the hand is there before the ball.
        by: f64,
    },
    /// Passer, receiver: X is on the receiver at the catch, and not a little later.
    PassTooSoon {
        /// Between X and the receiver at the catch.
        gap: f64,
        /// Seconds until the receiver is open.
        by: f64,
    },
    /// Passer, receiver: X is on the receiver at the catch.
    TightCatch {
        /// Between X and the receiver.
        gap: f64,
    },
    /// Screener, cutter: X cannot see the screen, or is under way, and has no room left.
    ScreenTooClose {
        /// Room that is left, chest to back.
        room: f64,
        /// Room that is due.
        due: f64,
        /// X is under way.
        moving: bool,
    },
    /// Screener: runs into X on the way to a screen or from it.
    ScreenContact {
        /// Speed at which they come together.
        closing: f64,
    },
    /// The attacker: runs into X.
    RunsInto {
        /// Speed at which they come together.
        closing: f64,
    },
    /// Who is loud, who comes quietly: X of the loud side is still at the ring.
    DecoyIgnored {
        /// Between X and the quiet cutter.
        gap: f64,
    },
    /// Who has the most room: a defender is there at once at every chance.
    NoLook {
        /// That room.
        gap: f64,
    },
    /// A read that nothing the defence does makes true; `comes`: its instant does.
    ReadNever {
        /// Whether there is a line to play.
        comes: bool,
    },
    /// Who shoots in the end, who would in the line that the read leaves: it ends less open.
    ReadWorse {
        /// Seconds until a defender is there.
        open: f64,
        /// The same in the line it leaves.
        instead: f64,
    },
    /// A read's pass has a hand on it, and those of the line that it leaves have none.
    ReadStolen {
        /// Seconds the hand is there before the ball.
        by: f64,
    },
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
            Self::LongPass { .. } => "long-pass",
            Self::PassThroughBoard => "pass-through-board",
            Self::OneSide { .. } => "one-side",
            Self::OneSpeed { .. } => "one-speed",
            Self::Marching => "marching",
            Self::SideLoaded { .. } => "side-loaded",
            Self::Parked => "parked",
            Self::CloselyGuarded { .. } => "closely-guarded",
            Self::PassStolen { .. } => "pass-stolen",
            Self::LaneShut { .. } => "lane-shut",
            Self::PassTooSoon { .. } => "pass-too-soon",
            Self::TightCatch { .. } => "tight-catch",
            Self::ScreenTooClose { .. } => "screen-too-close",
            Self::ScreenContact { .. } => "screen-contact",
            Self::RunsInto { .. } => "runs-into",
            Self::DecoyIgnored { .. } => "decoy-ignored",
            Self::NoLook { .. } => "no-look",
            Self::ReadNever { .. } => "read-never",
            Self::ReadWorse { .. } | Self::ReadStolen { .. } => "read-worse",
            Self::AboveLevel { .. } => "above-level",
        }
    }
}
