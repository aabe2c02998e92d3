//! Every English word the program says about a set. Another language replaces this file.
//!
//! A template names its parts in braces; [`fill`] puts them in. Verbs that several players can be
//! the subject of stand twice: for one, and for more.

pub(super) mod finding;
mod kind;
mod look;

pub(super) use kind::kind;
pub(super) use look::*;

use crate::court::SpotName;
use crate::set::{Edge, Kind, Verb};
use alloc::string::String;

/// Puts `parts` into `template`: `{who} cuts` with `who`.
pub(super) fn fill(template: &str, parts: &[(&str, &str)]) -> String {
    let mut out = String::new();
    let mut rest = template;
    while let Some((before, after)) = rest.split_once('{') {
        out.push_str(before);
        let Some((name, tail)) = after.split_once('}') else {
            rest = after;
            break;
        };
        if let Some((_, text)) = parts.iter().find(|p| p.0 == name) {
            out.push_str(text);
        }
        rest = tail;
    }
    out.push_str(rest);
    out
}

/// Joins `items` as people list them.
pub(super) fn list(items: &[String]) -> String {
    let mut out = String::new();
    for (i, item) in items.iter().enumerate() {
        if i > 0 {
            out.push_str(if i + 1 == items.len() { " and " } else { ", " });
        }
        out.push_str(item);
    }
    out
}

// Moves.
pub(super) const SAID: &str = "{who} {what}";
pub(super) const MAKES: &str = "makes {what}";
pub(super) const OFF: &str = " off {screeners}";
pub(super) const BETWEEN: &str = " between {screeners}";
pub(super) const ROUND_LEFT: &str = " round the left of {screeners}";
pub(super) const ROUND_RIGHT: &str = " round the right of {screeners}";
pub(super) const WAITS_FOR_FEET: &str = "{who} waits for {screener}’s feet, then {rest}";
pub(super) const WAITS_FOR_GATE: &str = "{who} waits for {screeners} to stand, then {rest}";

// Screens.
pub(super) const SETS: [&str; 2] = ["{who} sets {what}", "{who} set {what}"];
pub(super) const FOR: &str = " for {whom}";
pub(super) const SCREEN: &str = "screen";

// Passes and hand-offs.
pub(super) const PASSES: &str = "passes to";
pub(super) const THROWS: &str = "throws {what} to";
pub(super) const PASS_TO: &str = "{who} {verb} {whom}{where}";
pub(super) const HAND_OFF: &str = "{who} hands off to {whom}{where}";
pub(super) const KEEPS: &str = "{who} fakes the hand-off to {whom} and keeps it";
pub(super) const ON_THE_RUN: &str = " on the run";

// Places: where to, and where.
pub(super) const THE: &str = "the {spot}";
pub(super) const TO: &str = " to {place}";
pub(super) const TOWARD: &str = " toward {place}";
pub(super) const AT: &str = " {at} {place}";
pub(super) const NEAR: &str = " near {place}";
pub(super) const BESIDE: &str = " beside {place}";

/// The preposition of a spot.
pub(super) fn at(name: SpotName) -> &'static str {
    match name {
        SpotName::Wing | SpotName::LowWing | SpotName::Block => "on",
        SpotName::Corner
        | SpotName::ShortCorner
        | SpotName::Slot
        | SpotName::DunkerSpot
        | SpotName::MidPaint
        | SpotName::LowPaint => "in",
        _ => "at",
    }
}

// Fakes.
pub(super) const AT_WHOM: &str = " to {whom}";

// Ties.
pub(super) const AS: &str = " as {event}";
pub(super) const ONCE: &str = " once {event}";
pub(super) const BEFORE: &str = " {seconds} before {event}";
pub(super) const AFTER: &str = " {seconds} after {event}";
pub(super) const PLANTS: &str = ", planting";
pub(super) const SECONDS: &str = "{n} seconds";

