//! The way in: from the text of a set file to everything that can be shown of it.

use crate::athlete::Level;
use crate::court::{Court, RuleSet};
use crate::document;
use crate::fault::Faults;
use crate::set::Set;
use crate::timeline::Timeline;
use crate::timing;

/// What a page or a caller may set over the file.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Options {
    /// Another rule set than the file's.
    pub court: Option<RuleSet>,
    /// Another level than the file's.
    pub level: Option<Level>,
    /// The set on the other side.
    pub mirror: bool,
}

/// A set that is ready to be looked at.
///
/// ```
/// use backcut::play::{Options, Play};
/// let text = br#"{ "backcut": 1, "title": "Give and go", "players": {
///     "1": {"at": "top", "ball": true}, "2": {"at": "right wing"} },
///   "beats": [ { "actions": [
///     {"who": 1, "do": "pass", "to": 2},
///     {"who": 1, "do": "cut", "kind": "basket"},
///     {"who": 2, "do": "pass", "kind": "bounce", "to": 1},
///     {"who": 1, "do": "shot", "kind": "layup"} ] } ] }"#;
/// let play = Play::open(text, &Options::default())?;
/// assert!(play.timeline().duration() > 2.0);
///
/// let faults = Play::open(b"{}", &Options::default()).unwrap_err();
/// assert!(faults.list.iter().any(|f| f.code == "missing-version"));
/// # Ok::<(), backcut::fault::Faults>(())
/// ```
#[derive(Clone, Debug)]
pub struct Play {
    set: Set,
    court: Court,
    timeline: Timeline,
}

impl Play {
    /// Reads, checks and schedules a set file.
    ///
    /// # Errors
    /// Everything that cannot be understood as written, all at once; or `contradictory-waits`.
    pub fn open(text: &[u8], options: &Options) -> Result<Self, Faults> {
        Self::of(document::read(text)?, options)
    }

    /// Schedules a set that has been read already.
    ///
    /// # Errors
    /// `contradictory-waits`.
    pub fn of(set: Set, options: &Options) -> Result<Self, Faults> {
        let mut set = if options.mirror { set.mirrored() } else { set };
        set.court = options.court.unwrap_or(set.court);
        set.level = options.level.unwrap_or(set.level);
        let court = Court::of(set.court);
        let schedule = timing::build(&set, &court)?;
        let timeline = Timeline::build(&set, &court, schedule);
        Ok(Self {
            set,
            court,
            timeline,
        })
    }

    /// What was written, with the options laid over it.
    #[must_use]
    pub fn set(&self) -> &Set {
        &self.set
    }

    /// Where it is played.
    #[must_use]
    pub fn court(&self) -> &Court {
        &self.court
    }

    /// What happens when.
    #[must_use]
    pub fn timeline(&self) -> &Timeline {
        &self.timeline
    }
}
