//! From steps to waits: which blocks there are and who waits for whom.
//!
//! A block is rigid: one unknown, its start. The written order gives everybody their own order;
//! the rest follows from what the trade takes for granted (see the guide's table of waits).

use super::run::Run;
use crate::athlete::Limits;
use crate::choreography::{Choreography, Leg, Part, Step, Transfer};
use crate::fault::Place;
use crate::flight;
use crate::math::{Point, distance};
use crate::set::{ActionId, Edge, Kind, PlayerId, Set, TieRelation, Verb};
use alloc::vec;
use alloc::vec::Vec;

/// Seconds before anybody moves at the start of a set.
const FIRST: f64 = 0.2;
/// Wind-up of a pass. Common practice, no source: 0.2–0.3 s.
pub(super) const WIND_UP: f64 = 0.25;
/// A passer stays so long after the ball has left.
const FOLLOW_THROUGH: f64 = 0.15;
/// Catch to the next wind-up.
const SECURE: f64 = 0.2;
/// Catch on two feet to the next own move.
const LAND: f64 = 0.3;
/// A ball may arrive so much before the receiver …
const EARLY: f64 = 0.05;
/// … and the receiver should not stand longer than this before it comes.
const STANDING: f64 = 0.15;
/// A giver stands so long before the exchange, and stays so long after.
const GIVE: f64 = 0.2;
/// A screener stays so long after the cutter is by.
const STAY: f64 = 0.2;
/// A screen stands at least so long. Common practice, no source.
const SET_BEFORE: f64 = 0.3;
/// The lead a screen keeps where it can.
const LEAD: f64 = 0.6;
/// Gather of a shot off one foot, and catch to gather.
const GATHER: f64 = 0.3;

/// Both players of a pass reach toward each other, together so far, metres.
const HANDS: f64 = 0.66;

/// Seconds a pass between two bodies flies.
pub(super) fn hand_time(from: Point, to: Point, kind: Option<Kind>, limits: &Limits) -> f64 {
    flight::pass_time((distance(from, to) - HANDS).max(0.3), kind, limits)
}

/// How readily a wait gives way in a contradiction; 0 never.
pub(super) mod soft {
    pub(super) const FEET: u8 = 1;
    pub(super) const SHUT: u8 = 2;
    pub(in super::super) const STRIDE: u8 = 3;
    pub(super) const STANDING: u8 = 4;
    pub(super) const OPENING: u8 = 5;
}

/// What a block is.
#[derive(Clone, Debug)]
pub(super) enum What {
    Origin,
    /// Index into [`Woven::runs`].
    Run(usize),
    /// Fixed instants, seconds from the block's start.
    Still(Vec<(Edge, f64)>),
}

#[derive(Clone, Debug)]
pub(super) struct Block {
    pub who: Option<PlayerId>,
    pub row: Option<usize>,
    pub what: What,
    pub beat: u16,
    /// May move later than earliest.
    pub elastic: bool,
}

/// An instant of a block.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum At {
    Start,
    LegStart(usize, Part),
    LegEnd(usize, Part),
    Mark(usize, Edge, Option<PlayerId>),
    Edge(Edge),
    /// So many seconds after the start.
    Plus(f64),
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Instant {
    pub block: usize,
    pub at: At,
    pub plus: f64,
}

impl Instant {
    fn new(block: usize, at: At) -> Self {
        Self {
            block,
            at,
            plus: 0.0,
        }
    }

    fn later(self, plus: f64) -> Self {
        Self {
            plus: self.plus + plus,
            ..self
        }
    }
}

/// Why somebody waits.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Why {
    OwnOrder,
    Ball,
    Opening,
    Feet { screener: PlayerId },
    Stays { cutter: PlayerId },
    Receiver,
    Standing,
    Shut,
    Exchange,
    Stride,
    Written { place: Place },
}

#[derive(Clone, Debug)]
pub(super) struct Wait {
    pub from: Instant,
    pub to: Instant,
    pub lag: f64,
    pub wanted: f64,
    pub softness: u8,
    pub why: Why,
}

/// A pass whose catch is found while solving.
#[derive(Clone, Debug)]
pub(super) struct OpenPass {
    pub block: usize,
    pub transfer: Transfer,
    /// The block of the receiver's run and the row of its leg on which the ball is caught.
    pub run: Option<(usize, usize)>,
}

