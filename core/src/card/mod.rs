//! Role cards: what one player does, step by step, what to wait for, where to look, and what for.
//!
//! All of it is read off the timetable, so a card cannot disagree with the picture. Nothing here is
//! a sentence.

mod cue;
mod purpose;
mod read;
#[cfg(test)]
mod tests;

use crate::court::Court;
use crate::math::{Listed, Point, sort_short};
use crate::set::{ActionId, Edge, PlayerId, Set, Verb};
use crate::timeline::{TimedAction, Timeline};
use alloc::vec::Vec;

/// Whoever has nothing left to do for longer than this has a step that says what standing there is
/// good for, seconds. Common practice, no source.
const IDLE: f64 = 1.0;

/// One player's part in a set.
#[derive(Clone, Debug, PartialEq)]
pub struct Card {
    /// Whose.
    pub who: PlayerId,
    /// What they are in this set, the weightiest first; at most two.
    pub parts: Vec<Part>,
    /// What they do, by when it begins; at least one.
    pub steps: Vec<Step>,
}

/// What a player is in a set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// Takes a shot.
    Shooter,
    /// Runs off screens so that the defence looks there; the ball goes elsewhere.
    Decoy,
    /// Sets screens.
    Screener,
    /// Gives the ball on.
    Passer,
    /// Runs or dribbles.
    Cutter,
    /// Keeps the own defender busy by standing well.
    Spacer,
}

/// One step of a card.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What.
    pub what: Doing,
    /// In which beat, counted from 0.
    pub beat: usize,
    /// Seconds.
    pub start: f64,
    /// Seconds.
    pub end: f64,
    /// What it waits for, each of them just in time; in the order of what they hold up.
    pub cues: Vec<Cue>,
    /// Where the eyes go.
    pub eyes: Eyes,
    /// What it is good for, where the ball does not say it.
    pub purpose: Option<Purpose>,
    /// What is to be done instead, if the defence asks for it now.
    pub calls: Vec<Call>,
}

/// What is done in a step. Numbers are indices of [`Timeline::actions`].
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doing {
    /// An own action.
    Does(usize),
    /// Catches this pass.
    Catches(usize),
    /// Takes the ball of this hand-off on an own run.
    Takes(usize),
    /// Stands, with nothing left to do.
    Stays,
}

/// "This waits for that": an instant of a team mate's action.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cue {
    /// Whose instant; a catch is the receiver's.
    pub who: PlayerId,
    /// Of which action; index of [`Timeline::actions`].
    pub action: usize,
    /// Which instant.
    pub edge: Edge,
    /// Whom it passes, of a `pass-by`.
    pub of: Option<PlayerId>,
    /// When that is, seconds.
    pub t: f64,
    /// Seconds from there to the own instant; below 0 the own one comes first.
    pub lag: f64,
    /// Which instant of the step waits.
    pub mine: Edge,
}

/// Where the eyes go.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Eyes {
    /// At the ball.
    Ball,
    /// At the ring.
    Ring,
    /// At a team mate.
    Mate(PlayerId),
    /// At the defender of this player.
    Defender(PlayerId),
}

/// What a step is good for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Purpose {
    /// Somebody comes by this screen.
    Frees {
        /// Who.
        who: PlayerId,
        /// When, seconds.
        t: f64,
    },
    /// The defence is to look here; the ball goes to somebody else.
    Decoy {
        /// To whom.
        to: PlayerId,
    },
    /// A run to the ring that must be guarded; the ball goes to somebody else.
    Threat {
        /// To whom.
        to: PlayerId,
    },
    /// Somebody comes through where this player stood.
    MakesRoom {
        /// Who.
        who: PlayerId,
        /// When, seconds.
        t: f64,
    },
    /// Standing there is worth something.
    Space(Room),
}

/// What standing somewhere is worth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Room {
    /// In a corner: the own defender is far from the lane.
    Corner,
    /// Nobody else is as far back.
    Safety,
    /// Near the ring: a rebound may come.
    Board,
    /// Anywhere else: whoever helps leaves this player alone.
    Wide,
}

/// A read that asks something of this player.
#[derive(Clone, Debug, PartialEq)]
pub struct Call {
    /// Index of [`Set::reads`].
    pub read: usize,
    /// When it is made, seconds.
    pub t: f64,
    /// What this player does in it: beat and place in the beat of the read.
    pub does: Vec<ActionId>,
    /// Who passes to them, and which pass of the read that is.
    pub gets: Option<(PlayerId, ActionId)>,
}

/// What all parts of a card are read from.
#[derive(Clone, Copy)]
struct Source<'a> {
    set: &'a Set,
    timeline: &'a Timeline,
    court: &'a Court,
    who: PlayerId,
}

