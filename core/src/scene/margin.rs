//! A verdict in the strip: how open each shot is, and flags in the rows they belong to.

use super::measure::text_width;
use super::shape::{Draw, lines, rect, sans};
use super::{Anchor, Area, Item, Role, StripGeometry, StripView, TextStyle, Verdict};
use crate::looks::{Chance, Look};
use crate::math::{Point, round};
use crate::strip::{Bit, BitKind, Strip};
use crate::timeline::Slowed;
use crate::words;
use alloc::format;
use alloc::vec::Vec;

const SIZE: f64 = 12.5;
/// From an arrow to its words, pixels.
const GAP: f64 = 7.0;
/// From the middle of one flag to the next in the same row, pixels.
const APART: f64 = 20.0;
/// From the ruler up to the rail of a slow stretch, pixels.
const RAIL: f64 = 4.0;
/// The words beside it.
const RATE: f64 = 9.0;

impl Verdict<'_> {
    pub(super) fn in_strip(
        &self,
        strip: &Strip,
        geometry: &StripGeometry,
        view: &StripView,
        out: &mut Vec<Item>,
    ) {
        for look in self.looks.iter().filter(|l| l.chance == Chance::Finish) {
            open(look, strip, geometry, view, out);
        }
        for slow in self.slow {
            rail(slow, geometry, view, out);
        }
        let mut placed: Vec<Point> = Vec::new();
        for flag in self.flags {
            let row = flag.who.map_or_else(
                || geometry.rows.last().map(|r| r.y),
                |who| geometry.row(who),
            );
            let Some(y) = row else { continue };
            let edges = (geometry.left + 9.0, geometry.right - 9.0);
            let mut at = Point::new(geometry.x(flag.t).clamp(edges.0, edges.1), y);
            let right = placed.iter().filter(|p| p.y.to_bits() == y.to_bits());
            if let Some(last) = right.map(|p| p.x).reduce(f64::max) {
                at.x = at.x.max(last + APART);
            }
            // Past the end there is no time left to mark; its words stand in the text.
            if at.x <= edges.1 {
                placed.push(at);
                flag.draw(at, out);
            }
        }
    }
}

/// A rail as long as the stretch, and how fast it is shown: "× 0.5".
fn rail(slow: &Slowed, geometry: &StripGeometry, view: &StripView, out: &mut Vec<Item>) {
    let y = geometry.ruler - RAIL;
    let [from, to] = [slow.from, slow.to].map(|t| Point::new(geometry.x(t), y));
    out.stroke(lines(&[from, to]), Role::Ink, 2.0);
    let tenths = slow.rate * 10.0;
    let decimals = 1 + u8::from((tenths - round(tenths)).abs() > 1e-9);
    let text = format!("× {}", view.voice.number(slow.rate, decimals));
    let after = to.x + GAP + text_width(&text, RATE, false) <= geometry.right;
    let (x, anchor) = if after {
        (to.x + 0.5 * GAP, Anchor::Start)
    } else {
        (from.x - 0.5 * GAP, Anchor::End)
    };
    let style = TextStyle {
        halo: Some(Role::Paper),
        ..sans(RATE, false, anchor)
    };
    out.text(Point::new(x, y + 0.5), text, Role::Ink, style);
}

/// "open 0.9 s" behind the shot's arrow, before it where there is no room behind, and over its tip
/// where something lies before it: the arrow says least of what is there.
fn open(
    look: &Look,
    strip: &Strip,
    geometry: &StripGeometry,
    view: &StripView,
    out: &mut Vec<Item>,
) {
    let bits = strip.rows.iter().find(|r| r.who == look.who);
    let shot = bits.and_then(|row| {
        let shots = row.bits.iter().filter(|b| b.what == BitKind::Shot);
        shots.min_by(|a, b| {
            let off = |t: f64| (t - look.t).abs();
            off(a.end).total_cmp(&off(b.end))
        })
    });
    let (Some(shot), Some(y)) = (shot, geometry.row(look.who)) else {
        return;
    };
    let text = words::open(look, view.voice);
    let behind = geometry.x(shot.end).max(geometry.x(shot.start) + 14.0) + GAP;
    let width = text_width(&text, SIZE, true);
    let before = geometry.x(shot.start) - GAP;
    let lies_before = |b: &Bit| {
        b.start < shot.start && geometry.x(b.end) > before - width && b.what != BitKind::Wait
    };
    let (x, anchor) = if behind + width <= geometry.right {
        (behind, Anchor::Start)
    } else if !bits.is_some_and(|row| row.bits.iter().any(lies_before)) {
        (before, Anchor::End)
    } else {
        let plate = Area {
            x: geometry.right - width - 3.0,
            y: y - 7.0,
            width: width + 3.0,
            height: 14.0,
        };
        out.fill(rect(plate), Role::Paper);
        (geometry.right, Anchor::End)
    };
    let role = if view.to_come {
        Role::FollowToCome
    } else {
        Role::Follow
    };
    let style = TextStyle {
        halo: Some(Role::Paper),
        ..sans(SIZE, true, anchor)
    };
    out.text(Point::new(x, y + 4.5), text, role, style);
}