/// Blocks and waits.
#[derive(Clone, Debug)]
pub(super) struct Woven {
    pub blocks: Vec<Block>,
    pub waits: Vec<Wait>,
    pub runs: Vec<Run>,
    /// Blocks of each row, in order.
    pub row_blocks: Vec<Vec<usize>>,
    /// The block at which each screen is free.
    pub stands: Vec<Option<usize>>,
    pub stride: Vec<OpenPass>,
    pub free: Vec<OpenPass>,
    /// Opening instant of each beat with its lag.
    pub openings: Vec<(Instant, f64)>,
    /// What the set leads to.
    pub goal: Option<Instant>,
}

impl Woven {
    /// Seconds from a block's start to one of its instants.
    pub(super) fn offset(&self, i: Instant) -> Option<f64> {
        let block = self.blocks.get(i.block)?;
        let at = match (&block.what, i.at) {
            (_, At::Start) | (What::Origin, _) => 0.0,
            (_, At::Plus(t)) => t,
            (What::Run(r), at) => {
                let run = self.runs.get(*r)?;
                match at {
                    At::LegStart(row, part) => run.leg(row, part)?.t[0],
                    At::LegEnd(row, part) => run.leg(row, part)?.t[1],
                    At::Mark(row, edge, of) => run.mark(row, edge, of)?,
                    _ => run.duration(),
                }
            }
            (What::Still(marks), At::Edge(edge) | At::Mark(_, edge, _)) => {
                marks.iter().find(|(e, _)| *e == edge)?.1
            }
            (What::Still(marks), _) => marks.last().map_or(0.0, |m| m.1),
        };
        Some(at + i.plus)
    }

    pub(super) fn run_of(&self, block: usize) -> Option<&Run> {
        match self.blocks.get(block)?.what {
            What::Run(r) => self.runs.get(r),
            _ => None,
        }
    }

    /// Where an instant of a row is.
    pub(super) fn locate(
        &self,
        ch: &Choreography,
        row: usize,
        edge: Edge,
        of: Option<PlayerId>,
    ) -> Option<Instant> {
        let blocks = self.row_blocks.get(row)?;
        let (first, last) = (*blocks.first()?, *blocks.last()?);
        let leg_of = |part: Part| {
            blocks
                .iter()
                .copied()
                .find(|b| self.run_of(*b).is_some_and(|r| r.leg(row, part).is_some()))
        };
        let screen = ch.rows.get(row)?.verb == Verb::Screen;
        match edge {
            Edge::Start => {
                let run = self.run_of(first);
                let at = run
                    .and_then(|r| r.legs.iter().find(|l| l.row == row))
                    .map_or(At::Start, |l| At::LegStart(row, l.part));
                Some(Instant::new(first, at))
            }
            Edge::Shut => Some(Instant::new(
                leg_of(Part::Shut)?,
                At::LegStart(row, Part::Shut),
            )),
            Edge::Free | Edge::End if screen => match leg_of(Part::Shut) {
                Some(b) => Some(Instant::new(b, At::LegEnd(row, Part::Shut)).later(LAND)),
                None => {
                    let s = ch.screens.iter().position(|s| s.row == Some(row))?;
                    Some(Instant::new(
                        self.stands.get(s).copied().flatten()?,
                        At::Start,
                    ))
                }
            },
            Edge::End => match self.run_of(last) {
                Some(run) => {
                    let leg = run.legs.iter().rfind(|l| l.row == row)?;
                    Some(Instant::new(last, At::LegEnd(row, leg.part)))
                }
                None => Some(Instant::new(last, At::Edge(Edge::End))),
            },
            _ => blocks.iter().copied().find_map(|b| {
                let i = Instant::new(b, At::Mark(row, edge, of));
                self.offset(i).map(|_| i)
            }),
        }
    }
}

/// Weaves the steps of a choreography.
pub(super) fn weave(set: &Set, ch: &Choreography, limits: &[Limits; 5]) -> Woven {
    let mut w = Weaver::new(set, ch, limits);
    for step in &ch.steps {
        w.open_beat(step);
        w.step(step);
    }
    w.build_runs();
    w.screens();
    w.gates();
    w.exchanges();
    w.ties();
    w.out
}

struct OpenRun<'a> {
    block: usize,
    legs: Vec<&'a Leg>,
    beat: u16,
    /// The ball was taken on the run, so the next beat does not stop it.
    took: bool,
}

