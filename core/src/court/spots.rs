//! Named places that exist on every court, from its marks.

use super::{Court, Side};
use crate::math::{Point, cos, sin, sqrt};
use crate::spelling::same_word;
use alloc::string::String;

/// A named place; most exist on both sides.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(
    missing_docs,
    reason = "the trade's own words; `table` describes each by its formula"
)]
pub enum SpotName {
    Top,
    DeepTop,
    Logo,
    Slot,
    Wing,
    LowWing,
    Corner,
    ShortCorner,
    DunkerSpot,
    Block,
    MidPost,
    Elbow,
    HighElbow,
    HighPost,
    Nail,
    MidPaint,
    LowPaint,
    Rim,
    Blob,
    Slob,
}

impl SpotName {
    /// All names with their other accepted spellings and whether they lie on a side.
    pub const TABLE: [(Self, &'static str, &'static [&'static str], bool); 20] = [
        (Self::Top, "top", &["point"], false),
        (Self::DeepTop, "deep top", &[], false),
        (Self::Logo, "logo", &[], false),
        (Self::Slot, "slot", &["guard spot"], true),
        (Self::Wing, "wing", &[], true),
        (Self::LowWing, "low wing", &[], true),
        (Self::Corner, "corner", &[], true),
        (Self::ShortCorner, "short corner", &[], true),
        (Self::DunkerSpot, "dunker spot", &[], true),
        (Self::Block, "block", &["low post"], true),
        (Self::MidPost, "mid post", &[], true),
        (Self::Elbow, "elbow", &[], true),
        (Self::HighElbow, "high elbow", &[], true),
        (Self::HighPost, "high post", &[], false),
        (Self::Nail, "nail", &[], false),
        (Self::MidPaint, "mid paint", &[], false),
        (Self::LowPaint, "low paint", &[], false),
        (Self::Rim, "rim", &[], false),
        (Self::Blob, "baseline throw-in", &["BLOB spot"], true),
        (Self::Slob, "sideline throw-in", &["SLOB spot"], true),
    ];
}

/// A spot with its side, as written: `left corner`, `top`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Spot {
    /// Which.
    pub name: SpotName,
    /// Which side; `None` for the spots on the axis.
    pub side: Option<Side>,
}

impl Spot {
    /// The spot written as `text`; letter case, and a hyphen for a space, do not matter.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        let text = text.trim_ascii();
        let first = text.bytes().position(|b| matches!(b, b' ' | b'-' | b'_'));
        let parted = first.and_then(|i| Some((text.get(..i)?, text.get(i + 1..)?)));
        let (side, rest) = match parted {
            Some((side, rest)) if same_word(side, "left") => (Some(Side::Left), rest),
            Some((side, rest)) if same_word(side, "right") => (Some(Side::Right), rest),
            _ => (None, text),
        };
        SpotName::TABLE
            .iter()
            .find(|(_, name, also, sided)| {
                *sided == side.is_some()
                    && (same_word(rest, name) || also.iter().any(|a| same_word(rest, a)))
            })
            .map(|(name, ..)| Self { name: *name, side })
    }

    /// The words for this spot, as [`Spot::parse`] reads them.
    #[must_use]
    pub fn title(self) -> String {
        let name = SpotName::TABLE
            .iter()
            .find(|r| r.0 == self.name)
            .map_or("", |r| r.1);
        let mut title = String::from(match self.side {
            None => "",
            Some(Side::Left) => "left ",
            Some(Side::Right) => "right ",
        });
        title.push_str(name);
        title
    }

    /// The same spot on the other side.
    #[must_use]
    pub fn mirrored(self) -> Self {
        Self {
            side: self.side.map(Side::mirrored),
            ..self
        }
    }
}

impl Court {
    /// Where a spot lies on this court.
    ///
    /// Common practice, no source: each follows from court marks so that a set moves between rule
    /// sets and keeps its meaning (feet behind the arc, outside the lane, inside the sideline).
    #[must_use]
    pub fn spot(&self, spot: Spot) -> Point {
        let m = self.marks();
        let perimeter = m.arc + self.outside();
        let slot = 24.0_f64.to_radians();
        let (x, y) = match spot.name {
            SpotName::Top => (0.0, perimeter),
            SpotName::DeepTop => (0.0, (perimeter + 2.0).min(m.half - 1.2)),
            SpotName::Logo => (0.0, m.half),
            SpotName::Slot => (perimeter * sin(slot), perimeter * cos(slot)),
            SpotName::Wing => (
                sqrt(perimeter * perimeter - m.free_throw * m.free_throw),
                m.free_throw,
            ),
            SpotName::LowWing => {
                let y = 0.5 * m.free_throw;
                (
                    sqrt(perimeter * perimeter - y * y).min(m.sideline - 0.45),
                    y,
                )
            }
            SpotName::Corner => (m.corner + self.outside(), 1.20 - m.baseline),
            SpotName::ShortCorner => (0.5 * (m.lane + m.corner), 0.90 - m.baseline),
            SpotName::DunkerSpot => ((m.lane + 0.45).max(2.60), 0.90 - m.baseline),
            SpotName::Block => (m.lane + 0.35, m.block),
            SpotName::MidPost => (m.lane + 0.35, 0.5 * (m.block + m.free_throw)),
            SpotName::Elbow => (m.lane, m.free_throw + 0.35),
            SpotName::HighElbow => (m.lane + 0.15, m.free_throw + 1.40),
            SpotName::HighPost => (0.0, m.free_throw + 0.35),
            SpotName::Nail => (0.0, m.free_throw),
            SpotName::MidPaint => (0.0, 0.5 * m.free_throw + 0.4),
            SpotName::LowPaint => (0.0, 1.60),
            SpotName::Rim => (0.0, 0.60),
            SpotName::Blob => (m.lane + 0.65, -m.baseline - 0.35),
            SpotName::Slob => (m.sideline + 0.35, m.throw_in),
        };
        Point::new(spot.side.map_or(1.0, Side::sign) * x, y)
    }
}
