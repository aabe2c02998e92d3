//! Nothing is said to people but in the words of the catalogues: the core's sources are read for text.
#![allow(
    clippy::indexing_slicing,
    reason = "test code; the lint spares only functions that are tests themselves"
)]

use backcut_tests::source::{modules, rust_files, tokens, without_tests};
use std::fs;
use std::path::Path;

/// Where text stands that is no word of the program to a person, and why.
const ALLOWED: &[(&str, &str)] = &[
    ("athlete", "names in a set file"),
    ("court::spots", "names in a set file"),
    ("set::kind", "names in a set file"),
    ("set::read", "names in a set file"),
    (
        "document::fields",
        "the schema, for programs and in English",
    ),
    (
        "document::schema",
        "the schema, for programs and in English",
    ),
    ("svg::paint", "markup and faces"),
    ("link::text", "the alphabet of links"),
];

/// The literals of `source` that stand in its code, without those of attributes and tests.
fn literals(source: &str) -> Vec<String> {
    let tokens = without_tests(&tokens(source));
    let mut out = Vec::new();
    let mut i = 0;
    while i < tokens.len() {
        let bang = usize::from(tokens.get(i + 1).is_some_and(|t| t == "!"));
        if tokens[i] == "#" && tokens.get(i + 1 + bang).is_some_and(|t| t == "[") {
            let mut depth = 0;
            while i < tokens.len() {
                depth += i32::from(tokens[i] == "[") - i32::from(tokens[i] == "]");
                i += 1;
                if depth == 0 && tokens[i - 1] == "]" {
                    break;
                }
            }
            continue;
        }
        if tokens[i].starts_with(['"', 'r']) && tokens[i].ends_with(['"', '#']) {
            out.push(tokens[i].clone());
        }
        i += 1;
    }
    out
}

/// Whether a person would read it as words: two words one after the other, or one that begins large.
fn speaks(literal: &str) -> bool {
    let mut words = literal.split(' ').map(|word| {
        let word = word.trim_matches(|c: char| !c.is_alphanumeric());
        word.len() > 1
            && word
                .chars()
                .all(|c| c.is_alphabetic() || c == '’' || c == '-')
    });
    let mut before = false;
    let two = words.any(|is_word| std::mem::replace(&mut before, is_word) && is_word);
    let text = literal.trim_start_matches('"');
    let large = text.starts_with(char::is_uppercase) && text.contains(char::is_lowercase);
    two || large
}

#[test]
fn no_text_escapes_the_catalogues() {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/src");
    let mut files = Vec::new();
    rust_files(&src, &mut files).unwrap();
    files.sort();
    let mut escaped = Vec::new();
    let mut used = Vec::new();
    for file in &files {
        let name = modules(file.strip_prefix(&src).unwrap()).join("::");
        if name.split("::").any(|n| n == "tests" || n == "fixture") {
            continue;
        }
        let said = literals(&fs::read_to_string(file).unwrap());
        let said: Vec<String> = said.into_iter().filter(|l| speaks(l)).collect();
        let allowed = ALLOWED.iter().find(|(module, _)| name.starts_with(module));
        match allowed {
            Some((module, _)) if !said.is_empty() => used.push(*module),
            Some(_) => {}
            None => escaped.extend(said.iter().map(|s| format!("{name}: {s}"))),
        }
    }
    assert!(escaped.is_empty(), "{}", escaped.join("\n"));
    let idle = ALLOWED.iter().find(|(module, _)| !used.contains(module));
    assert_eq!(idle, None, "has no text any more");
}

/// What of the native tool tells of a set as a page does; the rest of it speaks to whoever types.
const TABLES: [&str; 4] = ["check.rs", "looks.rs", "reads.rs", "time.rs"];

#[test]
fn no_text_of_the_tools_tables_escapes_its_catalogue() {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("../web-demo/src");
    for file in TABLES {
        let said = literals(&fs::read_to_string(src.join(file)).unwrap());
        let said: Vec<&String> = said.iter().filter(|l| speaks(l)).collect();
        assert!(said.is_empty(), "{file}: {said:?}");
    }
}

#[test]
fn text_is_found_and_names_are_not() {
    for said in [
        "\"is set\"",
        "\"{who} cuts to the top\"",
        "\"Beat \"",
        "\"Waits\"",
    ] {
        assert!(speaks(said), "{said}");
    }
    for name in [
        "\"who\"",
        "\"pin-down\"",
        "\"{} {}\"",
        "\"M 0 0\"",
        "\"FIBA\"",
        "\" \"",
    ] {
        assert!(!speaks(name), "{name}");
    }
    let source = "#[allow(dead_code, reason = \"not yet used\")]\nconst A: &str = \"so it is\";\n\
                  #[cfg(test)]\nmod tests { const B: &str = \"to be sure\"; }";
    assert_eq!(literals(source), ["\"so it is\""]);
}
