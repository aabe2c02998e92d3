//! Cuts and dribbles: whose screens they pass, where they plant, how hard they are run.

use super::bind::{self, Binding};
use super::curl;
use super::lay::Layer;
use super::route::{self, Pass, Stop, Wanted};
use super::screen::{self, Scene, Screen};
use super::{Leg, LegMark, Part, Step, Use};
use crate::athlete::{Effort, Pace};
use crate::math::{Listed, Point, distance};
use crate::path::Knot;
use crate::set::{Action, ActionId, Edge, Kind, OffSide, PlayerId, Verb, Via};
use alloc::vec::Vec;

/// Metres of the slow steps of a change of pace: 0.3 to 0.5 s at a walk. Common practice, no source.
const SLOW: f64 = 0.45;

/// Something a way goes by, before it is known on which side.
enum Seed {
    By(Point),
    /// A screener: index into the screens.
    Body {
        index: usize,
        side: Option<OffSide>,
    },
}

impl Layer<'_> {
    pub(super) fn travel(&mut self, id: ActionId, action: &Action, who: PlayerId) {
        let row = self.row(id, action, who);
        let to = self.goal(action, who);
        let mut from = self.floor.of(who);
        let seeds = self.seeds(id, action, who, row, to);
        let first = seeds.iter().find_map(|s| match s {
            Seed::Body { index, .. } => self.out.screens.get(*index).copied(),
            Seed::By(_) => None,
        });
        let waits = first.filter(|s| bind::handoff_of(self.set, id, who, s.who).is_none());
        let mut from_rest = false;
        if let (Some(first), false) = (waits, action.free) {
            from_rest = true;
            let walked = self.walked_last.get(who.index()) == Some(&true);
            if action.verb == Verb::Cut && !walked && !skips_set_up(action.kind) {
                from = self.set_up(row, who, from, first.at);
            }
        }
        let stops = self.stops(&seeds, from, to, (who, action.kind));
        let flows = self.moved_last(who) && !from_rest && !waits_to_start(action);
        let wanted = Wanted {
            kind: action.kind,
            from,
            to,
            stops: &stops,
            ball: self.ball(),
            flows,
        };
        let made = route::route(&wanted);
        let pace = action.pace.unwrap_or_else(|| usual_pace(action.kind));
        let limits = self.limits(who);
        let effort = limits.effort(pace, action.verb == Verb::Dribble);
        let way = Leg {
            row,
            part: Part::Way,
            knots: made.knots,
            effort,
            takes: action.takes,
            marks: made.marks,
            from_rest,
        };
        if action.kind == Some(Kind::Hesitation) {
            self.change_of_pace(way, limits.effort(Pace::Walk, true));
        } else {
            self.leg(way);
        }
        if let Some(w) = self.walked_last.get_mut(who.index()) {
            *w = action.pace == Some(Pace::Walk);
        }
        self.floor.put(who, to);
        if let Some(m) = self.last_move.get_mut(who.index()) {
            *m = Some((id, to));
        }
        if let Some(m) = self.moved_last.get_mut(who.index()) {
            *m = true;
        }
    }

    /// Fast, a few slow steps, fast again. A way of several points changes pace on its first one.
    fn change_of_pace(&mut self, way: Leg, slow: Effort) {
        let [Some(a), Some(b)] = [way.knots.first(), way.knots.get(1)].map(|k| k.map(knot_at))
        else {
            self.leg(way);
            return;
        };
        let long = distance(a, b);
        let at = |s: f64| a.lerp(b, (s / long).clamp(0.0, 1.0));
        let (from, to) = (at(0.5 * long - 0.5 * SLOW), at(0.5 * long + 0.5 * SLOW));
        let piece = |part, ends: [Point; 2], effort| Leg {
            row: way.row,
            part,
            knots: ends.map(Knot::Smooth).to_vec(),
            effort,
            takes: None,
            marks: Vec::new(),
            from_rest: false,
        };
        let lead = Leg {
            from_rest: way.from_rest,
            ..piece(Part::Lead, [a, from], way.effort)
        };
        self.leg(lead);
        let plant = LegMark {
            edge: Edge::Plant,
            of: None,
            knot: 0,
            before: 0.0,
        };
        let mut steps = piece(Part::Slow, [from, to], slow);
        steps.marks.push(plant);
        self.leg(steps);
        let mut rest = way;
        if let Some(first) = rest.knots.first_mut() {
            *first = Knot::Smooth(to);
        }
        rest.marks.retain(|m| m.edge != Edge::Plant);
        rest.from_rest = false;
        self.leg(rest);
    }

    /// The walk before the burst; returns where it ends.
    fn set_up(&mut self, row: usize, who: PlayerId, from: Point, first: Point) -> Point {
        let clear = |p: Point| {
            PlayerId::ALL.iter().filter(|o| **o != who).all(|o| {
                self.floor
                    .at
                    .get(o.index())
                    .copied()
                    .flatten()
                    .is_none_or(|q| distance(p, q) > 0.9)
            })
        };
        let Some(to) = route::set_up_point(from, first, self.floor.court, clear) else {
            return from;
        };
        let effort = self.limits(who).effort(Pace::Walk, false);
        self.leg(Leg {
            row,
            part: Part::SetUp,
            knots: alloc::vec![Knot::Smooth(from), Knot::Smooth(to)],
            effort,
            takes: None,
            marks: Vec::new(),
            from_rest: false,
        });
        to
    }

    /// What the way goes by, in running order, with the use of each screen noted.
    fn seeds(
        &mut self,
        id: ActionId,
        action: &Action,
        who: PlayerId,
        row: usize,
        to: Point,
    ) -> Vec<Seed> {
        let bindings: Vec<Binding> = self
            .bindings
            .iter()
            .filter(|b| b.cut == id && b.cutter == who)
            .copied()
            .listed();
        let mut next = bindings.iter();
        let mut seeds: Vec<Seed> = Vec::new();
        let mut order = 0;
        let offs = action.off.iter().map(|o| Via::Off(o.clone()));
        for via in offs.chain(action.via.iter().cloned()) {
            let off = match via {
                Via::Place(place) => {
                    seeds.push(Seed::By(self.floor.resolve(&place, who)));
                    continue;
                }
                Via::Off(off) => off,
            };
            let Some(binding) = next.next() else { continue };
            let index = self.screen_of(binding, self.floor.of(who), to);
            let side = off.side.or(action.side).or(usual_side(action.kind));
            let gives = bind::handoff_of(self.set, id, who, off.who).is_some();
            if !gives {
                self.out.uses.push(Use {
                    cutter: row,
                    screen: index,
                    order,
                });
                order += 1;
            }
            // The taker comes on the outside of the giver: the giver's body keeps the chaser off.
            let side = if gives {
                side.or(Some(OffSide::Over))
            } else {
                side
            };
            seeds.push(Seed::Body { index, side });
        }
        seeds
    }

    /// The points of the way itself, from where the burst starts.
    fn stops(
        &self,
        seeds: &[Seed],
        mut from: Point,
        to: Point,
        (who, kind): (PlayerId, Option<Kind>),
    ) -> Vec<Stop> {
        let mut stops: Vec<Stop> = Vec::new();
        for (i, seed) in seeds.iter().enumerate() {
            let next = seeds.get(i + 1).map_or(to, |s| match s {
                Seed::By(p) => *p,
                Seed::Body { index, .. } => self.out.screens.get(*index).map_or(to, |b| b.at),
            });
            let pass = match seed {
                Seed::By(p) => {
                    from = *p;
                    stops.push(Stop::By(from));
                    continue;
                }
                Seed::Body { index, side } => {
                    let Some(body) = self.out.screens.get(*index) else {
                        continue;
                    };
                    let known = stops
                        .iter()
                        .any(|s| matches!(s, Stop::Past(p) if p.with == Some(body.who)));
                    if known {
                        continue;
                    }
                    self.pass_of(body, from, next, *side, (who, kind))
                }
            };
            from = pass.at;
            stops.push(Stop::Past(pass));
        }
        stops
    }

    /// How one body is passed; through the middle of a gate both posts at one point.
    fn pass_of(
        &self,
        body: &Screen,
        from: Point,
        next: Point,
        side: Option<OffSide>,
        (who, kind): (PlayerId, Option<Kind>),
    ) -> Pass {
        let twin = body.twin.and_then(|t| self.out.screens.get(t));
        let gap = screen::gap(self.floor.limits(who), self.floor.limits(body.who));
        if let Some(twin) = twin.filter(|t| distance(body.at, t.at) < 2.0 * gap - 0.1) {
            let (at, along) = screen::round_wall([body, twin], from, next, side, gap);
            return Pass {
                who: body.who,
                at,
                screen: *body,
                along,
                with: Some(twin.who),
            };
        }
        let outer = match (twin, side) {
            (Some(twin), Some(OffSide::Left)) => {
                Some(if body.at.x <= twin.at.x { body } else { twin })
            }
            (Some(twin), Some(OffSide::Right)) => {
                Some(if body.at.x > twin.at.x { body } else { twin })
            }
            _ => None,
        };
        if let (Some(twin), None) = (twin, outer) {
            let along = -crate::math::unit(body.facing);
            let at = body.at.midpoint(twin.at);
            return Pass {
                who: body.who,
                at,
                screen: *body,
                along,
                with: Some(twin.who),
            };
        }
        // Round a gate, its outer post is the one that counts.
        let post = outer.unwrap_or(body);
        let (mine, theirs) = (self.floor.limits(who), self.floor.limits(post.who));
        let choose = |a, b| screen::on_side(side, a, b);
        let curl = (kind == Some(Kind::Curl))
            .then(|| curl::entry(post.at, from, next, gap, choose))
            .flatten();
        let (at, along) =
            curl.unwrap_or_else(|| screen::brush(post, from, next, side, mine, theirs));
        Pass {
            who: body.who,
            at,
            screen: *post,
            along,
            with: twin.map(|t| t.who),
        }
    }

    /// The body that a binding means; a man without a screen action screens where he stands.
    pub(super) fn screen_of(&mut self, binding: &Binding, from: Point, to: Point) -> usize {
        let known = binding.screen.and_then(|s| {
            self.laid
                .iter()
                .find(|(id, who, _)| *id == s && *who == binding.screener)
        });
        if let Some((.., index)) = known {
            return *index;
        }
        let scene = Scene {
            from,
            to,
            ball_screen: false,
            ball: self.ball(),
            kind: None,
        };
        let written = binding
            .screen
            .and_then(|s| self.set.action(s))
            .and_then(|a| a.at.as_ref());
        let at = written.map_or_else(
            || self.floor.of(binding.screener),
            |place| self.floor.resolve(place, binding.screener),
        );
        let gives =
            bind::handoff_of(self.set, binding.cut, binding.cutter, binding.screener).is_some();
        if binding.screen.is_none()
            && !gives
            && let Some(index) = self.still_stands(binding.screener)
        {
            return index;
        }
        let index = self.out.screens.len();
        self.out.screens.push(Screen {
            row: None,
            who: binding.screener,
            at,
            facing: screen::facing(at, &scene),
            shut_at: None,
            twin: None,
        });
        match binding.screen {
            Some(s) => self.laid.push((s, binding.screener, index)),
            None if !gives => self.out.steps.push(Step::Stand(index)),
            None => {}
        }
        index
    }

    /// The body of a player who is used where they stand and who has done nothing since.
    fn still_stands(&self, who: PlayerId) -> Option<usize> {
        let by = |row: usize| self.out.rows.get(row).map(|r| r.who) == Some(who);
        self.out.steps.iter().rev().find_map(|step| match step {
            Step::Stand(i) => {
                let body = self.out.screens.get(*i)?;
                (body.who == who).then_some(body.row.is_none().then_some(*i))
            }
            Step::Leg(leg) => by(leg.row).then_some(None),
            Step::Pass(t) | Step::Handoff(t) => (t.to == who || by(t.row)).then_some(None),
            Step::Shot { row, .. } | Step::Still { row, .. } => by(*row).then_some(None),
        })?
    }

    pub(super) fn leg(&mut self, mut leg: Leg) {
        for d in self
            .revision
            .detours
            .iter()
            .filter(|d| d.row == leg.row && d.part == leg.part)
        {
            insert(&mut leg.knots, &mut leg.marks, d.through);
        }
        self.out.steps.push(Step::Leg(leg));
    }
}

