//! The search: a fixed list of edits a finding, tried in order; the first that holds is taken.
//!
//! An edit holds when the edited set can be scheduled, the finding is gone from it, and all that is
//! found in it together weighs less than before: no cure at the price of another illness.

use super::edits::edits;
use super::{Cure, Edit};
use crate::court::Court;
use crate::defence::Defence;
use crate::findings::case::Case;
use crate::findings::{Against, Finding, Settings, Severity, against, judge};
use crate::looks::looks;
use crate::set::{Coverage, Set};
use crate::timeline::Timeline;
use crate::timing;
use alloc::vec::Vec;

/// What one search may try: so many edits a finding, and seconds of set built anew in all.
struct Effort {
    tries: usize,
    built: f64,
}

/// A set of ten seconds gets a thousand edits in all; fewer where five have to be played against each.
const ALONE: Effort = Effort {
    tries: 60,
    built: 10_000.0,
};
const AGAINST_FIVE: Effort = Effort {
    tries: 40,
    built: 3_000.0,
};

/// Findings whose cures are looked for one try at a time, so that a page can go on in between.
///
/// ```
/// # use backcut::findings::{Search, Settings};
/// # use backcut::play::{Options, Play};
/// # let text = br#"{ "backcut": 1, "title": "Parked", "players": {
/// #     "1": {"at": "top", "ball": true}, "5": {"at": "low paint"} },
/// #   "beats": [ { "actions": [
/// #     {"who": 1, "do": "dribble", "to": "right wing", "takes": 3.5},
/// #     {"who": 1, "do": "shot"} ] } ] }"#;
/// # let play = Play::open(text, &Options::default())?;
/// let settings = Settings::default();
/// let mut search = Search::new(play.set(), play.court(), play.timeline(), None, &settings);
/// while search.step(play.set(), play.court(), &settings) {}
/// assert!(search.found().iter().any(|f| f.cure.is_some()));
/// # Ok::<(), backcut::fault::Faults>(())
/// ```
#[derive(Clone, Debug)]
pub struct Search {
    found: Vec<Finding>,
    /// What is still to be tried, the next last: for which finding, and what.
    tries: Vec<(usize, Edit)>,
    /// Seconds of set that may still be built anew.
    left: f64,
    duration: f64,
    goal: f64,
    /// What all that is found weighs together.
    before: u32,
    coverage: Option<Coverage>,
}

impl Search {
    /// All findings of a scheduled set in time order, or, with a defence, those that need it; without
    /// cures so far.
    #[must_use]
    pub fn new(
        set: &Set,
        court: &Court,
        timeline: &Timeline,
        defence: Option<&Defence>,
        settings: &Settings,
    ) -> Self {
        let case = Case::new(set, court, timeline, settings);
        let alone = judge(&case);
        let mut before = weight(&alone);
        let (found, effort) = match defence {
            None => (alone, ALONE),
            Some(defence) => {
                let found = against_five(&case, defence);
                before += weight(&found);
                (found, AGAINST_FIVE)
            }
        };
        let mut tries = Vec::new();
        // The gravest are served first.
        for severity in [Severity::Violation, Severity::Warning, Severity::Note] {
            let served = found
                .iter()
                .enumerate()
                .filter(|f| f.1.severity == severity);
            for (i, finding) in served {
                let edits = edits(&case, finding).into_iter().take(effort.tries);
                tries.extend(edits.map(|edit| (i, edit)));
            }
        }
        tries.reverse();
        Self {
            found,
            tries,
            left: effort.built,
            duration: timeline.duration(),
            goal: case.goal,
            before,
            coverage: defence.map(Defence::coverage),
        }
    }

    /// What was found, with the cures so far.
    #[must_use]
    pub fn found(&self) -> &[Finding] {
        &self.found
    }

    /// The same, for who looks no further.
    #[must_use]
    pub fn into_found(self) -> Vec<Finding> {
        self.found
    }

    /// Tries one edit; whether there is more to try.
    pub fn step(&mut self, set: &Set, court: &Court, settings: &Settings) -> bool {
        let Some((i, edit)) = self.tries.pop() else {
            return false;
        };
        self.left -= self.duration;
        if self.left < 0.0 {
            self.tries.clear();
            return false;
        }
        let cure = self.found.get(i).and_then(|finding| {
            let edited = edit.apply(set);
            (edited != *set).then(|| self.proved(finding, edit, &edited, court, settings))?
        });
        if cure.is_some() {
            self.tries.retain(|(of, _)| *of != i);
            if let Some(finding) = self.found.get_mut(i) {
                finding.cure = cure;
            }
        }
        !self.tries.is_empty()
    }

    /// The edit with its price, where it holds in the set it makes: the cured set is judged as a
    /// whole, against five under the same coverage where the finding needs them.
    fn proved(
        &self,
        finding: &Finding,
        edit: Edit,
        edited: &Set,
        court: &Court,
        settings: &Settings,
    ) -> Option<Cure> {
        let schedule = timing::build(edited, court).ok()?;
        let timeline = Timeline::build(edited, court, schedule);
        let case = Case::new(edited, court, &timeline, settings);
        let mut left = match self.coverage {
            None => Vec::new(),
            Some(coverage) => {
                let defence = Defence::simulate(edited, court, &timeline, coverage);
                against_five(&case, &defence)
            }
        };
        if self.coverage.is_some() && !gone(&left, finding) {
            return None;
        }
        left.extend(judge(&case));
        let holds = gone(&left, finding) && weight(&left) < self.before;
        holds.then_some(Cure {
            edit,
            price: case.goal - self.goal,
        })
    }
}

fn against_five(case: &Case<'_>, defence: &Defence) -> Vec<Finding> {
    against::judge(&Against {
        case,
        defence,
        looks: looks(case.timeline, defence),
    })
}

fn gone(left: &[Finding], finding: &Finding) -> bool {
    !left.iter().any(|f| f.is_like(finding))
}

fn weight(found: &[Finding]) -> u32 {
    let of = |f: &Finding| match f.severity {
        Severity::Note => 1,
        Severity::Warning => 10,
        Severity::Violation => 100,
    };
    found.iter().map(of).sum()
}
