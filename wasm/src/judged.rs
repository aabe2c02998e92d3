//! What is known of an open set beyond itself; the build for the first frame knows nothing.

#[cfg(not(feature = "full"))]
use backcut::play::Play;
use backcut::scene::{Verdict, View};

#[cfg(feature = "full")]
pub(crate) use full::Judged;

#[cfg(feature = "full")]
mod full {
    use super::{Verdict, View};
    use crate::quiz::Quiz;
    use crate::tried::Tried;
    use alloc::vec::Vec;
    use backcut::defence::Defence;
    use backcut::findings::{Finding, Search, together};
    use backcut::looks::Look;
    use backcut::play::Play;
    use backcut::scene::Flag;
    use backcut::timeline::Slowed;

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
        /// What is found of the reads of a set as it is drawn, whoever defends.
        pub(crate) tried: Option<Tried>,
        pub(crate) findings: Vec<Finding>,
        pub(crate) flags: Vec<Flag>,
        /// What is asked.
        pub(crate) quiz: Quiz,
        /// Until when ghosts show what is next.
        pub(crate) ghosts: Option<f64>,
        /// What the strip marks as slow.
        pub(crate) slow: Vec<Slowed>,
    }

    impl Judged {
        pub(crate) fn of(core: &Play) -> Self {
            Self {
                slow: core.slow(),
                ..Self::default()
            }
        }

        pub(crate) fn holds_up(&self) -> bool {
            self.timing
        }

        /// Collects what was found, with the cures so far.
        pub(crate) fn gather(&mut self) {
            let found = |search: &Option<Search>| {
                let search = search.as_ref().filter(|_| self.on);
                search.map_or_else(Vec::new, |s| s.found().to_vec())
            };
            let sets = together(found(&self.own), found(&self.against));
            let tried = self.tried.as_ref().filter(|_| self.on);
            let reads = tried.map_or_else(Vec::new, |t| t.found.clone());
            self.findings = together(sets, reads);
        }

        /// What the court shows while something is asked.
        pub(crate) fn view(&self, view: View) -> View {
            self.quiz.view(view)
        }

        pub(crate) fn verdict(&self) -> Option<Verdict<'_>> {
            Some(Verdict {
                defence: self.defence.as_ref(),
                looks: &self.looks,
                flags: &self.flags,
                ghosts: self.ghosts,
                slow: &self.slow,
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
    pub(crate) fn of(_: &Play) -> Self {
        Self {}
    }

    pub(crate) fn holds_up(&self) -> bool {
        false
    }

    pub(crate) fn view(&self, view: View) -> View {
        view
    }

    pub(crate) fn verdict(&self) -> Option<Verdict<'_>> {
        None
    }
}