/// Whether a move is written as waiting at its own start, which stops whatever went before.
fn waits_to_start(action: &Action) -> bool {
    action.ties.iter().any(|t| t.mine == Edge::Start)
}

/// Cuts that use a body without leading a defender into it first.
fn skips_set_up(kind: Option<Kind>) -> bool {
    matches!(
        kind,
        Some(
            Kind::Ghost
                | Kind::Get
                | Kind::Shallow
                | Kind::Loop
                | Kind::Slip
                | Kind::Roll
                | Kind::ShortRoll
                | Kind::Dive
                | Kind::Pop
                | Kind::Split
        )
    )
}

/// On which side a kind goes by where nothing is written.
fn usual_side(kind: Option<Kind>) -> Option<OffSide> {
    (kind == Some(Kind::OverTheElbows)).then_some(OffSide::Over)
}

/// How hard a kind is run where nothing is written. Common practice, no source.
fn usual_pace(kind: Option<Kind>) -> Pace {
    match kind {
        Some(Kind::Backdoor | Kind::Ghost | Kind::FortyFive | Kind::Slip | Kind::Hard) => {
            Pace::Sprint
        }
        Some(Kind::Retreat | Kind::Hostage) => Pace::Jog,
        _ => Pace::Run,
    }
}

/// Puts a detour point where the way is nearest to it and moves the marks behind it on.
fn insert(knots: &mut Vec<Knot>, marks: &mut [LegMark], through: Point) {
    let longer = |w: &[Knot]| match w {
        [a, b] => {
            let (a, b) = (knot_at(a), knot_at(b));
            distance(a, through) + distance(through, b) - distance(a, b)
        }
        _ => f64::INFINITY,
    };
    let best = knots
        .windows(2)
        .enumerate()
        .min_by(|(_, a), (_, b)| longer(a).total_cmp(&longer(b)))
        .map(|(i, _)| i + 1);
    if let Some(i) = best {
        knots.insert(i, Knot::Smooth(through));
        for mark in marks.iter_mut().filter(|m| m.knot >= i) {
            mark.knot += 1;
        }
    }
}

fn knot_at(knot: &Knot) -> Point {
    match knot {
        Knot::Smooth(p) | Knot::Plant(p) | Knot::Toward(p, _) => *p,
    }
}
