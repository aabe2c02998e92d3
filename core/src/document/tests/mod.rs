//! Reading, refusing, writing: what neither a fault's case file nor a doc example shows.

mod json;
pub(crate) mod made;
mod round;

use super::{LIMITS, parse_json, read};
use crate::fault::Faults;
use crate::set::{
    ActionId, Edge, Kind, OffSide, PlayerId, Scope, SetPlace, Target, TieRelation, Verb,
};
use std::format;
use std::string::String;
use std::vec::Vec;

/// A set of three players with these actions in its only beat, and more fields behind.
fn set_of(actions: &str, more: &str) -> String {
    format!(
        r#"{{"backcut": 1, "title": "Keep away", "players": {{
            "1": {{"at": "top", "ball": true}}, "2": {{"at": "left wing"}},
            "3": {{"at": "right corner"}}}},
            "beats": [{{"actions": [{actions}]}}]{more}}}"#
    )
}

fn codes(text: &str) -> Vec<&'static str> {
    match read(text.as_bytes()) {
        Ok(_) => Vec::new(),
        Err(faults) => faults.list.iter().map(|f| f.code).collect(),
    }
}

fn refused(bytes: &[u8]) -> Faults {
    read(bytes).expect_err("no set")
}

fn player(n: u8) -> PlayerId {
    PlayerId::new(n).unwrap()
}

#[test]
fn every_field_of_an_action_arrives() {
    let text = set_of(
        r#"{"id": "wall", "who": 2, "do": "screen", "kind": "PIN DOWN", "for": [3], "at": [1, 2.5]},
           {"id": "go", "who": 3, "do": "cut", "off": [{"who": 2, "side": "under"}], "pace": "sprint",
            "via": ["nail", {"off": 2, "side": "over"}], "to": {"spot": "left-wing", "dx": 0.5},
            "takes": 1.5, "free": true, "say": "Go!", "side": "over",
            "after": "wall", "with": [{"id": "wall", "edge": "set", "of": 2, "lag": -0.25, "mine": "plant"}]},
           {"who": 1, "do": "fake", "of": "pass", "to": 3}"#,
        "",
    );
    let set = read(text.as_bytes()).unwrap();
    let [screen, cut, fake] = set.beats[0].actions.as_slice() else {
        panic!("three actions")
    };
    assert_eq!(screen.kind, Some(Kind::PinDown));
    assert_eq!(screen.for_whom, [player(3)]);
    assert_eq!(screen.at, Some(SetPlace::Point { x: 1.0, y: 2.5 }));
    assert_eq!(cut.off[0].side, Some(OffSide::Under));
    assert_eq!((cut.via.len(), cut.takes, cut.free), (2, Some(1.5), true));
    assert!(matches!(
        cut.to,
        Some(Target::Place(SetPlace::Spot {
            dx: 0.5,
            dy: 0.0,
            ..
        }))
    ));
    let [after, with] = cut.ties.as_slice() else {
        panic!("two ties")
    };
    assert_eq!(
        (after.relation, after.edge),
        (TieRelation::After, Edge::End)
    );
    assert_eq!(
        (with.edge, with.mine, with.lag),
        (Edge::Set, Edge::Plant, -0.25)
    );
    assert_eq!(with.of, Some(player(2)));
    assert_eq!(with.to, ActionId { beat: 0, action: 0 });
    assert_eq!(with.place.pointer, "/beats/0/actions/1/with/0");
    assert_eq!(fake.of, Some(Verb::Pass));
}

#[test]
fn a_read_ties_to_itself_to_the_read_around_it_and_to_the_main_line() {
    let inner = r#"[{"at": {"id": "slip", "edge": "end"}, "by": 3, "if": {"coverage": "switch"},
        "beats": [{"actions": [{"id": "lob", "who": 2, "do": "cut", "to": "rim", "after": ["go", "slip", "pop"]},
                               {"id": "pop", "who": 3, "do": "cut", "to": "top"}]}]}]"#;
    let text = set_of(
        r#"{"id": "go", "who": 3, "do": "cut", "to": "top"}"#,
        &format!(
            r#", "reads": [{{"at": {{"id": "go", "edge": "start"}}, "by": [1, 3],
            "if": {{"who": "X3", "under": 1.2}},
            "beats": [{{"actions": [{{"id": "slip", "who": 2, "do": "cut", "to": "rim"}}]}}],
            "reads": {inner}}}]"#
        ),
    );
    let set = read(text.as_bytes()).unwrap();
    assert!(set.reads[0].at.main.is_some());
    let inner = &set.reads[0].reads[0];
    assert_eq!((inner.at.action.as_str(), inner.at.main), ("slip", None));
    let scopes: Vec<Scope> = inner.beats[0].actions[0]
        .ties
        .iter()
        .map(|t| t.scope)
        .collect();
    assert_eq!(scopes, [Scope::Main, Scope::Read(1), Scope::Read(0)]);
}

