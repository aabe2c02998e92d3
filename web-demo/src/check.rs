//! `backcut check`: what is wrong with set files, and what a coach would stop the tape for.

use crate::Failure;
use crate::args::{Overrides, Source};
use backcut::fault::{Faults, Place};
use backcut::findings::{Finding, Settings, Severity, together};
use backcut::play::Play;
use backcut::set::Coverage;
use serde::Serialize;
use std::collections::BTreeMap;
use std::io::{self, Write};

/// How to tell it, and what counts.
#[derive(Clone, Copy, Debug)]
pub(crate) struct How {
    /// As JSON.
    pub(crate) json: bool,
    /// Whether a violation is as bad as a fault.
    pub(crate) strict: bool,
    /// What the defence plays instead of the file's own coverage.
    pub(crate) coverage: Option<Coverage>,
}

/// A file that can be played, with what a coach would stop it for.
struct Judged {
    play: Play,
    findings: Vec<Finding>,
}

/// Prints the faults and findings of `files`, each file by itself.
///
/// # Errors
/// [`Failure::Told`] where there were faults, or violations that count.
pub(crate) fn run(
    files: &[Source],
    overrides: Overrides,
    how: How,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let mut results = Vec::new();
    for file in files {
        match file.open(overrides) {
            Ok(play) => {
                let findings = judged(&play, how.coverage);
                results.push((file.name(), Ok(Judged { play, findings })));
            }
            Err(Failure::Faults { name, faults }) => results.push((name, Err(faults))),
            Err(other) => return Err(other),
        }
    }
    let bad = results.iter().any(|(_, r)| match r {
        Ok(judged) => how.strict && judged.findings.iter().any(violates),
        Err(_) => true,
    });
    if how.json {
        let none = Faults::default();
        let files: Vec<Told<'_>> = results
            .iter()
            .map(|(name, result)| Told {
                findings: result.as_ref().map(told_findings).unwrap_or_default(),
                ..to_json(Some(name), result.as_ref().err().unwrap_or(&none))
            })
            .collect();
        serde_json::to_writer(&mut *out, &BTreeMap::from([("files", files)]))?;
        writeln!(out)?;
    } else {
        for (name, result) in &results {
            match result {
                Ok(judged) => write_findings(out, name, judged)?,
                Err(faults) => write_text(out, name, faults)?,
            }
        }
    }
    out.flush()?;
    if bad { Err(Failure::Told) } else { Ok(()) }
}

/// Everything that is found, in time order: what holds anyhow, and what holds against five.
fn judged(play: &Play, coverage: Option<Coverage>) -> Vec<Finding> {
    let settings = Settings::default();
    let coverage = coverage.or(play.set().defence.all).unwrap_or_default();
    let against = play.findings_against(&play.defence(coverage), &settings);
    together(play.findings(&settings), against)
}

fn violates(finding: &Finding) -> bool {
    finding.severity == Severity::Violation
}

/// A line about the file, then one a finding, led by where the action stands.
fn write_findings(out: &mut dyn Write, name: &str, judged: &Judged) -> io::Result<()> {
    let (play, set) = (&judged.play, judged.play.set());
    let (beats, actions) = (set.beats.len(), set.actions().count());
    let state = if judged.findings.is_empty() {
        "clean"
    } else {
        "no faults"
    };
    writeln!(
        out,
        "{name}: {state}. {}, {beats} beats, {actions} actions.",
        set.title
    )?;
    for finding in &judged.findings {
        let first = finding.actions.first().and_then(|id| set.action(*id));
        write!(out, "{name}:")?;
        if let Some(action) = first {
            write!(out, "{}:{}:", action.place.line, action.place.column)?;
        }
        write!(
            out,
            " {:.2} s, {}: {}",
            finding.t,
            finding.severity.name(),
            play.finding(finding)
        )?;
        if let Some(cure) = play.cure(finding) {
            write!(out, " {cure}")?;
        }
        writeln!(out, " [{}]", finding.code())?;
    }
    Ok(())
}

fn told_findings(judged: &Judged) -> Vec<ToldFinding> {
    let told = |finding: &Finding| ToldFinding {
        code: finding.code(),
        severity: finding.severity.name(),
        t: finding.t,
        players: finding.players.iter().map(|p| p.number()).collect(),
        defenders: finding
            .defenders
            .iter()
            .map(|p| format!("X{}", p.number()))
            .collect(),
        coverage: finding.coverage.map(Coverage::name),
        text: judged.play.finding(finding),
        cure: judged.play.cure(finding),
    };
    judged.findings.iter().map(told).collect()
}

/// One line a fault, led by `file:line:column` as editors and terminals follow it.
pub(crate) fn write_text(out: &mut dyn Write, name: &str, faults: &Faults) -> io::Result<()> {
    for fault in &faults.list {
        let Place {
            pointer,
            line,
            column,
        } = &fault.place;
        write!(out, "{name}:{line}:{column}: {}", fault.found)?;
        if !fault.allowed.is_empty() {
            write!(out, "; {}", fault.allowed)?;
        }
        if let Some(help) = &fault.help {
            write!(out, ". {help}")?;
        }
        writeln!(
            out,
            " [{}{}{pointer}]",
            fault.code,
            if pointer.is_empty() { "" } else { " at " }
        )?;
        for place in &fault.related {
            writeln!(
                out,
                "{name}:{}:{}: … and this takes part",
                place.line, place.column
            )?;
        }
    }
    if faults.more > 0 {
        writeln!(out, "{name}: {} more", faults.more)?;
    }
    Ok(())
}

/// Faults as JSON.
#[derive(Serialize)]
pub(crate) struct Told<'a> {
    #[serde(skip_serializing_if = "Option::is_none")]
    file: Option<&'a str>,
    faults: Vec<ToldFault<'a>>,
    /// How many more there are.
    more: usize,
    findings: Vec<ToldFinding>,
}

#[derive(Serialize)]
struct ToldFinding {
    code: &'static str,
    severity: &'static str,
    /// Seconds.
    t: f64,
    players: Vec<u8>,
    defenders: Vec<String>,
    /// Under which coverage it holds; null: whatever the defence does.
    coverage: Option<&'static str>,
    text: String,
    cure: Option<String>,
}

#[derive(Serialize)]
struct ToldFault<'a> {
    code: &'a str,
    #[serde(flatten)]
    place: ToldPlace<'a>,
    found: &'a str,
    allowed: &'a str,
    help: Option<&'a str>,
    related: Vec<ToldPlace<'a>>,
}

#[derive(Serialize)]
struct ToldPlace<'a> {
    pointer: &'a str,
    line: u32,
    column: u32,
}

/// `{"faults": […], "more": n}`, led by the file where there are several.
pub(crate) fn to_json<'a>(file: Option<&'a str>, faults: &'a Faults) -> Told<'a> {
    let place = |p: &'a Place| ToldPlace {
        pointer: &p.pointer,
        line: p.line,
        column: p.column,
    };
    let list = faults.list.iter().map(|fault| ToldFault {
        code: fault.code,
        place: place(&fault.place),
        found: &fault.found,
        allowed: &fault.allowed,
        help: fault.help.as_deref(),
        related: fault.related.iter().map(place).collect(),
    });
    Told {
        file,
        faults: list.collect(),
        more: faults.more,
        findings: Vec::new(),
    }
}