// Instants.
pub(super) const INSTANT: &str = "{t} seconds of {all}, beat {n}{title}: ";
pub(super) const HAS_BALL: &str = "{who} has the ball{where}";
pub(super) const COMES: &str = "{who} comes for the ball";
pub(super) const IN_THE_AIR: &str = "the ball is in the air";
pub(super) const BEAT: &str = "Beat ";
pub(super) const READ: &str = "What if ";
pub(super) const AS_DRAWN: &str = "as drawn";

/// The event an instant of an action is, told with its doer and, where it has one, the other
/// player.
pub(super) fn event(edge: Edge, verb: Verb) -> &'static str {
    match (edge, verb) {
        (Edge::Start, Verb::Pass) => "{who} starts to pass",
        (Edge::Start, Verb::Shot) => "{who} starts to shoot",
        (Edge::Start, _) => "{who} starts",
        (Edge::End, Verb::Cut | Verb::Dribble) => "{who} gets there",
        (Edge::End, Verb::Screen) | (Edge::Free, _) => "{who} is free to leave",
        (Edge::End, _) => "{who} is done",
        (Edge::Plant, _) => "{who} plants",
        (Edge::Cue, _) => "{who} comes up to {other}",
        (Edge::PassBy, _) => "{who} passes {other}",
        (Edge::Set, _) => "{who} is set",
        (Edge::Shut, _) => "the gate shuts",
        (Edge::Release, Verb::Shot) => "{who} shoots",
        (Edge::Release, Verb::Handoff) => "{who} hands off",
        (Edge::Release, _) => "{who} lets it go",
        (Edge::Catch, _) => "{other} catches",
    }
}

/// An event of several players.
pub(super) fn plural(event: &str) -> String {
    let mut out = String::new();
    for word in event.split(' ') {
        if !out.is_empty() {
            out.push(' ');
        }
        out.push_str(if word == "is" { "are" } else { word });
    }
    out
}

/// What a cutter or dribbler of that kind does, where the trade has a verb for it; other kinds
/// "make a …".
pub(super) fn move_verb(kind: Kind) -> Option<&'static str> {
    Some(match kind {
        Kind::Backdoor => "goes backdoor",
        Kind::Zipper => "zips up",
        Kind::Straight => "pops out",
        Kind::Curl => "curls",
        Kind::Fade => "fades",
        Kind::Reject => "turns the screen down and goes",
        Kind::Slip => "slips",
        Kind::Flash => "flashes",
        Kind::Fill => "fills",
        Kind::Lift => "lifts",
        Kind::Drift => "drifts",
        Kind::Loop => "loops",
        Kind::Through => "clears out",
        Kind::Roll => "rolls",
        Kind::ShortRoll => "rolls short",
        Kind::Pop => "pops",
        Kind::Dive => "dives",
        Kind::DuckIn => "ducks in",
        Kind::SealCut => "seals",
        Kind::Get => "follows the pass",
        Kind::DribbleAt => "dribbles over",
        Kind::Push => "pushes the ball",
        Kind::Hard => "drives hard",
        Kind::Retreat => "backs the dribble out",
        Kind::Hesitation => "hesitates, then drives",
        Kind::Crossover => "crosses over and drives",
        Kind::Snake => "snakes the dribble",
        Kind::Hostage => "keeps the defender behind and dribbles",
        _ => return None,
    })
}

/// How a pass of that kind goes; other kinds "throw a …".
pub(super) fn pass_verb(kind: Kind) -> Option<&'static str> {
    Some(match kind {
        Kind::Chest => "passes to",
        Kind::Bounce => "bounces it to",
        Kind::Skip => "skips it to",
        Kind::Lob => "lobs it to",
        Kind::KickOut => "kicks it out to",
        Kind::Swing => "swings it to",
        Kind::Inbound => "throws in to",
        Kind::Lead => "leads",
        Kind::Shovel => "shovels it to",
        Kind::Pitch => "pitches it to",
        _ => return None,
    })
}

