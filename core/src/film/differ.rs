//! Where what was filmed was run earlier or later than it is drawn.

use super::FilmMap;
use crate::math::Listed;
use crate::set::{ActionId, Edge, Mark};
use crate::timeline::Timeline;
use alloc::vec::Vec;

/// A mark so near to an instant of an action means that instant, seconds: three film frames, as
/// near as a hand stops a film. Common practice, no source.
const NEAR: f64 = 0.1;
/// What nobody sees happen has to be nearer by so much to be meant, seconds. Common practice, no
/// source.
const UNSEEN: f64 = 0.05;

/// An instant of an action.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Happening {
    /// Which action.
    pub action: ActionId,
    /// Which instant of it, and when.
    pub mark: Mark,
}

/// How film and set compare at a mark, both laid together at the first one and run at their own
/// speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Difference {
    /// Seconds of the set.
    pub t: f64,
    /// Seconds of the film.
    pub film: f64,
    /// By how much what was filmed is later here, seconds; below 0 it is earlier. `None` at the
    /// first mark, from which both are counted.
    pub late: Option<f64>,
    /// What happens in the set just then, if it is an instant of an action.
    pub happening: Option<Happening>,
}

/// How the two compare at each mark, in order of time.
#[must_use]
pub fn differences(map: &FilmMap, timeline: &Timeline) -> Vec<Difference> {
    let Some(first) = map.marks().first() else {
        return Vec::new();
    };
    let compared = map.marks().iter().enumerate().map(|(i, m)| Difference {
        t: m.t,
        film: m.film,
        late: (i > 0).then_some((m.film - first.film) - (m.t - first.t)),
        happening: happening(timeline, m.t),
    });
    compared.listed()
}

/// The instant that is meant by `t`.
fn happening(timeline: &Timeline, t: f64) -> Option<Happening> {
    let mut best: Option<(f64, Happening)> = None;
    for action in timeline.actions() {
        for mark in &action.marks {
            let away = (mark.t - t).abs();
            let weight = away
                + if seen(mark, action.start) {
                    0.0
                } else {
                    UNSEEN
                };
            if away <= NEAR && best.is_none_or(|(least, _)| weight < least) {
                let (action, mark) = (action.id, *mark);
                best = Some((weight, Happening { action, mark }));
            }
        }
    }
    best.map(|(_, happening)| happening)
}

/// Whether people see it happen. Starts and ends they see mostly as something else: the end of a
/// pass is a catch; and there is no plant without a step before it.
fn seen(mark: &Mark, start: f64) -> bool {
    match mark.edge {
        Edge::Start | Edge::End | Edge::Cue | Edge::Free => false,
        Edge::Plant => mark.t > start,
        _ => true,
    }
}
