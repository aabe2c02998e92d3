//! One action as one sentence.

use super::phrases::{self, fill};
use super::place::Told;
use super::{names, tie};
use crate::athlete::Pace;
use crate::court::Court;
use crate::math::Point;
use crate::set::{Action, ActionId, Edge, Kind, OffSide, PlayerId, Set, Target, Verb, Via};
use crate::timeline::{TimedAction, Timeline};
use alloc::string::String;
use alloc::vec::Vec;

/// Who catches faster than this does so on the run, m/s. Common practice, no source.
const RUNNING: f64 = 2.0;

/// The sentence of an action; the author's words where they wrote some. With a timeline it also
/// says who waits, and where a pass is caught. Empty where the set has no such action.
#[must_use]
pub fn action(set: &Set, timeline: Option<&Timeline>, id: ActionId) -> String {
    let Some(action) = set.action(id) else {
        return String::new();
    };
    if let Some(say) = &action.say {
        return say.clone();
    }
    let teller = Teller {
        set,
        court: set.floor(),
        action,
        timed: timeline.and_then(|t| t.actions().iter().find(|a| a.id == id)),
        timeline,
    };
    let mut out = teller.sentence();
    out.push_str(&tie::clause(set, action));
    out.push('.');
    out
}

/// What a kind of action is called: the trade's word, or a plain one where that carries a name.
#[must_use]
pub fn kind(kind: Kind) -> &'static str {
    phrases::kind(kind)
}

struct Teller<'a> {
    set: &'a Set,
    court: Court,
    action: &'a Action,
    timed: Option<&'a TimedAction>,
    timeline: Option<&'a Timeline>,
}

