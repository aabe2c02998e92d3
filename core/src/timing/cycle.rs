//! A contradiction in a coach's words: the chain of waits.

use super::block::{Wait, Why, Woven};
use super::network::{Contradiction, TICKS};
use crate::choreography::Choreography;
use crate::fault::{Fault, Place};
use crate::math::{Listed, sort_short};
use crate::set::{PlayerId, Set};
use crate::voice::messages::fault as m;
use crate::voice::{Message, Said};
use alloc::format;
use alloc::string::{String, ToString};
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
    let mut told: Option<Said> = None;
    for wait in &chain {
        if let Why::Written { row, tie } = wait.why
            && let Some(place) = written(set, ch, row, tie)
            && !places.contains(&place)
        {
            places.push(place);
        }
        let next = sentence(ch, woven, wait);
        told = Some(match told {
            Some(before) => m::THEN.with("first", before).with("then", next),
            None => next,
        });
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
        found: m::CIRCLE
            .with("n", short(found.short))
            .with("waits", told.unwrap_or_else(|| "".into())),
        allowed: Some(m::TAKE_OUT.into()),
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
fn sentence(ch: &Choreography, woven: &Woven, wait: &Wait) -> Said {
    let (mine, theirs) = (
        label(ch, woven, wait.to.block),
        label(ch, woven, wait.from.block),
    );
    let both = |message: Message| message.with("mine", mine.clone()).with("theirs", theirs);
    let who = |message: Message, who: PlayerId| {
        let said = message.with("mine", mine.clone());
        said.with("who", who.number().to_string())
    };
    match &wait.why {
        Why::OwnOrder => both(m::COMES_AFTER),
        Why::Ball => both(m::WAITS_FOR_BALL),
        Why::Opening => both(m::WAITS_FOR_BEAT),
        Why::Feet { screener } => who(m::WAITS_FOR_FEET, *screener),
        Why::Stays { cutter } => who(m::STAYS_UNTIL, *cutter),
        Why::Receiver | Why::Stride => both(m::MEET_AT_CATCH),
        Why::Standing => both(m::COMES_WITH),
        Why::Shut => both(m::SHUTS_BEHIND),
        Why::Follows => both(m::FOLLOWS),
        Why::Exchange => both(m::MEET_AT_EXCHANGE),
        Why::Written { .. } => both(m::IS_TIED),
    }
}

fn label(ch: &Choreography, woven: &Woven, block: usize) -> Said {
    let block = woven.blocks.get(block);
    let row = block.and_then(|b| b.row).and_then(|r| ch.rows.get(r));
    match (row, block.and_then(|b| b.who)) {
        (Some(row), _) => m::WHOSE
            .with("who", row.who.number().to_string())
            .with("verb", row.verb.name()),
        (None, Some(who)) => m::WHOSE_SCREEN.with("who", who.number().to_string()),
        (None, None) => m::THE_START.into(),
    }
}

/// Hundredths of a second, without float formatting.
fn short(ticks: i64) -> String {
    let hundredths = crate::math::round(ticks as f64 / TICKS * 100.0) as i64;
    format!("{}.{:02}", hundredths / 100, hundredths % 100)
}
