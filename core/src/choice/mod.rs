//! Which read the defence decides: every read is asked at its instant, of the five who are simulated
//! against the line that is being played.
//!
//! What is asked is what shows then: where bodies are and head, which way chests look, who is whose
//! man, and what somebody is about whose feet have started. The first read that is true wins, in the
//! order of their instants, then of the file; then those within it are asked, of the branch that it
//! makes.

mod answer;
mod deed;
mod lines;
mod scene;
#[cfg(test)]
mod tests;
mod told;

pub use answer::{Answer, Tried, ends, hand_ahead};
pub use deed::Measure;
pub use lines::{Asked, Decided, Lines};
pub use scene::Scene;
pub use told::{asked_coverage, defend};

/// What was seen when a read was asked.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Seen {
    /// Whether the read's condition is true.
    pub holds: bool,
    /// What decides it.
    pub measure: Measure,
}
