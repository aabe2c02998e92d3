//! Which read each coverage makes true in the demo sets.
//!
//! Common practice, no source, for every row: a top-lock is answered behind the back, a defender who
//! goes under by a stop behind the screen, one who steps out by who was left, a tag by a pass to the
//! man whom the tagger left.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    missing_docs,
    reason = "tests"
)]

use backcut::choice::ends;
use backcut::play::{Options, Play};
use backcut::set::{Coverage, Directive};

fn demo(name: &str) -> Play {
    let path = format!(
        "{}/../web-demo/sets/{name}.json",
        env!("CARGO_MANIFEST_DIR")
    );
    let text = std::fs::read(path).unwrap();
    Play::open(&text, &Options::default()).unwrap_or_else(|f| panic!("{f:?}"))
}

/// The title of the line that is decided under each of those coverages.
fn decided(play: &Play, coverage: &str) -> String {
    let coverage = Coverage::parse(coverage).unwrap();
    let path = play.decided(coverage).unwrap().path;
    backcut::words::line(play.set(), &path, play.voice())
}

const DRAWN: &str = "as drawn";

/// A set, a coverage, and the line that the defence decides.
const TABLE: &[(&str, &str, &str)] = &[
    ("gangway", "chase", DRAWN),
    ("gangway", "under", "X2 goes under"),
    ("gangway", "through", "X2 goes under"),
    ("gangway", "top-lock", "X2 denies the first elbow"),
    ("gangway", "switch", DRAWN),
    ("gangway", "show", DRAWN),
    ("lighthouse", "chase", DRAWN),
    ("lighthouse", "under", DRAWN),
    ("lighthouse", "through", DRAWN),
    ("lighthouse", "top-lock", DRAWN),
    ("lighthouse", "switch", DRAWN),
    ("lighthouse", "show", "X5 jumps at 3"),
    ("turnstile", "chase", DRAWN),
    ("turnstile", "under", DRAWN),
    ("turnstile", "through", DRAWN),
    ("turnstile", "top-lock", "X3 stands on top of the screen"),
    ("turnstile", "switch", DRAWN),
    ("turnstile", "show", "X5 jumps out"),
    ("slipway", "chase", "X4 is behind"),
    ("slipway", "under", DRAWN),
    ("slipway", "through", DRAWN),
    ("slipway", "top-lock", "X4 is behind"),
    ("slipway", "switch", "X4 is behind"),
    ("slipway", "show", "X4 is behind"),
    ("breakwater", "over", "X5 is late"),
    ("breakwater", "under", DRAWN),
    ("breakwater", "through", DRAWN),
    ("breakwater", "switch", "They switch everything"),
    ("breakwater", "show", "X5 is late"),
    ("breakwater", "drop", "X5 is late"),
    ("breakwater", "ice", "X5 is late"),
    ("breakwater", "blitz", DRAWN),
    ("breakwater", "weak-side-tag", "They tag 5"),
    ("paper-boats", "chase", DRAWN),
    ("tidepool", "chase", DRAWN),
    ("tidepool", "under", "X2 waits on the low side"),
    ("tidepool", "through", "X2 waits on the low side"),
    ("tidepool", "top-lock", DRAWN),
    ("tidepool", "switch", DRAWN),
    ("tidepool", "show", DRAWN),
];

#[test]
fn each_coverage_decides_its_line() {
    let wrong: Vec<String> = TABLE
        .iter()
        .filter_map(|(set, coverage, line)| {
            let got = decided(&demo(set), coverage);
            (got != *line).then(|| format!("{set}, {coverage}: {got}, not {line}"))
        })
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// A defender who is told to do something in the main line's action makes that read true.
#[test]
fn a_defender_who_is_told_to_decides_it_too() {
    let told = |name: &str, read: usize| {
        let play = demo(name);
        let mut set = play.set().clone();
        let read = set.reads[read].clone();
        let backcut::set::Condition::Does { who, does, side } = read.condition else {
            panic!("{read:?}");
        };
        set.defence.on.push(Directive {
            action: read.at.action,
            who,
            does,
            side,
        });
        decided(&Play::of(set, &Options::default()).unwrap(), "chase")
    };
    assert_eq!(told("turnstile", 0), "X3 goes round the right");
    assert_eq!(told("turnstile", 1), "X5 jumps out");
    assert_eq!(told("turnstile", 2), "X3 stands on top of the screen");
    assert_eq!(told("lighthouse", 0), "X2 sags");
    assert_eq!(told("lighthouse", 1), "X5 jumps at 3");
    assert_eq!(told("gangway", 0), "X2 goes under");
    assert_eq!(told("paper-boats", 0), "X5 sags");
}

#[test]
fn a_tag_leaves_its_man_open() {
    let play = demo("breakwater");
    let lines = play.lines().unwrap();
    let open = |coverage: Coverage| {
        let answer = lines.answer(coverage);
        ends(&answer.tried[0].end.into_iter().collect::<Vec<_>>()).map_or(0.0, |l| l.open)
    };
    let (tagged, stayed) = (open(Coverage::WeakSideTag), open(Coverage::Over));
    assert!(tagged > stayed + 0.3, "{tagged} {stayed}");
}

#[test]
fn what_is_decided_can_be_played_and_begins_as_what_was_seen() {
    for (set, coverage, _) in TABLE {
        let play = demo(set);
        let coverage = Coverage::parse(coverage).unwrap();
        let decided = play.decided(coverage).unwrap();
        let branch = play.branch(&decided.path).unwrap();
        let made: Vec<f64> = decided
            .asked
            .iter()
            .filter(|a| decided.path.starts_with(&a.path))
            .map(|a| a.t)
            .collect();
        assert_eq!(branch.forks, made, "{set}");
        let Some(fork) = made.last() else { continue };
        // The five of the branch are, until then, those whom the read was made of.
        let (before, after) = (play.defence(coverage), branch.play.defence(coverage));
        for who in backcut::set::PlayerId::ALL {
            assert_eq!(before.state(who, *fork), after.state(who, *fork), "{set}");
        }
    }
}
