//! `backcut card`: role cards, as text or as a page to print.

use crate::Failure;
use crate::args::{Overrides, Source};
use crate::markup::{escape, fill};
use backcut::card::Card;
use backcut::play::Play;
use backcut::set::PlayerId;
use backcut::svg::Palette;
use backcut::words::{self, CardWords, StepWords};
use std::fs;
use std::io::{self, Write};
use std::path::Path;

const PAGE: &str = include_str!("roles/page.html");
/// How cards look, on paper and on a screen.
pub(crate) const STYLE: &str = include_str!("roles/roles.css");

/// Width at which the picture of a card is drawn, CSS pixels: what it has on paper, so that numbers are
/// as large there as they are meant to be. A screen scales it up.
const PICTURE: f64 = 250.0;

/// Prints the cards, or writes their page.
///
/// # Errors
/// When the file has faults, the set has no such player, or the output cannot be written.
pub(crate) fn run(
    file: &Source,
    overrides: Overrides,
    player: Option<PlayerId>,
    page: Option<&Path>,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let play = file.open(overrides)?;
    let cards = cards(&play, player);
    if let (true, Some(player)) = (cards.is_empty(), player) {
        let n = player.number();
        return Err(Failure::Use(format!("--player {n}: this set has no {n}")));
    }
    match page {
        None => write_text(out, &play, &cards)?,
        Some(path) if path.as_os_str() == "-" => out.write_all(whole(&play, &cards).as_bytes())?,
        Some(path) => fs::write(path, whole(&play, &cards))
            .map_err(|e| Failure::Use(format!("{}: {e}", path.display())))?,
    }
    Ok(())
}

/// A card with its words.
type Told = (Card, CardWords);

fn cards(play: &Play, player: Option<PlayerId>) -> Vec<Told> {
    PlayerId::ALL
        .into_iter()
        .filter(|who| player.is_none_or(|p| p == *who))
        .filter_map(|who| play.card(who))
        .map(|card| {
            let words = play.card_words(&card);
            (card, words)
        })
        .collect()
}

// --- as text -----------------------------------------------------------------------------------

fn write_text(out: &mut dyn Write, play: &Play, cards: &[Told]) -> io::Result<()> {
    for (i, (card, words)) in cards.iter().enumerate() {
        if i > 0 {
            writeln!(out)?;
        }
        writeln!(out, "{}, {}", play.set().title, words.title)?;
        writeln!(out, "   {}", words.begin)?;
        for (n, told) in words.steps.iter().enumerate() {
            writeln!(out, "{:2}  {:>10}  {}", n + 1, told.time, told.text)?;
            for line in lines(told) {
                writeln!(out, "                {line}")?;
            }
        }
        for caution in play.cautions_for(card.who) {
            writeln!(out, " !  {caution}")?;
        }
    }
    Ok(())
}

/// What stands below what is to be done.
fn lines(told: &StepWords) -> Vec<String> {
    let parts = [&told.wait, &told.look, &told.why].map(String::clone);
    let parts = parts.into_iter().chain(told.reads.iter().cloned());
    parts.filter(|line| !line.is_empty()).collect()
}

// --- as a page ---------------------------------------------------------------------------------

fn whole(play: &Play, cards: &[Told]) -> String {
    let title = escape(&play.set().title);
    fill(
        PAGE,
        &[
            ("title", &title),
            ("cards-title", words::cards(play.voice())),
            ("lang", play.voice().language().tag()),
            ("version", env!("CARGO_PKG_VERSION")),
            ("style", STYLE.trim_end()),
            ("cards", &html(play, cards)),
        ],
    )
}

/// The cards of everybody, as HTML for a page with [`STYLE`].
pub(crate) fn everybody(play: &Play) -> String {
    html(play, &cards(play, None))
}

fn html(play: &Play, cards: &[Told]) -> String {
    let each: String = cards.iter().map(|told| one(play, told)).collect();
    format!("<div class=\"cards\">\n{each}</div>")
}

fn one(play: &Play, (card, words): &Told) -> String {
    let n = card.who.number();
    let name = escape(&play.set().title);
    let told: Vec<&str> = words.steps.iter().map(|s| s.text.as_str()).collect();
    let title = format!("{}, {}", play.set().title, words.title);
    let named = (title.as_str(), &*told.join(" "));
    let svg = play.card_poster(card.who, PICTURE, &Palette::print(), named);
    let steps: String = words.steps.iter().map(item).collect();
    format!(
        "<article class=\"card\" id=\"player-{n}\">\n\
         <header><b class=\"who\">{n}</b><h2>{}</h2><p>{name}</p></header>\n\
         <figure>{}<figcaption>{}</figcaption></figure>\n\
         <ol>\n{steps}</ol>\n{}</article>\n",
        escape(&capital(&words.part)),
        svg.trim_end(),
        escape(&words.begin),
        cautions(play, card.who),
    )
}

fn item(told: &StepWords) -> String {
    let line = |class: &str, text: &str| {
        if text.is_empty() {
            return String::new();
        }
        format!("<p class=\"{class}\">{}</p>", escape(text))
    };
    let reads: String = told.reads.iter().map(|read| line("read", read)).collect();
    format!(
        "<li><p class=\"do\"><strong>{}</strong> <span>{}</span></p>{}\
         {}{}{reads}</li>\n",
        escape(&told.text),
        escape(&told.time),
        line("wait", &told.wait),
        line("eyes", &told.look),
        line("why", &told.why),
    )
}

fn cautions(play: &Play, who: PlayerId) -> String {
    let list = play.cautions_for(who);
    if list.is_empty() {
        return String::new();
    }
    let told: Vec<String> = list.iter().map(|c| escape(c)).collect();
    format!("<p class=\"caution\">{}</p>\n", told.join(" "))
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
