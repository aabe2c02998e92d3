//! From steps to waits: which blocks there are and who waits for whom.
//!
//! A block is rigid: one unknown, its start. The written order gives everybody their own order;
//! the rest follows from what the trade takes for granted (see the guide's table of waits).

use super::Takeover;
use super::block::{After, At, Block, Instant, Stops, Wait, What, Why, Woven, soft};
use crate::athlete::Limits;
use crate::choreography::{Choreography, Entry, Leg, Part, Step, Transfer};
use crate::set::{Edge, PlayerId, Set, TieRelation, Verb};
use alloc::vec;
use alloc::vec::Vec;

/// Seconds before anybody moves at the start of a set.
const FIRST: f64 = 0.2;
/// Catch on two feet to the next own move.
pub(super) const LAND: f64 = 0.3;
/// A screener stays so long after the cutter is by.
pub(crate) const STAY: f64 = 0.2;
/// A screen stands at least so long. Common practice, no source.
pub(super) const SET_BEFORE: f64 = 0.3;
/// The lead a screen keeps where it can.
pub(crate) const LEAD: f64 = 0.6;

/// Weaves the steps of a choreography.
pub(super) fn weave(
    set: &Set,
    ch: &Choreography,
    limits: &[Limits; 5],
    takeover: Option<&Takeover>,
) -> Woven {
    let mut w = Weaver::new(set, ch, limits);
    if let Some(takeover) = takeover.filter(|_| cfg!(feature = "authoring")) {
        w.take_over(takeover);
    }
    for step in &ch.steps {
        w.open_beat(step);
        w.step(step);
    }
    w.build_runs();
    w.screens();
    w.gates();
    w.exchanges();
    w.followers();
    w.ties();
    w.out
}

pub(super) struct OpenRun<'a> {
    pub(super) block: usize,
    pub(super) legs: Vec<&'a Leg>,
    beat: u16,
    /// The ball was taken on the run, so the next beat does not stop it.
    pub(super) took: bool,
}

