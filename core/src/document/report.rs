//! The faults of one file as they are found.

use super::json::{Json, Value};
use super::place::Source;
use crate::fault::{Fault, Faults};
use crate::math::Listed;
use alloc::format;
use alloc::string::String;

/// Faults so far, in file order, and the file to find their places in.
pub(super) struct Report<'a> {
    pub(super) source: Source<'a>,
    pub(super) faults: Faults,
    /// Whether everything could be told that the meaning of other parts hangs on: who, what, to
    /// whom. Where it could not, judging the rest would blame innocent lines.
    pub(super) clear: bool,
}

/// Codes of faults that leave no doubt about anything else in the file.
const LOCAL: [&str; 16] = [
    "unknown-action",
    "duplicate-id",
    "unknown-spot",
    "unknown-pace",
    "unknown-side",
    "unknown-edge",
    "unknown-coverage",
    "unknown-deed",
    "unknown-fake",
    "unknown-level",
    "unknown-court",
    "unknown-word",
    "text-too-long",
    "time-out-of-range",
    "number-out-of-range",
    "field-of-other-action",
];

impl<'a> Report<'a> {
    pub(super) fn new(source: Source<'a>) -> Self {
        Self {
            source,
            faults: Faults::default(),
            clear: true,
        }
    }

    /// Whether another fault would still be kept; later ones are only counted.
    fn has_room(&self) -> bool {
        self.faults.list.len() < Faults::CAP
    }

    /// Adds a fault at byte `at`. `tell` gives what was found, what is allowed and a hint; it is
    /// not asked once the list is full, so that a hostile file costs no more than a count.
    pub(super) fn add(&mut self, at: u32, code: &'static str, tell: &dyn Fn() -> Told) {
        self.add_related(at, code, &[], tell);
    }

    /// The same with other places that take part.
    pub(super) fn add_related(
        &mut self,
        at: u32,
        code: &'static str,
        related: &[u32],
        tell: &dyn Fn() -> Told,
    ) {
        self.clear &= LOCAL.contains(&code);
        if !self.has_room() {
            self.faults.more += 1;
            return;
        }
        let told = tell();
        let fault = Fault {
            code,
            place: self.source.place(at),
            found: told.found,
            allowed: told.allowed,
            help: told.help,
            related: related.iter().map(|r| self.source.place(*r)).listed(),
        };
        // Steps of reading come one after the other; their faults are told in file order.
        let place = |f: &Fault| (f.place.line, f.place.column);
        let after = self
            .faults
            .list
            .partition_point(|f| place(f) <= place(&fault));
        self.faults.list.insert(after, fault);
    }

    /// The words for a value: what its author sees there.
    pub(super) fn shown(&self, node: &Json) -> String {
        match &node.value {
            Value::Null => String::from("null"),
            Value::Bool(true) => String::from("true"),
            Value::Bool(false) => String::from("false"),
            Value::Number(_) => cut(self.source.slice(node)),
            Value::Text(text) => quoted(text),
            Value::List(_) => String::from("a list [ ]"),
            Value::Object(_) => String::from("a group { }"),
        }
    }
}

/// What a fault tells.
pub(super) struct Told {
    found: String,
    allowed: String,
    help: Option<String>,
}

/// What was found and what is allowed.
pub(super) fn told(found: impl Into<String>, allowed: impl Into<String>) -> Told {
    Told {
        found: found.into(),
        allowed: allowed.into(),
        help: None,
    }
}

impl Told {
    /// With a hint.
    pub(super) fn hint(mut self, help: impl Into<String>) -> Self {
        self.help = Some(help.into());
        self
    }

    /// With "did you mean", where a word is near enough.
    pub(super) fn meant(self, word: Option<&str>) -> Self {
        match word {
            Some(word) => self.hint(format!("Did you mean {}?", quoted(word))),
            None => self,
        }
    }
}

/// Text in quotes, short and on one line.
pub(super) fn quoted(text: &str) -> String {
    format!("\"{}\"", cut(text))
}

fn cut(text: &str) -> String {
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
