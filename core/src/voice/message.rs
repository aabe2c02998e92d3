//! Messages of the catalogues, and how parts are put into them.

use super::{Language, Voice};
use alloc::string::String;

/// One message in every language of this build.
#[derive(Clone, Copy, Debug)]
pub(crate) struct In<T> {
    en: T,
    #[cfg(feature = "authoring")]
    es: T,
}

impl<T> In<T> {
    pub(super) fn of(self, language: Language) -> T {
        match language {
            Language::English => self.en,
            #[cfg(feature = "authoring")]
            Language::Spanish => self.es,
        }
    }
}

/// Always the same words.
pub(crate) type Text = In<&'static str>;
/// Words with parts to put in.
pub(crate) type Message = In<Body>;
/// Several forms of the same, by name; the first, without a name, is the plain one.
pub(crate) type Forms = In<&'static [(&'static str, &'static [Piece])]>;

/// The words of a message.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Body {
    /// Without parts.
    Plain(&'static str),
    /// With parts.
    Pieces(&'static [Piece]),
}

impl From<Text> for Message {
    fn from(text: Text) -> Self {
        Self {
            en: Body::Plain(text.en),
            #[cfg(feature = "authoring")]
            es: Body::Plain(text.es),
        }
    }
}

/// What a message is made of.
#[derive(Debug)]
pub(crate) enum Piece {
    /// Words.
    Text(&'static str),
    /// The part of this name.
    Part(&'static str),
    /// By the part of this name: the case that is called like it, else the one of its plural
    /// category, else the last.
    Choice(&'static str, &'static [(&'static str, &'static [Self])]),
}

/// Parts by name.
pub(crate) type Parts<'a> = &'a [(&'a str, &'a str)];

/// A message of any shape.
#[cfg(test)]
#[derive(Clone, Copy, Debug)]
pub(crate) enum Any {
    Text(Text),
    Message(Message),
    Forms(Forms),
}

/// One constant a message, one module a file of the catalogue.
#[cfg_attr(
    not(feature = "authoring"),
    allow(dead_code, reason = "what only authors are told stands here too")
)]
pub(crate) mod messages {
    #[cfg(test)]
    use super::Any;
    use super::{Body, Forms, In, Message, Piece, Text};

    include!(concat!(env!("OUT_DIR"), "/messages.rs"));
}

impl Voice {
    /// The words of a message that has no parts.
    pub(crate) fn word(self, text: Text) -> &'static str {
        text.of(self.language)
    }

    /// A message with its parts put in. A part that is empty takes the space before it along; one
    /// that is not given stays as it is written, `{$who}`, for a test to find.
    pub(crate) fn fill(self, message: Message, parts: Parts<'_>) -> String {
        let mut out = String::new();
        match message.of(self.language) {
            Body::Plain(text) => out.push_str(text),
            Body::Pieces(pieces) => self.push(&mut out, pieces, parts),
        }
        out
    }

    /// The form of this name with its parts put in.
    pub(crate) fn form(self, forms: Forms, name: &str, parts: Parts<'_>) -> String {
        let mut out = String::new();
        if let Some((_, pieces)) = forms.of(self.language).iter().find(|f| f.0 == name) {
            self.push(&mut out, pieces, parts);
        }
        out
    }

    pub(super) fn push(self, out: &mut String, pieces: &[Piece], parts: Parts<'_>) {
        let given = |name: &str| parts.iter().find(|p| p.0 == name).map(|p| p.1);
        for piece in pieces {
            match piece {
                Piece::Text(text) => out.push_str(text),
                Piece::Part(name) => match given(name) {
                    Some("") if out.ends_with(' ') => {
                        out.pop();
                    }
                    Some(text) => out.push_str(text),
                    None => missing(out, name),
                },
                Piece::Choice(name, cases) => {
                    let value = given(name).unwrap_or_else(|| {
                        missing(out, name);
                        ""
                    });
                    let category = self.plural(value);
                    let case = |key: &str| cases.iter().find(|c| c.0 == key);
                    let chosen = case(value).or_else(|| case(category)).or(cases.last());
                    if let Some((_, pieces)) = chosen {
                        self.push(out, pieces, parts);
                    }
                }
            }
        }
    }

    /// The plural category of a number as it is written. Source: Unicode CLDR 48, `plurals`: English
    /// has `one` for 1 without decimals, Spanish for 1 with and without; the `many` of Spanish is for
    /// millions, which nobody runs.
    pub(super) fn plural(self, number: &str) -> &'static str {
        let one = match self.language {
            Language::English => number == "1",
            #[cfg(feature = "authoring")]
            Language::Spanish => {
                let (whole, rest) = number.split_once([',', '.']).unwrap_or((number, ""));
                whole == "1" && rest.bytes().all(|b| b == b'0')
            }
        };
        if one { "one" } else { "other" }
    }
}

fn missing(out: &mut String, name: &str) {
    out.push_str("{$");
    out.push_str(name);
    out.push('}');
}
