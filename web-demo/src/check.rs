//! `backcut check`: what is wrong with set files.

use crate::Failure;
use crate::args::{Overrides, Source};
use backcut::fault::{Faults, Place};
use serde::Serialize;
use std::collections::BTreeMap;
use std::io::{self, Write};

/// Prints the faults of `files`, each file by itself.
///
/// # Errors
/// [`Failure::Told`] where there were faults.
pub(crate) fn run(
    files: &[Source],
    overrides: Overrides,
    json: bool,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let mut results = Vec::new();
    for file in files {
        match file.open(overrides) {
            Ok(play) => results.push((file.name(), Ok(play))),
            Err(Failure::Faults { name, faults }) => results.push((name, Err(faults))),
            Err(other) => return Err(other),
        }
    }
    let faulty = results.iter().any(|(_, r)| r.is_err());
    if json {
        let none = Faults::default();
        let files: Vec<Told<'_>> = results
            .iter()
            .map(|(name, result)| to_json(Some(name), result.as_ref().err().unwrap_or(&none)))
            .collect();
        serde_json::to_writer(&mut *out, &BTreeMap::from([("files", files)]))?;
        writeln!(out)?;
    } else {
        for (name, result) in &results {
            match result {
                Ok(play) => {
                    let set = play.set();
                    let (beats, actions) = (set.beats.len(), set.actions().count());
                    writeln!(
                        out,
                        "{name}: clean. {}, {beats} beats, {actions} actions.",
                        set.title
                    )?;
                }
                Err(faults) => write_text(out, name, faults)?,
            }
        }
    }
    out.flush()?;
    if faulty { Err(Failure::Told) } else { Ok(()) }
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
    }
}
