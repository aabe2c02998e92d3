//! Chances, and how the defence plays.

use crate::looks::{Chance, Openness};
use crate::set::Coverage;
use crate::voice::messages::look as m;
use crate::voice::{Message, Text};

pub(in crate::words) fn chance(chance: Chance) -> Message {
    match chance {
        Chance::Catch => m::CATCHES,
        Chance::Drive => m::GETS_THERE,
        Chance::Finish => m::SHOOTS,
    }
}

pub(in crate::words) fn openness(openness: Openness) -> Text {
    match openness {
        Openness::VeryTight => m::VERY_TIGHT,
        Openness::Tight => m::TIGHT,
        Openness::Open => m::OPEN_CLASS,
        Openness::WideOpen => m::WIDE_OPEN,
    }
}

pub(in crate::words) fn coverage(coverage: Coverage) -> Text {
    match coverage {
        Coverage::Chase => m::CHASE,
        Coverage::Over => m::OVER,
        Coverage::Through => m::THROUGH,
        Coverage::Under => m::UNDER,
        Coverage::TopLock => m::TOP_LOCK,
        Coverage::Switch => m::SWITCH,
        Coverage::Show => m::SHOW,
        Coverage::Drop => m::DROP,
        Coverage::Ice => m::ICE,
        Coverage::Blitz => m::BLITZ,
        Coverage::WeakSideTag => m::WEAK_SIDE_TAG,
    }
}
