//! What the five know of a set, and until when: a read is news to them once it is made.

use super::offence::Offence;
use super::plan::{Meeting, Task, meetings, tasks};
use crate::set::{Coverage, Read, Set};
use crate::timeline::Timeline;
use alloc::vec::Vec;

/// Uses of a screen by the same two are the same use within this, seconds: posts of a gate are passed
/// one after the other, and a way that goes on from a fork is timed anew.
/// Common practice, no source.
const SAME_USE: f64 = 0.4;

/// A line that was left by a read.
#[derive(Clone, Debug)]
pub struct Past {
    /// What was to be played.
    pub set: Set,
    /// And when.
    pub timeline: Timeline,
    /// When it was left, seconds.
    pub until: f64,
    /// The read that left it.
    pub read: Read,
}

/// One line as the five play against it.
#[derive(Debug)]
pub(super) struct Course<'a> {
    set: &'a Set,
    timeline: &'a Timeline,
    pub(super) offence: Offence,
    until: f64,
}

/// The lines that were left, in order, and the one that is played to its end.
#[derive(Debug)]
pub(super) struct Courses<'a> {
    left: Vec<Course<'a>>,
    pub(super) last: Course<'a>,
}

impl<'a> Courses<'a> {
    pub(super) fn new(past: &'a [Past], set: &'a Set, timeline: &'a Timeline) -> Self {
        let course = |set, timeline, until| Course {
            set,
            timeline,
            offence: Offence::new(timeline),
            until,
        };
        let left = past.iter();
        Self {
            left: left.map(|p| course(&p.set, &p.timeline, p.until)).collect(),
            last: course(set, timeline, f64::INFINITY),
        }
    }

    /// The same with one player's body left out: for tests that ask what a body is worth.
    #[cfg(test)]
    pub(super) fn without_body(mut self, who: crate::set::PlayerId) -> Self {
        self.last.offence = self.last.offence.without_body(who);
        self
    }

    pub(super) fn set(&self) -> &'a Set {
        self.last.set
    }

    pub(super) fn timeline(&self) -> &'a Timeline {
        self.last.timeline
    }
}

/// What the five know while they play against one line.
pub(super) struct Known<'a> {
    pub offence: &'a Offence,
    pub meetings: Vec<Meeting>,
    /// By index of the meeting.
    pub switched: Vec<bool>,
    pub tasks: Vec<Task>,
    until: f64,
}

/// All that will be known, line by line.
pub(super) struct Knowledge<'a> {
    left: Vec<Known<'a>>,
    pub last: Known<'a>,
}

impl<'a> Knowledge<'a> {
    pub(super) fn new(courses: &'a Courses<'a>, coverage: Coverage) -> Self {
        let known = |course: &'a Course<'a>| {
            let meetings = meetings(course.set, course.timeline, coverage);
            Known {
                offence: &course.offence,
                switched: alloc::vec![false; meetings.len()],
                meetings,
                tasks: tasks(course.set, course.timeline),
                until: course.until,
            }
        };
        Self {
            left: courses.left.iter().map(known).collect(),
            last: known(&courses.last),
        }
    }

    /// What is true at `t` seconds; of what is in somebody's mind, the instant that they see.
    pub(super) fn at(&self, t: f64) -> &Known<'a> {
        let mut left = self.left.iter();
        left.find(|k| t <= k.until + 1e-9).unwrap_or(&self.last)
    }

    /// Both defenders of a use have changed men, whatever becomes of it.
    pub(super) fn switched(&mut self, m: &Meeting) {
        for known in self.left.iter_mut().chain([&mut self.last]) {
            for (other, done) in known.meetings.iter().zip(&mut known.switched) {
                let twin = other.gate && m.gate;
                let same = other.cutter == m.cutter && (other.screener == m.screener || twin);
                *done |= same && (other.by - m.by).abs() < SAME_USE;
            }
        }
    }
}