impl Teller<'_> {
    fn sentence(&self) -> String {
        let a = self.action;
        let who = names(a.who.iter().copied());
        let several = usize::from(a.who.len() > 1);
        let whom = a.receiver().map(|p| names([p])).unwrap_or_default();
        let one_of = |verbs: [&'static str; 2]| verbs.get(several).copied().unwrap_or_default();
        match a.verb {
            Verb::Cut | Verb::Dribble => self.moves(&who),
            Verb::Screen => {
                let what = with_article(a.kind.map_or(phrases::SCREEN, phrases::kind));
                let mut out = fill(one_of(phrases::SETS), &[("who", &who), ("what", &what)]);
                if !a.for_whom.is_empty() {
                    let whom = names(a.for_whom.iter().copied());
                    out.push_str(&fill(phrases::FOR, &[("whom", &whom)]));
                }
                out.push_str(&self.located());
                out
            }
            Verb::Pass => {
                let verb = a.kind.map_or_else(|| String::from(phrases::PASSES), pass);
                let parts = [
                    ("who", who.as_str()),
                    ("verb", &verb),
                    ("whom", &whom),
                    ("where", &self.caught()),
                ];
                fill(phrases::PASS_TO, &parts)
            }
            Verb::Handoff => {
                let keeps = a.kind == Some(Kind::Keep);
                let template = if keeps {
                    phrases::KEEPS
                } else {
                    phrases::HAND_OFF
                };
                let parts = [
                    ("who", who.as_str()),
                    ("whom", &whom),
                    ("where", &self.located()),
                ];
                fill(template, &parts)
            }
            Verb::Shot => said(&who, phrases::shot_verb(a.kind)),
            Verb::Hold => said(&who, one_of(phrases::hold_verb(a.kind))),
            Verb::Fake => {
                let mut out = said(&who, one_of(phrases::fake_verb(a.kind, a.of)));
                if !whom.is_empty() {
                    out.push_str(&fill(phrases::AT_WHOM, &[("whom", &whom)]));
                }
                out
            }
        }
    }

    fn moves(&self, who: &str) -> String {
        let a = self.action;
        let mut rest = self.verb();
        let screeners = self.screeners();
        let told = names(screeners.iter().copied());
        let gate = self.gate(&screeners);
        if !screeners.is_empty() {
            let template = match (gate, a.side) {
                (true, Some(OffSide::Left)) => phrases::ROUND_LEFT,
                (true, Some(OffSide::Right)) => phrases::ROUND_RIGHT,
                (true, _) => phrases::BETWEEN,
                (false, _) => phrases::OFF,
            };
            rest.push_str(&fill(template, &[("screeners", &told)]));
        }
        if let Some(Target::Place(place)) = &a.to {
            rest.push_str(&Told::written(place, &self.court).whither());
        }
        let waits = self.timed.is_some_and(|t| !t.waits.is_empty());
        let first = screeners.first().map(|p| names([*p])).unwrap_or_default();
        match (waits && !screeners.is_empty(), gate) {
            (true, true) => fill(
                phrases::WAITS_FOR_GATE,
                &[("who", who), ("screeners", &told), ("rest", &rest)],
            ),
            (true, false) => fill(
                phrases::WAITS_FOR_FEET,
                &[("who", who), ("screener", &first), ("rest", &rest)],
            ),
            (false, _) => said(who, &rest),
        }
    }

    fn verb(&self) -> String {
        let a = self.action;
        if let Some(kind) = a.kind {
            return phrases::move_verb(kind).map_or_else(
                || {
                    fill(
                        phrases::MAKES,
                        &[("what", &with_article(phrases::kind(kind)))],
                    )
                },
                String::from,
            );
        }
        let plain = match (a.verb, a.pace) {
            (Verb::Dribble, Some(Pace::Sprint)) => "drives",
            (Verb::Dribble, _) => "dribbles",
            (_, Some(Pace::Walk)) => "walks",
            (_, Some(Pace::Jog)) => "jogs",
            (_, Some(Pace::Sprint)) => "sprints",
            _ => "cuts",
        };
        String::from(plain)
    }

    /// Whose screens are used, in running order: those of `off`, then those on the way.
    fn screeners(&self) -> Vec<PlayerId> {
        let way = self.action.via.iter().filter_map(|v| match v {
            Via::Off(off) => Some(off.who),
            Via::Place(_) => None,
        });
        let mut out: Vec<PlayerId> = Vec::new();
        for who in self.action.off.iter().map(|o| o.who).chain(way) {
            if !out.contains(&who) {
                out.push(who);
            }
        }
        out
    }

    /// Whether the screeners are the posts of one gate.
    fn gate(&self, screeners: &[PlayerId]) -> bool {
        screeners.len() > 1
            && self.set.actions().any(|(_, a)| {
                a.verb == Verb::Screen
                    && a.kind == Some(Kind::Gate)
                    && screeners.iter().all(|s| a.who.contains(s))
            })
    }

    /// Where a pass is caught: as written, else as it comes out.
    fn caught(&self) -> String {
        if self.action.at.is_some() {
            return self.located();
        }
        let receiver = self.timed.and_then(|timed| {
            let catch = timed.at(Edge::Catch)?;
            self.timeline?.player(self.action.receiver()?, catch)
        });
        match receiver {
            Some(m) if m.speed > RUNNING => String::from(phrases::ON_THE_RUN),
            Some(m) => Told::of(Point::new(m.x, m.y), &self.court).whereabouts(),
            None => String::new(),
        }
    }

    fn located(&self) -> String {
        let place = self.action.at.as_ref();
        place.map_or_else(String::new, |p| Told::written(p, &self.court).whereabouts())
    }
}

fn said(who: &str, what: &str) -> String {
    fill(phrases::SAID, &[("who", who), ("what", what)])
}

pub(super) fn with_article(what: &str) -> String {
    let mut out = String::from(phrases::article(what));
    out.push(' ');
    out.push_str(what);
    out
}

fn pass(kind: Kind) -> String {
    phrases::pass_verb(kind).map_or_else(
        || {
            fill(
                phrases::THROWS,
                &[("what", &with_article(phrases::kind(kind)))],
            )
        },
        String::from,
    )
}
