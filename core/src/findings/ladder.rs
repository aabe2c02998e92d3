//! What is taught later than at this level; proposed, never enforced.
//!
//! Common practice, no source: no screens but away from the ball under 12; ball screens, pin-downs
//! and flex under 14; staggers and screens for screeners after that; blind screens and gates for
//! adults and older youth.

use super::case::Case;
use super::finding::{Finding, Severity};
use super::screen::blind;
use super::what::{Rung, What};
use crate::athlete::Level;
use crate::set::{Kind, Verb};
use crate::timeline::TimedAction;
use alloc::vec::Vec;

/// One note a rung, at its first action.
pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let level = case.set.level;
    let rungs: &[Rung] = match level {
        Level::U12 => &[Rung::Gates, Rung::Blind, Rung::Chains, Rung::Screens],
        Level::U14 => &[Rung::Gates, Rung::Blind, Rung::Chains],
        _ => &[],
    };
    rungs
        .iter()
        .filter_map(|rung| {
            let mut screens = case
                .timeline
                .actions()
                .iter()
                .filter(|a| a.verb == Verb::Screen);
            let first = screens.find(|a| rung_of(a) == Some(*rung))?;
            let what = What::AboveLevel { what: *rung };
            let found = Finding::new(what, Severity::Note, first.start)
                .of([first.who])
                .at(case.player(first.who, first.end).at())
                .about([first.id]);
            Some(found)
        })
        .collect()
}

fn rung_of(a: &TimedAction) -> Option<Rung> {
    const CHAINS: [Kind; 4] = [
        Kind::Stagger,
        Kind::DoubleDrag,
        Kind::ScreenTheScreener,
        Kind::Ram,
    ];
    match a.kind {
        Some(Kind::Away) => None,
        Some(Kind::Gate) => Some(Rung::Gates),
        kind if blind(kind) => Some(Rung::Blind),
        Some(kind) if CHAINS.contains(&kind) => Some(Rung::Chains),
        _ => Some(Rung::Screens),
    }
}
