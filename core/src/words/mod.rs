//! The only sentences: what an action, a beat, a set and an instant are, in a coach's words.
//!
//! Subject, verb, object, off or for whom, to which spot. Players are their numbers, so the same
//! words serve every team.

mod action;
mod caution;
mod finding;
mod instant;
mod look;
mod phrases;
mod place;
mod tale;
#[cfg(test)]
mod tests;
mod tie;

pub use action::{action, kind};
pub use caution::cautions;
pub use finding::{cure, finding};
pub use instant::describe;
pub use look::{chance, coverage, guarded, look, open, openness};
pub use tale::{as_drawn, beat, beat_title, read_title, set};

use crate::court::RuleSet;
use crate::math::{Listed, push_fixed};
use crate::set::PlayerId;
use alloc::string::String;
use alloc::vec::Vec;

/// Metres in a foot, exactly.
const FOOT: f64 = 0.3048;

/// A distance as the rule set measures: one decimal, in metres or feet.
///
/// ```
/// use backcut::court::RuleSet;
/// assert_eq!(backcut::words::distance(2.2, RuleSet::Fiba), "2.2 m");
/// assert_eq!(backcut::words::distance(2.2, RuleSet::Nba), "7.2 ft");
/// ```
#[must_use]
pub fn distance(metres: f64, rules: RuleSet) -> String {
    let mut out = String::new();
    if rules == RuleSet::Fiba {
        push_fixed(&mut out, metres, 1);
        out.push_str(" m");
    } else {
        push_fixed(&mut out, metres / FOOT, 1);
        out.push_str(" ft");
    }
    out
}

/// Players as people list them: `4 and 5`.
fn names(players: impl IntoIterator<Item = PlayerId>) -> String {
    let items: Vec<String> = players
        .into_iter()
        .map(|p| String::from(char::from(b'0' + p.number())))
        .listed();
    phrases::list(&items)
}

fn seconds(t: f64) -> String {
    let mut out = String::new();
    push_fixed(&mut out, t, 1);
    out
}
