//! Compiles the message catalogues, `locales/LANGUAGE/*.ftl`, into plain Rust, so that the core has no
//! parser of them and a message that is missing or differs in its parts stops the build.

mod catalogue;
#[path = "../src/voice/marks.rs"]
mod marks;
mod rust;

use std::path::Path;
use std::process::ExitCode;
use std::{env, fs};

/// Names of the folders; every other language is held against the first. The later ones are
/// compiled only with the feature `authoring`.
const LANGUAGES: [&str; 2] = ["en", "es"];

fn main() -> ExitCode {
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            said(&format!("cargo::error={why}"));
            ExitCode::FAILURE
        }
    }
}

fn run() -> Result<(), String> {
    said("cargo::rerun-if-changed=build");
    said("cargo::rerun-if-changed=src/voice/marks.rs");
    said("cargo::rerun-if-changed=locales");
    let root = env::var("CARGO_MANIFEST_DIR").map_err(|e| e.to_string())?;
    let out = env::var("OUT_DIR").map_err(|e| e.to_string())?;
    let folder = Path::new(&root).join("locales");
    let all = LANGUAGES.map(|language| catalogue::read(&folder.join(language)));
    let [source, others @ ..] = all;
    let source = source?;
    let mut languages = vec![(LANGUAGES[0], source)];
    for (other, name) in others.into_iter().zip(LANGUAGES.into_iter().skip(1)) {
        let other = other?;
        for (_, source) in languages.iter().take(1) {
            catalogue::compare(source, &other, name)?;
        }
        languages.push((name, other));
    }
    let code = rust::write(&languages)?;
    fs::write(Path::new(&out).join("messages.rs"), code).map_err(|e| e.to_string())
}

#[allow(
    clippy::print_stdout,
    reason = "this is how a build script speaks to Cargo"
)]
fn said(line: &str) {
    println!("{line}");
}
