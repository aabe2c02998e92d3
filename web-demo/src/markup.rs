//! HTML that more than one command writes: what stands inside the element for whoever has no script,
//! and the small things that all pages need.

use crate::args::Moment;
use crate::{Failure, draw};
use backcut::play::Play;
use backcut::scene::Role;
use backcut::svg::Palette;

/// Width of a poster, CSS pixels.
pub(crate) const POSTER: f64 = 760.0;
/// Width at which a poster inside a page is drawn, CSS pixels: between a phone and a desk, since the
/// page scales it to what it has, and the figures on bodies with it.
const INSIDE: f64 = 560.0;

/// The picture of `moment`, as SVG inside a page, in the page's own colours.
///
/// # Errors
/// When the set has no such beat.
pub(crate) fn poster(play: &Play, moment: Moment) -> Result<String, Failure> {
    let svg = draw::paint(play, moment, None, INSIDE, &Palette::themed())?;
    Ok(svg.trim_end().to_owned())
}

/// The beats in words, in their order.
pub(crate) fn beats(play: &Play) -> String {
    let items: String = (0..play.set().beats.len())
        .map(|i| {
            let (title, told) = (play.beat_title(i), play.caption(i));
            let (title, told) = (escape(&title), escape(&told));
            format!("<li><strong>{title}</strong> {told}</li>\n")
        })
        .collect();
    format!("<ol>\n{items}</ol>")
}

/// Declarations that give a poster the colours of the dark.
pub(crate) fn dark() -> String {
    Role::ALL
        .iter()
        .map(|role| {
            let (name, colour) = (Palette::property(*role), Palette::dark().colour(*role));
            format!("{name}: {colour};")
        })
        .collect::<Vec<_>>()
        .join(" ")
}

/// Puts values at their `{{names}}`. Values are HTML.
pub(crate) fn fill(template: &str, values: &[(&str, &str)]) -> String {
    let mut out = String::new();
    let mut rest = template;
    // In one go: what a value says is never a name.
    while let Some((before, after)) = rest.split_once("{{") {
        out.push_str(before);
        let known = after.split_once("}}").and_then(|(name, after)| {
            let (_, value) = values.iter().find(|(known, _)| *known == name)?;
            Some((value, after))
        });
        rest = if let Some((value, after)) = known {
            out.push_str(value);
            after
        } else {
            out.push_str("{{");
            after
        };
    }
    out + rest
}

/// Text that is safe in an element and in an attribute.
pub(crate) fn escape(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;")
        .replace('"', "&quot;")
}

/// JSON that is safe inside a script element: in JSON a `<` stands only in strings, where it may be
/// written by its number, and then no element ends and no comment begins.
pub(crate) fn script_json(json: &str) -> String {
    json.replace('<', "\\u003c")
}

/// A name for addresses: small letters, figures and dashes; empty where `text` has none.
pub(crate) fn slug(text: &str) -> String {
    let words = text.split(|c: char| !c.is_ascii_alphanumeric());
    let words: Vec<String> = words
        .filter(|word| !word.is_empty())
        .map(str::to_ascii_lowercase)
        .collect();
    words.join("-")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_value_says_is_never_taken_for_a_name() {
        let filled = fill("{{a}} {{b}} {{c}}", &[("a", "{{b}}"), ("b", "two")]);
        assert_eq!(filled, "{{b}} two {{c}}");
    }

    #[test]
    fn a_set_cannot_end_the_script_it_stands_in() {
        let safe = script_json(r#"{"title": "</script><!-- <b>"}"#);
        assert!(!safe.contains('<'));
        let value: serde_json::Value = serde_json::from_str(&safe).unwrap();
        assert_eq!(value["title"], "</script><!-- <b>");
    }

    #[test]
    fn an_address_has_no_letter_that_would_be_written_otherwise_in_it() {
        assert_eq!(slug("Horns: 2 & 3, “Flare”"), "horns-2-3-flare");
        assert_eq!(slug("—"), "");
    }
}
