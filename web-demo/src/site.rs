//! `backcut site`: the demo playbook as static pages.
//!
//! The coaches' words are in `site/`, the sets in `sets/`; titles, beats, lengths and posters are
//! computed, so a page cannot disagree with the set it shows. The output needs no server.

use crate::args::{Moment, Overrides, Source};
use crate::{Failure, draw};
use backcut::play::Play;
use backcut::set::Set;
use backcut::svg::Palette;
use backcut::words;
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
            let svg = draw::paint(&page.play, Moment::Beat(entry.poster), POSTER, &palette)?;
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

fn index(chapters: &[Chapter], pages: &[Page]) -> String {
    let longest = pages
        .iter()
        .map(|p| p.play.timeline().duration())
        .fold(1.0, f64::max);
    chapters
        .iter()
        .map(|chapter| {
            let entries: String = pages
                .iter()
                .filter(|p| p.chapter == chapter.chapter)
                .map(|page| entry(page, longest))
                .collect();
            let one = if chapter.sets.len() == 1 { " one" } else { "" };
            format!(
                "<section class=\"chapter\"><header><h2>{}</h2><p>{}</p></header>\n\
                 <ul class=\"entries{one}\">\n{entries}</ul></section>\n",
                escape(&chapter.chapter),
                escape(&chapter.about)
            )
        })
        .collect()
}

fn entry(page: &Page, longest: f64) -> String {
    let set = page.play.set();
    let length = page.play.timeline().duration();
    format!(
        "<li class=\"entry\">{}<div><h3><a href=\"playbook/{}.html\">{}</a></h3>\n<p>{}</p>\n\
         <p class=\"when\">{} · {} · {length:.1} s{}</p></div></li>\n",
        poster(page, ""),
        page.file,
        escape(&set.title),
        escape(set.about.as_deref().unwrap_or_default()),
        escape(&capital(set.when.as_deref().unwrap_or_default())),
        set.level.title(),
        ruler(length, longest)
    )
}

fn set_page(template: &str, page: &Page, turn: &str) -> String {
    let (set, length) = (page.play.set(), page.play.timeline().duration());
    let points: String = set
        .points
        .iter()
        .map(|p| format!("<li>{}</li>\n", escape(p)))
        .collect();
    fill(
        template,
        &[
            ("chapter", &escape(&page.chapter)),
            ("name", &escape(&set.title)),
            ("about", &escape(set.about.as_deref().unwrap_or_default())),
            ("embed", &embed(page)),
            ("notes", &page.notes),
            (
                "use",
                &escape(&capital(set.when.as_deref().unwrap_or_default())),
            ),
            ("level", &capital(set.level.title())),
            ("court", set.court.title()),
            ("length", &format!("{length:.1}")),
            ("ruler", &ruler(length, length)),
            ("points", &points),
            ("reads", &reads(set)),
            ("cautions", &cautions(set)),
            ("file", &page.file),
            ("turn", turn),
        ],
    )
}

fn reads(set: &Set) -> String {
    if set.reads.is_empty() {
        return String::new();
    }
    let list: String = set
        .reads
        .iter()
        .map(|read| {
            let words = read
                .beats
                .iter()
                .filter_map(|b| b.say.as_deref())
                .collect::<Vec<_>>()
                .join(" ");
            let title = read.title.as_deref().unwrap_or_default();
            format!(
                "<p class=\"read\"><strong>{}</strong> {}</p>\n",
                escape(title),
                escape(&words)
            )
        })
        .collect();
    format!("<h2>If they take it away</h2>\n{list}")
}

fn cautions(set: &Set) -> String {
    let list = words::cautions(set);
    if list.is_empty() {
        return String::new();
    }
    let items: String = list
        .iter()
        .map(|c| format!("<li>{}</li>\n", escape(c)))
        .collect();
    format!("<h2>Before you run it</h2>\n<ul class=\"points\">{items}</ul>\n")
}

/// The element, with the poster and the beats in words for whoever has no script.
fn embed(page: &Page) -> String {
    let (set, timeline) = (page.play.set(), page.play.timeline());
    let beats: String = (0..set.beats.len())
        .map(|i| {
            let (title, told) = (
                words::beat_title(set, i),
                words::beat(set, Some(timeline), i),
            );
            format!(
                "<li><strong>{}</strong> {}</li>\n",
                escape(&title),
                escape(&told)
            )
        })
        .collect();
    format!(
        "<backcut-set src=\"{{{{root}}}}sets/{}.json\">\n{}\n<p><strong>{}</strong></p>\n<ul>\n{beats}</ul>\n</backcut-set>",
        page.file,
        poster(page, "{{root}}"),
        escape(&set.title)
    )
}

fn poster(page: &Page, root: &str) -> String {
    let view = backcut::scene::View::of(page.play.timeline(), page.play.court(), POSTER);
    let height = view.height_px(page.play.court());
    let source = format!("{root}posters/{}", page.file);
    format!(
        "<picture><source srcset=\"{source}-dark.svg\" media=\"(prefers-color-scheme: dark)\">\
         <img src=\"{source}-light.svg\" width=\"{POSTER:.0}\" height=\"{height:.0}\" loading=\"lazy\" \
         alt=\"{}, drawn on the court\"></picture>",
        escape(&page.play.set().title)
    )
}

fn turn(before: Option<&Page>, after: Option<&Page>) -> String {
    let link = |page: &Page, class: &str, word: &str| {
        format!(
            "<a class=\"{class}\" href=\"{}.html\"><span>{word}</span><b>{}</b></a>",
            page.file,
            escape(&page.play.set().title)
        )
    };
    let before = before
        .map(|p| link(p, "back", "Before"))
        .unwrap_or_default();
    let after = after.map(|p| link(p, "on", "Next")).unwrap_or_default();
    before + &after
}

/// A length on the ruler that the court and the strip have too: seconds, every other one inked.
fn ruler(length: f64, longest: f64) -> String {
    // A second is 24 units wide where the longest set fills the picture.
    let unit = 24.0;
    let mut seconds = String::new();
    let mut t = 0.0;
    while t < length {
        let width = (length - t).min(1.0) * unit;
        let x = t * unit;
        // Inked and open by turns: the pair is two seconds.
        let fill = if (t / 2.0).fract() == 0.0 {
            "currentColor"
        } else {
            "none"
        };
        seconds += &format!(
            "<rect x=\"{x:.1}\" y=\"3.5\" width=\"{width:.1}\" height=\"5\" fill=\"{fill}\" stroke=\"currentColor\"/>"
        );
        t += 1.0;
    }
    format!(
        "<svg class=\"ruler\" viewBox=\"-1 0 {:.0} 12\" preserveAspectRatio=\"xMinYMid meet\" aria-hidden=\"true\">{seconds}</svg>",
        longest.ceil() * unit + 2.0
    )
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

/// Puts values at their `{{names}}`. Values are HTML.
fn fill(template: &str, values: &[(&str, &str)]) -> String {
    values
        .iter()
        .fold(template.to_owned(), |html, (name, value)| {
            html.replace(&format!("{{{{{name}}}}}"), value)
        })
}

fn escape(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;")
        .replace('"', "&quot;")
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
