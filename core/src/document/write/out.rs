//! JSON text under construction.

use crate::document::place::{push_index, push_name};
use crate::set::{Beat, Extra, PlayerId};
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// Text so far, and where in the file it has come to.
pub(super) struct Out<'s> {
    pub(super) text: String,
    /// The JSON Pointer of the value being written.
    pointer: String,
    /// The author's own fields, each still to be written into its object.
    extras: &'s [Extra],
    /// The beats of the main line, then of each read around this place: what ties name.
    pub(super) scopes: Vec<&'s [Beat]>,
    /// Whether nothing is written yet in the list or object that is open.
    fresh: bool,
    /// Whether its entries have a line each.
    lines: bool,
    /// Spaces before a line.
    indent: usize,
}

impl<'s> Out<'s> {
    pub(super) fn new(extras: &'s [Extra]) -> Self {
        Self {
            text: String::new(),
            pointer: String::new(),
            extras,
            scopes: Vec::new(),
            fresh: true,
            lines: false,
            indent: 0,
        }
    }

    /// An object on one line; `fields` writes what is in it.
    pub(super) fn object(&mut self, fields: &mut dyn FnMut(&mut Self)) {
        self.group(('{', '}'), false, &mut |out| out.all_fields(fields));
    }

    /// An object with a line for each field.
    pub(super) fn block(&mut self, fields: &mut dyn FnMut(&mut Self)) {
        self.group(('{', '}'), true, &mut |out| out.all_fields(fields));
    }

    fn all_fields(&mut self, fields: &mut dyn FnMut(&mut Self)) {
        fields(self);
        for extra in self.extras {
            if extra.within == self.pointer {
                self.name(&extra.name);
                self.text.push_str(&extra.json);
            }
        }
    }

    /// A list on one line.
    pub(super) fn list<T>(&mut self, items: &[T], write: impl FnMut(&mut Self, &T)) {
        self.items(items, false, write);
    }

    /// A list with a line for each entry.
    pub(super) fn lines<'t, T>(&mut self, items: &'t [T], write: impl FnMut(&mut Self, &'t T)) {
        self.items(items, true, write);
    }

    fn items<'t, T>(
        &mut self,
        items: &'t [T],
        lines: bool,
        mut write: impl FnMut(&mut Self, &'t T),
    ) {
        self.group(('[', ']'), lines, &mut |out| {
            for (i, item) in items.iter().enumerate() {
                out.separate();
                let before = out.pointer.len();
                push_index(&mut out.pointer, i);
                write(out, item);
                out.pointer.truncate(before);
            }
        });
    }

    fn group(
        &mut self,
        (open, close): (char, char),
        lines: bool,
        inside: &mut dyn FnMut(&mut Self),
    ) {
        let around = core::mem::replace(&mut self.lines, lines);
        let deeper = if lines { 2 } else { 0 };
        self.text.push(open);
        self.fresh = true;
        self.indent += deeper;
        inside(self);
        self.indent -= deeper;
        if lines && !self.fresh {
            self.new_line();
        }
        self.text.push(close);
        self.fresh = false;
        self.lines = around;
    }

    /// What stands before the next entry.
    fn separate(&mut self) {
        if !self.fresh {
            self.text.push(',');
        }
        if self.lines {
            self.new_line();
        } else if !self.fresh {
            self.text.push(' ');
        }
        self.fresh = false;
    }

    fn new_line(&mut self) {
        self.text.push('\n');
        self.text.extend(core::iter::repeat_n(' ', self.indent));
    }

    /// A field of the object being written.
    pub(super) fn field(&mut self, name: &str, value: &mut dyn FnMut(&mut Self)) {
        self.name(name);
        let before = self.pointer.len();
        push_name(&mut self.pointer, name);
        value(self);
        self.pointer.truncate(before);
    }

    fn name(&mut self, name: &str) {
        self.separate();
        self.quoted(name);
        self.text.push_str(": ");
    }

    /// Whether the author's own fields stand in the value being written, so that it cannot be
    /// shortened to less than an object.
    pub(super) fn is_noted(&self) -> bool {
        self.extras.iter().any(|e| e.within == self.pointer)
    }

    /// One alone, or a list of several.
    pub(super) fn one_or_more<T>(&mut self, items: &[T], mut write: impl FnMut(&mut Self, &T)) {
        match items {
            [one] if !self.is_noted_first() => write(self, one),
            _ => self.list(items, write),
        }
    }

    /// Whether the author wrote a list here and noted something in its first entry.
    fn is_noted_first(&self) -> bool {
        let first = |e: &Extra| e.within.strip_prefix(&self.pointer) == Some("/0");
        self.extras.iter().any(first)
    }

    pub(super) fn word(&mut self, name: &str, word: &str) {
        self.field(name, &mut |out| out.quoted(word));
    }

    /// A text field, where there is one.
    pub(super) fn text(&mut self, name: &str, text: Option<&str>) {
        if let Some(text) = text {
            self.word(name, text);
        }
    }

    pub(super) fn number(&mut self, name: &str, n: f64) {
        self.field(name, &mut |out| out.value(n));
    }

    /// A number; one that is none, which only a set made by hand can hold, is written as 0.
    pub(super) fn value(&mut self, n: f64) {
        let n = if n.is_finite() { n } else { 0.0 };
        self.text.push_str(&n.to_string());
    }

    pub(super) fn flag(&mut self, name: &str, on: bool) {
        if on {
            self.field(name, &mut |out| out.text.push_str("true"));
        }
    }

    pub(super) fn player(&mut self, who: PlayerId) {
        self.text.push(char::from(b'0' + who.number()));
    }

    pub(super) fn quoted(&mut self, text: &str) {
        quote_into(&mut self.text, text);
    }
}

/// `text` as a JSON string.
#[cfg(feature = "schema")]
pub(in crate::document) fn quote(text: &str) -> String {
    let mut out = String::new();
    quote_into(&mut out, text);
    out
}

fn quote_into(out: &mut String, text: &str) {
    out.push('"');
    for c in text.chars() {
        match c {
            '"' => out.push_str("\\\""),
            '\\' => out.push_str("\\\\"),
            '\n' => out.push_str("\\n"),
            c if c < ' ' => out.push_str(&format!("\\u{:04x}", u32::from(c))),
            c => out.push(c),
        }
    }
    out.push('"');
}
