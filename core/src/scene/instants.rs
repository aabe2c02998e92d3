//! Instants of whoever is followed: where on their way, and when.

use super::shape::{Draw, disc, sans};
use super::trail::Trails;
use super::{Anchor, Item, Role, StripGeometry, StripView, TextStyle};
use crate::math::{Point, distance};
use crate::set::PlayerId;
use crate::strip::{Strip, instants};
use alloc::vec::Vec;

/// Half the width of a mark, pixels.
const MARK: f64 = 3.2;
/// From the middle of a mark to its number, and the number's height, pixels.
const BESIDE: f64 = 7.0;
const SIZE: f64 = 11.0;
/// Two numbers do not stand nearer to each other than this, pixels.
const APART: f64 = 30.0;
/// A mark nearer to the right edge has its number to the left, pixels.
const EDGE: f64 = 40.0;

/// Marks where the followed plant, read the screen, are set and catch, with the seconds, on the ways that
/// are shown at `t`.
pub(super) fn draw(trails: &Trails<'_>, t: f64, out: &mut Vec<Item>) {
    let mut marked: Vec<Point> = Vec::new();
    for action in trails.shown(t) {
        let own = instants(trails.set, action).into_iter();
        for (who, at) in own.filter(|(who, _)| trails.view.follows(*who)) {
            let Some(place) = trails.timeline.place(who, at) else {
                continue;
            };
            let middle = trails.camera.px(place);
            if marked.iter().any(|p| distance(*p, middle) < APART) {
                continue;
            }
            marked.push(middle);
            out.fill(disc(middle, MARK), Role::Paper);
            out.stroke(disc(middle, MARK), Role::Follow, 1.6);
            let left = middle.x > trails.camera.area.width - EDGE;
            let (off, anchor) = if left {
                (-BESIDE, Anchor::End)
            } else {
                (BESIDE, Anchor::Start)
            };
            let style = TextStyle {
                halo: Some(Role::Paper),
                ..sans(SIZE, true, anchor)
            };
            let text = trails.view.voice.number(at, 1);
            let foot = Point::new(middle.x + off, middle.y + 0.36 * SIZE);
            out.text(foot, text, Role::Follow, style);
        }
    }
}

/// The same instants in the rows of the followed.
pub(super) fn in_strip(
    strip: &Strip,
    geometry: &StripGeometry,
    view: &StripView,
    out: &mut Vec<Item>,
) {
    let followed = |who: PlayerId| view.follow.get(who.index()) == Some(&true);
    let rows = strip.rows.iter().filter(|row| followed(row.who));
    for row in rows {
        let Some(y) = geometry.row(row.who) else {
            continue;
        };
        for t in &row.instants {
            let at = Point::new(geometry.x(*t), y);
            out.fill(disc(at, MARK), Role::Paper);
            out.stroke(disc(at, MARK), Role::Follow, 1.6);
        }
    }
}
