//! What the demo sets move and draw like, to the last bit: a change of either is seen before it is
//! published.
//!
//! `golden/<feature>/<case>` is what is expected: `frames` in whole millimetres and degrees, a line
//! an instant, so that a difference can be read; `pictures` as SVG; `words` and `walks` (where a walk
//! through a set stops, and why) in each language; `hashes.txt` a hash over the bits of all frames at
//! 60 a second, `reads.txt` the same of every read, `defences.txt` one over every defence; the wasm
//! build is held against the first and the last of these too. `BLESS=1` makes them anew. A failure
//! leaves what was expected, what was got and the difference in the target folder and says where.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test stops at what it cannot read"
)]

use backcut::court::RuleSet;
use backcut::findings::Settings;
use backcut::play::{Options, Play};
use backcut::scene::{Flag, StripView, Verdict};
use backcut::set::{Coverage, PlayerId};
use backcut::svg::{Palette, paint};
use backcut::timeline::{Frame, Timeline};
use backcut::voice::{Units, Voice};
use backcut::words;
use std::fmt::Write;
use std::fs;
use std::path::{Path, PathBuf};

/// Instants of a set that are written down, a second.
const WRITTEN_FPS: u32 = 2;
/// Film speed: no action falls between two frames.
const HASHED_FPS: u32 = 60;
/// CSS pixels.
const WIDTH: f64 = 640.0;
/// Differing lines that are told.
const TOLD: usize = 20;

/// What is expected under a name.
struct Case {
    /// Below `golden`.
    file: String,
    text: String,
}

fn golden() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("golden")
}

fn demo_sets() -> Vec<(String, Vec<u8>)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../web-demo/sets");
    let mut sets: Vec<(String, Vec<u8>)> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|e| e == "json"))
        .map(|path| {
            let name = path.file_stem().unwrap().to_str().unwrap().to_owned();
            (name, fs::read(path).unwrap())
        })
        .collect();
    sets.sort();
    sets
}

fn open(text: &[u8], options: Options) -> Play {
    Play::open(text, &options).unwrap()
}

fn demo_set(name: &str, options: Options) -> Play {
    let sets = demo_sets();
    let (_, text) = sets.iter().find(|(n, _)| n == name).unwrap();
    open(text, options)
}

/// Whole units of a thousandth; no negative zero.
fn thousandths(x: f64) -> i64 {
    (x * 1000.0).round() as i64
}

/// A line an instant: seconds; of each player millimetres across and along the court and degrees of
/// facing; of the ball millimetres across, along and up, and who has it.
fn frames(timeline: &Timeline) -> String {
    let mut out = format!(
        "{{ \"duration_ms\": {},\n  \"frames\": [",
        thousandths(timeline.duration())
    );
    let mut frame = Frame::default();
    let count = (timeline.duration() * f64::from(WRITTEN_FPS)) as u32;
    for i in 0..=count {
        timeline.frame(f64::from(i) / f64::from(WRITTEN_FPS), &mut frame);
        let comma = if i == 0 { "" } else { "," };
        write!(out, "{comma}\n    {{\"t\": {}", frame.t).unwrap();
        for who in PlayerId::ALL {
            if let Some(p) = frame.players[who.index()] {
                let facing = p.facing.to_degrees().round() as i64;
                let (x, y) = (thousandths(p.x), thousandths(p.y));
                write!(out, ", \"{}\": [{x}, {y}, {facing}]", who.number()).unwrap();
            }
        }
        let b = frame.ball;
        let [x, y, z] = [b.x, b.y, b.z].map(thousandths);
        let holder = b.holder.map_or(0, PlayerId::number);
        write!(out, ", \"ball\": [{x}, {y}, {z}, {holder}]}}").unwrap();
    }
    out.push_str(" ] }\n");
    out
}

fn frame_cases() -> Vec<Case> {
    demo_sets()
        .iter()
        .map(|(name, text)| Case {
            file: format!("frames/{name}.json"),
            text: frames(open(text, Options::default()).timeline()),
        })
        .collect()
}

/// `name, path of the read, frames a second, hash` of every read of the demo sets.
fn read_case() -> Case {
    let mut text = String::new();
    for (name, set) in demo_sets() {
        let play = open(&set, Options::default());
        for read in 0..play.set().reads.len() {
            let branch = play.branch(&[read]).unwrap().play;
            let hash = branch.timeline().hash(HASHED_FPS);
            writeln!(text, "{name} {} {HASHED_FPS} {hash:016x}", read + 1).unwrap();
        }
    }
    Case {
        file: "reads.txt".into(),
        text,
    }
}

