//! What stands in one row of the strip.

use super::shape::{Draw, head, lines, push_lines, rect};
use super::strip::StripGeometry;
use super::way::{Wave, Way};
use super::{Area, Dash, Item, Role};
use crate::math::{BezPath, Listed, Point, Vec2};
use crate::strip::{Bit, BitKind};
use alloc::vec::Vec;

/// Half height of a bar at rest, pixels.
const AT_REST: f64 = 1.3;
/// More half height at 6 m/s, as a share of the row.
const SWELL: f64 = 0.34;
/// Least distance of two corners of a bar, pixels.
const CORNERS: f64 = 3.0;
const RIGHT: Vec2 = Vec2::new(1.0, 0.0);

/// Draws into one row.
pub(super) struct Row<'a> {
    pub(super) geometry: &'a StripGeometry,
    /// Middle of the row.
    pub(super) y: f64,
    pub(super) height: f64,
    pub(super) role: Role,
    pub(super) holds_up: bool,
}

impl Row<'_> {
    pub(super) fn draw(&self, bits: &[Bit], out: &mut Vec<Item>) {
        for (i, bit) in bits.iter().enumerate() {
            // A passer may leave while the ball is in the air.
            let next = bits.get(i + 1).map_or(f64::INFINITY, |b| b.start);
            self.bit(bit, next, out);
            if let (true, Some(slack)) = (self.holds_up, bit.slack)
                && slack > 0.0
            {
                self.dots(bit.end, bit.end + slack, Role::Soft, out);
            }
        }
    }

    fn bit(&self, bit: &Bit, next: f64, out: &mut Vec<Item>) {
        let (x0, x1) = (self.geometry.x(bit.start), self.geometry.x(bit.end));
        match &bit.what {
            BitKind::Move(speeds) => {
                let bar = self.bar(x0, x1, speeds);
                out.fill(bar.clone(), self.role);
                if self.holds_up && bit.critical {
                    out.stroke(bar, Role::Ink, 2.0);
                }
            }
            BitKind::Dribble => {
                let wave = Wave {
                    length: 9.4,
                    height: 0.22 * self.height,
                    straight: 0.0,
                };
                let way = Way::straight(self.at(x0), self.at(x1));
                let role = self.weight(bit);
                out.pen(wave.along(&way, 0.0, way.length()), role, 2.0);
            }
            BitKind::Wait => self.dots(bit.start, bit.end, self.role, out),
            BitKind::Screen(shut) => self.screen(bit, *shut, out),
            BitKind::Pass => {
                let dash = Dash { on: 5.0, off: 3.5 };
                let x1 = x1.min(self.geometry.x(next)).max(x0 + 9.0);
                let line = lines(&[self.at(x0), self.at(x1 - 2.0)]);
                out.dashed(line, self.weight(bit), 2.2, dash);
                out.pen(head(self.at(x1), RIGHT, 7.0), self.weight(bit), 2.0);
            }
            BitKind::Handoff => {
                let half = 0.26 * self.height;
                let mut bars = BezPath::new();
                for x in [x0 - 2.2, x0 + 2.2] {
                    push_lines(&mut bars, &[self.off(x, -half), self.off(x, half)]);
                }
                out.stroke(bars.clone(), Role::Paper, 5.0);
                out.stroke(bars, self.weight(bit), 2.2);
            }
            BitKind::Shot => {
                let x1 = x1.max(x0 + 14.0);
                let mut both = BezPath::new();
                for up in [-2.0, 2.0] {
                    push_lines(&mut both, &[self.off(x0, up), self.off(x1 - 4.0, up)]);
                }
                out.stroke(both, self.weight(bit), 1.6);
                out.pen(head(self.at(x1), RIGHT, 8.5), self.weight(bit), 1.8);
            }
            // Nothing moves on: a hollow bar.
            BitKind::Fake => {
                let area = Area {
                    x: x0,
                    y: self.y - 2.5,
                    width: (x1 - x0).max(4.0),
                    height: 5.0,
                };
                out.stroke(rect(area), self.weight(bit), 1.4);
            }
        }
    }

    /// Ink for what holds the set up, where that is asked for.
    fn weight(&self, bit: &Bit) -> Role {
        if self.holds_up && bit.critical {
            Role::Ink
        } else {
            self.role
        }
    }

    fn at(&self, x: f64) -> Point {
        Point::new(x, self.y)
    }

    fn off(&self, x: f64, down: f64) -> Point {
        Point::new(x, self.y + down)
    }

    fn dots(&self, start: f64, end: f64, role: Role, out: &mut Vec<Item>) {
        let (x0, x1) = (self.geometry.x(start) + 3.0, self.geometry.x(end) - 2.0);
        if x1 > x0 {
            out.dots(lines(&[self.at(x0), self.at(x1)]), role, 1.8);
        }
    }

    /// A bar that swells with speed.
    fn bar(&self, x0: f64, x1: f64, speeds: &[f64]) -> BezPath {
        let half = |v: f64| (AT_REST + SWELL * self.height * v / 6.0).min(0.5 * self.height - 0.5);
        let last = speeds.len().saturating_sub(1).max(1);
        let mut edge: Vec<(f64, f64)> = Vec::new();
        for (i, v) in speeds.iter().enumerate() {
            let x = x0 + (x1 - x0) * i as f64 / last as f64;
            let far = edge.last().is_none_or(|(before, _)| x - before >= CORNERS);
            if i == last && !far && edge.len() > 1 {
                edge.pop();
            }
            if far || i == last {
                edge.push((x, half(*v)));
            }
        }
        let upper = edge.iter().map(|(x, h)| self.off(*x, -h));
        let lower = edge.iter().rev().map(|(x, h)| self.off(*x, *h));
        let corners: Vec<Point> = upper.chain(lower).listed();
        let mut path = lines(&corners);
        path.close_path();
        path
    }

    /// A bar at the instant it is set, then an open box as long as it stands; a gate's shutting
    /// is a wedge in the box.
    fn screen(&self, bit: &Bit, shut: Option<(f64, f64)>, out: &mut Vec<Item>) {
        let (x0, x1) = (self.geometry.x(bit.start), self.geometry.x(bit.end));
        let half = 0.24 * self.height;
        let area = Area {
            x: x0,
            y: self.y - half,
            width: x1 - x0,
            height: 2.0 * half,
        };
        let role = self.weight(bit);
        out.fill(rect(area), Role::Paper);
        out.stroke(rect(area), role, if role == Role::Ink { 2.0 } else { 1.5 });
        let tall = 0.38 * self.height;
        let bar = lines(&[self.off(x0, -tall), self.off(x0, tall)]);
        out.stroke(bar, role, 3.4);
        if let Some((start, end)) = shut {
            let (a, b) = (self.geometry.x(start), self.geometry.x(end));
            let mut wedge = lines(&[self.off(a, -half), self.at(b), self.off(a, half)]);
            wedge.close_path();
            out.fill(wedge, role);
        }
    }
}
