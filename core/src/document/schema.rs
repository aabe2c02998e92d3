//! The tables of fields as a JSON Schema, for editors that complete and check while one types.
//!
//! It knows the shape of a set, not its sense: who has the ball, whether an id exists, whether a
//! place is on the court. It takes words only in the spelling of the lists, where the reader also
//! takes other letter case and hyphens for spaces.

use super::fields::{self, Field, Shape, Table};
use super::words::Words;
use super::write::quote;
use super::{LIMITS, VERSION};
use crate::set::Verb;
use crate::voice::Voice;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// The JSON Schema (draft 2020-12) of a set file.
///
/// ```
/// let schema = backcut::document::schema();
/// assert!(schema.contains(r#""$schema": "https://json-schema.org/draft/2020-12/schema""#));
/// assert!(schema.contains(r#""left wing""#));
/// ```
#[must_use]
pub fn schema() -> String {
    let mut book = Book::default();
    let set = book.table(&fields::SET);
    let mut defs: Vec<String> = Vec::new();
    // Writing a definition can bring up further ones; the list is done when nothing is new.
    while let Some(def) = book.wanted.get(defs.len()).copied() {
        let body = match def {
            Def::Table(table) => book.table(table),
            Def::Words(words) => enumeration(words, None),
        };
        defs.push(format!("    {}: {body}", quote(&def.name())));
    }
    format!(
        "{{\n  \"$schema\": \"https://json-schema.org/draft/2020-12/schema\",\n  \
         \"title\": \"Backcut set, version {VERSION}\",\n  {},\n  \"$defs\": {{\n{}\n  }}\n}}\n",
        inner(&set),
        defs.join(",\n")
    )
}

/// What stands between the braces of an object.
fn inner(object: &str) -> &str {
    object
        .strip_prefix('{')
        .and_then(|o| o.strip_suffix('}'))
        .unwrap_or(object)
}

/// A schema that others refer to.
#[derive(Clone, Copy)]
enum Def {
    Table(&'static Table),
    Words(Words),
}

impl Def {
    fn name(self) -> String {
        let called = match self {
            Self::Table(table) => Voice::ENGLISH.word(table.what),
            Self::Words(words) => Voice::ENGLISH.word(words.noun()),
        };
        let plain = called.strip_prefix("a ").or(called.strip_prefix("an "));
        plain.unwrap_or(called).replace(' ', "-")
    }
}

/// The definitions that have been referred to so far, in that order.
#[derive(Default)]
struct Book {
    wanted: Vec<Def>,
}

impl Book {
    fn refer(&mut self, def: Def) -> String {
        let name = def.name();
        if self.wanted.iter().all(|d| d.name() != name) {
            self.wanted.push(def);
        }
        format!("{{\"$ref\": {}}}", quote(&format!("#/$defs/{name}")))
    }

    fn table(&mut self, table: &Table) -> String {
        let fields: Vec<String> = table.fields.iter().map(|f| self.field(f)).collect();
        let needed = table.fields.iter().filter(|f| f.needed).map(|f| f.name);
        let required = names(needed);
        let sense = if table.what == fields::ACTION.what {
            format!(", \"allOf\": [{}]", Verb::ALL.map(of_verb).join(", "))
        } else {
            String::new()
        };
        format!(
            "{{\"type\": \"object\", \"properties\": {{{}}}, \"required\": [{required}], \
             \"patternProperties\": {{\"^x-\": true}}, \"additionalProperties\": false{sense}}}",
            fields.join(", ")
        )
    }

    fn field(&mut self, field: &Field) -> String {
        let shape = self.shape(&field.shape);
        format!(
            "{}: {{{}, \"description\": {}}}",
            quote(field.name),
            inner(&shape),
            quote(field.about)
        )
    }

