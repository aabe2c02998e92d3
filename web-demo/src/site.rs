//! `backcut site`: the demo playbook as static pages.
//!
//! The coaches' words are in `site/`, the sets in `sets/`; titles, beats, lengths and posters are
//! computed, so a page cannot disagree with the set it shows. The output needs no server.

mod html;
mod share;

use crate::args::{Moment, Overrides, Source};
use crate::markup::{POSTER, dark, escape, fill};
use crate::{Failure, card, draw, page, roles};
use backcut::play::Play;
use backcut::svg::Palette;
use backcut::voice::{Units, Voice};
use html::{carried, embed, index, role_cards, set_page, turn};
use serde::Deserialize;
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

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
    /// The set file as it was written.
    text: String,
    /// The beat that shows what the set is about, counted from 1.
    poster: usize,
    play: Play,
    notes: String,
}

/// Where a site is to be put.
pub(crate) struct Place<'a> {
    /// Folder to write.
    pub(crate) out: &'a Path,
    /// The address that folder will have, with a slash at the end.
    pub(crate) base: &'a str,
}

/// Writes the playbook of `source`.
///
/// # Errors
/// When a set has faults, a source is missing, or the output cannot be written.
pub(crate) fn run(source: &Path, place: &Place<'_>, told: &mut dyn Write) -> Result<(), Failure> {
    let out = place.out;
    let site = source.join("site");
    let chapters: Vec<Chapter> = serde_json::from_str(&text(&site.join("playbook.json"))?)
        .map_err(|e| Failure::Use(format!("playbook.json: {e}")))?;
    let pages = read(source, &chapters)?;
    for folder in [
        "playbook", "cards", "notes", "sets", "posters", "oembed", "pages",
    ] {
        fs::create_dir_all(out.join(folder))?;
    }
    let package = package();
    write_files(place, &pages, package.as_deref())?;
    write_pages(&site, place, &chapters, &pages, package.as_deref())?;
    write_spanish(&site, out)?;
    let style = text(&site.join("style.css"))?;
    fs::write(out.join("style.css"), fill(&style, &[("dark", &dark())]))?;
    fs::write(out.join("cards.css"), roles::STYLE)?;
    for name in ["lantern.svg", "open.js"] {
        fs::copy(site.join(name), out.join(name))?;
    }
    match package {
        Some(package) => copy_files(&package, &out.join("backcut"))?,
        None => writeln!(
            told,
            "The package is not built: the pages show pictures that stand still."
        )?,
    }
    writeln!(told, "{} pages in {}", 2 * pages.len() + 4, out.display())?;
    Ok(())
}

fn read(source: &Path, chapters: &[Chapter]) -> Result<Vec<Page>, Failure> {
    let mut pages = Vec::new();
    for chapter in chapters {
        for entry in &chapter.sets {
            let file = source.join("sets").join(format!("{}.json", entry.file));
            pages.push(Page {
                chapter: chapter.chapter.clone(),
                file: entry.file.clone(),
                text: text(&file)?,
                poster: entry.poster,
                play: Source::File(file).open(Overrides::default())?,
                notes: text(&source.join(format!("site/notes/{}.html", entry.file)))?,
            });
        }
    }
    Ok(pages)
}

/// All that belongs to one set and is no page of the site.
fn write_files(place: &Place<'_>, pages: &[Page], package: Option<&Path>) -> Result<(), Failure> {
    let faces = card::faces();
    for page in pages {
        let (file, moment) = (&page.file, Moment::Beat(page.poster));
        let write = |path: String, bytes: &[u8]| fs::write(place.out.join(path), bytes);
        for (name, palette) in [("light", Palette::light()), ("dark", Palette::dark())] {
            let svg = draw::paint(&page.play, moment, None, POSTER, &palette)?;
            write(format!("posters/{file}-{name}.svg"), svg.as_bytes())?;
        }
        let card = card::png(&page.play, moment, share::CLUB, &faces)?;
        write(format!("posters/{file}.png"), &card)?;
        let oembed = share::oembed(page, place.base);
        write(format!("oembed/{file}.json"), oembed.to_string().as_bytes())?;
        write(format!("sets/{file}.json"), page.text.as_bytes())?;
        if let Some(package) = package {
            let html = page::of_one(&page.text, &page.play, page.poster, package)?;
            write(format!("pages/{file}.html"), html.as_bytes())?;
        }
    }
    Ok(())
}

