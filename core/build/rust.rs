//! Writes the catalogues as constants: a module a file, a constant a message. One that nobody uses is
//! dead code, which the compiler tells.

use crate::catalogue::{Catalogue, Message, Piece};
use std::fmt::Write as _;

/// What of a message is written down, by what it has.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Shape {
    /// Always the same words.
    Text,
    /// Words with parts to put in.
    Message,
    /// Several forms, by name.
    Forms,
}

pub(crate) fn write(languages: &[(&str, Catalogue)]) -> Result<String, String> {
    let mut out = String::new();
    let mut tests = String::new();
    let (_, source) = languages.first().ok_or("no language")?;
    for (file, messages) in source {
        line(&mut out, &format!("pub(crate) mod {file} {{ use super::*;"));
        for message in messages {
            let all: Vec<(&str, &Message)> = languages
                .iter()
                .filter_map(|(language, catalogue)| {
                    let mut messages = catalogue.get(file)?.iter();
                    Some((*language, messages.find(|m| m.id == message.id)?))
                })
                .collect();
            let shape = shape(&all);
            constant(&mut out, &all, shape);
            let (id, name) = (&message.id, name(&message.id));
            let entry = format!("(\"{file}.{id}\", Any::{shape:?}({file}::{name})),");
            line(&mut tests, &entry);
        }
        line(&mut out, "}");
    }
    line(
        &mut out,
        "#[cfg(test)] pub(crate) const ALL: &[(&str, Any)] = &[",
    );
    out.push_str(&tests);
    line(&mut out, "];");
    Ok(out)
}

fn line(out: &mut String, text: &str) {
    out.push_str(text);
    out.push('\n');
}

/// The constant's name: `screen-late` is `SCREEN_LATE`; none begins with a digit.
fn name(id: &str) -> String {
    id.replace('-', "_").to_uppercase()
}

fn shape(languages: &[(&str, &Message)]) -> Shape {
    let all = || languages.iter().map(|(_, message)| *message);
    let plain = |message: &Message| {
        let parts = message.parts();
        parts.written.is_empty() && parts.select.is_empty()
    };
    let one =
        |message: &Message| matches!(message.forms.as_slice(), [(form, _)] if form.is_empty());
    if !all().all(one) {
        Shape::Forms
    } else if all().all(plain) {
        Shape::Text
    } else {
        Shape::Message
    }
}

fn constant(out: &mut String, languages: &[(&str, &Message)], shape: Shape) {
    let id = languages.first().map_or("", |(_, message)| &message.id);
    let _ = write!(out, "pub(crate) const {}: {shape:?} = In {{", name(id));
    for (i, (language, message)) in languages.iter().enumerate() {
        let gate = if i > 0 {
            "#[cfg(feature = \"authoring\")] "
        } else {
            ""
        };
        let _ = write!(out, " {gate}{language}: ");
        match (shape, message.forms.as_slice()) {
            (Shape::Text, [(_, pieces), ..]) => {
                let text: String = pieces.iter().map(text).collect();
                let _ = write!(out, "{text:?}");
            }
            (Shape::Message, [(_, pieces), ..]) => {
                out.push_str("Body::Pieces(");
                list(out, pieces);
                out.push(')');
            }
            (_, forms) => {
                out.push_str("&[");
                for (form, pieces) in forms {
                    let _ = write!(out, "({form:?}, ");
                    list(out, pieces);
                    out.push_str("), ");
                }
                out.push(']');
            }
        }
        out.push(',');
    }
    line(out, " };");
}

fn text(piece: &Piece) -> &str {
    match piece {
        Piece::Text(text) => text,
        Piece::Part(_) | Piece::Choice(..) => "",
    }
}

fn list(out: &mut String, pieces: &[Piece]) {
    out.push_str("&[");
    for piece in pieces {
        match piece {
            Piece::Text(text) => {
                let _ = write!(out, "Piece::Text({text:?}), ");
            }
            Piece::Part(name) => {
                let _ = write!(out, "Piece::Part({name:?}), ");
            }
            Piece::Choice(name, cases) => {
                let _ = write!(out, "Piece::Choice({name:?}, &[");
                for (key, pieces) in cases {
                    let _ = write!(out, "({key:?}, ");
                    list(out, pieces);
                    out.push_str("), ");
                }
                out.push_str("]), ");
            }
        }
    }
    out.push(']');
}
