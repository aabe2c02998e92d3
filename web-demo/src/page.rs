//! `backcut page`: sets as one file that carries all it needs, to be opened from disk, sent by mail
//! or put on any host that takes HTML. It asks for nothing over the network, and says so to the
//! browser by its own policy.

use crate::args::{Handout, Moment};
use crate::markup::{beats, dark, escape, fill, poster, script_json, slug};
use crate::{Failure, args::Overrides, site};
use backcut::athlete::Level;
use backcut::court::RuleSet;
use backcut::play::Play;
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use flate2::Compression;
use flate2::write::GzEncoder;
use std::fs;
use std::io::Write;
use std::path::Path;

const PAGE: &str = include_str!("page/page.html");
const STYLE: &str = include_str!("page/page.css");

/// One set of the page.
struct Entry {
    /// What a link in the page calls it.
    id: String,
    /// The set file as it was written.
    text: String,
    play: Play,
}

/// Writes the page.
///
/// # Errors
/// When a file has faults, the package is not built, or the output cannot be written.
pub(crate) fn run(
    asked: &Handout,
    overrides: Overrides,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let mut entries: Vec<Entry> = Vec::new();
    for file in &asked.files {
        let bytes = file.read()?;
        let play = file.play(&bytes, overrides)?;
        let id = free(&slug(&play.set().title), &entries);
        let text = String::from_utf8_lossy(&bytes).into_owned();
        entries.push(Entry { id, text, play });
    }
    let package = site::package().ok_or_else(|| {
        Failure::Use("backcut page: the package is not built; `npm run build` builds it".to_owned())
    })?;
    let html = whole(asked, overrides, &entries, &package)?;
    match &asked.out {
        Some(path) => {
            fs::write(path, html).map_err(|e| Failure::Use(format!("{}: {e}", path.display())))?;
        }
        None => out.write_all(html.as_bytes())?,
    }
    Ok(())
}

/// The page of one set as it was written, the poster of `beat` (counted from 1) in it.
///
/// # Errors
/// When the package is incomplete.
pub(crate) fn of_one(
    text: &str,
    play: &Play,
    beat: usize,
    package: &Path,
) -> Result<String, Failure> {
    let entry = Entry {
        id: free(&slug(&play.set().title), &[]),
        text: text.to_owned(),
        play: play.clone(),
    };
    let asked = Handout {
        beat: Some(beat),
        ..Handout::default()
    };
    whole(&asked, Overrides::default(), &[entry], package)
}

/// `wanted`, or with a number after it where another set is called so.
fn free(wanted: &str, taken: &[Entry]) -> String {
    let stem = if wanted.is_empty() { "set" } else { wanted };
    let numbered = (2..).map(|n| format!("{stem}-{n}"));
    std::iter::once(stem.to_owned())
        .chain(numbered)
        .find(|id| taken.iter().all(|entry| entry.id != *id))
        .unwrap_or_default()
}

fn whole(
    asked: &Handout,
    overrides: Overrides,
    entries: &[Entry],
    package: &Path,
) -> Result<String, Failure> {
    let module = text(&package.join("inlined.js"))?;
    let several = entries.len() > 1;
    let title = asked.title.clone().unwrap_or_else(|| match entries {
        [one] => one.play.set().title.clone(),
        _ => format!("{} sets", entries.len()),
    });
    let mut sets = String::new();
    if several {
        sets += &format!("<h1>{}</h1>\n{}", escape(&title), list(entries));
    }
    let attributes = attributes(asked, overrides);
    for entry in entries {
        sets += &section(entry, asked, several, &attributes)?;
    }
    let about = match entries {
        [one] => one.play.set().about.clone().unwrap_or_default(),
        _ => entries
            .iter()
            .map(|entry| entry.play.set().title.as_str())
            .collect::<Vec<_>>()
            .join(", "),
    };
    let version = env!("CARGO_PKG_VERSION");
    Ok(fill(
        PAGE,
        &[
            ("title", &escape(&title)),
            ("description", &escape(&about)),
            ("version", version),
            ("style", STYLE.trim_end()),
            ("dark", &dark()),
            ("sets", sets.trim_end()),
            ("wasm", &wasm(package, &module)?),
            ("module", module.trim_end()),
        ],
    ))
}

/// The names of the sets, each a link to its own.
fn list(entries: &[Entry]) -> String {
    let items: String = entries
        .iter()
        .map(|entry| {
            let (id, title) = (&entry.id, escape(&entry.play.set().title));
            format!("<li><a href=\"#{id}\">{title}</a></li>\n")
        })
        .collect();
    format!("<nav aria-label=\"Sets\"><ul class=\"list\">\n{items}</ul></nav>\n")
}

fn section(
    entry: &Entry,
    asked: &Handout,
    several: bool,
    attributes: &str,
) -> Result<String, Failure> {
    let Entry { id, text, play } = entry;
    let set = play.set();
    let rank = if several { "h2" } else { "h1" };
    let about = set.about.as_deref().map_or_else(String::new, |about| {
        format!("<p class=\"about\">{}</p>\n", escape(about))
    });
    // A set with fewer beats than the one that was asked for shows its last.
    let beat = asked.beat.unwrap_or(1).clamp(1, set.beats.len().max(1));
    Ok(format!(
        "<section id=\"{id}\">\n<{rank}>{}</{rank}>\n{about}\
         <backcut-set{attributes}>\n{}\n<div class=\"words\">\n{}\n</div>\n\
         <script type=\"application/json\">\n{}\n</script>\n</backcut-set>\n\
         <p class=\"file\"><a download=\"{id}.json\" href=\"data:application/json;base64,{}\">\
         The set file</a>, to keep and change</p>\n</section>\n",
        escape(&set.title),
        poster(play, Moment::Beat(beat))?,
        beats(play),
        script_json(text.trim_end()),
        STANDARD.encode(text),
    ))
}

/// What the command line says instead of the file, as the element takes it.
fn attributes(asked: &Handout, overrides: Overrides) -> String {
    let named = [
        ("court", overrides.court.map(RuleSet::name)),
        ("level", overrides.level.map(Level::name)),
        ("coverage", asked.coverage.map(|c| c.name())),
    ];
    let mut out: String = named
        .iter()
        .filter_map(|(name, value)| value.map(|value| format!(" {name}=\"{}\"", escape(value))))
        .collect();
    if overrides.mirror {
        out += " mirrored";
    }
    out
}

/// The wasm files that `module` asks for, packed, each in an element that no browser runs.
fn wasm(package: &Path, module: &str) -> Result<String, Failure> {
    let mut out = Vec::new();
    for entry in fs::read_dir(package)? {
        let path = entry?.path();
        let Some(name) = path.file_name().and_then(|name| name.to_str()) else {
            continue;
        };
        if !name.ends_with(".wasm") || !module.contains(name) {
            continue;
        }
        let mut packer = GzEncoder::new(Vec::new(), Compression::best());
        packer.write_all(&fs::read(&path)?)?;
        let packed = STANDARD.encode(packer.finish()?);
        out.push(format!(
            "<script type=\"application/wasm\" id=\"{name}\">{packed}</script>"
        ));
    }
    // The order of a folder is the system's own; the page is to be the same everywhere.
    out.sort();
    Ok(out.join("\n"))
}

fn text(path: &Path) -> Result<String, Failure> {
    fs::read_to_string(path).map_err(|e| Failure::Use(format!("{}: {e}", path.display())))
}
