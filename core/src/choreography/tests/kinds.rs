//! Every kind can be written; standing team mates and ties.

use super::*;

#[test]
fn nobody_runs_through_a_team_mate_who_stands() {
    let play = open(
        r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}, "4": {"at": [0, 4.2]}"#,
        r#"{"who": 2, "do": "cut", "to": "right wing"}"#,
    );
    let near = nearest(&play, 2, 4, 0.0, play.timeline().duration());
    assert!(near > 0.55, "{near}");
}

#[test]
fn ties_land_where_they_are_written() {
    let play = open(
        FIVE,
        r#"{"who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.9, 2.6]},
           {"id": "loud", "who": 3, "do": "cut", "off": 5, "to": "right slot"},
           {"who": 4, "do": "cut", "kind": "v-cut", "to": "left wing",
            "with": {"id": "loud", "edge": "pass-by", "of": 5, "lag": -0.25, "mine": "plant"}}"#,
    );
    let by = row(&play, (0, 1)).at(Edge::PassBy).unwrap();
    let plant = row(&play, (0, 2)).at(Edge::Plant).unwrap();
    assert!((plant - by + 0.25).abs() < 2e-6, "{plant} {by}");
}

#[test]
fn contradictory_ties_name_each_other_and_what_is_missing() {
    let text = r#"{"backcut": 1, "title": "T", "players": {"1": {"at": "top", "ball": true}, "2": {"at": "left wing"}},
        "beats": [{"actions": [
        {"id": "a", "who": 1, "do": "dribble", "to": "right slot", "after": {"id": "b", "lag": 0.5}},
        {"id": "b", "who": 2, "do": "cut", "to": "left corner", "after": {"id": "a", "lag": 0.5}}]}]}"#;
    let faults = Play::open(text.as_bytes(), &Options::default()).unwrap_err();
    let fault = &faults.list[0];
    assert_eq!(fault.code, "contradictory-waits");
    let places: Vec<&str> = [&fault.place]
        .into_iter()
        .chain(&fault.related)
        .map(|p| p.pointer.as_str())
        .collect();
    assert_eq!(
        places,
        ["/beats/0/actions/0/after", "/beats/0/actions/1/after"]
    );
    assert!(
        std::string::ToString::to_string(&fault.found).contains(" s short"),
        "{}",
        fault.found
    );
}

#[test]
fn every_kind_of_move_can_be_written_and_moves() {
    use crate::set::{Kind, Verb};
    for kind in Kind::table()
        .iter()
        .filter(|k| matches!(k.verb, Verb::Cut | Verb::Dribble))
    {
        let (who, verb) = if kind.verb == Verb::Cut {
            (2, "cut")
        } else {
            (1, "dribble")
        };
        let play = open(
            FIVE,
            &format!(
                r#"{{"who": {who}, "do": "{verb}", "kind": "{}", "to": "left slot"}}"#,
                kind.name
            ),
        );
        let action = row(&play, (0, 0));
        assert!(action.end > action.start + 0.5, "{}", kind.name);
        assert!(
            distance(at(&play, who, action.end), at(&play, who, 0.0)) > 1.0,
            "{}",
            kind.name
        );
        // No loops: the way is never much longer than the way there.
        let mut way = 0.0;
        let mut t = action.start;
        while t < action.end {
            way += distance(at(&play, who, t), at(&play, who, t + 0.02));
            t += 0.02;
        }
        let straight = distance(at(&play, who, action.start), at(&play, who, action.end));
        assert!(
            way < 1.45 * straight + 3.2,
            "{}: {way} for {straight}",
            kind.name
        );
    }
}

#[test]
fn every_kind_of_screen_pass_and_shot_can_be_written() {
    use crate::set::{Kind, Verb};
    for kind in Kind::table() {
        let actions = match kind.verb {
            Verb::Screen if matches!(kind.name, "gate" | "double") => format!(
                r#"{{"who": [4, 5], "do": "screen", "kind": "{}", "for": 3, "at": [3.4, 3.4]}}, {{"who": 3, "do": "cut", "off": [4, 5], "to": "top"}}"#,
                kind.name
            ),
            Verb::Screen => format!(
                r#"{{"who": 5, "do": "screen", "kind": "{}", "for": 3}}, {{"who": 3, "do": "cut", "off": 5, "to": "right slot"}}"#,
                kind.name
            ),
            Verb::Pass => format!(
                r#"{{"who": 1, "do": "pass", "kind": "{}", "to": 2}}"#,
                kind.name
            ),
            Verb::Handoff => format!(
                r#"{{"who": 1, "do": "handoff", "kind": "{}", "to": 2}}"#,
                kind.name
            ),
            Verb::Shot => format!(r#"{{"who": 1, "do": "shot", "kind": "{}"}}"#, kind.name),
            Verb::Hold | Verb::Fake => {
                let of = if kind.verb == Verb::Fake {
                    r#", "of": "pass""#
                } else {
                    ""
                };
                let verb = if kind.verb == Verb::Fake {
                    "fake"
                } else {
                    "hold"
                };
                format!(
                    r#"{{"who": 1, "do": "{verb}", "kind": "{}"{of}}}"#,
                    kind.name
                )
            }
            Verb::Cut | Verb::Dribble => continue,
        };
        let play = open(FIVE, &actions);
        assert!(play.timeline().duration().is_finite() && play.timeline().duration() < 20.0);
    }
}