    fn shape(&mut self, shape: &Shape) -> String {
        match shape {
            Shape::Version => format!("{{\"const\": {VERSION}}}"),
            Shape::Flag => "{\"type\": \"boolean\"}".to_string(),
            Shape::Number(from, to) | Shape::Seconds(from, to) => number("number", *from, *to),
            Shape::Angle => number("number", -7, 7),
            #[cfg(feature = "authoring")]
            Shape::Count(to) => number("integer", 1, *to),
            Shape::Player => number("integer", 1, 5),
            Shape::Defender => "{\"type\": \"string\", \"pattern\": \"^[Xx][1-5]$\"}".to_string(),
            Shape::Text(most) => format!("{{\"type\": \"string\", \"maxLength\": {most}}}"),
            Shape::Id => format!(
                "{{\"type\": \"string\", \"maxLength\": {}, \"pattern\": \"\\\\S\"}}",
                LIMITS.id
            ),
            Shape::Word(words) => self.refer(Def::Words(*words)),
            Shape::Point => "{\"type\": \"array\", \"items\": {\"type\": \"number\"}, \
                 \"minItems\": 2, \"maxItems\": 2}"
                .to_string(),
            Shape::Object(table) => self.refer(Def::Table(table)),
            Shape::Either(choice) => {
                let shapes: Vec<String> = choice.shapes.iter().map(|s| self.shape(s)).collect();
                format!("{{\"anyOf\": [{}]}}", shapes.join(", "))
            }
            Shape::OneOrMore(one) => {
                let (one, list) = (
                    self.shape(one),
                    self.shape(&Shape::List(one, 1, LIMITS.list)),
                );
                format!("{{\"anyOf\": [{one}, {list}]}}")
            }
            Shape::List(one, least, most) => {
                let one = self.shape(one);
                format!(
                    "{{\"type\": \"array\", \"items\": {one}, \"minItems\": {least}, \
                     \"maxItems\": {most}}}"
                )
            }
            Shape::Players(table) => {
                let player = self.refer(Def::Table(table));
                format!(
                    "{{\"type\": \"object\", \"patternProperties\": {{\"^[1-5]$\": {player}, \
                     \"^x-\": true}}, \"additionalProperties\": false, \"minProperties\": 2}}"
                )
            }
        }
    }
}

/// What an action of `verb` asks beyond what all actions do.
fn of_verb(verb: Verb) -> String {
    let mut own = alloc::vec![format!(
        "\"kind\": {}",
        enumeration(Words::Kind, Some(verb))
    )];
    for field in fields::ACTION.fields {
        if !fields::verbs_of(field.name).contains(&verb) {
            own.push(format!("{}: false", quote(field.name)));
        }
    }
    let mut required = "";
    match verb {
        Verb::Pass | Verb::Handoff => {
            own.push("\"to\": {\"type\": \"integer\"}".to_string());
            required = ", \"required\": [\"to\"]";
        }
        Verb::Screen => required = ", \"required\": [\"for\"]",
        Verb::Cut | Verb::Dribble => {
            own.push("\"to\": {\"type\": [\"string\", \"array\", \"object\"]}".to_string());
        }
        Verb::Shot | Verb::Hold | Verb::Fake => {}
    }
    if !matches!(verb, Verb::Screen | Verb::Hold | Verb::Fake) {
        own.push("\"who\": {\"type\": \"integer\"}".to_string());
    }
    format!(
        "{{\"if\": {{\"properties\": {{\"do\": {{\"const\": {}}}}}, \"required\": [\"do\"]}}, \
         \"then\": {{\"properties\": {{{}}}{required}}}}}",
        quote(verb.name()),
        own.join(", ")
    )
}

fn enumeration(words: Words, of: Option<Verb>) -> String {
    let mut all = words.names(of);
    all.extend(words.aliases(of));
    format!("{{\"enum\": [{}]}}", names(all.iter().map(String::as_str)))
}

fn names<'a>(words: impl Iterator<Item = &'a str>) -> String {
    words.map(quote).collect::<Vec<_>>().join(", ")
}

fn number(sort: &str, from: i32, to: i32) -> String {
    format!("{{\"type\": \"{sort}\", \"minimum\": {from}, \"maximum\": {to}}}")
}
