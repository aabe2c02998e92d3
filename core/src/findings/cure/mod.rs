//! What can be done about a finding: one edit of the set, shown only once it is proved.

mod edits;
mod place;
mod search;

pub use search::Search;

use crate::athlete::Pace;
use crate::set::{
    Action, ActionId, Edge, Kind, PlayerId, Scope, Set, SetPlace, Target, Tie, TieRelation, Via,
};

/// An edit that makes a finding go away, and what it costs.
#[derive(Clone, Debug, PartialEq)]
pub struct Cure {
    /// What to write instead.
    pub edit: Edit,
    /// Seconds by which the goal (the shot, else the end) comes later; negative: sooner.
    pub price: f64,
}

/// One change of what was written.
#[derive(Clone, Debug, PartialEq)]
pub enum Edit {
    /// The action waits for what it should: `free` and ties that pin its instant are dropped.
    Wait {
        /// Which.
        action: ActionId,
    },
    /// The action comes later, or sooner where `by` is negative.
    Shift {
        /// Which.
        action: ActionId,
        /// Seconds.
        by: f64,
        /// What it then waits for where nothing is written: that action's start, and seconds
        /// after it.
        after: Option<(ActionId, f64)>,
    },
    /// The action is run at this pace.
    Pace {
        /// Which.
        action: ActionId,
        /// How hard.
        pace: Pace,
    },
    /// The action takes so long instead of longer.
    Takes {
        /// Which.
        action: ActionId,
        /// Seconds.
        seconds: f64,
    },
    /// The pass is thrown in another way.
    Throw {
        /// Which.
        action: ActionId,
        /// How.
        kind: Kind,
    },
    /// A place of the action lies elsewhere.
    Move {
        /// Which.
        action: ActionId,
        /// Which of its places.
        part: Part,
        /// Where.
        to: SetPlace,
        /// Metres from where it was.
        by: f64,
    },
    /// A player starts elsewhere.
    Start {
        /// Who.
        who: PlayerId,
        /// Where.
        to: SetPlace,
    },
}

/// A place of an action.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// Where it goes.
    To,
    /// Where it is.
    At,
    /// A point of its way, counted from 0.
    Via(usize),
}

impl Cure {
    /// The set with the edit made.
    #[must_use]
    pub fn apply(&self, set: &Set) -> Set {
        self.edit.apply(set)
    }
}

impl Edit {
    /// The set with this edit made; the set itself where it does not apply.
    #[must_use]
    pub fn apply(&self, set: &Set) -> Set {
        let mut set = set.clone();
        match self {
            Self::Wait { action } => {
                if let Some(a) = action_mut(&mut set, *action) {
                    a.free = false;
                    a.ties.retain(|t| t.relation != TieRelation::With);
                }
            }
            Self::Shift { action, by, after } => {
                if let Some(a) = action_mut(&mut set, *action) {
                    shift(a, *by, *after);
                }
            }
            Self::Pace { action, pace } => {
                if let Some(a) = action_mut(&mut set, *action) {
                    a.pace = Some(*pace);
                    a.takes = None;
                }
            }
            Self::Takes { action, seconds } => {
                if let Some(a) = action_mut(&mut set, *action) {
                    a.takes = Some(*seconds);
                }
            }
            Self::Throw { action, kind } => {
                if let Some(a) = action_mut(&mut set, *action) {
                    a.kind = Some(*kind);
                }
            }
            Self::Move {
                action, part, to, ..
            } => {
                if let Some(a) = action_mut(&mut set, *action) {
                    put(a, *part, to);
                }
            }
            Self::Start { who, to } => {
                if let Some(p) = set.players.iter_mut().find(|p| p.id == *who) {
                    p.at = to.clone();
                }
            }
        }
        set
    }
}

fn action_mut(set: &mut Set, id: ActionId) -> Option<&mut Action> {
    set.beats
        .get_mut(usize::from(id.beat))?
        .actions
        .get_mut(usize::from(id.action))
}

fn shift(a: &mut Action, by: f64, after: Option<(ActionId, f64)>) {
    if !a.ties.is_empty() {
        a.ties.iter_mut().for_each(|t| t.lag += by);
    } else if let Some((to, lag)) = after {
        a.ties.push(Tie {
            relation: TieRelation::After,
            to,
            scope: Scope::Main,
            edge: Edge::Start,
            of: None,
            lag: lag + by,
            mine: Edge::Start,
            place: a.place.clone(),
        });
    }
}

fn put(a: &mut Action, part: Part, to: &SetPlace) {
    match part {
        Part::To => a.to = Some(Target::Place(to.clone())),
        Part::At => a.at = Some(to.clone()),
        Part::Via(i) => {
            let mut places = a.via.iter_mut().filter_map(|v| match v {
                Via::Place(p) => Some(p),
                Via::Off(_) => None,
            });
            if let Some(p) = places.nth(i) {
                *p = to.clone();
            }
        }
    }
}
