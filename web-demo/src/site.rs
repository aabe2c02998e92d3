//! `backcut site`: the demo playbook as static pages.
//!
//! The coaches' words are in `site/`, the sets in `sets/`; titles, beats, lengths and posters are
//! computed, so a page cannot disagree with the set it shows. The output needs no server.

mod html;

use crate::args::{Moment, Overrides, Source};
use crate::{Failure, draw};
use backcut::play::Play;
use backcut::svg::Palette;
use html::{embed, escape, fill, index, set_page, turn};
use serde::Deserialize;
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

/// Width of a poster, CSS pixels.
const POSTER: f64 = 760.0;

#[derive(Deserialize)]
struct Chapter {
    chapter: String,
    about: String,
    sets: Vec<Entry>,
}

#[derive(Deserialize)]
struct Entry {
    file: String,
    /// The beat that shows what the set is about.
    poster: usize,
}

/// One set of the playbook, built.
struct Page {
    chapter: String,
    file: String,
    play: Play,
    notes: String,
}

/// Writes the playbook of `source` into `out`.
///
/// # Errors
/// When a set has faults, a source is missing, or the output cannot be written.
pub(crate) fn run(source: &Path, out: &Path, told: &mut dyn Write) -> Result<(), Failure> {
    let site = source.join("site");
    let chapters: Vec<Chapter> = serde_json::from_str(&text(&site.join("playbook.json"))?)
        .map_err(|e| Failure::Use(format!("playbook.json: {e}")))?;
    let mut pages = Vec::new();
    for chapter in &chapters {
        for entry in &chapter.sets {
            let file = source.join("sets").join(format!("{}.json", entry.file));
            pages.push((
                entry,
                Page {
                    chapter: chapter.chapter.clone(),
                    file: entry.file.clone(),
                    play: Source::File(file).open(Overrides::default())?,
                    notes: text(&site.join("notes").join(format!("{}.html", entry.file)))?,
                },
            ));
        }
    }
    for folder in ["playbook", "notes", "sets", "posters"] {
        fs::create_dir_all(out.join(folder))?;
    }
    for (entry, page) in &pages {
        for (name, palette) in [("light", Palette::light()), ("dark", Palette::dark())] {
            let svg = draw::paint(
                &page.play,
                Moment::Beat(entry.poster),
                None,
                POSTER,
                &palette,
            )?;
            fs::write(out.join(format!("posters/{}-{name}.svg", page.file)), svg)?;
        }
        let set = format!("sets/{}.json", page.file);
        fs::copy(source.join(&set), out.join(&set))?;
    }
    let pages: Vec<Page> = pages.into_iter().map(|(_, page)| page).collect();
    write_pages(&site, out, &chapters, &pages)?;
    for file in ["style.css", "lantern.svg"] {
        fs::copy(site.join(file), out.join(file))?;
    }
    match package() {
        Some(package) => copy_files(&package, &out.join("backcut"))?,
        None => writeln!(
            told,
            "The package is not built: the pages show pictures that stand still."
        )?,
    }
    writeln!(told, "{} pages in {}", pages.len() + 2, out.display())?;
    Ok(())
}

fn write_pages(
    site: &Path,
    out: &Path,
    chapters: &[Chapter],
    pages: &[Page],
) -> Result<(), Failure> {
    let layout = Layout(text(&site.join("layout.html"))?);
    let index = fill(
        &text(&site.join("index.html"))?,
        &[("chapters", &index(chapters, pages))],
    );
    layout.write(
        out,
        "index.html",
        "The harbour playbook",
        "Eight sets from Lantern Week.",
        &index,
    )?;
    let template = text(&site.join("set.html"))?;
    for (i, page) in pages.iter().enumerate() {
        let turn = turn(
            i.checked_sub(1).and_then(|i| pages.get(i)),
            pages.get(i + 1),
        );
        let body = set_page(&template, page, &turn);
        let set = page.play.set();
        let path = format!("playbook/{}.html", page.file);
        layout.write(
            out,
            &path,
            &set.title,
            set.about.as_deref().unwrap_or_default(),
            &body,
        )?;
    }
    let mut blog = text(&site.join("after-lantern-week.html"))?;
    for page in pages {
        blog = fill(&blog, &[(&format!("embed:{}", page.file), &embed(page))]);
    }
    let about = "Five evenings in a hall, and what we learned about waiting.";
    layout.write(
        out,
        "notes/after-lantern-week.html",
        "What Lantern Week taught the coaches",
        about,
        &blog,
    )
}

/// The frame that every page has.
struct Layout(String);

impl Layout {
    fn write(
        &self,
        out: &Path,
        path: &str,
        title: &str,
        about: &str,
        body: &str,
    ) -> Result<(), Failure> {
        let root = if path.contains('/') { "../" } else { "" };
        let html = fill(
            &self.0,
            &[
                ("title", &escape(title)),
                ("description", &escape(about)),
                ("page", if root.is_empty() { "home" } else { "inner" }),
                ("body", body),
            ],
        );
        fs::write(out.join(path), fill(&html, &[("root", root)]))?;
        Ok(())
    }
}

/// Where the published package is, from the working folder or the tool's own upwards.
pub(crate) fn package() -> Option<PathBuf> {
    let starts = [std::env::current_dir().ok(), std::env::current_exe().ok()];
    let mut folders = starts.iter().flatten().flat_map(|start| start.ancestors());
    folders
        .find_map(|folder| Some(folder.join("wasm/pkg")).filter(|p| p.join("backcut.js").is_file()))
}

/// The files of the package; what lies in folders below is left over from its build.
fn copy_files(from: &Path, to: &Path) -> Result<(), Failure> {
    // The wasm file carries a hash in its name: those of earlier builds would pile up.
    if to.is_dir() {
        fs::remove_dir_all(to)?;
    }
    fs::create_dir_all(to)?;
    for entry in fs::read_dir(from)? {
        let path = entry?.path();
        if let (true, Some(name)) = (path.is_file(), path.file_name()) {
            fs::copy(&path, to.join(name))?;
        }
    }
    Ok(())
}

fn text(path: &Path) -> Result<String, Failure> {
    fs::read_to_string(path).map_err(|e| Failure::Use(format!("{}: {e}", path.display())))
}