pub(super) struct Weaver<'a> {
    pub(super) set: &'a Set,
    pub(super) ch: &'a Choreography,
    limits: &'a [Limits; 5],
    pub(super) out: Woven,
    pub(super) open: [Option<OpenRun<'a>>; 5],
    pub(super) closed: Vec<(usize, PlayerId, Vec<&'a Leg>)>,
    /// What the next own step of each player waits for.
    last: [After; 5],
    /// Since when the ball is with its holder.
    pub(super) ball: Instant,
    /// When the holder got it.
    pub(super) got: Instant,
    pub(super) caught: bool,
    opening: (Instant, f64),
    pub(super) cue: Option<Instant>,
    beat: u16,
    /// For each screen: when it is set.
    pub(super) set_at: Vec<After>,
    pub(super) handoffs: Vec<(usize, Transfer)>,
    #[cfg(feature = "authoring")]
    entries: [Option<Entry>; 5],
    /// When a ball that was in the air or on the floor before is in hand.
    #[cfg(feature = "authoring")]
    taken_up: Option<Instant>,
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
            spots: Vec::new(),
            openings: vec![(begin, 0.0)],
            givers: Vec::new(),
            goal: None,
        };
        Self {
            set,
            ch,
            limits,
            out,
            open: [const { None }; 5],
            closed: Vec::new(),
            last: [After::one(begin); 5],
            ball: begin,
            got: begin,
            caught: false,
            opening: (begin, 0.0),
            cue: None,
            beat: 0,
            set_at: vec![After::default(); ch.screens.len()],
            handoffs: Vec::new(),
            #[cfg(feature = "authoring")]
            entries: [None; 5],
            #[cfg(feature = "authoring")]
            taken_up: None,
        }
    }

    /// Goes on from where another set was left: at once, and with the ball when it is in hand.
    fn take_over(&mut self, takeover: &Takeover) {
        let begin = Instant::new(0, At::Start);
        self.out.openings = vec![(begin, 0.0)];
        self.last = [After::one(begin); 5];
        self.ball = begin.later(takeover.ball);
        self.got = self.ball;
        self.opening = (begin, 0.0);
        #[cfg(feature = "authoring")]
        {
            self.entries = takeover.entries;
            self.taken_up = Some(self.ball);
            self.caught = takeover.coming.is_some();
            // Whoever is to catch does that first.
            let landed = After::one(self.ball.later(LAND));
            self.then(takeover.coming.map(|c| c.to), landed);
        }
    }

    /// What needs the ball in hand waits for it, however short the dribble that goes on.
    pub(super) fn in_hand(&mut self, to: Instant) {
        #[cfg(feature = "authoring")]
        if let Some(taken_up) = self.taken_up {
            self.wait(taken_up, to, 0.0, 0, Why::Ball);
        }
        #[cfg(not(feature = "authoring"))]
        let _ = to;
    }

    /// How `who` comes into `block`, where that is the first thing they do.
    pub(super) fn entry(&self, who: PlayerId, block: usize) -> Option<Entry> {
        #[cfg(feature = "authoring")]
        {
            let first = self.out.blocks.iter().position(|b| b.who == Some(who));
            let entry = self.entries.get(who.index()).copied().flatten();
            entry.filter(|_| first == Some(block))
        }
        #[cfg(not(feature = "authoring"))]
        {
            let _ = (who, block);
            None
        }
    }

    pub(super) fn row(&self, row: usize) -> Option<&'a crate::choreography::Row> {
        self.ch.rows.get(row)
    }

    pub(super) fn free(&self, row: usize) -> bool {
        self.row(row).is_some_and(|r| r.free)
    }

    pub(super) fn limits(&self, who: PlayerId) -> &'a Limits {
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
                let stops = Stops {
                    end: *lasts,
                    ..Stops::default()
                };
                if let Some(block) = self.still(*row, stops, true) {
                    let who = self.row(*row).map(|r| r.who);
                    self.then(who, After::one(Instant::new(block, At::Edge(Edge::End))));
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

    pub(super) fn wait(&mut self, from: Instant, to: Instant, lag: f64, softness: u8, why: Why) {
        self.out.waits.push(Wait {
            from,
            to,
            lag,
            wanted: lag,
            softness,
            why,
        });
    }

    pub(super) fn last(&self, who: PlayerId) -> After {
        self.last.get(who.index()).copied().unwrap_or_default()
    }

    pub(super) fn then(&mut self, who: Option<PlayerId>, what: After) {
        if let Some(slot) = who.and_then(|w| self.last.get_mut(w.index())) {
            *slot = what;
        }
    }

    fn own_order(&mut self, who: PlayerId, to: Instant) {
        for from in self.last(who).iter() {
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

    pub(super) fn close(&mut self, who: PlayerId) {
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
        let stops = leg.from_rest || first_of_row && self.start_tied(leg.row);
        let flows = self
            .open
            .get(who.index())
            .and_then(Option::as_ref)
            .is_some_and(|run| !stops && (run.beat == beat || run.took));
        if !flows {
            self.close(who);
        }
        let mut enters = false;
        let block = match self.open.get(who.index()).and_then(Option::as_ref) {
            Some(run) => run.block,
            None => {
                let block = self.block(Some(who), Some(leg.row), What::Origin, true);
                let start = Instant::new(block, At::Start);
                self.own_order(who, start);
                enters = cfg!(feature = "authoring") && self.entry(who, block).is_some();
                if enters {
                    // Under way: this run begins at once, whatever else has to give way.
                    let begin = Instant::new(0, At::Start);
                    self.wait(start, begin, 0.0, 0, Why::OwnOrder);
                }
                if first_of_row && leg.part != Part::Shut && !enters {
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
            if !flows && !enters {
                let start = Instant::new(block, At::LegStart(leg.row, leg.part));
                self.wait(self.ball, start, 0.0, 0, Why::Ball);
            }
            self.ball = Instant::new(block, At::LegEnd(leg.row, leg.part));
            self.caught = false;
        }
        let settle = if leg.part == Part::Shut { LAND } else { 0.0 };
        self.then(
            Some(who),
            After::one(Instant::new(block, At::LegEnd(leg.row, leg.part)).later(settle)),
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
                .map_or_else(After::default, |b| {
                    After::one(Instant::new(*b, At::Mark(row, Edge::Set, None)))
                }),
            None => self.last(who),
        };
        let block = self.block(Some(who), None, What::Still(Stops::default()), true);
        let free = Instant::new(block, At::Start);
        for from in set.iter() {
            let lag = if screen.row.is_some() {
                SET_BEFORE
            } else {
                0.0
            };
            self.wait(from, free, lag, 0, Why::OwnOrder);
        }
        if let Some(slot) = self.set_at.get_mut(index) {
            *slot = set;
        }
        if let Some(slot) = self.out.stands.get_mut(index) {
            *slot = Some(block);
        }
        self.then(Some(who), After::one(free));
    }

    pub(super) fn still(&mut self, row: usize, stops: Stops, elastic: bool) -> Option<usize> {
        let who = self.row(row)?.who;
        self.close(who);
        let block = self.block(Some(who), Some(row), What::Still(stops), elastic);
        let start = Instant::new(block, At::Start);
        self.own_order(who, start);
        self.beat_opens(row, start);
        Some(block)
    }
}
