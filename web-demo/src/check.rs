//! `backcut check`: what is wrong with set files, and what a coach would stop the tape for.

use crate::Failure;
use crate::args::{Overrides, Source};
use crate::catalogue::Catalogue;
use crate::reads;
use backcut::fault::{Faults, Place};
use backcut::findings::{Finding, Settings, Severity, check_reads, together};
use backcut::play::{Branched, Play};
use backcut::set::{ActionId, Coverage};
use backcut::voice::{Said, Voice};
use backcut::words;
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

/// A file that can be played, with what a coach would stop it for: what is drawn, then each branch.
struct Judged {
    play: Play,
    findings: Vec<Finding>,
    branches: Vec<Branch>,
}

/// A branch, with what is found from its fork on.
struct Branch {
    path: Vec<usize>,
    play: Play,
    findings: Vec<Finding>,
}

impl Judged {
    /// Every finding with the line in which it is found, and the title of the read that made it.
    fn all(&self) -> impl Iterator<Item = (&Play, Option<String>, &Finding)> {
        let own = self.findings.iter().map(|f| (&self.play, None, f));
        own.chain(self.branches.iter().flat_map(|b| {
            let title = words::line(self.play.set(), &b.path, self.play.voice());
            let found = b.findings.iter();
            found.map(move |f| (&b.play, Some(title.clone()), f))
        }))
    }
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
                let judged = judge(file, play, overrides.is_drawn(), how.coverage)?;
                results.push((file.name(), Ok(judged)));
            }
            Err(Failure::Faults { name, faults }) => results.push((name, Err(faults))),
            Err(other) => return Err(other),
        }
    }
    let bad = results.iter().any(|(_, r)| match r {
        Ok(judged) => how.strict && judged.all().any(|(_, _, f)| violates(f)),
        Err(_) => true,
    });
    if how.json {
        let none = Faults::default();
        let files: Vec<Told<'_>> = results
            .iter()
            .map(|(name, result)| Told {
                findings: result.as_ref().map(told_findings).unwrap_or_default(),
                reads: result.as_ref().map(told_branches).unwrap_or_default(),
                ..to_json(
                    Some(name),
                    result.as_ref().err().unwrap_or(&none),
                    overrides.voice,
                )
            })
            .collect();
        serde_json::to_writer(&mut *out, &BTreeMap::from([("files", files)]))?;
        writeln!(out)?;
    } else {
        let told = Catalogue::new(overrides.voice);
        for (name, result) in &results {
            match result {
                Ok(judged) => write_findings(out, name, judged, &told)?,
                Err(faults) => write_text(out, name, faults, overrides.voice)?,
            }
        }
    }
    out.flush()?;
    if bad { Err(Failure::Told) } else { Ok(()) }
}

/// What a line is judged against where nobody names a coverage.
fn own(play: &Play) -> Coverage {
    let asked = play.asked_coverage().or(play.set().defence.all);
    asked.unwrap_or_default()
}

/// Everything that is found, in time order: what holds anyhow, and what holds against five.
fn judged(play: &Play, coverage: Option<Coverage>) -> Vec<Finding> {
    let settings = Settings::default();
    let coverage = coverage.unwrap_or_else(|| own(play));
    let against = play.findings_against(&play.defence(coverage), &settings);
    together(play.findings(&settings), against)
}

/// The line that is asked for, and where that is what is drawn, its reads and their branches.
fn judge(
    file: &Source,
    play: Play,
    drawn: bool,
    coverage: Option<Coverage>,
) -> Result<Judged, Failure> {
    let mut findings = judged(&play, coverage);
    let mut branches = Vec::new();
    if drawn && !play.set().reads.is_empty() {
        let settings = Settings::default();
        let faulty = |faults| file.faulty(faults);
        let lines = play.lines().map_err(faulty)?;
        let answers = play.answers().map_err(faulty)?;
        findings = together(findings, check_reads(&lines, &answers, &settings));
        for (path, _) in lines.iter().skip(1) {
            if let Ok(Branched { play, forks, .. }) = play.branch(path) {
                let fork = forks.last().copied().unwrap_or_default();
                let mut findings = judged_plainly(&play, coverage, &settings);
                findings.retain(|f| f.until.unwrap_or(f.t) > fork);
                branches.push(Branch {
                    path: path.to_vec(),
                    play,
                    findings,
                });
            }
        }
    }
    Ok(Judged {
        play,
        findings,
        branches,
    })
}

