//! What a step is good for, and where the eyes go in it.

use super::cue::passers;
use super::{Doing, Eyes, Part, Purpose, Room, Source, Step};
use crate::court::{Side, Spot, SpotName};
use crate::math::{Point, distance};
use crate::set::{Action, Edge, Kind, PlayerId, Verb};
use crate::timeline::TimedAction;
use alloc::vec::Vec;

/// Nearer than this to the corner one stands in it, metres. Common practice, no source.
const IN_CORNER: f64 = 1.2;
/// Nearer than this to the ring a rebound may come, metres. Common practice, no source.
const UNDER: f64 = 3.0;
/// A run that ends so near to the ring is one to score from, metres. Common practice, no source.
const AT_RING: f64 = 3.5;
/// Who is farther up than this beyond the free throw line is back, metres. Common practice, no source.
const BACK: f64 = 1.5;
/// Who comes so near to where somebody stood comes through there, metres. Common practice, no
/// source.
const THROUGH: f64 = 1.5;
/// How closely it is looked who comes through, seconds.
const LOOK: f64 = 0.05;

pub(super) fn purpose(source: &Source<'_>, step: &Step) -> Option<Purpose> {
    let row = match step.what {
        Doing::Does(row) => source.timeline.actions().get(row)?,
        Doing::Stays => return Some(Purpose::Space(room(source, step.start)?)),
        Doing::Catches(_) | Doing::Takes(_) => return None,
    };
    match row.verb {
        Verb::Screen => {
            let by = passers(source, row.who, row.start, row.end);
            let first = by.into_iter().reduce(|a, b| if b.2 < a.2 { b } else { a });
            first.map(|(_, a, t)| Purpose::Frees { who: a.who, t })
        }
        Verb::Fake => next_ball(source, row).map(|to| Purpose::Decoy { to }),
        Verb::Cut if !gets_ball(source, row.start) => {
            let screened = row.marks.iter().any(|m| m.edge == Edge::PassBy);
            let to = finisher(source).filter(|_| screened);
            to.map(|to| pulls(source, row, to))
                .or_else(|| makes_room(source, row))
                .or_else(|| {
                    last_move(source, row).then(|| room(source, row.end).map(Purpose::Space))?
                })
        }
        _ => None,
    }
}

/// Whether the ball is, or comes, in this player's hands from `t` on.
fn gets_ball(source: &Source<'_>, t: f64) -> bool {
    let holds = source.timeline.ball(t).holder == Some(source.who);
    let mut transfers = source.transfers().into_iter();
    holds || transfers.any(|b| b.to == source.who && b.catch > t)
}

/// Who else gets the ball next after `row` begins.
fn next_ball(source: &Source<'_>, row: &TimedAction) -> Option<PlayerId> {
    let mut transfers = source.transfers().into_iter();
    let next = transfers.find(|b| b.release > row.start && b.to != row.who);
    next.map(|b| b.to)
}

/// Who else the set is for: who shoots last, or else has the ball last.
fn finisher(source: &Source<'_>) -> Option<PlayerId> {
    let shot = source.rows().filter(|(_, a)| a.verb == Verb::Shot).last();
    let ball = source.transfers().last().map(|b| b.to);
    let who = shot.map(|(_, a)| a.who).or(ball)?;
    (who != source.who).then_some(who)
}

/// What a run off screens is good for while the ball goes to somebody else.
fn pulls(source: &Source<'_>, row: &TimedAction, to: PlayerId) -> Purpose {
    let end = source.place(row.who, row.end);
    if end.is_some_and(|p| distance(p, Point::ZERO) < AT_RING) {
        Purpose::Threat { to }
    } else {
        Purpose::Decoy { to }
    }
}

/// Whether nothing of this player's comes after `row`.
fn last_move(source: &Source<'_>, row: &TimedAction) -> bool {
    source.own().all(|(_, a)| a.start <= row.start)
}

/// Who first comes through where `row` leaves from.
fn makes_room(source: &Source<'_>, row: &TimedAction) -> Option<Purpose> {
    let spot = source.place(row.who, row.start)?;
    let near = |who: PlayerId, t: f64| {
        let at = source.place(who, t);
        at.is_some_and(|p| distance(p, spot) < THROUGH)
    };
    let comes = |a: &TimedAction| {
        let moves = matches!(a.verb, Verb::Cut | Verb::Dribble | Verb::Screen);
        if a.who == row.who || !moves || a.end < row.start || near(a.who, row.start) {
            return None;
        }
        let mut t = a.start.max(row.start);
        while t <= a.end {
            if near(a.who, t) {
                return Some((a.who, t));
            }
            t += LOOK;
        }
        None
    };
    let first = source.rows().filter_map(|(_, a)| comes(a));
    let first = first.reduce(|a, b| if b.1 < a.1 { b } else { a });
    first.map(|(who, t)| Purpose::MakesRoom { who, t })
}

