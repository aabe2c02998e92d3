//! Ghosts: where everybody stands at a later instant, and the way there.
//!
//! Dashed and in the colour of what is to come: neither an attacker, who is filled, nor a defender,
//! whose contour is solid and inked and who has an X.

use super::mover::Body;
use super::shape::{Draw, disc, ellipse, lines, sans};
use super::trail::Trails;
use super::way::Way;
use super::{Anchor, Dash, Item, Role};
use crate::math::{Point, push_decimal};
use crate::set::PlayerId;
use alloc::string::String;
use alloc::vec::Vec;

/// Who goes no further than this has no ghost, metres: it would lie under the body.
const LEAST: f64 = 0.4;
const DASH: Dash = Dash { on: 3.2, off: 2.6 };
/// Radius of the ball as a share of half the shoulders.
const BALL: f64 = 0.46;

/// The ghosts of all who move between `t` and `until`.
pub(super) fn draw(trails: &Trails<'_>, t: f64, until: f64, out: &mut Vec<Item>) {
    for who in PlayerId::ALL {
        let way = Way::of(&trails.timeline.way(who, t, until), &trails.camera);
        let (Some(now), Some(then)) = (body(trails, who, t), body(trails, who, until)) else {
            continue;
        };
        if way.length() < LEAST * trails.camera.scale {
            continue;
        }
        let role = role(trails, who);
        // Clear of both bodies.
        let clear = 1.15 * now.wide;
        if way.length() > 2.0 * clear + 5.0 {
            out.dots(way.part(clear, way.length() - clear), role, 2.2);
        }
        ghost(&then, who, role, out);
        if trails.timeline.ball(until).holder == Some(who) {
            let r = (BALL * then.wide).max(4.2);
            let ball = disc(then.at(0.0, then.tip() + r), r);
            out.tint(ball.clone(), Role::Paper, 0.7);
            out.dashed(ball, Role::Ball, 1.4, DASH);
        }
    }
}

fn body(trails: &Trails<'_>, who: PlayerId, t: f64) -> Option<Body> {
    let state = trails.timeline.player(who, t)?;
    Some(Body::of(
        &state,
        trails.timeline.limits(who),
        &trails.camera,
    ))
}

fn role(trails: &Trails<'_>, who: PlayerId) -> Role {
    match (trails.view.follows(who), trails.view.follows_some()) {
        (true, _) => Role::FollowToCome,
        (false, true) => Role::Faint,
        (false, false) => Role::OffenceToCome,
    }
}

fn ghost(body: &Body, who: PlayerId, role: Role, out: &mut Vec<Item>) {
    let shape = ellipse(body.middle, body.wide, body.deep, body.facing);
    let base = 0.36 * body.wide;
    let nose = lines(&[
        body.at(-base, body.deep),
        body.at(0.0, body.tip()),
        body.at(base, body.deep),
    ]);
    out.tint(shape.clone(), Role::Paper, 0.7);
    out.dashed(shape, role, 1.5, DASH);
    out.pen(nose, role, 1.5);
    let size = body.wide.max(11.0);
    let mut digit = String::new();
    push_decimal(&mut digit, f64::from(who.number()), 0);
    let at = Point::new(body.middle.x, body.middle.y + 0.36 * size);
    out.text(at, digit, Role::Soft, sans(size, false, Anchor::Middle));
}

#[cfg(test)]
mod tests {
    use super::super::fixture::{Played, turnstile};
    use super::super::{Scene, Staged, Verdict, View, movers};
    use super::*;
    use std::string::ToString;

    fn drawn(played: &Played, ghosts: Option<f64>, t: f64) -> Scene {
        let staged = Staged {
            timeline: &played.timeline,
            set: &played.set,
            court: &played.court,
        };
        let verdict = Verdict {
            ghosts,
            ..Verdict::default()
        };
        let view = View {
            inset: false,
            ..View::new(760.0)
        };
        let mut out = Scene::default();
        movers(&staged, Some(&verdict), t, &view, &mut out);
        out
    }

    /// The digits in the colour of ghosts.
    fn ghosts(scene: &Scene) -> Vec<&str> {
        let digit = |i| match i {
            &Item::Text {
                ref text,
                role: Role::Soft,
                ..
            } => Some(text.as_str()),
            _ => None,
        };
        scene.items.iter().filter_map(digit).collect()
    }

    #[test]
    fn who_goes_somewhere_has_a_ghost_there_and_who_stays_has_none() {
        let played = turnstile();
        let beat = played.timeline.beats()[1];
        let went = |who: &&PlayerId| {
            let (a, b) = (
                played.timeline.place(**who, beat.start),
                played.timeline.place(**who, beat.end),
            );
            crate::math::distance(a.unwrap(), b.unwrap()) > 0.6
        };
        let scene = drawn(&played, Some(beat.end), beat.start);
        for who in PlayerId::ALL.iter().filter(went) {
            let digit = char::from(b'0' + who.number()).to_string();
            assert!(ghosts(&scene).contains(&digit.as_str()), "{digit}");
        }
        let end = played.timeline.duration();
        assert!(ghosts(&drawn(&played, Some(end), end - 0.05)).is_empty());
    }

    #[test]
    fn a_ghost_is_dashed_and_lies_under_everybody_who_is_there() {
        let scene = drawn(&turnstile(), Some(2.5), 0.5);
        let at = |found: &dyn Fn(&Item) -> bool| scene.items.iter().rposition(found).unwrap();
        let ghost = at(&|i| matches!(i, Item::Stroke { dash: Some(d), .. } if *d == DASH));
        let first = scene.items.iter().position(|i| {
            matches!(
                i,
                Item::Fill {
                    role: Role::Offence,
                    ..
                }
            )
        });
        assert!(ghost < first.unwrap());
    }

    #[test]
    fn nothing_is_next_where_the_ghosts_stand_already() {
        let played = turnstile();
        assert_eq!(drawn(&played, Some(2.0), 2.0), drawn(&played, None, 2.0));
        assert_eq!(drawn(&played, Some(2.0), 3.0), drawn(&played, None, 3.0));
    }
}
