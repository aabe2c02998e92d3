use super::marks::{CASE, CHOICE, END, NAMED, PART};
use super::message::{Any, messages};
use super::{Language, Units, Voice};
use alloc::collections::BTreeSet;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use fixed_decimal::Decimal;
use icu_decimal::DecimalFormatter;
use icu_decimal::options::{DecimalFormatterOptions, GroupingStrategy};
use icu_locale_core::Locale;
use icu_plurals::{PluralCategory, PluralRules};
use std::format;

fn voices() -> impl Iterator<Item = Voice> {
    let tags = ["en", "es", "es-MX"].into_iter();
    tags.map(|tag| Voice::new(tag, Units::Courts))
}

/// Names of the parts of a message, and what its choices go by.
fn parts(text: &'static str) -> (BTreeSet<&'static str>, BTreeSet<&'static str>) {
    let named = |c: char| text.split(c).skip(1).filter_map(|s| s.split(NAMED).next());
    let names = named(PART).chain(named(CHOICE));
    // After the name of a choice comes that of its first case.
    let first = text
        .split(CHOICE)
        .skip(1)
        .filter_map(|s| s.split(NAMED).nth(1));
    let others = named(CASE).filter(|name| !name.starts_with(END));
    (names.collect(), first.chain(others).collect())
}

/// Every form of a message in the language of `voice`, formed with every sample.
fn formed(voice: Voice, message: Any) -> Vec<String> {
    let all = |text: &'static str| {
        let (names, cases) = parts(text);
        let value = |value: &&str| {
            let all: Vec<(&str, &str)> = names.iter().map(|name| (*name, *value)).collect();
            let mut out = String::new();
            voice.push(&mut out, text, &all);
            out
        };
        let values = cases.into_iter().chain(["1", "2"]);
        values
            .collect::<BTreeSet<_>>()
            .iter()
            .map(value)
            .collect::<Vec<_>>()
    };
    match message {
        Any::Text(text) => all(voice.word(text)),
        Any::Message(message) => all(message.0.of(voice.language)),
        Any::Forms(forms) => voice.forms(forms).flat_map(|form| all(form.1)).collect(),
    }
}

#[test]
fn every_message_can_be_formed_in_every_language() {
    for voice in voices() {
        for (id, message) in messages::ALL {
            for told in formed(voice, *message) {
                assert!(!told.is_empty(), "{id} {voice:?}");
                assert!(!told.contains("{$"), "{id} {voice:?}: {told}");
                assert!(!told.contains(char::is_control), "{id} {voice:?}: {told}");
                assert!(!told.contains("  "), "{id} {voice:?}: {told}");
                assert!(!told.ends_with(' '), "{id} {voice:?}: {told}");
            }
        }
    }
}

/// What is the same in both languages: signs of units, and names.
const SAME: &[&str] = &[
    "card.title",
    "card.pass",
    "measure.metres",
    "measure.seconds",
    "measure.speed",
    "measure.half-metre",
    "fault.ids",
    "title.fiba",
    "title.nba",
    "title.wnba",
    "title.nfhs",
];

#[test]
fn nothing_is_left_untranslated() {
    let [english, spanish] = ["en", "es"].map(|tag| Voice::new(tag, Units::Courts));
    for (id, message) in messages::ALL {
        let told = formed(english, *message);
        // Parts and marks alone are nobody's words.
        if !told.iter().any(|told| told.contains(char::is_alphabetic)) {
            continue;
        }
        let same = told
            .iter()
            .zip(&formed(spanish, *message))
            .any(|(a, b)| a.replace('\u{a0}', " ") == b.replace('\u{a0}', " "));
        assert_eq!(same, SAME.contains(id), "{id}");
    }
}

/// English words that Spanish has not: short, so that one forgotten in a sentence is found.
const ENGLISH_WORDS: [&str; 24] = [
    "the", "of", "to", "and", "is", "are", "for", "with", "at", "on", "in", "screen", "screens",
    "ball", "pass", "cut", "cuts", "ring", "seconds", "away", "off", "if", "they", "near",
];

