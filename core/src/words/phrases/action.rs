//! What somebody does, by kind, and the instants of that as events.

use crate::athlete::Pace;
use crate::set::{Action, Edge, Kind, Verb};
use crate::voice::messages::{action as m, instant, tie};
use crate::voice::{Forms, Message, Text};

/// What a cutter or dribbler does; `None` where the trade has no verb for it and one "makes a …".
pub(in crate::words) fn moves(action: &Action) -> Option<Text> {
    let Some(kind) = action.kind else {
        return Some(match (action.verb, action.pace) {
            (Verb::Dribble, Some(Pace::Sprint)) => m::DRIVES,
            (Verb::Dribble, _) => m::DRIBBLES,
            (_, Some(Pace::Walk)) => m::WALKS,
            (_, Some(Pace::Jog)) => m::JOGS,
            (_, Some(Pace::Sprint)) => m::SPRINTS,
            _ => m::CUTS,
        });
    };
    Some(match kind {
        Kind::Backdoor => m::GOES_BACKDOOR,
        Kind::Zipper => m::ZIPS_UP,
        Kind::Straight => m::POPS_OUT,
        Kind::Curl => m::CURLS,
        Kind::Fade => m::FADES,
        Kind::Reject => m::TURNS_IT_DOWN,
        Kind::Slip => m::SLIPS,
        Kind::Flash => m::FLASHES,
        Kind::Fill => m::FILLS,
        Kind::Lift => m::LIFTS,
        Kind::Drift => m::DRIFTS,
        Kind::Loop => m::LOOPS,
        Kind::Through => m::CLEARS_OUT,
        Kind::Roll => m::ROLLS,
        Kind::ShortRoll => m::ROLLS_SHORT,
        Kind::Pop => m::POPS,
        Kind::Dive => m::DIVES,
        Kind::DuckIn => m::DUCKS_IN,
        Kind::SealCut => m::SEALS,
        Kind::Get => m::FOLLOWS,
        Kind::DribbleAt => m::DRIBBLES_OVER,
        Kind::Push => m::PUSHES,
        Kind::Hard => m::DRIVES_HARD,
        Kind::Retreat => m::BACKS_OUT,
        Kind::Hesitation => m::HESITATES,
        Kind::Crossover => m::CROSSES_OVER,
        Kind::Snake => m::SNAKES,
        Kind::Hostage => m::KEEPS_BEHIND,
        _ => return None,
    })
}

/// How a pass of that kind goes; with others one "throws a …".
pub(in crate::words) fn passes(kind: Kind) -> Option<Text> {
    Some(match kind {
        Kind::Chest => m::PASSES,
        Kind::Bounce => m::BOUNCES,
        Kind::Skip => m::SKIPS,
        Kind::Lob => m::LOBS,
        Kind::KickOut => m::KICKS_OUT,
        Kind::Swing => m::SWINGS,
        Kind::Inbound => m::THROWS_IN,
        Kind::Lead => m::LEADS,
        Kind::Shovel => m::SHOVELS,
        Kind::Pitch => m::PITCHES,
        _ => return None,
    })
}

/// What a shot of that kind is.
pub(in crate::words) fn shoots(kind: Option<Kind>) -> Text {
    match kind {
        Some(Kind::CatchAndShoot) => m::CATCHES_AND_SHOOTS,
        Some(Kind::OffScreen) => m::SHOOTS_OFF_SCREEN,
        Some(Kind::PullUp) => m::PULLS_UP,
        Some(Kind::Floater) => m::FLOATS,
        Some(Kind::Layup) => m::LAYS_UP,
        _ => m::SHOOTS,
    }
}

/// What those who stay do.
pub(in crate::words) fn holds(kind: Option<Kind>) -> Message {
    match kind {
        Some(Kind::PlantHold) => m::PLANTS_FEET,
        Some(Kind::Pivot) => m::PIVOTS,
        Some(Kind::ScreenOut) => m::SCREENS_OUT,
        _ => m::STAYS,
    }
}

/// What is faked.
pub(in crate::words) fn fakes(kind: Option<Kind>, of: Option<Verb>) -> Message {
    match (kind, of) {
        (Some(Kind::Jab), _) => m::JABS,
        (Some(Kind::ShotFake), _) | (None, Some(Verb::Shot)) => m::FAKES_SHOT,
        (Some(Kind::CutFake), _) | (None, Some(Verb::Cut)) => m::FAKES_CUT,
        (None, Some(Verb::Screen)) => m::FAKES_SCREEN,
        (None, Some(Verb::Dribble)) => m::FAKES_DRIVE,
        (None, Some(Verb::Handoff)) => m::FAKES_HANDOFF,
        _ => m::FAKES_PASS,
    }
}

/// What somebody is doing just now.
pub(in crate::words) fn doing(verb: Verb) -> Message {
    match verb {
        Verb::Cut => instant::RUNS,
        Verb::Dribble => instant::DRIBBLES,
        Verb::Screen => instant::SCREENS,
        Verb::Pass => instant::PASSES,
        Verb::Handoff => instant::HANDS_OFF,
        Verb::Shot => instant::SHOOTS,
        Verb::Hold => instant::STAYS,
        Verb::Fake => instant::FAKES,
    }
}

/// The event an instant of an action is, told with its doer and, where it has one, the other
/// player.
pub(in crate::words) fn event(edge: Edge, verb: Verb) -> Forms {
    match (edge, verb) {
        (Edge::Start, Verb::Pass) => tie::STARTS_TO_PASS,
        (Edge::Start, Verb::Shot) => tie::STARTS_TO_SHOOT,
        (Edge::Start, _) => tie::STARTS,
        (Edge::End, Verb::Cut | Verb::Dribble) => tie::GETS_THERE,
        (Edge::End, Verb::Screen) | (Edge::Free, _) => tie::IS_FREE,
        (Edge::End, _) => tie::IS_DONE,
        (Edge::Plant, _) => tie::PLANTS_EVENT,
        (Edge::Cue, _) => tie::COMES_UP,
        (Edge::PassBy, _) => tie::PASSES_BY,
        (Edge::Set, _) => tie::IS_SET,
        (Edge::Shut, _) => tie::GATE_SHUTS,
        (Edge::Release, Verb::Shot) => tie::SHOOTS,
        (Edge::Release, Verb::Handoff) => tie::HANDS_OFF,
        (Edge::Release, _) => tie::LETS_GO,
        (Edge::Catch, _) => tie::CATCHES,
    }
}
