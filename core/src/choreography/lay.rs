//! The walk over the written order: every action becomes steps, everybody's place moves on.

use super::bind::{self, Binding};
use super::place::Floor;
use super::route::{self, Pass, Stop, Wanted};
use super::screen::{self, Scene, Screen};
use super::{Choreography, Detour, Leg, LegMark, Part, Row, Step, Transfer, Use};
use crate::athlete::{Effort, Limits, Pace};
use crate::court::Court;
use crate::math::{Point, distance, sqrt};
use crate::path::Knot;
use crate::set::{
    Action, ActionId, Edge, Family, Kind, OffSide, PlayerId, Set, SetPlace, Target, Verb, Via,
};
use alloc::vec::Vec;

/// Seconds a fake or a hold lasts where nothing is written. Common practice, no source.
const FAKE: f64 = 0.35;
const HOLD: f64 = 0.5;

/// Lays the main line of a set on `court`, led round standing team mates by `detours`.
#[must_use]
pub fn lay(set: &Set, court: &Court, detours: &[Detour]) -> Choreography {
    let limits = PlayerId::ALL.map(|p| {
        set.player(p)
            .and_then(|p| p.level)
            .unwrap_or(set.level)
            .limits()
    });
    let mut floor = Floor {
        court,
        at: [None; 5],
        limits,
    };
    for player in &set.players {
        let at = floor.resolve(&player.at, player.id);
        floor.put(player.id, at);
    }
    let mut layer = Layer {
        set,
        floor,
        bindings: bind::bind(set),
        detours,
        holder: set.first_holder(),
        laid: Vec::new(),
        last_move: [None; 5],
        moved_last: [false; 5],
        out: Choreography {
            rows: Vec::new(),
            steps: Vec::new(),
            screens: Vec::new(),
            uses: Vec::new(),
            starts: floor.at,
        },
    };
    for (id, action) in set.actions() {
        layer.action(id, action);
    }
    layer.out
}

/// Something a way goes by, before it is known on which side.
enum Seed {
    By(Point),
    /// A screener: index into the screens.
    Body {
        index: usize,
        side: Option<OffSide>,
    },
}

struct Layer<'a> {
    set: &'a Set,
    floor: Floor<'a>,
    bindings: Vec<Binding>,
    detours: &'a [Detour],
    holder: Option<PlayerId>,
    /// Screens laid so far, by action and screener.
    laid: Vec<(ActionId, PlayerId, usize)>,
    /// The last cut or dribble of each player, for catches in stride.
    last_move: [Option<(ActionId, Point)>; 5],
    /// Whether a player's last step was a move, so that a plant may lie at its end.
    moved_last: [bool; 5],
    out: Choreography,
}

