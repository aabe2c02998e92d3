//! Marks that stand by themselves: a screen's bar, a gate's arrows, a hand-off's bars.

use super::mover::Body;
use super::shape::{Draw, lines, push_lines};
use super::trail::arrow;
use super::view::Camera;
use super::{Item, Role};
use crate::math::{BezPath, Point, Vec2, direction};
use crate::set::{Edge, Kind, Verb};
use crate::timeline::{TimedAction, Timeline};
use alloc::vec::Vec;

/// Slower than this a post of a gate stands, m/s.
const STANDS: f64 = 0.05;

/// The bars of all screens that stand at `t`, and the arrows of gates that close.
pub(super) fn screens(timeline: &Timeline, t: f64, camera: &Camera, out: &mut Vec<Item>) {
    for action in timeline.actions().iter().filter(|a| stands(a, t)) {
        let Some(state) = timeline.player(action.who, t) else {
            continue;
        };
        let body = Body::of(&state, timeline.limits(action.who), camera);
        screen_bar(&body, camera, Role::Ink, out);
        if action.kind == Some(Kind::Gate) && state.speed > STANDS {
            let partner = timeline
                .actions()
                .iter()
                .find(|a| a.id == action.id && a.who != action.who)
                .and_then(|a| timeline.player(a.who, t));
            if let Some(partner) = partner {
                let to = camera.px(Point::new(partner.x, partner.y));
                gate_arrow(&body, to, out);
            }
        }
    }
}

fn stands(action: &TimedAction, t: f64) -> bool {
    action.verb == Verb::Screen
        && t < action.end
        && action.at(Edge::Set).is_some_and(|set| t >= set)
}

/// A bar as wide as the shoulders, square to the body, touching the nose.
pub(super) fn screen_bar(body: &Body, camera: &Camera, role: Role, out: &mut Vec<Item>) {
    let width = (0.08 * camera.scale).max(2.6);
    let ahead = body.tip() + 0.5 * width;
    let ends = [-body.wide, body.wide].map(|x| body.at(x, ahead));
    out.stroke(lines(&ends), role, width);
}

/// An arrow behind a post, toward the other one.
fn gate_arrow(body: &Body, partner: Point, out: &mut Vec<Item>) {
    let Some(inward) = direction(partner - body.middle) else {
        return;
    };
    let middle = body.at(0.0, -(body.deep + 0.85 * body.wide));
    let half = inward * (0.6 * body.wide);
    arrow(middle - half, middle + half, Role::Ink, 1.6, 5.0, out);
}

/// Two bars across `along`, `scale` pixels a (drawn) metre.
pub(super) fn handoff_bars(at: Point, along: Vec2, scale: f64, role: Role, out: &mut Vec<Item>) {
    let across = Vec2::new(-along.y, along.x) * (0.15 * scale);
    let apart = along * (0.05 * scale).max(2.0);
    let mut bars = BezPath::new();
    for middle in [at - apart, at + apart] {
        push_lines(&mut bars, &[middle - across, middle + across]);
    }
    out.stroke(bars, role, (0.05 * scale).clamp(2.0, 2.6));
}

/// The two lines of a shot, 3.8 px apart.
pub(super) fn double_line(a: Point, b: Point, role: Role, out: &mut Vec<Item>) {
    let Some(along) = direction(b - a) else {
        return;
    };
    let side = Vec2::new(-along.y, along.x) * 1.9;
    // The head stands clear of the lines' ends.
    let end = b - along * 3.0;
    let mut both = BezPath::new();
    push_lines(&mut both, &[a - side, end - side]);
    push_lines(&mut both, &[a + side, end + side]);
    out.stroke(both, role, 1.7);
}