#[test]
fn no_english_word_stands_in_spanish() {
    let spanish = Voice::new("es", Units::Courts);
    for (id, message) in messages::ALL {
        for told in formed(spanish, *message) {
            // What stands in quotes is a word of a set file.
            let told: String = told.to_lowercase().split('"').step_by(2).collect();
            let mut words = told.split(|c: char| !c.is_alphabetic());
            let found = words.find(|w| ENGLISH_WORDS.contains(w));
            assert_eq!(found, None, "{id}: {told}");
        }
    }
}

#[test]
fn an_empty_part_takes_the_space_before_it_along() {
    let voice = Voice::ENGLISH;
    let said = |off: &str, to: &str| {
        let parts = [("verb", "cuts"), ("off", off), ("to", to)];
        voice.fill(messages::action::WAY, &parts)
    };
    assert_eq!(said("off 5", "to the top"), "cuts off 5 to the top");
    assert_eq!(said("", "to the top"), "cuts to the top");
    assert_eq!(said("", ""), "cuts");
}

#[test]
fn a_part_that_is_not_given_can_be_seen() {
    let told = Voice::ENGLISH.fill(messages::action::SAID, &[("who", "2")]);
    assert_eq!(told, "2 {$what}");
}

/// Held against Unicode CLDR, by the ICU4X project's data.
#[test]
fn plural_categories_are_those_of_cldr() {
    for tag in ["en", "es"] {
        let locale: Locale = tag.parse().unwrap();
        let rules = PluralRules::try_new_cardinal((&locale).into()).unwrap();
        let voice = Voice::new(tag, Units::Courts);
        let numbers = (0..200).map(|n| n.to_string());
        let decimals = ["0.5", "1.0", "1.2", "2.0", "1.00"].map(String::from);
        for number in numbers.chain(decimals) {
            let decimal: Decimal = number.parse().unwrap();
            let category = match rules.category_for(&decimal) {
                PluralCategory::One => "one",
                _ => "other",
            };
            let written = voice.marked(&number);
            assert_eq!(voice.plural(&written), category, "{tag} {number}");
        }
    }
}

/// Held against Unicode CLDR, by the ICU4X project's data.
#[test]
fn decimal_marks_are_those_of_cldr() {
    let countries = [
        "ES", "AR", "BO", "CL", "CO", "CR", "CU", "DO", "EC", "GQ", "GT", "HN", "MX", "NI", "PA",
        "PE", "PH", "PR", "PY", "SV", "US", "UY", "VE", "BR", "BZ", "419",
    ];
    let spanish = countries.map(|country| format!("es-{country}"));
    let english = ["en", "en-US", "en-GB", "en-AU", "es"].map(String::from);
    for tag in spanish.into_iter().chain(english) {
        let locale: Locale = tag.parse().unwrap();
        let mut options = DecimalFormatterOptions::default();
        options.grouping_strategy = Some(GroupingStrategy::Never);
        let formatter = DecimalFormatter::try_new((&locale).into(), options).unwrap();
        let number: Decimal = "1.2".parse().unwrap();
        let expected = formatter.format(&number);
        let told = Voice::new(&tag, Units::Courts).number(1.2, 1);
        assert_eq!(told, expected.to_string(), "{tag}");
    }
}

#[test]
fn a_language_is_found_by_its_primary_subtag() {
    for tag in ["es", "ES", "es-MX", "es_AR", "es-Latn-CO", "es-419"] {
        assert_eq!(Language::of(tag), Language::Spanish, "{tag}");
    }
    for tag in ["en", "en-GB", "", "fr", "est", "e", "-es", "eu-ES"] {
        assert_eq!(Language::of(tag), Language::English, "{tag}");
    }
    assert_eq!(
        Voice::new("es-Latn-MX", Units::Courts).number(1.2, 1),
        "1.2"
    );
    assert_eq!(Voice::new("es-mx", Units::Courts).number(1.2, 1), "1.2");
}