#[test]
fn siblings_among_reads_may_use_a_name_again() {
    let read = r#"{"at": {"id": "go", "edge": "end"}, "by": 3, "if": {"coverage": "switch"},
        "beats": [{"actions": [{"id": "again", "who": 2, "do": "cut", "to": "rim"}]}]}"#;
    let go = r#"{"id": "go", "who": 3, "do": "cut", "to": "top"}"#;
    assert_eq!(
        codes(&set_of(go, &format!(r#", "reads": [{read}, {read}]"#))),
        [""; 0]
    );
    let taken = read.replace("again", "go");
    assert_eq!(
        codes(&set_of(go, &format!(r#", "reads": [{taken}]"#))),
        ["duplicate-id"]
    );
}

#[test]
fn holders_follow_passes_and_handoffs_until_the_shot() {
    let text = set_of(
        r#"{"who": 1, "do": "pass", "to": 2}, {"who": 2, "do": "handoff", "kind": "keep", "to": 3},
           {"who": 2, "do": "handoff", "to": 3}, {"who": 3, "do": "shot"},
           {"who": 1, "do": "cut", "to": "rim"}"#,
        "",
    );
    let set = read(text.as_bytes()).unwrap();
    let holders: Vec<_> = set
        .holders()
        .into_iter()
        .map(|(_, h)| h.map(PlayerId::number))
        .collect();
    assert_eq!(holders, [Some(1), Some(2), Some(2), Some(3), None]);
}

#[test]
fn what_is_nearly_wrong_is_right() {
    let near_misses = [
        r#"{"who": 1, "do": "hold", "takes": 60}"#,
        r#"{"who": 1.0, "do": "pass", "to": 2e0}"#,
        r#"{"who": 1, "do": "shot"}, {"who": 1, "do": "cut", "to": "rim"}"#,
        r#"{"who": [1, 2], "do": "hold"}"#,
        r#"{"who": [1, 2], "do": "screen", "kind": "elevator", "for": 3}"#,
        r#"{"who": 3, "do": "cut", "kind": "backdoor"}"#,
        r#"{"who": 3, "do": "cut", "to": "right sideline throw-in"}"#,
        r#"{"who": 3, "do": "cut", "to": "Right-Wing", "x-any": {"to": 99}}"#,
        r#"{"who": 3, "do": "cut", "to": [7.5, 0]}"#,
        r#"{"who": 2, "do": "fake", "of": "cut"}"#,
    ];
    for actions in near_misses {
        assert_eq!(codes(&set_of(actions, "")), [""; 0], "{actions}");
    }
}

#[test]
fn what_hangs_on_an_unreadable_part_is_not_judged() {
    // Who has the ball cannot be said: "ball" is misspelt, and "loud" may be what "idd" names.
    let text = set_of(
        r#"{"idd": "loud", "who": 3, "do": "cut", "to": "top"},
           {"who": 2, "do": "pass", "to": 3, "after": "loud"}"#,
        "",
    );
    assert_eq!(codes(&text), ["unknown-field"]);
    // A misspelt spot casts no doubt on the ball.
    let text = set_of(
        r#"{"who": 3, "do": "cut", "to": "tpo"}, {"who": 2, "do": "pass", "to": 3}"#,
        "",
    );
    assert_eq!(codes(&text), ["unknown-spot", "pass-without-ball"]);
}

#[test]
fn faults_are_capped_and_counted() {
    let bad = r#"{"who": 9, "do": "pass", "to": 2}"#;
    let text = set_of(&std::vec![bad; 70].join(","), "");
    let faults = refused(text.as_bytes());
    assert_eq!((faults.list.len(), faults.more), (Faults::CAP, 20));
}

#[test]
fn huge_files_are_refused_before_they_are_read() {
    let mut text = set_of(r#"{"who": 1, "do": "pass", "to": 2}"#, "").into_bytes();
    text.resize(LIMITS.bytes, b' ');
    assert!(read(&text).is_ok());
    text.push(b' ');
    assert_eq!(refused(&text).list[0].code, "file-too-large");
    assert_eq!(
        refused(&std::vec![b'['; 50_000_000]).list[0].code,
        "file-too-large"
    );
}

#[test]
fn deep_nesting_is_refused_without_recursion() {
    assert_eq!(refused(&[b'['; 200_000]).list[0].code, "too-deep");
    let deep = |n: usize| format!("{}{}", "[".repeat(n), "]".repeat(n));
    assert!(parse_json(deep(LIMITS.depth).as_bytes()).is_ok());
    let faults = parse_json(deep(LIMITS.depth + 1).as_bytes()).unwrap_err();
    assert_eq!(faults.list[0].code, "too-deep");
}

#[test]
fn two_hundred_actions_are_enough() {
    let hold = r#"{"who": 1, "do": "hold"}"#;
    assert_eq!(codes(&set_of(&std::vec![hold; 200].join(","), "")), [""; 0]);
    let beat = format!(r#"{{"actions": [{}]}}"#, std::vec![hold; 100].join(","));
    let text = set_of(hold, "").replace("\"beats\": [", &format!("\"beats\": [{beat}, {beat}, "));
    assert_eq!(codes(&text), ["too-many-actions"]);
}

#[test]
fn a_group_has_at_most_a_hundred_fields() {
    let group = |n: usize| {
        let fields: Vec<String> = (0..n).map(|i| format!("\"x-{i}\": {i}")).collect();
        set_of(
            r#"{"who": 1, "do": "hold"}"#,
            &format!(", \"x-own\": {{{}}}", fields.join(", ")),
        )
    };
    assert_eq!(codes(&group(LIMITS.fields)), [""; 0]);
    assert_eq!(codes(&group(LIMITS.fields + 1)), ["too-many-fields"]);
}

#[test]
fn texts_and_lists_have_a_longest_length() {
    let title =
        |n: usize| set_of(r#"{"who": 1, "do": "hold"}"#, "").replace("Keep away", &"ä".repeat(n));
    assert_eq!(codes(&title(200)), [""; 0]);
    assert_eq!(codes(&title(201)), ["text-too-long"]);
    let id = |n: usize| {
        set_of(
            &format!(r#"{{"id": "{}", "who": 1, "do": "hold"}}"#, "a".repeat(n)),
            "",
        )
    };
    assert_eq!(codes(&id(64)), [""; 0]);
    assert_eq!(codes(&id(65)), ["text-too-long"]);
    let tags = |n: usize| {
        let tags = std::vec!["\"b\""; n].join(",");
        set_of(
            r#"{"who": 1, "do": "hold"}"#,
            &format!(r#", "tags": [{tags}]"#),
        )
    };
    assert_eq!(codes(&tags(50)), [""; 0]);
    assert_eq!(codes(&tags(51)), ["list-too-long"]);
}

#[test]
fn bytes_that_are_no_text_are_refused_where_they_stand() {
    let faults = refused(b"{\n \"title\": \"\xff\"");
    assert_eq!(faults.list[0].code, "not-utf8");
    assert_eq!(
        (faults.list[0].place.line, faults.list[0].place.column),
        (2, 12)
    );
}

#[test]
fn a_byte_order_mark_takes_no_column() {
    let faults = refused("\u{feff}[1]".as_bytes());
    assert_eq!(faults.list[0].code, "wrong-type");
    assert_eq!(
        (faults.list[0].place.line, faults.list[0].place.column),
        (1, 1)
    );
}

#[test]
fn columns_count_characters_and_pointers_escape_names() {
    let text = set_of(r#"{"who": 1, "do": "hold"}"#, ",\n\"ä\": 1, \"a/b~\": 2");
    let faults = refused(text.as_bytes());
    let places: Vec<_> = faults
        .list
        .iter()
        .map(|f| (f.place.column, f.place.pointer.as_str()))
        .collect();
    assert_eq!(places, [(1, "/ä"), (9, "/a~1b~0")]);
}
