//! Findings and their cures as sentences.

use super::action::a_kind;
use super::place::Told;
use super::tale::line;
use super::{count, distance, measure, names, phrases};
use crate::athlete::Pace;
use crate::court::Court;
use crate::findings::{Cure, Edit, Finding, Part, What};
use crate::set::{Action, ActionId, PlayerId, Set, SetPlace, Verb};
use crate::voice::messages::cure as m;
use crate::voice::{Message, Voice};
use alloc::string::String;

/// A price below this is none, seconds.
const NOTHING: f64 = 0.05;

/// Seconds to the tenth; a late screen to the hundredth, which is what a step is.
fn seconds(x: f64, voice: Voice) -> String {
    let decimals = if x.abs() < 1.0 { 2 } else { 1 };
    measure::seconds(x, decimals, voice)
}

/// What was found, in one sentence or two.
///
/// ```
/// use backcut::findings::{self, Settings};
/// use backcut::play::{Options, Play};
/// let text = br#"{ "backcut": 1, "title": "Parked", "players": {
///     "1": {"at": "top", "ball": true}, "5": {"at": "low paint"} },
///   "beats": [ { "actions": [
///     {"who": 1, "do": "dribble", "to": "right wing", "takes": 3.5},
///     {"who": 1, "do": "shot"} ] } ] }"#;
/// let play = Play::open(text, &Options::default())?;
/// let found = findings::check(play.set(), play.court(), play.timeline(), &Settings::default());
/// let lane = found.iter().find(|f| f.code() == "three-seconds").unwrap();
/// let told = backcut::words::finding(lane, play.set(), Default::default());
/// assert!(told.starts_with("5 is in the lane for"), "{told}");
/// # Ok::<(), backcut::fault::Faults>(())
/// ```
#[must_use]
pub fn finding(finding: &Finding, set: &Set, voice: Voice) -> String {
    let who = |i: usize| {
        let player = finding.players.get(i);
        player.map(|p| names([*p], voice)).unwrap_or_default()
    };
    let (n, m) = numbers(finding.what, set, voice);
    let court = Court::of(set.court);
    let place = finding
        .place
        .map(|p| Told::of(p, &court).whereabouts(voice))
        .unwrap_or_default();
    let x = finding.defenders.first().map(|x| defender(*x, voice));
    let screens = |a: &Action| matches!(a.verb, Verb::Screen | Verb::Handoff) || !a.off.is_empty();
    let screens = set.actions().any(|(_, a)| screens(a));
    let mut out = String::new();
    if let Some(coverage) = finding.coverage {
        out.push_str(voice.word(phrases::under(coverage, screens)));
        out.push(' ');
    }
    let parts = [
        ("a", who(0)),
        ("b", who(1)),
        ("c", who(2)),
        ("all", names(finding.players.iter().copied(), voice)),
        (
            "rest",
            names(finding.players.iter().skip(1).copied(), voice),
        ),
        ("x", x.unwrap_or_default()),
        ("n", n),
        ("m", m),
        ("where", place),
        ("read", line(set, &finding.read, voice)),
    ];
    let parts = parts.each_ref().map(|(name, text)| (*name, text.as_str()));
    out.push_str(&voice.fill(phrases::sentence(finding.what), &parts));
    out
}

/// A defender as people write it: `X4`.
fn defender(who: PlayerId, voice: Voice) -> String {
    let mut out = String::from("X");
    out.push_str(&names([who], voice));
    out
}

/// The numbers of a finding with their units.
fn numbers(what: What, set: &Set, voice: Voice) -> (String, String) {
    let metres = |x| distance(x, set.court, voice);
    let degrees = |x| measure::degrees(x, voice);
    let speed = |x| measure::speed(x, voice);
    let seconds = |x| seconds(x, voice);
    let one = |n| (n, String::new());
    match what {
        What::ScreenLate { after } => one(seconds(after.abs())),
        What::ScreenEarly { stands } => one(seconds(stands)),
        What::CutterEarly { by }
        | What::ScreenLeft { by }
        | What::GateLate { by }
        | What::PassBeforeOpen { by } => one(seconds(by)),
        What::ScreenStays { stays } => one(seconds(stays)),
        What::MovingScreen { speed: v }
        | What::GiverMoves { speed: v }
        | What::PassOffDribble { speed: v }
        | What::FastCatch { speed: v } => one(speed(v)),
        What::LooseBrush { gap }
        | What::ThroughScreener { gap }
        | What::GateOnCutter { gap }
        | What::HandoffFar { gap }
        | What::LongPass { gap }
        | What::TightCatch { gap }
        | What::DecoyIgnored { gap }
        | What::NoLook { gap }
        | What::PassThroughBody { gap } => one(metres(gap)),
        What::ScreenAngle { off } => one(degrees(off)),
        What::ScreenSpot { apart } => one(degrees(apart)),
        What::NotLooking { angle } | What::PasserTurned { angle } => one(degrees(angle)),
        What::ThreeSeconds {
            seconds: n,
            limit: m,
        }
        | What::ThrowInCount {
            seconds: n,
            limit: m,
        }
        | What::ShotClock {
            seconds: n,
            limit: m,
        }
        | What::CloselyGuarded {
            seconds: n,
            limit: m,
        } => (seconds(n), measure::seconds(m, 0, voice)),
        What::LaneCrowd { seconds: n }
        | What::LongSet { seconds: n }
        | What::HolderStands { seconds: n }
        | What::OneSide { seconds: n }
        | What::SideLoaded { seconds: n }
        | What::Statue { seconds: n } => one(seconds(n)),
        What::PassStolen { by } | What::LaneShut { by } => one(seconds(by)),
        What::PassTooSoon { gap, by } => (metres(gap), seconds(by)),
        What::ScreenTooClose { room, due, .. } => (metres(room), metres(due)),
        What::ScreenContact { closing } | What::RunsInto { closing } => one(speed(closing)),
        What::Collision { gap, closing, .. } => (metres(gap), speed(closing)),
        What::Crowding { gap, .. } => one(metres(gap)),
        What::OutOfBounds { .. }
        | What::Backcourt
        | What::CornersEmpty
        | What::SideNotEmptied
        | What::NoSafety
        | What::PassThroughBoard
        | What::OneSpeed { .. }
        | What::Marching
        | What::Parked
        | What::ReadNever { .. }
        | What::AboveLevel { .. } => one(String::new()),
        What::ReadWorse { open, instead } => (seconds(open), seconds(instead)),
        What::ReadStolen { by } => one(seconds(by)),
    }
}

