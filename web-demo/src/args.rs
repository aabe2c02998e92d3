//! What was asked for on the command line.

mod option;
mod usage;

pub(crate) use usage::USAGE;

use backcut::athlete::Level;
use backcut::court::RuleSet;
use backcut::link::View;
use backcut::set::{Coverage, PlayerId};
use backcut::voice::Voice;
use lexopt::prelude::{Long, Short, Value};
use option::{Asked, Given, option};
use std::ffi::OsString;
use std::path::PathBuf;

/// One call of the tool.
#[derive(Debug, PartialEq)]
pub(crate) struct Request {
    /// What to do.
    pub(crate) command: Command,
    /// Overrides of what the file says.
    pub(crate) overrides: Overrides,
}

/// What the command line says instead of the file.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Overrides {
    /// Rule set.
    pub(crate) court: Option<RuleSet>,
    /// Athlete level.
    pub(crate) level: Option<Level>,
    /// Left and right exchanged.
    pub(crate) mirror: bool,
    /// In which language and measure sets are told.
    pub(crate) voice: Voice,
    /// The reads taken, each counted from 1; 0 ends the path. Deeper than files can nest them.
    pub(crate) read: [u16; 16],
}

/// Where a set file comes from.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Source {
    /// `-`.
    Standard,
    /// A file.
    File(PathBuf),
}

/// Which picture of a set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Moment {
    /// Seconds since the set began.
    At(f64),
    /// A beat with its trails, counted from 1.
    Beat(usize),
}

/// A picture to draw.
#[derive(Debug, PartialEq)]
pub(crate) struct Picture {
    /// Of which file.
    pub(crate) file: Source,
    /// Which instant.
    pub(crate) moment: Moment,
    /// With five defenders under this coverage.
    pub(crate) coverage: Option<Coverage>,
    /// Where to; `None`: standard output.
    pub(crate) out: Option<PathBuf>,
    /// CSS pixels.
    pub(crate) width: f64,
    /// Dark colours.
    pub(crate) dark: bool,
    /// With ghosts of where everybody stands at the next stop of a walk-through.
    pub(crate) ghosts: bool,
}

/// Sets to put into one file.
#[derive(Debug, Default, PartialEq)]
pub(crate) struct Handout {
    /// Which.
    pub(crate) files: Vec<Source>,
    /// Its title; `None`: the set's own.
    pub(crate) title: Option<String>,
    /// The beat that is drawn before anything moves, counted from 1.
    pub(crate) beat: Option<usize>,
    /// With five defenders under this coverage.
    pub(crate) coverage: Option<Coverage>,
    /// Where to; `None`: standard output.
    pub(crate) out: Option<PathBuf>,
}

/// A link to make.
#[derive(Debug, Default, PartialEq)]
pub(crate) struct Share {
    /// What to show of the set.
    pub(crate) view: View,
    /// Address before the `#`; empty for none.
    pub(crate) base: String,
    /// As JSON, with sizes.
    pub(crate) json: bool,
}

/// What to do.
#[derive(Debug, PartialEq)]
pub(crate) enum Command {
    /// Print the faults of files.
    Check {
        /// Which.
        files: Vec<Source>,
        /// As JSON.
        json: bool,
        /// Whether a violation is as bad as a fault.
        strict: bool,
        /// Against this coverage; `None`: the file's own.
        coverage: Option<Coverage>,
    },
    /// Print the timetable.
    Time {
        /// Of which file.
        file: Source,
        /// As JSON.
        json: bool,
    },
    /// Print how open everybody gets.
    Looks {
        /// Of which file.
        file: Source,
        /// Under which coverage; `None`: all that the set can meet.
        coverage: Option<Coverage>,
        /// As JSON.
        json: bool,
    },
    /// Print frames.
    Frames {
        /// Of which file.
        file: Source,
        /// Frames a second.
        fps: f64,
        /// With five defenders under this coverage.
        coverage: Option<Coverage>,
    },
    /// Draw a picture.
    Draw(Picture),
    /// Role cards.
    Card {
        /// Of which file.
        file: Source,
        /// Whose; `None`: everybody's.
        player: Option<PlayerId>,
        /// Where the page goes to; `None`: as text to standard output.
        out: Option<PathBuf>,
    },
    /// Serve the page of one file.
    Show {
        /// Which.
        file: PathBuf,
        /// On which port.
        port: u16,
    },
    /// Put sets into one file.
    Page(Handout),
    /// Make the demo playbook.
    Site {
        /// Folder with `sets` and `site`.
        source: PathBuf,
        /// Folder to write.
        out: PathBuf,
        /// The address it will have, with a slash at the end.
        base: String,
    },
    /// Serve a folder.
    Serve {
        /// Which.
        dir: PathBuf,
        /// On which port.
        port: u16,
    },
    /// Print a set as a link.
    Link {
        /// Which.
        file: Source,
        /// How.
        share: Share,
    },
    /// Print the set file that a link holds.
    Open {
        /// The link; `None`: on standard input.
        link: Option<String>,
        /// Where to; `None`: standard output.
        out: Option<PathBuf>,
    },
    /// Print the JSON Schema.
    Schema,
    /// Print the usage.
    Help,
    /// Print the version.
    Version,
}

