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

/// All findings of a scheduled set in time order, each with its cure where one is found.
#[must_use]
pub fn with_cures(
    set: &Set,
    court: &Court,
    timeline: &Timeline,
    settings: &Settings,
) -> Vec<Finding> {
    let case = Case::new(set, court, timeline, settings);
    let found = judge(&case);
    let before = weight(&found);
    cured(&case, found, &ALONE, |case, finding| {
        let left = judge(case);
        gone(&left, finding) && weight(&left) < before
    })
}

/// All findings that need `defence`, in time order, each with its cure where one is found: the
/// cured set is played against under the same coverage, and judged as a whole.
#[must_use]
pub fn with_cures_against(
    set: &Set,
    court: &Court,
    timeline: &Timeline,
    defence: &Defence,
    settings: &Settings,
) -> Vec<Finding> {
    let case = Case::new(set, court, timeline, settings);
    let found = against_five(&case, defence);
    let before = weight(&found) + weight(&judge(&case));
    let coverage = defence.coverage();
    cured(&case, found, &AGAINST_FIVE, |case, finding| {
        let left = play(case, coverage);
        gone(&left, finding) && weight(&left) + weight(&judge(case)) < before
    })
}

fn play(case: &Case<'_>, coverage: Coverage) -> Vec<Finding> {
    let defence = Defence::simulate(case.set, case.court, case.timeline, coverage);
    against_five(case, &defence)
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

/// The findings, each with the first edit that `holds` in the set it makes; the gravest are served
/// first.
fn cured(
    case: &Case<'_>,
    mut found: Vec<Finding>,
    effort: &Effort,
    holds: impl Fn(&Case<'_>, &Finding) -> bool,
) -> Vec<Finding> {
    let mut left = effort.built;
    for severity in [Severity::Violation, Severity::Warning, Severity::Note] {
        for finding in found.iter_mut().filter(|f| f.severity == severity) {
            let edits = edits(case, finding);
            for edit in edits.into_iter().take(effort.tries) {
                left -= case.timeline.duration();
                if left < 0.0 || finding.cure.is_some() {
                    break;
                }
                finding.cure = proved(case, finding, edit, &holds);
            }
        }
    }
    found
}

/// The edit with its price, where it holds.
fn proved(
    case: &Case<'_>,
    finding: &Finding,
    edit: Edit,
    holds: impl Fn(&Case<'_>, &Finding) -> bool,
) -> Option<Cure> {
    let set = edit.apply(case.set);
    if set == *case.set {
        return None;
    }
    let schedule = timing::build(&set, case.court).ok()?;
    let timeline = Timeline::build(&set, case.court, schedule);
    let edited = Case::new(&set, case.court, &timeline, case.settings);
    let price = edited.goal - case.goal;
    holds(&edited, finding).then_some(Cure { edit, price })
}

fn weight(found: &[Finding]) -> u32 {
    let of = |f: &Finding| match f.severity {
        Severity::Note => 1,
        Severity::Warning => 10,
        Severity::Violation => 100,
    };
    found.iter().map(of).sum()
}
