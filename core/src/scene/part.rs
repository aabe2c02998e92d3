//! One player's part of a set, as it is drawn on a role card.

use super::mover::Body;
use super::picture::Staged;
use super::trail::{Pen, Trails};
use super::view::View;
use super::{Role, Scene, ball, court};
use crate::set::{Action, PlayerId, Verb};
use crate::timeline::TimedAction;

/// How the own ways are drawn, passes that are caught, screens that are used, and all the rest.
const OWN: (Role, f64) = (Role::Ink, 2.2);
const MET: (Role, f64) = (Role::Ink, 1.3);
const USED: (Role, f64) = (Role::Line, 1.4);
const OTHER: (Role, f64) = (Role::Rule, 1.2);

/// All that `who` does, in ink, from where they start, with the passes they catch; the others and their
/// ways behind it in grey. For paper: nothing in it moves.
#[must_use]
pub fn part(staged: &Staged<'_>, who: PlayerId, view: &View) -> Scene {
    let mut scene = court(staged.court, view);
    let trails = Trails {
        timeline: staged.timeline,
        set: staged.set,
        view,
        camera: view.camera(staged.court),
    };
    let out = &mut scene.items;
    let actions = staged.timeline.actions();
    let uses = |screener: PlayerId| {
        let mut own = actions.iter().filter(|a| a.who == who);
        own.any(|a| a.marks.iter().any(|m| m.of == Some(screener)))
    };
    let pen = |action: &TimedAction| {
        let gets = staged.set.action(action.id).and_then(Action::receiver) == Some(who);
        let (role, width) = match action.verb {
            _ if action.who == who => OWN,
            Verb::Pass if gets => MET,
            Verb::Screen if uses(action.who) => USED,
            _ => OTHER,
        };
        Pen { role, width }
    };
    // What weighs more lies over the rest.
    for weight in [OTHER, USED, MET, OWN] {
        for (index, action) in actions.iter().enumerate() {
            let pen = pen(action);
            if (pen.role, pen.width) == weight {
                trails.whole(index, action, pen, out);
            }
        }
    }
    let others = PlayerId::ALL.into_iter().filter(|p| *p != who);
    for player in others.chain([who]) {
        let Some(state) = staged.timeline.player(player, 0.0) else {
            continue;
        };
        let body = Body::of(&state, staged.timeline.limits(player), &trails.camera);
        if player == who {
            body.draw_named(player, trails.camera.area, out);
        } else {
            body.draw_dimmed(player, out);
        }
    }
    ball::draw(staged.timeline, 0.0, &trails.camera, out);
    scene
}
