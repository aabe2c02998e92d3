//! Branches of a set, and which of them a defence leads to.

use super::Play;
use crate::branch::{self, Dropped, Line, NotPlayed};
use crate::choice::{self, Answer, Decided, Lines};
use crate::fault::{Fault, Faults};
use crate::math::sort_short;
use crate::scene::View;
use crate::set::{Coverage, Read, Set};
use crate::strip::{self, Fork, ForkTo};
use crate::timeline::Timeline;
use crate::voice::messages::fault as m;
use alloc::vec::Vec;

/// A branch, to be looked at like any set.
#[derive(Clone, Debug)]
pub struct Branched {
    /// The branch.
    pub play: Play,
    /// When each of its reads is made, seconds.
    pub forks: Vec<f64>,
    /// What does not happen because of the last one.
    pub dropped: Vec<Dropped>,
}

/// Why there is no such branch.
#[derive(Clone, Debug, PartialEq)]
pub enum NotBranched {
    /// The set has no such read.
    NoSuchRead,
    /// It cannot be played.
    NotPlayed(NotPlayed),
}

impl From<NotPlayed> for NotBranched {
    fn from(why: NotPlayed) -> Self {
        Self::NotPlayed(why)
    }
}

impl NotBranched {
    /// The same as faults of whoever asked for the read that is written `path`.
    #[must_use]
    pub fn faults(self, path: &str) -> Faults {
        let allowed = match self {
            Self::NotPlayed(NotPlayed::Waits(faults)) => return faults,
            Self::NoSuchRead => m::READS_OF_SET,
            Self::NotPlayed(NotPlayed::NoInstant) => m::NEVER_COMES,
            Self::NotPlayed(NotPlayed::AfterTheShot) => m::SHOT_IS_GONE,
        };
        Faults::one(|| Fault::unknown_option("read", path, allowed))
    }
}

impl Play {
    /// The branch by the reads of `path`, each counted from 0 among those of the branch before it;
    /// everything that can be asked of a set can be asked of it.
    ///
    /// # Errors
    /// No such read, or the one that cannot be played, and why.
    pub fn branch(&self, path: &[usize]) -> Result<Branched, NotBranched> {
        let mut line = Line::main(&self.set, &self.court).map_err(NotPlayed::Waits)?;
        let mut forks = Vec::new();
        let mut waiting = Vec::new();
        for index in path {
            let Some(read) = line.set().reads.get(*index).cloned() else {
                return Err(NotBranched::NoSuchRead);
            };
            let t = branch::fork_instant(line.set(), line.timeline(), &read);
            let left = reads_of(line.set(), line.timeline());
            waiting.extend(left.filter(|fork| t.is_some_and(|t| fork.t < t)));
            waiting.extend(t.map(|t| Fork {
                t,
                to: ForkTo::Drawn,
            }));
            forks.extend(t);
            line = line.fork(&read, &self.court)?;
        }
        let past = line.past().to_vec();
        let (set, timeline, dropped) = line.into_parts();
        let play = Self {
            strip: strip::build(&timeline, &set),
            view: View {
                voice: self.voice(),
                ..View::of(&timeline, &self.court, 0.0)
            },
            court: self.court,
            set,
            timeline,
            past,
        };
        Ok(Branched {
            play: play.parted(waiting),
            forks,
            dropped,
        })
    }

    /// With its strip parted where `waiting` and its own reads leave it.
    pub(super) fn parted(mut self, mut waiting: Vec<Fork>) -> Self {
        waiting.extend(reads_of(&self.set, &self.timeline));
        sort_short(&mut waiting, |a, b| a.t.total_cmp(&b.t));
        self.strip.forks = waiting;
        self
    }

    /// When a read of this set leaves its line, seconds; `None` where its instant never comes.
    #[must_use]
    pub fn fork_instant(&self, read: &Read) -> Option<f64> {
        branch::fork_instant(&self.set, &self.timeline, read)
    }

    /// When this branch left the line that is drawn, seconds; `None` of that line itself.
    #[must_use]
    pub fn left_at(&self) -> Option<f64> {
        self.past.first().map(|past| past.until)
    }

    /// The coverage that the reads of this branch ask for: what it is to be judged against where nobody
    /// names another.
    #[must_use]
    pub fn asked_coverage(&self) -> Option<Coverage> {
        choice::asked_coverage(&self.past)
    }

    /// The main line of a set as it is drawn, not of a branch, and every branch that its reads make.
    ///
    /// # Errors
    /// `contradictory-waits`; no set that has been opened has them.
    pub fn lines(&self) -> Result<Lines, Faults> {
        Lines::new(&self.set, &self.court)
    }

    /// Which reads five under `coverage` make true of a set as it is drawn, and what is seen of each
    /// that is asked. [`Play::branch`] plays the path that is decided.
    ///
    /// # Errors
    /// As [`Play::lines`].
    pub fn decided(&self, coverage: Coverage) -> Result<Decided, Faults> {
        Ok(self.lines()?.decided(coverage))
    }

    /// Which read beats which coverage, for every coverage that a set as it is drawn can meet and the
    /// one that its file names.
    ///
    /// # Errors
    /// As [`Play::lines`].
    pub fn answers(&self) -> Result<Vec<Answer>, Faults> {
        let (lines, all) = (self.lines()?, self.coverages_tried());
        Ok(all.into_iter().map(|c| lines.answer(c)).collect())
    }
}

/// Where the reads of `set` leave its line.
fn reads_of<'a>(set: &'a Set, timeline: &'a Timeline) -> impl Iterator<Item = Fork> + 'a {
    let fork = |(index, read): (usize, &Read)| {
        branch::fork_instant(set, timeline, read).map(|t| Fork {
            t,
            to: ForkTo::Read(index, read.title.clone()),
        })
    };
    set.reads.iter().enumerate().filter_map(fork)
}
