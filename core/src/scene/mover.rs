//! Bodies from above: shoulders, and a nose that shows where the chest points.

use super::shape::{Draw, beside, disc, ellipse, lines, push_lines, sans};
use super::view::Camera;
use super::{Anchor, Item, Role};
#[cfg(feature = "authoring")]
use super::{Area, TextStyle};
use crate::athlete::Limits;
use crate::math::{Point, push_decimal};
use crate::set::PlayerId;
use crate::timeline::MoverState;
use alloc::string::String;
use alloc::vec::Vec;

/// How far the nose stands out, metres.
const NOSE: f64 = 0.12;

/// A body as drawn, pixels.
#[derive(Clone, Copy)]
pub(super) struct Body {
    pub(super) middle: Point,
    pub(super) facing: f64,
    /// Half the shoulders.
    pub(super) wide: f64,
    /// Half the chest's depth.
    pub(super) deep: f64,
    /// Length of the nose.
    nose: f64,
}

impl Body {
    pub(super) fn of(state: &MoverState, limits: &Limits, camera: &Camera) -> Self {
        let k = camera.enlargement(limits.shoulder) * camera.scale;
        Self {
            middle: camera.px(Point::new(state.x, state.y)),
            facing: state.facing,
            wide: 0.5 * limits.shoulder * k,
            deep: 0.5 * limits.depth * k,
            nose: NOSE * k,
        }
    }

    /// A place of the body: `x` to its right, `y` ahead.
    pub(super) fn at(&self, x: f64, y: f64) -> Point {
        beside(self.middle, self.facing, x, y)
    }

    /// Ahead of the middle, where the nose ends.
    pub(super) fn tip(&self) -> f64 {
        self.deep + self.nose
    }

    /// An attacker. The followed have the accent and, so that greyscale works, a second contour.
    pub(super) fn draw(&self, who: PlayerId, followed: bool, out: &mut Vec<Item>) {
        let (body, number) = if followed {
            (Role::Follow, Role::FollowNumber)
        } else {
            (Role::Offence, Role::OffenceNumber)
        };
        let mut shape = ellipse(self.middle, self.wide, self.deep, self.facing);
        let base = 0.36 * self.wide;
        let corners = [
            self.at(-base, 0.86 * self.deep),
            self.at(0.0, self.tip()),
            self.at(base, 0.86 * self.deep),
        ];
        push_lines(&mut shape, &corners);
        shape.close_path();
        if followed {
            let gap = (0.22 * self.wide).max(2.4);
            let ring = ellipse(self.middle, self.wide + gap, self.deep + gap, self.facing);
            out.fill(ring.clone(), Role::Paper);
            out.stroke(ring, Role::Follow, (0.1 * self.wide).max(1.2));
        }
        out.stroke(shape.clone(), Role::Paper, (0.255 * self.wide).max(2.0));
        out.fill(shape, body);
        let size = self.wide.max(11.0);
        let mut digit = String::new();
        push_decimal(&mut digit, f64::from(who.number()), 0);
        out.text(
            Point::new(self.middle.x, self.middle.y + 0.36 * size),
            digit,
            number,
            sans(size, true, Anchor::Middle),
        );
    }
}

#[cfg(feature = "authoring")]
impl Body {
    /// An attacker who is there, while somebody else is looked at.
    pub(super) fn draw_dimmed(&self, who: PlayerId, out: &mut Vec<Item>) {
        let shape = ellipse(self.middle, self.wide, self.deep, self.facing);
        out.fill(shape.clone(), Role::Paper);
        out.stroke(shape, Role::Line, 1.2);
        let size = self.wide.max(11.0);
        let at = Point::new(self.middle.x, self.middle.y + 0.36 * size);
        out.text(
            at,
            digit(who),
            Role::Soft,
            sans(size, false, Anchor::Middle),
        );
    }

    /// The one who is looked at, where bodies are too small to hold a number: that stands behind the
    /// back, within `area`; the ball is in front.
    pub(super) fn draw_named(&self, who: PlayerId, area: Area, out: &mut Vec<Item>) {
        let shape = ellipse(self.middle, self.wide, self.deep, self.facing);
        out.stroke(shape.clone(), Role::Paper, 3.0);
        out.fill(shape, Role::Ink);
        let size = (1.4 * self.wide).max(13.0);
        let style = TextStyle {
            halo: Some(Role::Paper),
            ..sans(size, true, Anchor::Middle)
        };
        let room = 0.5 * size;
        let behind = self.at(0.0, -(self.deep + 0.8 * size));
        let at = Point::new(
            behind.x.max(room).min(area.width - room),
            behind.y.max(room).min(area.height - room) + 0.36 * size,
        );
        out.text(at, digit(who), Role::Ink, style);
    }
}

#[cfg(feature = "authoring")]
fn digit(who: PlayerId) -> String {
    let mut digit = String::new();
    push_decimal(&mut digit, f64::from(who.number()), 0);
    digit
}

/// Width of an X before a defender's number, pixels.
const CROSS: f64 = 7.0;

impl Body {
    /// A defender: the same body as an outline, the nose a shape of its own. Where the shoulders
    /// leave no room for it the X goes, except in print.
    pub(super) fn draw_defender(&self, who: PlayerId, print: bool, out: &mut Vec<Item>) {
        let shape = ellipse(self.middle, self.wide, self.deep, self.facing);
        let base = 0.3 * self.wide;
        let corners = [
            self.at(-base, self.deep),
            self.at(0.0, self.tip() + 1.0),
            self.at(base, self.deep),
        ];
        let mut nose = lines(&corners);
        nose.close_path();
        out.stroke(shape.clone(), Role::Paper, 4.0);
        out.stroke(nose.clone(), Role::Paper, 2.5);
        out.fill(shape.clone(), Role::Field);
        out.stroke(shape, Role::Ink, 1.5);
        out.fill(nose, Role::Ink);
        let mut digit = String::new();
        push_decimal(&mut digit, f64::from(who.number()), 0);
        let base = Point::new(self.middle.x, self.middle.y + 4.0);
        if print || 2.0 * self.wide >= 24.0 {
            let left = Point::new(base.x - CROSS, base.y);
            out.text(
                left,
                String::from("X"),
                Role::Ink,
                sans(9.0, true, Anchor::Start),
            );
            out.text(base, digit, Role::Ink, sans(11.0, true, Anchor::Start));
        } else {
            out.text(base, digit, Role::Ink, sans(11.0, true, Anchor::Middle));
        }
    }
}

/// The open ring where a trail starts.
pub(super) fn start_ring(middle: Point, role: Role, out: &mut Vec<Item>) {
    out.fill(disc(middle, 2.6), Role::Paper);
    out.stroke(disc(middle, 2.6), role, 1.2);
}
