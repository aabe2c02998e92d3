//! Spots in a sentence.

use crate::court::SpotName;
use crate::voice::Forms;
use crate::voice::messages::spot as m;

/// The plain form, and where `to`, `toward` which, `at` and `near` which, by `side`.
pub(in crate::words) fn spot(name: SpotName) -> Forms {
    match name {
        SpotName::Top => m::TOP,
        SpotName::DeepTop => m::DEEP_TOP,
        SpotName::Logo => m::LOGO,
        SpotName::Slot => m::SLOT,
        SpotName::Wing => m::WING,
        SpotName::LowWing => m::LOW_WING,
        SpotName::Corner => m::CORNER,
        SpotName::ShortCorner => m::SHORT_CORNER,
        SpotName::DunkerSpot => m::DUNKER_SPOT,
        SpotName::Block => m::BLOCK,
        SpotName::MidPost => m::MID_POST,
        SpotName::Elbow => m::ELBOW,
        SpotName::HighElbow => m::HIGH_ELBOW,
        SpotName::HighPost => m::HIGH_POST,
        SpotName::Nail => m::NAIL,
        SpotName::MidPaint => m::MID_PAINT,
        SpotName::LowPaint => m::LOW_PAINT,
        SpotName::Rim => m::RIM,
        SpotName::Blob => m::BLOB,
        SpotName::Slob => m::SLOB,
    }
}
