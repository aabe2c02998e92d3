//! Every line of a set, and the walk that the defence takes through them.

use super::Seen;
use super::scene::Scene;
use super::told::Five;
use crate::branch::{self, Line, NotPlayed};
use crate::court::Court;
use crate::defence::Defence;
use crate::fault::Faults;
use crate::math::{Listed, sort_short};
use crate::set::{Coverage, Read, Set};
use alloc::vec::Vec;
use core::borrow::Borrow;

/// A read that was asked.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// The reads taken before it, then its own index, each counted from 0.
    pub path: Vec<usize>,
    /// When, seconds.
    pub t: f64,
    /// What was seen.
    pub seen: Seen,
}

/// What five under a coverage make of a set's reads.
#[derive(Clone, Debug, PartialEq)]
pub struct Decided {
    /// Under which coverage.
    pub coverage: Coverage,
    /// The reads made, each counted from 0 among those of the line before it; empty: the main line.
    pub path: Vec<usize>,
    /// Every read asked on the way, in the order in which it was asked.
    pub asked: Vec<Asked>,
}

/// The main line of a set and every branch that its reads make.
#[derive(Clone, Debug)]
pub struct Lines {
    pub(super) court: Court,
    /// With the reads taken; the main line first, each before those that leave it.
    pub(super) all: Vec<(Vec<usize>, Line)>,
    refused: Vec<(Vec<usize>, NotPlayed)>,
}

impl Lines {
    /// All of a set.
    ///
    /// # Errors
    /// `contradictory-waits` in the main line.
    pub fn new(set: &Set, court: &Court) -> Result<Self, Faults> {
        let mut lines = Self {
            court: *court,
            all: Vec::new(),
            refused: Vec::new(),
        };
        lines.add(Vec::new(), Line::main(set, court)?);
        Ok(lines)
    }

    /// Files nest reads a few levels deep, so this ends.
    fn add(&mut self, path: Vec<usize>, line: Line) {
        let reads = line.set().reads.clone();
        self.all.push((path.clone(), line.clone()));
        for (i, read) in reads.iter().enumerate() {
            let path = within(&path, i);
            match line.fork(read, &self.court) {
                Ok(branch) => self.add(path, branch),
                Err(why) => self.refused.push((path, why)),
            }
        }
    }

    /// The line by the reads of `path`, each counted from 0.
    #[must_use]
    pub fn line(&self, path: &[usize]) -> Option<&Line> {
        self.all.iter().find(|l| l.0 == path).map(|l| &l.1)
    }

    /// Every line with the reads taken, the main line first.
    pub fn iter(&self) -> impl Iterator<Item = (&[usize], &Line)> {
        self.all.iter().map(|(path, line)| (path.as_slice(), line))
    }

    /// The reads that cannot be played, and why.
    #[must_use]
    pub fn refused(&self) -> &[(Vec<usize>, NotPlayed)] {
        &self.refused
    }

    /// What five under `coverage` make of it.
    #[must_use]
    pub fn decided(&self, coverage: Coverage) -> Decided {
        let defend = |path: &[usize]| Some(self.defend(self.line(path)?, coverage));
        self.walk(coverage, defend)
    }

    pub(super) fn defend(&self, line: &Line, coverage: Coverage) -> Defence {
        let five = self.five(coverage);
        five.against(line.past(), line.set(), line.timeline())
    }

    /// The same with defences that are at hand.
    pub(super) fn walk<D: Borrow<Defence>>(
        &self,
        coverage: Coverage,
        defence: impl Fn(&[usize]) -> Option<D>,
    ) -> Decided {
        let mut out = Decided {
            coverage,
            path: Vec::new(),
            asked: Vec::new(),
        };
        while let Some((line, defence)) = self.line(&out.path).zip(defence(&out.path)) {
            let mut made = None;
            for (index, read, t) in in_order(line) {
                let seen = scene(line, defence.borrow()).seen(read, t);
                let path = within(&out.path, index);
                // What cannot be played is seen and passed over.
                if seen.holds && self.line(&path).is_some() {
                    made = Some(path.clone());
                }
                out.asked.push(Asked { path, t, seen });
                if made.is_some() {
                    break;
                }
            }
            match made {
                Some(path) => out.path = path,
                None => break,
            }
        }
        out
    }

    /// What is seen of the last read of `path` by itself, on the line that it leaves, whatever else
    /// is true there.
    pub(super) fn seen(&self, path: &[usize], defence: &Defence) -> Option<Asked> {
        let (index, before) = path.split_last()?;
        let line = self.line(before)?;
        let read = line.set().reads.get(*index)?;
        let t = branch::fork_instant(line.set(), line.timeline(), read)?;
        Some(Asked {
            path: path.to_vec(),
            t,
            seen: scene(line, defence).seen(read, t),
        })
    }

    pub(super) fn five(&self, coverage: Coverage) -> Five<'_> {
        Five {
            court: &self.court,
            coverage,
        }
    }
}

fn scene<'a>(line: &'a Line, defence: &'a Defence) -> Scene<'a> {
    Scene {
        set: line.set(),
        timeline: line.timeline(),
        defence,
    }
}

fn within(path: &[usize], index: usize) -> Vec<usize> {
    path.iter().copied().chain([index]).listed()
}

/// The reads of a line with their instants, in the order in which they come; what had to be read
/// before the line began is past.
fn in_order(line: &Line) -> Vec<(usize, &Read, f64)> {
    let (set, timeline) = (line.set(), line.timeline());
    let since = line.past().last().map_or(0.0, |p| p.until);
    let all = set.reads.iter().enumerate();
    let mut all: Vec<(usize, &Read, f64)> = all
        .filter_map(|(i, read)| Some((i, read, branch::fork_instant(set, timeline, read)?)))
        .filter(|(_, _, t)| *t >= since)
        .listed();
    sort_short(&mut all, |a, b| a.2.total_cmp(&b.2).then(a.0.cmp(&b.0)));
    all
}
