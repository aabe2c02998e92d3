//! JSON text (RFC 8259) as a tree whose every node knows where it stands.
//!
//! Strict, and without recursion: nesting costs memory on a stack of our own, never the thread's.

use super::LIMITS;
use super::scan::Scanner;
use super::told::{Told, told};
use crate::fault::{AUTHORING, Faults, Place};
use crate::voice::messages::fault as m;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// A value with the bytes it takes up.
#[derive(Clone, Debug, PartialEq)]
pub struct Json {
    /// Offset of the first byte.
    pub start: u32,
    /// Offset past the last byte.
    pub end: u32,
    /// What it is.
    pub value: Value,
}

/// A JSON value.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// `null`
    Null,
    /// `true`, `false`
    Bool(bool),
    /// A number; finite.
    Number(f64),
    /// A string, escapes resolved.
    Text(String),
    /// An array.
    List(Vec<Json>),
    /// An object, members in written order.
    Object(Vec<Member>),
}

/// A member of an object.
#[derive(Clone, Debug, PartialEq)]
pub struct Member {
    /// Its name.
    pub key: String,
    /// Offset of the name's first byte.
    pub key_at: u32,
    /// Its value.
    pub value: Json,
}

impl Json {
    /// The member of that name; `None` also where this is no object.
    #[must_use]
    pub fn get(&self, key: &str) -> Option<&Self> {
        self.members()
            .iter()
            .find(|m| m.key == key)
            .map(|m| &m.value)
    }

    /// The members of an object, else none.
    #[must_use]
    pub fn members(&self) -> &[Member] {
        match &self.value {
            Value::Object(members) => members,
            _ => &[],
        }
    }

    /// The entries of a list, else none.
    #[must_use]
    pub fn items(&self) -> &[Self] {
        match &self.value {
            Value::List(items) => items,
            _ => &[],
        }
    }

    /// The text of a string.
    #[must_use]
    pub fn text(&self) -> Option<&str> {
        match &self.value {
            Value::Text(text) => Some(text),
            _ => None,
        }
    }

    /// The value of a number.
    #[must_use]
    pub fn number(&self) -> Option<f64> {
        match self.value {
            Value::Number(n) => Some(n),
            _ => None,
        }
    }
}

/// A list or an object that is not closed yet.
enum Open {
    List(u32, Vec<Json>),
    Object(u32, Vec<Member>, Key),
}

/// The name of the member whose value comes next.
#[derive(Default)]
struct Key {
    text: String,
    at: u32,
}

/// A name that an object uses twice: where the second stands, where the first.
pub(super) struct Twice {
    pub(super) second: u32,
    pub(super) first: u32,
}

/// A tree, and the names written twice in it.
pub(super) struct Parsed {
    pub(super) tree: Json,
    pub(super) twice: Vec<Twice>,
}

