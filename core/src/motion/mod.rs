//! How players move along their lines: speed under an athlete's limits, and facing.
//!
//! Speeding up follows the mono-exponential sprint model, slowing down is constant braking, and in
//! between the speed is held by caps on pace, curve and plant.

mod brake;
pub mod facing;
mod forward;
mod law;
mod limit;
mod sprint;
mod takes;

pub use law::{Law, Sample};
pub use sprint::{Sprint, rest_to_rest, sprint_time};

use crate::athlete::Effort;

/// A part of a run that is run with one effort.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Leg {
    /// Where it ends, metres from the start of the path. The last leg goes on to the path's end.
    pub end: f64,
    /// How hard it is run.
    pub effort: Effort,
}

#[cfg(test)]
mod tests;
