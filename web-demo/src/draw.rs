//! `backcut draw`: one instant, or one beat with its trails, as a standalone SVG.

use crate::Failure;
use crate::args::{Moment, Overrides, Picture};
use backcut::play::Play;
use backcut::scene::{self, View};
use backcut::svg::{self, Palette};
use backcut::words;
use std::fs;
use std::io::Write;

/// Draws a picture of a set.
///
/// # Errors
/// When the file has faults, the set has no such beat, or the output cannot be written.
pub(crate) fn run(
    picture: &Picture,
    overrides: Overrides,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let play = picture.file.open(overrides)?;
    let palette = if picture.dark {
        Palette::dark()
    } else {
        Palette::light()
    };
    let svg = paint(&play, picture.moment, picture.width, &palette)?;
    match &picture.out {
        Some(path) => {
            fs::write(path, svg).map_err(|e| Failure::Use(format!("{}: {e}", path.display())))?;
        }
        None => out.write_all(svg.as_bytes())?,
    }
    Ok(())
}

/// The picture as SVG text, `width` CSS pixels wide.
///
/// # Errors
/// When the set has no such beat.
pub(crate) fn paint(
    play: &Play,
    moment: Moment,
    width: f64,
    palette: &Palette,
) -> Result<String, Failure> {
    let (set, timeline, court) = (play.set(), play.timeline(), play.court());
    let view = View::of(timeline, court, width);
    let (scene, title) = match moment {
        Moment::At(t) => {
            let t = t.min(timeline.duration());
            (
                scene::picture(timeline, set, court, t, &view),
                format!("{}, {t:.2} s", set.title),
            )
        }
        Moment::Beat(n) => {
            let beats = set.beats.len();
            let i = n
                .checked_sub(1)
                .filter(|i| *i < beats)
                .ok_or_else(|| Failure::Use(format!("--beat {n}: this set has {beats} beats")))?;
            let name = words::beat_title(set, i);
            (
                scene::beat(timeline, set, court, i, &view),
                format!("{}: {name}", set.title),
            )
        }
    };
    let told = match moment {
        Moment::At(t) => words::describe(timeline, set, t.min(timeline.duration())),
        Moment::Beat(n) => words::beat(set, Some(timeline), n.saturating_sub(1)),
    };
    Ok(svg::paint(&scene, palette, &title, &told))
}
