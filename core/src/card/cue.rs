//! What a step waits for.

use super::{Cue, Doing, Source, Step};
use crate::math::{Listed, distance, sort_short};
use crate::set::{Action, Edge, Kind, PlayerId, TieRelation, Verb};
use crate::timeline::{TimedAction, TimedTie};
use crate::timing::{BEHIND, EARLY, GIVE, GONE, LEAD, SAME_SPOT, SPLIT, STAY};
use alloc::vec::Vec;

/// A wait is named only where it ends this soon after it could; two instants this near are one to
/// the eye, seconds. Common practice, no source.
const TIGHT: f64 = 0.08;
/// What comes of rounding, seconds.
const EPS: f64 = 1e-5;
/// How closely it is looked when a leaver is gone, seconds.
const LOOK: f64 = 1.0 / 60.0;

/// The waits of `step` that hold.
pub(super) fn cues(source: &Source<'_>, step: &Step) -> Vec<Cue> {
    let Doing::Does(index) = step.what else {
        return Vec::new();
    };
    let Some(row) = source.timeline.actions().get(index) else {
        return Vec::new();
    };
    let on = Waiting { source, index, row };
    let mut out = Vec::new();
    out.extend(on.follows());
    out.extend(on.tied());
    if !out.iter().any(|c| c.mine == Edge::Start) {
        out.extend(on.opening());
    }
    out.extend(on.exchange());
    out.extend(on.receiver());
    out.extend(on.behind());
    out.extend(on.stays());
    // In the order in which they end.
    sort_short(&mut out, |a: &Cue, b| {
        (a.t + a.lag).total_cmp(&(b.t + b.lag))
    });
    out
}

/// One row, and what may hold it up.
struct Waiting<'a> {
    source: &'a Source<'a>,
    index: usize,
    row: &'a TimedAction,
}

