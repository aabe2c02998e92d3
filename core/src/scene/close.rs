//! The close-up: what enlarged bodies hide, at true scale in a corner of the court.

use super::picture::people;
use super::shape::{Draw, push_lines, rect};
use super::trail::Trails;
use super::verdict::Verdict;
use super::view::{Camera, View};
use super::{Area, Item, Role, court};
use crate::court::Court;
use crate::math::{BezPath, Point};
use crate::set::{Edge, Kind, PlayerId, Set, Verb};
use crate::timeline::{TimedAction, TimedBeat, Timeline};
use alloc::vec::Vec;

/// Size of the inset, CSS pixels.
pub(super) const WIDTH_PX: f64 = 103.0;
pub(super) const HEIGHT_PX: f64 = 82.0;
/// Its scale, pixels a metre.
pub(super) const SCALE: f64 = 44.0;
/// Courts at this scale or over need none, pixels a metre.
const ENOUGH: f64 = 40.0;
/// From the edges of the picture, pixels; above, the metre marks stand as well.
const MARGIN: f64 = 8.0;

/// An inset at true scale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CloseUp {
    /// Where it lies on the picture.
    pub area: Area,
    /// The place on the floor it shows, metres; [`View::look_at`] fills the court with it.
    pub middle: Point,
    /// Right end of its half-metre mark, where fewest go by, CSS pixels.
    pub ruler: Point,
}

/// The close-up of a beat: of its hand-off, gate or brush, where the court is too small to show it.
/// It stands for the whole beat.
#[must_use]
pub fn close_up(
    timeline: &Timeline,
    set: &Set,
    court: &Court,
    view: &View,
    beat: usize,
) -> Option<CloseUp> {
    let camera = view.camera(court);
    let roomy = camera.scale >= ENOUGH || camera.area.width < 2.5 * WIDTH_PX;
    if !view.inset || view.print || view.look_at.is_some() || roomy {
        return None;
    }
    let times = timeline.beats().get(beat)?;
    let middle = subject(timeline, set, times)?;
    let taken = places_taken(timeline, times);
    let area = emptiest(&taken, &camera, source(&camera, middle));
    let ruler = ruler(&taken, &inner(area, middle), area);
    Some(CloseUp {
        area,
        middle,
        ruler,
    })
}

/// The camera of the inset.
fn inner(area: Area, middle: Point) -> Camera {
    let centre = Point::new(area.x + 0.5 * area.width, area.y + 0.5 * area.height);
    Camera {
        scale: SCALE,
        origin: centre - middle.to_vec2() * SCALE,
        area,
        wide: true,
        print: false,
        true_scale: true,
    }
}

/// What the beat's close-up looks at: a hand-off before a gate before a brush, the earliest first.
fn subject(timeline: &Timeline, set: &Set, beat: &TimedBeat) -> Option<Point> {
    let mut best: Option<(u8, f64, PlayerId, Option<PlayerId>)> = None;
    let mut offer = |rank: u8, t: f64, a: PlayerId, b: Option<PlayerId>| {
        let within = t >= beat.start && t < beat.end;
        if within && best.is_none_or(|(r, at, ..)| (rank, t) < (r, at)) {
            best = Some((rank, t, a, b));
        }
    };
    for action in timeline.actions() {
        let partner = || partner(timeline, action);
        match action.verb {
            Verb::Handoff => {
                let taker = set.action(action.id).and_then(|a| a.receiver());
                if let Some(t) = action.at(Edge::Release) {
                    offer(0, t, action.who, taker);
                }
            }
            Verb::Screen if action.kind == Some(Kind::Gate) => {
                if let Some(t) = action.at(Edge::Shut).or(action.at(Edge::Set)) {
                    offer(1, t, action.who, partner());
                }
            }
            Verb::Cut | Verb::Dribble => {
                for mark in action.marks.iter().filter(|m| m.edge == Edge::PassBy) {
                    offer(2, mark.t, action.who, mark.of);
                }
            }
            _ => {}
        }
    }
    let (_, t, a, b) = best?;
    let place = |who: PlayerId| timeline.player(who, t).map(|m| Point::new(m.x, m.y));
    let a = place(a)?;
    Some(b.and_then(place).map_or(a, |b| a.midpoint(b)))
}

