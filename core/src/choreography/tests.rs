//! Each kind as a coach would check it on the floor.

mod ball;
mod cuts;
mod dribbles;
mod kinds;
mod screens;
mod ways;

use crate::math::{Point, Vec2, angle_of, direction, distance, turn_between, unit};
use crate::play::{Options, Play};
use crate::set::{Edge, PlayerId};
use crate::timeline::{BallUse, Frame, TimedAction};
use std::format;
use std::vec::Vec;

/// A set of five (or fewer) with these actions in one beat.
fn open(players: &str, actions: &str) -> Play {
    let text = format!(
        r#"{{"backcut": 1, "title": "T", "players": {{{players}}},
            "beats": [{{"actions": [{actions}]}}]}}"#
    );
    Play::open(text.as_bytes(), &Options::default()).unwrap_or_else(|f| panic!("{f}"))
}

const FIVE: &str = r#""1": {"at": "top", "ball": true}, "2": {"at": "right wing"}, "3": {"at": "right corner"},
    "4": {"at": "left block"}, "5": {"at": "right elbow"}"#;

fn p(n: u8) -> PlayerId {
    PlayerId::new(n).unwrap()
}

fn row(play: &Play, beat_action: (u16, u16)) -> &TimedAction {
    let at = |a: &&TimedAction| (a.id.beat, a.id.action) == beat_action;
    play.timeline().actions().iter().find(at).unwrap()
}

fn at(play: &Play, n: u8, t: f64) -> Point {
    let m = play.timeline().player(p(n), t).unwrap();
    Point::new(m.x, m.y)
}

fn speed(play: &Play, n: u8, t: f64) -> f64 {
    play.timeline().player(p(n), t).unwrap().speed
}

/// Directions of travel at every hundredth of a second in which the player moves.
fn headings(play: &Play, n: u8, from: f64, to: f64) -> Vec<Vec2> {
    let mut out = Vec::new();
    let mut t = from;
    while t < to {
        if let Some(d) = direction(at(play, n, t + 0.01) - at(play, n, t))
            && speed(play, n, t) > 0.2
        {
            out.push(d);
        }
        t += 0.01;
    }
    out
}

/// The sharpest turn between neighbouring headings, degrees.
fn sharpest(headings: &[Vec2]) -> f64 {
    headings
        .windows(2)
        .map(|w| {
            turn_between(angle_of(w[0]), angle_of(w[1]))
                .abs()
                .to_degrees()
        })
        .fold(0.0, f64::max)
}

fn nearest(play: &Play, a: u8, b: u8, from: f64, to: f64) -> f64 {
    let mut t = from;
    let mut least = f64::INFINITY;
    while t < to {
        least = least.min(distance(at(play, a, t), at(play, b, t)));
        t += 0.005;
    }
    least
}
