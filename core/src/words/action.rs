//! One action as one sentence.

use super::place::Told;
use super::{count, names, phrases, tie};
use crate::court::Court;
use crate::math::Point;
use crate::set::{Action, ActionId, Edge, Kind, OffSide, PlayerId, Set, Target, Verb, Via};
use crate::timeline::{TimedAction, Timeline};
use crate::voice::messages::action as m;
use crate::voice::{Message, Voice};
use alloc::string::String;
use alloc::vec::Vec;

/// Who catches faster than this does so on the run, m/s. Common practice, no source.
const RUNNING: f64 = 2.0;

/// The sentence of an action; the author's words where they wrote some. With a timeline it also
/// says who waits, and where a pass is caught. Empty where the set has no such action.
#[must_use]
pub fn action(set: &Set, timeline: Option<&Timeline>, id: ActionId, voice: Voice) -> String {
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
        voice,
    };
    let mut out = teller.sentence();
    out.push_str(&tie::clause(set, action, voice));
    out.push('.');
    out
}

/// What is done, without its full stop: also of an action that stands in a read.
#[cfg(feature = "authoring")]
pub(super) fn deed(set: &Set, action: &Action, voice: Voice) -> String {
    let teller = Teller {
        set,
        court: set.floor(),
        action,
        timed: None,
        timeline: None,
        voice,
    };
    teller.sentence()
}

/// What a kind of action is called: the trade's word, or a plain one where that carries a name.
#[must_use]
pub fn kind(kind: Kind, voice: Voice) -> String {
    voice.form(phrases::kind(kind), "", &[])
}

/// The same with its article: `a pin-down`.
pub(super) fn a_kind(kind: Kind, voice: Voice) -> String {
    voice.form(phrases::kind(kind), "a", &[])
}

pub(super) struct Teller<'a> {
    pub(super) set: &'a Set,
    pub(super) court: Court,
    pub(super) action: &'a Action,
    pub(super) timed: Option<&'a TimedAction>,
    pub(super) timeline: Option<&'a Timeline>,
    pub(super) voice: Voice,
}