fn partner(timeline: &Timeline, action: &TimedAction) -> Option<PlayerId> {
    timeline
        .actions()
        .iter()
        .find(|a| a.id == action.id && a.who != action.who)
        .map(|a| a.who)
}

/// What the inset shows, as a box on the court.
fn source(camera: &Camera, middle: Point) -> Area {
    let (width, height) = (
        WIDTH_PX / SCALE * camera.scale,
        HEIGHT_PX / SCALE * camera.scale,
    );
    let middle = camera.px(middle);
    Area {
        x: middle.x - 0.5 * width,
        y: middle.y - 0.5 * height,
        width,
        height,
    }
}

/// Where everybody and the ball are at thirteen instants of a beat, metres. Each place that the inset
/// may take is held against them, so they are asked for once.
fn places_taken(timeline: &Timeline, beat: &TimedBeat) -> Vec<Point> {
    let mut places = Vec::with_capacity(13 * 6);
    for i in 0..=12_u8 {
        let t = beat.start + (beat.end - beat.start) * f64::from(i) / 12.0;
        for id in PlayerId::ALL {
            if let Some(mover) = timeline.player(id, t) {
                places.push(Point::new(mover.x, mover.y));
            }
        }
        let ball = timeline.ball(t);
        places.push(Point::new(ball.x, ball.y));
    }
    places
}

/// Of the places along both sides, the one that covers least of the beat, the lowest first.
fn emptiest(taken: &[Point], camera: &Camera, source: Area) -> Area {
    let right = camera.area.width - WIDTH_PX - MARGIN;
    let low = camera.area.height - HEIGHT_PX - MARGIN;
    let high = 3.0 * MARGIN;
    let mut best = (usize::MAX, Area::default());
    for y in [low, 0.5 * (low + high), high] {
        for x in [right, 2.5 * MARGIN] {
            let area = Area {
                x,
                y,
                width: WIDTH_PX,
                height: HEIGHT_PX,
            };
            let covers = covered(taken, camera, area);
            let hides = overlap(area, source);
            let cost = covers + if hides { 1000 } else { 0 };
            if cost < best.0 {
                best = (cost, area);
            }
        }
    }
    best.1
}

/// Of the inset's corners, the one where its mark covers least.
fn ruler(taken: &[Point], inner: &Camera, area: Area) -> Point {
    let length = 0.5 * SCALE + 38.0;
    let mut best = (usize::MAX, Point::ZERO);
    for y in [area.y + 9.0, area.y + area.height - 9.0] {
        for x in [area.x + area.width - 8.0, area.x + 8.0 + length] {
            let mark = Area {
                x: x - length,
                y: y - 6.0,
                width: length,
                height: 12.0,
            };
            let cost = covered(taken, inner, mark);
            if cost < best.0 {
                best = (cost, Point::new(x, y));
            }
        }
    }
    best.1
}

/// How often somebody, or the ball, is under `area`.
fn covered(taken: &[Point], camera: &Camera, area: Area) -> usize {
    taken
        .iter()
        .filter(|p| area.is_near(camera.px(**p), 14.0))
        .count()
}

fn overlap(a: Area, b: Area) -> bool {
    a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height
}

/// Draws the close-up at `t`.
pub(super) fn draw(
    trails: &Trails<'_>,
    court: &Court,
    verdict: Option<&Verdict<'_>>,
    close: &CloseUp,
    t: f64,
    out: &mut Vec<Item>,
) {
    corners(source(&trails.camera, close.middle), out);
    let area = close.area;
    let inner = Trails {
        camera: inner(area, close.middle),
        ..*trails
    };
    out.push(Item::Clip(area));
    court::floor(court, &inner.camera, out);
    people(&inner, verdict, t, out);
    out.push(Item::Unclip);
    out.stroke(rect(area), Role::Soft, 1.0);
    court::scale_bar(close.ruler, SCALE, trails.view.voice, out);
}

/// Four corner marks, 5 px a leg.
fn corners(area: Area, out: &mut Vec<Item>) {
    let mut path = BezPath::new();
    for (x, inward) in [(area.x, 5.0), (area.x + area.width, -5.0)] {
        for (y, down) in [(area.y, 5.0), (area.y + area.height, -5.0)] {
            let leg = [
                Point::new(x, y + down),
                Point::new(x, y),
                Point::new(x + inward, y),
            ];
            push_lines(&mut path, &leg);
        }
    }
    out.stroke(path, Role::Soft, 1.0);
}
