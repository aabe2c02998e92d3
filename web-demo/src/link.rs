//! `backcut link` and `backcut open`: a whole set as a link, and back.

use crate::Failure;
use crate::args::{Overrides, Share, Source};
use backcut::document;
use backcut::fault::Faults;
use backcut::link::{self, LIMITS, View};
use backcut::play::Play;
use serde::Serialize;
use std::fs;
use std::io::{self, Read, Write};
use std::path::Path;

#[derive(Serialize)]
struct Told {
    link: String,
    /// Characters of the link.
    characters: usize,
    /// Bytes of the file it was made from.
    file: usize,
    /// Bytes of the set file that it opens to.
    text: usize,
}

/// Prints the set in `file` as a link.
///
/// # Errors
/// When the file has faults, the set is too large for a link, or the output cannot be written.
pub(crate) fn write(
    file: &Source,
    overrides: Overrides,
    share: &Share,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let faulty = |faults: Faults| Failure::Faults {
        name: file.name(),
        faults,
    };
    let bytes = file.read()?;
    let play = Play::open(&bytes, &overrides.options()).map_err(faulty)?;
    let fragment = link::write(play.set(), &share.view).map_err(faulty)?;
    let link = format!("{}#{fragment}", share.base);
    if share.json {
        let told = Told {
            characters: link.len(),
            link,
            file: bytes.len(),
            text: document::write(play.set()).len(),
        };
        serde_json::to_writer(&mut *out, &told)?;
        writeln!(out)?;
    } else {
        writeln!(out, "{link}")?;
    }
    Ok(())
}

/// Prints the set file that `link` holds, and tells on standard error what else it asks for.
///
/// # Errors
/// When the link is damaged or holds no set, or the output cannot be written.
pub(crate) fn open(
    link: Option<String>,
    file: Option<&Path>,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let link = match link {
        Some(link) => link,
        None => {
            let mut bytes = Vec::new();
            // No more than it takes to see that there is too much.
            let limit = LIMITS.characters as u64 + 1;
            let mut input = io::stdin().lock().take(limit);
            input
                .read_to_end(&mut bytes)
                .map_err(|e| Failure::Use(format!("standard input: {e}")))?;
            String::from_utf8_lossy(&bytes).into_owned()
        }
    };
    let faulty = |faults: Faults| Failure::Faults {
        name: "link".to_owned(),
        faults,
    };
    let opened = link::read(&link).map_err(faulty)?;
    document::read(&opened.text).map_err(faulty)?;
    match file {
        Some(path) => fs::write(path, &opened.text)
            .map_err(|e| Failure::Use(format!("{}: {e}", path.display())))?,
        None => out.write_all(&opened.text)?,
    }
    if let Some(asked) = asked(&opened.view) {
        // Standard error is the last place to say anything: if it is gone, so is the message.
        let _ = writeln!(io::stderr().lock(), "The link asks for: {asked}.");
    }
    Ok(())
}

/// What a view asks for, in words; nothing where it asks for nothing.
fn asked(view: &View) -> Option<String> {
    let mut asked = Vec::new();
    match (view.from, view.until) {
        (Some(from), None) => asked.push(format!("{from} s")),
        (from, Some(until)) => asked.push(format!("{} to {until} s", from.unwrap_or(0.0))),
        (None, None) => {}
    }
    if let Some(beat) = view.beat {
        asked.push(format!("beat {beat}"));
    }
    if !view.read.is_empty() {
        let path: Vec<String> = view.read.iter().map(u16::to_string).collect();
        asked.push(format!("read {}", path.join(".")));
    }
    for (player, followed) in (1..).zip(view.follow) {
        if followed {
            asked.push(format!("follow {player}"));
        }
    }
    if let Some(coverage) = view.coverage {
        asked.push(format!("against {}", coverage.name()));
    }
    if let Some(speed) = view.speed {
        asked.push(format!("{speed} times the speed"));
    }
    if view.paused {
        asked.push("paused".to_owned());
    }
    (!asked.is_empty()).then(|| asked.join(", "))
}
