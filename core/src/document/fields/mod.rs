//! The set file, field by field: what each is called, what may stand in it, what it means.
//!
//! One set of tables drives the reader's checks and the published schema, so the two cannot
//! disagree.

mod action;
mod set;

pub(super) use action::{ACTION, verbs_of};
pub(super) use set::SET;

use super::words::Words;
use crate::voice::Text;

/// What may stand in a field.
#[derive(Clone, Copy, Debug)]
pub(super) enum Shape {
    /// The version of the format.
    Version,
    /// `true` or `false`.
    Flag,
    /// A number from … to ….
    Number(i32, i32),
    /// Seconds from … to ….
    Seconds(i32, i32),
    /// A direction in radians.
    Angle,
    /// A whole number from 1 to ….
    #[cfg(feature = "authoring")]
    Count(i32),
    /// A player's number, 1–5.
    Player,
    /// A defender, `"X1"`–`"X5"`.
    Defender,
    /// Text of at most so many characters.
    Text(usize),
    /// The name of an action: short text.
    Id,
    /// A word from a list.
    Word(Words),
    /// `[x, y]` in metres.
    Point,
    /// An object.
    Object(&'static Table),
    /// One of several, told apart by what is written.
    Either(&'static Choice),
    /// One, or a list of them.
    OneOrMore(&'static Self),
    /// A list, of at least … and at most … entries.
    List(&'static Self, usize, usize),
    /// The players by number.
    Players(&'static Table),
}

/// One of several shapes, and what they are called together.
#[derive(Debug)]
pub(super) struct Choice {
    /// What they are together, for a fault's "allowed".
    pub(super) says: Text,
    /// The shapes; each differs from the others by its JSON type or, where several are objects, by
    /// the first field of its table.
    pub(super) shapes: &'static [Shape],
}

/// An object of the file.
#[derive(Debug)]
pub(super) struct Table {
    /// What it is called.
    pub(super) what: Text,
    /// Its fields, in the order in which they are written.
    pub(super) fields: &'static [Field],
}

/// A field of an object.
#[derive(Debug)]
pub(super) struct Field {
    /// Its name.
    pub(super) name: &'static str,
    /// What may stand in it.
    pub(super) shape: Shape,
    /// Whether it must be there.
    pub(super) needed: bool,
    /// One line about it.
    #[cfg(feature = "schema")]
    pub(super) about: &'static str,
}

const fn needed(name: &'static str, shape: Shape, about: &'static str) -> Field {
    Field {
        needed: true,
        ..field(name, shape, about)
    }
}

#[cfg(feature = "schema")]
const fn field(name: &'static str, shape: Shape, about: &'static str) -> Field {
    Field {
        name,
        shape,
        needed: false,
        about,
    }
}

/// Without the schema nobody reads `about`, and the published wasm does not carry it.
#[cfg(not(feature = "schema"))]
const fn field(name: &'static str, shape: Shape, _about: &'static str) -> Field {
    Field {
        name,
        shape,
        needed: false,
    }
}
