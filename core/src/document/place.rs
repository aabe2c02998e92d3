//! From a byte of the file to what an author can find: line, column and JSON Pointer.

use super::json::{Json, Value};
use super::told::{cut, quoted};
use crate::fault::{AUTHORING, Place};
use crate::voice::Said;
use crate::voice::messages::fault as m;
use alloc::string::{String, ToString};
use core::cell::Cell;

/// The text and tree of a file, to look places up in.
pub(super) struct Source<'a> {
    text: &'a str,
    tree: &'a Json,
    /// Offset, line and column of the last place asked for: places are mostly asked for in file
    /// order, and counting on from there keeps a long line from being counted again each time.
    last: Cell<(usize, u32, u32)>,
}

impl<'a> Source<'a> {
    pub(super) fn new(text: &'a str, tree: &'a Json) -> Self {
        Self {
            text,
            tree,
            last: Cell::new((0, 1, 1)),
        }
    }

    /// The text of a node.
    pub(super) fn slice(&self, node: &Json) -> &'a str {
        self.text
            .get(node.start as usize..node.end as usize)
            .unwrap_or("")
    }

    /// What the author sees of a value, short.
    pub(super) fn shown(&self, node: &Json) -> Said {
        match &node.value {
            Value::Null => "null".into(),
            Value::Bool(true) => "true".into(),
            Value::Bool(false) => "false".into(),
            Value::Number(_) => cut(self.slice(node)).into(),
            Value::Text(text) => quoted(text).into(),
            Value::List(_) => m::LIST_SHOWN.into(),
            Value::Object(_) => m::GROUP_SHOWN.into(),
        }
    }

    /// The place of the byte at `at`.
    pub(super) fn place(&self, at: u32) -> Place {
        if !AUTHORING {
            return Place::default();
        }
        let offset = at as usize;
        let (from, line, column) = self.last.get();
        let start = if from <= offset {
            (from, line, column)
        } else {
            (0, 1, 1)
        };
        let (line, column) = count(self.text, start, offset);
        self.last.set((offset, line, column));
        Place {
            pointer: self.pointer(at),
            line,
            column,
        }
    }

    /// The pointer of the node that begins at `at`, or of the member whose name does.
    pub(super) fn pointer(&self, at: u32) -> String {
        let mut pointer = String::new();
        let mut node = self.tree;
        while node.start != at {
            match &node.value {
                Value::List(items) => {
                    let index = items.partition_point(|i| i.start <= at).saturating_sub(1);
                    let Some(item) = items.get(index) else { break };
                    push_index(&mut pointer, index);
                    node = item;
                }
                Value::Object(members) => {
                    let index = members
                        .partition_point(|m| m.key_at <= at)
                        .saturating_sub(1);
                    let Some(member) = members.get(index) else {
                        break;
                    };
                    push_name(&mut pointer, &member.key);
                    if member.key_at == at {
                        break;
                    }
                    node = &member.value;
                }
                _ => break,
            }
        }
        pointer
    }
}

/// Line and column of `offset`, counted from 1; columns are characters.
pub(super) fn line_and_column(text: &str, offset: usize) -> (u32, u32) {
    count(text, (0, 1, 1), offset)
}

fn count(text: &str, (from, mut line, mut column): (usize, u32, u32), to: usize) -> (u32, u32) {
    let passed = text.as_bytes().get(from..to).unwrap_or(&[]);
    for byte in passed {
        match byte {
            b'\n' => {
                line += 1;
                column = 1;
            }
            // The later bytes of a character do not count.
            0x80..=0xbf => {}
            _ => column += 1,
        }
    }
    // A byte order mark takes no column.
    if from == 0 && line == 1 && to > 0 && text.starts_with('\u{feff}') {
        column -= 1;
    }
    (line, column)
}

/// Adds the step to a list's entry.
pub(super) fn push_index(pointer: &mut String, index: usize) {
    pointer.push('/');
    pointer.push_str(&index.to_string());
}

/// Adds the step to a member, escaped as RFC 6901 asks.
pub(super) fn push_name(pointer: &mut String, name: &str) {
    pointer.push('/');
    // A hostile name must not make a place long.
    for c in name.chars().take(64) {
        match c {
            '~' => pointer.push_str("~0"),
            '/' => pointer.push_str("~1"),
            c => pointer.push(c),
        }
    }
}
