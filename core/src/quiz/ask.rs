//! Finds everything in a set that can be asked.

use super::order::{Hat, deal};
use super::{Answer, Ask, Choice, Hidden, Question};
use crate::branch;
use crate::choice::Decided;
use crate::court::Court;
use crate::defence::Defence;
use crate::looks::{Chance, Look, Openness, nearest};
use crate::math::{Listed, distance};
use crate::set::{Edge, PlayerId, Set, Verb};
use crate::timeline::{TimedAction, TimedTie, Timeline};
use alloc::vec::Vec;

/// A shorter way is not asked for, metres. Common practice, no source.
const LEAST_WAY: f64 = 1.5;
/// A question about a place stands so long before its player starts, seconds.
const BEFORE: f64 = 0.3;
/// Slower than this somebody stands, m/s.
const STANDS: f64 = 0.3;
/// A question about an instant plays for so long before it, seconds: at least, and at most, so that
/// nobody can count.
const RUN_UP: (f64, f64) = (1.2, 2.8);
/// A tie holds somebody up if its ends are as near as that to the least time between them, seconds.
const BINDS: f64 = 0.03;
/// After an answer the set goes on for so long where nothing else ends it, seconds.
const GOES_ON: f64 = 1.5;
/// The one who is open has so much more room than everybody else, metres.
const CLEARLY: f64 = 0.3;

/// What questions are made from.
#[derive(Clone, Copy, Debug)]
pub struct Asked<'a> {
    /// What was written.
    pub set: &'a Set,
    /// Where.
    pub court: &'a Court,
    /// When.
    pub timeline: &'a Timeline,
    /// The defence on the floor, if there is one: without it nothing of it is asked.
    pub against: Option<Against<'a>>,
}

/// A defence to ask about.
#[derive(Clone, Copy, Debug)]
pub struct Against<'a> {
    /// The five.
    pub defence: &'a Defence,
    /// Every chance against them.
    pub looks: &'a [Look],
    /// What they make of the set's reads, where that is known.
    pub decided: Option<&'a Decided>,
}

/// Everything that can be asked, the kinds in turn; the same for the same set and `number`.
#[must_use]
pub fn questions(asked: &Asked<'_>, number: u32) -> Vec<Question> {
    let mut hat = Hat::new(number);
    let kinds = [
        asked.wheres(),
        asked.whens(&mut hat),
        asked.balls(),
        asked.defenders(),
        asked.opens(),
        asked.reads(),
    ];
    deal(kinds.into(), &mut hat)
}