/// `name, frames a second, hash, hash of the set mirrored`.
fn hash_case() -> Case {
    let mut text = String::new();
    for (name, set) in demo_sets() {
        let hash = |mirror| {
            let options = Options {
                mirror,
                ..Options::default()
            };
            open(&set, options).timeline().hash(HASHED_FPS)
        };
        let (plain, mirrored) = (hash(false), hash(true));
        writeln!(text, "{name} {HASHED_FPS} {plain:016x} {mirrored:016x}").unwrap();
    }
    Case {
        file: "hashes.txt".to_owned(),
        text,
    }
}

/// `name, coverage, hash` of every coverage a set can meet.
fn defence_case() -> Case {
    let mut text = String::new();
    for (name, set) in demo_sets() {
        let play = open(&set, Options::default());
        for coverage in play.coverages() {
            let hash = play.defence(coverage).hash();
            writeln!(text, "{name} {} {hash:016x}", coverage.name()).unwrap();
        }
    }
    Case {
        file: "defences.txt".to_owned(),
        text,
    }
}

/// A set without its author's words, so that everything is left to the program.
fn wordless(text: &[u8], voice: Voice) -> Play {
    let mut set = backcut::document::read(text).unwrap();
    for beat in &mut set.beats {
        (beat.say, beat.title) = (None, None);
        beat.actions.iter_mut().for_each(|a| a.say = None);
    }
    let options = Options {
        voice,
        ..Options::default()
    };
    Play::of(set, &options).unwrap()
}

/// Everything that is said of a set, a line each.
fn told(play: &Play) -> String {
    let mut lines: Vec<String> = Vec::new();
    for beat in 0..play.set().beats.len() {
        lines.push(format!("{}: {}", play.beat_title(beat), play.caption(beat)));
    }
    let timeline = play.timeline();
    let defence = play.defence(Coverage::default());
    for beat in timeline.beats() {
        lines.push(play.describe_against(&defence, beat.start + 0.4));
    }
    lines.extend(play.cautions().iter().map(|c| (*c).to_owned()));
    let settings = Settings::default();
    let against = play.findings_against(&defence, &settings);
    for finding in play.findings(&settings).iter().chain(&against) {
        let cure = play.cure(finding).unwrap_or_default();
        lines.push(
            format!("{} {cure}", play.finding(finding))
                .trim_end()
                .to_owned(),
        );
    }
    for look in play.looks(&defence) {
        lines.push(words::look(&look, play.set(), play.voice()));
    }
    lines.join("\n") + "\n"
}

fn word_cases() -> Vec<Case> {
    let mut cases = Vec::new();
    for (name, text) in demo_sets() {
        for tag in ["en", "es"] {
            let voice = Voice::new(tag, Units::Courts);
            cases.push(Case {
                file: format!("words/{tag}/{name}.txt"),
                text: told(&wordless(&text, voice)),
            });
        }
    }
    cases
}

/// Where a walk through each set stops, and why.
fn walk_cases() -> Vec<Case> {
    let case = |tag| {
        let options = Options {
            voice: Voice::new(tag, Units::Courts),
            ..Options::default()
        };
        let mut text = String::new();
        for (name, set) in demo_sets() {
            let play = open(&set, options);
            writeln!(text, "{name}").unwrap();
            for stop in play.stops() {
                writeln!(text, "{:6.2} {}", stop.t, play.stop(&stop)).unwrap();
            }
        }
        Case {
            file: format!("walks/{tag}.txt"),
            text,
        }
    };
    Vec::from(["en", "es"].map(case))
}

/// A look, five defenders and flags, as the tool draws them.
fn judged_picture() -> String {
    let play = demo_set("fogbank", Options::default());
    let defence = play.defence(Coverage::Chase);
    let (looks, findings) = (play.looks(&defence), play.findings(&Settings::default()));
    let verdict = Verdict {
        defence: Some(&defence),
        looks: &looks,
        flags: &Flag::of(&findings),
        ..Verdict::default()
    };
    let t = looks.first().map_or(0.0, |l| l.t + 0.1);
    play.poster(Some(&verdict), t, WIDTH, &Palette::light())
}

/// An instant of a walk-through with what is next.
fn ghost_picture() -> String {
    let play = demo_set("turnstile", Options::default());
    let stops = play.stops();
    let next = stops.iter().map(|s| s.t).find(|t| *t > 4.1);
    let verdict = Verdict {
        ghosts: next,
        ..Verdict::default()
    };
    play.poster(Some(&verdict), 4.1, WIDTH, &Palette::light())
}

