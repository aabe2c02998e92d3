//! `backcut draw`: one instant, or one beat with its trails, as a standalone SVG.

use crate::Failure;
use crate::args::{Moment, Overrides, Picture};
use backcut::findings::{Settings, together};
use backcut::play::Play;
use backcut::scene::{Flag, Verdict};
use backcut::set::Coverage;
use backcut::svg::Palette;
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
    let Picture {
        moment,
        coverage,
        width,
        ..
    } = *picture;
    let svg = match moment {
        Moment::At(t) if picture.ghosts => {
            let next = play.stops().into_iter().map(|stop| stop.t).find(|s| *s > t);
            let next = next.unwrap_or(play.timeline().duration());
            instant(&play, t, coverage, Some(next), width, &palette)
        }
        _ => paint(&play, moment, coverage, width, &palette)?,
    };
    match &picture.out {
        Some(path) => {
            fs::write(path, svg).map_err(|e| Failure::Use(format!("{}: {e}", path.display())))?;
        }
        None => out.write_all(svg.as_bytes())?,
    }
    Ok(())
}

/// The picture as SVG text, `width` CSS pixels wide; an instant against `coverage` with all that is
/// known about it.
///
/// # Errors
/// When the set has no such beat.
pub(crate) fn paint(
    play: &Play,
    moment: Moment,
    coverage: Option<Coverage>,
    width: f64,
    palette: &Palette,
) -> Result<String, Failure> {
    match moment {
        Moment::At(t) => Ok(instant(play, t, coverage, None, width, palette)),
        Moment::Beat(n) => {
            let beats = play.set().beats.len();
            let beat = n.checked_sub(1).filter(|beat| *beat < beats);
            let told = || Failure::Use(format!("--beat {n}: this set has {beats} beats"));
            Ok(play.beat_poster(beat.ok_or_else(told)?, width, palette))
        }
    }
}

/// The instant `t`, against `coverage` with all that is known about it, and with ghosts of another
/// instant.
fn instant(
    play: &Play,
    t: f64,
    coverage: Option<Coverage>,
    ghosts: Option<f64>,
    width: f64,
    palette: &Palette,
) -> String {
    let t = t.min(play.timeline().duration());
    let defence = coverage.map(|coverage| play.defence(coverage));
    let Some(defence) = &defence else {
        let verdict = Verdict {
            ghosts,
            ..Verdict::default()
        };
        return play.poster(ghosts.map(|_| &verdict), t, width, palette);
    };
    // Flags only: what could be done about it is not drawn.
    let settings = Settings::default();
    let found = |defence| play.search(defence, &settings).found().to_vec();
    let findings = together(found(None), found(Some(defence)));
    let verdict = Verdict {
        defence: Some(defence),
        looks: &play.looks(defence),
        flags: &Flag::of(&findings),
        ghosts,
        ..Verdict::default()
    };
    play.poster(Some(&verdict), t, width, palette)
}
