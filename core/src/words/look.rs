//! Looks: what a chance is worth, in words.

use super::{distance, names, phrases};
use crate::defence::Defence;
use crate::looks::{Look, Openness, nearest};
use crate::set::{Coverage, Set};
use crate::timeline::Timeline;
use crate::voice::Voice;
use crate::voice::messages::look as m;
use alloc::string::String;

/// How long it is open: `open 0.9 s`, or that it is contested.
#[must_use]
pub fn open(look: &Look, voice: Voice) -> String {
    if look.contested() {
        return String::from(voice.word(m::CONTESTED));
    }
    voice.fill(m::OPEN, &[("n", &voice.number(look.open, 1))])
}

/// Who has the chance: `2 catches`.
#[must_use]
pub fn chance(look: &Look, voice: Voice) -> String {
    let who = names([look.who], voice);
    voice.fill(phrases::chance(look.chance), &[("who", &who)])
}

/// The class of a separation, after the NBA's public shot dashboards.
#[must_use]
pub fn openness(openness: Openness, voice: Voice) -> &'static str {
    voice.word(phrases::openness(openness))
}

/// A coverage as coaches say it.
#[must_use]
pub fn coverage(coverage: Coverage, voice: Voice) -> &'static str {
    voice.word(phrases::coverage(coverage))
}

/// A look in one or two sentences: `2 catches with X3 2.2 m away: wide open, for 0.9 s.`
#[must_use]
pub fn look(look: &Look, set: &Set, voice: Voice) -> String {
    let far = distance(look.separation, set.court, voice);
    let nearest = look.nearest.map(|p| names([p], voice)).unwrap_or_default();
    let who = chance(look, voice);
    let open = voice.number(look.open, 1);
    let parts = [
        ("look", who.as_str()),
        ("defender", &nearest),
        ("far", &far),
        ("class", openness(look.openness(), voice)),
        ("n", &open),
    ];
    let message = match (look.nearest, look.contested()) {
        (None, _) => m::LOOK_ALONE,
        (Some(_), true) => m::LOOK_CONTESTED,
        (Some(_), false) => m::LOOK_OPEN,
    };
    let mut out = voice.fill(message, &parts);
    if look.lane.is_some_and(|lane| lane < 0.0) {
        out.push(' ');
        out.push_str(voice.word(m::IN_REACH));
    }
    out
}

/// Who is nearest to the ball at `t`, for those who cannot see it: `X1 is 1.3 m from the ball.` Empty
/// while nobody holds it.
#[must_use]
pub fn guarded(timeline: &Timeline, defence: &Defence, set: &Set, t: f64, voice: Voice) -> String {
    let holder = timeline.ball(t).holder;
    let Some(at) = holder.and_then(|who| timeline.player(who, t)) else {
        return String::new();
    };
    let (nearest, far) = nearest(defence, at.at(), t);
    nearest.map_or_else(String::new, |who| {
        let far = distance(far, set.court, voice);
        let who = names([who], voice);
        voice.fill(m::GUARDED, &[("defender", &who), ("far", &far)])
    })
}