struct Weaver<'a> {
    set: &'a Set,
    ch: &'a Choreography,
    limits: &'a [Limits; 5],
    out: Woven,
    open: [Option<OpenRun<'a>>; 5],
    closed: Vec<(usize, PlayerId, Vec<&'a Leg>)>,
    /// What the next own step of each player waits for.
    last: [Vec<Instant>; 5],
    /// Since when the ball is with its holder.
    ball: Instant,
    caught: bool,
    opening: (Instant, f64),
    cue: Option<Instant>,
    beat: u16,
    /// For each screen: when it is set.
    set_at: Vec<Vec<Instant>>,
    handoffs: Vec<(usize, Transfer)>,
}

impl<'a> Weaver<'a> {
    fn new(set: &'a Set, ch: &'a Choreography, limits: &'a [Limits; 5]) -> Self {
        let origin = Block {
            who: None,
            row: None,
            what: What::Origin,
            beat: 0,
            elastic: false,
        };
        let begin = Instant::new(0, At::Start).later(FIRST);
        let out = Woven {
            blocks: vec![origin],
            waits: Vec::new(),
            runs: Vec::new(),
            row_blocks: vec![Vec::new(); ch.rows.len()],
            stands: vec![None; ch.screens.len()],
            stride: Vec::new(),
            free: Vec::new(),
            openings: vec![(begin, 0.0)],
            goal: None,
        };
        Self {
            set,
            ch,
            limits,
            out,
            open: [const { None }; 5],
            closed: Vec::new(),
            last: [const { Vec::new() }; 5].map(|_: Vec<Instant>| vec![begin]),
            ball: begin,
            caught: false,
            opening: (begin, 0.0),
            cue: None,
            beat: 0,
            set_at: vec![Vec::new(); ch.screens.len()],
            handoffs: Vec::new(),
        }
    }

    fn row(&self, row: usize) -> Option<&'a crate::choreography::Row> {
        self.ch.rows.get(row)
    }

    fn free(&self, row: usize) -> bool {
        self.row(row).is_some_and(|r| r.free)
    }

    fn limits(&self, who: PlayerId) -> &'a Limits {
        self.limits.get(who.index()).unwrap_or(&self.limits[0])
    }

    /// A beat opens one reaction after the last release or exchange before it.
    fn open_beat(&mut self, step: &Step) {
        let Some(beat) = self.beat_of(step) else {
            return;
        };
        while self.beat < beat {
            self.beat += 1;
            if let Some(cue) = self.cue.take() {
                self.opening = (cue, self.set.level.limits().reaction);
            }
            self.out.openings.push(self.opening);
        }
    }

    fn beat_of(&self, step: &Step) -> Option<u16> {
        let row = match step {
            Step::Leg(leg) => leg.row,
            Step::Pass(t) | Step::Handoff(t) => t.row,
            Step::Shot { row, .. } | Step::Still { row, .. } => *row,
            Step::Stand(screen) => self.ch.screens.get(*screen)?.row?,
        };
        Some(self.row(row)?.id.beat)
    }

    fn step(&mut self, step: &'a Step) {
        match step {
            Step::Leg(leg) => self.leg(leg),
            Step::Stand(screen) => self.stand(*screen),
            Step::Pass(t) => self.pass(t),
            Step::Handoff(t) => self.handoff(t),
            Step::Shot { row, running } => self.shot(*row, *running),
            Step::Still { row, lasts } => {
                let marks = vec![(Edge::Start, 0.0), (Edge::End, *lasts)];
                if let Some(block) = self.still(*row, marks, true) {
                    let who = self.row(*row).map(|r| r.who);
                    self.then(who, vec![Instant::new(block, At::Edge(Edge::End))]);
                }
            }
        }
    }

    fn block(
        &mut self,
        who: Option<PlayerId>,
        row: Option<usize>,
        what: What,
        elastic: bool,
    ) -> usize {
        self.out.blocks.push(Block {
            who,
            row,
            what,
            beat: self.beat,
            elastic,
        });
        let block = self.out.blocks.len() - 1;
        if let Some(list) = row.and_then(|r| self.out.row_blocks.get_mut(r)) {
            list.push(block);
        }
        block
    }

    fn wait(&mut self, from: Instant, to: Instant, lag: f64, softness: u8, why: Why) {
        self.out.waits.push(Wait {
            from,
            to,
            lag,
            wanted: lag,
            softness,
            why,
        });
    }

    fn last(&self, who: PlayerId) -> Vec<Instant> {
        self.last.get(who.index()).cloned().unwrap_or_default()
    }

    fn then(&mut self, who: Option<PlayerId>, what: Vec<Instant>) {
        if let Some(slot) = who.and_then(|w| self.last.get_mut(w.index())) {
            *slot = what;
        }
    }

    fn own_order(&mut self, who: PlayerId, to: Instant) {
        for from in self.last(who) {
            self.wait(from, to, 0.0, 0, Why::OwnOrder);
        }
    }

    /// The wait for the beat, where the action has no wait of its own.
    fn beat_opens(&mut self, row: usize, to: Instant) {
        let own = self
            .row(row)
            .and_then(|r| self.set.action(r.id))
            .is_some_and(|a| {
                a.ties
                    .iter()
                    .any(|t| t.relation == TieRelation::After || t.mine == Edge::Start)
            });
        if !own {
            let (from, lag) = self.opening;
            self.wait(from, to, lag, soft::OPENING, Why::Opening);
        }
    }

    fn start_tied(&self, row: usize) -> bool {
        self.row(row)
            .and_then(|r| self.set.action(r.id))
            .is_some_and(|a| a.ties.iter().any(|t| t.mine == Edge::Start))
    }

    fn close(&mut self, who: PlayerId) {
        if let Some(run) = self.open.get_mut(who.index()).and_then(Option::take) {
            self.closed.push((run.block, who, run.legs));
        }
    }

    // --- moving ----------------------------------------------------------------------------

    fn leg(&mut self, leg: &'a Leg) {
        let Some(row) = self.row(leg.row) else { return };
        let (who, dribble) = (row.who, row.verb == Verb::Dribble);
        let beat = self.beat;
        let first_of_row = self.out.row_blocks.get(leg.row).is_some_and(Vec::is_empty);
        let flows = self
            .open
            .get(who.index())
            .and_then(Option::as_ref)
            .is_some_and(|run| {
                !leg.from_rest
                    && !(first_of_row && self.start_tied(leg.row))
                    && (run.beat == beat || run.took)
            });
        if !flows {
            self.close(who);
        }
        let block = match self.open.get(who.index()).and_then(Option::as_ref) {
            Some(run) => run.block,
            None => {
                let block = self.block(Some(who), Some(leg.row), What::Origin, true);
                let start = Instant::new(block, At::Start);
                self.own_order(who, start);
                if first_of_row && leg.part != Part::Shut {
                    self.beat_opens(leg.row, start);
                }
                if let Some(slot) = self.open.get_mut(who.index()) {
                    *slot = Some(OpenRun {
                        block,
                        legs: Vec::new(),
                        beat,
                        took: false,
                    });
                }
                block
            }
        };
        if let Some(run) = self.open.get_mut(who.index()).and_then(Option::as_mut) {
            run.legs.push(leg);
            run.beat = beat;
        }
        if let Some(list) = self.out.row_blocks.get_mut(leg.row)
            && !list.contains(&block)
        {
            list.push(block);
        }
        if dribble {
            if let Some(b) = self.out.blocks.get_mut(block) {
                b.elastic = false;
            }
            if !flows {
                let start = Instant::new(block, At::LegStart(leg.row, leg.part));
                self.wait(self.ball, start, 0.0, 0, Why::Ball);
            }
            self.ball = Instant::new(block, At::LegEnd(leg.row, leg.part));
            self.caught = false;
        }
        let settle = if leg.part == Part::Shut { LAND } else { 0.0 };
        self.then(
            Some(who),
            vec![Instant::new(block, At::LegEnd(leg.row, leg.part)).later(settle)],
        );
    }

    fn stand(&mut self, index: usize) {
        let Some(screen) = self.ch.screens.get(index) else {
            return;
        };
        let who = screen.who;
        self.close(who);
        let set = match screen.row {
            Some(row) => self
                .out
                .row_blocks
                .get(row)
                .and_then(|b| b.last())
                .map(|b| Instant::new(*b, At::Mark(row, Edge::Set, None)))
                .into_iter()
                .collect(),
            None => self.last(who),
        };
        let block = self.block(Some(who), None, What::Still(Vec::new()), true);
        let free = Instant::new(block, At::Start);
        for from in &set {
            let lag = if screen.row.is_some() {
                SET_BEFORE
            } else {
                0.0
            };
            self.wait(*from, free, lag, 0, Why::OwnOrder);
        }
        if let Some(slot) = self.set_at.get_mut(index) {
            *slot = set;
        }
        if let Some(slot) = self.out.stands.get_mut(index) {
            *slot = Some(block);
        }
        self.then(Some(who), vec![free]);
    }

    fn still(&mut self, row: usize, marks: Vec<(Edge, f64)>, elastic: bool) -> Option<usize> {
        let who = self.row(row)?.who;
        self.close(who);
        let block = self.block(Some(who), Some(row), What::Still(marks), elastic);
        let start = Instant::new(block, At::Start);
        self.own_order(who, start);
        self.beat_opens(row, start);
        Some(block)
    }

    // --- the ball --------------------------------------------------------------------------

    fn pass(&mut self, t: &'a Transfer) {
        let Some(row) = self.row(t.row) else { return };
        let (who, to, free) = (row.who, t.to, row.free);
        let takes = hand_time(t.from, t.target, row.kind, self.limits(who));
        let marks = vec![
            (Edge::Start, 0.0),
            (Edge::Release, WIND_UP),
            (Edge::Catch, WIND_UP + takes),
            (Edge::End, WIND_UP + takes),
        ];
        let running = self
            .open
            .get(who.index())
            .and_then(Option::as_ref)
            .map(|r| r.block);
        let after = self.last(who);
        if free && let Some(run) = running {
            // A free pass may leave during the passer's own run, not before it.
            self.then(Some(who), vec![Instant::new(run, At::Start)]);
        }
        let Some(block) = self.still(t.row, marks, false) else {
            return;
        };
        let start = Instant::new(block, At::Start);
        let (release, catch) = (
            Instant::new(block, At::Edge(Edge::Release)),
            Instant::new(block, At::Edge(Edge::Catch)),
        );
        let ball = if free && running == Some(self.ball.block) {
            Instant::new(self.ball.block, At::Start)
        } else {
            self.ball.later(if self.caught { SECURE } else { 0.0 })
        };
        self.wait(ball, start, 0.0, 0, Why::Ball);
        let mut next = vec![release.later(FOLLOW_THROUGH)];
        if free {
            next.extend(after);
        }
        self.then(Some(who), next);
        if t.in_stride && !free {
            let run = self
                .open
                .get_mut(to.index())
                .and_then(Option::as_mut)
                .map(|run| {
                    run.took = true;
                    (run.block, run.legs.last().map_or(t.row, |l| l.row))
                });
            self.out.stride.push(OpenPass {
                block,
                transfer: *t,
                run,
            });
        } else {
            self.catch_at_spot(block, catch, to, free);
            if free {
                self.out.free.push(OpenPass {
                    block,
                    transfer: *t,
                    run: None,
                });
            }
        }
        self.ball = catch;
        self.caught = true;
        self.cue = Some(release);
        self.out.goal = Some(catch);
    }

    fn catch_at_spot(&mut self, block: usize, catch: Instant, to: PlayerId, free: bool) {
        let there = self.last(to);
        let ran = self.open.get(to.index()).is_some_and(Option::is_some);
        self.close(to);
        let mut next = vec![catch.later(LAND)];
        if free {
            next.extend(there);
        } else {
            for from in there {
                self.wait(from, catch, -EARLY, soft::FEET, Why::Receiver);
                if ran && from.block != block {
                    self.wait(catch, from, -STANDING, soft::STANDING, Why::Standing);
                }
            }
        }
        self.then(Some(to), next);
    }

    fn handoff(&mut self, t: &'a Transfer) {
        let Some(row) = self.row(t.row) else { return };
        let who = row.who;
        let marks = vec![
            (Edge::Start, 0.0),
            (Edge::Set, 0.0),
            (Edge::Release, GIVE),
            (Edge::Catch, GIVE),
            (Edge::End, 2.0 * GIVE),
        ];
        let Some(block) = self.still(t.row, marks, false) else {
            return;
        };
        let release = Instant::new(block, At::Edge(Edge::Release));
        let ball = self.ball;
        self.wait(ball, Instant::new(block, At::Start), 0.0, 0, Why::Ball);
        self.then(Some(who), vec![release.later(GIVE)]);
        if let Some(run) = self.open.get_mut(t.to.index()).and_then(Option::as_mut) {
            run.took = true;
        }
        self.handoffs.push((block, *t));
        self.ball = release;
        self.caught = false;
        self.cue = Some(release);
        self.out.goal = Some(release);
    }

    fn shot(&mut self, row: usize, running: bool) {
        let Some(who) = self.row(row).map(|r| r.who) else {
            return;
        };
        let limits = self.limits(who);
        let holds = self.caught;
        let release = match (running, holds) {
            (true, _) => GATHER,
            (false, true) => limits.release,
            (false, false) => limits.release_quick,
        };
        let marks = vec![
            (Edge::Start, 0.0),
            (Edge::Release, release),
            (Edge::End, release + FOLLOW_THROUGH),
        ];
        let ball = self.ball;
        let before = self.last(who);
        if running {
            // The gather begins on the run: the ball leaves with the last step.
            let early: Vec<Instant> = before.iter().map(|i| i.later(-GATHER)).collect();
            self.then(Some(who), early);
        } else if holds {
            // The feet land with the catch; nothing else has to happen before the shot.
            self.then(Some(who), vec![ball]);
        }
        let Some(block) = self.still(row, marks, false) else {
            return;
        };
        let start = Instant::new(block, At::Start);
        let secure = if running && holds { GATHER } else { 0.0 };
        self.wait(ball, start, secure, 0, Why::Ball);
        let release = Instant::new(block, At::Edge(Edge::Release));
        self.then(Some(who), vec![release.later(FOLLOW_THROUGH)]);
        self.cue = Some(release);
        self.out.goal = Some(release);
    }

    // --- what needs the runs ---------------------------------------------------------------

    fn build_runs(&mut self) {
        for who in PlayerId::ALL {
            self.close(who);
        }
        self.closed.sort_by_key(|c| c.0);
        for (block, who, legs) in core::mem::take(&mut self.closed) {
            let run = Run::new(who, &legs, self.limits(who));
            self.out.runs.push(run);
            if let Some(b) = self.out.blocks.get_mut(block) {
                b.what = What::Run(self.out.runs.len() - 1);
            }
        }
    }

    /// Cutters wait for feet, screeners for cutters.
    fn screens(&mut self) {
        for u in &self.ch.uses {
            let Some(screen) = self.ch.screens.get(u.screen) else {
                continue;
            };
            let (Some(row), Some(stand)) = (
                self.row(u.cutter),
                self.out.stands.get(u.screen).copied().flatten(),
            ) else {
                continue;
            };
            let Some(by) = self
                .out
                .locate(self.ch, u.cutter, Edge::PassBy, Some(screen.who))
            else {
                continue;
            };
            let first = u.order == 0
                || screen.twin.is_some_and(|t| {
                    self.ch
                        .uses
                        .iter()
                        .any(|o| o.cutter == u.cutter && o.screen == t && o.order == 0)
                });
            if !row.free {
                let start = Instant::new(by.block, At::LegStart(u.cutter, Part::Way));
                let burst = self.out.offset(by).zip(self.out.offset(start));
                let burst = burst.map_or(SET_BEFORE, |(by, start)| by - start);
                let lag = if first {
                    burst.clamp(SET_BEFORE, 0.8)
                } else {
                    SET_BEFORE
                };
                for from in self.set_at.get(u.screen).cloned().unwrap_or_default() {
                    self.out.waits.push(Wait {
                        from,
                        to: by,
                        lag,
                        wanted: lag.max(LEAD),
                        softness: soft::FEET,
                        why: Why::Feet {
                            screener: screen.who,
                        },
                    });
                }
            }
            if screen.shut_at.is_none() || !self.is_last_use(u.screen, u.cutter) {
                let free = Instant::new(stand, At::Start);
                let stays = !screen.row.is_some_and(|r| self.free(r));
                if stays {
                    self.wait(by, free, STAY, 0, Why::Stays { cutter: row.who });
                }
            }
        }
    }

    fn is_last_use(&self, screen: usize, cutter: usize) -> bool {
        self.ch
            .uses
            .iter()
            .rfind(|u| u.screen == screen)
            .is_some_and(|u| u.cutter == cutter)
    }

    /// Both posts start to shut at the offset of the cutter's run from which neither touches.
    fn gates(&mut self) {
        let gates: Vec<(usize, usize)> = self
            .ch
            .uses
            .iter()
            .filter(|u| self.is_last_use(u.screen, u.cutter))
            .map(|u| (u.screen, u.cutter))
            .collect();
        for (index, cutter) in gates {
            let Some(screen) = self.ch.screens.get(index).filter(|s| s.shut_at.is_some()) else {
                continue;
            };
            let Some(post) = screen.row else { continue };
            let slide = self.out.locate(self.ch, post, Edge::Shut, None);
            let by = self
                .out
                .locate(self.ch, cutter, Edge::PassBy, Some(screen.who));
            let (Some(slide), Some(by)) = (slide, by) else {
                continue;
            };
            let Some(at) = self.shut_offset(slide.block, by, cutter) else {
                continue;
            };
            let from = Instant::new(by.block, At::Plus(at));
            let start = Instant::new(slide.block, At::Start);
            self.wait(from, start, 0.0, 0, Why::Shut);
            self.wait(start, from, 0.0, soft::SHUT, Why::Shut);
        }
    }

    /// The earliest offset of the cutter's run at which the slide may begin: from then on the two
    /// bodies, ellipses of shoulder by depth, never meet.
    fn shut_offset(&self, slide: usize, by: Instant, cutter: usize) -> Option<f64> {
        let (slide, run) = (self.out.run_of(slide)?, self.out.run_of(by.block)?);
        let by = self.out.offset(by)?;
        let who = self.row(cutter)?.who;
        let (a, b) = (self.limits(who), self.limits(slide.who));
        let wide = 0.5 * (a.shoulder + b.shoulder) + 0.02;
        let deep = 0.5 * (a.depth + b.depth) + 0.02;
        let way = run.path().tangent(run.law().at(by).s);
        let touches = |o: f64| {
            (0..=24_i32).any(|i| {
                let t = slide.duration() * f64::from(i) / 24.0;
                let d = run.point(o + t) - slide.point(t);
                let (along, across) = (d.dot(way) / deep, d.cross(way) / wide);
                along * along + across * across < 1.0
            })
        };
        let steps = 40_i32;
        let found = (0..=steps)
            .map(|i| by - 0.4 + 0.8 * f64::from(i) / f64::from(steps))
            .find(|o| !touches(*o));
        Some(found.unwrap_or(by + 0.4).max(0.0))
    }

    /// A hand-off happens where the taker's way passes the giver.
    fn exchanges(&mut self) {
        let mut taken: Vec<Instant> = Vec::new();
        for (block, t) in core::mem::take(&mut self.handoffs) {
            let Some(giver) = self.row(t.row).map(|r| r.who) else {
                continue;
            };
            let found = self.out.blocks.iter().enumerate().find_map(|(b, _)| {
                let run = self.out.run_of(b).filter(|r| r.who == t.to)?;
                let mark = run.marks.iter().find(|m| {
                    m.edge == Edge::PassBy
                        && m.of == Some(giver)
                        && !self.ch.uses.iter().any(|u| {
                            u.cutter == m.row
                                && self
                                    .ch
                                    .screens
                                    .get(u.screen)
                                    .is_some_and(|s| s.who == giver)
                        })
                })?;
                let i = Instant::new(b, At::Mark(mark.row, Edge::PassBy, Some(giver)));
                (!taken.contains(&i)).then_some(i)
            });
            let Some(by) = found else { continue };
            taken.push(by);
            let release = Instant::new(block, At::Edge(Edge::Release));
            self.wait(release, by, 0.0, 0, Why::Exchange);
            self.wait(by, release, 0.0, 0, Why::Exchange);
        }
    }

    /// What the author wrote.
    fn ties(&mut self) {
        for (row, r) in self.ch.rows.iter().enumerate() {
            let Some(action) = self.set.action(r.id) else {
                continue;
            };
            for tie in &action.ties {
                let Some(mine) = self.out.locate(self.ch, row, tie.mine, None) else {
                    continue;
                };
                let theirs = self.rows_of(tie.to);
                for (i, other) in theirs.into_iter().enumerate() {
                    let Some(from) = self.out.locate(self.ch, other, tie.edge, tie.of) else {
                        continue;
                    };
                    let why = Why::Written {
                        place: tie.place.clone(),
                    };
                    self.wait(from, mine, tie.lag, 0, why.clone());
                    if tie.relation == TieRelation::With && i == 0 {
                        self.wait(mine, from, 0.0 - tie.lag, 0, why);
                    }
                }
            }
        }
    }

    fn rows_of(&self, id: ActionId) -> Vec<usize> {
        let rows = self.ch.rows.iter().enumerate();
        rows.filter(|(_, r)| r.id == id).map(|(i, _)| i).collect()
    }
}
