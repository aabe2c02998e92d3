//! Screens and gates: who walks where and stands which way.

use super::bind;
use super::lay::Layer;
use super::screen::{self, Scene, Screen};
use super::{Leg, LegMark, Part, Step};
use crate::athlete::{Effort, Pace};
use crate::math::Point;
use crate::path::Knot;
use crate::set::{Action, ActionId, Edge, Family, Kind, OffSide, PlayerId, SetPlace, Target, Via};
use alloc::vec::Vec;

impl Layer<'_> {
    pub(super) fn screen(&mut self, id: ActionId, action: &Action) {
        let scene = self.scene_of(id, action);
        let binding = self.bindings.iter().find(|b| b.screen == Some(id)).copied();
        let middle = action.at.as_ref().or(match &action.to {
            Some(Target::Place(place)) => Some(place),
            _ => None,
        });
        let first = action.who.first().copied();
        let place = |l: &Self, p: &SetPlace| first.map(|w| l.floor.resolve(p, w));
        let at = middle
            .and_then(|p| place(self, p))
            .unwrap_or_else(|| match &binding {
                Some(b) => screen::default_place(&scene, b),
                None => first.map_or(Point::ZERO, |w| self.floor.of(w)),
            });
        match action.who.as_slice() {
            [a, b] => self.pair(id, action, [*a, *b], at, &scene),
            _ => self.each(action, |l, who| {
                let facing = screen::facing(at, &scene);
                let index = l.post(id, action, who, at, facing);
                l.out.steps.push(Step::Stand(index));
            }),
        }
    }

    /// Two screeners as one: the posts of a gate, or shoulder to shoulder.
    fn pair(
        &mut self,
        id: ActionId,
        action: &Action,
        who: [PlayerId; 2],
        at: Point,
        scene: &Scene,
    ) {
        let [a, b] = who;
        let limits = self.limits(a);
        let gate = action.kind == Some(Kind::Gate);
        let posts = screen::gate_posts(
            at,
            scene,
            self.floor.of(a),
            self.floor.of(b),
            &limits,
            !self.revision.late_gates.contains(&id),
        );
        let facing = if gate {
            screen::gate_facing(at, scene)
        } else {
            screen::facing(at, scene)
        };
        let shuts = gate && self.shuts_behind(id);
        let mut indices = Vec::new();
        for (who, (open, shut)) in [a, b].into_iter().zip(posts) {
            let index = self.post(id, action, who, if gate { open } else { shut }, facing);
            self.out.steps.push(Step::Stand(index));
            indices.push(index);
            if shuts {
                if let Some(screen) = self.out.screens.get_mut(index) {
                    screen.shut_at = Some(shut);
                }
                let row = self.out.rows.len() - 1;
                let effort = Effort {
                    top: limits.shuffle * limits.v_max,
                    accel: 1.0,
                };
                self.leg(Leg {
                    row,
                    part: Part::Shut,
                    knots: alloc::vec![Knot::Smooth(open), Knot::Smooth(shut)],
                    effort,
                    takes: None,
                    marks: Vec::new(),
                    from_rest: true,
                });
                self.floor.put(who, shut);
            }
        }
        if let [i, j] = indices.as_slice() {
            for (mine, other) in [(*i, *j), (*j, *i)] {
                if let Some(screen) = self.out.screens.get_mut(mine) {
                    screen.twin = Some(other);
                }
            }
        }
    }

    /// A gate shuts behind its last cutter, if that one goes through the middle.
    fn shuts_behind(&self, id: ActionId) -> bool {
        self.bindings
            .iter()
            .rev()
            .find(|b| b.screen == Some(id))
            .and_then(|b| self.set.action(b.cut).map(|cut| (b, cut)))
            .is_some_and(|(b, cut)| {
                let own = bind::offs(cut)
                    .find(|o| o.who == b.screener)
                    .and_then(|o| o.side);
                !matches!(own.or(cut.side), Some(OffSide::Left | OffSide::Right))
            })
    }

    /// One screener walks to the place and stands.
    fn post(
        &mut self,
        id: ActionId,
        action: &Action,
        who: PlayerId,
        at: Point,
        facing: f64,
    ) -> usize {
        let row = self.row(id, action, who);
        let pace = action.pace.unwrap_or(Pace::Run);
        let from = self.floor.of(who);
        let mut knots = alloc::vec![Knot::Smooth(from)];
        for via in &action.via {
            if let Via::Place(place) = via {
                knots.push(Knot::Smooth(self.floor.resolve(place, who)));
            }
        }
        knots.push(Knot::Smooth(at));
        let set = LegMark {
            edge: Edge::Set,
            of: None,
            knot: knots.len() - 1,
            before: 0.0,
        };
        let effort = self.limits(who).effort(pace, false);
        self.leg(Leg {
            row,
            part: Part::Way,
            knots,
            effort,
            takes: action.takes,
            marks: alloc::vec![set],
            from_rest: false,
        });
        self.floor.put(who, at);
        self.settle(who);
        if let Some(m) = self.last_move.get_mut(who.index()) {
            *m = None;
        }
        // A cut written before the screen it uses has already asked for the body.
        let early = self
            .laid
            .iter()
            .find(|(s, w, _)| *s == id && *w == who)
            .map(|l| l.2);
        let index = early.unwrap_or(self.out.screens.len());
        let body = Screen {
            row: Some(row),
            who,
            at,
            facing,
            shut_at: None,
            twin: None,
        };
        match self.out.screens.get_mut(index) {
            Some(slot) => *slot = body,
            None => self.out.screens.push(body),
        }
        if early.is_none() {
            self.laid.push((id, who, index));
        }
        index
    }

    /// What a screen is set against: its cutter's way and the ball.
    fn scene_of(&self, id: ActionId, action: &Action) -> Scene {
        let binding = self.bindings.iter().find(|b| b.screen == Some(id));
        let cutter = binding
            .map(|b| b.cutter)
            .or(action.for_whom.first().copied());
        let cut = binding.and_then(|b| self.set.action(b.cut));
        let from = cutter.map_or(Point::ZERO, |c| self.floor.of(c));
        let to = match (cut, cutter) {
            (Some(cut), Some(c)) => self.goal(cut, c),
            _ => self.ball(),
        };
        let ball_screen = screen::family(action) == Some(Family::Ball)
            || cutter.is_some_and(|c| self.holder == Some(c));
        Scene {
            from,
            to,
            ball_screen,
            ball: self.ball(),
            kind: action.kind,
        }
    }
}
