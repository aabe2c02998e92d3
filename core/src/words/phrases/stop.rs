//! What a stop of a walk-through is told with.

use crate::set::{Edge, Verb};
use crate::voice::Message;
use crate::voice::messages::stop as m;

/// What is waited for, after "waits for"; feet have words of their own.
pub(in crate::words) fn awaited(edge: Edge, verb: Verb) -> Message {
    match (edge, verb) {
        (Edge::Start, Verb::Pass) => m::TO_START_THE_PASS,
        (Edge::Start, Verb::Shot) => m::TO_START_THE_SHOT,
        (Edge::End, Verb::Cut | Verb::Dribble) => m::TO_GET_THERE,
        (Edge::End, Verb::Screen) | (Edge::Free, _) => m::TO_BE_FREE,
        (Edge::End, _) => m::TO_BE_DONE,
        (Edge::Plant, _) => m::TO_PLANT,
        (Edge::Cue, _) => m::TO_COME_UP,
        (Edge::PassBy, _) => m::TO_CLEAR,
        (Edge::Shut, _) => m::TO_SHUT.into(),
        (Edge::Release, Verb::Shot) => m::TO_SHOOT,
        (Edge::Release, Verb::Handoff) => m::TO_HAND_OFF,
        (Edge::Release, _) => m::TO_LET_GO,
        (Edge::Catch, _) => m::TO_CATCH,
        (Edge::Start | Edge::Set, _) => m::TO_START,
    }
}

/// What somebody does who goes by an instant of somebody else.
pub(in crate::words) fn goes(edge: Edge) -> Message {
    match edge {
        Edge::Plant => m::PLANTS,
        Edge::Release => m::LETS_GO,
        Edge::End => m::GETS_THERE,
        Edge::Set => m::STANDS,
        _ => m::GOES,
    }
}
