//! State of all movers and the ball at any instant, and the timetable behind it.

mod ball;
mod frame;
mod timetable;

pub use ball::{BallSpan, BallUse};
pub use frame::{BallState, Frame, MoverState};
pub use timetable::{TieEnd, TimedAction, TimedBeat, TimedTie, Wait};