/// The same as [`judged`] without cures, which are edits of what is drawn.
fn judged_plainly(play: &Play, coverage: Option<Coverage>, settings: &Settings) -> Vec<Finding> {
    let coverage = coverage.unwrap_or_else(|| own(play));
    let defence = play.defence(coverage);
    let against = play.search(Some(&defence), settings).found().to_vec();
    together(play.search(None, settings).found().to_vec(), against)
}

fn violates(finding: &Finding) -> bool {
    finding.severity == Severity::Violation
}

/// A line about the file, then one a finding, led by where the action stands.
fn write_findings(
    out: &mut dyn Write,
    name: &str,
    judged: &Judged,
    told: &Catalogue,
) -> io::Result<()> {
    let set = judged.play.set();
    let counts = [
        ("beats", set.beats.len()),
        ("actions", set.actions().count()),
    ];
    let counts = counts.map(|(name, n)| (name, n.into()));
    let title = ("title", set.title.as_str().into());
    let about = told.fill("about", [title].into_iter().chain(counts));
    let parts = [("name", name.into()), ("about", about.into())];
    let state = if judged.all().next().is_none() {
        told.fill("clean", parts)
    } else {
        told.fill("no-faults", parts)
    };
    writeln!(out, "{state}")?;
    for (play, read, finding) in judged.all() {
        let action = |id: &ActionId| Some(&play.set().action(*id)?.place);
        let read_at = || Some(&set.read(&finding.read)?.place);
        let first = finding.actions.first().and_then(action).or_else(read_at);
        write!(out, "{name}:")?;
        if let Some(place) = first {
            write!(out, "{}:{}:", place.line, place.column)?;
        }
        if let Some(title) = read {
            write!(out, " {title}:")?;
        }
        write!(
            out,
            " {} s, {}: {}",
            told.number(finding.t, 2),
            told.word(finding.severity.name()),
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
    judged
        .findings
        .iter()
        .map(|f| told(&judged.play, f))
        .collect()
}

fn told_branches(judged: &Judged) -> Vec<ToldBranch> {
    let branches = judged.branches.iter().map(|b| ToldBranch {
        read: reads::path(&b.path),
        title: words::line(judged.play.set(), &b.path, judged.play.voice()),
        findings: b.findings.iter().map(|f| told(&b.play, f)).collect(),
    });
    branches.collect()
}

fn told(play: &Play, finding: &Finding) -> ToldFinding {
    ToldFinding {
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
        text: play.finding(finding),
        cure: play.cure(finding),
    }
}

/// One line a fault, led by `file:line:column` as editors and terminals follow it.
pub(crate) fn write_text(
    out: &mut dyn Write,
    name: &str,
    faults: &Faults,
    voice: Voice,
) -> io::Result<()> {
    let told = Catalogue::new(voice);
    for fault in &faults.list {
        let Place {
            pointer,
            line,
            column,
        } = &fault.place;
        write!(out, "{name}:{line}:{column}: {}", fault.found.told(voice))?;
        if let Some(allowed) = &fault.allowed {
            write!(out, "; {}", allowed.told(voice))?;
        }
        if let Some(help) = &fault.help {
            write!(out, ". {}", help.told(voice))?;
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
                "{name}:{}:{}: {}",
                place.line,
                place.column,
                told.word("part")
            )?;
        }
    }
    if faults.more > 0 {
        let n = faults.more.into();
        writeln!(out, "{name}: {}", told.fill("more", [("n", n)]))?;
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
    /// What is found in each branch, from its fork on.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    reads: Vec<ToldBranch>,
}

#[derive(Serialize)]
struct ToldBranch {
    /// As `--read` has it.
    read: String,
    title: String,
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
    found: String,
    allowed: String,
    help: Option<String>,
    related: Vec<ToldPlace<'a>>,
}

#[derive(Serialize)]
struct ToldPlace<'a> {
    pointer: &'a str,
    line: u32,
    column: u32,
}

/// `{"faults": […], "more": n}`, led by the file where there are several.
pub(crate) fn to_json<'a>(file: Option<&'a str>, faults: &'a Faults, voice: Voice) -> Told<'a> {
    let said = |said: &Option<Said>| said.as_ref().map(|said| said.told(voice));
    let place = |p: &'a Place| ToldPlace {
        pointer: &p.pointer,
        line: p.line,
        column: p.column,
    };
    let list = faults.list.iter().map(|fault| ToldFault {
        code: fault.code,
        place: place(&fault.place),
        found: fault.found.told(voice),
        allowed: said(&fault.allowed).unwrap_or_default(),
        help: said(&fault.help),
        related: fault.related.iter().map(place).collect(),
    });
    Told {
        file,
        faults: list.collect(),
        more: faults.more,
        findings: Vec::new(),
        reads: Vec::new(),
    }
}