impl<'a> Source<'a> {
    fn rows(&self) -> impl Iterator<Item = (usize, &'a TimedAction)> + use<'a> {
        self.timeline.actions().iter().enumerate()
    }

    /// The rows of this player.
    fn own(&self) -> impl Iterator<Item = (usize, &'a TimedAction)> + use<'a> {
        let who = self.who;
        self.rows().filter(move |(_, a)| a.who == who)
    }

    /// Whom the ball of this pass or hand-off goes to.
    fn receiver(&self, row: &TimedAction) -> Option<PlayerId> {
        let action = self.set.action(row.id)?;
        // The taker's way to a hand-off is a row of the same action.
        let gives = action.actor() == Some(row.who);
        action.receiver().filter(|_| gives)
    }

    /// All passes and hand-offs: row, to whom, when it leaves and when it is there.
    fn transfers(&self) -> Vec<Transfer> {
        let gives = |(row, a): (usize, &TimedAction)| {
            let moves = matches!(a.verb, Verb::Pass | Verb::Handoff);
            let keeps = a.kind == Some(crate::set::Kind::Keep);
            let to = self.receiver(a).filter(|_| moves && !keeps)?;
            let release = a.at(Edge::Release)?;
            let catch = a.at(Edge::Catch).unwrap_or(release);
            Some(Transfer {
                row,
                from: a.who,
                to,
                release,
                catch,
            })
        };
        self.rows().filter_map(gives).listed()
    }

    fn place(&self, who: PlayerId, t: f64) -> Option<Point> {
        self.timeline.player(who, t).map(|m| m.at())
    }
}

/// A ball that changes hands.
#[derive(Clone, Copy, Debug)]
struct Transfer {
    row: usize,
    from: PlayerId,
    to: PlayerId,
    release: f64,
    catch: f64,
}

/// The card of `who`; `None` of somebody who takes no part. `timeline` was built from `set`.
#[must_use]
pub fn card(set: &Set, court: &Court, timeline: &Timeline, who: PlayerId) -> Option<Card> {
    set.player(who)?;
    let source = Source {
        set,
        timeline,
        court,
        who,
    };
    let mut steps = does(&source);
    steps.extend(receives(&source));
    sort_short(&mut steps, |a, b| a.start.total_cmp(&b.start));
    steps.extend(stays(&source, &steps));
    for step in &mut steps {
        step.cues = cue::cues(&source, step);
        step.purpose = purpose::purpose(&source, step);
        step.eyes = purpose::eyes(&source, step);
    }
    // What standing there is worth is said once.
    if let [.., last, stays] = steps.as_mut_slice()
        && stays.what == Doing::Stays
        && last.purpose == stays.purpose
    {
        last.purpose = None;
    }
    read::add_calls(&source, &mut steps);
    let parts = purpose::parts(&source, &steps);
    Some(Card { who, parts, steps })
}

fn blank(what: Doing, beat: usize, start: f64, end: f64) -> Step {
    Step {
        what,
        beat,
        start,
        end,
        cues: Vec::new(),
        eyes: Eyes::Ball,
        purpose: None,
        calls: Vec::new(),
    }
}

fn does(source: &Source<'_>) -> Vec<Step> {
    let step = |(row, a): (usize, &TimedAction)| {
        blank(Doing::Does(row), usize::from(a.id.beat), a.start, a.end)
    };
    source.own().map(step).listed()
}

/// What comes to the player: passes, and hand-offs taken on a run of their own.
fn receives(source: &Source<'_>) -> Vec<Step> {
    let step = |t: Transfer| {
        let row = source.timeline.actions().get(t.row)?;
        let beat = usize::from(row.id.beat);
        if row.verb == Verb::Pass {
            return Some(blank(Doing::Catches(t.row), beat, t.release, t.catch));
        }
        // Whose way to it is a row of the hand-off has a step already.
        let comes = source.own().any(|(_, a)| a.id == row.id);
        (!comes).then(|| blank(Doing::Takes(t.row), beat, t.release, row.end))
    };
    let own = source
        .transfers()
        .into_iter()
        .filter(|t| t.to == source.who);
    own.filter_map(step).listed()
}

/// The step of whoever has nothing left to do.
fn stays(source: &Source<'_>, steps: &[Step]) -> Option<Step> {
    let duration = source.timeline.duration();
    let done = steps.iter().map(|s| s.end).fold(0.0, f64::max);
    let shoots = source.own().any(|(_, a)| a.verb == Verb::Shot);
    let holds = source.timeline.ball(duration).holder == Some(source.who);
    // Whoever has thrown in is not on the floor yet.
    let at = source.place(source.who, done);
    let inside = at.is_some_and(|p| source.court.in_bounds(p, 0.0));
    let idle = steps.is_empty() || duration - done > IDLE && inside && !shoots && !holds;
    let beat = source.timeline.beat_at(done);
    idle.then(|| blank(Doing::Stays, beat, done, duration))
}
