//! The few shapes that every mark is made of.

use super::{Anchor, Area, Dash, Item, Role, TextStyle};
use crate::math::{BezPath, Point, Vec2, unit};
use alloc::string::String;
use alloc::vec::Vec;
use core::f64::consts::{FRAC_PI_2, FRAC_PI_6};

/// Handle of a cubic quarter circle: 4/3 (√2 − 1).
const KAPPA: f64 = 0.552_284_749_830_793_4;

/// A place of a body: `x` to its right, `y` ahead of it, pixels.
pub(super) fn beside(middle: Point, facing: f64, x: f64, y: f64) -> Point {
    middle + unit(facing + FRAC_PI_2) * x + unit(facing) * y
}

/// An ellipse clockwise on screen, half as wide as `rx` and as deep as `ry`, turned to `facing`.
pub(super) fn ellipse(middle: Point, rx: f64, ry: f64, facing: f64) -> BezPath {
    let (right, ahead) = (unit(facing + FRAC_PI_2) * rx, unit(facing) * ry);
    let at = |x: f64, y: f64| middle + right * x + ahead * y;
    let mut path = BezPath::new();
    path.move_to(at(-1.0, 0.0));
    path.curve_to(at(-1.0, KAPPA), at(-KAPPA, 1.0), at(0.0, 1.0));
    path.curve_to(at(KAPPA, 1.0), at(1.0, KAPPA), at(1.0, 0.0));
    path.curve_to(at(1.0, -KAPPA), at(KAPPA, -1.0), at(0.0, -1.0));
    path.curve_to(at(-KAPPA, -1.0), at(-1.0, -KAPPA), at(-1.0, 0.0));
    path.close_path();
    path
}

pub(super) fn disc(middle: Point, r: f64) -> BezPath {
    ellipse(middle, r, r, 0.0)
}

pub(super) fn rect(area: Area) -> BezPath {
    let (x1, y1) = (area.x + area.width, area.y + area.height);
    let mut path = lines(&[
        Point::new(area.x, area.y),
        Point::new(x1, area.y),
        Point::new(x1, y1),
        Point::new(area.x, y1),
    ]);
    path.close_path();
    path
}

pub(super) fn lines(points: &[Point]) -> BezPath {
    let mut path = BezPath::new();
    push_lines(&mut path, points);
    path
}

/// Adds an open run of lines to `path`.
pub(super) fn push_lines(path: &mut BezPath, points: &[Point]) {
    for (i, p) in points.iter().enumerate() {
        if i == 0 {
            path.move_to(*p);
        } else {
            path.line_to(*p);
        }
    }
}

/// An open arrow head of 60° with its point at `tip`.
pub(super) fn head(tip: Point, direction: Vec2, leg: f64) -> BezPath {
    let facing = crate::math::angle_of(direction);
    let back = |turn: f64| tip - unit(facing + turn) * leg;
    lines(&[back(FRAC_PI_6), tip, back(-FRAC_PI_6)])
}

/// A place with little drawing to do: pushes items by their short names.
pub(super) trait Draw {
    fn fill(&mut self, path: BezPath, role: Role);
    fn tint(&mut self, path: BezPath, role: Role, opacity: f64);
    /// Square ends.
    fn stroke(&mut self, path: BezPath, role: Role, width: f64);
    /// Round ends.
    fn pen(&mut self, path: BezPath, role: Role, width: f64);
    fn dashed(&mut self, path: BezPath, role: Role, width: f64, dash: Dash);
    /// Round dots 5 px apart: waiting.
    fn dots(&mut self, path: BezPath, role: Role, width: f64);
    fn text(&mut self, at: Point, text: String, role: Role, style: TextStyle);
}

impl Draw for Vec<Item> {
    fn fill(&mut self, path: BezPath, role: Role) {
        self.tint(path, role, 1.0);
    }

    fn tint(&mut self, path: BezPath, role: Role, opacity: f64) {
        self.push(Item::Fill {
            path,
            role,
            opacity,
        });
    }

    fn stroke(&mut self, path: BezPath, role: Role, width: f64) {
        self.push(stroke(path, role, width, None, false));
    }

    fn pen(&mut self, path: BezPath, role: Role, width: f64) {
        self.push(stroke(path, role, width, None, true));
    }

    fn dashed(&mut self, path: BezPath, role: Role, width: f64, dash: Dash) {
        self.push(stroke(path, role, width, Some(dash), false));
    }

    fn dots(&mut self, path: BezPath, role: Role, width: f64) {
        let dash = Dash { on: 0.1, off: 5.0 };
        self.push(stroke(path, role, width, Some(dash), true));
    }

    fn text(&mut self, at: Point, text: String, role: Role, style: TextStyle) {
        self.push(Item::Text {
            at,
            text,
            role,
            style,
        });
    }
}

fn stroke(path: BezPath, role: Role, width: f64, dash: Option<Dash>, round: bool) -> Item {
    Item::Stroke {
        path,
        role,
        width,
        dash,
        round,
    }
}

/// Sans, no halo.
pub(super) fn sans(size: f64, bold: bool, anchor: Anchor) -> TextStyle {
    TextStyle {
        size,
        bold,
        serif: false,
        anchor,
        halo: None,
    }
}
