//! Writes the catalogues as constants: a module a file, a constant a message. One that nobody uses is
//! dead code, which the compiler tells.

use crate::catalogue::{Catalogue, Message, Piece};
use crate::marks::{CASE, CHOICE, END, FORM, NAMED, PART};
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
    let _ = write!(
        out,
        "pub(crate) const {}: {shape:?} = {shape:?}(In {{",
        name(id)
    );
    for (i, (language, message)) in languages.iter().enumerate() {
        let gate = if i > 0 {
            "#[cfg(feature = \"authoring\")] "
        } else {
            ""
        };
        let _ = write!(out, " {gate}{language}: ");
        let words: String = match message.forms.as_slice() {
            [(_, pieces), ..] if shape != Shape::Forms => written(pieces),
            forms => forms.iter().map(form).collect(),
        };
        let _ = write!(out, "{words:?},");
    }
    line(out, " });");
}

fn form((name, pieces): &(String, Vec<Piece>)) -> String {
    format!("{name}{NAMED}{}{FORM}", written(pieces))
}

fn written(pieces: &[Piece]) -> String {
    let piece = |piece: &Piece| match piece {
        Piece::Text(text) => text.clone(),
        Piece::Part(name) => format!("{PART}{name}{NAMED}"),
        Piece::Choice(name, cases) => {
            let case = |(key, pieces): &(String, Vec<Piece>)| {
                format!("{key}{NAMED}{}{CASE}", written(pieces))
            };
            let cases: String = cases.iter().map(case).collect();
            format!("{CHOICE}{name}{NAMED}{cases}{END}")
        }
    };
    pieces.iter().map(piece).collect()
}
