//! Chances, and how the defence plays.

use crate::looks::{Chance, Openness};
use crate::set::Coverage;

pub(in crate::words) const OPEN: &str = "open {n} s";
pub(in crate::words) const CONTESTED: &str = "contested";
pub(in crate::words) const LOOK_OPEN: &str =
    "{look} with X{defender} {far} away: {class}, for {n} s.";
pub(in crate::words) const LOOK_CONTESTED: &str =
    "{look} with X{defender} {far} away: {class}, and contested.";
pub(in crate::words) const LOOK_ALONE: &str = "{look} with nobody near.";
pub(in crate::words) const GUARDED: &str = " X{defender} is {far} from the ball.";
pub(in crate::words) const IN_REACH: &str = " A hand can get to the pass.";

pub(in crate::words) fn chance(chance: Chance) -> &'static str {
    match chance {
        Chance::Catch => "{who} catches",
        Chance::Drive => "{who} gets to the ring",
        Chance::Finish => "{who} shoots",
    }
}

pub(in crate::words) fn openness(openness: Openness) -> &'static str {
    match openness {
        Openness::VeryTight => "very tight",
        Openness::Tight => "tight",
        Openness::Open => "open",
        Openness::WideOpen => "wide open",
    }
}

pub(in crate::words) fn coverage(coverage: Coverage) -> &'static str {
    match coverage {
        Coverage::Chase => "chase",
        Coverage::Over => "over",
        Coverage::Through => "through",
        Coverage::Under => "under",
        Coverage::TopLock => "top-lock",
        Coverage::Switch => "switch",
        Coverage::Show => "show",
        Coverage::Drop => "drop",
        Coverage::Ice => "ice",
        Coverage::Blitz => "blitz",
        Coverage::WeakSideTag => "weak-side tag",
    }
}
