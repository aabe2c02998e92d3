//! What a coach would stop the tape for: rule, body and timing checks, each a pure function.
//!
//! A checker reads a [`Case`], that is the set, its court, its timeline and the [`Settings`], and
//! returns [`Finding`]s as plain data. The sentences are made in `words`; what may be done about a
//! finding is a [`Cure`], which is only shown after the cured set has been built and judged again.
//!
//! What [`CHECKERS`] find holds whatever the defence does; what is said there about contact is
//! likely. What [`AGAINST`] finds holds under one simulated coverage. The referee decides.

mod against;
mod ball;
mod body;
mod bounds;
mod case;
mod clock;
mod cure;
mod finding;
mod gate;
mod handoff;
mod ladder;
mod lane;
mod pass;
#[cfg(feature = "authoring")]
mod read;
mod rhythm;
mod rules;
mod screen;
mod settings;
mod sides;
mod spacing;
mod still;
#[cfg(test)]
mod tests;
mod what;

pub use against::{AGAINST, Against, AgainstChecker, check_against};
pub use case::{Case, ScreenUse, Throw};
pub use cure::{Cure, Edit, Part, Search};
pub use finding::{Finding, Severity};
#[cfg(feature = "authoring")]
pub use read::check_reads;
pub use rules::Rules;
pub use settings::Settings;
pub use what::{Rung, What};

use crate::court::Court;
use crate::math::sort_short;
use crate::set::Set;
use crate::timeline::Timeline;
use alloc::vec::Vec;

/// A checker.
pub type Checker = fn(&Case<'_>) -> Vec<Finding>;

/// Every checker; a new one is a file and a line.
pub const CHECKERS: [Checker; 28] = [
    screen::lead,
    screen::moving,
    screen::distance,
    screen::angle,
    screen::leaves,
    gate::check,
    handoff::check,
    pass::release,
    pass::caught,
    pass::through,
    lane::three_seconds,
    lane::crowd,
    clock::check,
    bounds::out,
    bounds::backcourt,
    body::check,
    spacing::crowding,
    spacing::floor,
    spacing::backdoor,
    still::check,
    ball::far,
    ball::board,
    ball::one_side,
    rhythm::one_speed,
    rhythm::marching,
    sides::loaded,
    sides::parked,
    ladder::check,
];

/// All findings of a scheduled set, in time order, without cures.
///
/// ```
/// use backcut::findings::{self, Settings};
/// use backcut::play::{Options, Play};
/// let text = br#"{ "backcut": 1, "title": "Parked", "players": {
///     "1": {"at": "top", "ball": true}, "5": {"at": "low paint"} },
///   "beats": [ { "actions": [
///     {"who": 1, "do": "dribble", "to": "right wing", "takes": 3.5},
///     {"who": 1, "do": "shot"} ] } ] }"#;
/// let play = Play::open(text, &Options::default())?;
/// let found = findings::check(play.set(), play.court(), play.timeline(), &Settings::default());
/// assert!(found.iter().any(|f| f.code() == "three-seconds"));
/// # Ok::<(), backcut::fault::Faults>(())
/// ```
#[must_use]
pub fn check(set: &Set, court: &Court, timeline: &Timeline, settings: &Settings) -> Vec<Finding> {
    judge(&Case::new(set, court, timeline, settings))
}

fn judge(case: &Case<'_>) -> Vec<Finding> {
    let mut found: Vec<Finding> = CHECKERS.iter().flat_map(|c| c(case)).collect();
    in_order(&mut found);
    found
}

/// What is found whoever defends and what five show, as one list in time order.
#[must_use]
pub fn together(mut own: Vec<Finding>, against: Vec<Finding>) -> Vec<Finding> {
    own.extend(against);
    in_order(&mut own);
    own
}

/// By time; the heavier first where two are at one.
fn in_order(found: &mut [Finding]) {
    sort_short(found, |a, b| {
        a.t.total_cmp(&b.t)
            .then(b.severity.cmp(&a.severity))
            .then(a.code().cmp(b.code()))
            .then(a.players.cmp(&b.players))
            .then(a.defenders.cmp(&b.defenders))
    });
}