impl Waiting<'_> {
    /// The wait of the own instant `mine`, at `own`, for that of another, if it is one that holds.
    fn cue(
        &self,
        mine: (Edge, f64),
        other: (usize, &TimedAction, Edge, f64),
        lag: f64,
    ) -> Option<Cue> {
        let (action, row, edge, t) = other;
        let spare = mine.1 - t - lag;
        (row.who != self.row.who && (-EPS..TIGHT).contains(&spare)).then_some(Cue {
            who: row.who,
            action,
            edge,
            of: None,
            t,
            lag,
            mine: mine.0,
        })
    }

    fn written(&self) -> Option<&Action> {
        self.source.set.action(self.row.id)
    }

    /// What the timetable has as a tie.
    fn tied(&self) -> Vec<Cue> {
        let ties = self.source.timeline.ties().iter();
        ties.filter(|t| t.to.action == self.index)
            .filter_map(|t| self.tie(t))
            .listed()
    }

    fn tie(&self, tie: &TimedTie) -> Option<Cue> {
        let from = self.source.timeline.actions().get(tie.from.action)?;
        let handed = from.verb == Verb::Handoff && tie.from.edge == Edge::Release;
        // Posts of one gate are one action; an exchange is told by who stands first.
        if from.id == self.row.id || handed && !tie.written {
            return None;
        }
        let feet = !tie.written && (tie.from.edge, tie.to.edge) == (Edge::Set, Edge::PassBy);
        let lag = if feet { tie.lag.max(LEAD) } else { tie.lag };
        let exact = |lag: f64| {
            let other = (tie.from.action, from, tie.from.edge, tie.from.t);
            self.cue((tie.to.edge, tie.to.t), other, lag)
        };
        let cue = exact(tie.lag).or_else(|| exact(lag))?;
        let mut marks = from.marks.iter();
        let same = marks.find(|m| m.edge == cue.edge && (m.t - cue.t).abs() < EPS);
        // A catch is the receiver's.
        let catches = self
            .source
            .receiver(from)
            .filter(|_| cue.edge == Edge::Catch);
        let who = catches.unwrap_or(cue.who);
        (who != self.row.who).then_some(Cue {
            who,
            of: same.and_then(|m| m.of),
            ..cue
        })
    }

    /// A beat opens one reaction after the last pass, hand-off or shot before it.
    fn opening(&self) -> Option<Cue> {
        let own = self.written()?.ties.iter();
        let tied = |t: &crate::set::Tie| t.relation == TieRelation::After || t.mine == Edge::Start;
        if own.clone().any(tied) {
            return None;
        }
        let gives = |a: &TimedAction| {
            matches!(a.verb, Verb::Pass | Verb::Handoff | Verb::Shot)
                && a.id.beat < self.row.id.beat
                && self.source.set.action(a.id).and_then(Action::actor) == Some(a.who)
        };
        let (action, row) = self.source.rows().filter(|(_, a)| gives(a)).last()?;
        let reaction = self.source.set.level.limits().reaction;
        let other = (action, row, Edge::Release, row.at(Edge::Release)?);
        self.cue((Edge::Start, self.row.start), other, reaction)
    }

    /// Giver and taker of a hand-off: who is there first waits for the other.
    fn exchange(&self) -> Option<Cue> {
        let taken = |a: &TimedAction| {
            a.verb == Verb::Handoff && self.source.receiver(a) == Some(self.row.who)
        };
        if self.row.verb == Verb::Handoff && self.source.receiver(self.row).is_some() {
            let release = self.row.at(Edge::Release)?;
            let to = self.source.receiver(self.row)?;
            let by = |(_, a): &(usize, &TimedAction)| {
                a.who == to && a.start < release && release < a.end + EPS
            };
            let (action, row) = self.source.rows().find(by)?;
            let mark = row.marks.iter().find(|m| (m.t - release).abs() < EPS)?;
            let cue = self.cue(
                (Edge::Release, release),
                (action, row, mark.edge, mark.t),
                0.0,
            )?;
            return Some(Cue { of: mark.of, ..cue });
        }
        let mut rows = self.source.rows();
        let (action, giver) = rows.find(|(_, a)| {
            let at = a.at(Edge::Release).unwrap_or(f64::INFINITY);
            taken(a) && self.row.start < at && at < self.row.end + EPS
        })?;
        let (stands, release) = (giver.at(Edge::Set)?, giver.at(Edge::Release)?);
        let mut marks = self.row.marks.iter();
        let mine = marks.find(|m| (m.t - release).abs() < EPS)?;
        let other = (action, giver, Edge::Set, stands);
        self.cue((mine.edge, mine.t), other, GIVE)
    }

    /// A pass to a spot meets whoever runs there.
    fn receiver(&self) -> Option<Cue> {
        let catch = self
            .row
            .at(Edge::Catch)
            .filter(|_| self.row.verb == Verb::Pass)?;
        let to = self.source.receiver(self.row)?;
        let there = |a: &TimedAction| match a.verb {
            Verb::Cut | Verb::Dribble | Verb::Handoff => Some((Edge::End, a.end)),
            Verb::Screen => a.at(Edge::Set).map(|t| (Edge::Set, t)),
            _ => None,
        };
        self.source
            .rows()
            .filter(|(_, a)| a.who == to)
            .find_map(|(i, a)| {
                let (edge, t) = there(a)?;
                self.cue((Edge::Catch, catch), (i, a, edge, t), -EARLY)
            })
    }

    /// The second cutter off one screen comes behind the first.
    fn behind(&self) -> Option<Cue> {
        let by = |m: &&crate::set::Mark| m.edge == Edge::PassBy;
        self.row.marks.iter().filter(by).find_map(|mine| {
            let mut before = self.source.rows().take(self.index);
            before.find_map(|(i, a)| {
                let theirs = a.marks.iter().find(|m| by(m) && m.of == mine.of)?;
                let other = (i, a, Edge::PassBy, theirs.t);
                let cue = self.cue((Edge::PassBy, mine.t), other, BEHIND)?;
                Some(Cue {
                    of: theirs.of,
                    ..cue
                })
            })
        })
    }

    /// Moves that follow another's by their kind.
    fn follows(&self) -> Option<Cue> {
        let mine = (Edge::Start, self.row.start);
        let begins = |(i, a): (usize, &TimedAction), lag: f64| {
            self.cue(mine, (i, a, Edge::Start, a.start), lag)
        };
        let mut rows = self.source.rows().filter(|(_, a)| a.who != self.row.who);
        match self.row.kind? {
            Kind::Fill => {
                let spot = self.source.place(self.row.who, self.row.end)?;
                rows.take_while(|(i, _)| *i < self.index)
                    .find_map(|(i, a)| begins((i, a), self.gone(a, spot)? - a.start))
            }
            Kind::Lift | Kind::Drift => {
                let drives =
                    |a: &TimedAction| a.verb == Verb::Dribble && a.id.beat == self.row.id.beat;
                rows.find(|(_, a)| drives(a)).and_then(|r| begins(r, 0.0))
            }
            Kind::Split => rows
                .take_while(|(i, _)| *i < self.index)
                .filter(|(_, a)| a.kind == Some(Kind::Split))
                .last()
                .and_then(|r| begins(r, SPLIT)),
            _ => None,
        }
    }

    /// When somebody who starts at `spot` is far enough gone from it.
    fn gone(&self, leaver: &TimedAction, spot: crate::math::Point) -> Option<f64> {
        let away = |t: f64| Some(distance(self.source.place(leaver.who, t)?, spot));
        if away(leaver.start)? > SAME_SPOT {
            return None;
        }
        let mut t = leaver.start;
        while t < self.row.start + TIGHT {
            if away(t)? >= GONE {
                // It was so a little before: never later than whoever waited for it went.
                return Some(if t < self.row.start + LOOK {
                    t.min(self.row.start)
                } else {
                    t
                });
            }
            t += LOOK;
        }
        None
    }

    /// A screener stays for the last who comes by.
    fn stays(&self) -> Option<Cue> {
        let free = self
            .row
            .at(Edge::Free)
            .filter(|_| self.row.verb == Verb::Screen)?;
        let (action, cutter, t) = last_by(self.source, self.row.who, self.row.start, free)?;
        let cue = self.cue((Edge::Free, free), (action, cutter, Edge::PassBy, t), STAY)?;
        Some(Cue {
            of: Some(self.row.who),
            ..cue
        })
    }
}

/// Who is the last to pass `screener` between two instants: row and when.
fn last_by<'a>(
    source: &Source<'a>,
    screener: PlayerId,
    from: f64,
    until: f64,
) -> Option<(usize, &'a TimedAction, f64)> {
    passers(source, screener, from, until)
        .into_iter()
        .reduce(|a, b| if b.2 > a.2 { b } else { a })
}

/// Everybody who passes `screener` between two instants, in written order: row and when.
pub(super) fn passers<'a>(
    source: &Source<'a>,
    screener: PlayerId,
    from: f64,
    until: f64,
) -> Vec<(usize, &'a TimedAction, f64)> {
    let by = |(i, a): (usize, &'a TimedAction)| {
        let mut marks = a.marks.iter();
        let mark = marks.find(|m| {
            m.edge == Edge::PassBy && m.of == Some(screener) && m.t > from && m.t < until
        })?;
        Some((i, a, mark.t))
    };
    source.rows().filter_map(by).listed()
}
