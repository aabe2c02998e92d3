//! `backcut looks`: what a set yields against each coverage.

use crate::Failure;
use crate::args::{Overrides, Source};
use crate::catalogue::Catalogue;
use crate::reads;
use backcut::choice::Answer;
use backcut::looks::{Chance, Look, Outcome};
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
        let told = Catalogue::new(play.voice());
        write_table(out, &play, &outcomes, &told)?;
        reads::write(out, &play, &answers, &told)?;
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
fn write_table(
    out: &mut dyn Write,
    play: &Play,
    outcomes: &[Outcome],
    told: &Catalogue,
) -> io::Result<()> {
    let looks = outcomes.first().map_or(&[][..], |o| &o.looks);
    let title = play.set().title.as_str().into();
    writeln!(out, "{}", told.fill("title-open", [("title", title)]))?;
    if looks.is_empty() {
        return writeln!(out, "\n{}", told.word("nobody"));
    }
    let heads: Vec<String> = looks.iter().map(|l| head(l, told)).collect();
    let coverages: Vec<String> = outcomes.iter().map(|o| coverage(o, told)).collect();
    let width = wide(&coverages);
    write!(out, "\n{:width$}", "")?;
    for head in &heads {
        write!(out, "   {head}")?;
    }
    writeln!(out)?;
    for (outcome, coverage) in outcomes.iter().zip(&coverages) {
        write!(out, "{coverage:width$}")?;
        for (look, head) in outcome.looks.iter().zip(&heads) {
            let star = if look.lane.is_some_and(|lane| lane < 0.0) {
                "*"
            } else {
                " "
            };
            write!(
                out,
                "   {:>1$}{star}",
                told.number(look.open, 1),
                head.chars().count() - 1
            )?;
        }
        writeln!(out)?;
    }
    let needs = told.number(play.set().level.limits().release, 1);
    let needs = told.fill("needs", [("s", needs.into())]);
    writeln!(out, "\n{needs}\n{}", told.word("likely"))
}

/// What is over a column: who, what and when.
fn head(look: &Look, told: &Catalogue) -> String {
    let (who, t) = (look.who.number().into(), told.number(look.t, 1).into());
    let parts = [("who", who), ("t", t)];
    match look.chance {
        Chance::Catch => told.fill("catch", parts),
        Chance::Drive => told.fill("drive", parts),
        Chance::Finish => told.fill("finish", parts),
    }
}

fn coverage(outcome: &Outcome, told: &Catalogue) -> String {
    let coverage = words::coverage(outcome.coverage, told.voice);
    if outcome.written {
        told.fill("in-file", [("coverage", coverage.into())])
    } else {
        coverage.to_owned()
    }
}

/// Room for a column of coverages, and for one that the other table has.
pub(crate) fn wide(coverages: &[String]) -> usize {
    let most = coverages.iter().map(|c| c.chars().count()).max();
    most.unwrap_or_default().max(14)
}
