//! The ball changes hands: who catches on the run, who comes to a hand-off.

use super::bind;
use super::lay::Layer;
use super::screen::{self, Screen};
use super::{Leg, LegMark, Part, Step, Transfer};
use crate::athlete::Pace;
use crate::math::{Point, distance};
use crate::path::Knot;
use crate::set::{Action, ActionId, Edge, Kind, OffSide, PlayerId, Verb};

impl Layer<'_> {
    pub(super) fn pass(&mut self, id: ActionId, action: &Action, who: PlayerId) {
        let row = self.row(id, action, who);
        let Some(to) = action.receiver() else { return };
        let at = action.at.as_ref().map(|p| self.floor.resolve(p, to));
        let in_stride = !action.free && (at.is_some() || self.catches_running(to));
        self.out.steps.push(Step::Pass(Transfer {
            row,
            to,
            at,
            from: self.floor.of(who),
            target: self.floor.of(to),
            in_stride: in_stride && self.moved_last(to),
            keeps: false,
        }));
        self.holder = Some(to);
        self.settle(who);
        if !in_stride {
            self.settle(to);
        }
    }

    /// Whether the receiver's last move is a cut to the ring.
    fn catches_running(&self, who: PlayerId) -> bool {
        let Some((id, to)) = self.last_move.get(who.index()).copied().flatten() else {
            return false;
        };
        let Some(action) = self.set.action(id) else {
            return false;
        };
        let stands = matches!(
            action.kind,
            Some(Kind::DuckIn | Kind::SealCut | Kind::Flash)
        );
        action.verb == Verb::Cut && !stands && distance(to, Point::ZERO) < 1.7
    }

    pub(super) fn handoff(&mut self, id: ActionId, action: &Action, who: PlayerId) {
        let row = self.row(id, action, who);
        let Some(to) = action.receiver() else { return };
        let giver = self.floor.of(who);
        let comes = self.bindings.iter().any(|b| {
            b.cutter == to
                && b.screener == who
                && bind::handoff_of(self.set, b.cut, to, who) == Some(id)
        });
        let target = if comes {
            self.floor.of(to)
        } else {
            self.bring(id, action, who, to)
        };
        self.out.steps.push(Step::Handoff(Transfer {
            row,
            to,
            at: None,
            from: giver,
            target,
            in_stride: true,
            keeps: action.kind == Some(Kind::Keep),
        }));
        self.holder = crate::set::holder_after(self.holder, action);
        self.settle(who);
    }

    /// Brings a taker without a cut of their own to the giver's stop.
    fn bring(&mut self, id: ActionId, action: &Action, giver: PlayerId, taker: PlayerId) -> Point {
        let row = self.row(id, action, taker);
        let from = self.floor.of(taker);
        let body = Screen {
            row: None,
            who: giver,
            at: self.floor.of(giver),
            facing: 0.0,
            shut_at: None,
            twin: None,
        };
        let (mine, theirs) = (self.limits(taker), self.limits(giver));
        let (at, along) = screen::brush(&body, from, body.at, Some(OffSide::Over), &mine, &theirs);
        let mark = LegMark {
            edge: Edge::PassBy,
            of: Some(giver),
            knot: 1,
            before: 0.0,
        };
        self.leg(Leg {
            row,
            part: Part::Way,
            knots: alloc::vec![Knot::Smooth(from), Knot::Toward(at, along)],
            effort: mine.effort(action.pace.unwrap_or(Pace::Run), false),
            takes: None,
            marks: alloc::vec![mark],
            from_rest: false,
        });
        self.floor.put(taker, at);
        if let Some(m) = self.moved_last.get_mut(taker.index()) {
            *m = true;
        }
        at
    }
}
