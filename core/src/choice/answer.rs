//! Which read beats which coverage.

use super::lines::{Asked, Decided, Lines};
use crate::looks::{Chance, Look, looks};
use crate::set::Coverage;
use alloc::vec::Vec;

/// A read against one coverage, whether or not that makes it true.
#[derive(Clone, Debug, PartialEq)]
pub struct Tried {
    /// The reads taken, each counted from 0.
    pub path: Vec<usize>,
    /// What is seen of it at its instant, on the line that it leaves.
    pub asked: Option<Asked>,
    /// What its line ends in.
    pub end: Option<Look>,
    /// Whether a hand can get to a pass of it.
    pub shut: bool,
    /// What the line that it leaves would end in, and whether a hand can get to a pass of that.
    pub instead: (Option<Look>, bool),
}

/// What a coverage makes of a set with reads.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The coverage, the reads that it makes true, and what was seen.
    pub decided: Decided,
    /// Whether the file names the coverage as the defence's own.
    pub written: bool,
    /// The looks of the line that is decided.
    pub looks: Vec<Look>,
    /// When that line begins to differ from what came before, seconds.
    pub since: f64,
    /// Every read that can be played.
    pub tried: Vec<Tried>,
}

/// What a line comes to: its last shot, else its last look.
#[must_use]
pub fn ends(looks: &[Look]) -> Option<&Look> {
    let shot = looks.iter().rfind(|l| l.chance == Chance::Finish);
    shot.or(looks.last())
}

/// Whether a hand can be in the lane of a pass that is caught at `since` seconds or later.
#[must_use]
pub fn is_shut(looks: &[Look], since: f64) -> bool {
    let mut later = looks.iter().filter(|l| l.t >= since);
    later.any(|l| l.lane.is_some_and(|lane| lane < 0.0))
}

impl Lines {
    /// Which read beats that coverage: the one that is decided, and how each of them would end.
    #[must_use]
    pub fn answer(&self, coverage: Coverage) -> Answer {
        let played: Vec<_> = self
            .all
            .iter()
            .map(|(path, line)| {
                let defence = self.defend(line, coverage);
                let looks = looks(line.timeline(), &defence);
                (path, line, defence, looks)
            })
            .collect();
        let of = |path: &[usize]| played.iter().find(|p| p.0.as_slice() == path);
        let at_hand = |path: &[usize]| of(path).map(|p| &p.2);
        let decided = self.walk(coverage, at_hand);
        let tried = played.iter().filter_map(|(path, line, _, looks)| {
            let (_, before) = path.split_last()?;
            let (_, _, defence, instead) = of(before)?;
            let since = line.past().last().map_or(0.0, |p| p.until);
            Some(Tried {
                path: (*path).clone(),
                asked: self.seen(path, defence),
                end: ends(looks).copied(),
                shut: is_shut(looks, since),
                instead: (ends(instead).copied(), is_shut(instead, since)),
            })
        });
        let tried = tried.collect();
        let left = self.line(&decided.path).and_then(|l| l.past().last());
        let since = left.map_or(0.0, |p| p.until);
        let looks = of(&decided.path).map(|p| p.3.clone()).unwrap_or_default();
        let own = self.all.first().and_then(|l| l.1.set().defence.all);
        Answer {
            written: own == Some(coverage),
            looks,
            since,
            tried,
            decided,
        }
    }
}
