//! A whole set in the fragment of a link: no server keeps anything.
//!
//! `set=1.` and letters, then what is to be shown of it: `set=1.AWk…&t=3.4,6&follow=1,4&paused`. The
//! set's part is the text of the set file, coded as short as a model of such files makes it
//! ([`model`], [`coder`], [`dictionary`]), with its length before it and a checksum behind it, in 64
//! letters ([`text`]). The rest is for people to read ([`view`]).
//!
//! The digit is the version. What a version makes stays readable: its model and dictionary are
//! frozen, and `tests/links` holds links that must open for ever.

mod coder;
mod damage;
mod dictionary;
mod model;
mod repeat;
mod text;
mod view;
mod vote;

#[cfg(test)]
mod tests;

pub use view::View;

use crate::document;
use crate::fault::Faults;
use crate::set::Set;
use alloc::string::String;
use alloc::vec::Vec;
use damage::Broken;

/// The version of links that this program makes.
pub const VERSION: u8 = 1;

/// What stands before the letters: a name, the version, a dot.
const LEAD: &str = "set=1.";
/// Bytes of the checksum.
const CHECK: usize = 4;
/// Bits of the length in each of its bytes.
const LENGTH_BITS: u32 = 7;

/// What a link may not exceed, so that none can exhaust memory or patience.
#[derive(Clone, Copy, Debug)]
pub struct Limits {
    /// Characters of a whole link.
    pub characters: usize,
    /// Bytes of the set file that it holds.
    pub bytes: usize,
}

/// The limits of version 1. Common practice, no source: a long set takes 8 kB and 1,500 characters.
pub const LIMITS: Limits = Limits {
    characters: 32_000,
    bytes: 64 * 1024,
};

/// What is in a link.
#[derive(Clone, Debug, PartialEq)]
pub struct Link {
    /// The text of the set file; whether it is one, [`document::read`] knows.
    pub text: Vec<u8>,
    /// What to show of it.
    pub view: View,
}

/// `set` and `view` as the fragment of a link, without its `#`.
///
/// ```
/// use backcut::{document, link};
/// let text = br#"{"backcut": 1, "title": "Keep away", "players": {
///     "1": {"at": "top", "ball": true}, "2": {"at": "left wing"}},
///     "beats": [{"actions": [{"who": 1, "do": "pass", "to": 2}]}]}"#;
/// let set = document::read(text)?;
/// let view = link::View { from: Some(0.4), paused: true, ..Default::default() };
/// let fragment = link::write(&set, &view)?;
/// assert!(fragment.len() < 100 && fragment.ends_with("&t=0.4&paused"));
///
/// let back = link::read(&format!("https://club.example/sets#{fragment}"))?;
/// assert_eq!(back.text, document::write(&set).into_bytes());
/// assert_eq!(back.view, view);
///
/// let cut = link::read(&fragment[..40]).unwrap_err();
/// assert_eq!(cut.list[0].code, "link-damaged");
/// # Ok::<(), backcut::fault::Faults>(())
/// ```
///
/// # Errors
/// `link-too-large` where the set exceeds [`LIMITS`].
pub fn write(set: &Set, view: &View) -> Result<String, Faults> {
    let written = document::write(set);
    if written.len() > LIMITS.bytes {
        return Err(Broken::TooLarge.faults());
    }
    let mut bytes = packed(written.as_bytes());
    let check = checksum(&bytes).to_be_bytes();
    bytes.extend(check);
    let fragment = [LEAD, &text::encode(&bytes), &view.write()].concat();
    if fragment.len() > LIMITS.characters {
        return Err(Broken::TooLarge.faults());
    }
    Ok(fragment)
}

/// Opens a link, whole or from its `#` on. Blanks and line breaks that a mail program put in are
/// passed over.
///
/// # Errors
/// One fault that says why there is no set to be had: `no-link`, `link-version`, `link-too-long`,
/// `link-letter`, `link-damaged`, `link-too-large`; else every `link-view`.
pub fn read(link: &str) -> Result<Link, Faults> {
    if link.len() > LIMITS.characters {
        return Err(Broken::TooLong.faults());
    }
    let text = unpacked(link).map_err(Broken::faults)?;
    let view = View::read(link)?;
    Ok(Link { text, view })
}

/// What follows the first `#`, or all where there is none.
fn fragment(link: &str) -> &str {
    let link = link.trim();
    link.split_once('#').map_or(link, |(_, fragment)| fragment)
}

/// `text` coded, its length before it.
fn packed(text: &[u8]) -> Vec<u8> {
    let mut bytes = Vec::new();
    let mut length = text.len();
    loop {
        let low = (length & ((1 << LENGTH_BITS) - 1)) as u8;
        length >>= LENGTH_BITS;
        if length == 0 {
            bytes.push(low);
            break;
        }
        bytes.push(low | 1 << LENGTH_BITS);
    }
    bytes.extend(coder::encode(&mut dictionary::model(), text));
    bytes
}

fn unpacked(link: &str) -> Result<Vec<u8>, Broken> {
    let pieces = fragment(link).split('&');
    let mut named = pieces.filter_map(|piece| piece.trim_start().strip_prefix("set="));
    let set = named.next().ok_or(Broken::NoSet)?;
    let (version, letters) = set.split_once('.').ok_or(Broken::Version)?;
    if version != "1" {
        return Err(Broken::Version);
    }
    let printed = |c: &char| !c.is_ascii_whitespace();
    let letters: String = letters.chars().filter(printed).collect();
    let bytes = text::decode(letters.as_bytes()).map_err(|no| match no {
        text::NoText::Letter(at) => {
            let letter = letters.get(at..).and_then(|rest| rest.chars().next());
            Broken::Letter(letter.unwrap_or(' '), LEAD.len() + at + 1)
        }
        text::NoText::End => Broken::Damaged,
    })?;
    let (coded, check) = bytes.split_last_chunk::<CHECK>().ok_or(Broken::Damaged)?;
    if u32::from_be_bytes(*check) != checksum(coded) {
        return Err(Broken::Damaged);
    }
    let (length, coded) = length(coded).ok_or(Broken::TooLarge)?;
    Ok(coder::decode(&mut dictionary::model(), coded, length))
}

/// The length of the text, within [`LIMITS`], and what follows it.
fn length(coded: &[u8]) -> Option<(usize, &[u8])> {
    let mut length = 0;
    for (byte, n) in coded.iter().zip(0..3) {
        let low = usize::from(byte & ((1 << LENGTH_BITS) - 1));
        length |= low << (LENGTH_BITS * n);
        if byte >> LENGTH_BITS == 0 {
            let rest = coded.get(n as usize + 1..)?;
            return (length <= LIMITS.bytes).then_some((length, rest));
        }
    }
    None
}

/// Over the version too, so that a link is not read by the rules of another.
fn checksum(coded: &[u8]) -> u32 {
    text::checksum([VERSION].iter().chain(coded))
}
