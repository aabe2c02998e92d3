//! Questions in words, and what is said of an answer: what is right, why, and how far off it was.

use super::action::deed;
use super::measure::seconds;
use super::place::Told;
use super::{action, count, distance, names, phrases, read_title};
use crate::court::Court;
use crate::defence::Defence;
use crate::math::{self, Listed, Point};
use crate::quiz::{Answer, Ask, Choice, FULL_M, FULL_S, Question, Score};
use crate::set::{Edge, PlayerId, Set, Verb};
use crate::timeline::{TimedTie, Timeline};
use crate::voice::Voice;
use crate::voice::messages::{instant, quiz as m, tie as ties};
use alloc::string::String;

/// A screen stands for so long before it is used, seconds. Common practice, no source: the time of
/// the opponent to stop or turn.
const LEGAL: f64 = 0.3;
/// Less than this is not told: times are said in tenths, seconds.
const TOLD: f64 = 0.05;
/// Nearer than this two instants are one to who watches, seconds.
const AT_ONCE: f64 = 0.1;
/// So many actions of a read say what it is.
const TELLING: usize = 3;

/// `Where does 3 go?`
#[must_use]
pub fn question(ask: &Ask, voice: Voice) -> String {
    let (message, who) = match ask {
        Ask::Where { who, .. } => (m::WHERE_GOES, Some(*who)),
        Ask::When { who, .. } => (m::WHEN_GOES, Some(*who)),
        Ask::Defender { who, .. } => (m::WHERE_DEFENDER, Some(*who)),
        Ask::Read { .. } => (m::WHAT_NOW.into(), None),
        Ask::Open { .. } => (m::WHO_OPEN.into(), None),
        Ask::Ball { .. } => (m::WHO_GETS_IT.into(), None),
    };
    voice.fill(message, &[("who", &names(who, voice))])
}

/// One of its choices: a player's number, or what is done.
#[must_use]
pub fn choice(choice: Choice, set: &Set, voice: Voice) -> String {
    match choice {
        Choice::Player(who) => names([who], voice),
        Choice::AsDrawn => String::from(voice.word(m::GO_ON)),
        Choice::Read(read) => done(set, read, voice),
    }
}

/// What a read has its players do, by the first of its actions.
fn done(set: &Set, read: usize, voice: Voice) -> String {
    let beats = set.reads.get(read).map(|read| &read.beats);
    let actions = beats.into_iter().flatten().flat_map(|beat| &beat.actions);
    let told = actions.take(TELLING).map(|a| deed(set, a, voice));
    told.listed().join(", ")
}

fn place(at: Point, court: &Court, voice: Voice) -> String {
    Told::of(at, court).whereabouts(voice)
}

/// A place on the floor, for who cannot see it: `near the right wing: 5.3 m to the right of the
/// ring, 4.1 m out`.
#[must_use]
pub fn cross(at: Point, court: &Court, voice: Voice) -> String {
    let parts = [
        ("where", place(at, court, voice)),
        ("x", distance(at.x.abs(), court.rules(), voice)),
        ("y", distance(at.y.abs(), court.rules(), voice)),
    ];
    let [at_spot, x, y] = parts.each_ref().map(|(name, text)| (*name, text.as_str()));
    let side = if at.x < 0.0 { "left" } else { "right" };
    let depth = if at.y < 0.0 { "behind" } else { "out" };
    voice.fill(m::CROSS, &[at_spot, x, y, ("side", side), ("depth", depth)])
}

/// Who stands where at `t`, for who cannot see it; what is hidden is not told.
#[must_use]
pub fn standing(
    set: &Set,
    timeline: &Timeline,
    defence: Option<&Defence>,
    question: &Question,
    voice: Voice,
) -> String {
    let Question { t, hidden, .. } = question;
    let court = set.floor();
    let holder = timeline.ball(*t).holder;
    let told = |message, who: PlayerId, at: Point| {
        let parts = [
            ("who", names([who], voice)),
            ("where", place(at, &court, voice)),
        ];
        let parts = parts.each_ref().map(|(name, text)| (*name, text.as_str()));
        voice.fill(message, &parts)
    };
    let attackers = PlayerId::ALL.iter().filter_map(|who| {
        let message = if holder == Some(*who) {
            instant::HAS_BALL
        } else {
            m::STANDS
        };
        let at = timeline.place(*who, hidden.seen_at(*who, *t))?;
        Some(told(message, *who, at))
    });
    let seen = |who: &&PlayerId| hidden.defender != Some(**who);
    let defenders = PlayerId::ALL.iter().filter(seen).filter_map(|who| {
        let state = defence?.state(*who, *t)?;
        Some(told(m::DEFENDS, *who, state.at()))
    });
    let mut out = attackers.chain(defenders).listed().join("; ");
    out.push('.');
    out
}

