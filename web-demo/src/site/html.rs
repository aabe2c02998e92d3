//! The pages as HTML: what is computed goes where the templates say.

use super::{Chapter, Page, share};
use crate::Failure;
use crate::args::Moment;
use crate::markup;
use crate::markup::{POSTER, beats, escape, fill};
use crate::roles;
use backcut::play::Play;
use backcut::set::Set;
use backcut::voice::Language;
use backcut::words;

pub(super) fn index(chapters: &[Chapter], pages: &[Page]) -> String {
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
        words::level(set.level, page.play.voice()),
        ruler(length, longest)
    )
}

pub(super) fn set_page(
    template: &str,
    page: &Page,
    turn: &str,
    base: &str,
) -> Result<String, Failure> {
    let (set, length) = (page.play.set(), page.play.timeline().duration());
    let points: String = set
        .points
        .iter()
        .map(|p| format!("<li>{}</li>\n", escape(p)))
        .collect();
    let tag = format!(
        "<script type=\"module\" src=\"/backcut/backcut.js\"></script>\n\
         <backcut-set src=\"{}.json\"></backcut-set>",
        page.file
    );
    Ok(fill(
        template,
        &[
            ("tag", &escape(&tag)),
            ("frame", &escape(&share::frame(page, base))),
            ("chapter", &escape(&page.chapter)),
            ("name", &escape(&set.title)),
            ("about", &escape(set.about.as_deref().unwrap_or_default())),
            ("embed", &embed(page)?),
            ("notes", &page.notes),
            (
                "use",
                &escape(&capital(set.when.as_deref().unwrap_or_default())),
            ),
            (
                "level",
                &capital(words::level(set.level, page.play.voice())),
            ),
            ("court", words::court(set.court, page.play.voice())),
            ("length", &format!("{length:.1}")),
            ("ruler", &ruler(length, length)),
            ("points", &points),
            ("reads", &reads(set)),
            ("cautions", &cautions(&page.play)),
            ("file", &page.file),
            ("turn", turn),
        ],
    ))
}

/// The page of a set's role cards.
pub(super) fn role_cards(template: &str, page: &Page) -> String {
    let values = [
        ("name", &*escape(&page.play.set().title)),
        ("file", &page.file),
        ("cards", &roles::everybody(&page.play)),
    ];
    fill(template, &values)
}

/// Where the set's own page of one file is.
pub(super) fn carried(page: &Page) -> String {
    format!(
        "<li><a href=\"{{{{root}}}}pages/{}.html\" download>One file</a> that plays without a network, \
         to keep, send or print</li>",
        page.file
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

fn cautions(play: &Play) -> String {
    let list = play.cautions();
    if list.is_empty() {
        return String::new();
    }
    let items: String = list
        .iter()
        .map(|c| format!("<li>{}</li>\n", escape(c)))
        .collect();
    format!("<h2>Before you run it</h2>\n<ul class=\"cautions\">{items}</ul>\n")
}

/// The element; inside it, for whoever has no script, the poster, the beats in words and the set file.
pub(super) fn embed(page: &Page) -> Result<String, Failure> {
    let file = &page.file;
    Ok(format!(
        "<backcut-set src=\"{{{{root}}}}sets/{file}.json\" share=\"{{{{root}}}}open.html\">\n{}\n<div class=\"words\">\n\
         <p><strong>{}</strong></p>\n{}\n\
         <p><a href=\"{{{{root}}}}sets/{file}.json\">{}</a></p>\n</div>\n</backcut-set>",
        markup::poster(&page.play, Moment::Beat(page.poster))?,
        escape(&page.play.set().title),
        beats(&page.play),
        match page.play.voice().language() {
            Language::Spanish => "El archivo de la jugada",
            Language::English => "The set file",
        },
    ))
}

fn poster(page: &Page, root: &str) -> String {
    let height = page.play.view(POSTER).height_px(page.play.court());
    let source = format!("{root}posters/{}", page.file);
    format!(
        "<picture><source srcset=\"{source}-dark.svg\" media=\"(prefers-color-scheme: dark)\">\
         <img src=\"{source}-light.svg\" width=\"{POSTER:.0}\" height=\"{height:.0}\" loading=\"lazy\" \
         alt=\"{}, drawn on the court\"></picture>",
        escape(&page.play.set().title)
    )
}

pub(super) fn turn(before: Option<&Page>, after: Option<&Page>) -> String {
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

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
