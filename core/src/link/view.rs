//! What a link asks to be shown of its set, in words that people can read and change.
//!
//! `t=3.4,6&beat=2&follow=1,4&paused`: parameters in any order behind the set, or behind the name of
//! an embed in a page. Times are written in the manner of W3C Media Fragments URI 1.0, section 4.2.1.

use super::damage::Damage;
use crate::math::push_decimal;
use crate::set::{Coverage, PlayerId};
use crate::voice::Text;
use crate::voice::messages::fault as m;
use alloc::borrow::Cow;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// Reads within each other, as deep as a set file may be.
const DEEPEST: usize = 32;

/// What is to be shown, and how. Nothing asked for is [`View::default`].
///
/// ```
/// use backcut::link::View;
/// let view = View::read("#my-embed&t=3.4,6&follow=1,4&paused")?;
/// assert_eq!((view.from, view.until), (Some(3.4), Some(6.0)));
/// assert_eq!(view.follow, [true, false, false, true, false]);
/// assert_eq!(view.write(), "&t=3.4,6&follow=1,4&paused");
///
/// assert_eq!(View::read("t=soon").unwrap_err().list[0].code, "link-view");
/// # Ok::<(), backcut::fault::Faults>(())
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
pub struct View {
    /// The instant, or where a range begins, seconds; written `t=3.4`.
    pub from: Option<f64>,
    /// Where the range ends, seconds; written `t=3.4,6`.
    pub until: Option<f64>,
    /// The beat, counted from 1.
    pub beat: Option<u16>,
    /// The read, counted from 1, then the one within it, …; written `read=2.1`.
    pub read: Vec<u16>,
    /// Which players to follow, by [`PlayerId::index`].
    pub follow: [bool; 5],
    /// The coverage to play against.
    pub coverage: Option<Coverage>,
    /// Times real time.
    pub speed: Option<f64>,
    /// Whether it stands still at first.
    pub paused: bool,
}

impl View {
    /// Latest instant that can be asked for, seconds. Common practice, no source: sets take under 60.
    pub const LATEST: f64 = 3600.0;
    /// Highest speed, times real time: what browsers take as the playback rate of a film. From memory.
    pub const FASTEST: f64 = 16.0;
    /// Lowest speed that is not standing still, times real time.
    pub const SLOWEST: f64 = 0.001;

    /// Reads the parameters of a fragment or of a whole link. Names that mean nothing here are
    /// passed over, so that a site can have its own.
    ///
    /// # Errors
    /// `link-view` for each parameter of a view whose value means nothing.
    pub fn read(link: &str) -> Result<Self, crate::fault::Faults> {
        let mut view = Self::default();
        let mut damage = Damage::default();
        for piece in super::fragment(link).split('&') {
            let piece = unescaped(piece);
            let (name, value) = piece.split_once('=').unwrap_or((&piece, ""));
            if let Some(expected) = view.take(name, value) {
                damage.view(&piece, expected);
            }
        }
        damage.faults().map_or(Ok(view), Err)
    }

    /// Takes a parameter; what was expected where its value means nothing.
    fn take(&mut self, name: &str, value: &str) -> Option<Text> {
        let understood = match name {
            "t" => self.take_time(value),
            "beat" => whole(value).map(|n| self.beat = Some(n)),
            "read" => {
                let path = value.split('.').take(DEEPEST + 1).map(whole);
                let path: Option<Vec<u16>> = path.collect();
                path.filter(|p| p.len() <= DEEPEST).map(|p| self.read = p)
            }
            "follow" => self.take_players(value),
            "coverage" => Coverage::parse(value).map(|c| self.coverage = Some(c)),
            "speed" => {
                let speed = number(value).filter(|n| (Self::SLOWEST..=Self::FASTEST).contains(n));
                speed.map(|n| self.speed = Some(n))
            }
            "paused" => flag(value).map(|on| self.paused = on),
            _ => Some(()),
        };
        match (understood, name) {
            (Some(()), _) => None,
            (None, "t") => Some(m::LINK_TIME),
            (None, "beat") => Some(m::LINK_BEAT),
            (None, "read") => Some(m::LINK_READ),
            (None, "follow") => Some(m::LINK_FOLLOW),
            (None, "coverage") => Some(m::LINK_COVERAGE),
            (None, "speed") => Some(m::LINK_SPEED),
            (None, _) => Some(m::LINK_PAUSED),
        }
    }