/// What a shot of that kind is.
pub(super) fn shot_verb(kind: Option<Kind>) -> &'static str {
    match kind {
        Some(Kind::CatchAndShoot) => "catches and shoots",
        Some(Kind::OffScreen) => "shoots off the screen",
        Some(Kind::PullUp) => "pulls up",
        Some(Kind::Floater) => "floats it up",
        Some(Kind::Layup) => "takes the layup",
        _ => "shoots",
    }
}

/// What somebody who stays does: for one, and for more.
pub(super) fn hold_verb(kind: Option<Kind>) -> [&'static str; 2] {
    match kind {
        Some(Kind::PlantHold) => ["plants both feet", "plant both feet"],
        Some(Kind::Pivot) => ["pivots", "pivot"],
        Some(Kind::ScreenOut) => ["screens out", "screen out"],
        _ => ["stays", "stay"],
    }
}

/// What is faked: for one, and for more.
pub(super) fn fake_verb(kind: Option<Kind>, of: Option<Verb>) -> [&'static str; 2] {
    match (kind, of) {
        (Some(Kind::Jab), _) => ["jabs", "jab"],
        (Some(Kind::ShotFake), _) | (None, Some(Verb::Shot)) => ["fakes a shot", "fake a shot"],
        (Some(Kind::CutFake), _) | (None, Some(Verb::Cut)) => ["fakes a cut", "fake a cut"],
        (None, Some(Verb::Screen)) => ["fakes a screen", "fake a screen"],
        (None, Some(Verb::Dribble)) => ["fakes a drive", "fake a drive"],
        (None, Some(Verb::Handoff)) => ["fakes a hand-off", "fake a hand-off"],
        _ => ["fakes a pass", "fake a pass"],
    }
}

/// What somebody is doing just now.
pub(super) fn doing(verb: Verb) -> &'static str {
    match verb {
        Verb::Cut => "{who} runs{to}",
        Verb::Dribble => "{who} dribbles{to}",
        Verb::Screen => "{who} screens{for}",
        Verb::Pass => "{who} passes{for}",
        Verb::Handoff => "{who} hands off{for}",
        Verb::Shot => "{who} shoots",
        Verb::Hold => "{who} stays",
        Verb::Fake => "{who} fakes",
    }
}

/// "a" or "an" before `word`.
pub(super) fn article(word: &str) -> &'static str {
    // An L-cut is spoken "el".
    let spoken_vowel = word.starts_with("L-") || word.starts_with(['a', 'e', 'i', 'o', 'u']);
    if spoken_vowel { "an" } else { "a" }
}

/// Cautions; the reasons are those of the rule books (FIBA Official Basketball Rules, Art. 33:
/// cylinder and screening; NFHS Rule 4-40: first contact with a screen can be severe).
pub(super) mod caution {
    pub(in crate::words) const STILL: &str =
        "Screens are set still: feet planted, arms in, inside the own cylinder.";
    pub(in crate::words) const LIMBS: &str = "No hip, leg or arm in the runner’s way.";
    pub(in crate::words) const HARD: &str =
        "Whoever runs into a screen may hit it hard. Walk it first.";
    pub(in crate::words) const BLIND: &str =
        "Blind screens leave a step of room, and the own side calls “screen”.";
    pub(in crate::words) const GATE: &str =
        "A gate is shut and still before the chaser arrives, else it stays open.";
    pub(in crate::words) const CROSS: &str = "Two runners never cross under the ring.";
    pub(in crate::words) const LAND: &str = "Leave the shooter room to land.";
    pub(in crate::words) const LOB: &str = "Lobs only over an empty rim.";
    pub(in crate::words) const U12: &str =
        "Under 12: a screen away and a hand-off at a jog are enough. Leave the rest for later.";
    pub(in crate::words) const U14: &str =
        "Under 14: ball screen, pin-down and flex. No blind screens and no gates.";
    pub(in crate::words) const COACH: &str = "The supervising coach decides.";
}
