//! Messages of the catalogues, and how parts are put into them.

use super::marks::{CASE, CHOICE, END, FORM, NAMED, PART};
use super::{Language, Voice};
use alloc::string::String;

/// One message in every language of this build.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
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
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Text(pub(super) In<&'static str>);

/// Words with parts to put in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Message(pub(super) In<&'static str>);

/// Several forms of the same, by name; the first, without a name, is the plain one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Forms(pub(super) In<&'static str>);

impl From<Text> for Message {
    fn from(text: Text) -> Self {
        Self(text.0)
    }
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
    use super::{Forms, In, Message, Text};

    include!(concat!(env!("OUT_DIR"), "/messages.rs"));
}

impl Voice {
    /// The words of a message that has no parts.
    pub(crate) fn word(self, text: Text) -> &'static str {
        text.0.of(self.language)
    }

    /// A message with its parts put in. A part that is empty takes the space before it along; one
    /// that is not given stays as it is written, `{$who}`, for a test to find.
    pub(crate) fn fill(self, message: Message, parts: Parts<'_>) -> String {
        let mut out = String::new();
        self.push(&mut out, message.0.of(self.language), parts);
        out
    }

    /// The form of this name with its parts put in.
    pub(crate) fn form(self, forms: Forms, name: &str, parts: Parts<'_>) -> String {
        let mut out = String::new();
        let mut all = self.forms(forms);
        if let Some((_, text)) = all.find(|(form, _)| *form == name) {
            self.push(&mut out, text, parts);
        }
        out
    }

    pub(super) fn forms(self, forms: Forms) -> impl Iterator<Item = (&'static str, &'static str)> {
        let all = forms.0.of(self.language).split(FORM);
        all.filter_map(|form| form.split_once(NAMED))
    }

    pub(super) fn push(self, out: &mut String, text: &str, parts: Parts<'_>) {
        let mut rest = text;
        while let Some((words, from)) = rest.find([PART, CHOICE]).map(|at| rest.split_at(at)) {
            out.push_str(words);
            let choice = from.starts_with(CHOICE);
            let named = from.trim_start_matches([PART, CHOICE]).split_once(NAMED);
            let (name, after) = named.unwrap_or_default();
            let given = parts.iter().find(|p| p.0 == name).map(|p| p.1);
            match given {
                None => missing(out, name),
                Some("") if !choice && out.ends_with(' ') => {
                    out.pop();
                }
                Some(part) if !choice => out.push_str(part),
                Some(_) => {}
            }
            rest = after;
            if choice {
                let (cases, after) = after.split_once(END).unwrap_or_default();
                self.push(out, self.chosen(cases, given.unwrap_or_default()), parts);
                rest = after;
            }
        }
        out.push_str(rest);
    }

    /// The words of the case that is called like `value`, else of the one of its plural category,
    /// else of the last.
    fn chosen<'a>(self, cases: &'a str, value: &str) -> &'a str {
        let all = || cases.split(CASE).filter_map(|case| case.split_once(NAMED));
        let called = |name: &str| all().find(|case| case.0 == name);
        let case = called(value).or_else(|| called(self.plural(value)));
        case.or_else(|| all().next_back()).unwrap_or_default().1
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
