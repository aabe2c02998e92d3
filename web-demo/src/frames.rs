//! `backcut frames`: where everybody and the ball are, as JSON Lines.

use crate::Failure;
use crate::args::{Overrides, Source};
use backcut::set::PlayerId;
use backcut::timeline::Frame;
use serde::Serialize;
use std::io::Write;

#[derive(Serialize)]
struct Line {
    t: f64,
    players: Vec<Mover>,
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

/// Prints a frame at every multiple of 1/`fps` seconds, and the last instant.
///
/// # Errors
/// When the file has faults or the output cannot be written.
pub(crate) fn run(
    file: &Source,
    overrides: Overrides,
    fps: f64,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let play = file.open(overrides)?;
    let timeline = play.timeline();
    let end = timeline.duration();
    let mut frame = Frame::default();
    let steps = (0u32..)
        .map(|k| f64::from(k) / fps)
        .take_while(|t| *t < end);
    for t in steps.chain([end]) {
        timeline.frame(t, &mut frame);
        serde_json::to_writer(&mut *out, &line(&frame))?;
        out.write_all(b"\n")?;
    }
    Ok(())
}

fn line(frame: &Frame) -> Line {
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
        ball: Ball {
            x: frame.ball.x,
            y: frame.ball.y,
            z: frame.ball.z,
            holder: frame.ball.holder.map(name),
        },
    }
}