/// Port where none is asked for. Chosen freely in the user range.
const PORT: u16 = 4715;

/// Address of the demo site where none is given: RFC 2606 keeps the name from ever being anybody's.
const BASE: &str = "https://tallow-bay.example/";

/// Reads the command line (without the program's own name).
///
/// # Errors
/// A sentence that says what is wrong with it.
pub(crate) fn parse<I>(args: I) -> Result<Request, String>
where
    I: IntoIterator<Item = OsString>,
{
    let mut parser = lexopt::Parser::from_args(args);
    let mut name = None;
    let mut given = Given::default();
    while let Some(arg) = parser.next().map_err(|e| e.to_string())? {
        match arg {
            Short('h') | Long("help") => return Ok(plain(Command::Help)),
            Short('V') | Long("version") => return Ok(plain(Command::Version)),
            Value(word) if name.is_none() => {
                name = Some(
                    word.into_string()
                        .map_err(|_| "unknown command".to_owned())?,
                );
            }
            Value(word) => given.free.push(word),
            Short(_) | Long(_) => {
                let written = match arg {
                    Short(letter) => format!("-{letter}"),
                    Long(word) => format!("--{word}"),
                    Value(_) => String::new(),
                };
                option(&mut given, &written, &mut parser)?;
            }
        }
    }
    let name = name.ok_or("no command; try `backcut help`")?;
    let allowed = usage::options(&name);
    if name != "link" {
        if given.read.len() > given.overrides.read.len() {
            return Err("--read: no set nests reads so deep".to_owned());
        }
        for (slot, number) in given.overrides.read.iter_mut().zip(&given.read) {
            *slot = *number;
        }
    }
    let overrides = Overrides {
        voice: Voice::new(given.lang.as_deref().unwrap_or_default(), given.units),
        ..given.overrides
    };
    let command = command(&name, &mut given)?;
    if let Some(extra) = given.seen.iter().find(|o| !allowed.contains(o)) {
        return Err(format!("backcut {name} does not take {extra}"));
    }
    if let Some(extra) = given.free.first() {
        return Err(format!("backcut {name}: one too many: {}", extra.display()));
    }
    Ok(Request { command, overrides })
}

fn plain(command: Command) -> Request {
    Request {
        command,
        overrides: Overrides::default(),
    }
}

/// The one coverage that `command` can take.
fn one(command: &str, asked: Option<Asked>) -> Result<Option<Coverage>, String> {
    match asked {
        Some(Asked::All) => Err(format!("backcut {command}: name one coverage")),
        Some(Asked::One(coverage)) => Ok(Some(coverage)),
        None => Ok(None),
    }
}

