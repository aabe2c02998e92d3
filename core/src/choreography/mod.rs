//! What was written, laid on the floor: ways, screens, who is bound to whom. No times yet.
//!
//! The steps come in written order; the steps of one player are their own order.

mod bind;
mod curl;
mod feint;
mod lay;
mod place;
mod post;
mod route;
mod screen;
#[cfg(test)]
mod tests;
mod transfer;
mod travel;

pub use lay::lay;
pub use screen::{SHUT_GAP, Screen};

use crate::athlete::Effort;
use crate::math::{Point, Vec2};
use crate::path::Knot;
use crate::set::{ActionId, Edge, Kind, PlayerId, Verb};
use alloc::vec::Vec;

/// One action of one player; two screeners of a gate are two rows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Row {
    /// Which action.
    pub id: ActionId,
    /// Whose.
    pub who: PlayerId,
    /// What.
    pub verb: Verb,
    /// The trade's name, where written.
    pub kind: Option<Kind>,
    /// Whether inferred waits are dropped.
    pub free: bool,
}

/// How a player comes into a set that takes over from another: under way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Entry {
    /// The direction of running, of length one.
    pub way: Vec2,
    /// m/s.
    pub speed: f64,
}

/// Which part of an action a leg is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// The walk that takes the own defender away from the screen.
    SetUp,
    /// What comes before a change of pace.
    Lead,
    /// The slow steps of a change of pace.
    Slow,
    /// The cut or dribble itself (its last part, where it has several), or the way to a screen.
    Way,
    /// The slide that shuts a gate.
    Shut,
}

/// An instant that lies on a leg, at one of its knots or a distance before one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LegMark {
    /// Which instant.
    pub edge: Edge,
    /// Which screener it is about.
    pub of: Option<PlayerId>,
    /// Index into [`Leg::knots`].
    pub knot: usize,
    /// Metres before that knot.
    pub before: f64,
}

/// One piece of a way.
#[derive(Clone, Debug, PartialEq)]
pub struct Leg {
    /// Whose action.
    pub row: usize,
    /// Which part of it.
    pub part: Part,
    /// The way, start and end included.
    pub knots: Vec<Knot>,
    /// How hard.
    pub effort: Effort,
    /// Least seconds.
    pub takes: Option<f64>,
    /// Instants on the way.
    pub marks: Vec<LegMark>,
    /// Whether the player comes to rest before it whatever went before.
    pub from_rest: bool,
}

/// Use of one screen by one cutter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Use {
    /// The cutter's row.
    pub cutter: usize,
    /// Index into [`Choreography::screens`].
    pub screen: usize,
    /// Place in the cutter's running order, 0 first.
    pub order: usize,
}

/// The ball goes from one player to another.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Transfer {
    /// The giver's row.
    pub row: usize,
    /// To whom.
    pub to: PlayerId,
    /// A written place of the catch.
    pub at: Option<Point>,
    /// Where the giver stands.
    pub from: Point,
    /// Where the receiver's last way ends.
    pub target: Point,
    /// Of a pass: caught on the run. Of a hand-off: always.
    pub in_stride: bool,
    /// Of a hand-off: only shown, the giver keeps the ball.
    pub keeps: bool,
}

/// One thing a player does, in written order.
#[derive(Clone, Debug, PartialEq)]
pub enum Step {
    /// Moves.
    Leg(Leg),
    /// Stands as a screen (index into [`Choreography::screens`]) until nobody needs it.
    Stand(usize),
    /// Passes.
    Pass(Transfer),
    /// Hands the ball off.
    Handoff(Transfer),
    /// Shoots; `running` off one foot.
    Shot {
        /// Whose action.
        row: usize,
        /// Off one foot, in stride.
        running: bool,
    },
    /// Stays for so many seconds: a hold or a fake.
    Still {
        /// Whose action.
        row: usize,
        /// Seconds.
        lasts: f64,
    },
}

/// A set laid on the floor.
#[derive(Clone, Debug, PartialEq)]
pub struct Choreography {
    /// Every action of every player.
    pub rows: Vec<Row>,
    /// What happens, in written order.
    pub steps: Vec<Step>,
    /// Everybody who is used as a screen.
    pub screens: Vec<Screen>,
    /// Who uses which.
    pub uses: Vec<Use>,
    /// Where players begin, by [`PlayerId::index`].
    pub starts: [Option<Point>; 5],
}

/// What a first schedule has shown to be needed.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Revision {
    /// Ways round team mates who stand.
    pub detours: Vec<Detour>,
    /// Gates that could not be still before the nominal chaser comes: they only stand closer.
    pub late_gates: Vec<ActionId>,
}

/// A point that a leg is led through to miss a standing team mate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Detour {
    /// Whose action.
    pub row: usize,
    /// Which part.
    pub part: Part,
    /// Round whom.
    pub round: PlayerId,
    /// Through where.
    pub through: Point,
}
