//! Reads against every coverage, one coverage at a time, so that a page does not stutter.

use alloc::vec::Vec;
use backcut::choice::{Answer, Lines};
use backcut::findings::{Finding, Settings, check_reads};
use backcut::play::Play;
use backcut::set::Coverage;

/// What is known of a set's reads so far.
#[derive(Debug)]
pub(crate) struct Tried {
    lines: Option<Lines>,
    /// Coverages that are still to be tried, the next one last.
    left: Vec<Coverage>,
    answers: Vec<Answer>,
    /// What was found, once all were tried.
    pub(crate) found: Vec<Finding>,
}

impl Tried {
    /// Nothing yet of `main`, a set as it is drawn.
    pub(crate) fn of(main: &Play) -> Self {
        let mut left = main.coverages_tried();
        left.reverse();
        let reads = !main.set().reads.is_empty();
        Self {
            lines: main.lines().ok().filter(|_| reads),
            left,
            answers: Vec::new(),
            found: Vec::new(),
        }
    }

    /// Tries the next coverage; whether there is more to do.
    pub(crate) fn go_on(&mut self) -> bool {
        let Some(lines) = &self.lines else {
            return false;
        };
        if let Some(coverage) = self.left.pop() {
            self.answers.push(lines.answer(coverage));
            return true;
        }
        self.found = check_reads(lines, &self.answers, &Settings::default());
        (self.lines, self.answers) = (None, Vec::new());
        false
    }
}