impl Layer<'_> {
    fn action(&mut self, id: ActionId, action: &Action) {
        match action.verb {
            Verb::Cut | Verb::Dribble => self.each(action, |l, who| l.travel(id, action, who)),
            Verb::Screen => self.screen(id, action),
            Verb::Pass => self.each(action, |l, who| l.pass(id, action, who)),
            Verb::Handoff => self.each(action, |l, who| l.handoff(id, action, who)),
            Verb::Shot => self.each(action, |l, who| {
                let row = l.row(id, action, who);
                let running = match action.kind.map(|k| k.row().family) {
                    Some(family) => family == Family::Running,
                    None => l.moved_last(who) && distance(l.floor.of(who), Point::ZERO) < 2.0,
                };
                l.out.steps.push(Step::Shot { row, running });
                l.holder = None;
            }),
            Verb::Hold | Verb::Fake => self.each(action, |l, who| {
                let row = l.row(id, action, who);
                let usual = if action.verb == Verb::Hold {
                    HOLD
                } else {
                    FAKE
                };
                l.out.steps.push(Step::Still {
                    row,
                    lasts: action.takes.unwrap_or(usual),
                });
                l.settle(who);
            }),
        }
    }

    fn each(&mut self, action: &Action, mut f: impl FnMut(&mut Self, PlayerId)) {
        for who in &action.who {
            f(self, *who);
        }
    }

    fn row(&mut self, id: ActionId, action: &Action, who: PlayerId) -> usize {
        self.out.rows.push(Row {
            id,
            who,
            verb: action.verb,
            kind: action.kind,
            free: action.free,
        });
        self.out.rows.len() - 1
    }

    fn moved_last(&self, who: PlayerId) -> bool {
        self.moved_last.get(who.index()).copied().unwrap_or(false)
    }

    fn settle(&mut self, who: PlayerId) {
        if let Some(m) = self.moved_last.get_mut(who.index()) {
            *m = false;
        }
    }

    fn ball(&self) -> Point {
        self.holder.map_or(Point::ZERO, |h| self.floor.of(h))
    }

    fn limits(&self, who: PlayerId) -> Limits {
        *self.floor.limits(who)
    }

    /// Where a cut or dribble ends.
    fn goal(&self, action: &Action, who: PlayerId) -> Point {
        match &action.to {
            Some(Target::Place(place)) => self.floor.resolve(place, who),
            Some(Target::Player(p)) => self.floor.of(*p),
            None if screen::family(action) == Some(Family::Rim) => {
                let rim = crate::court::Spot {
                    name: crate::court::SpotName::Rim,
                    side: None,
                };
                self.floor.court.spot(rim)
            }
            None => self.floor.of(who),
        }
    }

    // --- cuts and dribbles -----------------------------------------------------------------

    fn travel(&mut self, id: ActionId, action: &Action, who: PlayerId) {
        let row = self.row(id, action, who);
        let to = self.goal(action, who);
        let mut from = self.floor.of(who);
        let seeds = self.seeds(id, action, who, row, to);
        let first = seeds.iter().find_map(|s| match s {
            Seed::Body { index, .. } => self.out.screens.get(*index).copied(),
            Seed::By(_) => None,
        });
        let waits = first.filter(|s| !bind::handoff_of(self.set, id, who, s.who));
        let mut from_rest = false;
        if let (Some(first), false) = (waits, action.free) {
            from_rest = true;
            if action.verb == Verb::Cut && !skips_set_up(action.kind) {
                from = self.set_up(row, who, from, first.at);
            }
        }
        let stops = self.stops(&seeds, from, to, who);
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
        let effort = self.limits(who).effort(pace, action.verb == Verb::Dribble);
        self.leg(Leg {
            row,
            part: Part::Way,
            knots: made.knots,
            effort,
            takes: action.takes,
            marks: made.marks,
            from_rest,
        });
        self.floor.put(who, to);
        if let Some(m) = self.last_move.get_mut(who.index()) {
            *m = Some((id, to));
        }
        if let Some(m) = self.moved_last.get_mut(who.index()) {
            *m = true;
        }
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
            .collect();
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
            let side = off.side.or(action.side);
            let gives = bind::handoff_of(self.set, id, who, off.who);
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
    fn stops(&self, seeds: &[Seed], mut from: Point, to: Point, who: PlayerId) -> Vec<Stop> {
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
                    self.pass_of(body, from, next, *side, who)
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
        who: PlayerId,
    ) -> Pass {
        let round = matches!(side, Some(OffSide::Left | OffSide::Right));
        if let Some(twin) = body
            .twin
            .and_then(|t| self.out.screens.get(t))
            .filter(|_| !round)
        {
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
        let (mine, theirs) = (self.floor.limits(who), self.floor.limits(body.who));
        let (at, along) = screen::brush(body, from, next, side, mine, theirs);
        Pass {
            who: body.who,
            at,
            screen: *body,
            along,
            with: None,
        }
    }

    /// The body that a binding means; a man without a screen action screens where he stands.
    fn screen_of(&mut self, binding: &Binding, from: Point, to: Point) -> usize {
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
        };
        let written = binding
            .screen
            .and_then(|s| self.set.action(s))
            .and_then(|a| a.at.as_ref());
        let at = written.map_or_else(
            || self.floor.of(binding.screener),
            |place| self.floor.resolve(place, binding.screener),
        );
        let index = self.out.screens.len();
        self.out.screens.push(Screen {
            row: None,
            who: binding.screener,
            at,
            facing: screen::facing(at, &scene),
            shut_at: None,
            twin: None,
        });
        let gives = bind::handoff_of(self.set, binding.cut, binding.cutter, binding.screener);
        match binding.screen {
            Some(s) => self.laid.push((s, binding.screener, index)),
            None if !gives => self.out.steps.push(Step::Stand(index)),
            None => {}
        }
        index
    }

    fn leg(&mut self, mut leg: Leg) {
        for d in self
            .detours
            .iter()
            .filter(|d| d.row == leg.row && d.part == leg.part)
        {
            insert(&mut leg.knots, &mut leg.marks, d.through);
        }
        self.out.steps.push(Step::Leg(leg));
    }

    // --- screens ---------------------------------------------------------------------------

    fn screen(&mut self, id: ActionId, action: &Action) {
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
            slide_ends_in_time(&limits),
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
        if let (true, [i, j]) = (gate, indices.as_slice()) {
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
        }
    }

    // --- the ball changes hands ------------------------------------------------------------

    fn pass(&mut self, id: ActionId, action: &Action, who: PlayerId) {
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

    fn handoff(&mut self, id: ActionId, action: &Action, who: PlayerId) {
        let row = self.row(id, action, who);
        let Some(to) = action.receiver() else { return };
        let giver = self.floor.of(who);
        let comes = self.bindings.iter().any(|b| {
            b.cutter == to && b.screener == who && bind::handoff_of(self.set, b.cut, to, who)
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
        }));
        self.holder = Some(to);
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

/// How hard a kind is run where nothing is written. Common practice, no source.
fn usual_pace(kind: Option<Kind>) -> Pace {
    match kind {
        Some(Kind::Backdoor | Kind::Ghost | Kind::FortyFive | Kind::Slip) => Pace::Sprint,
        _ => Pace::Run,
    }
}

/// Whether a gate that opened at its usual gap can be still before a chaser who trails by a
/// reaction and an eighth of a second gets there.
fn slide_ends_in_time(limits: &Limits) -> bool {
    let slide = 0.36;
    let (a, b) = (limits.v_max / limits.tau, limits.brake);
    let takes = sqrt(2.0 * slide * (a + b) / (a * b));
    takes <= limits.reaction + 0.25
}

/// Puts a detour point where the way is nearest to it and moves the marks behind it on.
fn insert(knots: &mut Vec<Knot>, marks: &mut [LegMark], through: Point) {
    let at = |k: &Knot| match k {
        Knot::Smooth(p) | Knot::Plant(p) | Knot::Toward(p, _) => *p,
    };
    let longer = |w: &[Knot]| match w {
        [a, b] => {
            let (a, b) = (at(a), at(b));
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
