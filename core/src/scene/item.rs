//! The display list.

use crate::math::{BezPath, Point};
use alloc::string::String;
use alloc::vec::Vec;

/// What a colour is for; the page's tokens decide which colour it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(
    missing_docs,
    reason = "the token table in the guide says what each is for"
)]
pub enum Role {
    Paper,
    Lane,
    Band,
    Ink,
    Soft,
    Line,
    Rule,
    Faint,
    Offence,
    OffenceNumber,
    OffenceToCome,
    Follow,
    FollowNumber,
    FollowToCome,
    Ball,
    Field,
}

impl Role {
    /// All roles, in the order of a palette array.
    pub const ALL: [Self; 16] = [
        Self::Paper,
        Self::Lane,
        Self::Band,
        Self::Ink,
        Self::Soft,
        Self::Line,
        Self::Rule,
        Self::Faint,
        Self::Offence,
        Self::OffenceNumber,
        Self::OffenceToCome,
        Self::Follow,
        Self::FollowNumber,
        Self::FollowToCome,
        Self::Ball,
        Self::Field,
    ];
}

/// Dash pattern in pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dash {
    /// Drawn.
    pub on: f64,
    /// Left out.
    pub off: f64,
}

/// Where a text's position lies in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the words of SVG's text-anchor")]
pub enum Anchor {
    Start,
    Middle,
    End,
}

/// How a text is set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TextStyle {
    /// Pixels.
    pub size: f64,
    /// Bold or not.
    pub bold: bool,
    /// Serif (what a coach says) or sans (what one operates).
    pub serif: bool,
    /// Which part of the text stands at the position.
    pub anchor: Anchor,
    /// A contour of that role behind the letters, 3 px wide.
    pub halo: Option<Role>,
}

/// One drawn thing.
#[derive(Clone, Debug, PartialEq)]
pub enum Item {
    /// A filled path.
    Fill {
        /// Outline.
        path: BezPath,
        /// Colour.
        role: Role,
        /// 0–1.
        opacity: f64,
    },
    /// A stroked path with round joins.
    Stroke {
        /// Middle line.
        path: BezPath,
        /// Colour.
        role: Role,
        /// Pixels.
        width: f64,
        /// Dashes, if any.
        dash: Option<Dash>,
        /// Round ends (else square cut).
        round: bool,
    },
    /// One line of text; its baseline starts, is centred or ends at `at`.
    Text {
        /// Position of the baseline.
        at: Point,
        /// The words.
        text: String,
        /// Colour.
        role: Role,
        /// Setting.
        style: TextStyle,
    },
    /// What follows, up to the next [`Item::Unclip`], is cut off outside this box. Never nested.
    Clip(Area),
    /// Ends a [`Item::Clip`].
    Unclip,
}

/// An upright box, CSS pixels.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Area {
    /// Left edge.
    pub x: f64,
    /// Upper edge.
    pub y: f64,
    /// Width.
    pub width: f64,
    /// Height.
    pub height: f64,
}

impl Area {
    /// Whether `p` lies in it, or within `margin` of it.
    #[must_use]
    pub fn is_near(&self, p: Point, margin: f64) -> bool {
        p.x > self.x - margin
            && p.x < self.x + self.width + margin
            && p.y > self.y - margin
            && p.y < self.y + self.height + margin
    }
}

/// A picture: items in painting order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Scene {
    /// CSS pixels.
    pub width: f64,
    /// CSS pixels.
    pub height: f64,
    /// What to paint, back to front.
    pub items: Vec<Item>,
}
