//! The set file: text to [`Set`] and back, and what is wrong with a text that is none.
//!
//! [`read`] goes in four steps: text to a tree with places (`scan`, `decimal`, `json`), the tree against the
//! tables of fields (`fields`, `shape`), the tree to a set (`take`), the set against the sense of
//! the game (`check`). Every step reports all it finds, in a coach's words, each fault at its
//! place in the file.

mod check;
mod decimal;
mod fields;
mod json;
mod place;
mod report;
mod scan;
mod shape;
mod take;
mod told;
mod words;
mod write;

#[cfg(feature = "schema")]
mod schema;

#[cfg(test)]
pub(crate) mod tests;

pub use json::{Json, Member, Value};
#[cfg(feature = "schema")]
pub use schema::schema;
pub use write::write;

use crate::fault::{Faults, Place};
use crate::set::Set;
use crate::voice::Text;
use crate::voice::messages::fault as m;
use alloc::string::String;
use place::Source;
use report::Report;
pub(crate) use told::quoted;
use told::told;

/// The version of the set file that this program reads and writes.
pub const VERSION: u8 = 1;

/// What a file may not exceed, so that no file can exhaust memory, stack or patience.
#[derive(Clone, Copy, Debug)]
pub struct Limits {
    /// Bytes of a file.
    pub bytes: usize,
    /// Lists and groups within each other.
    pub depth: usize,
    /// Actions of all beats, those of reads included.
    pub actions: usize,
    /// Fields of one group, the author's own among them.
    pub fields: usize,
    /// Players, screeners or ties that one action names in a list.
    pub list: usize,
    /// Characters of an action's id, or of a tag.
    pub id: usize,
}

/// The limits of version 1. Common practice, no source: a long set has about 60 actions and takes
/// 8 kB.
pub const LIMITS: Limits = Limits {
    bytes: 256 * 1024,
    depth: 32,
    actions: 200,
    fields: 100,
    list: 20,
    id: 64,
};

/// Reads a set file.
///
/// # Errors
///
/// All that is wrong with the text, in file order, the first [`Faults::CAP`] of it told and the
/// rest counted. A text that is no JSON has one fault, where reading stopped.
///
/// ```
/// let text = r#"{ "backcut": 1, "title": "Give and go", "players": {
///     "1": {"at": "top", "ball": true}, "2": {"at": "left wing"} },
///     "beats": [ {"actions": [
///         {"who": 1, "do": "pass", "to": 2},
///         {"who": 1, "do": "cut", "kind": "basket", "to": "rim"},
///         {"who": 2, "do": "pass", "kind": "bounce", "to": 1} ]} ] }"#;
/// let set = backcut::document::read(text.as_bytes())?;
/// assert_eq!(set.beats[0].actions.len(), 3);
///
/// let faults = backcut::document::read(text.replace("left wing", "left wnig").as_bytes());
/// assert_eq!(faults.unwrap_err().list[0].code, "unknown-spot");
/// # Ok::<(), backcut::fault::Faults>(())
/// ```
pub fn read(text: &[u8]) -> Result<Set, Faults> {
    let text = decode(text)?;
    let parsed = json::parse(text)?;
    let tree = parsed.tree;
    let mut report = Report::new(Source::new(text, &tree));
    report_twice(&parsed.twice, &mut report);
    shape::check(&tree, &mut report);
    let set = take::set(&tree, &mut report);
    if report.clear {
        check::check(&set, &tree, &mut report);
    }
    if report.faults.is_empty() {
        Ok(set)
    } else {
        Err(report.faults)
    }
}

/// Reads JSON text into a tree with places, by the rules of a set file: at most
/// [`LIMITS`]`.bytes` long and [`LIMITS`]`.depth` deep, no name twice in one object, no number
/// beyond the range of `f64`.
///
/// # Errors
///
/// The fault at which reading stopped, or every name that stands twice.
///
/// ```
/// use backcut::document::parse_json;
/// assert_eq!(parse_json(b"[1, 2]").unwrap().items()[1].number(), Some(2.0));
/// assert_eq!(parse_json(b"[1, 2,]").unwrap_err().list[0].code, "not-json");
/// ```
pub fn parse_json(text: &[u8]) -> Result<Json, Faults> {
    let text = decode(text)?;
    let parsed = json::parse(text)?;
    let mut report = Report::new(Source::new(text, &parsed.tree));
    report_twice(&parsed.twice, &mut report);
    if report.faults.is_empty() {
        Ok(parsed.tree)
    } else {
        Err(report.faults)
    }
}

fn report_twice(twice: &[json::Twice], report: &mut Report<'_>) {
    for pair in twice {
        report.add_related(pair.second, "duplicate-field", &[pair.first], &|_| {
            told(m::NAME_TWICE, m::NAME_ONCE)
        });
    }
}

/// The text of a file of bearable size.
fn decode(bytes: &[u8]) -> Result<&str, Faults> {
    let fault = |code, found: Text, allowed: Text, readable: &str| {
        Faults::one(|| {
            let (line, column) = place::line_and_column(readable, readable.len());
            let place = Place {
                pointer: String::new(),
                line,
                column,
            };
            told(found, allowed).at(code, place)
        })
    };
    if bytes.len() > LIMITS.bytes {
        // Not how long: whoever read it may have stopped reading.
        return Err(fault("file-too-large", m::TOO_LARGE, m::MOST_KILOBYTES, ""));
    }
    match core::str::from_utf8(bytes) {
        Ok(text) if text.trim_start_matches('\u{feff}').trim_ascii().is_empty() => {
            Err(fault("empty-file", m::EMPTY, m::A_GROUP, ""))
        }
        Ok(text) => Ok(text),
        Err(error) => {
            let readable = bytes.get(..error.valid_up_to()).unwrap_or(&[]);
            let readable = core::str::from_utf8(readable).unwrap_or("");
            Err(fault("not-utf8", m::NO_TEXT, m::SAVE_UTF8, readable))
        }
    }
}
