//! Sets made from a row of random numbers, each valid by the way it is made.

use std::format;
use std::string::{String, ToString};
use std::vec::Vec;

/// Draws from a row of numbers; 0 once it is empty.
pub(super) struct Draw<'a>(pub(super) core::slice::Iter<'a, u16>);

impl Draw<'_> {
    fn below(&mut self, n: usize) -> usize {
        usize::from(self.0.next().copied().unwrap_or(0)) % n
    }

    fn of(&mut self, words: &[&'static str]) -> &'static str {
        words[self.below(words.len())]
    }

    fn maybe(&mut self, text: &str) -> String {
        if self.below(3) == 0 {
            text.to_string()
        } else {
            String::new()
        }
    }
}

const SPOTS: [&str; 6] = [
    "top",
    "left wing",
    "right corner",
    "nail",
    "Left-Elbow",
    "rim",
];

fn place(draw: &mut Draw<'_>, other: usize) -> String {
    match draw.below(4) {
        0 => format!(
            "[{}.{}, {}]",
            draw.below(7),
            draw.below(1000),
            draw.below(12)
        ),
        1 => format!(
            r#"{{"spot": "nail", "dx": -0.{}, "x-why": [1, {{}}]}}"#,
            draw.below(100)
        ),
        2 => format!(
            r#"{{"beside": {other}, "side": "{}"}}"#,
            draw.of(&["left", "right"])
        ),
        _ => format!("\"{}\"", draw.of(&SPOTS)),
    }
}

fn ties(draw: &mut Draw<'_>, names: &[String]) -> String {
    if names.is_empty() || draw.below(2) == 0 {
        return String::new();
    }
    let name = &names[draw.below(names.len())];
    let relation = draw.of(&["after", "with"]);
    match draw.below(4) {
        0 => format!(r#", "{relation}": "{name}""#),
        2 => format!(r#", "{relation}": [{{"x-why": true, "id": "{name}"}}]"#),
        1 => format!(r#", "{relation}": ["{name}", {{"id": "{name}", "edge": "start"}}]"#),
        _ => format!(
            r#", "{relation}": {{"id": "{name}", "lag": -{}.125, "mine": "end"}}"#,
            draw.below(9)
        ),
    }
}

/// A beat; `names` are the ids that can be tied to, `holder` has the ball.
fn beat(draw: &mut Draw<'_>, names: &mut Vec<String>, holder: &mut usize) -> String {
    let mut actions = Vec::new();
    for _ in 0..=draw.below(5) {
        let with = *holder;
        let (a, b) = (with % 5 + 1, (with + 1) % 5 + 1);
        let what = match draw.below(8) {
            0 => {
                let (to, off) = (
                    place(draw, b),
                    draw.maybe(&format!(r#", "off": {{"who": {b}, "x-why": 1}}"#)),
                );
                format!(r#""who": {a}, "do": "cut", "to": {to}{off}"#)
            }
            1 => format!(
                r#""who": {with}, "do": "dribble", "kind": "push", "to": {}"#,
                place(draw, a)
            ),
            2 => format!(
                r#""who": [{a}, {b}], "do": "screen", "kind": "gate", "for": {with}, "at": {}"#,
                place(draw, with)
            ),
            3 => {
                *holder = a;
                format!(r#""who": {with}, "do": "pass", "kind": "bounce", "to": {a}"#)
            }
            4 => {
                *holder = b;
                format!(r#""who": {with}, "do": "handoff", "to": {b}"#)
            }
            5 => format!(
                r#""who": [{with}, {a}], "do": "hold", "takes": {}"#,
                draw.below(61)
            ),
            6 => format!(r#""who": {with}, "do": "fake", "of": "pass", "to": {a}"#),
            _ => format!(
                r#""who": {a}, "do": "cut", "to": "rim", "via": [{}, {{"off": {b}}}], "pace": "jog""#,
                place(draw, b)
            ),
        };
        let tie = ties(draw, names);
        let own =
            draw.maybe(r#", "x-note": "kept \u00e9 \"so\"", "free": true, "say": "a\nb\\\t""#);
        let id = if draw.below(2) == 0 {
            names.push(format!("n{}", names.len()));
            format!(r#""id": "n{}", "#, names.len() - 1)
        } else {
            String::new()
        };
        actions.push(format!("{{{id}{what}{tie}{own}}}"));
    }
    format!(
        r#"{{"title": "beat", "actions": [{}]}}"#,
        actions.join(", ")
    )
}

fn reads(draw: &mut Draw<'_>, names: &[String], depth: usize) -> String {
    if names.is_empty() || depth == 0 || draw.below(2) == 0 {
        return String::new();
    }
    let mut own = names.to_vec();
    let condition = draw.of(&[
        r#"{"coverage": "Trail"}"#,
        r#"{"who": "X3", "does": "goes round", "side": "left"}"#,
        r#"{"who": "x2", "under": 1.25}"#,
        r#"{"lane": "closed", "from": 1, "to": 3}"#,
    ]);
    let at = &names[draw.below(names.len())];
    let beats = beat(draw, &mut own, &mut 1);
    let more = reads(draw, &own, depth - 1);
    format!(
        r#", "reads": [{{"at": {{"id": "{at}", "edge": "end"}}, "by": [1, 2], "if": {condition},
            "beats": [{beats}]{more}}}]"#
    )
}

/// The text of a valid set.
pub(crate) fn set(numbers: &[u16]) -> String {
    let draw = &mut Draw(numbers.iter());
    let mut holder = draw.below(5) + 1;
    let players: Vec<String> = (1..=5)
        .map(|n| {
            let at = place(draw, n % 5 + 1);
            let ball = if n == holder { r#", "ball": true"# } else { "" };
            let more = draw.maybe(r#", "facing": -1.5, "level": "u14", "x-shirt": 12"#);
            format!(r#""{n}": {{"at": {at}{ball}{more}}}"#)
        })
        .collect();
    let mut names = Vec::new();
    let beats: Vec<String> = (0..=draw.below(3))
        .map(|_| beat(draw, &mut names, &mut holder))
        .collect();
    let reads = reads(draw, &names, 3);
    let about = draw.maybe(r#""about": "x", "use": "late", "points": ["p"], "tags": ["a", "b"], "#);
    let defence = match names.first() {
        Some(name) if draw.below(2) == 0 => format!(
            r#", "defence": {{"all": "drop", "on": [{{"id": "{name}", "who": "X1", "does": "sags"}}]}}"#
        ),
        _ => String::new(),
    };
    let slow_to = names.first().map_or("1".to_string(), |name| {
        format!(r#"{{"id": "{name}", "edge": "start"}}"#)
    });
    let film = draw.maybe(r#", "film": [{"t": 0, "film": 3}, {"t": 1, "film": 4.5}]"#);
    let slow = format!(
        r#", "slow": [{{"from": 1, "to": 1, "rate": 0.5}}, {{"from": 1, "to": {slow_to}, "rate": 1}}]"#
    );
    let slow = if draw.below(2) == 0 {
        slow
    } else {
        String::new()
    };
    format!(
        r#"{{"backcut": 1, "title": "Made", {about}"court": "{}", "players": {{{}}}, "x-top": [1.50, "two"],
        "beats": [{}]{reads}{defence}{slow}{film}}}"#,
        draw.of(&["fiba", "nba", "ncaa-men"]),
        players.join(", "),
        beats.join(", "),
    )
}
