//! Which read beats which coverage.

use super::lines::{Asked, Decided, Lines};
use super::told::Told;
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
    /// Whether a defender had to be told to show what it asks for, and did; the rest is against five
    /// who are told.
    pub told: bool,
    /// What its line ends in.
    pub end: Option<Look>,
    /// By how many seconds a hand is ahead of a pass of it; 0 where none is.
    pub ahead: f64,
    /// What the line that it leaves would end in, and the same of its passes from there on.
    pub instead: (Option<Look>, f64),
}

impl Tried {
    /// Whether the coverage makes it true by itself.
    #[must_use]
    pub fn shown(&self) -> bool {
        self.asked.as_ref().is_some_and(|asked| asked.seen.holds)
    }
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

/// A shot so soon after the shooter's catch, or drive, is decided by how open that was, seconds.
/// Common practice, no source.
const SOON: f64 = 1.5;

/// What a line comes to: the catch or the drive that its last shot comes from, the shot where it
/// comes from none, else its last look.
#[must_use]
pub fn ends(looks: &[Look]) -> Option<&Look> {
    let Some(shot) = looks.iter().rfind(|l| l.chance == Chance::Finish) else {
        return looks.last();
    };
    let before = looks.iter().rfind(|l| {
        l.chance != Chance::Finish && l.who == shot.who && (0.0..SOON).contains(&(shot.t - l.t))
    });
    Some(before.unwrap_or(shot))
}

/// By how many seconds a hand is ahead of a pass that is caught at `since` seconds or later; 0 where
/// none is.
#[must_use]
pub fn hand_ahead(looks: &[Look], since: f64) -> f64 {
    let later = looks.iter().filter(|l| l.t >= since);
    later
        .filter_map(|l| l.lane)
        .fold(0.0, |most, lane| most.max(-lane))
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
        let asked = |path: &[usize]| {
            let (_, before) = path.split_last()?;
            self.seen(path, at_hand(before)?)
        };
        let five = self.five(coverage);
        let tried = played.iter().filter_map(|(path, line, _, looks)| {
            let (_, before) = path.split_last()?;
            let (_, left, _, instead) = of(before)?;
            let told = Told::new(line.past(), line.set(), five);
            let told_looks = told.as_ref().and_then(|told| told.looks(left, line, five));
            let [instead, looks] = match &told_looks {
                Some([instead, looks]) => [instead, looks],
                None => [instead, looks],
            };
            let since = line.past().last().map_or(0.0, |p| p.until);
            Some(Tried {
                path: (*path).clone(),
                asked: asked(path),
                told: told.is_some_and(|told| told.shown),
                end: ends(looks).copied(),
                ahead: hand_ahead(looks, since),
                instead: (ends(instead).copied(), hand_ahead(instead, since)),
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
