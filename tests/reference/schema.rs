//! The schema of a set file, judged by a validator of its own: it accepts what the reader accepts
//! and refuses what the reader says has the wrong shape.
//!
//! Validator: the crate boon, JSON Schema draft 2020-12.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test stops at what it cannot read"
)]

use backcut::document::{read, schema, write};
use boon::{Compiler, Draft, SchemaIndex, Schemas};
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};

fn files(folder: &str) -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("..")
        .join(folder);
    let mut files: Vec<PathBuf> = fs::read_dir(folder)
        .into_iter()
        .flatten()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|e| e == "json"))
        .collect();
    files.sort();
    files
}

/// The published schema, ready to judge.
struct Validator {
    schemas: Schemas,
    schema: SchemaIndex,
}

impl Validator {
    fn new() -> Self {
        const NAME: &str = "https://example.org/set.schema.json";
        let mut compiler = Compiler::new();
        compiler.set_default_draft(Draft::V2020_12);
        compiler
            .add_resource(NAME, serde_json::from_str(&schema()).unwrap())
            .unwrap();
        let mut schemas = Schemas::new();
        let schema = compiler.compile(NAME, &mut schemas).unwrap();
        Self { schemas, schema }
    }

    /// What it has against `value`; nothing, if it is valid.
    fn against(&self, value: &Value) -> Option<String> {
        let told = self.schemas.validate(value, self.schema).err()?;
        Some(told.to_string())
    }
}

/// Codes of faults that lie in the shape of the file, which a schema can tell too.
const SHAPE: [&str; 30] = [
    "empty-list",
    "empty-name",
    "field-of-other-action",
    "list-too-long",
    "missing-version",
    "newer-version",
    "no-such-defender",
    "no-such-player",
    "one-player-only",
    "place-needed",
    "receiver-missing",
    "screen-for-nobody",
    "text-too-long",
    "time-out-of-range",
    "too-few-players",
    "unknown-coverage",
    "unknown-court",
    "unknown-deed",
    "unknown-edge",
    "unknown-fake",
    "unknown-field",
    "unknown-kind",
    "unknown-level",
    "unknown-pace",
    "unknown-side",
    "unknown-spot",
    "unknown-verb",
    "wrong-type",
    "wrong-version",
    "missing-field",
];

/// A case of such a code that a schema cannot tell: a kind may say where a cut ends.
const BEYOND: &str = "missing-field.to";

#[test]
fn faults_of_shape_are_refused_and_faults_of_sense_are_not() {
    let validator = Validator::new();
    let mut refused = 0;
    for file in files("core/tests/faults") {
        let Ok(value) = serde_json::from_slice::<Value>(&fs::read(&file).unwrap()) else {
            continue;
        };
        let name = file.file_stem().unwrap().to_str().unwrap();
        let code = name.split('.').next().unwrap();
        if ["duplicate-field", "number-out-of-range", "several"].contains(&code) {
            continue;
        }
        let shape = SHAPE.contains(&code) && name != BEYOND;
        assert_eq!(validator.against(&value).is_some(), shape, "{name}");
        refused += usize::from(shape);
    }
    assert!(refused >= 40, "only {refused} cases");
}

#[test]
fn every_demo_set_is_accepted_as_written_and_as_we_write_it() {
    let validator = Validator::new();
    for file in files("web-demo/sets") {
        let text = fs::read(&file).unwrap();
        let value: Value = serde_json::from_slice(&text).unwrap();
        assert_eq!(validator.against(&value), None, "{}", file.display());
        let set = read(&text).unwrap_or_else(|f| panic!("{}:\n{f}", file.display()));
        let written: Value = serde_json::from_str(&write(&set)).unwrap();
        assert_eq!(validator.against(&written), None, "{}", file.display());
    }
}

#[test]
fn every_reference_within_the_schema_leads_somewhere_else() {
    let schema: Value = serde_json::from_str(&schema()).unwrap();
    let defs = schema["$defs"].as_object().unwrap();
    let text = schema.to_string();
    let mut referred: Vec<&str> = text
        .split("\"#/$defs/")
        .skip(1)
        .map(|rest| rest.split('"').next().unwrap())
        .collect();
    referred.sort_unstable();
    referred.dedup();
    let mut names: Vec<&str> = defs.keys().map(String::as_str).collect();
    names.sort_unstable();
    assert_eq!(referred, names);
}