impl Asked<'_> {
    fn rows(&self) -> impl Iterator<Item = (usize, &TimedAction)> {
        self.timeline.actions().iter().enumerate()
    }

    fn until(&self, t: f64) -> f64 {
        t.min(self.timeline.duration())
    }

    fn wheres(&self) -> Vec<Question> {
        let asked = self.rows().filter_map(|(row, action)| {
            let who = action.who;
            if !matches!(action.verb, Verb::Cut | Verb::Dribble | Verb::Screen) {
                return None;
            }
            let end = self.timeline.place(who, action.end)?;
            let start = self.timeline.place(who, action.start)?;
            if distance(start, end) < LEAST_WAY || !self.court.in_bounds(end, 0.0) {
                return None;
            }
            // Who runs on from one action into the next stands nowhere in between.
            let mut stands = [(action.start - BEFORE).max(0.0), action.start].into_iter();
            let t = stands.find(|t| self.timeline.speed(who, *t) < STANDS)?;
            Some(Question {
                ask: Ask::Where { who, row },
                t,
                hidden: Hidden::way(who),
                choices: Vec::new(),
                answer: Answer::Place(end),
                told: self.until(action.end),
            })
        });
        asked.listed()
    }

    fn whens(&self, hat: &mut Hat) -> Vec<Question> {
        let mut out = Vec::new();
        for (row, action) in self.rows() {
            let run_up = RUN_UP.0 + (RUN_UP.1 - RUN_UP.0) * hat.share();
            let Some((tie, held)) = self.held_up_by(row) else {
                continue;
            };
            let leaves = leaves(action, held.to.t);
            let t = (leaves - run_up).max(0.0);
            if leaves - t < RUN_UP.0 || leaves > self.timeline.duration() {
                continue;
            }
            let who = action.who;
            out.push(Question {
                ask: Ask::When { who, row, tie },
                t,
                hidden: Hidden {
                    stays: Some((who, leaves)),
                    ..Hidden::way(who)
                },
                choices: Vec::new(),
                answer: Answer::Instant(leaves),
                told: self.until(action.end),
            });
        }
        out
    }

    /// What the runner of a row waits for, with its index: the latest of the ties to others that leave
    /// no room.
    fn held_up_by(&self, row: usize) -> Option<(usize, &TimedTie)> {
        let actions = self.timeline.actions();
        let action = actions.get(row)?;
        // A ball cannot stay while its dribbler does.
        if action.verb != Verb::Cut {
            return None;
        }
        let binds = |tie: &TimedTie| {
            let others = actions.get(tie.from.action).map(|a| a.who) != Some(action.who);
            let room = tie.to.t - tie.from.t - tie.lag;
            // Who is waited for at the end of the way does not say when to leave.
            let early = matches!(
                tie.to.edge,
                Edge::Start | Edge::Plant | Edge::Cue | Edge::PassBy
            );
            tie.to.action == row && others && early && room.abs() < BINDS
        };
        let ties = self.timeline.ties().iter().enumerate();
        let held = ties.filter(|(_, tie)| binds(tie));
        held.reduce(|a, b| if b.1.from.t > a.1.from.t { b } else { a })
    }

    fn balls(&self) -> Vec<Question> {
        let asked = self.rows().filter_map(|(row, action)| {
            let to = self.set.action(action.id)?.receiver()?;
            if action.verb != Verb::Pass {
                return None;
            }
            let (choices, answer) = self.team_mates(action.who, to)?;
            Some(Question {
                ask: Ask::Ball { row },
                t: action.start,
                hidden: Hidden {
                    ball: true,
                    ..Hidden::default()
                },
                choices,
                answer,
                told: self.until(action.at(Edge::Catch).unwrap_or(action.end)),
            })
        });
        asked.listed()
    }

    /// All but `who` as choices, and `right` among them; nothing where there is no choice.
    fn team_mates(&self, who: PlayerId, right: PlayerId) -> Option<(Vec<Choice>, Answer)> {
        let others = self.set.players.iter().map(|p| p.id).filter(|p| *p != who);
        let others = others.listed();
        let at = others.iter().position(|p| *p == right)?;
        let choices = others.into_iter().map(Choice::Player).listed();
        (choices.len() > 1).then_some((choices, Answer::Choice(at)))
    }

    fn defenders(&self) -> Vec<Question> {
        let Some(Against { defence, .. }) = self.against else {
            return Vec::new();
        };
        let asked = self.rows().filter_map(|(_, action)| {
            let t = action.at(Edge::Cue)?;
            let guards = |who: &&PlayerId| defence.man_of(**who, t) == action.who;
            let who = *PlayerId::ALL.iter().find(guards)?;
            let at = defence.state(who, t)?.at();
            self.court.in_bounds(at, 0.0).then_some(())?;
            Some(Question {
                ask: Ask::Defender {
                    who,
                    man: action.who,
                },
                t,
                hidden: Hidden {
                    defender: Some(who),
                    ..Hidden::default()
                },
                choices: Vec::new(),
                answer: Answer::Place(at),
                told: self.until(t + GOES_ON),
            })
        });
        asked.listed()
    }

    fn opens(&self) -> Vec<Question> {
        let Some(against) = self.against else {
            return Vec::new();
        };
        let open = |look: &&Look| {
            look.chance == Chance::Catch && !look.contested() && look.openness() >= Openness::Open
        };
        let asked = against.looks.iter().filter(open).filter_map(|look| {
            let mut rows = self.timeline.actions().iter();
            let pass = rows.find(|a| a.id == look.action && a.verb == Verb::Pass)?;
            let t = pass.at(Edge::Release)?;
            let room = |who: PlayerId| {
                let at = self.timeline.place(who, t)?;
                Some(nearest(against.defence, at, t).1)
            };
            let (choices, answer) = self.team_mates(pass.who, look.who)?;
            let own = room(look.who)?;
            let less = |choice: &Choice| match choice {
                Choice::Player(who) if *who != look.who => {
                    room(*who).is_none_or(|other| other + CLEARLY <= own)
                }
                _ => true,
            };
            choices.iter().all(less).then_some(())?;
            Some(Question {
                ask: Ask::Open { look: *look },
                t,
                hidden: Hidden {
                    ball: true,
                    ..Hidden::default()
                },
                choices,
                answer,
                told: self.until(look.t),
            })
        });
        asked.listed()
    }

    fn reads(&self) -> Vec<Question> {
        let Some(decided) = self.against.and_then(|against| against.decided) else {
            return Vec::new();
        };
        let reads = self.set.reads.iter().enumerate();
        let offered = reads.filter_map(|(i, read)| {
            branch::fork_instant(self.set, self.timeline, read).map(|_| Choice::Read(i))
        });
        let choices = core::iter::once(Choice::AsDrawn).chain(offered).listed();
        let mut out: Vec<Question> = Vec::new();
        let made = decided.path.first().copied();
        for asked in decided.asked.iter().filter(|asked| asked.path.len() == 1) {
            // Several reads of one instant are one question; the one that is true answers it.
            out.retain(|other| other.t < asked.t);
            // What is true but cannot be played leaves no answer.
            if asked.seen.holds && asked.path.first().copied() != made {
                continue;
            }
            let read = made.filter(|_| asked.seen.holds);
            let right = read.map_or(Choice::AsDrawn, Choice::Read);
            let Some(at) = choices.iter().position(|c| *c == right) else {
                continue;
            };
            out.push(Question {
                ask: Ask::Read {
                    read,
                    seen: asked.seen,
                },
                t: asked.t,
                // What is drawn would be told by the ways.
                hidden: Hidden {
                    ways: [true; 5],
                    ball: true,
                    ..Hidden::default()
                },
                choices: choices.clone(),
                answer: Answer::Choice(at),
                // What is drawn does not show what a read makes of it.
                told: match read {
                    Some(_) => asked.t,
                    None => self.until(asked.t + GOES_ON),
                },
            });
        }
        out
    }
}

/// When the runner of a row goes: from the last stop on the way to what is waited for, at `until`.
fn leaves(action: &TimedAction, until: f64) -> f64 {
    let by_then = |t: &f64| *t <= until + BINDS;
    let mut stops = action.waits.iter().rev().map(|w| w.end);
    let waited = stops.find(by_then);
    let plant = action.at(Edge::Plant).filter(by_then);
    waited.or(plant).unwrap_or(action.start)
}
