//! Findings and their cures as sentences.

use super::action::with_article;
use super::phrases::fill;
use super::phrases::finding as phrase;
use super::phrases::kind as kind_name;
use super::place::Told;
use super::{distance, names};
use crate::court::Court;
use crate::findings::{Cure, Edit, Finding, Part, What};
use crate::math::push_fixed;
use crate::set::{Action, ActionId, PlayerId, Set, SetPlace, Verb};
use alloc::string::String;

/// A price below this is none, seconds.
const NOTHING: f64 = 0.05;

fn number(x: f64, decimals: u8) -> String {
    let mut out = String::new();
    push_fixed(&mut out, x, decimals);
    out
}

fn unit(template: &str, x: f64, decimals: u8) -> String {
    fill(template, &[("n", &number(x, decimals))])
}

/// Seconds to the tenth; a late screen to the hundredth, which is what a step is.
fn seconds(x: f64) -> String {
    let decimals = if x.abs() < 1.0 { 2 } else { 1 };
    unit(phrase::SECONDS, x, decimals)
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
/// let told = backcut::words::finding(lane, play.set());
/// assert!(told.starts_with("5 is in the lane for"), "{told}");
/// # Ok::<(), backcut::fault::Faults>(())
/// ```
#[must_use]
pub fn finding(finding: &Finding, set: &Set) -> String {
    let who = |i: usize| finding.players.get(i).map(|p| names([*p]));
    let (a, b, c) = (who(0), who(1), who(2));
    let (n, m) = numbers(finding.what, set);
    let court = Court::of(set.court);
    let place = finding
        .place
        .map(|p| Told::of(p, &court).whereabouts())
        .unwrap_or_default();
    let x = finding.defenders.first().map(|x| defender(*x));
    let screens = |a: &Action| matches!(a.verb, Verb::Screen | Verb::Handoff) || !a.off.is_empty();
    let screens = set.actions().any(|(_, a)| screens(a));
    let lead = finding.coverage.map(|c| phrase::under(c, screens));
    let mut out = String::from(lead.unwrap_or_default());
    out.push_str(&fill(
        phrase::sentence(finding.what),
        &[
            ("a", &a.unwrap_or_default()),
            ("b", &b.unwrap_or_default()),
            ("c", &c.unwrap_or_default()),
            ("all", &names(finding.players.iter().copied())),
            ("rest", &names(finding.players.iter().skip(1).copied())),
            ("x", &x.unwrap_or_default()),
            ("n", &n),
            ("m", &m),
            ("where", &place),
        ],
    ));
    out
}

/// A defender as people write it: `X4`.
fn defender(who: PlayerId) -> String {
    let mut out = String::from("X");
    out.push_str(&names([who]));
    out
}

/// The numbers of a finding with their units.
fn numbers(what: What, set: &Set) -> (String, String) {
    let metres = |x| distance(x, set.court);
    let degrees = |x: f64| unit(phrase::DEGREES, x.to_degrees(), 0);
    let one = |n| (n, String::new());
    match what {
        What::ScreenLate { after } => one(seconds(after.abs())),
        What::ScreenEarly { stands } => one(seconds(stands)),
        What::CutterEarly { by }
        | What::ScreenLeft { by }
        | What::GateLate { by }
        | What::PassBeforeOpen { by } => one(seconds(by)),
        What::ScreenStays { stays } => one(seconds(stays)),
        What::MovingScreen { speed }
        | What::GiverMoves { speed }
        | What::PassOffDribble { speed }
        | What::FastCatch { speed } => one(unit(phrase::SPEED, speed, 1)),
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
        } => (seconds(n), unit(phrase::SECONDS, m, 0)),
        What::LaneCrowd { seconds: n }
        | What::LongSet { seconds: n }
        | What::HolderStands { seconds: n }
        | What::OneSide { seconds: n }
        | What::SideLoaded { seconds: n }
        | What::Statue { seconds: n } => one(seconds(n)),
        What::PassStolen { by } | What::LaneShut { by } => one(seconds(by)),
        What::PassTooSoon { gap, by } => (metres(gap), seconds(by)),
        What::ScreenTooClose { room, due, .. } => (metres(room), metres(due)),
        What::ScreenContact { closing } | What::RunsInto { closing } => {
            one(unit(phrase::SPEED, closing, 1))
        }
        What::Collision { gap, closing, .. } => (metres(gap), unit(phrase::SPEED, closing, 1)),
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
        | What::AboveLevel { .. } => one(String::new()),
    }
}

