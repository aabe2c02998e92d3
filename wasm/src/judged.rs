//! What is known of an open set beyond itself; the build for the first frame knows nothing.

use backcut::scene::Verdict;

#[cfg(feature = "full")]
pub(crate) use full::Judged;

#[cfg(feature = "full")]
mod full {
    use super::Verdict;
    use alloc::vec::Vec;
    use backcut::defence::Defence;
    use backcut::findings::{Finding, Search};
    use backcut::looks::Look;
    use backcut::math::sort_short;
    use backcut::scene::Flag;

    /// Grows as it is asked for.
    #[derive(Debug, Default)]
    pub(crate) struct Judged {
        pub(crate) defence: Option<Defence>,
        pub(crate) looks: Vec<Look>,
        /// Whether the strip shows what holds the set up.
        pub(crate) timing: bool,
        /// Whether findings are asked for.
        pub(crate) on: bool,
        /// What is found whoever defends, and what the defence on the floor shows.
        pub(crate) own: Option<Search>,
        pub(crate) against: Option<Search>,
        pub(crate) findings: Vec<Finding>,
        pub(crate) flags: Vec<Flag>,
    }

    impl Judged {
        pub(crate) fn holds_up(&self) -> bool {
            self.timing
        }

        /// Collects what was found, with the cures so far, in time order.
        pub(crate) fn gather(&mut self) {
            self.findings.clear();
            if !self.on {
                return;
            }
            for search in [&self.own, &self.against].into_iter().flatten() {
                self.findings.extend_from_slice(search.found());
            }
            sort_short(&mut self.findings, |a, b| a.t.total_cmp(&b.t));
        }

        pub(crate) fn verdict(&self) -> Option<Verdict<'_>> {
            Some(Verdict {
                defence: self.defence.as_ref(),
                looks: &self.looks,
                flags: &self.flags,
            })
        }
    }
}

/// Nothing.
#[cfg(not(feature = "full"))]
#[derive(Debug, Default)]
pub(crate) struct Judged {}

#[cfg(not(feature = "full"))]
#[allow(clippy::unused_self, reason = "the other build has something to tell")]
impl Judged {
    pub(crate) fn holds_up(&self) -> bool {
        false
    }

    pub(crate) fn verdict(&self) -> Option<Verdict<'_>> {
        None
    }
}
