//! Round trips, damage, hostile links.

use super::*;
use crate::document::tests::made;
use crate::set::Coverage;
use proptest::collection::vec as list;
use proptest::prelude::*;
use std::string::ToString;
use std::{format, vec};

const SET: &str = r#"{"backcut": 1, "title": "Überspielt \"é\" 🏀", "court": "nba",
    "x-note": {"seen":  [1, null, "a\nb"]},
    "players": {"1": {"at": "top", "ball": true}, "2": {"at": "left wing", "x-shirt": 14}},
    "beats": [{"actions": [{"who": 1, "do": "pass", "to": 2}]}]}"#;

fn set() -> Set {
    document::read(SET.as_bytes()).unwrap()
}

fn code(link: &str) -> &'static str {
    match read(link) {
        Ok(_) => "opened",
        Err(faults) => faults.list.first().map_or("", |f| f.code),
    }
}

/// A link whose checksum holds, whatever is in it.
fn forged(mut bytes: Vec<u8>) -> String {
    let check = checksum(&bytes);
    bytes.extend(check.to_be_bytes());
    [LEAD, &text::encode(&bytes)].concat()
}

#[test]
fn own_fields_and_foreign_letters_come_back() {
    let set = set();
    let link = write(&set, &View::default()).unwrap();
    let back = read(&link).unwrap();
    assert_eq!(back.text, document::write(&set).into_bytes());
    assert_eq!(document::read(&back.text).unwrap().extras, set.extras);
    assert_eq!(set.extras.len(), 2);
}

#[test]
fn a_link_is_found_in_a_whole_address_and_over_broken_lines() {
    let link = write(&set(), &View::default()).unwrap();
    let text = read(&link).unwrap().text;
    let (first, second) = link.split_at(30);
    for written in [
        format!("https://club.example/a?b=c#{link}"),
        format!("#{link}"),
        format!("  {first}\r\n {second}\n"),
        format!("#my-embed&{link}&utm=x"),
        format!("#{link}&t=1%2C2"),
    ] {
        assert_eq!(read(&written).unwrap().text, text, "{written}");
    }
}

#[test]
fn every_cut_is_told() {
    let link = write(&set(), &View::default()).unwrap();
    for end in 0..link.len() {
        let expected = match end {
            0..4 => "no-link",
            4..6 => "link-version",
            _ => "link-damaged",
        };
        assert_eq!(code(&link[..end]), expected, "{end}");
    }
}

#[test]
fn every_changed_letter_is_told() {
    let link = write(&set(), &View::default()).unwrap();
    for at in 0..link.len() {
        for letter in ["A", "z", "0", "-", "_", ".", "=", "é", "\u{0}"] {
            let changed = [&link[..at], letter, &link[at + 1..]].concat();
            assert!(changed == link || code(&changed) != "opened", "{changed}");
        }
    }
}

#[test]
fn neighbours_exchanged_and_another_letter_case_are_told() {
    let link = write(&set(), &View::default()).unwrap();
    let letters = link.as_bytes();
    for at in LEAD.len()..letters.len() - 1 {
        let mut changed = letters.to_vec();
        changed.swap(at, at + 1);
        let changed = String::from_utf8(changed).unwrap();
        assert!(changed == link || code(&changed) == "link-damaged");
    }
    assert_eq!(code(&link.to_lowercase()), "link-damaged");
}

#[test]
fn what_is_no_link_is_told_by_name() {
    let link = write(&set(), &View::default()).unwrap();
    let letters = link.strip_prefix(LEAD).unwrap();
    let long = "A".repeat(LIMITS.characters);
    for (written, expected) in [
        ("", "no-link"),
        ("https://club.example/set.json", "no-link"),
        ("#t=3", "no-link"),
        ("#set=", "link-version"),
        ("#set=1.", "link-damaged"),
        (&format!("#set=2.{letters}"), "link-version"),
        (&format!("#set=1.{letters}."), "link-letter"),
        (&format!("#set=1.{letters}&t=soon"), "link-view"),
        (&format!("#set=1.{long}"), "link-too-long"),
    ] {
        assert_eq!(code(written), expected, "{written}");
    }
    for written in ["", "#set=2.A", "#set=1.*", "#set=1.AAAA", "#set=1.AAAAAAAA"] {
        let told = read(written).unwrap_err().list[0].to_string();
        assert!(
            told.contains(". Copy it again") && told.contains(". ["),
            "{told}"
        );
    }
    let faults = read("#set=1.AB C*D").unwrap_err();
    assert_eq!(
        faults.list[0].place.column, 10,
        "behind the #, blanks not counted"
    );
}

#[test]
fn a_forged_length_is_refused_before_anything_is_made() {
    for bytes in [
        vec![0xff, 0xff, 0xff, 0xff],
        vec![0xff, 0xff, 0x7f],
        vec![0x81, 0x80, 0x04],
        vec![],
        vec![0x80],
    ] {
        assert_eq!(code(&forged(bytes.clone())), "link-too-large", "{bytes:?}");
    }
    assert_eq!(length(&[0x80, 0x80, 0x04]), Some((LIMITS.bytes, &[][..])));
}

