//! The walk over the written order: every action becomes steps, everybody's place moves on.

use super::bind::{self, Binding};
use super::place::Floor;
use super::screen::{self};
use super::{Choreography, Revision, Row, Step};
use crate::athlete::Limits;
use crate::court::Court;
use crate::math::{Point, distance};
use crate::set::{Action, ActionId, Family, PlayerId, Set, Target, Verb};
use alloc::vec::Vec;

/// Seconds a fake or a hold lasts where nothing is written. Common practice, no source.
const FAKE: f64 = 0.35;
const HOLD: f64 = 0.5;

/// Lays the main line of a set on `court`, as `revision` has it.
#[must_use]
pub fn lay(set: &Set, court: &Court, revision: &Revision) -> Choreography {
    let limits = set.limits();
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
        revision,
        holder: set.first_holder(),
        laid: Vec::new(),
        last_move: [None; 5],
        walked_last: [false; 5],
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

pub(super) struct Layer<'a> {
    pub(super) set: &'a Set,
    pub(super) floor: Floor<'a>,
    pub(super) bindings: Vec<Binding>,
    pub(super) revision: &'a Revision,
    pub(super) holder: Option<PlayerId>,
    /// Screens laid so far, by action and screener.
    pub(super) laid: Vec<(ActionId, PlayerId, usize)>,
    /// The last cut or dribble of each player, for catches in stride.
    pub(super) last_move: [Option<(ActionId, Point)>; 5],
    /// Whether a player's last step was a written walk, which is as good as a set-up.
    pub(super) walked_last: [bool; 5],
    /// Whether a player's last step was a move, so that a plant may lie at its end.
    pub(super) moved_last: [bool; 5],
    pub(super) out: Choreography,
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

    pub(super) fn each(&mut self, action: &Action, mut f: impl FnMut(&mut Self, PlayerId)) {
        for who in &action.who {
            f(self, *who);
        }
    }

    pub(super) fn row(&mut self, id: ActionId, action: &Action, who: PlayerId) -> usize {
        self.out.rows.push(Row {
            id,
            who,
            verb: action.verb,
            kind: action.kind,
            free: action.free,
        });
        self.out.rows.len() - 1
    }

    pub(super) fn moved_last(&self, who: PlayerId) -> bool {
        self.moved_last.get(who.index()).copied().unwrap_or(false)
    }

    pub(super) fn settle(&mut self, who: PlayerId) {
        if let Some(m) = self.moved_last.get_mut(who.index()) {
            *m = false;
        }
    }

    pub(super) fn ball(&self) -> Point {
        self.holder.map_or(Point::ZERO, |h| self.floor.of(h))
    }

    pub(super) fn limits(&self, who: PlayerId) -> Limits {
        *self.floor.limits(who)
    }

    /// Where a cut or dribble ends.
    pub(super) fn goal(&self, action: &Action, who: PlayerId) -> Point {
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
}
