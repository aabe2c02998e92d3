//! What is left of ways that are under way.

use super::Line;
use crate::athlete::{Limits, Pace};
use crate::choreography::{Entry, Leg, LegMark, Part, Step};
use crate::math::Point;
use crate::path::Knot;
use crate::set::{ActionId, PlayerId};
use crate::timeline::TimedAction;
use crate::timing::{PlacedRun, RunLeg};
use alloc::vec::Vec;

/// Knots nearer than this are behind already, metres.
const BEHIND: f64 = 0.1;

impl Line {
    /// Whether what is run at `at` belongs to that row.
    pub(super) fn runs_at(&self, row: &TimedAction, at: f64) -> bool {
        let Some(row) = self.laid(row.id, row.who) else {
            return false;
        };
        let mut runs = self.schedule.runs.iter();
        runs.any(|placed| {
            let t = at - self.begins - placed.start;
            let mut legs = placed.run.legs.iter();
            t > 0.0 && legs.any(|l| l.row == row && l.t[0] < t && t < l.t[1])
        })
    }

    /// The row of the schedule behind an action of the line's set.
    fn laid(&self, id: ActionId, who: PlayerId) -> Option<usize> {
        let is = |own: ActionId| self.ids.iter().any(|(a, b)| *a == own && *b == id);
        let mut rows = self.schedule.choreography.rows.iter();
        rows.position(|r| r.who == who && is(r.id))
    }

    /// What is left at `at` of the legs of an action, the first one from where its runner is.
    pub(super) fn legs_left(&self, id: ActionId, who: PlayerId, at: f64) -> Vec<Leg> {
        let mut out = Vec::new();
        let Some(row) = self.laid(id, who) else {
            return out;
        };
        for step in &self.schedule.choreography.steps {
            let Step::Leg(leg) = step else { continue };
            if leg.row != row {
                continue;
            }
            let runs = self.schedule.runs.iter();
            let found = runs
                .filter(|r| r.run.who == who)
                .find_map(|placed| Some((placed, placed.run.leg(row, leg.part)?)));
            let Some((placed, run_leg)) = found else {
                continue;
            };
            let t = at - self.begins - placed.start;
            if run_leg.t[1] <= t {
                continue;
            }
            out.push(if run_leg.t[0] >= t {
                leg.clone()
            } else {
                cut_short(leg, placed, run_leg, t)
            });
        }
        out
    }
}

/// The part of a leg that is ahead `t` seconds into its run.
fn cut_short(leg: &Leg, placed: &PlacedRun, on: &RunLeg, t: f64) -> Leg {
    let path = placed.run.path();
    let s = placed.run.law().at(t).s;
    let here = path.point(s);
    let mut knots = Vec::from([Knot::Smooth(here)]);
    let mut places = Vec::from([None]);
    let mut from = on.s[0];
    let last = leg.knots.len().saturating_sub(1);
    for (i, knot) in leg.knots.iter().enumerate() {
        let (at, _) = path.nearest_between(point_of(*knot), from, on.s[1]);
        from = at;
        let ahead = at > s + BEHIND;
        if i > 0 && (ahead || i == last) {
            knots.push(*knot);
            places.push(Some((i, at)));
        }
    }
    let mut marks = Vec::new();
    for mark in &leg.marks {
        let found = places
            .iter()
            .enumerate()
            .find_map(|(k, p)| p.filter(|p| p.0 == mark.knot).map(|p| (k, p.1)));
        if let Some((knot, _)) = found.filter(|(_, at)| at - mark.before > s) {
            marks.push(LegMark { knot, ..*mark });
        }
    }
    Leg {
        knots,
        marks,
        takes: None,
        from_rest: false,
        ..leg.clone()
    }
}

/// The steps of a runner who stops as soon as the feet can.
pub(super) fn stop(at: Point, entry: Entry, limits: &Limits) -> Leg {
    let brakes = entry.speed * entry.speed / (2.0 * limits.brake.max(0.1));
    let to = at + entry.way * (1.02 * brakes + 0.02);
    Leg {
        row: 0,
        part: Part::Way,
        knots: [Knot::Smooth(at), Knot::Smooth(to)].into(),
        effort: limits.effort(Pace::Sprint, false),
        takes: None,
        marks: Vec::new(),
        from_rest: false,
    }
}

/// Where legs lead.
pub(super) fn end_of(legs: &[Leg]) -> Option<Point> {
    legs.last()?.knots.last().map(|k| point_of(*k))
}

fn point_of(knot: Knot) -> Point {
    match knot {
        Knot::Smooth(p) | Knot::Plant(p) | Knot::Toward(p, _) => p,
    }
}
