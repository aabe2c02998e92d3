//! Numbers with their units.

use crate::court::RuleSet;
use crate::math::push_fixed;
use crate::voice::messages::measure as m;
use crate::voice::{Message, Units, Voice};
use alloc::string::String;

impl Voice {
    /// `x` with all its `decimals`, in the way of the language.
    ///
    /// ```
    /// use backcut::voice::{Units, Voice};
    /// assert_eq!(Voice::new("es", Units::Metres).number(1.25, 1), "1,3");
    /// ```
    #[must_use]
    pub fn number(self, x: f64, decimals: u8) -> String {
        let mut out = String::new();
        push_fixed(&mut out, x, decimals);
        self.marked(&out)
    }
}

/// Metres in a foot, exactly.
const FOOT: f64 = 0.3048;

/// A distance: in the measure of the voice, which may be that of the rule set.
///
/// ```
/// use backcut::court::RuleSet;
/// use backcut::voice::{Units, Voice};
/// use backcut::words::distance;
/// let english = Voice::default();
/// assert_eq!(distance(2.2, RuleSet::Fiba, english), "2.2 m");
/// assert_eq!(distance(2.2, RuleSet::Nba, english), "7.2 ft");
/// let spanish = Voice::new("es", Units::Metres);
/// assert_eq!(distance(2.2, RuleSet::Nba, spanish), "2,2\u{a0}m");
/// let inches = Voice::new("en", Units::FeetAndInches);
/// assert_eq!(distance(2.2, RuleSet::Fiba, inches), "7′ 3″");
/// ```
#[must_use]
pub fn distance(metres: f64, rules: RuleSet, voice: Voice) -> String {
    match voice.units() {
        Units::Courts if rules != RuleSet::Fiba => unit(m::FEET, metres / FOOT, 1, voice),
        Units::Courts => unit(m::METRES, metres, 1, voice),
        #[cfg(feature = "authoring")]
        Units::Metres => unit(m::METRES, metres, 1, voice),
        #[cfg(feature = "authoring")]
        Units::FeetAndInches => feet_and_inches(metres, voice),
    }
}

/// To the whole inch; below a foot in inches alone.
#[cfg(feature = "authoring")]
fn feet_and_inches(metres: f64, voice: Voice) -> String {
    // The cast rounds down, and saturates far beyond any court.
    let inches = (metres.abs() / FOOT * 12.0 + 0.5) as u32;
    let (feet, rest) = (inches / 12, inches % 12);
    let sign = if metres < 0.0 && inches > 0 { "-" } else { "" };
    let number = |n: u32| voice.number(f64::from(n), 0);
    let mut out = String::from(sign);
    out.push_str(&if feet == 0 {
        voice.fill(m::INCHES, &[("inches", &number(rest))])
    } else {
        let parts = [("feet", number(feet)), ("inches", number(rest))];
        voice.fill(
            m::FEET_AND_INCHES,
            &parts.each_ref().map(|p| (p.0, p.1.as_str())),
        )
    });
    out
}

/// How long the bar under a close-up is, metres, and what stands beside it.
pub(crate) fn scale_bar(voice: Voice) -> (f64, String) {
    match voice.units() {
        #[cfg(feature = "authoring")]
        Units::FeetAndInches => (2.0 * FOOT, unit(m::FEET, 2.0, 0, voice)),
        _ => (0.5, voice.marked(voice.word(m::HALF_METRE))),
    }
}

/// A speed: metres a second, or feet where those are asked for.
pub(super) fn speed(x: f64, voice: Voice) -> String {
    match voice.units() {
        #[cfg(feature = "authoring")]
        Units::FeetAndInches => unit(m::SPEED_IN_FEET, x / FOOT, 1, voice),
        _ => unit(m::SPEED, x, 1, voice),
    }
}

/// An angle, given in radians.
pub(super) fn degrees(x: f64, voice: Voice) -> String {
    unit(m::DEGREES, x.to_degrees(), 0, voice)
}

/// A time with so many decimals.
pub(super) fn seconds(x: f64, decimals: u8, voice: Voice) -> String {
    unit(m::SECONDS, x, decimals, voice)
}

fn unit(message: Message, x: f64, decimals: u8, voice: Voice) -> String {
    voice.fill(message, &[("n", &voice.number(x, decimals))])
}