#[test]
fn a_set_too_large_for_a_link_is_refused() {
    let mut set = set();
    set.points = vec!["word ".repeat(400); 33];
    assert!(document::write(&set).len() > LIMITS.bytes);
    let refused = write(&set, &View::default()).unwrap_err();
    assert_eq!(refused.list[0].code, "link-too-large");
}

#[test]
fn times_are_read_as_the_published_examples_mean_them() {
    // W3C Media Fragments URI 1.0, section 4.2.1, and its test cases of the temporal dimension.
    let read = |text: &str| View::read(text).map(|v| (v.from, v.until)).ok();
    for (text, expected) in [
        ("t=10,20", Some((Some(10.0), Some(20.0)))),
        ("t=,20", Some((None, Some(20.0)))),
        ("t=10", Some((Some(10.0), None))),
        ("t=npt:10,20", Some((Some(10.0), Some(20.0)))),
        ("t=3.4,6", Some((Some(3.4), Some(6.0)))),
        ("t=20,10", None),
        ("t=10,10", None),
        ("t=10,", None),
        ("t=", None),
        ("t=-3", None),
        ("t=1e2", None),
        ("t=3..4", None),
    ] {
        assert_eq!(read(text), expected, "{text}");
    }
}

#[test]
fn a_view_tells_all_that_it_cannot_read() {
    let faults = View::read("beat=0&read=1.x&follow=6&coverage=zone&speed=0&paused=7&own=1");
    let faults = faults.unwrap_err();
    assert_eq!(faults.list.len(), 6, "{faults}");
    assert!(faults.list.iter().all(|f| f.code == "link-view"));
    assert!(faults.list[0].to_string().contains("beat=0"));
}

fn views() -> impl Strategy<Value = View> {
    let thousandths = || 0..3_600_000_u32;
    let seconds = |n: u32| f64::from(n) / 1000.0;
    let span = (thousandths(), 1..1000_u32, 0..4_u8).prop_map(move |(from, more, which)| {
        let until = seconds(from.min(3_500_000) + more);
        let from = seconds(from.min(3_500_000));
        (
            (which & 1 == 1).then_some(from),
            (which & 2 == 2).then_some(until),
        )
    });
    let coverage = prop::option::of(0..Coverage::TABLE.len());
    let rest = (
        any::<[bool; 5]>(),
        coverage,
        prop::option::of(1..16_000_u32),
    );
    let beat = prop::option::of(1..=u16::MAX);
    (span, beat, list(1..=u16::MAX, 0..4), rest, any::<bool>()).prop_map(
        move |((from, until), beat, read, (follow, coverage, speed), paused)| View {
            from,
            until,
            beat,
            read,
            follow,
            coverage: coverage.map(|n| Coverage::TABLE[n].0),
            speed: speed.map(seconds),
            paused,
        },
    )
}

proptest! {
    #[test]
    fn prop_a_view_comes_back(view in views()) {
        prop_assert_eq!(View::read(&view.write()).unwrap(), view);
    }

    #[test]
    fn prop_any_text_is_a_fault_or_a_view(text in "(t|read|follow|speed|beat)?=?\\PC{0,40}") {
        if let Err(faults) = View::read(&text) {
            prop_assert!(!faults.list.is_empty());
        }
        prop_assert_ne!(code(&text), "opened");
    }
}

proptest! {
    // Each case codes a set, and this build is not optimised.
    #![proptest_config(ProptestConfig::with_cases(12))]

    #[test]
    fn prop_a_set_comes_back(numbers in list(any::<u16>(), 0..200), view in views()) {
        let set = document::read(made::set(&numbers).as_bytes()).unwrap();
        let back = read(&write(&set, &view).unwrap()).unwrap();
        prop_assert_eq!(back.text, document::write(&set).into_bytes());
        prop_assert_eq!(back.view, view);
    }

    #[test]
    fn prop_any_bytes_come_back(bytes in list(any::<u8>(), 0..600)) {
        let mut model = model::Model::new();
        let coded = coder::encode(&mut model.clone(), &bytes);
        prop_assert_eq!(coder::decode(&mut model, &coded, bytes.len()), bytes);
    }

    #[test]
    fn prop_a_forged_link_is_a_text_or_a_fault(
        length in 0..3000_u16,
        rest in list(any::<u8>(), 0..60),
    ) {
        let mut bytes = vec![(length & 127) as u8 | 128, (length >> 7) as u8];
        bytes.extend(rest);
        let link = read(&forged(bytes)).unwrap();
        prop_assert_eq!(link.text.len(), usize::from(length));
        let _ = document::read(&link.text);
    }
}
