//! The marks, words, numbers and strings of JSON text, byte by byte.

use super::decimal;
use super::json::{Stop, Value};
use super::told::{Told, told};
use crate::voice::messages::fault as m;
use crate::voice::{Said, Text};
use alloc::string::String;

/// Where a value stands in the place of a comma, one is missing before it.
const COMMAS: [Text; 2] = [m::COMMA_OR_BRACKET, m::COMMA_OR_BRACE];

/// A place in the text that only moves forward.
pub(super) struct Scanner<'a> {
    text: &'a str,
    at: usize,
}

impl<'a> Scanner<'a> {
    pub(super) fn new(text: &'a str) -> Self {
        Self { text, at: 0 }
    }

    pub(super) fn at(&self) -> usize {
        self.at
    }

    pub(super) fn offset(&self) -> u32 {
        u32::try_from(self.at).unwrap_or(u32::MAX)
    }

    pub(super) fn peek(&self) -> Option<u8> {
        self.text.as_bytes().get(self.at).copied()
    }

    pub(super) fn step(&mut self) {
        self.at += 1;
    }

    fn rest(&self) -> &'a str {
        self.text.get(self.at..).unwrap_or("")
    }

    /// Steps over a byte order mark, which some editors put first (RFC 8259, section 8.1).
    pub(super) fn skip_mark(&mut self) {
        if self.text.starts_with('\u{feff}') {
            self.at = '\u{feff}'.len_utf8();
        }
    }

    pub(super) fn space(&mut self) {
        while matches!(self.peek(), Some(b' ' | b'\t' | b'\n' | b'\r')) {
            self.at += 1;
        }
    }

    /// Whether only `close` follows; steps over it then.
    pub(super) fn closes(&mut self, close: u8) -> bool {
        self.space();
        let closes = self.peek() == Some(close);
        if closes {
            self.at += 1;
        }
        closes
    }

    /// Nothing but space may follow.
    pub(super) fn end(&mut self) -> Result<(), Stop> {
        self.space();
        if self.at < self.text.len() {
            return Err(self.unexpected(m::ENDS_HERE));
        }
        Ok(())
    }

    /// What stands here is not what `allowed` says.
    pub(super) fn unexpected(&self, allowed: Text) -> Stop {
        Stop::at(self.at, "not-json", || self.told(allowed))
    }

    fn told(&self, allowed: Text) -> Told {
        let next = self.rest().chars().next();
        let starts_value = |c: char| c.is_ascii_alphanumeric() || matches!(c, '"' | '{' | '[');
        let found: Said = match next {
            None => m::STOPS.into(),
            Some(c) if c.is_ascii_alphanumeric() => {
                let word = self.rest().bytes().take_while(u8::is_ascii_alphanumeric);
                let end = word.count().min(20);
                m::FOUND.with("what", self.rest().get(..end).unwrap_or(""))
            }
            Some(c) if c.is_control() => m::UNSEEN.into(),
            Some(c) => m::FOUND.with("what", String::from(c)),
        };
        let told = told(found, allowed);
        match next {
            Some(c) if COMMAS.contains(&allowed) && starts_value(c) => told.hint(m::PUT_COMMA),
            Some('\'' | '\u{201c}' | '\u{201d}' | '\u{2018}' | '\u{2019}') => {
                told.hint(m::STRAIGHT_QUOTES)
            }
            Some('/' | '#') => told.hint(m::NO_COMMENTS),
            _ => told,
        }
    }

    /// A string, a number, `true`, `false` or `null`.
    pub(super) fn scalar(&mut self) -> Result<Value, Stop> {
        match self.peek() {
            Some(b'"') => self.string().map(Value::Text),
            Some(b'-' | b'0'..=b'9') => self.number(),
            _ => {
                for (word, value) in [
                    ("true", Value::Bool(true)),
                    ("false", Value::Bool(false)),
                    ("null", Value::Null),
                ] {
                    if self.rest().starts_with(word) {
                        self.at += word.len();
                        return Ok(value);
                    }
                }
                Err(self.unexpected(m::VALUE_HERE))
            }
        }
    }

    fn digits(&mut self) -> Result<(), Stop> {
        if !matches!(self.peek(), Some(b'0'..=b'9')) {
            return Err(self.unexpected(m::DIGIT_HERE));
        }
        while matches!(self.peek(), Some(b'0'..=b'9')) {
            self.at += 1;
        }
        Ok(())
    }

    fn number(&mut self) -> Result<Value, Stop> {
        let start = self.at;
        if self.peek() == Some(b'-') {
            self.at += 1;
        }
        if self.peek() == Some(b'0') {
            self.at += 1;
            if matches!(self.peek(), Some(b'0'..=b'9')) {
                return Err(self.unexpected(m::NO_ZERO));
            }
        } else {
            self.digits()?;
        }
        if self.peek() == Some(b'.') {
            self.at += 1;
            self.digits()?;
        }
        if matches!(self.peek(), Some(b'e' | b'E')) {
            self.at += 1;
            if matches!(self.peek(), Some(b'+' | b'-')) {
                self.at += 1;
            }
            self.digits()?;
        }
        let written = self.text.get(start..self.at).unwrap_or("");
        let value = decimal::value(written);
        if value.is_finite() {
            return Ok(Value::Number(value));
        }
        Err(Stop::at(start, "number-too-large", || {
            let digits = written.get(..20).unwrap_or(written);
            told(m::FOUND_NUMBER.with("digits", digits), m::TOO_LARGE_NUMBER)
        }))
    }

    /// A string from its opening quote to its closing one.
    pub(super) fn string(&mut self) -> Result<String, Stop> {
        self.at += 1;
        let mut out = String::new();
        loop {
            let rest = self.rest();
            let plain = rest
                .bytes()
                .take_while(|b| *b != b'"' && *b != b'\\' && *b >= 0x20)
                .count();
            out.push_str(rest.get(..plain).unwrap_or(""));
            self.at += plain;
            match self.peek() {
                Some(b'"') => {
                    self.at += 1;
                    return Ok(out);
                }
                Some(b'\\') => out.push(self.escape()?),
                Some(_) => {
                    return Err(Stop::at(self.at, "not-json", || {
                        told(m::BROKEN_TEXT, m::ONE_LINE).hint(m::CLOSE_QUOTES)
                    }));
                }
                None => {
                    return Err(self.unexpected(m::TEXT_ENDS));
                }
            }
        }
    }

    fn escape(&mut self) -> Result<char, Stop> {
        let start = self.at;
        self.at += 1;
        let plain = match self.peek() {
            Some(b'"') => '"',
            Some(b'\\') => '\\',
            Some(b'/') => '/',
            Some(b'b') => '\u{8}',
            Some(b'f') => '\u{c}',
            Some(b'n') => '\n',
            Some(b'r') => '\r',
            Some(b't') => '\t',
            Some(b'u') => return self.unicode(start),
            _ => return Err(bad_escape(start)),
        };
        self.at += 1;
        Ok(plain)
    }

    /// `\uXXXX`, or two of them that make one character together.
    fn unicode(&mut self, start: usize) -> Result<char, Stop> {
        let first = self.four_digits(start)?;
        let code = if (0xd800..0xdc00).contains(&first) {
            if !self.rest().starts_with("\\u") {
                return Err(bad_escape(start));
            }
            self.at += 1;
            let second = self.four_digits(start)?;
            if !(0xdc00..0xe000).contains(&second) {
                return Err(bad_escape(start));
            }
            0x1_0000 + ((first - 0xd800) << 10) + (second - 0xdc00)
        } else {
            first
        };
        char::from_u32(code).ok_or_else(|| bad_escape(start))
    }

    /// The four hexadecimal digits after a `u`.
    fn four_digits(&mut self, start: usize) -> Result<u32, Stop> {
        self.at += 1;
        let mut code = 0;
        for _ in 0..4 {
            let digit = self.peek().and_then(|b| char::from(b).to_digit(16));
            code = code * 16 + digit.ok_or_else(|| bad_escape(start))?;
            self.at += 1;
        }
        Ok(code)
    }
}

fn bad_escape(at: usize) -> Stop {
    Stop::at(at, "not-json", || {
        told(m::BAD_BACKSLASH, m::AFTER_BACKSLASH).hint(m::TWO_BACKSLASHES)
    })
}
