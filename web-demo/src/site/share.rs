//! What a set page tells those who link to it: the files it will need, what a chat shows with its
//! address (the Open Graph protocol, the Twitter card tags), and how to embed it (oEmbed 1.0).

use super::Page;
use crate::card;
use crate::markup::{POSTER, escape};
use serde_json::{Value, json};
use std::path::Path;

/// Whose site it is.
pub(super) const CLUB: &str = "Tallow Bay Community Basketball Club";

/// Height of all that stands around the court when the element is as wide as a poster, CSS pixels.
/// A page with the script asks the frame and gets it exactly.
const AROUND: f64 = 430.0;

/// Width of the reader around a poster: its margins are 20 wide, its border 1.
const READER: f64 = POSTER + 42.0;

/// The head of a set page. `base` ends in a slash.
pub(super) fn head(page: &Page, base: &str, package: Option<&Path>) -> String {
    let set = page.play.set();
    let (file, title) = (&page.file, escape(&set.title));
    let about = escape(set.about.as_deref().unwrap_or_default());
    let address = format!("{base}playbook/{file}.html");
    let picture = format!("{base}posters/{file}.png");
    let mut lines = vec![format!("<link rel=\"canonical\" href=\"{address}\">")];
    if let Some(package) = package {
        lines.push("<link rel=\"modulepreload\" href=\"{{root}}backcut/backcut.js\">".to_owned());
        let mut preload = |address: &str| {
            lines.push(format!(
                "<link rel=\"preload\" as=\"fetch\" crossorigin href=\"{{{{root}}}}{address}\">"
            ));
        };
        if let Some(wasm) = first_wasm(package) {
            preload(&format!("backcut/{wasm}"));
        }
        preload(&format!("sets/{file}.json"));
    }
    lines.push(format!(
        "<link rel=\"alternate\" type=\"application/json+oembed\" href=\"{base}oembed/{file}.json\" title=\"{title}\">"
    ));
    let (width, height) = (card::WIDTH.to_string(), card::HEIGHT.to_string());
    let alt = format!("{title}, drawn on the court");
    let tags = [
        ("property", "og:type", "article"),
        ("property", "og:site_name", CLUB),
        ("property", "og:title", &title),
        ("property", "og:description", &about),
        ("property", "og:url", &address),
        ("property", "og:image", &picture),
        ("property", "og:image:type", "image/png"),
        ("property", "og:image:width", &width),
        ("property", "og:image:height", &height),
        ("property", "og:image:alt", &alt),
        ("name", "twitter:card", "summary_large_image"),
    ];
    let tags =
        tags.map(|(kind, name, told)| format!("<meta {kind}=\"{name}\" content=\"{told}\">"));
    lines.extend(tags);
    lines.join("\n")
}

/// The wasm file that the first picture needs.
fn first_wasm(package: &Path) -> Option<String> {
    let names = std::fs::read_dir(package).ok()?.flatten();
    names
        .filter_map(|entry| entry.file_name().into_string().ok())
        .find(|name| name.starts_with("backcut_bg-") && name.ends_with(".wasm"))
}

/// The frame of a set, for a page that may hold no script of ours.
pub(super) fn frame(page: &Page, base: &str) -> String {
    format!(
        "<iframe class=\"backcut\" src=\"{base}backcut/frame.html#src=../sets/{}.json\" title=\"{}, a set play\" \
         width=\"{READER:.0}\" height=\"{:.0}\" allow=\"fullscreen\" loading=\"lazy\"></iframe>",
        page.file,
        escape(&page.play.set().title),
        frame_height(page)
    )
}

fn frame_height(page: &Page) -> f64 {
    (page.play.view(POSTER).height_px(page.play.court()) + AROUND).ceil()
}

/// The answer to who asks how to embed a set: <https://oembed.com>, version 1.0, type rich.
pub(super) fn oembed(page: &Page, base: &str) -> Value {
    json!({
        "version": "1.0",
        "type": "rich",
        "title": page.play.set().title,
        "provider_name": CLUB,
        "provider_url": base,
        "html": frame(page, base),
        "width": READER.round() as u32,
        "height": frame_height(page) as u32,
        "thumbnail_url": format!("{base}posters/{}.png", page.file),
        "thumbnail_width": card::WIDTH,
        "thumbnail_height": card::HEIGHT,
        "cache_age": 86_400,
    })
}
