//! What a fault says.

use crate::fault::{Fault, Place};
use crate::voice::Said;
use crate::voice::messages::fault as m;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// What a fault tells.
pub(super) struct Told {
    found: Said,
    allowed: Said,
    help: Option<Said>,
}

/// What was found and what is allowed.
pub(super) fn told(found: impl Into<Said>, allowed: impl Into<Said>) -> Told {
    Told {
        found: found.into(),
        allowed: allowed.into(),
        help: None,
    }
}

impl Told {
    /// The fault that says this at `place`.
    pub(super) fn at(self, code: &'static str, place: Place) -> Fault {
        Fault {
            code,
            place,
            found: self.found,
            allowed: Some(self.allowed),
            help: self.help,
            related: Vec::new(),
        }
    }

    /// With a hint.
    pub(super) fn hint(mut self, help: impl Into<Said>) -> Self {
        self.help = Some(help.into());
        self
    }

    /// With "did you mean", where a word is near enough.
    pub(super) fn meant(self, word: Option<&str>) -> Self {
        match word {
            Some(word) => self.hint(m::MEANT.with("word", quoted(word))),
            None => self,
        }
    }
}

/// Text in quotes, short and on one line.
pub(crate) fn quoted(text: &str) -> String {
    format!("\"{}\"", cut(text))
}

pub(super) fn cut(text: &str) -> String {
    const SHOWN: usize = 40;
    let mut out: String = text
        .chars()
        .take(SHOWN)
        .map(|c| if c.is_control() { ' ' } else { c })
        .collect();
    if text.chars().nth(SHOWN).is_some() {
        out.push('…');
    }
    out
}
