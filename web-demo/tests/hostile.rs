//! Bad input, whatever it is, is told as a named fault by the library and by the tool: no panic,
//! no endless work, nothing on standard output but faults.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    missing_docs,
    reason = "tests"
)]

mod runs;

use backcut::play::{Options, Play};
use runs::feed;
use serde_json::Value;

/// A sound set, to spoil.
const SOUND: &str = r#"{ "backcut": 1, "title": "Sound",
  "players": { "1": {"at": "top", "ball": true}, "2": {"at": "left wing"}, "3": {"at": "right wing"} },
  "beats": [ { "actions": [
    { "id": "swing", "who": 1, "do": "pass", "to": 2 },
    { "id": "down", "who": 1, "do": "screen", "for": 3, "at": "right elbow" },
    { "id": "curl", "who": 3, "do": "cut", "off": 1, "to": "nail" } ] } ] }"#;

/// [`SOUND`] with one thing in it changed.
fn spoilt(this: &str, into: &str) -> Vec<u8> {
    assert!(SOUND.contains(this), "{this}");
    SOUND.replacen(this, into, 1).into_bytes()
}

/// What is fed, and the code of a fault it must have.
fn cases() -> Vec<(&'static str, Vec<u8>, &'static str)> {
    let deep = |open: &str| open.repeat(200_000).into_bytes();
    let places = |each: &str, by: usize| vec![each; by].join(",");
    vec![
        ("an empty file", Vec::new(), "empty-file"),
        ("blanks", b" \n\t\r\n ".to_vec(), "empty-file"),
        ("50 MB of blanks", vec![b' '; 50 << 20], "file-too-large"),
        ("50 MB of digits", vec![b'7'; 50 << 20], "file-too-large"),
        ("200,000 open brackets", deep("["), "too-deep"),
        ("200,000 open objects", deep(r#"{"a":"#), "file-too-large"),
        (
            "20,000 open objects",
            r#"{"a":"#.repeat(20_000).into_bytes(),
            "too-deep",
        ),
        ("a zero byte", vec![0], "not-json"),
        ("bytes that are no text", vec![0xff, 0xfe, 0x00], "not-utf8"),
        ("half a letter", b"{\"title\": \"\xc3".to_vec(), "not-utf8"),
        ("half a pair", spoilt("Sound", r"\ud800"), "not-json"),
        ("words", b"pass to 2".to_vec(), "not-json"),
        ("a list", b"[]".to_vec(), "wrong-type"),
        ("not a number", b"NaN".to_vec(), "not-json"),
        (
            "a number too large",
            spoilt("\"top\"", "[1e999, 0]"),
            "number-too-large",
        ),
        (
            "a version too large",
            spoilt("\"backcut\": 1", "\"backcut\": 1e999"),
            "number-too-large",
        ),
        (
            "a place far away",
            spoilt("\"top\"", "[1e300, 0]"),
            "off-court",
        ),
        (
            "a key twice",
            spoilt(
                "\"title\": \"Sound\",",
                "\"title\": \"Sound\", \"title\": \"Two\",",
            ),
            "duplicate-field",
        ),
        (
            "a newer version",
            spoilt("\"backcut\": 1", "\"backcut\": 2"),
            "newer-version",
        ),
        (
            "an unknown spot",
            spoilt("\"left wing\"", "\"left wnig\""),
            "unknown-spot",
        ),
        (
            "an unknown kind",
            spoilt("\"do\": \"cut\"", "\"do\": \"cut\", \"kind\": \"crul\""),
            "unknown-kind",
        ),
        (
            "an unknown field",
            spoilt("\"do\": \"cut\"", "\"do\": \"cut\", \"speed\": 3"),
            "unknown-field",
        ),
        (
            "two balls",
            spoilt(
                "{\"at\": \"left wing\"}",
                "{\"at\": \"left wing\", \"ball\": true}",
            ),
            "two-balls",
        ),
        (
            "a pass without the ball",
            spoilt(
                "\"who\": 1, \"do\": \"pass\", \"to\": 2",
                "\"who\": 3, \"do\": \"pass\", \"to\": 2",
            ),
            "pass-without-ball",
        ),
        (
            "a pass to oneself",
            spoilt("\"to\": 2", "\"to\": 1"),
            "pass-to-oneself",
        ),
        (
            "a screen for nobody",
            spoilt("\"for\": 3, ", ""),
            "screen-for-nobody",
        ),
        (
            "a tie to nothing",
            spoilt("\"to\": \"nail\"", "\"to\": \"nail\", \"after\": \"swnig\""),
            "unknown-action",
        ),
        (
            "ties that contradict",
            SOUND
                .replace("\"do\": \"pass\"", "\"after\": \"curl\", \"do\": \"pass\"")
                .replace("\"to\": \"nail\"", "\"to\": \"nail\", \"after\": \"swing\"")
                .into_bytes(),
            "contradictory-waits",
        ),
        (
            "a player off the court",
            spoilt("\"left wing\"", "[30, 3]"),
            "off-court",
        ),
        (
            "an unknown player",
            spoilt("\"to\": 2", "\"to\": 5"),
            "player-not-in-set",
        ),
        (
            "a sixth player",
            spoilt("\"to\": 2", "\"to\": 6"),
            "no-such-player",
        ),
        (
            "an id twice",
            spoilt("\"id\": \"down\"", "\"id\": \"swing\""),
            "duplicate-id",
        ),
        (
            "too many actions",
            spoilt(
                "{ \"id\": \"swing\"",
                &format!(
                    "{}{{ \"id\": \"swing\"",
                    r#"{"who": 2, "do": "hold"},"#.repeat(5_000)
                ),
            ),
            "too-many-actions",
        ),
        (
            "too many ways",
            spoilt(
                "\"off\": 1",
                &format!("\"via\": [{}]", places("\"top\"", 20_000)),
            ),
            "list-too-long",
        ),
    ]
}

#[test]
fn what_is_spoilt_was_sound() {
    let play = Play::open(SOUND.as_bytes(), &Options::default());
    assert!(play.is_ok(), "{}", play.unwrap_err());
}

#[test]
fn the_library_tells_each_by_its_code() {
    let mut wrong = Vec::new();
    for (name, input, code) in cases() {
        let codes: Vec<&str> = match Play::open(&input, &Options::default()) {
            Ok(_) => Vec::new(),
            Err(faults) => faults.list.iter().map(|f| f.code).collect(),
        };
        if !codes.contains(&code) {
            wrong.push(format!("{name}: {codes:?}, not {code}"));
        }
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn the_tool_tells_each_and_writes_nothing_else() {
    for (name, input, code) in cases() {
        for line in ["time - --json", "frames - --fps 1", "draw - --at 1"] {
            let output = feed(line, &input);
            let told = String::from_utf8(output.stderr).unwrap();
            assert_eq!(output.status.code(), Some(1), "{name}, {line}: {told}");
            assert!(output.stdout.is_empty(), "{name}, {line}");
            assert!(told.contains(code), "{name}, {line}: {told}");
            assert!(!told.contains("panicked"), "{name}, {line}: {told}");
        }
        let output = feed("check - --json", &input);
        assert_eq!(output.status.code(), Some(1), "{name}");
        let told: Value = serde_json::from_slice(&output.stdout).unwrap();
        assert!(told.to_string().contains(code), "{name}: {told}");
    }
}

/// Whatever is cut off a sound file, or put into it: faults, or a sound file still.
#[test]
fn no_part_of_a_sound_set_is_a_crash() {
    for end in 0..SOUND.len() {
        let part = SOUND.as_bytes().get(..end).unwrap();
        assert!(Play::open(part, &Options::default()).is_err(), "{end}");
    }
    for at in 0..SOUND.len() {
        for byte in [b'"', b'{', b']', b'-', b'9', b'\\', 0xff] {
            let mut spoilt = SOUND.as_bytes().to_vec();
            if let Some(place) = spoilt.get_mut(at) {
                *place = byte;
            }
            let _ = Play::open(&spoilt, &Options::default());
        }
    }
}
