//! The only sentences: what an action, a beat, a set and an instant are, in a coach's words.
//!
//! Subject, verb, object, off or for whom, to which spot. Players are their numbers, so the same
//! words serve every team. Which message says what is settled in `phrases`; the messages stand in
//! the catalogues of [`voice`](crate::voice), and whoever asks names the [`Voice`].

mod action;
#[cfg(feature = "authoring")]
mod card;
mod caution;
#[cfg(feature = "authoring")]
mod film;
mod finding;
mod instant;
mod look;
mod measure;
mod phrases;
mod place;
#[cfg(feature = "authoring")]
mod quiz;
#[cfg(feature = "authoring")]
mod read;
#[cfg(feature = "authoring")]
mod stop;
mod tale;
#[cfg(test)]
mod tests;
mod tie;
mod title;

pub use action::{action, kind};
#[cfg(feature = "authoring")]
pub use card::{CardWords, StepWords, card, cards};
pub use caution::{cautions, cautions_for};
#[cfg(feature = "authoring")]
pub use film::{film_difference, not_tied};
pub use finding::{cure, finding};
pub use instant::describe;
pub use look::{chance, coverage, guarded, look, open, openness};
pub use measure::distance;
pub use place::whither;
#[cfg(feature = "authoring")]
pub use quiz::{choice, cross, question, reason, standing};
#[cfg(feature = "authoring")]
pub use read::{answer, condition, end, seen};
#[cfg(feature = "authoring")]
pub use stop::stop;
pub use tale::{as_drawn, beat, beat_title, line, read_title, set};
pub use title::{court, level};

pub(crate) use measure::scale_bar;
#[cfg(feature = "authoring")]
pub(crate) use tale::fork;
pub(crate) use tale::nth_beat;

use crate::math::{Listed, push_decimal};
use crate::set::PlayerId;
use crate::voice::Voice;
use crate::voice::messages::measure as m;
use alloc::string::String;
use alloc::vec::Vec;

/// Players as people list them: `4 and 5`.
fn names(players: impl IntoIterator<Item = PlayerId>, voice: Voice) -> String {
    let items: Vec<String> = players
        .into_iter()
        .map(|p| String::from(char::from(b'0' + p.number())))
        .listed();
    let mut out = String::new();
    for (i, item) in items.iter().enumerate() {
        if i > 0 && i + 1 == items.len() {
            out.push(' ');
            out.push_str(voice.word(m::AND));
            out.push(' ');
        } else if i > 0 {
            out.push_str(", ");
        }
        out.push_str(item);
    }
    out
}

/// How many, for a message to choose by.
fn count(n: usize) -> String {
    let mut out = String::new();
    push_decimal(&mut out, n as f64, 0);
    out
}
