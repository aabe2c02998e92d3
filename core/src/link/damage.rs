//! What is wrong with a link, told so that whoever got it knows what to do.

use super::LIMITS;
use crate::document::quoted;
use crate::fault::{Fault, Faults, Place};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// What to do about a link that did not arrive whole.
const AGAIN: &str = "Copy it again, whole, from where it came.";

/// Why a link cannot be opened, or a set put in one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Broken {
    /// No set is in it.
    NoSet,
    /// A version of links that this program does not know.
    Version,
    /// More letters than a link may have.
    TooLong,
    /// A letter that no link holds, the so-manyth of the link counted from 1.
    Letter(char, usize),
    /// The checksum does not hold.
    Damaged,
    /// A set of more bytes than a link may hold.
    TooLarge,
}

impl Broken {
    pub(super) fn faults(self) -> Faults {
        Faults::one(|| self.fault())
    }

    fn fault(self) -> Fault {
        let most = format!("at most {} characters", LIMITS.characters);
        let (code, found, allowed, help) = match self {
            Self::NoSet => (
                "no-link",
                "no set is in this link".to_string(),
                "a link to a set has #set= and letters behind it".to_string(),
                AGAIN,
            ),
            Self::Version => (
                "link-version",
                "this link is of a version that is not known here".to_string(),
                "set=1. and letters behind it".to_string(),
                "Copy it again, whole; if that does not help, it needs a newer program.",
            ),
            Self::TooLong => (
                "link-too-long",
                "the link is too long".to_string(),
                most,
                "Send the set file instead.",
            ),
            Self::Letter(letter, _) => (
                "link-letter",
                format!("a letter that no link has: {}", quoted(&letter.to_string())),
                "letters of English, digits, - and _".to_string(),
                AGAIN,
            ),
            Self::Damaged => (
                "link-damaged",
                "the link is damaged: it was cut short or changed on its way".to_string(),
                "every letter as it was made".to_string(),
                AGAIN,
            ),
            Self::TooLarge => (
                "link-too-large",
                "the set is too large for a link".to_string(),
                format!("at most {} kB as a file, and {most}", LIMITS.bytes / 1024),
                "Send the set file instead.",
            ),
        };
        let column = match self {
            Self::Letter(_, column) => column,
            _ => 1,
        };
        Fault {
            code,
            place: on_the_line(column),
            found,
            allowed,
            help: Some(help.to_string()),
            related: Vec::new(),
        }
    }
}

/// A link is one line of text.
fn on_the_line(column: usize) -> Place {
    Place {
        pointer: String::new(),
        line: 1,
        column: u32::try_from(column).unwrap_or(u32::MAX),
    }
}

/// What is wrong with the parameters of a view.
#[derive(Default)]
pub(super) struct Damage(Faults);

impl Damage {
    pub(super) fn view(&mut self, piece: &str, expected: &str) {
        self.0.push(Fault {
            code: "link-view",
            place: on_the_line(1),
            found: format!("the link asks for {}", quoted(piece)),
            allowed: expected.to_string(),
            help: None,
            related: Vec::new(),
        });
    }

    pub(super) fn faults(self) -> Option<Faults> {
        (!self.0.is_empty()).then_some(self.0)
    }
}
