//! Role cards in words, said to the player.

use super::action::{Teller, a_kind};
use super::measure;
use super::phrases::{self, card as say};
use super::place::Told;
use super::{condition, names};
use crate::card::{Call, Card, Cue, Doing, Eyes, Purpose, Step};
use crate::court::Court;
use crate::math::{Listed, Point};
use crate::set::{Action, ActionId, Edge, Kind, PlayerId, Set, Verb};
use crate::timeline::{TimedAction, Timeline};
use crate::voice::messages::{action as told, card as m, measure as unit};
use crate::voice::{Message, Voice};
use alloc::string::String;
use alloc::vec::Vec;

/// Shorter than this nobody can tell, seconds.
const AT_ONCE: f64 = 0.1;

/// A card in words.
#[derive(Clone, Debug, PartialEq)]
pub struct CardWords {
    /// `2: shooter`.
    pub title: String,
    /// What the player is, as in the title.
    pub part: String,
    /// Where the player starts.
    pub begin: String,
    /// As many as the card has steps.
    pub steps: Vec<StepWords>,
}

/// A step in sentences; what it has nothing of is empty.
#[derive(Clone, Debug, PartialEq)]
pub struct StepWords {
    /// From when until when: `1.1–3.4 s`.
    pub time: String,
    /// What to do.
    pub text: String,
    /// What to wait for.
    pub wait: String,
    /// What to look at: `Eyes: the ball.`
    pub look: String,
    /// What it is good for.
    pub why: String,
    /// What to do instead, a sentence a read.
    pub reads: Vec<String>,
}

/// What a list of cards is called.
#[must_use]
pub fn cards(voice: Voice) -> &'static str {
    voice.word(m::CARDS)
}

/// A card of this set in words. `timeline` was built from `set`.
#[must_use]
pub fn card(card: &Card, set: &Set, timeline: &Timeline, voice: Voice) -> CardWords {
    let speaker = Speaker {
        who: card.who,
        set,
        timeline,
        court: set.floor(),
        voice,
    };
    let mut part = String::new();
    for (n, one) in card.parts.iter().enumerate() {
        if n > 0 {
            part.push(' ');
            part.push_str(voice.word(unit::AND));
            part.push(' ');
        }
        part.push_str(voice.word(say::part(*one)));
    }
    let holds = set.first_holder() == Some(card.who);
    let begin = if holds { m::BEGIN_WITH_BALL } else { m::BEGIN };
    let title = [("who", speaker.name(card.who)), ("parts", part.clone())];
    CardWords {
        title: speaker.fill(m::TITLE, &title),
        part,
        begin: speaker.fill(begin, &[("where", speaker.whereabouts(card.who, 0.0))]),
        steps: card.steps.iter().map(|s| speaker.step(s)).listed(),
    }
}

/// Speaks to one player.
struct Speaker<'a> {
    who: PlayerId,
    set: &'a Set,
    timeline: &'a Timeline,
    court: Court,
    voice: Voice,
}

