//! A contradiction in a coach's words: the chain of waits.

use super::block::{Wait, Why, Woven};
use super::network::{Contradiction, TICKS};
use crate::choreography::Choreography;
use crate::fault::{Fault, Place};
use crate::math::{Listed, sort_short};
use crate::set::Set;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// The fault that names every wait of the circle.
pub(super) fn fault(
    set: &Set,
    ch: &Choreography,
    woven: &Woven,
    waits: &[usize],
    found: &Contradiction,
) -> Fault {
    let chain: Vec<&Wait> = found
        .constraints
        .iter()
        .rev()
        .filter_map(|c| waits.get(*c).and_then(|w| woven.waits.get(*w)))
        .listed();
    let mut places: Vec<Place> = Vec::new();
    let mut told = String::new();
    for wait in &chain {
        if let Why::Written { row, tie } = wait.why
            && let Some(place) = written(set, ch, row, tie)
            && !places.contains(&place)
        {
            places.push(place);
        }
        if !told.is_empty() {
            told.push_str("; ");
        }
        told.push_str(&sentence(ch, woven, wait));
    }
    sort_short(&mut places, |a, b| {
        (a.line, a.column).cmp(&(b.line, b.column))
    });
    let place = if places.is_empty() {
        own_place(set, ch, woven, &chain)
    } else {
        places.remove(0)
    };
    Fault {
        code: "contradictory-waits",
        place,
        found: format!(
            "these waits go round in a circle, {} s short: {told}",
            short(found.short)
        ),
        allowed: String::from("take one of the ties out, or give it less lag"),
        help: None,
        related: places,
    }
}

/// Where a tie stands in the file.
fn written(set: &Set, ch: &Choreography, row: usize, tie: usize) -> Option<Place> {
    let action = set.action(ch.rows.get(row)?.id)?;
    Some(action.ties.get(tie)?.place.clone())
}

fn own_place(set: &Set, ch: &Choreography, woven: &Woven, chain: &[&Wait]) -> Place {
    chain
        .iter()
        .filter_map(|w| woven.blocks.get(w.to.block)?.row)
        .find_map(|row| set.action(ch.rows.get(row)?.id))
        .map_or_else(Place::default, |a| a.place.clone())
}

/// "3's cut waits for 4's screen to be set".
fn sentence(ch: &Choreography, woven: &Woven, wait: &Wait) -> String {
    let (mine, theirs) = (
        label(ch, woven, wait.to.block),
        label(ch, woven, wait.from.block),
    );
    match &wait.why {
        Why::OwnOrder => format!("{mine} comes after {theirs}"),
        Why::Ball => format!("{mine} waits for the ball from {theirs}"),
        Why::Opening => format!("{mine} waits for its beat, which opens with {theirs}"),
        Why::Feet { screener } => format!("{mine} waits for the feet of {}", screener.number()),
        Why::Stays { cutter } => format!("{mine} stays until {} is by", cutter.number()),
        Why::Receiver | Why::Stride => format!("{mine} and {theirs} meet at the catch"),
        Why::Standing => format!("{mine} comes with {theirs}"),
        Why::Shut => format!("{mine} shuts behind {theirs}"),
        Why::Follows => format!("{mine} follows {theirs}"),
        Why::Exchange => format!("{mine} and {theirs} meet at the exchange"),
        Why::Written { .. } => format!("{mine} is tied to {theirs}"),
    }
}

fn label(ch: &Choreography, woven: &Woven, block: usize) -> String {
    let block = woven.blocks.get(block);
    let row = block.and_then(|b| b.row).and_then(|r| ch.rows.get(r));
    match (row, block.and_then(|b| b.who)) {
        (Some(row), _) => format!("{}'s {}", row.who.number(), row.verb.name()),
        (None, Some(who)) => format!("{}'s screen", who.number()),
        (None, None) => String::from("the start"),
    }
}

/// Hundredths of a second, without float formatting.
fn short(ticks: i64) -> String {
    let hundredths = crate::math::round(ticks as f64 / TICKS * 100.0) as i64;
    format!("{}.{:02}", hundredths / 100, hundredths % 100)
}