/// What can be done about it and what that costs; `None` where nothing was proved.
#[must_use]
pub fn cure(finding: &Finding, set: &Set, voice: Voice) -> Option<String> {
    let cure = finding.cure.as_ref()?;
    let mut out = told(finding, cure, set, voice);
    out.push(' ');
    let price = if cure.price.abs() < NOTHING {
        String::from(voice.word(m::FREE))
    } else {
        let message = if cure.price > 0.0 { m::COSTS } else { m::SAVES };
        voice.fill(message, &[("n", &seconds(cure.price.abs(), voice))])
    };
    out.push_str(&price);
    Some(out)
}

fn told(finding: &Finding, cure: &Cure, set: &Set, voice: Voice) -> String {
    let doers = |id: ActionId| set.action(id).map(|a| a.who.clone()).unwrap_or_default();
    let tell = |message: Message, id: ActionId, n: &str| {
        let who = doers(id);
        let several = count(who.len());
        let who = names(who, voice);
        voice.fill(message, &[("who", &who), ("count", &several), ("n", n)])
    };
    match &cure.edit {
        Edit::Wait { action } => wait(finding, *action, set, voice),
        Edit::Shift { action, by, .. } => {
            let pass = set.action(*action).is_some_and(|a| a.verb == Verb::Pass);
            let message = match (pass, *by > 0.0) {
                (true, true) => m::PASS_LATER,
                (true, false) => m::PASS_SOONER,
                (false, true) => m::LATER,
                (false, false) => m::SOONER,
            };
            tell(message, *action, &measure::seconds(by.abs(), 1, voice))
        }
        Edit::Pace { action, pace } => {
            let message = match pace {
                Pace::Walk => m::LET_WALK,
                Pace::Jog => m::LET_JOG,
                Pace::Run => m::LET_RUN,
                Pace::Sprint => m::LET_SPRINT,
            };
            tell(message, *action, "")
        }
        Edit::Takes { action, seconds: n } => {
            let holds = set.action(*action).is_some_and(|a| a.verb == Verb::Hold);
            let message = if holds { m::HOLD } else { m::TAKE };
            tell(message, *action, &measure::seconds(*n, 1, voice))
        }
        Edit::Throw { kind, .. } => voice.fill(m::THROW, &[("what", &a_kind(*kind, voice))]),
        Edit::Move {
            action,
            part,
            to,
            by,
        } => moved(&names(doers(*action), voice), *part, (to, *by), set, voice),
        Edit::Start { who, to } => {
            let court = Court::of(set.court);
            let place = Told::written(to, &court).whereabouts(voice);
            let who = names([*who], voice);
            voice.fill(m::BEGIN, &[("who", &who), ("place", &place)])
        }
    }
}

/// Where to, and how far that is.
fn moved(who: &str, part: Part, (to, by): (&SetPlace, f64), set: &Set, voice: Voice) -> String {
    let court = Court::of(set.court);
    let place = Told::written(to, &court).whither(voice);
    let n = distance(by, set.court, voice);
    let message = match (to, part) {
        (SetPlace::Spot { .. }, Part::To) => m::SEND,
        (_, Part::To) => m::MOVE_END,
        (_, Part::Via(_)) => m::MOVE_WAY,
        (_, Part::At) => m::MOVE_PLACE,
    };
    voice.fill(message, &[("who", who), ("place", &place), ("n", &n)])
}

/// Who waits for what follows from what was found.
fn wait(finding: &Finding, action: ActionId, set: &Set, voice: Voice) -> String {
    let waiting = set.action(action);
    let waiting = waiting.map(|a| a.who.clone()).unwrap_or_default();
    let several = count(waiting.len());
    let who = names(waiting, voice);
    let other = |p: &&PlayerId| names([**p], voice) != who;
    let whom = finding.players.iter().find(other);
    let whom = whom.map(|p| names([*p], voice));
    let pass = set.action(action).is_some_and(|a| a.verb == Verb::Pass);
    let message = match (finding.what, &whom) {
        (What::PassOffDribble { .. }, _) => m::STOP_TO_PASS,
        (What::FastCatch { .. }, Some(_)) => m::WAIT_FOR_CATCH,
        (_, Some(_)) if pass => m::WAIT_TO_PASS,
        (_, Some(_)) => m::WAIT_FOR,
        (_, None) => m::WAIT,
    };
    let whom = whom.unwrap_or_default();
    voice.fill(
        message,
        &[("who", &who), ("count", &several), ("whom", &whom)],
    )
}