impl Teller<'_> {
    fn sentence(&self) -> String {
        let (a, voice) = (self.action, self.voice);
        let who = names(a.who.iter().copied(), voice);
        let several = count(a.who.len());
        let whom = a.receiver().map(|p| names([p], voice)).unwrap_or_default();
        let by_count = |message| voice.fill(message, &[("count", &several)]);
        match a.verb {
            Verb::Cut | Verb::Dribble => self.moves(&who),
            Verb::Screen => {
                let plain = || voice.form(m::SCREEN, "a", &[]);
                let parts = [
                    ("who", who.as_str()),
                    ("count", &several),
                    ("what", &a.kind.map_or_else(plain, |k| a_kind(k, voice))),
                    ("for", &self.for_whom()),
                    ("where", &self.located()),
                ];
                voice.fill(m::SETS, &parts)
            }
            Verb::Pass => {
                let plain = || String::from(voice.word(m::PASSES));
                let parts = [
                    ("who", who.as_str()),
                    ("verb", &a.kind.map_or_else(plain, |k| pass(k, voice))),
                    ("whom", &whom),
                    ("where", &self.caught()),
                ];
                voice.fill(m::PASS_TO, &parts)
            }
            Verb::Handoff => {
                let keeps = a.kind == Some(Kind::Keep);
                let message = if keeps { m::KEEPS } else { m::HANDS_OFF };
                let parts = [
                    ("who", who.as_str()),
                    ("whom", &whom),
                    ("where", &self.located()),
                ];
                voice.fill(message, &parts)
            }
            Verb::Shot => self.said(&who, voice.word(phrases::shoots(a.kind))),
            Verb::Hold => self.said(&who, &by_count(phrases::holds(a.kind))),
            Verb::Fake => {
                let mut what = by_count(phrases::fakes(a.kind, a.of));
                if !whom.is_empty() {
                    what.push(' ');
                    what.push_str(&voice.fill(m::TO_WHOM, &[("whom", &whom)]));
                }
                self.said(&who, &what)
            }
        }
    }

    fn moves(&self, who: &str) -> String {
        let voice = self.voice;
        let screeners = self.screeners();
        let told = names(screeners.iter().copied(), voice);
        let gate = self.gate(&screeners);
        let rest = self.way(&self.verb());
        let waits = self.timed.is_some_and(|t| !t.waits.is_empty());
        let first = screeners.first().map(|p| names([*p], voice));
        match (first.filter(|_| waits), gate) {
            (Some(_), true) => voice.fill(
                m::WAITS_FOR_GATE,
                &[("who", who), ("screeners", &told), ("rest", &rest)],
            ),
            (Some(first), false) => voice.fill(
                m::WAITS_FOR_FEET,
                &[("who", who), ("screener", &first), ("rest", &rest)],
            ),
            (None, _) => self.said(who, &rest),
        }
    }

    /// What `verb` is done off, and where to.
    pub(super) fn way(&self, verb: &str) -> String {
        let (a, voice) = (self.action, self.voice);
        let screeners = self.screeners();
        let to = match &a.to {
            Some(Target::Place(place)) => Told::written(place, &self.court).whither(voice),
            _ => String::new(),
        };
        let off = if screeners.is_empty() {
            String::new()
        } else {
            let told = names(screeners.iter().copied(), voice);
            let parts = [
                ("screeners", told.as_str()),
                ("count", &count(screeners.len())),
            ];
            voice.fill(self.off(self.gate(&screeners)), &parts)
        };
        voice.fill(m::WAY, &[("verb", verb), ("off", &off), ("to", &to)])
    }

    /// How screeners are used.
    fn off(&self, gate: bool) -> Message {
        match (gate, self.action.side) {
            (true, Some(OffSide::Left)) => m::ROUND_LEFT,
            (true, Some(OffSide::Right)) => m::ROUND_RIGHT,
            (true, _) => m::BETWEEN,
            (false, _) => m::OFF,
        }
    }

    fn verb(&self) -> String {
        let voice = self.voice;
        match (phrases::moves(self.action), self.action.kind) {
            (None, Some(kind)) => voice.fill(m::MAKES, &[("what", &a_kind(kind, voice))]),
            (verb, _) => verb.map_or_else(String::new, |v| String::from(voice.word(v))),
        }
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

    pub(super) fn for_whom(&self) -> String {
        let whom = &self.action.for_whom;
        if whom.is_empty() {
            return String::new();
        }
        let whom = names(whom.iter().copied(), self.voice);
        self.voice.fill(m::FOR, &[("whom", &whom)])
    }

    /// Where a pass is caught: as written, else as it comes out.
    pub(super) fn caught(&self) -> String {
        if self.action.at.is_some() {
            return self.located();
        }
        let receiver = self.timed.and_then(|timed| {
            let catch = timed.at(Edge::Catch)?;
            self.timeline?.player(self.action.receiver()?, catch)
        });
        match receiver {
            Some(m) if m.speed > RUNNING => String::from(self.voice.word(m::ON_THE_RUN)),
            Some(m) => Told::of(Point::new(m.x, m.y), &self.court).whereabouts(self.voice),
            None => String::new(),
        }
    }

    pub(super) fn located(&self) -> String {
        let place = self.action.at.as_ref();
        place.map_or_else(String::new, |p| {
            Told::written(p, &self.court).whereabouts(self.voice)
        })
    }

    fn said(&self, who: &str, what: &str) -> String {
        self.voice.fill(m::SAID, &[("who", who), ("what", what)])
    }
}

fn pass(kind: Kind, voice: Voice) -> String {
    phrases::passes(kind).map_or_else(
        || voice.fill(m::THROWS, &[("what", &a_kind(kind, voice))]),
        |verb| String::from(voice.word(verb)),
    )
}
