//! The faults of one file as they are found.

use super::place::Source;
use super::told::Told;
use crate::fault::{AUTHORING, Fault, Faults};
use crate::math::Listed;

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
    pub(super) fn add(&mut self, at: u32, code: &'static str, tell: &dyn Fn(&Source<'_>) -> Told) {
        self.add_related(at, code, &[], tell);
    }

    /// The same with other places that take part.
    pub(super) fn add_related(
        &mut self,
        at: u32,
        code: &'static str,
        related: &[u32],
        tell: &dyn Fn(&Source<'_>) -> Told,
    ) {
        if !AUTHORING {
            self.faults.more += 1;
            return;
        }
        self.clear &= LOCAL.contains(&code);
        if !self.has_room() {
            self.faults.more += 1;
            return;
        }
        let mut fault = tell(&self.source).at(code, self.source.place(at));
        fault.related = related.iter().map(|r| self.source.place(*r)).listed();
        // Steps of reading come one after the other; their faults are told in file order.
        let place = |f: &Fault| (f.place.line, f.place.column);
        let after = self
            .faults
            .list
            .partition_point(|f| place(f) <= place(&fault));
        self.faults.list.insert(after, fault);
    }
}
