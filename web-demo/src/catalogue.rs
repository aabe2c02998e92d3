//! The tool's own words, from `locales/LANGUAGE/tool.ftl`; what is said about a set, the core says.

use backcut::voice::{Language, Voice};
use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};

const ENGLISH: &str = include_str!("../locales/en/tool.ftl");
const SPANISH: &str = include_str!("../locales/es/tool.ftl");

/// A part of a message: a text as it is, or a count, which also chooses the plural.
pub(crate) type Part<'a> = (&'static str, FluentValue<'a>);

/// A catalogue in one language.
pub(crate) struct Catalogue {
    messages: FluentBundle<FluentResource>,
    /// How numbers are written.
    pub(crate) voice: Voice,
}

impl Catalogue {
    pub(crate) fn new(voice: Voice) -> Self {
        let language = voice.language();
        let text = match language {
            Language::English => ENGLISH,
            Language::Spanish => SPANISH,
        };
        let tag = language.tag().parse().unwrap_or_default();
        let mut messages = FluentBundle::new(vec![tag]);
        // A terminal shows marks of direction as boxes.
        messages.set_use_isolating(false);
        let text = match FluentResource::try_new(text.to_owned()) {
            Ok(text) | Err((text, _)) => text,
        };
        messages.add_resource_overriding(text);
        Self { messages, voice }
    }

    /// The words of a message without parts.
    pub(crate) fn word(&self, id: &str) -> String {
        self.fill(id, [])
    }

    /// A message with its parts put in; its name, for a test to find, where there is no such message.
    pub(crate) fn fill<'a>(&self, id: &str, parts: impl IntoIterator<Item = Part<'a>>) -> String {
        let mut args = FluentArgs::new();
        for (name, part) in parts {
            args.set(name, part);
        }
        let message = self.messages.get_message(id).and_then(|m| m.value());
        message.map_or_else(
            || format!("{{{id}}}"),
            |pattern| {
                let text = self
                    .messages
                    .format_pattern(pattern, Some(&args), &mut Vec::new());
                text.into_owned()
            },
        )
    }

    /// A number with so many decimals.
    pub(crate) fn number(&self, n: f64, decimals: u8) -> String {
        self.voice.number(n, decimals)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use backcut::voice::Units;
    use std::collections::BTreeSet;

    /// The names of all messages, and the parts that each of them has.
    fn names(text: &str) -> BTreeSet<(String, Vec<String>)> {
        let messages = text.split("\n\n").flat_map(str::lines);
        let mut out: Vec<(String, Vec<String>)> = Vec::new();
        for line in messages.filter(|l| !l.starts_with('#')) {
            if let Some((name, _)) = line.split_once(" = ").filter(|_| !line.starts_with(' ')) {
                out.push((name.to_owned(), Vec::new()));
            }
            let Some((_, parts)) = out.last_mut() else {
                continue;
            };
            for part in line.split('$').skip(1) {
                let name: String = part.chars().take_while(|c| c.is_alphanumeric()).collect();
                if !parts.contains(&name) {
                    parts.push(name);
                }
            }
        }
        for (_, parts) in &mut out {
            parts.sort();
        }
        out.into_iter().collect()
    }

    #[test]
    fn both_languages_have_the_same_messages_with_the_same_parts() {
        let english = names(ENGLISH);
        assert!(english.len() > 30);
        assert_eq!(english, names(SPANISH));
        for text in [ENGLISH, SPANISH] {
            assert!(FluentResource::try_new(text.to_owned()).is_ok());
        }
    }

    #[test]
    fn a_count_chooses_the_plural() {
        let told = |tag| {
            let told = Catalogue::new(Voice::new(tag, Units::Courts));
            let parts = |n: usize| {
                [
                    ("title", "T".into()),
                    ("beats", n.into()),
                    ("actions", 2.into()),
                ]
            };
            (told.fill("about", parts(1)), told.fill("about", parts(3)))
        };
        assert_eq!(
            told("en"),
            (
                "T, 1 beat, 2 actions.".into(),
                "T, 3 beats, 2 actions.".into()
            )
        );
        assert_eq!(
            told("es"),
            (
                "T, 1 fase, 2 acciones.".into(),
                "T, 3 fases, 2 acciones.".into()
            )
        );
    }

    #[test]
    fn every_message_that_is_asked_for_is_there() {
        let sources = [
            include_str!("check.rs"),
            include_str!("looks.rs"),
            include_str!("reads.rs"),
            include_str!("time.rs"),
        ];
        let told = Catalogue::new(Voice::default());
        let mut asked = 0;
        for source in sources {
            for call in ["told.word(\"", "told.fill(\""] {
                for rest in source.split(call).skip(1) {
                    let id = rest.split('"').next().unwrap();
                    assert!(told.messages.has_message(id), "{id}");
                    asked += 1;
                }
            }
        }
        assert!(asked > 15);
    }
}
