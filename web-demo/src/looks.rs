//! `backcut looks`: what a set yields against each coverage.

use crate::Failure;
use crate::args::{Overrides, Source};
use crate::reads;
use backcut::choice::Answer;
use backcut::looks::{Look, Outcome};
use backcut::play::Play;
use backcut::set::Coverage;
use backcut::voice::Voice;
use backcut::words;
use serde::Serialize;
use std::io::{self, Write};

/// Prints the looks under `coverage`, else under every coverage that the set can meet.
///
/// # Errors
/// When the file has faults or the output cannot be written.
pub(crate) fn run(
    file: &Source,
    overrides: Overrides,
    coverage: Option<Coverage>,
    json: bool,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let play = file.open(overrides)?;
    let outcomes = match coverage {
        Some(coverage) => vec![Outcome {
            coverage,
            written: play.set().defence.all == Some(coverage),
            looks: play.looks(&play.defence(coverage)),
        }],
        None => play.outcomes(),
    };
    let answers = if overrides.is_drawn() {
        answers(file, &play, &outcomes)?
    } else {
        Vec::new()
    };
    if json {
        let rows = outcomes.iter().map(|o| row(o, play.voice()));
        let table = Table {
            outcomes: rows.collect(),
            reads: answers.iter().map(|a| reads::row(&play, a)).collect(),
        };
        serde_json::to_writer(&mut *out, &table)?;
        out.write_all(b"\n")?;
    } else {
        write_table(out, &play, &outcomes)?;
        reads::write(out, &play, &answers)?;
    }
    Ok(())
}

/// Which read beats each of those coverages; nothing where the set has no reads.
fn answers(file: &Source, play: &Play, outcomes: &[Outcome]) -> Result<Vec<Answer>, Failure> {
    if play.set().reads.is_empty() {
        return Ok(Vec::new());
    }
    let lines = play.lines().map_err(|faults| file.faulty(faults))?;
    Ok(outcomes.iter().map(|o| lines.answer(o.coverage)).collect())
}

#[derive(Serialize)]
struct Table<'a> {
    outcomes: Vec<Row>,
    /// Which read beats which coverage.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    reads: Vec<reads::Row<'a>>,
}

#[derive(Serialize)]
struct Row {
    coverage: &'static str,
    written: bool,
    looks: Vec<Cell>,
}

#[derive(Serialize)]
struct Cell {
    action: String,
    chance: &'static str,
    who: u8,
    t: f64,
    x: f64,
    y: f64,
    separation: f64,
    openness: &'static str,
    contested: bool,
    nearest: Option<String>,
    open: f64,
    needs: f64,
    lane: Option<f64>,
}

fn row(outcome: &Outcome, voice: Voice) -> Row {
    Row {
        coverage: outcome.coverage.name(),
        written: outcome.written,
        looks: outcome.looks.iter().map(|l| cell(l, voice)).collect(),
    }
}

fn cell(look: &Look, voice: Voice) -> Cell {
    Cell {
        action: format!(
            "{}.{}",
            u32::from(look.action.beat) + 1,
            u32::from(look.action.action) + 1
        ),
        chance: look.chance.name(),
        who: look.who.number(),
        t: look.t,
        x: look.at.x,
        y: look.at.y,
        separation: look.separation,
        openness: words::openness(look.openness(), voice),
        contested: look.contested(),
        nearest: look.nearest.map(|p| format!("X{}", p.number())),
        open: look.open,
        needs: look.needs,
        // No hand can reach the ball: no number stands for that in JSON.
        lane: look.lane.filter(|lane| lane.is_finite()),
    }
}

/// Rows are coverages, columns are looks in time order, cells the seconds until a defender is
/// there; a star where the pass has to go by a hand.
fn write_table(out: &mut dyn Write, play: &Play, outcomes: &[Outcome]) -> io::Result<()> {
    let looks = outcomes.first().map_or(&[][..], |o| &o.looks);
    writeln!(out, "{}: seconds open", play.set().title)?;
    if looks.is_empty() {
        return writeln!(out, "\nNobody catches, drives or shoots.");
    }
    let heads: Vec<String> = looks
        .iter()
        .map(|l| format!("{} {} at {:.1}", l.who.number(), l.chance.name(), l.t))
        .collect();
    write!(out, "\n{:14}", "")?;
    for head in &heads {
        write!(out, "   {head}")?;
    }
    writeln!(out)?;
    for outcome in outcomes {
        let mark = if outcome.written { " (file)" } else { "" };
        write!(out, "{:14}", format!("{}{mark}", outcome.coverage.name()))?;
        for (look, head) in outcome.looks.iter().zip(&heads) {
            let star = if look.lane.is_some_and(|lane| lane < 0.0) {
                "*"
            } else {
                " "
            };
            write!(
                out,
                "   {:>1$.1}{star}",
                look.open,
                head.chars().count() - 1
            )?;
        }
        writeln!(out)?;
    }
    writeln!(
        out,
        "\nA catch-and-shoot needs about {:.1} s. * a hand can be in the passing lane.\n\
         Likely, not certain: defenders choose.",
        play.set().level.limits().release
    )
}