fn picture_cases() -> Vec<Case> {
    let plain = Options::default();
    let gate = demo_set("turnstile", plain);
    let roll = demo_set("gangway", plain);
    let long = demo_set("breakwater", plain);
    let mut pictures = vec![
        (
            "beat-in-print".to_owned(),
            gate.beat_poster(1, WIDTH, &Palette::print()),
        ),
        (
            "instant-in-the-light".to_owned(),
            roll.poster(None, 3.0, WIDTH, &Palette::light()),
        ),
        ("ghosts".to_owned(), ghost_picture()),
        ("judged".to_owned(), judged_picture()),
        ("strip".to_owned(), {
            let view = StripView {
                width_px: WIDTH,
                holds_up: true,
                ..StripView::default()
            };
            paint(
                &long.strip_scene(None, &view),
                &Palette::light(),
                "Strip",
                "",
            )
        }),
    ];
    for court in RuleSet::ALL {
        let options = Options {
            court: Some(court),
            ..plain
        };
        let play = demo_set("breakwater", options);
        let scene = play.court_scene(&play.view(WIDTH));
        pictures.push((
            format!("court-of-{}", court.name()),
            paint(
                &scene,
                &Palette::light(),
                words::court(court, Voice::ENGLISH),
                "",
            ),
        ));
    }
    pictures
        .into_iter()
        .map(|(name, text)| Case {
            file: format!("pictures/{name}.svg"),
            text,
        })
        .collect()
}

/// Writes `case` down, or holds it against what was written; what differs, if anything does.
fn hold(case: &Case) -> Option<String> {
    let expected_file = golden().join(&case.file);
    if std::env::var_os("BLESS").is_some() {
        fs::create_dir_all(expected_file.parent().unwrap()).unwrap();
        fs::write(expected_file, &case.text).unwrap();
        return None;
    }
    let expected = fs::read_to_string(expected_file).unwrap_or_default();
    if expected == case.text {
        return None;
    }
    let difference = difference(&expected, &case.text);
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join("golden")
        .join(&case.file);
    fs::create_dir_all(&folder).unwrap();
    let parts = [
        ("expected", &expected),
        ("actual", &case.text),
        ("difference", &difference),
    ];
    for (name, text) in parts {
        fs::write(folder.join(name), text).unwrap();
    }
    let told: Vec<&str> = difference.lines().take(TOLD).collect();
    Some(format!(
        "{} ({}):\n{}",
        case.file,
        folder.display(),
        told.join("\n")
    ))
}

/// Line by line: the lines of a case keep their places unless the set grows longer.
fn difference(expected: &str, actual: &str) -> String {
    let (mut left, mut right) = (expected.lines(), actual.lines());
    let mut out = String::new();
    loop {
        let (a, b) = (left.next(), right.next());
        if a.is_none() && b.is_none() {
            return out;
        }
        if a != b {
            for (sign, line) in [('-', a), ('+', b)] {
                if let Some(line) = line {
                    writeln!(out, "{sign} {line}").unwrap();
                }
            }
        }
    }
}

fn hold_all(cases: &[Case]) {
    let wrong: Vec<String> = cases.iter().filter_map(hold).collect();
    assert!(
        wrong.is_empty(),
        "{}\nIf this is meant: BLESS=1 cargo test -p backcut-tests --test golden",
        wrong.join("\n")
    );
}

#[test]
fn demo_sets_move_as_they_did() {
    hold_all(&frame_cases());
}

#[test]
fn demo_sets_move_as_they_did_to_the_last_bit() {
    hold_all(&[hash_case()]);
}

#[test]
fn reads_of_demo_sets_move_as_they_did_to_the_last_bit() {
    hold_all(&[read_case()]);
}

#[test]
fn demo_sets_are_defended_as_they_were_to_the_last_bit() {
    hold_all(&[defence_case()]);
}

#[test]
fn walks_through_the_demo_sets_stop_where_they_did() {
    hold_all(&walk_cases());
}

#[test]
fn pictures_look_as_they_did() {
    hold_all(&picture_cases());
}

#[test]
fn demo_sets_are_told_as_they_were() {
    hold_all(&word_cases());
}

#[test]
fn every_golden_file_belongs_to_a_case() {
    let mut cases = frame_cases();
    cases.push(hash_case());
    cases.push(read_case());
    cases.push(defence_case());
    cases.extend(walk_cases());
    cases.extend(picture_cases());
    cases.extend(word_cases());
    let mut wanted: Vec<PathBuf> = cases.iter().map(|c| golden().join(&c.file)).collect();
    wanted.sort();
    let mut files = Vec::new();
    let mut folders = vec![golden()];
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else {
                files.push(path);
            }
        }
    }
    files.sort();
    // While they are being made anew, those of the other tests may not be there yet.
    if std::env::var_os("BLESS").is_none() {
        assert_eq!(files, wanted);
    }
}
