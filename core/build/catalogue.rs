//! Reads the messages of one language, and holds one language against another.

use fluent_syntax::ast;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

/// Files of one language by name, each with its messages in order.
pub(crate) type Catalogue = BTreeMap<String, Vec<Message>>;

/// A message with its forms; the form without a name is the message itself.
#[derive(Debug)]
pub(crate) struct Message {
    pub(crate) id: String,
    /// What the comments before it call `$name`: it may be selected by, though this language does not.
    declared: BTreeSet<String>,
    pub(crate) forms: Vec<(String, Vec<Piece>)>,
}

/// What a pattern is made of.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Piece {
    Text(String),
    /// A variable.
    Part(String),
    /// By a variable; the last case holds where no other does.
    Choice(String, Vec<(String, Vec<Self>)>),
}

impl Message {
    /// The variables that are written out, and those that only select.
    pub(crate) fn parts(&self) -> Parts {
        let mut out = Parts::default();
        for (_, pieces) in &self.forms {
            collect(pieces, &mut out);
        }
        out
    }
}

/// Names of variables.
#[derive(Debug, Default)]
pub(crate) struct Parts {
    pub(crate) written: BTreeSet<String>,
    pub(crate) select: BTreeSet<String>,
}

fn collect(pieces: &[Piece], out: &mut Parts) {
    for piece in pieces {
        match piece {
            Piece::Text(_) => {}
            Piece::Part(name) => {
                out.written.insert(name.clone());
            }
            Piece::Choice(name, cases) => {
                out.select.insert(name.clone());
                cases.iter().for_each(|(_, pieces)| collect(pieces, out));
            }
        }
    }
}

/// The variables that a comment names.
fn declared(comment: &ast::Comment<&str>) -> BTreeSet<String> {
    let words = comment
        .content
        .iter()
        .flat_map(|line| line.split('$').skip(1));
    let name = |rest: &str| -> String {
        let ends = |c: char| !(c.is_ascii_alphanumeric() || c == '-' || c == '_');
        rest.split(ends).next().unwrap_or_default().to_owned()
    };
    words.map(name).collect()
}

/// Reads all files of a language.
pub(crate) fn read(folder: &Path) -> Result<Catalogue, String> {
    let mut out = Catalogue::new();
    for entry in fs::read_dir(folder).map_err(|e| format!("{}: {e}", folder.display()))? {
        let path = entry.map_err(|e| e.to_string())?.path();
        if path.extension().is_none_or(|e| e != "ftl") {
            continue;
        }
        let name = path.file_stem().unwrap_or_default().to_string_lossy();
        let text = fs::read_to_string(&path).map_err(|e| e.to_string())?;
        let messages = parse(&text).map_err(|e| format!("{}: {e}", path.display()))?;
        out.insert(name.into_owned(), messages);
    }
    Ok(out)
}

/// The messages of one file.
fn parse(text: &str) -> Result<Vec<Message>, String> {
    let resource = fluent_syntax::parser::parse(text).map_err(|(_, errors)| {
        let first = errors.first();
        first.map_or_else(String::new, |e| {
            let line = text.get(..e.pos.start).unwrap_or(text).lines().count();
            format!("line {line}: {e}")
        })
    })?;
    let mut out: Vec<Message> = Vec::new();
    let (mut by_file, mut by_group) = (BTreeSet::new(), BTreeSet::new());
    for entry in &resource.body {
        let message = match entry {
            ast::Entry::Message(message) => message,
            ast::Entry::ResourceComment(comment) => {
                by_file.append(&mut declared(comment));
                continue;
            }
            ast::Entry::GroupComment(comment) => {
                by_group = declared(comment);
                continue;
            }
            ast::Entry::Term(term) => return Err(format!("-{}: no terms, please", term.id.name)),
            _ => continue,
        };
        let id = message.id.name;
        if out.iter().any(|m| m.id == id) {
            return Err(format!("{id} stands twice"));
        }
        let mut forms: Vec<(String, Vec<Piece>)> = Vec::new();
        let patterns = message.value.iter().map(|value| ("", value));
        let attributes = message.attributes.iter().map(|a| (a.id.name, &a.value));
        for (name, pattern) in patterns.chain(attributes) {
            let read = |id: &str, form: &str| -> Option<Vec<Piece>> {
                let own = (id == message.id.name).then_some(&forms);
                let other = || out.iter().find(|m| m.id == id).map(|m| &m.forms);
                let all = own.or_else(other)?;
                all.iter().find(|f| f.0 == form).map(|f| f.1.clone())
            };
            let pieces = pieces(pattern, &read).map_err(|e| format!("{id}: {e}"))?;
            forms.push((name.to_owned(), pieces));
        }
        let own = message.comment.as_ref().map(declared).unwrap_or_default();
        out.push(Message {
            id: id.to_owned(),
            declared: by_file.union(&by_group).cloned().chain(own).collect(),
            forms,
        });
    }
    Ok(out)
}

