//! What must be said wherever a set asks for it.

use crate::athlete::Level;
use crate::court::SpotName;
use crate::math::Listed;
use crate::set::{Action, Family, Kind, PlayerId, Set, SetPlace, Target, Verb, Via};
use crate::voice::messages::caution as m;
use crate::voice::{Text, Voice};
use alloc::vec::Vec;

/// The cautions that apply to `set`, in the order in which they are printed; reads count too.
/// Empty where nothing calls for one.
#[must_use]
pub fn cautions(set: &Set, voice: Voice) -> Vec<&'static str> {
    let all = actions(set);
    told(set, &all, under_the_ring(&all).len() > 1, voice)
}

/// Those of [`cautions`] that concern `who`: who does it, for whom it is done, who runs by it.
#[must_use]
pub fn cautions_for(set: &Set, who: PlayerId, voice: Voice) -> Vec<&'static str> {
    let mut own = actions(set);
    let runs_in = under_the_ring(&own);
    own.retain(|a| {
        let by = a.off.iter().any(|o| o.who == who) || a.via.iter().any(|v| passes(v, who));
        a.who.contains(&who) || a.for_whom.contains(&who) || a.receiver() == Some(who) || by
    });
    // Whoever runs by a screen may hit it: that one is set with its words.
    let used: Vec<PlayerId> = own
        .iter()
        .filter(|a| a.who.contains(&who))
        .flat_map(|a| &a.off)
        .map(|o| o.who)
        .listed();
    let screens = actions(set).into_iter().filter(|a| {
        let used = a.who.iter().any(|s| used.contains(s));
        a.verb == Verb::Screen && used
    });
    own.extend(screens);
    let cross = runs_in.len() > 1 && runs_in.contains(&who);
    told(set, &own, cross, voice)
}

fn passes(via: &Via, who: PlayerId) -> bool {
    matches!(via, Via::Off(off) if off.who == who)
}

/// Everything anybody may have to do, reads included.
fn actions(set: &Set) -> Vec<&Action> {
    let mut actions: Vec<&Action> = set.beats.iter().flat_map(|b| &b.actions).listed();
    let mut reads: Vec<_> = set.reads.iter().listed();
    while let Some(read) = reads.pop() {
        actions.extend(read.beats.iter().flat_map(|b| &b.actions));
        reads.extend(&read.reads);
    }
    actions
}

/// What `actions` call for; `cross`: whether two runners may meet under the ring.
fn told(set: &Set, actions: &[&Action], cross: bool, voice: Voice) -> Vec<&'static str> {
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
    say(cross, m::CROSS);
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

/// The players who run to the ring.
fn under_the_ring(actions: &[&Action]) -> Vec<PlayerId> {
    let runs_in = |a: &Action| {
        let rim = [SpotName::Rim, SpotName::LowPaint];
        let to_rim = matches!(&a.to, Some(Target::Place(SetPlace::Spot { spot, .. })) if rim.contains(&spot.name));
        a.verb == Verb::Cut && (to_rim || a.kind.is_some_and(|k| k.row().family == Family::Rim))
    };
    PlayerId::ALL
        .into_iter()
        .filter(|who| actions.iter().any(|a| runs_in(a) && a.who.contains(who)))
        .listed()
}
