//! The static layer: floor, lines, ring, and the metre marks along the lines.

use super::shape::{Draw, lines, push_lines, rect, sans};
use super::view::{Camera, View};
use super::{Anchor, Item, Role, Scene, TextStyle};
use crate::court::{Court, LineRole};
use crate::math::{BezPath, Point};
use crate::voice::Voice;
use crate::words;
use alloc::vec::Vec;

/// Metre marks lie so far outside the court, metres.
const RULER_OUT: f64 = 0.20;
/// Thickness of the inked metres, metres.
const RULER_WIDTH: f64 = 0.062;

/// The court without anybody on it. It changes only with the view.
#[must_use]
pub fn court(court: &Court, view: &View) -> Scene {
    let mut out = Scene {
        width: view.width_px,
        height: view.height_px(court),
        items: Vec::new(),
    };
    let camera = view.camera(court);
    floor(court, &camera, &mut out.items);
    ruler(court, view, &camera, &mut out.items);
    if view.look_at.is_some() {
        let corner = Point::new(out.width - 8.0, out.height - 9.0);
        scale_bar(corner, camera.scale, view.voice, &mut out.items);
    }
    out
}

/// Paper, lane and lines as `camera` sees them.
pub(super) fn floor(court: &Court, camera: &Camera, out: &mut Vec<Item>) {
    out.fill(rect(camera.area), Role::Paper);
    out.fill(camera.path(&court.lane_area()), Role::Lane);
    for line in court.lines() {
        let (role, least) = match line.role {
            LineRole::Ring => (Role::Ink, 1.6),
            LineRole::Board => (Role::Ink, 2.0),
            _ => (Role::Line, 1.25),
        };
        let width = (line.width * camera.scale).max(least);
        out.stroke(camera.path(&line.path), role, width);
    }
}

/// Along the end line and both sidelines: a hairline, and every other metre in ink.
fn ruler(court: &Court, view: &View, camera: &Camera, out: &mut Vec<Item>) {
    let marks = court.marks();
    let (x, y) = (marks.sideline + RULER_OUT, -(marks.baseline + RULER_OUT));
    let mut hair = BezPath::new();
    let mut inked = BezPath::new();
    let mut along = |from: Point, to: Point| {
        let whole = to - from;
        let metres = whole.x.abs().max(whole.y.abs());
        push_lines(&mut hair, &[camera.px(from), camera.px(to)]);
        let mut s = 0.0;
        while s < metres {
            let ends = [s, (s + 1.0).min(metres)].map(|s| camera.px(from + whole * (s / metres)));
            push_lines(&mut inked, &ends);
            s += 2.0;
        }
    };
    for side in [-x, x] {
        along(
            Point::new(side, -marks.baseline),
            Point::new(side, view.depth),
        );
    }
    along(
        Point::new(-marks.sideline, y),
        Point::new(marks.sideline, y),
    );
    out.stroke(hair, Role::Soft, 0.75);
    out.stroke(inked, Role::Soft, (RULER_WIDTH * camera.scale).max(1.9));
}

/// A bar that says how long half a metre is, or two feet, ending at `right`.
pub(super) fn scale_bar(right: Point, scale: f64, voice: Voice, out: &mut Vec<Item>) {
    let (metres, text) = words::scale_bar(voice);
    let left = Point::new(right.x - metres * scale, right.y);
    out.stroke(lines(&[left, right]), Role::Soft, 3.0);
    let style = TextStyle {
        halo: Some(Role::Paper),
        ..sans(11.0, false, Anchor::End)
    };
    let at = Point::new(left.x - 4.0, left.y + 4.0);
    out.text(at, text, Role::Soft, style);
}
