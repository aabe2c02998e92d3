//! Imports between the modules of the core point to lower ranks only. The table below is the data;
//! a new top-level module needs a rank here.
#![allow(
    clippy::indexing_slicing,
    reason = "test code; the lint spares only functions that are tests themselves"
)]

use backcut_tests::source::{modules, rust_files, tokens, without_tests};
use std::fs;
use std::path::Path;

/// Rank and modules; a module may import those of a lower rank, never of its own or a higher one.
const RANKS: &[(u32, &[&str])] = &[
    (0, &["math", "spelling", "voice"]),
    (1, &["court", "path", "athlete", "fault"]),
    (2, &["set", "guard"]),
    (3, &["document", "motion", "flight"]),
    (4, &["link", "choreography"]),
    (5, &["timing"]),
    (6, &["timeline"]),
    (7, &["defence"]),
    (8, &["looks", "branch", "film"]),
    (9, &["choice"]),
    (10, &["findings", "strip", "stops", "card", "quiz"]),
    (11, &["words"]),
    (12, &["scene"]),
    (13, &["svg"]),
    (14, &["sheet"]),
    (15, &["play"]),
    // The crate's root re-exports the facade.
    (16, &["lib"]),
];

fn rank(module: &str) -> Option<u32> {
    RANKS
        .iter()
        .find(|(_, names)| names.contains(&module))
        .map(|(rank, _)| *rank)
}

/// What is wrong with `source`, a file that lies `depth` modules deep in top-level module `module`.
fn offences(module: &str, depth: usize, source: &str) -> Vec<String> {
    let Some(own) = rank(module) else {
        return vec![format!("module `{module}` has no rank")];
    };
    let tokens = without_tests(&tokens(source));
    let mut bad = Vec::new();
    for target in targets(&tokens, depth) {
        match rank(&target) {
            _ if target == module => {}
            None => bad.push(format!("`{module}` imports `{target}`, which has no rank")),
            Some(other) if other >= own => bad.push(format!(
                "`{module}` (rank {own}) imports `{target}` (rank {other})"
            )),
            Some(_) => {}
        }
    }
    bad
}

/// The names after each way to the crate's root: `crate::`, or `super::` as often as the file is
/// deep. A group in braces counts each of its names.
fn targets(tokens: &[String], depth: usize) -> Vec<String> {
    let is = |i: usize, s: &str| tokens.get(i).is_some_and(|t| t == s);
    let mut out = Vec::new();
    let mut i = 0;
    while i < tokens.len() {
        let mut next = i;
        let at_root = if is(i, "crate") && is(i + 1, "::") {
            next += 2;
            true
        } else {
            let mut ups = 0;
            while is(next, "super") && is(next + 1, "::") {
                ups += 1;
                next += 2;
            }
            ups > 0 && ups == depth
        };
        if at_root {
            out.extend(names_at(tokens, next));
        }
        i = next.max(i + 1);
    }
    out
}

/// The name at `i`, or, where a group opens there, the first name of each of its branches.
fn names_at(tokens: &[String], i: usize) -> Vec<String> {
    let Some(first) = tokens.get(i) else {
        return Vec::new();
    };
    if first != "{" {
        return vec![first.clone()];
    }
    let (mut depth, mut fresh, mut out) = (0, false, Vec::new());
    for token in &tokens[i..] {
        match token.as_str() {
            "{" => {
                depth += 1;
                fresh = depth == 1;
            }
            "}" => depth -= 1,
            "," => fresh = depth == 1,
            name if fresh => {
                out.push(name.to_owned());
                fresh = false;
            }
            _ => {}
        }
        if depth == 0 {
            break;
        }
    }
    out
}

#[test]
fn imports_of_the_core_point_to_lower_ranks() {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/src");
    let mut files = Vec::new();
    rust_files(&src, &mut files).unwrap();
    files.sort();
    assert!(files.len() > 5, "the core's sources were not found");
    let mut bad = Vec::new();
    for file in &files {
        let names = modules(file.strip_prefix(&src).unwrap());
        // Test code may look anywhere.
        if names.iter().skip(1).any(|n| n == "tests") {
            continue;
        }
        let depth = if names[0] == "lib" { 0 } else { names.len() };
        for offence in offences(&names[0], depth, &fs::read_to_string(file).unwrap()) {
            bad.push(format!("{}: {offence}", names.join("::")));
        }
    }
    assert!(bad.is_empty(), "{}", bad.join("\n"));
}

#[test]
fn upward_and_sideways_imports_are_found() {
    for (module, depth, source) in [
        ("court", 2, "use crate::set::Set;"),
        ("court", 2, "use crate::athlete::Level;"),
        ("court", 2, "fn f() -> crate::timing::Network { g() }"),
        (
            "court",
            2,
            "use crate::{math::{Point, sin}, spelling, set::{self, Beat}};",
        ),
        ("court", 2, "use super::super::set::Set;"),
        ("athlete", 1, "use super::set::Set;"),
        ("guard", 1, "use crate /* by hand */ :: set;"),
        ("math", 2, "/// Text.\nuse crate::fault::Fault;"),
        (
            "court",
            2,
            "const C: char = '\"'; use crate::set::Set; const D: char = '\"';",
        ),
        (
            "court",
            2,
            "const S: &str = r#\"a \" b\"#; use crate::set::Set;",
        ),
        (
            "court",
            2,
            "#[cfg(test)] mod tests { } use crate::set::Set;",
        ),
        (
            "court",
            2,
            "#[cfg(test)] mod tests; fn f<'a>(x: &'a crate::set::Set) {}",
        ),
    ] {
        assert_eq!(offences(module, depth, source).len(), 1, "{source}");
    }
}

#[test]
fn downward_imports_and_what_is_no_import_pass() {
    for (module, depth, source) in [
        (
            "court",
            2,
            "use crate::math::{Point, set}; use super::Side; use crate::court::Court;",
        ),
        (
            "set",
            2,
            "use crate::{court::Side, athlete::{Level, Pace}};",
        ),
        (
            "court",
            2,
            "//! `crate::set`\n/// use crate::set::Set;\n/* crate::set /* x */ crate::set */",
        ),
        (
            "court",
            2,
            "const S: &str = \"crate::set\"; const R: &str = r#\"\"crate::set\"#;",
        ),
        (
            "court",
            2,
            "#[cfg(test)]\nmod tests { mod a { } use crate::set::Set; }",
        ),
        ("court", 2, "#[cfg(test)]\nuse crate::set::{Set, Beat};"),
        ("court", 2, "use super::set::Mine;"),
        ("lib", 0, "pub use crate::play::Play;"),
    ] {
        assert_eq!(
            offences(module, depth, source),
            Vec::<String>::new(),
            "{source}"
        );
    }
}

#[test]
fn a_module_without_a_rank_fails() {
    assert_eq!(offences("newcomer", 1, "").len(), 1);
    assert_eq!(offences("play", 1, "use crate::newcomer::Thing;").len(), 1);
    assert_eq!(offences("play", 1, "use crate::Reexported;").len(), 1);
}

#[test]
fn each_module_has_one_rank() {
    let all: Vec<&str> = RANKS
        .iter()
        .flat_map(|(_, names)| *names)
        .copied()
        .collect();
    for name in &all {
        assert_eq!(all.iter().filter(|n| n == &name).count(), 1, "{name}");
    }
}
