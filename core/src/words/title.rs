//! What levels and rule sets are called.

use crate::athlete::Level;
use crate::court::RuleSet;
use crate::voice::Voice;
use crate::voice::messages::title as m;

/// A level as people write it.
#[must_use]
pub fn level(level: Level, voice: Voice) -> &'static str {
    voice.word(match level {
        Level::Elite => m::ELITE,
        Level::EliteWomen => m::ELITE_WOMEN,
        Level::Adult => m::ADULT,
        Level::HighSchool => m::HIGH_SCHOOL,
        Level::U14 => m::UNDER_14,
        Level::U12 => m::UNDER_12,
        Level::Recreational => m::RECREATIONAL,
    })
}

/// A rule set as people write it.
#[must_use]
pub fn court(rules: RuleSet, voice: Voice) -> &'static str {
    voice.word(match rules {
        RuleSet::Fiba => m::FIBA,
        RuleSet::Nba => m::NBA,
        RuleSet::Wnba => m::WNBA,
        RuleSet::NcaaMen => m::NCAA_MEN,
        RuleSet::NcaaWomen => m::NCAA_WOMEN,
        RuleSet::Nfhs => m::NFHS,
    })
}
