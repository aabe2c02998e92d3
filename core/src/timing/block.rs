//! Blocks and waits: the pieces of a set that are rigid in time, and what is between them.

use super::run::Run;
use super::weave::LAND;
use crate::choreography::{Choreography, Part, Transfer};
use crate::set::{Edge, PlayerId, Verb};
use alloc::vec::Vec;

/// How readily a wait gives way in a contradiction; 0 never.
pub(super) mod soft {
    pub(in super::super) const FEET: u8 = 1;
    pub(in super::super) const SHUT: u8 = 2;
    pub(in super::super) const STRIDE: u8 = 3;
    pub(in super::super) const STANDING: u8 = 4;
    pub(in super::super) const OPENING: u8 = 5;
}

/// What a block is.
#[derive(Clone, Copy, Debug)]
pub(super) enum What {
    Origin,
    /// Index into [`Woven::runs`].
    Run(usize),
    Still(Stops),
}

/// The instants of something done standing, seconds from its start.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Stops {
    pub release: f64,
    pub catch: f64,
    pub end: f64,
}

impl Stops {
    fn at(self, edge: Edge) -> f64 {
        match edge {
            Edge::Release => self.release,
            Edge::Catch => self.catch,
            Edge::End => self.end,
            _ => 0.0,
        }
    }
}

#[derive(Clone, Copy, Debug)]
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
    pub(super) fn new(block: usize, at: At) -> Self {
        Self {
            block,
            at,
            plus: 0.0,
        }
    }

    pub(super) fn later(self, plus: f64) -> Self {
        Self {
            plus: self.plus + plus,
            ..self
        }
    }
}

/// Up to three instants that all must be over; more than anybody has at once.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct After([Option<Instant>; 3]);

impl After {
    pub(super) fn one(first: Instant) -> Self {
        Self([Some(first), None, None])
    }

    /// These and those; the last one kept is the first of `more` that still fits.
    pub(super) fn and(mut self, more: Self) -> Self {
        for instant in more.iter() {
            if let Some(free) = self.0.iter_mut().find(|slot| slot.is_none()) {
                *free = Some(instant);
            }
        }
        self
    }

    pub(super) fn later(self, plus: f64) -> Self {
        Self(self.0.map(|i| i.map(|i| i.later(plus))))
    }

    pub(super) fn iter(self) -> impl Iterator<Item = Instant> {
        self.0.into_iter().flatten()
    }
}

/// Why somebody waits.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Why {
    OwnOrder,
    Ball,
    Opening,
    Feet {
        screener: PlayerId,
    },
    Stays {
        cutter: PlayerId,
    },
    Receiver,
    Standing,
    Shut,
    Exchange,
    Follows,
    Stride,
    /// By the author: which row's which tie.
    Written {
        row: usize,
        tie: usize,
    },
}

#[derive(Clone, Copy, Debug)]
pub(super) struct Wait {
    pub from: Instant,
    pub to: Instant,
    pub lag: f64,
    pub wanted: f64,
    pub softness: u8,
    pub why: Why,
}

/// A pass whose catch is found while solving.
#[derive(Clone, Copy, Debug)]
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
    /// Passes to a receiver at rest.
    pub spots: Vec<OpenPass>,
    /// Opening instant of each beat with its lag.
    pub openings: Vec<(Instant, f64)>,
    /// Of each hand-off's row: since when the giver stands.
    pub givers: Vec<(usize, Instant)>,
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
            (What::Still(stops), At::Edge(edge) | At::Mark(_, edge, _)) => stops.at(edge),
            (What::Still(stops), _) => stops.end,
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
        let giver = self.givers.iter().find(|g| g.0 == row);
        match edge {
            Edge::Set if giver.is_some() => giver.map(|g| g.1),
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
