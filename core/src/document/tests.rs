use super::read;
use std::string::ToString;

#[test]
fn smoke() {
    let text = r#"{ "backcut": 1, "title": "Weathervane", "court": "fiba", "level": "adult",
      "players": { "1": {"at": "top", "ball": true}, "2": {"at": "left wing"}, "3": {"at": "right block"},
                   "4": {"at": "left elbow"}, "5": {"at": "right elbow"} },
      "beats": [
        { "title": "Everyone looks at the gate", "say": "3 sprints and calls it. 1 sells the pass.",
          "actions": [
            { "who": 1, "do": "dribble", "kind": "push", "to": "left slot" },
            { "who": [4, 5], "do": "screen", "kind": "gate", "for": 3, "at": "nail" },
            { "id": "loud", "who": 3, "do": "cut", "off": [4, 5], "to": "top", "pace": "sprint" },
            { "who": 1, "do": "fake", "of": "pass", "to": 3, "with": {"id": "loud", "edge": "pass-by"} } ] },
        { "title": "The quiet side goes",
          "actions": [
            { "who": 2, "do": "cut", "kind": "backdoor", "to": "rim", "with": {"id": "loud", "edge": "pass-by", "lag": -0.2, "mine": "plant"} },
            { "who": 1, "do": "pass", "kind": "bounce", "to": 2 }, { "who": 2, "do": "shot", "kind": "layup" } ] } ],
      "reads": [
        { "title": "X3 goes round", "at": {"id": "loud", "edge": "cue"}, "by": [3, 1], "if": {"who": "X3", "does": "goes round", "side": "left"},
          "beats": [ { "actions": [ { "who": 3, "do": "cut", "kind": "fade", "to": "right slot" }, { "who": 1, "do": "pass", "to": 3 } ] } ] } ] }"#;
    match read(text.as_bytes()) {
        Ok(set) => assert_eq!(set.beats.len(), 2),
        Err(f) => panic!("{}", f.to_string()),
    }
}
