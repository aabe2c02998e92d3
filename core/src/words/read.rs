//! Reads in words: what decides them, what was seen, which line answers which coverage.

use super::look::{chance, coverage, open};
use super::tale::line;
use super::{distance, measure, names, phrases};
use crate::choice::{Answer, Measure, Seen, ends, hand_ahead};
use crate::court::Side;
use crate::looks::Look;
use crate::set::{Condition, Coverage, Deed, PlayerId, Set};
use crate::voice::messages::read as m;
use crate::voice::{Message, Text, Voice};
use alloc::string::String;

/// What decides a read, to follow an "if": `X3 trails`.
#[must_use]
pub fn condition(condition: &Condition, set: &Set, voice: Voice) -> String {
    match condition {
        Condition::Coverage(coverage) => String::from(voice.word(plays(*coverage))),
        Condition::Does { who, does, side } => {
            voice.fill(deed(*does, *side), &[("x", &defender(*who, voice))])
        }
        Condition::Separation { who, under } => {
            let n = distance(*under, set.court, voice);
            voice.fill(m::WITHIN, &[("x", &defender(*who, voice)), ("n", &n)])
        }
        Condition::LaneClosed { from, to } => {
            let (a, b) = (names([*from], voice), names([*to], voice));
            voice.fill(m::PASS_SHUT, &[("a", &a), ("b", &b)])
        }
    }
}

fn plays(coverage: Coverage) -> Text {
    match coverage {
        Coverage::Chase => m::THEY_CHASE,
        Coverage::Over => m::THEY_OVER,
        Coverage::Through => m::THEY_THROUGH,
        Coverage::Under => m::THEY_UNDER,
        Coverage::TopLock => m::THEY_TOP_LOCK,
        Coverage::Switch => m::THEY_SWITCH,
        Coverage::Show => m::THEY_SHOW,
        Coverage::Drop => m::THEY_DROP,
        Coverage::Ice => m::THEY_ICE,
        Coverage::Blitz => m::THEY_BLITZ,
        Coverage::WeakSideTag => m::THEY_TAG,
    }
}

fn deed(deed: Deed, side: Option<Side>) -> Message {
    match (deed, side) {
        (Deed::Trails, _) => m::TRAILS,
        (Deed::GoesRound, None) => m::GOES_ROUND,
        (Deed::GoesRound, Some(Side::Left)) => m::GOES_ROUND_LEFT,
        (Deed::GoesRound, Some(Side::Right)) => m::GOES_ROUND_RIGHT,
        (Deed::ShootsTheGap, _) => m::SHOOTS_THE_GAP,
        (Deed::TopLocks, _) => m::TOP_LOCKS,
        (Deed::Switches, _) => m::SWITCHES,
        (Deed::StepsOut, _) => m::STEPS_OUT,
        (Deed::Sags, _) => m::SAGS,
        (Deed::TurnsHead, _) => m::LOOKS_AWAY,
        (Deed::StaysLow, _) => m::STAYS_LOW,
    }
}

/// What was seen when a read was asked: `X3 is 0.8 m behind 3.`
#[must_use]
pub fn seen(seen: &Seen, set: &Set, voice: Voice) -> String {
    let far = |metres: f64| distance(metres.abs(), set.court, voice);
    let told = |message, x: PlayerId, man: PlayerId, n: &str, m: &str| {
        let (x, man) = (defender(x, voice), names([man], voice));
        let parts = [("x", x.as_str()), ("man", &man), ("n", n), ("m", m)];
        voice.fill(message, &parts)
    };
    let by = |message, x, man, metres: f64| told(message, x, man, &far(metres), "");
    match seen.measure {
        Measure::Nothing => String::from(voice.word(m::NOTHING)),
        Measure::Plays { coverage: c } => voice.fill(m::PLAYS, &[("coverage", coverage(c, voice))]),
        Measure::Behind { x, man, gap } if gap < 0.0 => by(m::IN_FRONT, x, man, gap),
        Measure::Behind { x, man, gap } => by(m::BEHIND, x, man, gap),
        Measure::Aside { x, man, off } if off < 0.0 => by(m::TO_THE_LEFT, x, man, off),
        Measure::Aside { x, man, off } => by(m::TO_THE_RIGHT, x, man, off),
        Measure::Ahead { x, man, by: n } if n < 0.0 => by(m::FARTHER, x, man, n),
        Measure::Ahead { x, man, by: n } => by(m::NEARER, x, man, n),
        Measure::Between { x, man, gap, .. } if gap <= 0.0 => told(m::NOT_BETWEEN, x, man, "", ""),
        Measure::Between { x, man, gap, off } => told(m::BETWEEN, x, man, &far(gap), &far(off)),
        Measure::Has { x, man } if x == man => told(m::STILL_ON, x, man, "", ""),
        Measure::Has { x, man } => told(m::HAS_TAKEN, x, man, "", ""),
        Measure::Gap { x, man, gap } => by(m::AWAY, x, man, gap),
        Measure::Low { x, man, by: n } if n < 0.0 => by(m::HIGHER, x, man, n),
        Measure::Low { x, man, by: n } => by(m::LOWER, x, man, n),
        Measure::Turned { x, man, by } => told(m::TURNED, x, man, &measure::degrees(by, voice), ""),
        Measure::Lane {
            from,
            to,
            hand,
            margin,
        } => lane((from, to), hand, margin, voice),
    }
}

fn lane(
    (from, to): (PlayerId, PlayerId),
    hand: Option<PlayerId>,
    margin: f64,
    voice: Voice,
) -> String {
    let (a, b) = (names([from], voice), names([to], voice));
    let Some(x) = hand else {
        return voice.fill(m::LANE_FREE, &[("a", &a), ("b", &b)]);
    };
    let message = if margin < 0.0 {
        m::LANE_SHUT
    } else {
        m::LANE_OPEN
    };
    let n = measure::seconds(margin.abs(), 1, voice);
    let x = defender(x, voice);
    voice.fill(message, &[("a", &a), ("b", &b), ("x", &x), ("n", &n)])
}

/// Which line answers a coverage and what it ends in: `If they show: X5 jumps at 3. 5 shoots, open
/// 0.9 s.`
#[must_use]
pub fn answer(answer: &Answer, set: &Set, voice: Voice) -> String {
    let path = &answer.decided.path;
    let parts = [
        (
            "if",
            voice.word(phrases::under(answer.decided.coverage, true)),
        ),
        ("line", &line(set, path, voice)),
        (
            "end",
            &end(
                ends(&answer.looks),
                hand_ahead(&answer.looks, answer.since) > 0.0,
                voice,
            ),
        ),
    ];
    voice.fill(m::ANSWER, &parts)
}

/// What a line ends in, and whether a hand can get to a pass of it: `5 shoots, open 0.9 s.`
#[must_use]
pub fn end(look: Option<&Look>, shut: bool, voice: Voice) -> String {
    let Some(look) = look else {
        return String::from(voice.word(m::NO_END));
    };
    let message = if shut { m::END_SHUT } else { m::END };
    let parts = [("look", chance(look, voice)), ("open", open(look, voice))];
    let parts = parts.each_ref().map(|(name, text)| (*name, text.as_str()));
    voice.fill(message, &parts)
}

/// A defender as people write it: `X4`.
fn defender(who: PlayerId, voice: Voice) -> String {
    let mut out = String::from("X");
    out.push_str(&names([who], voice));
    out
}
