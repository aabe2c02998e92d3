//! Beats and whole sets.

use super::action::action;
use crate::math::{Listed, push_decimal};
use crate::set::{ActionId, Read, Set};
#[cfg(feature = "authoring")]
use crate::strip::{Fork, ForkTo};
use crate::timeline::Timeline;
use crate::voice::messages::{instant as m, read};
use crate::voice::{Text, Voice};
use alloc::string::String;
use alloc::vec::Vec;

/// The name of a beat; `Beat 2` where the author gave none.
#[must_use]
pub fn beat_title(set: &Set, beat: usize, voice: Voice) -> String {
    let written = set.beats.get(beat).and_then(|b| b.title.clone());
    written.unwrap_or_else(|| nth_beat(beat, voice))
}

/// What a beat without a name is called, counted from 0: `Beat 2`.
pub(crate) fn nth_beat(beat: usize, voice: Voice) -> String {
    nth(m::BEAT, beat, voice)
}

fn nth(what: Text, index: usize, voice: Voice) -> String {
    let mut title = String::from(voice.word(what));
    title.push(' ');
    push_decimal(&mut title, index as f64 + 1.0, 0);
    title
}

/// The name of a read, counted from 0; `What if 2` where the author gave none.
#[must_use]
pub fn read_title(read: &Read, index: usize, voice: Voice) -> String {
    let written = read.title.clone();
    written.unwrap_or_else(|| nth(m::READ, index, voice))
}

/// The name of the line that no read leaves.
#[must_use]
pub fn as_drawn(voice: Voice) -> &'static str {
    voice.word(m::AS_DRAWN)
}

/// The line by the reads of `path`, each counted from 0: their titles, or that it is as drawn.
#[must_use]
pub fn line(set: &Set, path: &[usize], voice: Voice) -> String {
    let mut reads = &set.reads;
    let mut out: Option<String> = None;
    for index in path {
        let Some(read) = reads.get(*index) else { break };
        let title = read_title(read, *index, voice);
        out = Some(match out {
            Some(before) => voice.fill(read::THEN, &[("a", &before), ("b", &title)]),
            None => title,
        });
        reads = &read.reads;
    }
    out.unwrap_or_else(|| String::from(as_drawn(voice)))
}

/// The line that waits at a fork.
#[cfg(feature = "authoring")]
pub(crate) fn fork(fork: &Fork, voice: Voice) -> String {
    match &fork.to {
        ForkTo::Drawn => String::from(as_drawn(voice)),
        ForkTo::Read(_, Some(title)) => title.clone(),
        ForkTo::Read(index, None) => nth(m::READ, *index, voice),
    }
}

/// The caption of a beat: the author's words, else a sentence an action.
#[must_use]
pub fn beat(set: &Set, timeline: Option<&Timeline>, beat: usize, voice: Voice) -> String {
    let Some(stage) = set.beats.get(beat) else {
        return String::new();
    };
    if let Some(say) = &stage.say {
        return say.clone();
    }
    let mut out = String::new();
    for (_, n) in stage.actions.iter().zip(0u16..) {
        let id = ActionId {
            beat: u16::try_from(beat).unwrap_or(u16::MAX),
            action: n,
        };
        if !out.is_empty() {
            out.push(' ');
        }
        out.push_str(&action(set, timeline, id, voice));
    }
    out
}

/// The set in paragraphs: what it is about, then beat by beat.
#[must_use]
pub fn set(set: &Set, timeline: Option<&Timeline>, voice: Voice) -> Vec<String> {
    let beats = (0..set.beats.len()).map(|n| {
        let mut out = beat_title(set, n, voice);
        out.push_str(": ");
        out.push_str(&beat(set, timeline, n, voice));
        out
    });
    set.about.iter().cloned().chain(beats).listed()
}
