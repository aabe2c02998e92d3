//! The user's own film, compared with the set in words.

use super::tie;
use crate::film::{Difference, NotTied};
use crate::set::Set;
use crate::voice::Voice;
use crate::voice::messages::film as m;
use alloc::string::String;

/// Less than this nobody calls late, seconds: half a tenth would be told as a whole one. Common
/// practice, no source.
const ON_TIME: f64 = 0.1;

/// How late ours was at a mark, and what happens there: `Ours was 0.6 s late here: 3 catches.`
#[must_use]
pub fn film_difference(difference: &Difference, set: &Set, voice: Voice) -> String {
    let verdict = match difference.late {
        None => String::from(voice.word(m::FIRST)),
        Some(late) if late.abs() < ON_TIME => String::from(voice.word(m::ON_TIME)),
        Some(late) => {
            let message = if late > 0.0 { m::LATE } else { m::EARLY };
            voice.fill(message, &[("n", &voice.number(late.abs(), 1))])
        }
    };
    let event = difference
        .happening
        .and_then(|h| tie::happening(set, h.action, h.mark, "", voice));
    match event {
        Some(event) => voice.fill(m::WHEN, &[("verdict", &verdict), ("event", &event)]),
        None => voice.fill(m::HERE, &[("verdict", &verdict)]),
    }
}

/// Why an instant of the film is not tied to one of the set, and what helps.
#[must_use]
pub fn not_tied(why: NotTied, voice: Voice) -> &'static str {
    voice.word(match why {
        NotTied::Backwards => m::BACKWARDS,
        NotTied::OutOfRange => m::OUT_OF_RANGE,
        NotTied::Full => m::FULL,
    })
}
