//! The limits that a set of rules puts in seconds.
//!
//! Sources, a row each:
//!
//! * **FIBA**: Official Basketball Rules 2022 (Turkish federation's edition), Art. 26.1 (more than
//!   three seconds in the restricted area, while the own team has a live ball in its frontcourt
//!   and the clock runs), 17.3.1 (throw-in), 29.1 (shot clock), 30.1 with interpretation 30-4
//!   (backcourt, also from a frontcourt throw-in).
//! * **NBA**: Official Rules 2025-26, Rule 10 Sec. III, VI and IX, 8 Sec. III, 7 Sec. I–IV.
//! * **WNBA**: Official Rules 2025, Rule 10 Sec. III, VI and IX, 8 Sec. III, 7 Sec. I–IV.
//! * **NCAA** men and women: lane and throw-in from memory (Rule 9); 30 s: Men's Rules Changes
//!   2020-21, Rule 2-11.6; women: reports of the changes for 2019-20.
//! * **NFHS**: Basketball Rules Book 2025-26, Rule 9-7-1 to 9-7-3, 7-6, 9-2-4, 2-14 (no shot clock
//!   unless the state adopts one), 9-9 (a throw-in into the backcourt is legal).
//!
//! Closely guarded: FIBA Art. 27.1 and 27.2 (a holder anywhere on the court); NBA and WNBA Rule 10
//! (no such count); NCAA: Men's Rules Changes 2015-16, Rule 9-11.3 (a holder only), and the Rules
//! 2011-13, 4-35.2 (in the frontcourt), the women's by a report on the changes for 2013-14; NFHS
//! Rule 4-10 and 9-10-1 (holding and dribbling, a count each, in the frontcourt). How near is a
//! mark of the court: [`Marks::closely_guarded`](crate::court::Marks::closely_guarded).

use crate::court::RuleSet;

/// Limits of one rule set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rules {
    /// Seconds in the lane beyond which it is a violation.
    pub lane: f64,
    /// Seconds until a throw-in must have left the hands.
    pub throw_in: f64,
    /// Seconds until the shot must have left the hands; `None`: no clock.
    pub shot_clock: Option<f64>,
    /// Whether a throw-in from the frontcourt must not be caught in the backcourt.
    pub throw_in_stays: bool,
    /// Seconds a closely guarded player may keep the ball, where the rules count them.
    pub guarded: f64,
    /// Whether that count runs for a dribbler too.
    pub guarded_dribble: bool,
    /// Whether it runs in the frontcourt only.
    pub guarded_front: bool,
}

impl Rules {
    /// The limits of `rules`.
    #[must_use]
    pub fn of(rules: RuleSet) -> Self {
        let shot_clock = match rules {
            RuleSet::Fiba | RuleSet::Nba | RuleSet::Wnba => Some(24.0),
            RuleSet::NcaaMen | RuleSet::NcaaWomen => Some(30.0),
            RuleSet::Nfhs => None,
        };
        Self {
            lane: 3.0,
            throw_in: 5.0,
            shot_clock,
            throw_in_stays: matches!(rules, RuleSet::Fiba | RuleSet::Nba | RuleSet::Wnba),
            guarded: 5.0,
            guarded_dribble: rules == RuleSet::Nfhs,
            guarded_front: rules != RuleSet::Fiba,
        }
    }
}
