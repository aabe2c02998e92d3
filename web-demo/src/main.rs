//! The native tool of Backcut: checks, times, draws and shows written set plays.
//!
//! Each command is one file; `input` opens a set, `Failure` says how a command ends when it does
//! not end well. A command writes nothing before its input is known to be clean.

mod args;
mod card;
mod catalogue;
mod check;
mod draw;
mod frames;
mod input;
mod link;
mod looks;
mod markup;
mod page;
mod reads;
mod roles;
mod serve;
mod show;
mod site;
mod time;

use args::{Command, Request};
use backcut::fault::Faults;
use std::io::{self, ErrorKind, Write};
use std::process::ExitCode;

/// Why a command did not end well.
#[derive(Debug)]
pub(crate) enum Failure {
    /// The command line asks for something that cannot be done.
    Use(String),
    /// The file cannot be understood as written.
    Faults {
        /// The file's name.
        name: String,
        /// What is wrong with it.
        faults: Faults,
    },
    /// Faults were found and have been told already.
    Told,
    /// The output cannot be written.
    Output(io::Error),
}

impl From<io::Error> for Failure {
    fn from(error: io::Error) -> Self {
        Self::Output(error)
    }
}

impl From<serde_json::Error> for Failure {
    fn from(error: serde_json::Error) -> Self {
        Self::Output(error.into())
    }
}

fn main() -> ExitCode {
    let mut err = io::stderr().lock();
    let request = match args::parse(std::env::args_os().skip(1)) {
        Ok(request) => request,
        Err(sentence) => {
            // Standard error is the last place to say anything: if it is gone, so is the message.
            let _ = writeln!(err, "{sentence}");
            return ExitCode::from(2);
        }
    };
    let json = matches!(
        request.command,
        Command::Check { json: true, .. }
            | Command::Time { json: true, .. }
            | Command::Looks { json: true, .. }
            | Command::Link {
                share: args::Share { json: true, .. },
                ..
            }
    );
    let voice = request.overrides.voice;
    drop(err);
    let result = run(request);
    let mut err = io::stderr().lock();
    match result {
        Ok(()) => ExitCode::SUCCESS,
        // Whoever read our output has seen enough (`backcut frames … | head`).
        Err(Failure::Output(e)) if e.kind() == ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(Failure::Output(e)) => {
            let _ = writeln!(err, "cannot write: {e}");
            ExitCode::from(2)
        }
        Err(Failure::Use(sentence)) => {
            let _ = writeln!(err, "{sentence}");
            ExitCode::from(2)
        }
        Err(Failure::Told) => ExitCode::from(1),
        Err(Failure::Faults { name, faults }) => {
            let _ = if json {
                serde_json::to_writer(&mut err, &check::to_json(None, &faults, voice))
                    .map_err(io::Error::from)
                    .and_then(|()| writeln!(err))
            } else {
                check::write_text(&mut err, &name, &faults, voice)
            };
            ExitCode::from(1)
        }
    }
}

fn run(request: Request) -> Result<(), Failure> {
    let options = request.overrides;
    let mut out = io::BufWriter::new(io::stdout().lock());
    match request.command {
        Command::Check {
            files,
            json,
            strict,
            coverage,
        } => {
            let how = check::How {
                json,
                strict,
                coverage,
            };
            check::run(&files, options, how, &mut out)?;
        }
        Command::Time { file, json } => time::run(&file, options, json, &mut out)?,
        Command::Looks {
            file,
            coverage,
            json,
        } => looks::run(&file, options, coverage, json, &mut out)?,
        Command::Frames {
            file,
            fps,
            coverage,
        } => frames::run(&file, options, fps, coverage, &mut out)?,
        Command::Card {
            file,
            player,
            out: page,
        } => roles::run(&file, options, player, page.as_deref(), &mut out)?,
        Command::Draw(picture) => draw::run(&picture, options, &mut out)?,
        Command::Show { file, port } => show::run(file, options, port, &mut out)?,
        Command::Page(asked) => page::run(&asked, options, &mut out)?,
        Command::Site {
            source,
            out: folder,
            base,
        } => {
            let place = site::Place {
                out: &folder,
                base: &base,
            };
            site::run(&source, &place, &mut out)?;
        }
        Command::Serve { dir, port } => {
            if !dir.is_dir() {
                return Err(Failure::Use(format!(
                    "backcut serve: {} is no folder",
                    dir.display()
                )));
            }
            let listener =
                serve::listen(port).map_err(|e| Failure::Use(format!("port {port}: {e}")))?;
            writeln!(out, "http://{}/", listener.local_addr()?)?;
            out.flush()?;
            serve::run(&listener, move |path| serve::file(&dir, path));
        }
        Command::Link { file, share } => link::write(&file, options, &share, &mut out)?,
        Command::Open { link, out: file } => link::open(link, file.as_deref(), &mut out)?,
        Command::Schema => writeln!(out, "{}", backcut::document::schema())?,
        Command::Help => out.write_all(args::USAGE.as_bytes())?,
        Command::Version => writeln!(out, "backcut {}", env!("CARGO_PKG_VERSION"))?,
    }
    out.flush()?;
    Ok(())
}
