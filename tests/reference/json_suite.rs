//! The JSON reader against JSONTestSuite (see `json-suite/NOTICE.md`).
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test stops at what it cannot read"
)]

use backcut::document::{Json, Value, parse_json};

struct Case {
    name: String,
    text: String,
}

fn cases() -> Vec<Case> {
    include_str!("json-suite/cases.jsonl")
        .lines()
        .map(|line| {
            let case: serde_json::Value = serde_json::from_str(line).unwrap();
            let name = case["name"].as_str().unwrap().to_owned();
            let text = match case["input"].as_str() {
                Some(input) => input.to_owned(),
                None => {
                    let times = usize::try_from(case["times"].as_u64().unwrap()).unwrap();
                    case["repeat"].as_str().unwrap().repeat(times)
                }
            };
            Case { name, text }
        })
        .collect()
}

/// The cases that begin with `sort` and are judged as `accepted` says, by name.
fn judged(sort: &str, accepted: bool) -> Vec<String> {
    cases()
        .into_iter()
        .filter(|c| c.name.starts_with(sort))
        .filter(|c| parse_json(c.text.as_bytes()).is_ok() == accepted)
        .map(|c| c.name)
        .collect()
}

#[test]
fn the_whole_suite_is_here() {
    let count = |sort: &str| cases().iter().filter(|c| c.name.starts_with(sort)).count();
    assert_eq!((count("y_"), count("n_"), count("i_")), (95, 176, 22));
}

#[test]
fn what_must_be_accepted_is_but_for_names_written_twice() {
    // A field written twice in a set file is a mistake of its author, and told as one.
    assert_eq!(
        judged("y_", false),
        [
            "y_object_duplicated_key",
            "y_object_duplicated_key_and_value"
        ]
    );
}

#[test]
fn what_must_be_refused_is() {
    assert_eq!(judged("n_", true), [""; 0]);
}

#[test]
fn of_what_may_be_either_only_numbers_and_a_byte_order_mark_pass() {
    assert_eq!(
        judged("i_", true),
        [
            "i_number_double_huge_neg_exp",
            "i_number_real_underflow",
            "i_number_too_big_neg_int",
            "i_number_too_big_pos_int",
            "i_number_very_big_negative_int",
            "i_structure_UTF-8_BOM_empty_object",
        ]
    );
}

#[test]
fn a_byte_that_is_no_utf_8_spoils_every_case() {
    for case in cases().iter().filter(|c| c.name.starts_with("y_")) {
        for at in 0..=case.text.len() {
            let mut bytes = case.text.clone().into_bytes();
            bytes.insert(at, 0xff);
            let faults = parse_json(&bytes).unwrap_err();
            assert_eq!(faults.list[0].code, "not-utf8", "{} at {at}", case.name);
        }
    }
}

#[test]
fn values_are_those_of_serde_json() {
    for case in cases().iter().filter(|c| c.name.starts_with("y_")) {
        let Ok(ours) = parse_json(case.text.as_bytes()) else {
            continue;
        };
        let theirs: serde_json::Value = serde_json::from_str(&case.text).unwrap();
        assert!(same(&ours, &theirs), "{}", case.name);
    }
}

fn same(ours: &Json, theirs: &serde_json::Value) -> bool {
    use serde_json::Value as Theirs;
    match (&ours.value, theirs) {
        (Value::Null, Theirs::Null) => true,
        (Value::Bool(a), Theirs::Bool(b)) => a == b,
        (Value::Number(a), Theirs::Number(b)) => b.as_f64() == Some(*a),
        (Value::Text(a), Theirs::String(b)) => a == b,
        (Value::List(a), Theirs::Array(b)) => {
            a.len() == b.len() && a.iter().zip(b).all(|(a, b)| same(a, b))
        }
        (Value::Object(a), Theirs::Object(b)) => {
            a.len() == b.len()
                && a.iter()
                    .all(|m| b.get(&m.key).is_some_and(|v| same(&m.value, v)))
        }
        _ => false,
    }
}
