//! One timeline up to an instant, another from there: how a branch leaves its line.

mod ball;

use super::{Mover, TimedAction, TimedBeat, TimedTie, Timeline, Trail};
use crate::choreography::Entry;
use crate::math::{Listed, Point};
use crate::motion::facing;
use crate::set::{ActionId, Edge, PlayerId};
use crate::timing::PlacedRun;
use alloc::vec::Vec;

/// What is known of the line that goes on in another one.
#[derive(Debug)]
pub(crate) struct Splice<'a> {
    /// The fork, seconds; on the grid of [`facing::time_of`], so that facings need no blend.
    pub at: f64,
    /// The ids of the line's actions in the branch's set; what has none never begins there.
    pub before: &'a [(ActionId, ActionId)],
    /// The ids of the other's actions in the branch's set.
    pub after: &'a [(ActionId, ActionId)],
    /// For each beat of the branch's set: whether it is the line's, and which one of its own.
    pub beats: &'a [(bool, usize)],
}

impl Timeline {
    /// When its read is made, seconds; 0 for a main line.
    pub(crate) fn begins(&self) -> f64 {
        self.begins
    }

    /// A player who is under way at `t`: where, which way and how fast.
    pub(crate) fn under_way(&self, id: PlayerId, t: f64) -> Option<(Point, Entry)> {
        let mover = self.movers.get(id.index())?.as_ref()?;
        let PlacedRun { start, run } = mover.run_at(t).filter(|r| r.start < t)?;
        if t - start >= run.duration() {
            return None;
        }
        let sample = run.law().at(t - start);
        let entry = Entry {
            way: run.path().tangent(sample.s),
            speed: sample.v,
        };
        Some((run.path().point(sample.s), entry))
    }

    /// This timeline up to the fork, and `rest`, which begins there, from then on.
    pub(crate) fn spliced(&self, mut rest: Self, splice: &Splice<'_>) -> Self {
        let at = splice.at;
        let (carries, joins) = self.carries_into(&rest, at);
        let spans = self.spans_into(&rest, at, joins);
        let mut cut = [0_usize; 5];
        let mut movers = [const { None }; 5];
        for (i, mover) in self.movers.iter().enumerate() {
            let (Some(a), Some(b)) = (mover, rest.movers.get_mut(i).and_then(Option::take)) else {
                continue;
            };
            let kept = a.runs.partition_point(|r| r.start < at);
            if let Some(slot) = cut.get_mut(i) {
                *slot = kept;
            }
            let mut runs: Vec<PlacedRun> = a.runs.iter().take(kept).cloned().listed();
            runs.extend(b.runs.into_iter().map(|r| PlacedRun {
                start: r.start + at,
                run: r.run,
            }));
            if let Some(slot) = movers.get_mut(i) {
                *slot = Some(Mover {
                    start: a.start,
                    runs,
                    facing: a.facing.then(&b.facing, facing::sample_of(at)),
                });
            }
        }
        let (actions, trails, before, after) = self.actions_into(&rest, splice, &cut);
        let mut ties: Vec<TimedTie> = moved_ties(&self.ties, &before, 0.0)
            .filter(|t| t.from.t < at && t.to.t < at)
            .listed();
        ties.extend(moved_ties(&rest.ties, &after, at));
        let mut screens: Vec<super::TimedScreen> = Vec::new();
        for s in self.screens.iter().filter(|s| s.set < at - 1e-4) {
            let mut s = *s;
            s.screen.row = s.screen.row.and_then(|r| before.get(r).copied().flatten());
            s.free = s.free.min(at);
            screens.push(s);
        }
        for s in &rest.screens {
            let mut s = *s;
            s.screen.row = s.screen.row.and_then(|r| after.get(r).copied().flatten());
            (s.set, s.free) = (s.set + at, s.free + at);
            s.shut = s.shut.map(|t| t + at);
            let stood = |o: &&mut super::TimedScreen| {
                o.screen.who == s.screen.who && o.screen.row == s.screen.row
            };
            match screens.iter_mut().find(stood) {
                Some(stood) => (stood.free, stood.shut) = (s.free, s.shut),
                None => screens.push(s),
            }
        }
        let duration = at + rest.duration;
        Self {
            duration,
            movers,
            carries,
            spans,
            actions,
            trails,
            ties,
            beats: self.beats_into(&rest, splice, duration),
            screens,
            limits: self.limits,
            begins: at,
        }
    }

