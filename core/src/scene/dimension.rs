//! A look as a draughtsman's dimension: how far the nearest defender is, beside the line between both.

use super::measure::text_width;
use super::shape::{Draw, lines, push_lines, sans};
use super::verdict::Stage;
use super::{Anchor, Dash, Item, Role, TextStyle};
use crate::defence::Defence;
use crate::looks::Look;
use crate::math::{BezPath, Point, Vec2, direction, distance};
use crate::words;
use alloc::string::String;
use alloc::vec::Vec;

/// How far beside the measured line it may lie, pixels, nearest first.
const OFFSETS: [f64; 6] = [30.0, -30.0, 46.0, -46.0, 64.0, -64.0];
/// Half a tick, pixels.
const TICK: f64 = 5.0;
const SIZE: f64 = 15.0;
/// From the line to the middle of its value at least, pixels.
const CLEAR: f64 = 9.0;

/// Where the dimension's line lies and its value stands.
struct Layout {
    a: Point,
    b: Point,
    value: Point,
}

pub(super) fn look(
    look: &Look,
    defence: &Defence,
    stage: &Stage<'_>,
    bodies: &[Point],
    out: &mut Vec<Item>,
) {
    let Some(d) = look.nearest.and_then(|who| defence.state(who, look.t)) else {
        return;
    };
    let (a, b) = (
        stage.camera.px(look.at),
        stage.camera.px(Point::new(d.x, d.y)),
    );
    let text = words::distance(look.separation, stage.set.court, stage.voice);
    between(a, b, text, stage, bodies, out);
}

/// The distance between two places of the picture, beside the line from one to the other.
pub(super) fn between(
    a: Point,
    b: Point,
    text: String,
    stage: &Stage<'_>,
    bodies: &[Point],
    out: &mut Vec<Item>,
) {
    // On the same spot there is nothing to measure.
    let Some(along) = direction(b - a) else {
        return;
    };
    let across = Vec2::new(-along.y, along.x);
    let wide = text_width(&text, SIZE, true);
    let layouts = OFFSETS.map(|off| {
        let shift = across * off;
        let clear = CLEAR + 0.5 * wide * across.x.abs();
        Layout {
            a: a + shift,
            b: b + shift,
            value: a.midpoint(b) + across * (off + clear * off.signum()),
        }
    });
    let cost = |l: &Layout| clutter(l, wide, stage, bodies);
    let best = layouts
        .iter()
        .reduce(|best, l| if cost(l) < cost(best) { l } else { best });
    let Some(layout) = best else { return };
    for (from, to) in [(a, layout.a), (b, layout.b)] {
        let line = lines(&[from + (to - from) * 0.35, to]);
        out.dashed(line, Role::Follow, 1.25, Dash { on: 1.5, off: 3.0 });
    }
    let mut line = lines(&[layout.a, layout.b]);
    ticks(&mut line, layout, along, across);
    out.stroke(line.clone(), Role::Paper, 4.0);
    out.stroke(line, Role::Follow, 1.25);
    let style = TextStyle {
        halo: Some(Role::Paper),
        ..sans(SIZE, true, Anchor::Middle)
    };
    let at = Point::new(layout.value.x, layout.value.y + 0.36 * SIZE);
    out.text(at, text, Role::Follow, style);
}

/// A slanted tick at each end.
fn ticks(path: &mut BezPath, layout: &Layout, along: Vec2, across: Vec2) {
    let half = (along + across) * TICK;
    for end in [layout.a, layout.b] {
        push_lines(path, &[end - half, end + half]);
    }
}

/// How much it covers: bodies under the line or the value, and what would lie outside.
fn clutter(layout: &Layout, wide: f64, stage: &Stage<'_>, bodies: &[Point]) -> f64 {
    let reach = 0.5 * wide.max(20.0);
    let near = |p: &Point| {
        let line = (22.0 - off_line(*p, layout)).max(0.0);
        let value = (reach + 14.0 - distance(*p, layout.value)).max(0.0);
        line + value
    };
    let outside = [layout.a, layout.b, layout.value]
        .iter()
        .filter(|p| !stage.camera.area.is_near(**p, -reach))
        .count();
    bodies.iter().map(near).sum::<f64>() + 100.0 * outside as f64
}

fn off_line(p: Point, layout: &Layout) -> f64 {
    let way = layout.b - layout.a;
    let share = ((p - layout.a).dot(way) / way.hypot2().max(1e-9)).clamp(0.0, 1.0);
    distance(p, layout.a + way * share)
}
