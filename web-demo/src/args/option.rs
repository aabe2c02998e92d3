//! Options, before it is known whether the command takes them.

use super::Overrides;
use backcut::athlete::Level;
use backcut::court::RuleSet;
use backcut::link::View;
use backcut::set::{Coverage, PlayerId};
use backcut::voice::{Language, Units};
use std::ffi::OsString;
use std::path::PathBuf;

/// More frames a second than any screen shows; a cap keeps a slip of the finger from filling a disk.
const MAX_FPS: f64 = 1000.0;

/// Everything a command line may hold, before it is known whether the command takes it.
#[derive(Default)]
pub(super) struct Given {
    pub(super) free: Vec<OsString>,
    pub(super) seen: Vec<&'static str>,
    pub(super) overrides: Overrides,
    pub(super) at: Option<f64>,
    pub(super) beat: Option<usize>,
    pub(super) fps: Option<f64>,
    pub(super) lang: Option<String>,
    pub(super) units: Units,
    pub(super) title: Option<String>,
    pub(super) base: Option<String>,
    pub(super) out: Option<PathBuf>,
    pub(super) port: Option<u16>,
    pub(super) width: Option<f64>,
    pub(super) coverage: Option<Asked>,
    pub(super) until: Option<f64>,
    pub(super) read: Vec<u16>,
    pub(super) follow: [bool; 5],
    pub(super) player: Option<PlayerId>,
    pub(super) speed: Option<f64>,
}

/// What `--coverage` asks for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Asked {
    All,
    One(Coverage),
}

/// Takes the option `written`, with its value where it has one.
///
/// # Errors
/// A sentence that says what is wrong with it.
pub(super) fn option(
    given: &mut Given,
    written: &str,
    parser: &mut lexopt::Parser,
) -> Result<(), String> {
    let mut text = || -> Result<String, String> {
        let value = parser.value().map_err(|e| e.to_string())?;
        value
            .into_string()
            .map_err(|v| format!("{written}: cannot read {}", v.display()))
    };
    let seen = match written {
        "--json" => "--json",
        "--strict" => "--strict",
        "--dark" => "--dark",
        "--ghosts" => "--ghosts",
        "--paused" => "--paused",
        "--mirror" => {
            given.overrides.mirror = true;
            "--mirror"
        }
        "--court" => {
            let name = text()?;
            let court = RuleSet::parse(&name)
                .ok_or_else(|| format!("--court: no court is called {name:?}"))?;
            given.overrides.court = Some(court);
            "--court"
        }
        "--level" => {
            let name = text()?;
            let level = Level::parse(&name)
                .ok_or_else(|| format!("--level: no level is called {name:?}"))?;
            given.overrides.level = Some(level);
            "--level"
        }
        "--lang" => {
            given.lang = Some(language(text()?)?);
            "--lang"
        }
        "--units" => {
            let name = text()?;
            given.units =
                Units::parse(&name).ok_or_else(|| format!("--units: m or ft, not {name:?}"))?;
            "--units"
        }
        "--coverage" => {
            given.coverage = Some(coverage(&text()?)?);
            "--coverage"
        }
        "--at" => {
            given.at = Some(number("--at", &text()?, 0.0, View::LATEST)?);
            "--at"
        }
        "--until" => {
            given.until = Some(number("--until", &text()?, 0.0, View::LATEST)?);
            "--until"
        }
        "--read" => {
            let numbers = text()?;
            let path = numbers.split('.').map(|n| whole("--read", n, 1));
            given.read = path.collect::<Result<_, _>>()?;
            "--read"
        }
        "--follow" => {
            given.follow = players(&text()?)?;
            "--follow"
        }
        "--player" => {
            let text = text()?;
            let player = text.parse().ok().and_then(PlayerId::new);
            let none = || format!("--player: {text:?} is no player from 1 to 5");
            given.player = Some(player.ok_or_else(none)?);
            "--player"
        }
        "--speed" => {
            given.speed = Some(number("--speed", &text()?, View::SLOWEST, View::FASTEST)?);
            "--speed"
        }
        "--beat" => {
            given.beat = Some(whole("--beat", &text()?, 1)?);
            "--beat"
        }
        "--fps" => {
            given.fps = Some(number("--fps", &text()?, 0.1, MAX_FPS)?);
            "--fps"
        }
        "--base" => {
            given.base = Some(address(&text()?)?);
            "--base"
        }
        "--title" => {
            given.title = Some(text()?);
            "--title"
        }
        "--width" => {
            given.width = Some(number("--width", &text()?, 160.0, 4000.0)?);
            "--width"
        }
        "--port" => {
            given.port = Some(whole("--port", &text()?, 0)?);
            "--port"
        }
        "-o" | "--out" => {
            given.out = Some(parser.value().map_err(|e| e.to_string())?.into());
            "-o"
        }
        other => return Err(format!("unknown option {other}; try `backcut help`")),
    };
    given.seen.push(seen);
    Ok(())
}

fn coverage(name: &str) -> Result<Asked, String> {
    if name == "all" {
        return Ok(Asked::All);
    }
    Coverage::parse(name)
        .map(Asked::One)
        .ok_or_else(|| format!("--coverage: no coverage is called {name:?}"))
}

/// A language tag that is not answered in another language.
fn language(tag: String) -> Result<String, String> {
    let primary = tag.split(['-', '_']).next().unwrap_or_default();
    if primary.eq_ignore_ascii_case(Language::of(&tag).tag()) {
        Ok(tag)
    } else {
        Err(format!(
            "--lang: en or es, also with a country as in es-MX, not {tag:?}"
        ))
    }
}

/// An address that others may be put behind.
fn address(text: &str) -> Result<String, String> {
    let host = text
        .strip_prefix("https://")
        .or_else(|| text.strip_prefix("http://"));
    let plain = |c: char| !c.is_whitespace() && !matches!(c, '"' | '<' | '>' | '?' | '#');
    match host {
        Some(host) if !host.is_empty() && host.chars().all(plain) => Ok(text.to_owned()),
        _ => Err(format!(
            "--base: {text:?} is no address as in https://club.example/"
        )),
    }
}

fn number(option: &str, text: &str, least: f64, most: f64) -> Result<f64, String> {
    text.parse::<f64>()
        .ok()
        .filter(|n| (least..=most).contains(n))
        .ok_or_else(|| format!("{option}: {text:?} is not a number from {least} to {most}"))
}

fn whole<T: std::str::FromStr + PartialOrd + std::fmt::Display>(
    option: &str,
    text: &str,
    least: T,
) -> Result<T, String> {
    text.parse::<T>()
        .ok()
        .filter(|n| *n >= least)
        .ok_or_else(|| format!("{option}: {text:?} is not a whole number from {least}"))
}

/// Players as in `1,4`.
fn players(text: &str) -> Result<[bool; 5], String> {
    let mut follow = [false; 5];
    for player in text.split(',') {
        let at = player.trim().parse().ok().and_then(PlayerId::new);
        let chosen = at.and_then(|p| follow.get_mut(p.index()));
        *chosen.ok_or_else(|| format!("--follow: {player:?} is no player from 1 to 5"))? = true;
    }
    Ok(follow)
}