/// What can be done about it and what that costs; `None` where nothing was proved.
#[must_use]
pub fn cure(finding: &Finding, set: &Set) -> Option<String> {
    let cure = finding.cure.as_ref()?;
    let mut out = told(finding, cure, set);
    let price = if cure.price.abs() < NOTHING {
        String::from(phrase::FREE)
    } else {
        let template = if cure.price > 0.0 {
            phrase::COSTS
        } else {
            phrase::SAVES
        };
        fill(template, &[("n", &seconds(cure.price.abs()))])
    };
    out.push_str(&price);
    Some(out)
}

fn told(finding: &Finding, cure: &Cure, set: &Set) -> String {
    let doer = |id: ActionId| {
        let who = set.action(id).map(|a| a.who.clone()).unwrap_or_default();
        names(who)
    };
    match &cure.edit {
        Edit::Wait { action } => wait(finding, &doer(*action), *action, set),
        Edit::Shift { action, by, .. } => {
            let pass = set.action(*action).is_some_and(|a| a.verb == Verb::Pass);
            let template = match (pass, *by > 0.0) {
                (true, true) => phrase::PASS_LATER,
                (true, false) => phrase::PASS_SOONER,
                (false, true) => phrase::LATER,
                (false, false) => phrase::SOONER,
            };
            let n = unit(phrase::SECONDS, by.abs(), 1);
            fill(template, &[("who", &doer(*action)), ("n", &n)])
        }
        Edit::Pace { action, pace } => fill(
            phrase::PACE,
            &[("who", &doer(*action)), ("pace", pace.name())],
        ),
        Edit::Takes { action, seconds: n } => {
            let holds = set.action(*action).is_some_and(|a| a.verb == Verb::Hold);
            let template = if holds { phrase::HOLD } else { phrase::TAKE };
            let n = unit(phrase::SECONDS, *n, 1);
            fill(template, &[("who", &doer(*action)), ("n", &n)])
        }
        Edit::Throw { kind, .. } => {
            fill(phrase::THROW, &[("what", &with_article(kind_name(*kind)))])
        }
        Edit::Move {
            action,
            part,
            to,
            by,
        } => moved(&doer(*action), *part, to, *by, set),
        Edit::Start { who, to } => {
            let court = Court::of(set.court);
            let place = Told::written(to, &court).whereabouts();
            fill(phrase::BEGIN, &[("who", &names([*who])), ("place", &place)])
        }
    }
}

fn moved(who: &str, part: Part, to: &SetPlace, by: f64, set: &Set) -> String {
    let court = Court::of(set.court);
    let place = Told::written(to, &court).whither();
    let n = distance(by, set.court);
    if let (SetPlace::Spot { .. }, Part::To) = (to, part) {
        return fill(phrase::SEND, &[("who", who), ("place", &place), ("n", &n)]);
    }
    let what = match part {
        Part::To => phrase::END_OF,
        Part::Via(_) => phrase::WAY_OF,
        Part::At => phrase::PLACE_OF,
    };
    let what = fill(what, &[("who", who)]);
    fill(
        phrase::MOVE,
        &[("what", &what), ("n", &n), ("place", &place)],
    )
}

/// Who waits for what follows from what was found.
fn wait(finding: &Finding, who: &str, action: ActionId, set: &Set) -> String {
    let other = |p: &&PlayerId| names([**p]) != who;
    let whom = finding.players.iter().find(other).map(|p| names([*p]));
    let pass = set.action(action).is_some_and(|a| a.verb == Verb::Pass);
    let template = match (finding.what, &whom) {
        (What::PassOffDribble { .. }, _) => phrase::STOP_TO_PASS,
        (What::FastCatch { .. }, Some(_)) => phrase::WAIT_FOR_CATCH,
        (_, Some(_)) if pass => phrase::WAIT_TO_PASS,
        (_, Some(_)) => phrase::WAIT_FOR,
        (_, None) => phrase::WAIT,
    };
    fill(
        template,
        &[("who", who), ("whom", &whom.unwrap_or_default())],
    )
}