/// What is right and why, and how far off an answer was.
#[must_use]
pub fn reason(
    set: &Set,
    timeline: &Timeline,
    question: &Question,
    reply: Answer,
    voice: Voice,
) -> String {
    let teller = Teller {
        set,
        timeline,
        court: set.floor(),
        voice,
    };
    let score = question.score(reply);
    let told = [teller.right(question), teller.off(question, reply, &score)];
    let told = told.into_iter().filter(|text| !text.is_empty());
    told.listed().join(" ")
}

struct Teller<'a> {
    set: &'a Set,
    timeline: &'a Timeline,
    court: Court,
    voice: Voice,
}

impl Teller<'_> {
    fn right(&self, question: &Question) -> String {
        match &question.ask {
            Ask::Where { row, .. } | Ask::Ball { row } => self.action(*row),
            Ask::When { who, tie, .. } => self.leaves(*who, *tie, question.answer),
            Ask::Defender { who, man } => self.guards(*who, *man, question),
            Ask::Open { look } => super::look(look, self.set, self.voice),
            Ask::Read { read, seen } => {
                let mut out = super::seen(seen, self.set, self.voice);
                out.push(' ');
                out.push_str(&self.read(*read));
                out
            }
        }
    }

    /// What is done then, and what that is called.
    fn read(&self, read: Option<usize>) -> String {
        let written = read.and_then(|read| Some((self.set.reads.get(read)?, read)));
        let Some((written, read)) = written else {
            return String::from(self.voice.word(m::NO_READ));
        };
        let mut out = read_title(written, read, self.voice);
        out.push_str(": ");
        out.push_str(&done(self.set, read, self.voice));
        out.push('.');
        out
    }

    fn action(&self, row: usize) -> String {
        let id = self.timeline.actions().get(row).map(|action| action.id);
        id.map_or_else(String::new, |id| {
            action(self.set, Some(self.timeline), id, self.voice)
        })
    }

    fn seconds(&self, t: f64) -> String {
        seconds(t, 1, self.voice)
    }

    /// When somebody leaves, and on whose account.
    fn leaves(&self, who: PlayerId, tie: usize, answer: Answer) -> String {
        let (Answer::Instant(leaves), Some(tie)) = (answer, self.timeline.ties().get(tie)) else {
            return String::new();
        };
        let who = names([who], self.voice);
        let t = self.seconds(leaves);
        let mut out = self.voice.fill(m::LEAVES, &[("who", &who), ("t", &t)]);
        if leaves - tie.from.t < -AT_ONCE && tie.from.edge == Edge::Set {
            // The burst takes time of its own: the feet are down before it gets there.
            let (screeners, count) = self.doers(tie);
            let set = self.seconds(tie.from.t);
            let parts = [
                ("screeners", screeners.as_str()),
                ("count", &count),
                ("t", &set),
                ("who", &who),
            ];
            out.push_str(": ");
            out.push_str(&self.voice.fill(m::TO_PASS, &parts));
            return out;
        }
        if let Some(once) = self.once(tie, leaves - tie.from.t) {
            out.push_str(", ");
            out.push_str(&once);
        }
        out.push('.');
        out
    }

    /// Who does what is waited for, and how many they are.
    fn doers(&self, tie: &TimedTie) -> (String, String) {
        let waited = self.timeline.actions().get(tie.from.action);
        let theirs = waited.and_then(|waited| self.set.action(waited.id));
        let who = theirs.map_or(&[][..], |theirs| &theirs.who);
        (names(who.iter().copied(), self.voice), count(who.len()))
    }

    /// `once 4 is set`, or how long before or after that.
    fn once(&self, tie: &TimedTie, after: f64) -> Option<String> {
        let waited = self.timeline.actions().get(tie.from.action)?;
        let other = self.set.action(waited.id)?.receiver();
        let other = other.map_or_else(String::new, |p| names([p], self.voice));
        let (who, count) = self.doers(tie);
        let (message, form) = if after >= AT_ONCE {
            (ties::AFTER, "that")
        } else if after <= -AT_ONCE {
            (ties::BEFORE, "that")
        } else {
            (ties::ONCE, "")
        };
        let parts = [("who", who.as_str()), ("count", &count), ("other", &other)];
        let event = phrases::event(tie.from.edge, waited.verb);
        let event = self.voice.form(event, form, &parts);
        let lag = self.voice.number(after.abs(), 1);
        let lag = self.voice.fill(ties::SECONDS, &[("n", &lag)]);
        let parts = [("seconds", lag.as_str()), ("event", &event)];
        Some(self.voice.fill(message, &parts))
    }

    fn guards(&self, who: PlayerId, man: PlayerId, question: &Question) -> String {
        let (Answer::Place(at), Some(theirs)) =
            (question.answer, self.timeline.place(man, question.t))
        else {
            return String::new();
        };
        let parts = [
            ("who", names([who], self.voice)),
            ("far", self.far(math::distance(at, theirs))),
            ("man", names([man], self.voice)),
            ("where", place(at, &self.court, self.voice)),
        ];
        let parts = parts.each_ref().map(|(name, text)| (*name, text.as_str()));
        self.voice.fill(m::GUARDS, &parts)
    }

    fn far(&self, metres: f64) -> String {
        distance(metres, self.set.court, self.voice)
    }

    fn off(&self, question: &Question, reply: Answer, score: &Score) -> String {
        let word = |text| String::from(self.voice.word(text));
        match (&question.ask, reply) {
            (_, Answer::Choice(given)) => match question.choices.get(given) {
                _ if score.points > 0 => word(m::HAD_IT),
                Some(Choice::Player(who)) => {
                    let who = names([*who], self.voice);
                    self.voice.fill(m::NOT_THIS, &[("who", &who)])
                }
                _ => String::new(),
            },
            (Ask::When { tie, .. }, _) => score
                .off_s
                .map_or_else(|| word(m::NO_PRESS), |off| self.late(*tie, off)),
            (ask, _) => match (score.off_m, question.answer) {
                (Some(off), _) if off <= FULL_M => word(m::HAD_IT),
                (Some(off), Answer::Place(right)) => self.missed(ask, off, right),
                _ => String::new(),
            },
        }
    }

    /// By how much a place was missed.
    fn missed(&self, ask: &Ask, off: f64, right: Point) -> String {
        let far = self.far(off);
        let Ask::Where { who, .. } = ask else {
            return self.voice.fill(m::OFF_DEFENDER, &[("far", &far)]);
        };
        let who = names([*who], self.voice);
        let ends = place(right, &self.court, self.voice);
        let parts = [("far", far.as_str()), ("who", &who), ("where", &ends)];
        self.voice.fill(m::OFF, &parts)
    }

    /// How early or late somebody left, and what that does to a screen.
    fn late(&self, tie: usize, off: f64) -> String {
        if off.abs() <= FULL_S {
            return String::from(self.voice.word(m::ON_TIME));
        }
        let message = if off < 0.0 { m::EARLY } else { m::LATE };
        let mut out = self.voice.fill(message, &[("n", &self.seconds(off.abs()))]);
        match self.stood(tie, off) {
            Some(stood) => {
                out.push_str(": ");
                out.push_str(&stood);
            }
            None => out.push('.'),
        }
        out
    }

    /// How long a screen has stood when its cutter, `off` seconds late, gets there.
    fn stood(&self, tie: usize, off: f64) -> Option<String> {
        let tie = self.timeline.ties().get(tie)?;
        let waited = self.timeline.actions().get(tie.from.action)?;
        if waited.verb != Verb::Screen || tie.from.edge != Edge::Set {
            return None;
        }
        let stood = tie.to.t + off - tie.from.t;
        let (screeners, count) = self.doers(tie);
        let message = if stood <= TOLD {
            m::NOT_SET
        } else if stood < LEGAL - TOLD {
            m::BARELY_SET
        } else if off > 0.0 {
            m::STOOD
        } else {
            return None;
        };
        let n = self.seconds(stood);
        let parts = [
            ("screeners", screeners.as_str()),
            ("count", &count),
            ("n", &n),
        ];
        Some(self.voice.fill(message, &parts))
    }
}
