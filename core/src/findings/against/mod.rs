//! What is only found once five defend: under one coverage, and said so.
//!
//! The simulated defence plays one likely answer. So nothing here is certain, and no finding of a
//! defender is harder than a warning, but for a screener who runs into somebody.

mod contact;
mod decoy;
mod guarded;
mod pass;
mod room;

use super::case::{Case, ScreenUse};
use super::{Finding, Settings, in_order};
use crate::court::Court;
use crate::defence::{Defence, DefenderState};
use crate::looks::{Look, looks};
use crate::math::{Point, distance};
use crate::set::{PlayerId, Set};
use crate::timeline::Timeline;
use alloc::vec::Vec;

/// A set and five who play against it.
#[derive(Debug)]
pub struct Against<'a> {
    /// The set.
    pub case: &'a Case<'a>,
    /// The five.
    pub defence: &'a Defence,
    /// What it yields.
    pub looks: Vec<Look>,
}

/// A checker that needs defenders.
pub type AgainstChecker = fn(&Against<'_>) -> Vec<Finding>;

/// Every such checker; a new one is a function and a line.
pub const AGAINST: [AgainstChecker; 7] = [
    guarded::closely,
    pass::lane,
    pass::covered,
    room::check,
    contact::check,
    decoy::check,
    pass::no_look,
];

/// What is found under the coverage of `defence` and needs it, in time order, without cures.
///
/// ```
/// use backcut::findings::{self, Settings};
/// use backcut::play::{Options, Play};
/// use backcut::set::Coverage;
/// let text = br#"{ "backcut": 1, "title": "Waits", "players": {
///     "1": {"at": "top", "ball": true}, "2": {"at": "left wing"} },
///   "beats": [ { "actions": [
///     {"who": 1, "do": "hold", "takes": 6},
///     {"who": 1, "do": "pass", "to": 2} ] } ] }"#;
/// let play = Play::open(text, &Options::default())?;
/// let defence = play.defence(Coverage::Chase);
/// let found = findings::check_against(
///     play.set(), play.court(), play.timeline(), &defence, &Settings::default());
/// assert!(found.iter().any(|f| f.code() == "closely-guarded"));
/// # Ok::<(), backcut::fault::Faults>(())
/// ```
#[must_use]
pub fn check_against(
    set: &Set,
    court: &Court,
    timeline: &Timeline,
    defence: &Defence,
    settings: &Settings,
) -> Vec<Finding> {
    let case = Case::new(set, court, timeline, settings);
    judge(&Against {
        case: &case,
        defence,
        looks: looks(timeline, defence),
    })
}

/// The same for what has been looked up already.
pub(super) fn judge(against: &Against<'_>) -> Vec<Finding> {
    let mut found: Vec<Finding> = AGAINST.iter().flat_map(|c| c(against)).collect();
    for f in &mut found {
        f.coverage = Some(against.defence.coverage());
    }
    in_order(&mut found);
    found
}

impl Against<'_> {
    /// A defender at `t`.
    fn defender(&self, who: PlayerId, t: f64) -> DefenderState {
        self.defence.state(who, t).unwrap_or_default()
    }

    /// Those who defend.
    fn defenders(&self) -> impl Iterator<Item = PlayerId> {
        let set = self.case.set;
        PlayerId::ALL
            .into_iter()
            .filter(|p| set.player(*p).is_some())
    }

    /// Who guards `man` at `t`.
    fn guard_of(&self, man: PlayerId, t: f64) -> Option<PlayerId> {
        self.defenders().find(|x| self.defence.man_of(*x, t) == man)
    }

    /// Whom a screen is there to screen: who guards the cutter before anybody switches.
    fn screened(&self, u: &ScreenUse) -> Option<PlayerId> {
        let t = self.case.action(u.cut).map_or(u.by, |cut| cut.start);
        self.guard_of(u.cutter, t)
    }

    /// Between a defender and an attacker at `t`.
    fn gap(&self, x: PlayerId, man: PlayerId, t: f64) -> f64 {
        distance(self.defender(x, t).at(), self.case.player(man, t).at())
    }

    /// The nearest defender to a place at `t`, and how near.
    fn nearest(&self, at: Point, t: f64) -> Option<(PlayerId, f64)> {
        self.defenders()
            .map(|x| (x, distance(self.defender(x, t).at(), at)))
            .reduce(|a, b| if b.1 < a.1 { b } else { a })
    }
}