fn command(name: &str, given: &mut Given) -> Result<Command, String> {
    let json = given.seen.contains(&"--json");
    let mut words = std::mem::take(&mut given.free).into_iter();
    let mut next = |what: &str| {
        words
            .next()
            .ok_or_else(|| format!("backcut {name}: {what} is missing"))
    };
    let command = match name {
        "check" => {
            let mut files = vec![source(next("the file")?)];
            files.extend(words.by_ref().map(source));
            let strict = given.seen.contains(&"--strict");
            Command::Check {
                files,
                json,
                strict,
                coverage: one("check", given.coverage)?,
            }
        }
        "time" => Command::Time {
            file: source(next("the file")?),
            json,
        },
        "looks" => Command::Looks {
            file: source(next("the file")?),
            coverage: match given.coverage {
                Some(Asked::One(coverage)) => Some(coverage),
                Some(Asked::All) | None => None,
            },
            json,
        },
        "frames" => Command::Frames {
            file: source(next("the file")?),
            fps: given.fps.ok_or("backcut frames: --fps N is missing")?,
            coverage: one("frames", given.coverage)?,
        },
        "draw" => Command::Draw(Picture {
            file: source(next("the file")?),
            moment: match (given.at, given.beat) {
                (Some(t), None) => Moment::At(t),
                (None, Some(n)) => Moment::Beat(n),
                _ => return Err("backcut draw: say either --at SECONDS or --beat N".to_owned()),
            },
            coverage: one("draw", given.coverage)?,
            out: given.out.take().filter(|o| o.as_os_str() != "-"),
            width: given.width.unwrap_or(760.0),
            dark: given.seen.contains(&"--dark"),
            ghosts: match (given.seen.contains(&"--ghosts"), given.beat) {
                (true, Some(_)) => return Err("backcut draw: --ghosts goes with --at".to_owned()),
                (ghosts, _) => ghosts,
            },
        }),
        "card" => Command::Card {
            file: source(next("the file")?),
            player: given.player,
            out: given.out.take(),
        },
        "show" => match source(next("the file")?) {
            Source::File(file) => Command::Show {
                file,
                port: given.port.unwrap_or(PORT),
            },
            Source::Standard => {
                return Err(
                    "backcut show: standard input cannot be watched; name a file".to_owned(),
                );
            }
        },
        "page" => {
            let mut files = vec![source(next("the file")?)];
            files.extend(words.by_ref().map(source));
            Command::Page(Handout {
                files,
                title: given.title.take(),
                beat: given.beat,
                coverage: one("page", given.coverage)?,
                out: given.out.take().filter(|o| o.as_os_str() != "-"),
            })
        }
        "site" => Command::Site {
            source: next("the source folder")?.into(),
            out: next("the folder to write")?.into(),
            base: {
                let base = given.base.as_deref().unwrap_or(BASE);
                format!("{}/", base.trim_end_matches('/'))
            },
        },
        "serve" => Command::Serve {
            dir: next("the folder")?.into(),
            port: given.port.unwrap_or(PORT),
        },
        "link" => Command::Link {
            file: source(next("the file")?),
            share: share(given)?,
        },
        "open" => {
            let link = next("the link")?.into_string();
            let link = link.map_err(|_| "backcut open: cannot read the link".to_owned())?;
            Command::Open {
                link: (link != "-").then_some(link),
                out: given.out.take().filter(|o| o.as_os_str() != "-"),
            }
        }
        "schema" => Command::Schema,
        "help" => Command::Help,
        "version" => Command::Version,
        other => return Err(format!("unknown command {other:?}; try `backcut help`")),
    };
    given.free = words.collect();
    Ok(command)
}

fn share(given: &mut Given) -> Result<Share, String> {
    let beat = given.beat.map(u16::try_from).transpose();
    let view = View {
        from: given.at,
        until: given.until,
        beat: beat.map_err(|_| "--beat: no set has so many".to_owned())?,
        read: std::mem::take(&mut given.read),
        follow: given.follow,
        coverage: one("link", given.coverage)?,
        speed: given.speed,
        paused: given.seen.contains(&"--paused"),
    };
    if view.until.is_some_and(|t| t <= view.from.unwrap_or(0.0)) {
        return Err("backcut link: --until is not after --at".to_owned());
    }
    Ok(Share {
        view,
        base: given.base.take().unwrap_or_default(),
        json: given.seen.contains(&"--json"),
    })
}

fn source(word: OsString) -> Source {
    if word == "-" {
        Source::Standard
    } else {
        Source::File(word.into())
    }
}

#[cfg(test)]
mod tests;
