//! Rust sources as tests read them.
#![allow(
    clippy::indexing_slicing,
    reason = "for tests; the lint spares only functions that are tests themselves"
)]

use std::path::{Path, PathBuf};
use std::{fs, io};

/// The words and signs of `source`, comments dropped: `::` is one token, and so is a literal, with its
/// quotes.
#[must_use]
pub fn tokens(source: &str) -> Vec<String> {
    let c: Vec<char> = source.chars().collect();
    let at = |i: usize| c.get(i).copied().unwrap_or('\0');
    let mut out = Vec::new();
    let mut i = 0;
    while i < c.len() {
        if at(i) == '/' && at(i + 1) == '/' {
            while i < c.len() && at(i) != '\n' {
                i += 1;
            }
        } else if at(i) == '/' && at(i + 1) == '*' {
            i = end_of_block_comment(&c, i);
        } else if let Some(end) = end_of_literal(&c, i) {
            out.push(c[i..end.min(c.len())].iter().collect());
            i = end;
        } else if at(i).is_alphanumeric() || at(i) == '_' {
            let start = i;
            while at(i).is_alphanumeric() || at(i) == '_' {
                i += 1;
            }
            out.push(c[start..i].iter().collect());
        } else if at(i) == ':' && at(i + 1) == ':' {
            out.push("::".to_owned());
            i += 2;
        } else {
            if !at(i).is_whitespace() {
                out.push(at(i).to_string());
            }
            i += 1;
        }
    }
    out
}

/// Where the (nested) block comment that begins at `i` ends.
fn end_of_block_comment(c: &[char], mut i: usize) -> usize {
    let mut depth = 0;
    while i < c.len() {
        match (c[i], c.get(i + 1)) {
            ('/', Some('*')) => {
                depth += 1;
                i += 2;
            }
            ('*', Some('/')) => {
                depth -= 1;
                i += 2;
                if depth == 0 {
                    break;
                }
            }
            _ => i += 1,
        }
    }
    i
}

/// Where the string or character literal that begins at `i` ends, if one begins there.
fn end_of_literal(c: &[char], i: usize) -> Option<usize> {
    let quoted = |mut j: usize, quote: char| {
        while j < c.len() && c[j] != quote {
            j += if c[j] == '\\' { 2 } else { 1 };
        }
        j + 1
    };
    match c[i] {
        '"' => Some(quoted(i + 1, '"')),
        // A lifetime has no closing quote after one character.
        '\'' if c.get(i + 1) == Some(&'\\') || c.get(i + 2) == Some(&'\'') => {
            Some(if c.get(i + 1) == Some(&'\\') {
                quoted(i + 1, '\'')
            } else {
                i + 3
            })
        }
        'r' => {
            let hashes = c[i + 1..].iter().take_while(|h| **h == '#').count();
            let start = i + 1 + hashes;
            if c.get(start) != Some(&'"') {
                return None;
            }
            (start + 1..c.len())
                .find(|j| {
                    c[*j] == '"'
                        && c[j + 1..]
                            .iter()
                            .take(hashes)
                            .filter(|h| **h == '#')
                            .count()
                            == hashes
                })
                .map(|j| j + 1 + hashes)
        }
        _ => None,
    }
}

/// `tokens` less each item under `#[cfg(test)]`: up to its `;` or the end of its braces.
#[must_use]
pub fn without_tests(tokens: &[String]) -> Vec<String> {
    const GATE: [&str; 7] = ["#", "[", "cfg", "(", "test", ")", "]"];
    let mut out = Vec::new();
    let mut i = 0;
    while i < tokens.len() {
        if tokens[i..].iter().take(GATE.len()).eq(GATE) {
            let mut depth = 0;
            i += GATE.len();
            while i < tokens.len() {
                match tokens[i].as_str() {
                    "{" | "(" | "[" => depth += 1,
                    "}" | ")" | "]" => depth -= 1,
                    _ => {}
                }
                let ends = depth == 0 && matches!(tokens[i].as_str(), ";" | "}");
                i += 1;
                if ends {
                    break;
                }
            }
        } else {
            out.push(tokens[i].clone());
            i += 1;
        }
    }
    out
}

/// All sources below `dir`.
///
/// # Errors
/// What the file system says.
pub fn rust_files(dir: &Path, out: &mut Vec<PathBuf>) -> io::Result<()> {
    for entry in fs::read_dir(dir)? {
        let path = entry?.path();
        if path.is_dir() {
            rust_files(&path, out)?;
        } else if path.extension().is_some_and(|e| e == "rs") {
            out.push(path);
        }
    }
    Ok(())
}

/// Module path of a file under `src`, from its path there: `court/marks.rs` → court, marks.
#[must_use]
pub fn modules(file: &Path) -> Vec<String> {
    let mut names: Vec<String> = file
        .with_extension("")
        .components()
        .map(|c| c.as_os_str().to_string_lossy().into_owned())
        .collect();
    if names.last().is_some_and(|n| n == "mod") {
        names.pop();
    }
    names
}
