//! `backcut show`: the page of one file. It reloads when the file is saved; faults lie over the
//! last good picture, so that writing goes on without a look at the terminal.

use crate::args::{Moment, Overrides, Source};
use crate::serve::{self, Answer};
use crate::{Failure, check, draw, site};
use backcut::athlete::Level;
use backcut::court::RuleSet;
use backcut::svg::Palette;
use serde_json::{Value, json};
use std::io::{self, Write};
use std::path::PathBuf;
use std::sync::Arc;
use std::thread;
use std::time::Duration;

const PAGE: &str = include_str!("show/page.html");
const SCRIPT: &str = include_str!("show/page.js");
const STYLE: &str = include_str!("show/page.css");

/// How often the file is looked at. Often enough to feel at once, seldom enough to cost nothing.
const LOOK: Duration = Duration::from_millis(150);

/// Says something this often even if nothing happens, so that a reader who left is noticed.
const QUIET: u32 = 100;

struct Shown {
    source: Source,
    overrides: Overrides,
    package: Option<PathBuf>,
}

/// Serves the page of `file` until the process ends.
///
/// # Errors
/// When the file cannot be read or the port is taken. Faults in the file are shown on the page.
pub(crate) fn run(
    file: PathBuf,
    overrides: Overrides,
    port: u16,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let source = Source::File(file);
    source.read()?;
    let listener = serve::listen(port).map_err(|e| Failure::Use(format!("port {port}: {e}")))?;
    writeln!(out, "http://{}/", listener.local_addr()?)?;
    let package = site::package();
    if package.is_none() {
        writeln!(
            out,
            "The package is not built, so the page shows pictures that stand still."
        )?;
    }
    out.flush()?;
    let shown = Arc::new(Shown {
        source,
        overrides,
        package,
    });
    serve::run(&listener, move |path| answer(&shown, path));
    Ok(())
}

fn answer(shown: &Arc<Shown>, path: &str) -> Answer {
    let text = |kind, text: &str| Answer::Body {
        kind,
        bytes: text.into(),
    };
    match path {
        "/" => text("text/html; charset=utf-8", PAGE),
        "/page.js" => text("text/javascript; charset=utf-8", SCRIPT),
        "/page.css" => text("text/css; charset=utf-8", STYLE),
        "/set.json" => match shown.source.read() {
            Ok(bytes) => Answer::Body {
                kind: "application/json",
                bytes,
            },
            Err(_) => Answer::Missing,
        },
        "/events" => {
            let shown = Arc::clone(shown);
            Answer::Events(Box::new(move |out| watch(&shown, out)))
        }
        _ => match (path.strip_prefix("/backcut"), &shown.package) {
            (Some(rest), Some(package)) => serve::file(package, rest),
            _ => picture(shown, path).map_or(Answer::Missing, |svg| text("image/svg+xml", &svg)),
        },
    }
}

/// `/beat-2.svg`.
fn picture(shown: &Shown, path: &str) -> Option<String> {
    let number = path
        .strip_prefix("/beat-")?
        .strip_suffix(".svg")?
        .parse()
        .ok()?;
    let play = shown.source.open(shown.overrides).ok()?;
    draw::paint(&play, Moment::Beat(number), None, 760.0, &Palette::light()).ok()
}

/// One event each time the file's bytes change, the first at once.
fn watch(shown: &Shown, out: &mut dyn Write) -> io::Result<()> {
    let mut before: Option<Vec<u8>> = None;
    let mut quiet = 0;
    loop {
        // While an editor replaces the file it may not be there for an instant: then wait.
        let now = shown.source.read().ok();
        if now.is_some() && now != before {
            before = now;
            write!(out, "data: {}\n\n", state(shown))?;
            quiet = 0;
        } else if quiet == QUIET {
            write!(out, ":\n\n")?;
            quiet = 0;
        }
        out.flush()?;
        quiet += 1;
        thread::sleep(LOOK);
    }
}

fn state(shown: &Shown) -> Value {
    match shown.source.open(shown.overrides) {
        Ok(play) => {
            let set = play.set();
            let beats: Vec<String> = (0..set.beats.len()).map(|i| play.beat_title(i)).collect();
            json!({
                "title": set.title,
                "beats": beats,
                "moves": shown.package.is_some(),
                "attributes": attributes(shown.overrides),
                "faults": [],
                "more": 0,
            })
        }
        Err(Failure::Faults { faults, .. }) => {
            json!(check::to_json(None, &faults, shown.overrides.voice))
        }
        // Unreadable for the moment: the next look decides.
        Err(_) => json!({ "faults": [], "more": 0 }),
    }
}

/// What the command line says instead of the file, as the element takes it.
fn attributes(overrides: Overrides) -> Value {
    json!({
        "court": overrides.court.map(RuleSet::name),
        "level": overrides.level.map(Level::name),
        "mirrored": overrides.mirror.then_some(""),
    })
}
