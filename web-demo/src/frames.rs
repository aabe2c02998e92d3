//! `backcut frames`: where everybody and the ball are, as JSON Lines.

use crate::Failure;
use crate::args::{Overrides, Source};
use backcut::defence::Defence;
use backcut::set::{Coverage, PlayerId};
use backcut::timeline::Frame;
use serde::Serialize;
use std::io::Write;

#[derive(Serialize)]
struct Line {
    t: f64,
    players: Vec<Mover>,
    #[serde(skip_serializing_if = "Option::is_none")]
    defenders: Option<Vec<Mover>>,
    ball: Ball,
}

#[derive(Serialize)]
struct Mover {
    id: String,
    x: f64,
    y: f64,
    facing: f64,
}

#[derive(Serialize)]
struct Ball {
    x: f64,
    y: f64,
    z: f64,
    holder: Option<String>,
}

/// Prints a frame at every multiple of 1/`fps` seconds, and the last instant; with defenders where
/// a coverage is named.
///
/// # Errors
/// When the file has faults or the output cannot be written.
pub(crate) fn run(
    file: &Source,
    overrides: Overrides,
    fps: f64,
    coverage: Option<Coverage>,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let play = file.open(overrides)?;
    let timeline = play.timeline();
    let defence = coverage.map(|c| play.defence(c));
    let end = timeline.duration();
    let mut frame = Frame::default();
    let steps = (0u32..)
        .map(|k| f64::from(k) / fps)
        .take_while(|t| *t < end);
    for t in steps.chain([end]) {
        timeline.frame(t, &mut frame);
        serde_json::to_writer(&mut *out, &line(&frame, defence.as_ref()))?;
        out.write_all(b"\n")?;
    }
    Ok(())
}

fn line(frame: &Frame, defence: Option<&Defence>) -> Line {
    let name = |id: PlayerId| id.number().to_string();
    let players = PlayerId::ALL.into_iter().zip(frame.players);
    Line {
        t: frame.t,
        players: players
            .filter_map(|(id, mover)| {
                let mover = mover?;
                Some(Mover {
                    id: name(id),
                    x: mover.x,
                    y: mover.y,
                    facing: mover.facing,
                })
            })
            .collect(),
        defenders: defence.map(|d| defenders(d, frame.t)),
        ball: Ball {
            x: frame.ball.x,
            y: frame.ball.y,
            z: frame.ball.z,
            holder: frame.ball.holder.map(name),
        },
    }
}

fn defenders(defence: &Defence, t: f64) -> Vec<Mover> {
    let all = PlayerId::ALL.into_iter();
    all.filter_map(|id| {
        let state = defence.state(id, t)?;
        Some(Mover {
            id: format!("X{}", id.number()),
            x: state.x,
            y: state.y,
            facing: state.facing,
        })
    })
    .collect()
}
