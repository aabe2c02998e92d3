//! Looks: what a chance is worth, in words.

use super::phrases::{self, fill};
use super::{distance, names, seconds};
use crate::defence::Defence;
use crate::looks::{Look, Openness};
use crate::math;
use crate::set::{Coverage, PlayerId, Set};
use crate::timeline::Timeline;
use alloc::string::String;

/// How long it is open: `open 0.9 s`, or that it is contested.
#[must_use]
pub fn open(look: &Look) -> String {
    if look.contested() {
        return String::from(phrases::CONTESTED);
    }
    fill(phrases::OPEN, &[("n", &seconds(look.open))])
}

/// Who has the chance: `2 catches`.
#[must_use]
pub fn chance(look: &Look) -> String {
    fill(phrases::chance(look.chance), &[("who", &names([look.who]))])
}

/// The class of a separation, after the NBA's public shot dashboards.
#[must_use]
pub fn openness(openness: Openness) -> &'static str {
    phrases::openness(openness)
}

/// A coverage as coaches say it.
#[must_use]
pub fn coverage(coverage: Coverage) -> &'static str {
    phrases::coverage(coverage)
}

/// A look in one or two sentences: `2 catches with X3 2.2 m away: wide open, for 0.9 s.`
#[must_use]
pub fn look(look: &Look, set: &Set) -> String {
    let far = distance(look.separation, set.court);
    let nearest = look.nearest.map(|p| names([p])).unwrap_or_default();
    let who = chance(look);
    let open = seconds(look.open);
    let parts = [
        ("look", who.as_str()),
        ("defender", &nearest),
        ("far", &far),
        ("class", openness(look.openness())),
        ("n", &open),
    ];
    let template = match (look.nearest, look.contested()) {
        (None, _) => phrases::LOOK_ALONE,
        (Some(_), true) => phrases::LOOK_CONTESTED,
        (Some(_), false) => phrases::LOOK_OPEN,
    };
    let mut out = fill(template, &parts);
    if look.lane.is_some_and(|lane| lane < 0.0) {
        out.push_str(phrases::IN_REACH);
    }
    out
}

/// Who is nearest to the ball at `t`, for those who cannot see it: `X1 is 1.3 m from the ball.` Empty
/// while nobody holds it.
#[must_use]
pub fn guarded(timeline: &Timeline, defence: &Defence, set: &Set, t: f64) -> String {
    let holder = timeline.ball(t).holder;
    let Some(at) = holder.and_then(|who| timeline.player(who, t)) else {
        return String::new();
    };
    let away = |who: PlayerId| Some((who, math::distance(defence.state(who, t)?.at(), at.at())));
    let all = PlayerId::ALL.into_iter().filter_map(away);
    let nearest = all.reduce(|a, b| if b.1 < a.1 { b } else { a });
    nearest.map_or_else(String::new, |(who, far)| {
        let far = distance(far, set.court);
        fill(
            phrases::GUARDED,
            &[("defender", &names([who])), ("far", &far)],
        )
    })
}
