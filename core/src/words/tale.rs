//! Beats and whole sets.

use super::action::action;
use super::phrases;
use crate::math::{Listed, push_decimal};
use crate::set::{ActionId, Read, Set};
use crate::timeline::Timeline;
use alloc::string::String;
use alloc::vec::Vec;

/// The name of a beat; `Beat 2` where the author gave none.
#[must_use]
pub fn beat_title(set: &Set, beat: usize) -> String {
    let written = set.beats.get(beat).and_then(|b| b.title.clone());
    written.unwrap_or_else(|| {
        let mut title = String::from(phrases::BEAT);
        push_decimal(&mut title, beat as f64 + 1.0, 0);
        title
    })
}

/// The name of a read, counted from 0; `What if 2` where the author gave none.
#[must_use]
pub fn read_title(read: &Read, index: usize) -> String {
    read.title.clone().unwrap_or_else(|| {
        let mut title = String::from(phrases::READ);
        push_decimal(&mut title, index as f64 + 1.0, 0);
        title
    })
}

/// The name of the line that no read leaves.
#[must_use]
pub fn as_drawn() -> &'static str {
    phrases::AS_DRAWN
}

/// The caption of a beat: the author's words, else a sentence an action.
#[must_use]
pub fn beat(set: &Set, timeline: Option<&Timeline>, beat: usize) -> String {
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
        out.push_str(&action(set, timeline, id));
    }
    out
}

/// The set in paragraphs: what it is about, then beat by beat.
#[must_use]
pub fn set(set: &Set, timeline: Option<&Timeline>) -> Vec<String> {
    let beats = (0..set.beats.len()).map(|n| {
        let mut out = beat_title(set, n);
        out.push_str(": ");
        out.push_str(&beat(set, timeline, n));
        out
    });
    set.about.iter().cloned().chain(beats).listed()
}
