//! The JSON reader against `serde_json`, an independent one.

use crate::document::{Json, Value, parse_json};
use proptest::prelude::*;
use serde_json::Value as Theirs;
use std::string::{String, ToString};
use std::vec::Vec;

fn same(ours: &Json, theirs: &Theirs) -> bool {
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

/// Whether both readers say the same of `text`.
fn agree(text: &str) -> Result<(), TestCaseError> {
    let theirs = serde_json::from_str::<Theirs>(text);
    match (parse_json(text.as_bytes()), &theirs) {
        (Ok(ours), Ok(theirs)) => prop_assert!(same(&ours, theirs), "{text}"),
        (Err(faults), Ok(_)) => {
            // What we refuse beyond the standard, and say so.
            let own = faults.list.iter().all(|f| f.code == "duplicate-field");
            prop_assert!(own, "{text}: {faults}");
        }
        (Ok(_), Err(error)) => prop_assert!(false, "{text}: {error}"),
        (Err(_), Err(_)) => {}
    }
    Ok(())
}

fn value() -> impl Strategy<Value = String> {
    let leaf = prop_oneof![
        Just("null".to_string()),
        any::<bool>().prop_map(|b| b.to_string()),
        any::<f64>()
            .prop_filter("finite", |n| n.is_finite())
            .prop_map(|n| serde_json::to_string(&n).unwrap()),
        "-?(0|[1-9][0-9]{0,25})(\\.[0-9]{1,25})?([eE][+-]?[0-9]{1,3})?",
        any::<String>().prop_map(|s| serde_json::to_string(&s).unwrap()),
        "\"(\\\\[bfnrt\"/\\\\]|\\\\u[dD0][89aAcC0][0-9a-fA-F]{2}|[ -!#-\\[\\]-~])*\"",
    ];
    leaf.prop_recursive(4, 40, 6, |inner| {
        let space = "[ \t\r\n]{0,2}";
        prop_oneof![
            prop::collection::vec((space, inner.clone(), space), 0..6).prop_map(|items| {
                let items: Vec<String> = items.into_iter().map(|(a, v, b)| a + &v + &b).collect();
                "[".to_string() + &items.join(",") + "]"
            }),
            prop::collection::vec(("[a-c]{0,2}", space, inner), 0..6).prop_map(|members| {
                let members: Vec<String> = members
                    .into_iter()
                    .map(|(k, s, v)| "\"".to_string() + &k + "\"" + &s + ":" + &v)
                    .collect();
                "{".to_string() + &members.join(",") + "}"
            }),
        ]
    })
}

proptest! {
    #[test]
    fn prop_values_are_those_of_serde_json(text in value()) {
        agree(&text)?;
    }

    #[test]
    fn prop_noise_is_judged_as_by_serde_json(
        text in "[\\[\\]{}:,\"0-9eE+. \\\\u\n-]{0,24}|(\\[|\\{\"a\":|1|,|\\]|\\}|null|true| |\"b\"){0,12}",
    ) {
        agree(&text)?;
    }

    #[test]
    fn prop_a_damaged_value_is_judged_as_by_serde_json(
        text in value(),
        at in any::<prop::sample::Index>(),
        scrap in "[\\[\\]{}:,\"0-9eE+. \\\\u-]{0,3}",
    ) {
        let mut chars: Vec<char> = text.chars().collect();
        let at = at.index(chars.len());
        chars.splice(at..=at, scrap.chars());
        agree(&chars.into_iter().collect::<String>())?;
    }
}
