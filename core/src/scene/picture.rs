//! Whole pictures: who is where at an instant, or what a beat will do.

#[cfg(feature = "authoring")]
use super::guess;
#[cfg(feature = "authoring")]
use super::instants;
use super::mover::Body;
use super::trail::Trails;
use super::verdict::{Stage, Verdict};
use super::view::View;
use super::{Item, Scene, ball, close, court, mark};
use crate::court::Court;
use crate::set::{PlayerId, Set};
use crate::timeline::Timeline;
use alloc::vec::Vec;

/// What pictures are made of.
#[derive(Clone, Copy, Debug)]
pub struct Staged<'a> {
    /// Who is where when.
    pub timeline: &'a Timeline,
    /// What was written.
    pub set: &'a Set,
    /// Where.
    pub court: &'a Court,
}

/// Everything that moves, at `t`, for the layer over [`court()`](court::court), with what is known
/// beyond the set. `out` is emptied first; its room is used again.
pub fn movers(
    staged: &Staged<'_>,
    verdict: Option<&Verdict<'_>>,
    t: f64,
    view: &View,
    out: &mut Scene,
) {
    out.width = view.width_px;
    out.height = view.height_px(staged.court);
    out.items.clear();
    add_movers(staged, verdict, t, view, &mut out.items);
}

/// The court and everybody on it at `t`, with what is known beyond the set.
#[must_use]
pub fn picture(staged: &Staged<'_>, verdict: Option<&Verdict<'_>>, t: f64, view: &View) -> Scene {
    let mut scene = court(staged.court, view);
    add_movers(staged, verdict, t, view, &mut scene.items);
    scene
}

/// A beat as a coach draws it: bodies where it starts, all its ways whole.
#[must_use]
pub fn beat(timeline: &Timeline, set: &Set, court: &Court, beat: usize, view: &View) -> Scene {
    let mut scene = court::court(court, view);
    let trails = Trails {
        timeline,
        set,
        view,
        camera: view.camera(court),
    };
    let start = timeline.beats().get(beat).map_or(0.0, |b| b.start);
    if view.show_trails {
        trails.of_beat(beat, &mut scene.items);
    }
    bodies(&trails, start, &mut scene.items);
    scene
}

fn add_movers(
    staged: &Staged<'_>,
    verdict: Option<&Verdict<'_>>,
    t: f64,
    view: &View,
    out: &mut Vec<Item>,
) {
    let Staged {
        timeline,
        set,
        court,
    } = *staged;
    let trails = Trails {
        timeline,
        set,
        view,
        camera: view.camera(court),
    };
    people(&trails, verdict, t, out);
    if let Some(verdict) = verdict {
        verdict.marks(&stage(&trails, t), out);
    }
    #[cfg(feature = "authoring")]
    guess::draw(&stage(&trails, t), out);
    let beat = timeline.beat_at(t);
    if let Some(close) = close::close_up(timeline, set, court, view, beat) {
        close::draw(&trails, court, verdict, &close, t, out);
    }
}

fn stage<'a>(trails: &'a Trails<'_>, t: f64) -> Stage<'a> {
    Stage {
        timeline: trails.timeline,
        set: trails.set,
        view: trails.view,
        camera: &trails.camera,
        t,
        voice: trails.view.voice,
    }
}

/// Trails, screens, bodies and ball through one camera.
pub(super) fn people(
    trails: &Trails<'_>,
    verdict: Option<&Verdict<'_>>,
    t: f64,
    out: &mut Vec<Item>,
) {
    if trails.view.show_trails {
        trails.at(t, out);
        // Under the bodies: who stands on a mark is read first.
        #[cfg(feature = "authoring")]
        if !trails.camera.true_scale {
            instants::draw(trails, t, out);
        }
    }
    if let Some(verdict) = verdict {
        verdict.ghosts(trails, t, out);
        verdict.defenders(&stage(trails, t), out);
    }
    bodies(trails, t, out);
}

/// Who is followed lies over the others, the ball over all.
fn bodies(trails: &Trails<'_>, t: f64, out: &mut Vec<Item>) {
    let Trails {
        timeline,
        view,
        camera,
        ..
    } = trails;
    mark::screens(timeline, t, camera, out);
    for followed in [false, true] {
        for who in PlayerId::ALL {
            if view.follows(who) == followed
                && let Some(state) = timeline.player(who, view.seen_at(who, t))
            {
                Body::of(&state, timeline.limits(who), camera).draw(who, followed, out);
            }
        }
    }
    ball::draw(timeline, t, camera, out);
}