/// What stops a reader: the rest of the file cannot be told apart from noise.
pub(super) struct Stop(Option<(usize, &'static str, Told)>);

impl Stop {
    /// Stops at byte `at`.
    pub(super) fn at(at: usize, code: &'static str, tell: impl FnOnce() -> Told) -> Self {
        Self(AUTHORING.then(|| (at, code, tell())))
    }
}

/// Reads the one value that `text` is.
pub(super) fn parse(text: &str) -> Result<Parsed, Faults> {
    let mut builder = Builder {
        scan: Scanner::new(text),
        open: Vec::new(),
        twice: Vec::new(),
    };
    match builder.run() {
        Ok(tree) => Ok(Parsed {
            tree,
            twice: builder.twice,
        }),
        Err(stop) => Err(builder.faults(text, stop)),
    }
}

struct Builder<'a> {
    scan: Scanner<'a>,
    open: Vec<Open>,
    twice: Vec<Twice>,
}

impl Builder<'_> {
    fn run(&mut self) -> Result<Json, Stop> {
        self.scan.skip_mark();
        loop {
            let mut node = self.value()?;
            // Hand the finished node to what it stands in, and close whatever ends with it.
            while let Some(done) = node {
                match self.open.pop() {
                    None => {
                        self.scan.end()?;
                        return Ok(done);
                    }
                    Some(Open::List(start, mut items)) => {
                        items.push(done);
                        node = self.after_item(start, items)?;
                    }
                    Some(Open::Object(start, mut members, key)) => {
                        members.push(Member {
                            key: key.text,
                            key_at: key.at,
                            value: done,
                        });
                        node = self.after_member(start, members)?;
                    }
                }
            }
        }
    }

    /// The next value, or `None` where it is a list or an object with something in it.
    fn value(&mut self) -> Result<Option<Json>, Stop> {
        self.scan.space();
        let start = self.scan.offset();
        match self.scan.peek() {
            Some(b'[') => {
                self.deeper()?;
                if self.scan.closes(b']') {
                    return Ok(Some(self.node(start, Value::List(Vec::new()))));
                }
                self.open.push(Open::List(start, Vec::new()));
                Ok(None)
            }
            Some(b'{') => {
                self.deeper()?;
                if self.scan.closes(b'}') {
                    return Ok(Some(self.node(start, Value::Object(Vec::new()))));
                }
                self.open
                    .push(Open::Object(start, Vec::new(), Key::default()));
                self.key()?;
                Ok(None)
            }
            _ => {
                let value = self.scan.scalar()?;
                Ok(Some(self.node(start, value)))
            }
        }
    }

    fn deeper(&mut self) -> Result<(), Stop> {
        if self.open.len() >= LIMITS.depth {
            return Err(Stop::at(self.scan.at(), "too-deep", || {
                told(
                    m::TOO_DEEP.with("n", LIMITS.depth.to_string()),
                    m::NEVER_NEEDED,
                )
            }));
        }
        self.scan.step();
        Ok(())
    }

    fn after_item(&mut self, start: u32, items: Vec<Json>) -> Result<Option<Json>, Stop> {
        self.scan.space();
        match self.scan.peek() {
            Some(b']') => {
                self.scan.step();
                Ok(Some(self.node(start, Value::List(items))))
            }
            Some(b',') => {
                self.open.push(Open::List(start, items));
                self.comma(b']')?;
                Ok(None)
            }
            _ => {
                self.open.push(Open::List(start, items));
                Err(self.scan.unexpected(m::COMMA_OR_BRACKET))
            }
        }
    }

    fn after_member(&mut self, start: u32, members: Vec<Member>) -> Result<Option<Json>, Stop> {
        self.scan.space();
        match self.scan.peek() {
            Some(b'}') => {
                self.scan.step();
                self.find_twice(&members);
                Ok(Some(self.node(start, Value::Object(members))))
            }
            Some(b',') => {
                let full = members.len() >= LIMITS.fields;
                self.open.push(Open::Object(start, members, Key::default()));
                if full {
                    return Err(Stop::at(self.scan.at(), "too-many-fields", || {
                        told(
                            m::TOO_MANY_FIELDS.with("n", LIMITS.fields.to_string()),
                            m::NEVER_NEEDED,
                        )
                    }));
                }
                self.comma(b'}')?;
                self.key()?;
                Ok(None)
            }
            _ => {
                self.open.push(Open::Object(start, members, Key::default()));
                Err(self.scan.unexpected(m::COMMA_OR_BRACE))
            }
        }
    }

    /// Steps over a comma that must not be the last thing before `close`.
    fn comma(&mut self, close: u8) -> Result<(), Stop> {
        let comma = self.scan.at();
        self.scan.step();
        self.scan.space();
        if self.scan.peek() == Some(close) {
            return Err(Stop::at(comma, "not-json", || {
                told(m::LAST_COMMA, m::COMMAS_BETWEEN).hint(m::REMOVE_COMMA)
            }));
        }
        Ok(())
    }

    /// Reads `"name":` into the innermost open object.
    fn key(&mut self) -> Result<(), Stop> {
        self.scan.space();
        let at = self.scan.offset();
        if self.scan.peek() != Some(b'"') {
            return Err(self.scan.unexpected(m::NAME_HERE));
        }
        let text = self.scan.string()?;
        self.scan.space();
        if self.scan.peek() != Some(b':') {
            return Err(self.scan.unexpected(m::COLON_HERE));
        }
        self.scan.step();
        if let Some(Open::Object(_, _, key)) = self.open.last_mut() {
            *key = Key { text, at };
        }
        Ok(())
    }

    fn node(&self, start: u32, value: Value) -> Json {
        Json {
            start,
            end: self.scan.offset(),
            value,
        }
    }

    /// Notes the names that stand twice; a group is short enough to compare each with each.
    fn find_twice(&mut self, members: &[Member]) {
        for (i, second) in members.iter().enumerate() {
            if let Some(first) = members.iter().take(i).find(|m| m.key == second.key) {
                self.twice.push(Twice {
                    second: second.key_at,
                    first: first.key_at,
                });
            }
        }
    }

    /// The faults of a reader that stopped, with the JSON Pointer of where it was.
    fn faults(&self, text: &str, stop: Stop) -> Faults {
        let Some((at, code, told)) = stop.0 else {
            return Faults::untold();
        };
        let mut pointer = String::new();
        for open in &self.open {
            match open {
                Open::List(_, items) => super::place::push_index(&mut pointer, items.len()),
                Open::Object(_, _, key) if key.text.is_empty() => {}
                Open::Object(_, _, key) => super::place::push_name(&mut pointer, &key.text),
            }
        }
        let (line, column) = super::place::line_and_column(text, at);
        let place = Place {
            pointer,
            line,
            column,
        };
        Faults::one(|| told.at(code, place))
    }
}
