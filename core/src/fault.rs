//! What cannot be understood as written, and where it stands in the file.

use crate::voice::messages::fault as m;
use crate::voice::{Said, Voice};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

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
    pub found: Said,
    /// What is allowed there.
    pub allowed: Option<Said>,
    /// A nearer hint: "did you mean …".
    pub help: Option<Said>,
    /// Other places that take part, for example the other ties of a contradiction.
    pub related: Vec<Place>,
}

impl Fault {
    /// That a page asks for a `court`, `level`, `coverage` or `read` that there is not.
    #[must_use]
    pub fn unknown_option(what: &str, name: &str, allowed: impl Into<Said>) -> Self {
        Self {
            code: "unknown-option",
            place: Place::default(),
            found: m::ASKS_FOR.with("what", what).with("name", name),
            allowed: Some(allowed.into()),
            help: None,
            related: Vec::new(),
        }
    }

    /// One line: `line 3, column 9 (/players/1/at): found …; what is allowed. Did you mean …? [code]`.
    #[must_use]
    pub fn told(&self, voice: Voice) -> String {
        let Place {
            pointer,
            line,
            column,
        } = &self.place;
        let (line, column) = (line.to_string(), column.to_string());
        let mut out = voice.fill(m::LINE, &[("line", &line), ("column", &column)]);
        if !pointer.is_empty() {
            out.push_str(&format!(" ({pointer})"));
        }
        out.push_str(": ");
        out.push_str(&self.found.told(voice));
        if let Some(allowed) = &self.allowed {
            out.push_str("; ");
            out.push_str(&allowed.told(voice));
        }
        if let Some(help) = &self.help {
            out.push_str(". ");
            out.push_str(&help.told(voice));
        }
        out.push_str(&format!(" [{}]", self.code));
        out
    }
}

/// [`Fault::told`] in English.
impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.told(Voice::ENGLISH))
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

impl Faults {
    /// All of them, a line each, and how many more there are.
    #[must_use]
    pub fn told(&self, voice: Voice) -> String {
        let mut lines: Vec<String> = self.list.iter().map(|f| f.told(voice)).collect();
        if self.more > 0 {
            lines.push(voice.fill(m::MORE, &[("n", &self.more.to_string())]));
        }
        lines.join("\n")
    }
}

/// [`Faults::told`] in English.
impl fmt::Display for Faults {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.told(Voice::ENGLISH))
    }
}

impl core::error::Error for Faults {}
