//! Which read beats which coverage, as `backcut looks` tells it.

use crate::catalogue::Catalogue;
use crate::looks::wide;
use backcut::choice::Answer;
use backcut::play::Play;
use backcut::words;
use serde::Serialize;
use std::io::{self, Write};

/// A coverage, the line that answers it, and every read against it.
#[derive(Serialize)]
pub(crate) struct Row<'a> {
    coverage: &'a str,
    /// As `--read` has it; empty: as drawn.
    line: String,
    /// Every read that was asked on the way.
    asked: Vec<Asked>,
    reads: Vec<Cell>,
}

#[derive(Serialize)]
struct Asked {
    read: String,
    t: f64,
    holds: bool,
    seen: String,
}

#[derive(Serialize)]
struct Cell {
    read: String,
    /// What its condition was by itself.
    holds: bool,
    /// Whether a defender was told to show it, and did.
    told: bool,
    /// In the end, whoever shoots; null: nobody does.
    open: Option<f64>,
    /// By how many seconds a hand is ahead of a pass of it; 0 where none is.
    ahead: f64,
}

pub(crate) fn row<'a>(play: &Play, answer: &'a Answer) -> Row<'a> {
    let asked = answer.decided.asked.iter().map(|asked| Asked {
        read: path(&asked.path),
        t: asked.t,
        holds: asked.seen.holds,
        seen: words::seen(&asked.seen, play.set(), play.voice()),
    });
    let reads = answer.tried.iter().map(|tried| Cell {
        read: path(&tried.path),
        holds: tried.shown(),
        told: tried.told,
        open: tried.end.map(|look| look.open),
        ahead: tried.ahead,
    });
    Row {
        coverage: answer.decided.coverage.name(),
        line: path(&answer.decided.path),
        asked: asked.collect(),
        reads: reads.collect(),
    }
}

/// A sentence a coverage, with what was seen of the reads that were asked; then a column a read.
pub(crate) fn write(
    out: &mut dyn Write,
    play: &Play,
    answers: &[Answer],
    told: &Catalogue,
) -> io::Result<()> {
    let Some(first) = answers.first() else {
        return Ok(());
    };
    let (set, voice) = (play.set(), play.voice());
    writeln!(out, "\n{}\n", told.word("which-read"))?;
    for answer in answers {
        writeln!(out, "{}", words::answer(answer, set, voice))?;
        for asked in &answer.decided.asked {
            let mark = if asked.seen.holds { '+' } else { '-' };
            let title = words::line(set, &asked.path, voice);
            let t = told.number(asked.t, 1).into();
            let seen = words::seen(&asked.seen, set, voice).into();
            let parts = [("t", t), ("title", title.into()), ("seen", seen)];
            writeln!(out, "  {mark} {}", told.fill("asked", parts))?;
        }
    }
    let coverages = answers
        .iter()
        .map(|a| words::coverage(a.decided.coverage, voice).to_owned());
    let coverages: Vec<String> = coverages.collect();
    let width = wide(&coverages);
    write!(out, "\n{:width$}", told.word("open"))?;
    for tried in &first.tried {
        write!(out, "  {:>6}", path(&tried.path))?;
    }
    writeln!(out)?;
    for (answer, coverage) in answers.iter().zip(&coverages) {
        write!(out, "{coverage:width$}")?;
        for tried in &answer.tried {
            let open = tried.end.map(|look| told.number(look.open, 1));
            let star = if tried.ahead > 0.0 { "*" } else { " " };
            let by_whom = match tried {
                tried if tried.shown() => "+",
                tried if tried.told => "=",
                _ => "",
            };
            let cell = format!("{by_whom}{}{star}", open.unwrap_or_default());
            write!(out, "  {cell:>6}")?;
        }
        writeln!(out)?;
    }
    for tried in &first.tried {
        let title = words::line(set, &tried.path, voice);
        writeln!(out, "{:>4}  {title}", path(&tried.path))?;
    }
    writeln!(out, "{}", told.word("in-the-end"))
}

/// As `--read` has it: each counted from 1.
pub(crate) fn path(path: &[usize]) -> String {
    let numbers: Vec<String> = path.iter().map(|n| (n + 1).to_string()).collect();
    numbers.join(".")
}
