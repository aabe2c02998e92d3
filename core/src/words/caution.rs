//! What must be said wherever a set asks for it.

use crate::athlete::Level;
use crate::court::SpotName;
use crate::math::Listed;
use crate::set::{Action, Family, Kind, PlayerId, Set, SetPlace, Target, Verb};
use crate::voice::messages::caution as m;
use crate::voice::{Text, Voice};
use alloc::vec::Vec;

/// The cautions that apply to `set`, in the order in which they are printed; reads count too.
/// Empty where nothing calls for one.
#[must_use]
pub fn cautions(set: &Set, voice: Voice) -> Vec<&'static str> {
    let mut actions: Vec<&Action> = set.beats.iter().flat_map(|b| &b.actions).listed();
    let mut reads: Vec<_> = set.reads.iter().listed();
    while let Some(read) = reads.pop() {
        actions.extend(read.beats.iter().flat_map(|b| &b.actions));
        reads.extend(&read.reads);
    }
    let any = |test: fn(&Action) -> bool| actions.iter().any(|a| test(a));
    let screens = any(|a| a.verb == Verb::Screen);
    let mut out = Vec::new();
    let mut say = |applies: bool, words: Text| {
        if applies {
            out.push(voice.word(words));
        }
    };
    say(screens, m::STILL);
    say(screens, m::LIMBS);
    say(screens, m::HARD);
    say(any(blind), m::BLIND);
    say(any(gate), m::GATE);
    say(under_the_ring(&actions) > 1, m::CROSS);
    say(any(|a| a.verb == Verb::Shot), m::LAND);
    say(any(|a| a.kind == Some(Kind::Lob)), m::LOB);
    match set.level {
        Level::U12 => say(any(over_12), m::U12),
        Level::U14 => say(any(|a| blind(a) || gate(a)), m::U14),
        _ => {}
    }
    if !out.is_empty() {
        out.push(voice.word(m::COACH));
    }
    out
}

fn gate(a: &Action) -> bool {
    a.kind == Some(Kind::Gate)
}

/// Set where the screened defender cannot see it.
fn blind(a: &Action) -> bool {
    let blind = [
        Kind::Back,
        Kind::Rip,
        Kind::Hammer,
        Kind::Flare,
        Kind::BackOnTheRoller,
    ];
    a.kind.is_some_and(|k| blind.contains(&k))
}

/// More than a screen away, which is what players under 12 are taught. Common practice, no source.
fn over_12(a: &Action) -> bool {
    a.verb == Verb::Screen && a.kind != Some(Kind::Away)
}

/// How many players run to the ring.
fn under_the_ring(actions: &[&Action]) -> usize {
    let runs_in = |a: &Action| {
        let rim = [SpotName::Rim, SpotName::LowPaint];
        let to_rim = matches!(&a.to, Some(Target::Place(SetPlace::Spot { spot, .. })) if rim.contains(&spot.name));
        a.verb == Verb::Cut && (to_rim || a.kind.is_some_and(|k| k.row().family == Family::Rim))
    };
    PlayerId::ALL
        .iter()
        .filter(|who| actions.iter().any(|a| runs_in(a) && a.who.contains(who)))
        .count()
}