impl Speaker<'_> {
    fn step(&self, step: &Step) -> StepWords {
        let mut time = self.voice.number(step.start, 1);
        time.push('–');
        time.push_str(&self.time(step.end));
        StepWords {
            time,
            text: sentence(&self.deed(step)),
            wait: self.waits(step),
            look: self.look(step.eyes),
            why: step.purpose.map_or_else(String::new, |p| self.why(step, p)),
            reads: step.calls.iter().filter_map(|c| self.call(c)).listed(),
        }
    }

    fn row(&self, index: usize) -> Option<&TimedAction> {
        self.timeline.actions().get(index)
    }

    fn name(&self, who: PlayerId) -> String {
        names([who], self.voice)
    }

    fn fill(&self, message: Message, parts: &[(&str, String)]) -> String {
        let parts: Vec<(&str, &str)> = parts.iter().map(|(n, text)| (*n, text.as_str())).listed();
        self.voice.fill(message, &parts)
    }

    fn time(&self, t: f64) -> String {
        measure::seconds(t, 1, self.voice)
    }

    fn whereabouts(&self, who: PlayerId, t: f64) -> String {
        let state = self.timeline.player(who, t);
        let at = state.map(|m| Point::new(m.x, m.y));
        at.map_or_else(String::new, |p| {
            Told::of(p, &self.court).whereabouts(self.voice)
        })
    }

    // --- what is done --------------------------------------------------------------------------

    fn deed(&self, step: &Step) -> String {
        let (index, message) = match step.what {
            Doing::Does(index) => {
                let told = self.row(index).map(|row| self.does(row));
                return told.unwrap_or_default();
            }
            Doing::Stays => {
                let at = self.whereabouts(self.who, step.start);
                return self.fill(m::HOLD_PLACE, &[("where", at)]);
            }
            Doing::Catches(index) => (index, m::CATCH),
            Doing::Takes(index) => (index, m::TAKE),
        };
        let Some(row) = self.row(index) else {
            return String::new();
        };
        let written = self.set.action(row.id);
        let at = written.map_or_else(String::new, |a| self.teller(a, Some(row)).caught());
        self.fill(message, &[("whom", self.name(row.who)), ("where", at)])
    }

    fn does(&self, row: &TimedAction) -> String {
        let Some(action) = self.set.action(row.id) else {
            return String::new();
        };
        if let Some(own) = &action.say {
            return own.clone();
        }
        let taker = row.verb == Verb::Handoff && action.actor() != Some(row.who);
        if taker {
            let from = names(action.actor(), self.voice);
            return self.fill(m::COME, &[("whom", from)]);
        }
        self.asks(action, Some(row))
    }

    fn teller<'b>(&'b self, action: &'b Action, timed: Option<&'b TimedAction>) -> Teller<'b> {
        Teller {
            set: self.set,
            court: self.court,
            action,
            timed,
            timeline: timed.map(|_| self.timeline),
            voice: self.voice,
        }
    }

    /// What an action asks of this player, without a full stop.
    fn asks(&self, action: &Action, timed: Option<&TimedAction>) -> String {
        let teller = self.teller(action, timed);
        let whom = names(action.receiver(), self.voice);
        let word = |text| String::from(self.voice.word(text));
        match action.verb {
            Verb::Cut | Verb::Dribble => {
                let made = |kind| self.fill(m::MAKE, &[("what", a_kind(kind, self.voice))]);
                let verb = say::way(action).map(word);
                let verb = verb.or_else(|| action.kind.map(made));
                teller.way(&verb.unwrap_or_default())
            }
            Verb::Screen => self.screen(action, &teller),
            Verb::Pass => {
                let thrown = |kind| self.fill(m::THROW, &[("what", a_kind(kind, self.voice))]);
                let verb = say::pass(action.kind).map(word);
                let verb = verb.or_else(|| action.kind.map(thrown));
                let parts = [
                    ("verb", verb.unwrap_or_default()),
                    ("whom", whom),
                    ("where", teller.caught()),
                ];
                self.fill(m::PASS, &parts)
            }
            Verb::Handoff => {
                let keeps = action.kind == Some(Kind::Keep);
                let message = if keeps { m::KEEP } else { m::HAND_OFF };
                self.fill(message, &[("whom", whom), ("where", teller.located())])
            }
            Verb::Shot | Verb::Hold | Verb::Fake => {
                let mut out = word(say::still(action));
                if action.verb == Verb::Fake && !whom.is_empty() {
                    out.push(' ');
                    out.push_str(&self.fill(told::TO_WHOM, &[("whom", whom)]));
                }
                out
            }
        }
    }

    fn screen(&self, action: &Action, teller: &Teller<'_>) -> String {
        let plain = || self.voice.form(told::SCREEN, "a", &[]);
        let what = action.kind.map(|kind| a_kind(kind, self.voice));
        let others = action.who.iter().copied().filter(|p| *p != self.who);
        let others = names(others, self.voice);
        let message = if others.is_empty() {
            m::SET
        } else {
            m::SET_WITH
        };
        let parts = [
            ("others", others),
            ("what", what.unwrap_or_else(plain)),
            ("for", teller.for_whom()),
            ("where", teller.located()),
        ];
        self.fill(message, &parts)
    }

    // --- what is waited for --------------------------------------------------------------------

    /// A sentence a wait; several who do one thing are one.
    fn waits(&self, step: &Step) -> String {
        let cues = &step.cues;
        let Doing::Does(mine) = step.what else {
            return String::new();
        };
        let mut out = String::new();
        let mut told: Vec<&Cue> = Vec::new();
        for cue in cues {
            let same = |c: &Cue| {
                let id = |c: &Cue| self.row(c.action).map(|a| a.id);
                (c.mine, c.edge, id(c)) == (cue.mine, cue.edge, id(cue)) && c.of == cue.of
            };
            if told.iter().any(|c| same(c)) {
                continue;
            }
            told.push(cue);
            let who: Vec<PlayerId> = cues.iter().filter(|c| same(c)).map(|c| c.who).listed();
            if !out.is_empty() {
                out.push(' ');
            }
            out.push_str(&self.wait(mine, cue, &who));
        }
        out
    }

    /// One wait of the own row `mine`, for the instant of `who`.
    fn wait(&self, mine: usize, cue: &Cue, who: &[PlayerId]) -> String {
        let Some(row) = self.row(cue.action) else {
            return String::new();
        };
        let told = names(who.iter().copied(), self.voice);
        let written = self.timeline.ties().iter().any(|t| {
            let between = (t.from.action, t.to.action) == (cue.action, mine);
            t.written && between && (t.to.t - cue.t - cue.lag).abs() < AT_ONCE
        });
        let mine = self.row(mine);
        let gives = mine.is_some_and(|a| a.verb == Verb::Handoff);
        let feet = cue.edge == Edge::Set && (cue.mine == Edge::PassBy || row.verb == Verb::Handoff);
        if cue.mine == Edge::Release && gives && !written {
            return self.fill(m::GIVE, &[("who", told)]);
        }
        if cue.mine == Edge::Catch && !written {
            return self.fill(m::MEET, &[("who", told)]);
        }
        let event = self.event(mine, cue, row, who);
        if feet {
            return self.fill(m::WAIT_UNTIL, &[("event", event)]);
        }
        let message = match cue.lag {
            lag if written && lag <= -AT_ONCE => m::BEFORE,
            lag if written && lag >= AT_ONCE => m::AFTER,
            _ if cue.mine == Edge::Start => m::ONCE,
            _ => m::AS,
        };
        let parts = [("time", self.time(cue.lag.abs())), ("event", event.clone())];
        let when = self.fill(message, &parts);
        self.fill(say::wait(cue.mine), &[("when", when), ("event", event)])
    }

    fn event(
        &self,
        mine: Option<&TimedAction>,
        cue: &Cue,
        row: &TimedAction,
        who: &[PlayerId],
    ) -> String {
        let written = self.set.action(row.id);
        let other = cue.of.or_else(|| written.and_then(Action::receiver));
        let other = match other {
            Some(p) if p == self.who => String::from(self.voice.word(m::YOU)),
            other => names(other, self.voice),
        };
        let follows = mine.is_some_and(|a| a.kind == Some(Kind::Fill)) && cue.mine == Edge::Start;
        let parts = [
            ("who", names(who.iter().copied(), self.voice)),
            ("count", super::count(who.len())),
            ("other", other),
            ("where", self.whereabouts(row.who, cue.t)),
        ];
        let seen = match cue.edge {
            _ if cue.mine == Edge::Shut => Some(m::IS_THROUGH),
            Edge::Start if follows => Some(m::HAS_LEFT),
            edge => say::seen(edge, row.verb),
        };
        if let Some(message) = seen {
            return self.fill(message, &parts);
        }
        let parts: Vec<(&str, &str)> = parts.iter().map(|(n, text)| (*n, text.as_str())).listed();
        self.voice
            .form(phrases::event(cue.edge, row.verb), "that", &parts)
    }

    // --- eyes, purpose, reads ------------------------------------------------------------------

    fn look(&self, eyes: Eyes) -> String {
        let at = |message, who| self.fill(message, &[("who", self.name(who))]);
        match eyes {
            Eyes::Ball => String::from(self.voice.word(m::AT_BALL)),
            Eyes::Ring => String::from(self.voice.word(m::AT_RING)),
            Eyes::Mate(who) => at(m::AT_MATE, who),
            Eyes::Defender(who) if who == self.who => at(m::AT_OWN_DEFENDER, who),
            Eyes::Defender(who) => at(m::AT_DEFENDER, who),
        }
    }

    fn why(&self, step: &Step, purpose: Purpose) -> String {
        let me = ("me", self.name(self.who));
        let to = |who| ("to", self.name(who));
        let comes = |who, t| [("who", self.name(who)), ("time", self.time(t))];
        match purpose {
            Purpose::Frees { who, t } => self.fill(m::FREES, &comes(who, t)),
            Purpose::MakesRoom { who, t } => {
                let [who, time] = comes(who, t);
                self.fill(m::MAKES_ROOM, &[who, time, me])
            }
            Purpose::Decoy { to: whom } => {
                let fakes = matches!(step.what, Doing::Does(row)
                    if self.row(row).is_some_and(|a| a.verb == Verb::Fake));
                let message = if fakes { m::SELL_FAKE } else { m::SELL };
                self.fill(message, &[to(whom)])
            }
            Purpose::Threat { to: whom } => self.fill(m::THREAT, &[to(whom), me]),
            Purpose::Space(room) => self.fill(say::room(room), &[me]),
        }
    }

    fn call(&self, call: &Call) -> Option<String> {
        let read = self.set.reads.get(call.read)?;
        let action = |id: ActionId| {
            let beat = read.beats.get(usize::from(id.beat))?;
            beat.actions.get(usize::from(id.action))
        };
        let mut deeds: Vec<(ActionId, String)> = call
            .does
            .iter()
            .filter_map(|id| Some((*id, self.asks(action(*id)?, None))))
            .listed();
        if let Some((from, id)) = call.gets {
            let handed = action(id).is_some_and(|a| a.verb == Verb::Handoff);
            let message = if handed { m::TAKE } else { m::CATCH };
            let parts = [("whom", self.name(from)), ("where", String::new())];
            let at = deeds.iter().position(|(own, _)| *own > id);
            deeds.insert(at.unwrap_or(deeds.len()), (id, self.fill(message, &parts)));
        }
        let all = deeds.into_iter().map(|(_, deed)| deed);
        let all = all.reduce(|first, next| self.fill(m::THEN, &[("first", first), ("next", next)]));
        let see = || String::from(self.voice.word(m::SEE));
        let parts = [
            ("if", condition(&read.condition, self.set, self.voice)),
            ("do", all.unwrap_or_else(see)),
        ];
        Some(self.fill(m::CALL, &parts))
    }
}

/// With a capital, and a full stop unless it ends in one.
fn sentence(deed: &str) -> String {
    let mut out = String::new();
    let mut letters = deed.chars();
    if let Some(first) = letters.next() {
        out.extend(first.to_uppercase());
        out.push_str(letters.as_str());
    }
    if !out.ends_with(['.', '!', '?']) {
        out.push('.');
    }
    out
}
