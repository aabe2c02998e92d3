//! Why a walk through a set stops.

use super::tie::AT_ONCE;
use super::{count, names, nth_beat, phrases};
use crate::set::{ActionId, Edge, Set, Verb};
use crate::stops::{Stop, Transfer, Waiting, Why};
use crate::voice::Voice;
use crate::voice::messages::{stop as m, tie};
use alloc::string::String;

/// The reasons of a stop, a sentence each: "2 waits for 4’s feet."
#[must_use]
pub fn stop(stop: &Stop, set: &Set, voice: Voice) -> String {
    let teller = Teller { set, voice };
    let mut out = String::new();
    for why in &stop.why {
        if !out.is_empty() {
            out.push(' ');
        }
        out.push_str(&match why {
            Why::Beat(beat) => teller.begins(*beat),
            Why::Ball(ball) => teller.opens(ball),
            Why::Wait(wait) => teller.waits(wait),
        });
    }
    out
}

struct Teller<'a> {
    set: &'a Set,
    voice: Voice,
}

impl Teller<'_> {
    fn begins(&self, beat: usize) -> String {
        let mut out = nth_beat(beat, self.voice);
        if let Some(title) = self.set.beats.get(beat).and_then(|b| b.title.as_deref()) {
            out.push_str(": ");
            out.push_str(title);
        }
        // A title may be a question, or end for itself.
        if !out.ends_with(['.', '!', '?', '…']) {
            out.push('.');
        }
        out
    }

    fn opens(&self, ball: &Transfer) -> String {
        let message = match (ball.handoff, ball.edge) {
            (true, _) => m::HANDS_OFF,
            (false, Edge::Catch) => m::CATCHES,
            (false, _) => m::PASSES,
        };
        let (from, to) = (names([ball.from], self.voice), names([ball.to], self.voice));
        let event = self.voice.fill(message, &[("from", &from), ("to", &to)]);
        self.voice.fill(m::OPENS, &[("event", &event)])
    }

    fn verb(&self, id: ActionId) -> Verb {
        self.set.action(id).map_or(Verb::Cut, |a| a.verb)
    }

    fn waits(&self, wait: &Waiting) -> String {
        let voice = self.voice;
        let who = names(wait.who.iter().copied(), voice);
        let whom = names(wait.awaited.who.iter().copied(), voice);
        let of = count(wait.who.len());
        let mine = [("who", who.as_str()), ("count", of.as_str())];
        let [subject, many] = mine;
        if wait.edge == Edge::Shut && !wait.written {
            return voice.fill(m::SHUTS, &[subject, many, ("whom", &whom)]);
        }
        if self.verb(wait.action) == Verb::Handoff && !wait.written {
            return voice.fill(m::GIVES, &[subject, ("whom", &whom)]);
        }
        if wait.goes.is_none() || wait.written && wait.lag <= -AT_ONCE {
            let when = self.when(wait, &whom);
            return voice.fill(phrases::goes(wait.edge), &[subject, many, ("when", &when)]);
        }
        if wait.awaited.edge == Edge::Set {
            let of = count(wait.awaited.who.len());
            let feet = voice.fill(m::FEET, &[("who", &whom), ("count", &of)]);
            // What the rule book asks for is the own way to the screen, not more waiting.
            let early = wait
                .goes
                .is_some_and(|goes| goes < wait.awaited.t - AT_ONCE);
            let message = if early { m::TIMES } else { m::WAITS_FOR_FEET };
            return voice.fill(message, &[subject, many, ("feet", &feet)]);
        }
        let theirs = self.verb(wait.awaited.action);
        let other = names(wait.awaited.other, voice);
        let event = [("who", whom.as_str()), ("other", &other)];
        let event = voice.fill(phrases::awaited(wait.awaited.edge, theirs), &event);
        let lag = self.seconds(wait.lag);
        let message = if wait.written && wait.lag >= AT_ONCE {
            m::WAITS_ON
        } else {
            m::WAITS
        };
        voice.fill(
            message,
            &[subject, many, ("event", &event), ("seconds", &lag)],
        )
    }

    /// "as 3 starts", "0.2 seconds before 3 starts".
    fn when(&self, wait: &Waiting, whom: &str) -> String {
        let (message, form) = match wait.lag {
            lag if lag <= -AT_ONCE => (tie::BEFORE, "that"),
            lag if lag >= AT_ONCE => (tie::AFTER, "that"),
            _ => (tie::AS, ""),
        };
        let event = phrases::event(wait.awaited.edge, self.verb(wait.awaited.action));
        let other = names(wait.awaited.other, self.voice);
        let of = count(wait.awaited.who.len());
        let parts = [("who", whom), ("count", of.as_str()), ("other", &other)];
        let event = self.voice.form(event, form, &parts);
        let lag = self.seconds(wait.lag);
        self.voice
            .fill(message, &[("seconds", &lag), ("event", &event)])
    }

    fn seconds(&self, lag: f64) -> String {
        let n = self.voice.number(lag.abs(), 1);
        self.voice.fill(tie::SECONDS, &[("n", &n)])
    }
}