/// What a message before, or one of its forms, says.
type Said<'a> = &'a dyn Fn(&str, &str) -> Option<Vec<Piece>>;

fn pieces(pattern: &ast::Pattern<&str>, said: Said<'_>) -> Result<Vec<Piece>, String> {
    let mut out = Vec::new();
    for element in &pattern.elements {
        let more = match element {
            ast::PatternElement::TextElement { value } => vec![Piece::Text((*value).to_owned())],
            ast::PatternElement::Placeable { expression } => expressed(expression, said)?,
        };
        for piece in more {
            match (out.last_mut(), piece) {
                (Some(Piece::Text(before)), Piece::Text(text)) => before.push_str(&text),
                (_, piece) => out.push(piece),
            }
        }
    }
    Ok(out)
}

fn expressed(expression: &ast::Expression<&str>, said: Said<'_>) -> Result<Vec<Piece>, String> {
    match expression {
        ast::Expression::Inline(inline) => inlined(inline, said),
        ast::Expression::Select { selector, variants } => {
            let ast::InlineExpression::VariableReference { id } = selector else {
                return Err("only a variable selects".to_owned());
            };
            let mut cases = Vec::new();
            let (rest, default): (Vec<_>, Vec<_>) = variants.iter().partition(|v| !v.default);
            for variant in rest.into_iter().chain(default) {
                let key = match variant.key {
                    ast::VariantKey::Identifier { name } => name,
                    ast::VariantKey::NumberLiteral { value } => value,
                };
                let pieces = pieces(&variant.value, said)?;
                if pieces.iter().any(|p| matches!(p, Piece::Choice(..))) {
                    return Err("a choice within a choice".to_owned());
                }
                cases.push((key.to_owned(), pieces));
            }
            Ok(vec![Piece::Choice(id.name.to_owned(), cases)])
        }
    }
}

fn inlined(inline: &ast::InlineExpression<&str>, said: Said<'_>) -> Result<Vec<Piece>, String> {
    match inline {
        ast::InlineExpression::StringLiteral { value } => Ok(vec![Piece::Text(
            fluent_syntax::unicode::unescape_unicode_to_string(value).into_owned(),
        )]),
        ast::InlineExpression::VariableReference { id } => {
            Ok(vec![Piece::Part(id.name.to_owned())])
        }
        ast::InlineExpression::MessageReference { id, attribute } => {
            let form = attribute.as_ref().map_or("", |a| a.name);
            said(id.name, form).ok_or_else(|| format!("{{{}}} does not stand before it", id.name))
        }
        _ => Err("only text, variables and messages stand in braces".to_owned()),
    }
}

/// What `other`, in the language `name`, has that `source` has not, or lacks, or has otherwise.
pub(crate) fn compare(source: &Catalogue, other: &Catalogue, name: &str) -> Result<(), String> {
    let (ours, theirs) = (by_name(source), by_name(other));
    for (key, message) in &ours {
        let other = theirs.get(key);
        let other = other.ok_or_else(|| format!("{name}/{key} is missing"))?;
        let forms = |m: &Message| m.forms.iter().map(|f| f.0.clone()).collect::<Vec<_>>();
        if forms(message) != forms(other) {
            return Err(format!(
                "{name}/{key}: its forms are not those of the others"
            ));
        }
        let (known, parts) = (message.parts(), other.parts());
        if known.written != parts.written {
            return Err(format!(
                "{name}/{key}: its parts are not those of the others"
            ));
        }
        let mut unknown = parts.select.iter().filter(|part| {
            let all = [&known.written, &known.select, &message.declared];
            all.iter().all(|names| !names.contains(*part))
        });
        if let Some(part) = unknown.next() {
            return Err(format!("{name}/{key}: nobody gives ${part}"));
        }
    }
    match theirs.keys().find(|key| !ours.contains_key(*key)) {
        Some(key) => Err(format!("{name}/{key} is in no other language")),
        None => Ok(()),
    }
}

fn by_name(catalogue: &Catalogue) -> BTreeMap<String, &Message> {
    let all = catalogue.iter();
    all.flat_map(|(file, messages)| {
        messages
            .iter()
            .map(move |m| (format!("{file}.ftl: {}", m.id), m))
    })
    .collect()
}