    /// Rows, their ways, and where each row of either is now.
    #[allow(clippy::type_complexity, reason = "one walk makes all four")]
    fn actions_into(
        &self,
        rest: &Self,
        splice: &Splice<'_>,
        cut: &[usize; 5],
    ) -> (
        Vec<TimedAction>,
        Vec<Option<Trail>>,
        Vec<Option<usize>>,
        Vec<Option<usize>>,
    ) {
        let at = splice.at;
        let mut actions: Vec<TimedAction> = Vec::new();
        let mut trails: Vec<Option<Trail>> = Vec::new();
        let (mut before, mut after) = (Vec::new(), Vec::new());
        for (row, trail) in self.actions.iter().zip(&self.trails) {
            let id = named(splice.before, row.id).filter(|_| row.start < at);
            before.push(id.map(|_| actions.len()));
            let Some(id) = id else { continue };
            let mut row = row.clone();
            row.id = id;
            // What has left the hands comes to others.
            let gone = row
                .marks
                .iter()
                .any(|m| m.edge == Edge::Release && m.t < at);
            if !gone {
                row.end = row.end.min(at);
                row.marks.retain(|m| m.t <= at);
            }
            row.waits.retain(|w| w.start < at);
            actions.push(row);
            trails.push(trail.as_ref().and_then(|t| self.trail_before(t, at)));
        }
        for (row, trail) in rest.actions.iter().zip(&rest.trails) {
            let mut row = row.clone();
            row.id = named(splice.after, row.id).unwrap_or(row.id);
            (row.start, row.end) = (row.start + at, row.end + at);
            row.marks.iter_mut().for_each(|m| m.t += at);
            for wait in &mut row.waits {
                (wait.start, wait.end) = (wait.start + at, wait.end + at);
            }
            let shift = cut.get(row.who.index()).copied().unwrap_or(0);
            let trail = trail.clone().map(|mut t| {
                t.pieces.iter_mut().for_each(|p| p.0 += shift);
                t
            });
            let same = actions
                .iter()
                .position(|a| a.id == row.id && a.who == row.who);
            after.push(Some(same.unwrap_or(actions.len())));
            match same.and_then(|i| Some((actions.get_mut(i)?, trails.get_mut(i)?))) {
                Some((a, t)) => {
                    a.end = row.end;
                    (a.slack, a.critical) = (row.slack, row.critical);
                    a.marks.retain(|m| m.t < at);
                    let begun = a.marks.clone();
                    let fresh = |m: &&crate::set::Mark| {
                        !begun.iter().any(|o| o.edge == m.edge && o.of == m.of)
                    };
                    a.marks.extend(row.marks.iter().filter(fresh).copied());
                    a.waits.extend(row.waits);
                    *t = joined(t.take(), trail);
                }
                None => {
                    actions.push(row);
                    trails.push(trail);
                }
            }
        }
        (actions, trails, before, after)
    }

    fn trail_before(&self, trail: &Trail, at: f64) -> Option<Trail> {
        let mover = self.movers.get(trail.who.index())?.as_ref()?;
        let mut out = Trail {
            who: trail.who,
            whole: crate::math::BezPath::new(),
            pieces: Vec::new(),
        };
        for (run, s0, s1) in &trail.pieces {
            let placed = mover.runs.get(*run).filter(|r| r.start < at)?;
            let end = placed.run.law().at(at - placed.start).s.min(*s1);
            if end - s0 > 0.05 {
                out.pieces.push((*run, *s0, end));
                let way = placed.run.path().between(*s0, end);
                out.whole.extend(way.elements().iter().copied());
            }
        }
        (!out.pieces.is_empty()).then_some(out)
    }

    fn beats_into(&self, rest: &Self, splice: &Splice<'_>, duration: f64) -> Vec<TimedBeat> {
        let mut starts: Vec<f64> = Vec::new();
        for (own, beat) in splice.beats {
            let of = if *own { self } else { rest };
            let start = of.beats.get(*beat).map_or(0.0, |b| b.start);
            let start = if *own { start } else { start + splice.at };
            let before = starts.last().copied().unwrap_or(0.0);
            starts.push(start.max(before).min(duration));
        }
        let ends = starts.iter().skip(1).copied().chain([duration]).listed();
        let pairs = starts.iter().zip(ends);
        pairs
            .map(|(start, end)| TimedBeat { start: *start, end })
            .listed()
    }
}

fn named(ids: &[(ActionId, ActionId)], id: ActionId) -> Option<ActionId> {
    ids.iter().find(|(own, _)| *own == id).map(|(_, new)| *new)
}

fn joined(a: Option<Trail>, b: Option<Trail>) -> Option<Trail> {
    match (a, b) {
        (Some(mut a), Some(b)) => {
            a.whole.extend(b.whole.elements().iter().copied());
            a.pieces.extend(b.pieces);
            Some(a)
        }
        (a, b) => a.or(b),
    }
}

fn moved_ties<'a>(
    ties: &'a [TimedTie],
    rows: &'a [Option<usize>],
    by: f64,
) -> impl Iterator<Item = TimedTie> + 'a {
    ties.iter().filter_map(move |tie| {
        let mut tie = *tie;
        for end in [&mut tie.from, &mut tie.to] {
            end.action = rows.get(end.action).copied().flatten()?;
            end.t += by;
        }
        Some(tie)
    })
}