    fn take_time(&mut self, value: &str) -> Option<()> {
        let value = value.strip_prefix("npt:").unwrap_or(value);
        let seconds = |text| number(text).filter(|t| *t <= Self::LATEST);
        let (from, until) = match value.split_once(',') {
            None => (Some(seconds(value)?), None),
            Some(("", until)) => (None, Some(seconds(until)?)),
            Some((from, until)) => (Some(seconds(from)?), Some(seconds(until)?)),
        };
        if until.is_some_and(|until| until <= from.unwrap_or(0.0)) {
            return None;
        }
        (self.from, self.until) = (from, until);
        Some(())
    }

    fn take_players(&mut self, value: &str) -> Option<()> {
        let mut follow = [false; 5];
        for player in value.split(',').take(follow.len() + 1) {
            let player = PlayerId::new(player.parse().ok()?)?;
            *follow.get_mut(player.index())? = true;
        }
        self.follow = follow;
        Some(())
    }

    /// The parameters, each led by `&`; times to the thousandth of a second.
    #[must_use]
    pub fn write(&self) -> String {
        let mut out = String::new();
        let seconds = |t: &Option<f64>| t.filter(|t| (0.0..=Self::LATEST).contains(t));
        let (from, until) = (seconds(&self.from), seconds(&self.until));
        if from.is_some() || until.is_some() {
            out.push_str("&t=");
            from.inspect(|t| push_decimal(&mut out, *t, 3));
            if let Some(until) = until {
                out.push(',');
                push_decimal(&mut out, until, 3);
            }
        }
        if let Some(beat) = self.beat {
            out.push_str("&beat=");
            out.push_str(&beat.to_string());
        }
        list(&mut out, "&read=", '.', self.read.iter().copied());
        let followed = PlayerId::ALL.iter().zip(self.follow);
        let followed = followed.filter_map(|(p, on)| on.then_some(u16::from(p.number())));
        list(&mut out, "&follow=", ',', followed);
        if let Some(coverage) = self.coverage {
            out.push_str("&coverage=");
            out.push_str(coverage.name());
        }
        if let Some(speed) = self
            .speed
            .filter(|s| (Self::SLOWEST..=Self::FASTEST).contains(s))
        {
            out.push_str("&speed=");
            push_decimal(&mut out, speed, 3);
        }
        if self.paused {
            out.push_str("&paused");
        }
        out
    }
}

fn list(out: &mut String, name: &str, between: char, items: impl Iterator<Item = u16>) {
    for (i, item) in items.enumerate() {
        match i {
            0 => out.push_str(name),
            _ => out.push(between),
        }
        out.push_str(&item.to_string());
    }
}

fn flag(text: &str) -> Option<bool> {
    match text {
        "" | "true" => Some(true),
        "false" => Some(false),
        _ => None,
    }
}

fn whole(text: &str) -> Option<u16> {
    let digits = text.bytes().all(|b| b.is_ascii_digit());
    text.parse().ok().filter(|n| digits && *n > 0)
}

/// A decimal number without sign or exponent, cut after its third decimal.
fn number(text: &str) -> Option<f64> {
    let (whole, part) = text.split_once('.').unwrap_or((text, ""));
    let digits = |text: &str| text.bytes().all(|b| b.is_ascii_digit());
    if whole.is_empty() || whole.len() > 6 || !digits(whole) || !digits(part) {
        return None;
    }
    let places = part.bytes().chain(core::iter::repeat(b'0')).take(3);
    let thousandths = whole.bytes().chain(places);
    let thousandths = thousandths.fold(0_u32, |n, digit| n * 10 + u32::from(digit - b'0'));
    Some(f64::from(thousandths) / 1000.0)
}

/// `piece` with its `%2C` and the like resolved: some programs write a comma so.
fn unescaped(piece: &str) -> Cow<'_, str> {
    if !piece.contains('%') {
        return Cow::Borrowed(piece);
    }
    let mut out = Vec::new();
    let mut rest = piece.as_bytes();
    while let Some((first, after)) = rest.split_first() {
        let hex = |byte: &u8| char::from(*byte).to_digit(16);
        let escaped = match (first, after) {
            (b'%', [high, low, ..]) => hex(high).zip(hex(low)).map(|(h, l)| (h << 4 | l) as u8),
            _ => None,
        };
        out.push(escaped.unwrap_or(*first));
        rest = after
            .get(if escaped.is_some() { 2 } else { 0 }..)
            .unwrap_or(&[]);
    }
    Cow::Owned(String::from_utf8_lossy(&out).into_owned())
}
