//! What cannot be understood as written, and where it stands in the file.

use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

mod suggest;
pub use suggest::{nearest, same_word};

/// A place in a set file.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Place {
    /// JSON Pointer (RFC 6901), `""` for the whole file.
    pub pointer: String,
    /// Line, counted from 1; 0 where there is no text behind the set.
    pub line: u32,
    /// Column in characters, counted from 1.
    pub column: u32,
}

/// One thing that is wrong with the file, told so that its author can mend it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// Stable kebab-case name of this sort of fault, for example `unknown-spot`.
    pub code: &'static str,
    /// Where it stands.
    pub place: Place,
    /// What was found there.
    pub found: String,
    /// What is allowed there.
    pub allowed: String,
    /// A nearer hint: "did you mean …".
    pub help: Option<String>,
    /// Other places that take part, for example the other ties of a contradiction.
    pub related: Vec<Place>,
}

impl fmt::Display for Fault {
    /// One line: `line 3, column 9 (/players/1/at): found …; what is allowed. Did you mean …? [code]`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "line {}, column {}", self.place.line, self.place.column)?;
        if !self.place.pointer.is_empty() {
            write!(f, " ({})", self.place.pointer)?;
        }
        write!(f, ": {}", self.found)?;
        if !self.allowed.is_empty() {
            write!(f, "; {}", self.allowed)?;
        }
        if let Some(help) = &self.help {
            write!(f, ". {help}")?;
        }
        write!(f, " [{}]", self.code)
    }
}

/// Whether this build serves those who write sets: it tells faults, knows where things stand in the
/// file, and keeps what is written back. One without the feature `authoring` plays the same files
/// and refuses the same files; whoever wants to know why asks a build that tells.
pub const AUTHORING: bool = cfg!(feature = "authoring");

/// All faults of a file, in file order; never empty when returned as an error.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Faults {
    /// At most [`Faults::CAP`] faults.
    pub list: Vec<Fault>,
    /// How many more were found and not kept.
    pub more: usize,
}

impl Faults {
    /// Faults kept; later ones are only counted, so that a hostile file cannot grow the list.
    pub const CAP: usize = 50;

    /// Adds a fault, or counts it once the list is full.
    pub fn push(&mut self, fault: Fault) {
        if self.list.len() < Self::CAP {
            self.list.push(fault);
        } else {
            self.more += 1;
        }
    }

    /// Whether nothing is wrong.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.list.is_empty() && self.more == 0
    }

    /// The fault that `tell` makes, told or only counted.
    pub(crate) fn one(tell: impl FnOnce() -> Fault) -> Self {
        if !AUTHORING {
            return Self::untold();
        }
        Self {
            list: alloc::vec![tell()],
            more: 0,
        }
    }

    /// A fault that is only counted.
    pub(crate) fn untold() -> Self {
        Self {
            list: Vec::new(),
            more: 1,
        }
    }
}

impl fmt::Display for Faults {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (i, fault) in self.list.iter().enumerate() {
            if i > 0 {
                writeln!(f)?;
            }
            write!(f, "{fault}")?;
        }
        if self.more > 0 {
            write!(f, "\n{} more", self.more)?;
        }
        Ok(())
    }
}

impl core::error::Error for Faults {}
