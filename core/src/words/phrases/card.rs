//! What a role card asks of a player, by kind.

use crate::athlete::Pace;
use crate::card::{Part, Room};
use crate::set::{Action, Edge, Kind, Verb};
use crate::voice::messages::card as m;
use crate::voice::{Message, Text};

/// What a player is in a set.
pub(in crate::words) fn part(part: Part) -> Text {
    match part {
        Part::Shooter => m::SHOOTER,
        Part::Decoy => m::DECOY,
        Part::Screener => m::SCREENER,
        Part::Passer => m::PASSER,
        Part::Cutter => m::CUTTER,
        Part::Spacer => m::SPACER,
    }
}

/// How to run or dribble; `None` where the trade has no verb for it and one is to "make a …".
pub(in crate::words) fn way(action: &Action) -> Option<Text> {
    let Some(kind) = action.kind else {
        return Some(match (action.verb, action.pace) {
            (Verb::Dribble, Some(Pace::Sprint)) => m::DRIVE,
            (Verb::Dribble, _) => m::DRIBBLE,
            (_, Some(Pace::Walk)) => m::WALK,
            (_, Some(Pace::Jog)) => m::JOG,
            (_, Some(Pace::Sprint)) => m::SPRINT,
            _ => m::CUT,
        });
    };
    Some(match kind {
        Kind::Backdoor => m::GO_BACKDOOR,
        Kind::Zipper => m::ZIP_UP,
        Kind::Straight => m::POP_OUT,
        Kind::Curl => m::CURL,
        Kind::Fade => m::FADE,
        Kind::Reject => m::TURN_IT_DOWN,
        Kind::Slip => m::SLIP,
        Kind::Flash => m::FLASH,
        Kind::Fill => m::FILL,
        Kind::Lift => m::LIFT,
        Kind::Drift => m::DRIFT,
        Kind::Loop => m::LOOP,
        Kind::Through => m::CLEAR_OUT,
        Kind::Roll => m::ROLL,
        Kind::ShortRoll => m::ROLL_SHORT,
        Kind::Pop => m::POP,
        Kind::Dive => m::DIVE,
        Kind::DuckIn => m::DUCK_IN,
        Kind::SealCut => m::SEAL,
        Kind::Get => m::FOLLOW,
        Kind::DribbleAt => m::DRIBBLE_OVER,
        Kind::Push => m::PUSH,
        Kind::Hard => m::DRIVE_HARD,
        Kind::Retreat => m::BACK_OUT,
        Kind::Hesitation => m::HESITATE,
        Kind::Crossover => m::CROSS_OVER,
        Kind::Snake => m::SNAKE,
        Kind::Hostage => m::KEEP_BEHIND,
        _ => return None,
    })
}

/// How to pass; with other kinds one is to "throw a …".
pub(in crate::words) fn pass(kind: Option<Kind>) -> Option<Text> {
    Some(match kind {
        None | Some(Kind::Chest) => m::PASS_TO,
        Some(Kind::Bounce) => m::BOUNCE,
        Some(Kind::Skip) => m::SKIP,
        Some(Kind::Lob) => m::LOB,
        Some(Kind::KickOut) => m::KICK_OUT,
        Some(Kind::Swing) => m::SWING,
        Some(Kind::Inbound) => m::THROW_IN,
        Some(Kind::Lead) => m::LEAD,
        Some(Kind::Shovel) => m::SHOVEL,
        Some(Kind::Pitch) => m::PITCH,
        _ => return None,
    })
}

/// What else there is to do, standing.
pub(in crate::words) fn still(action: &Action) -> Text {
    match (action.verb, action.kind, action.of) {
        (Verb::Shot, Some(Kind::CatchAndShoot), _) => m::CATCH_AND_SHOOT,
        (Verb::Shot, Some(Kind::OffScreen), _) => m::SHOOT_OFF_SCREEN,
        (Verb::Shot, Some(Kind::PullUp), _) => m::PULL_UP,
        (Verb::Shot, Some(Kind::Floater), _) => m::FLOAT,
        (Verb::Shot, Some(Kind::Layup), _) => m::LAY_UP,
        (Verb::Shot, ..) => m::SHOOT,
        (Verb::Fake, Some(Kind::Jab), _) => m::JAB,
        (Verb::Fake, Some(Kind::ShotFake), _) | (Verb::Fake, None, Some(Verb::Shot)) => {
            m::FAKE_SHOT
        }
        (Verb::Fake, Some(Kind::CutFake), _) | (Verb::Fake, None, Some(Verb::Cut)) => m::FAKE_CUT,
        (Verb::Fake, None, Some(Verb::Screen)) => m::FAKE_SCREEN,
        (Verb::Fake, None, Some(Verb::Dribble)) => m::FAKE_DRIVE,
        (Verb::Fake, None, Some(Verb::Handoff)) => m::FAKE_HANDOFF,
        (Verb::Fake, ..) => m::FAKE_PASS,
        (_, Some(Kind::PlantHold), _) => m::PLANT_FEET,
        (_, Some(Kind::Pivot), _) => m::PIVOT,
        (_, Some(Kind::ScreenOut), _) => m::SCREEN_OUT,
        _ => m::STAY,
    }
}

/// What is waited for, by which instant of the step waits.
pub(in crate::words) fn wait(mine: Edge) -> Message {
    match mine {
        Edge::Start => m::GO_WHEN,
        Edge::Plant => m::PLANT_WHEN,
        Edge::Cue => m::COME_UP_WHEN,
        Edge::PassBy => m::GO_BY_WHEN,
        Edge::Set => m::BE_SET_WHEN,
        Edge::Shut => m::SHUT_WHEN,
        Edge::Free => m::STAY_UNTIL,
        Edge::Release => m::LET_GO_WHEN,
        Edge::Catch => m::THERE_WHEN,
        Edge::End => m::DONE_WHEN,
    }
}

/// An instant of somebody else's as whoever waits for it sees it; `None`: as in other sentences.
pub(in crate::words) fn seen(edge: Edge, verb: Verb) -> Option<Message> {
    Some(match (edge, verb) {
        (Edge::Set, _) => m::IS_STILL,
        (Edge::PassBy, _) => m::IS_PAST,
        (Edge::Release, Verb::Pass) => m::PASS_IS_GONE,
        (Edge::Release, Verb::Shot) => m::SHOT_IS_UP,
        (Edge::End, Verb::Cut | Verb::Dribble) => m::IS_THERE,
        _ => return None,
    })
}

/// What standing somewhere is worth.
pub(in crate::words) fn room(room: Room) -> Message {
    match room {
        Room::Corner => m::CORNER,
        Room::Safety => m::SAFETY.into(),
        Room::Board => m::BOARD.into(),
        Room::Wide => m::WIDE,
    }
}