fn write_pages(
    site: &Path,
    place: &Place<'_>,
    chapters: &[Chapter],
    pages: &[Page],
    package: Option<&Path>,
) -> Result<(), Failure> {
    let out = place.out;
    let layout = Layout(text(&site.join("layout.html"))?);
    let index = fill(
        &text(&site.join("index.html"))?,
        &[("chapters", &index(chapters, pages))],
    );
    let about = "Eight sets from Lantern Week.";
    let head = Head::of("The harbour playbook", about);
    layout.write(out, "index.html", &head, &index)?;
    let template = text(&site.join("set.html"))?;
    let cards = text(&site.join("cards.html"))?;
    for (i, page) in pages.iter().enumerate() {
        let turn = turn(
            i.checked_sub(1).and_then(|i| pages.get(i)),
            pages.get(i + 1),
        );
        let body = set_page(&template, page, &turn, place.base)?;
        let carried = if package.is_some() {
            carried(page)
        } else {
            String::new()
        };
        let body = fill(&body, &[("carried", &carried)]);
        let set = page.play.set();
        let path = format!("playbook/{}.html", page.file);
        let head = Head {
            more: &share::head(page, place.base, package),
            ..Head::of(&set.title, set.about.as_deref().unwrap_or_default())
        };
        layout.write(out, &path, &head, &body)?;
        let title = format!("{}: role cards", set.title);
        let about = format!("What each player does in {}, to print.", set.title);
        let head = Head {
            more: "<link rel=\"stylesheet\" href=\"{{root}}cards.css\">",
            ..Head::of(&title, &about)
        };
        let path = format!("cards/{}.html", page.file);
        layout.write(out, &path, &head, &role_cards(&cards, page))?;
    }
    let mut blog = text(&site.join("after-lantern-week.html"))?;
    for page in pages {
        blog = fill(&blog, &[(&format!("embed:{}", page.file), &embed(page)?)]);
    }
    let about = "Five evenings in a hall, and what we learned about waiting.";
    let head = Head::of("What Lantern Week taught the coaches", about);
    layout.write(out, "notes/after-lantern-week.html", &head, &blog)?;
    let head = Head {
        // What it shows is in nobody's address but the reader's.
        more: "<meta name=\"robots\" content=\"noindex\">\n\
               <script type=\"module\" src=\"{{root}}open.js\"></script>",
        ..Head::of("A set by a link", "Plays the set that a link holds.")
    };
    layout.write(out, "open.html", &head, &text(&site.join("open.html"))?)
}

/// One set told in Spanish, on a page in Spanish.
fn write_spanish(site: &Path, out: &Path) -> Result<(), Failure> {
    let file = site.join("torniquete.json");
    let mut page = Page {
        chapter: String::new(),
        file: "torniquete".to_owned(),
        text: text(&file)?,
        poster: 2,
        play: Source::File(file).open(Overrides::default())?,
        notes: String::new(),
    };
    page.play.speak(Voice::new("es", Units::default()));
    fs::write(out.join("sets/torniquete.json"), &page.text)?;
    let body = text(&site.join("torniquete.html"))?;
    let body = fill(&body, &[("embed", &embed(&page)?)]);
    let layout = Layout(text(&site.join("layout.html"))?);
    let head = Head::of("Torniquete, en español", "A set of ours, told in Spanish.");
    layout.write(out, "notes/torniquete.html", &head, &body)
}

/// What a page says of itself.
struct Head<'a> {
    title: &'a str,
    about: &'a str,
    /// More lines, as HTML.
    more: &'a str,
}

impl<'a> Head<'a> {
    fn of(title: &'a str, about: &'a str) -> Self {
        let more = "";
        Self { title, about, more }
    }
}

/// The frame that every page has.
struct Layout(String);

impl Layout {
    fn write(&self, out: &Path, path: &str, head: &Head<'_>, body: &str) -> Result<(), Failure> {
        let root = if path.contains('/') { "../" } else { "" };
        let html = fill(
            &self.0,
            &[
                ("title", &escape(head.title)),
                ("description", &escape(head.about)),
                ("head", head.more),
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
