//! What is wrong with a link, told so that whoever got it knows what to do.

use super::LIMITS;
use crate::document::quoted;
use crate::fault::{Fault, Faults, Place};
use crate::voice::messages::fault as m;
use crate::voice::{Said, Text};
use alloc::string::{String, ToString};
use alloc::vec::Vec;

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
        let most = || m::MOST_CHARACTERS.with("n", LIMITS.characters.to_string());
        let (code, found, allowed, help): (_, Said, Said, Text) = match self {
            Self::NoSet => (
                "no-link",
                m::NO_LINK.into(),
                m::LINK_HAS.into(),
                m::COPY_AGAIN,
            ),
            Self::Version => (
                "link-version",
                m::LINK_VERSION.into(),
                m::LINK_BEGINS.into(),
                m::NEWER_PROGRAM,
            ),
            Self::TooLong => ("link-too-long", m::LINK_LONG.into(), most(), m::SEND_FILE),
            Self::Letter(letter, _) => (
                "link-letter",
                m::LINK_LETTER.with("letter", quoted(&letter.to_string())),
                m::LINK_LETTERS.into(),
                m::COPY_AGAIN,
            ),
            Self::Damaged => (
                "link-damaged",
                m::LINK_DAMAGED.into(),
                m::EVERY_LETTER.into(),
                m::COPY_AGAIN,
            ),
            Self::TooLarge => (
                "link-too-large",
                m::LINK_LARGE.into(),
                m::MOST_IN_LINK
                    .with("n", (LIMITS.bytes / 1024).to_string())
                    .with("characters", most()),
                m::SEND_FILE,
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
            allowed: Some(allowed),
            help: Some(help.into()),
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
    pub(super) fn view(&mut self, piece: &str, expected: Text) {
        self.0.push(Fault {
            code: "link-view",
            place: on_the_line(1),
            found: m::LINK_ASKS.with("what", quoted(piece)),
            allowed: Some(expected.into()),
            help: None,
            related: Vec::new(),
        });
    }

    pub(super) fn faults(self) -> Option<Faults> {
        (!self.0.is_empty()).then_some(self.0)
    }
}