/// What it is worth to stand where this player stands at `t`.
fn room(source: &Source<'_>, t: f64) -> Option<Room> {
    let at = source.place(source.who, t)?;
    let corner = |side| {
        let name = SpotName::Corner;
        source.court.spot(Spot {
            name,
            side: Some(side),
        })
    };
    let back = source.court.marks().free_throw + BACK;
    let end = source.timeline.duration();
    let others = PlayerId::ALL.into_iter().filter(|p| *p != source.who);
    let alone = others
        .filter_map(|p| source.place(p, end))
        .all(|p| p.y < back);
    Some(
        if [Side::Left, Side::Right]
            .into_iter()
            .any(|s| distance(corner(s), at) < IN_CORNER)
        {
            Room::Corner
        } else if at.y > back && alone {
            Room::Safety
        } else if distance(at, Point::ZERO) < UNDER {
            Room::Board
        } else {
            Room::Wide
        },
    )
}

pub(super) fn eyes(source: &Source<'_>, step: &Step) -> Eyes {
    let row = match step.what {
        Doing::Does(row) => source.timeline.actions().get(row),
        Doing::Catches(_) | Doing::Takes(_) | Doing::Stays => None,
    };
    let Some(row) = row else { return Eyes::Ball };
    match row.verb {
        Verb::Screen => {
            let written = source.set.action(row.id).map(|a| a.for_whom.clone());
            let whom = written.and_then(|w| w.first().copied());
            let by = match step.purpose {
                Some(Purpose::Frees { who, .. }) => Some(who),
                _ => None,
            };
            whom.or(by).map_or(Eyes::Ball, Eyes::Defender)
        }
        Verb::Pass | Verb::Handoff => source.receiver(row).map_or(Eyes::Ball, Eyes::Mate),
        Verb::Shot => Eyes::Ring,
        Verb::Fake => {
            let at = source.set.action(row.id).and_then(Action::receiver);
            at.map_or(Eyes::Ring, Eyes::Mate)
        }
        Verb::Dribble if row.kind == Some(Kind::Retreat) => Eyes::Ring,
        Verb::Dribble => next_pass(source, row).map_or(Eyes::Ring, Eyes::Mate),
        Verb::Cut if row.marks.iter().any(|m| m.edge == Edge::PassBy) => Eyes::Defender(row.who),
        Verb::Cut => {
            let mut cues = step.cues.iter();
            let written = cues.find(|c| matches!(c.mine, Edge::Start | Edge::Plant));
            written.map_or(Eyes::Ball, |c| Eyes::Mate(c.who))
        }
        Verb::Hold => Eyes::Ball,
    }
}

/// Whom this player passes to right after a dribble.
fn next_pass(source: &Source<'_>, row: &TimedAction) -> Option<PlayerId> {
    let (_, next) = source.own().find(|(_, a)| a.start > row.start)?;
    let gives = matches!(next.verb, Verb::Pass | Verb::Handoff);
    source.receiver(next).filter(|_| gives)
}

/// What somebody with these steps is.
pub(super) fn parts(source: &Source<'_>, steps: &[Step]) -> Vec<Part> {
    let does = |verb: Verb| source.own().any(|(_, a)| a.verb == verb);
    let gives = source.transfers().iter().any(|t| t.from == source.who);
    let decoy = steps.iter().any(|s| {
        let fakes = matches!(s.what, Doing::Does(row)
            if source.timeline.actions().get(row).is_some_and(|a| a.verb == Verb::Fake));
        matches!(s.purpose, Some(Purpose::Decoy { .. })) && !fakes
    });
    let all = [
        (does(Verb::Shot), Part::Shooter),
        (decoy, Part::Decoy),
        (does(Verb::Screen), Part::Screener),
        (gives, Part::Passer),
        (does(Verb::Cut) || does(Verb::Dribble), Part::Cutter),
        (true, Part::Spacer),
    ];
    let mut out: Vec<Part> = Vec::new();
    for (is, part) in all {
        let filler = matches!(part, Part::Cutter | Part::Spacer) && !out.is_empty();
        if is && !filler && out.len() < 2 {
            out.push(part);
        }
    }
    out
}
