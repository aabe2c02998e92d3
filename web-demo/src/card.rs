//! The picture that other sites show with a link to a set: a PNG, since hardly any of them takes SVG.

use crate::Failure;
use crate::args::Moment;
use crate::draw;
use crate::markup::{POSTER, escape};
use backcut::play::Play;
use backcut::scene::Role;
use backcut::svg::Palette;
use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{Options, Tree, fontdb};
use std::fmt::Write as _;
use std::io;
use std::sync::Arc;

/// Pixels; the size that the Open Graph consumers recommend for a large picture, 1.91 : 1.
pub(crate) const WIDTH: u32 = 1200;
/// Pixels.
pub(crate) const HEIGHT: u32 = 630;

/// Around everything, and between words and court.
const MARGIN: f64 = 40.0;
/// Room for the words.
const WORDS: f64 = 350.0;
/// Height of the letters of the title, and of the words under it.
const TITLE: f64 = 60.0;
const TOLD: f64 = 28.0;
/// From line to line, in that height.
const LINE: f64 = 1.2;
/// Mean width of a letter of the serif, in its height; a little wide, so that lines end early.
const LETTER: f64 = 0.5;

/// Faces that the tool carries: the same picture on every machine. There is no plain sans in the
/// crate they come from; figures on bodies are as legible in an even one.
#[must_use]
pub(crate) fn faces() -> Arc<fontdb::Database> {
    let mut faces = fontdb::Database::new();
    for data in typst_assets::fonts() {
        faces.load_font_data(data.to_vec());
    }
    faces.set_serif_family("Libertinus Serif");
    faces.set_sans_serif_family("DejaVu Sans Mono");
    Arc::new(faces)
}

/// The card of a set: its name, what it is about, whose it is, and the court at `moment`.
///
/// # Errors
/// When the set has no such moment, or the picture cannot be made.
pub(crate) fn png(
    play: &Play,
    moment: Moment,
    whose: &str,
    faces: &Arc<fontdb::Database>,
) -> Result<Vec<u8>, Failure> {
    let svg = svg(play, moment, whose)?;
    let options = Options {
        fontdb: Arc::clone(faces),
        ..Options::default()
    };
    let failed = |e: &dyn std::fmt::Display| Failure::Output(io::Error::other(e.to_string()));
    let tree = Tree::from_str(&svg, &options).map_err(|e| failed(&e))?;
    let mut pixels = Pixmap::new(WIDTH, HEIGHT).ok_or_else(|| failed(&"no room for a picture"))?;
    resvg::render(&tree, Transform::identity(), &mut pixels.as_mut());
    pixels.encode_png().map_err(|e| failed(&e))
}

fn svg(play: &Play, moment: Moment, whose: &str) -> Result<String, Failure> {
    let palette = Palette::light();
    let court = draw::paint(play, moment, None, POSTER, &palette)?;
    let tall = play.view(POSTER).height_px(play.court());
    let (wide, high) = (f64::from(WIDTH), f64::from(HEIGHT));
    let room = (wide - WORDS - 3.0 * MARGIN, high - 2.0 * MARGIN);
    let scale = (room.0 / POSTER).min(room.1 / tall);
    let x = wide - MARGIN - POSTER * scale;
    let y = 0.5 * (high - tall * scale);
    let (paper, field) = (palette.colour(Role::Lane), palette.colour(Role::Rule));
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {wide} {high}\" width=\"{wide}\" height=\"{high}\">\
         <rect width=\"{wide}\" height=\"{high}\" fill=\"{paper}\"/>\
         <rect x=\"{:.1}\" y=\"{:.1}\" width=\"{:.1}\" height=\"{:.1}\" fill=\"{field}\"/>\
         <g transform=\"translate({x:.2} {y:.2}) scale({scale:.4})\">{court}</g>",
        x - 2.0,
        y - 2.0,
        POSTER * scale + 4.0,
        tall * scale + 4.0,
    );
    let set = play.set();
    // The top of the title's letters stands where the court begins.
    let mut line = y - TITLE * (LINE - 0.75) - TOLD * 0.5;
    let mut words = |text: &str, size: f64, weight: u32, role: Role| {
        line += TOLD * 0.5;
        for row in rows(text, WORDS / (size * LETTER)) {
            line += size * LINE;
            // Writing to a string cannot fail.
            let _ = write!(
                out,
                "<text x=\"{MARGIN}\" y=\"{line:.1}\" font-family=\"serif\" font-size=\"{size}\" \
                 font-weight=\"{weight}\" fill=\"{}\">{}</text>",
                palette.colour(role),
                escape(&row)
            );
        }
    };
    words(&set.title, TITLE, 700, Role::Ink);
    let about = set.about.as_deref().unwrap_or_default();
    words(about, TOLD, 400, Role::Ink);
    words(whose, TOLD * 0.75, 400, Role::Soft);
    out.push_str("</svg>");
    Ok(out)
}

/// `text` in rows of at most `letters`, broken between words; a longer word has a row of its own.
fn rows(text: &str, letters: f64) -> Vec<String> {
    let mut rows: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        match rows.last_mut() {
            Some(row) if (row.chars().count() + 1 + word.chars().count()) as f64 <= letters => {
                row.push(' ');
                row.push_str(word);
            }
            _ => rows.push(word.to_owned()),
        }
    }
    rows
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rows_are_filled_and_no_word_is_lost() {
        assert_eq!(rows("one two three", 7.0), ["one two", "three"]);
        assert_eq!(rows("a backdoor b", 3.0), ["a", "backdoor", "b"]);
        assert!(rows("  ", 3.0).is_empty());
    }
}
