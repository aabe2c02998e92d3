//! Every fault that a set file can have: one case a file, the words told about it beside it.
//!
//! `faults/<code>.json` or `faults/<code>.<case>.json` has that one fault and no other; the text
//! beside it is what its author is told. `BLESS=1` makes the texts anew.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test stops at what it cannot read"
)]

use backcut::document::read;
use backcut::voice::{Units, Voice};
use std::fs;
use std::path::{Path, PathBuf};

fn cases() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/faults");
    let mut cases: Vec<PathBuf> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|e| e == "json"))
        .collect();
    cases.sort();
    cases
}

#[test]
fn each_case_is_told_in_its_words() {
    let mut wrong = Vec::new();
    for case in cases() {
        let told = match read(&fs::read(&case).unwrap()) {
            Ok(_) => String::from("no fault\n"),
            Err(faults) => format!("{faults}\n"),
        };
        let beside = case.with_extension("txt");
        if std::env::var_os("BLESS").is_some() {
            fs::write(&beside, &told).unwrap();
        }
        let expected = fs::read_to_string(&beside).unwrap_or_default();
        if told != expected {
            wrong.push(format!(
                "{}\nexpected: {expected}told:     {told}",
                case.display()
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn each_case_has_the_one_fault_it_is_named_after() {
    for case in cases() {
        let stem = case.file_stem().unwrap().to_str().unwrap();
        if stem == "several" {
            continue;
        }
        let code = stem.split('.').next().unwrap();
        let codes: Vec<&str> = match read(&fs::read(&case).unwrap()) {
            Ok(_) => Vec::new(),
            Err(faults) => faults.list.iter().map(|f| f.code).collect(),
        };
        assert_eq!(codes, [code], "{}", case.display());
    }
}

#[test]
fn no_fault_speaks_of_the_program() {
    for case in cases() {
        let Err(faults) = read(&fs::read(&case).unwrap()) else {
            continue;
        };
        let told = faults.to_string();
        for word in [
            "f64",
            "u8",
            "string",
            "struct",
            "enum",
            "null pointer",
            "Option",
            "serde",
            "::",
        ] {
            assert!(!told.contains(word), "{}: {told}", case.display());
        }
    }
}

#[test]
fn each_case_is_told_in_every_language_with_all_its_parts() {
    let spanish = Voice::new("es", Units::Courts);
    for case in cases() {
        let Err(faults) = read(&fs::read(&case).unwrap()) else {
            continue;
        };
        for fault in &faults.list {
            let (english, told) = (fault.to_string(), fault.told(spanish));
            assert!(told.starts_with("línea "), "{told}");
            assert!(
                fault.found.told(spanish) != fault.found.to_string(),
                "{told}"
            );
            assert!(!told.contains("{$") && !english.contains("{$"), "{told}");
        }
    }
}
