//! The demo sets against the times at which their author saw them: durations and order.
//!
//! Common practice, no source: the expected times were worked out by hand with a stop-watch model
//! of an adult club player (top of a run 4.5 m/s, of a sprint 6 m/s; youth a fifth slower) on a
//! FIBA court, before the program existed. That model opens beats by eye, so its clock is not
//! ours: what must agree is how long each thing takes, and what comes before what.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    missing_docs,
    reason = "tests"
)]

use backcut::play::{Options, Play};
use backcut::set::{ActionId, Edge, PlayerId};
use backcut::timeline::TimedAction;

/// Seconds by which a duration may differ from the hand-worked one.
const TOLERANCE: f64 = 0.3;

/// Ends that lie further apart than this by hand must come in the same order here.
const CLEARLY: f64 = 0.75;

/// From one instant of an action to another.
struct Row {
    set: &'static str,
    /// Beat and place in it, counted from 1.
    action: (u16, u16),
    who: u8,
    from: Edge,
    to: Edge,
    /// By hand, seconds.
    start: f64,
    end: f64,
}

const fn row(
    set: &'static str,
    action: (u16, u16),
    who: u8,
    (from, to): (Edge, Edge),
    (start, end): (f64, f64),
) -> Row {
    Row {
        set,
        action,
        who,
        from,
        to,
        start,
        end,
    }
}

/// The whole of a move.
const MOVE: (Edge, Edge) = (Edge::Start, Edge::End);
/// The steps before a cut goes.
const SELL: (Edge, Edge) = (Edge::Start, Edge::Plant);
/// The cut itself.
const CUT: (Edge, Edge) = (Edge::Plant, Edge::End);
/// The way to a screen.
const TO_SCREEN: (Edge, Edge) = (Edge::Start, Edge::Set);
/// The ball in the air.
const FLIGHT: (Edge, Edge) = (Edge::Release, Edge::Catch);
/// From the plant until level with the first screener.
const TO_PASS_BY: (Edge, Edge) = (Edge::Plant, Edge::PassBy);

#[rustfmt::skip]
const TABLE: &[Row] = &[
    row("paper-boats", (1, 1), 1, FLIGHT,     (0.6, 1.3)),
    row("paper-boats", (1, 2), 1, SELL,       (0.9, 1.8)),
    row("paper-boats", (1, 2), 1, CUT,        (1.8, 3.7)),
    row("paper-boats", (1, 3), 1, MOVE,       (3.7, 6.4)),
    row("paper-boats", (2, 1), 3, MOVE,       (2.7, 5.1)),
    row("paper-boats", (2, 2), 5, MOVE,       (3.1, 5.2)),
    row("paper-boats", (2, 3), 2, FLIGHT,     (5.2, 6.0)),
    row("paper-boats", (3, 1), 3, MOVE,       (6.4, 7.9)),
    row("paper-boats", (3, 2), 5, SELL,       (6.4, 7.2)),
    row("paper-boats", (3, 2), 5, CUT,        (7.3, 9.8)),
    row("paper-boats", (3, 5), 3, FLIGHT,     (8.2, 8.9)),

    row("lighthouse",  (1, 1), 4, MOVE,       (0.2, 1.1)),
    row("lighthouse",  (1, 2), 1, FLIGHT,     (0.9, 1.2)),
    row("lighthouse",  (2, 1), 5, TO_SCREEN,  (0.9, 2.5)),
    row("lighthouse",  (2, 2), 1, TO_SCREEN,  (1.3, 3.2)),
    row("lighthouse",  (2, 3), 3, TO_PASS_BY, (2.6, 3.8)),
    row("lighthouse",  (2, 3), 3, CUT,        (2.6, 5.6)),
    row("lighthouse",  (2, 4), 2, MOVE,       (1.5, 3.6)),
    row("lighthouse",  (3, 1), 2, CUT,        (3.6, 5.8)),
    row("lighthouse",  (3, 2), 4, FLIGHT,     (4.3, 4.9)),

    row("turnstile",   (1, 1), 1, MOVE,       (0.2, 1.7)),
    row("turnstile",   (1, 3), 2, MOVE,       (0.3, 3.2)),
    row("turnstile",   (1, 4), 1, FLIGHT,     (2.7, 3.2)),
    row("turnstile",   (1, 5), 1, MOVE,       (3.3, 5.1)),
    row("turnstile",   (2, 2), 4, TO_SCREEN,  (3.4, 4.6)),
    row("turnstile",   (2, 2), 5, TO_SCREEN,  (3.4, 4.6)),
    row("turnstile",   (2, 3), 2, MOVE,       (3.6, 5.1)),
    row("turnstile",   (2, 1), 3, MOVE,       (3.7, 4.8)),
    row("turnstile",   (2, 4), 3, TO_PASS_BY, (4.9, 6.35)),
    row("turnstile",   (2, 4), 3, CUT,        (4.9, 7.3)),
    row("turnstile",   (3, 1), 2, FLIGHT,     (6.8, 7.3)),

    row("gangway",     (1, 1), 3, MOVE,       (0.2, 2.2)),
    row("gangway",     (1, 2), 1, MOVE,       (0.3, 1.1)),
    row("gangway",     (2, 1), 2, CUT,        (1.4, 4.7)),
    row("gangway",     (2, 2), 1, FLIGHT,     (4.0, 4.7)),
    row("gangway",     (3, 1), 4, MOVE,       (3.8, 6.0)),
    row("gangway",     (3, 2), 5, MOVE,       (3.8, 5.6)),
    row("gangway",     (3, 3), 2, FLIGHT,     (5.7, 6.3)),

    row("breakwater",  (1, 1), 1, MOVE,       (0.2, 1.1)),
    row("breakwater",  (1, 2), 5, MOVE,       (0.4, 1.65)),
    row("breakwater",  (2, 1), 2, TO_SCREEN,  (1.75, 3.3)),
    row("breakwater",  (2, 2), 1, MOVE,       (2.7, 4.6)),
    row("breakwater",  (2, 3), 5, CUT,        (2.8, 4.9)),
    row("breakwater",  (2, 4), 2, MOVE,       (4.0, 5.5)),

    row("tidepool",    (1, 1), 1, MOVE,       (0.2, 2.5)),
    row("tidepool",    (1, 2), 3, FLIGHT,     (2.2, 2.75)),
    row("tidepool",    (1, 3), 1, FLIGHT,     (3.35, 3.9)),
    row("tidepool",    (2, 1), 2, SELL,       (2.65, 3.6)),
    row("tidepool",    (2, 1), 2, TO_PASS_BY, (3.6, 5.05)),
    row("tidepool",    (2, 1), 2, CUT,        (3.6, 6.5)),
    row("tidepool",    (2, 2), 3, MOVE,       (3.05, 5.6)),
    row("tidepool",    (3, 1), 1, TO_SCREEN,  (3.6, 5.7)),
    row("tidepool",    (3, 2), 5, CUT,        (5.8, 7.8)),
    row("tidepool",    (3, 3), 1, MOVE,       (6.4, 8.1)),
    row("tidepool",    (3, 4), 4, FLIGHT,     (7.3, 7.9)),

    row("slipway",     (1, 1), 2, TO_SCREEN,  (0.2, 1.6)),
    row("slipway",     (1, 2), 4, TO_PASS_BY, (1.7, 2.57)),
    row("slipway",     (1, 2), 4, CUT,        (1.7, 3.9)),
    row("slipway",     (2, 1), 5, TO_SCREEN,  (1.0, 2.3)),
    row("slipway",     (2, 2), 2, CUT,        (2.7, 4.9)),
    row("slipway",     (2, 3), 5, MOVE,       (3.5, 4.5)),
    row("slipway",     (2, 4), 3, FLIGHT,     (4.4, 5.0)),

    row("fogbank",     (1, 1), 1, MOVE,       (0.3, 1.8)),
    row("fogbank",     (1, 2), 4, TO_SCREEN,  (0.9, 2.4)),
    row("fogbank",     (1, 3), 2, MOVE,       (0.6, 3.3)),
    row("fogbank",     (1, 4), 1, FLIGHT,     (1.6, 2.4)),
    row("fogbank",     (2, 1), 3, MOVE,       (1.9, 5.1)),
    row("fogbank",     (2, 2), 4, MOVE,       (2.5, 5.1)),
    row("fogbank",     (2, 3), 1, MOVE,       (2.4, 4.4)),
];

fn open(set: &str) -> Play {
    let path = format!("{}/../web-demo/sets/{set}.json", env!("CARGO_MANIFEST_DIR"));
    Play::open(&std::fs::read(path).unwrap(), &Options::default()).unwrap()
}

fn find<'a>(play: &'a Play, row: &Row) -> &'a TimedAction {
    let id = ActionId {
        beat: row.action.0 - 1,
        action: row.action.1 - 1,
    };
    let who = PlayerId::new(row.who).unwrap();
    play.timeline()
        .actions()
        .iter()
        .find(|a| a.id == id && a.who == who)
        .unwrap()
}

/// The sets of the table, each once.
fn sets() -> Vec<&'static str> {
    let mut names: Vec<&str> = TABLE.iter().map(|r| r.set).collect();
    names.dedup();
    names
}

#[test]
fn every_action_takes_as_long_as_by_hand() {
    let mut wrong = Vec::new();
    for set in sets() {
        let play = open(set);
        for row in TABLE.iter().filter(|r| r.set == set) {
            let action = find(&play, row);
            let (Some(from), Some(to)) = (action.at(row.from), action.at(row.to)) else {
                wrong.push(format!("{set} {:?}: no such instant", row.action));
                continue;
            };
            let (takes, expected) = (to - from, row.end - row.start);
            if (takes - expected).abs() > TOLERANCE {
                wrong.push(format!(
                    "{set} {:?} of {} from {} to {}: {takes:.2} s, by hand {expected:.2} s",
                    row.action,
                    row.who,
                    row.from.name(),
                    row.to.name()
                ));
            }
        }
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn things_come_in_the_order_in_which_they_came_by_hand() {
    let mut wrong = Vec::new();
    for set in sets() {
        let play = open(set);
        let rows: Vec<&Row> = TABLE.iter().filter(|r| r.set == set).collect();
        for a in &rows {
            for b in rows.iter().filter(|b| a.end + CLEARLY < b.end) {
                let (first, second) = (find(&play, a).at(a.to), find(&play, b).at(b.to));
                if first > second {
                    wrong.push(format!(
                        "{set}: {:?} {} at {:.2} should come before {:?} {} at {:.2}",
                        a.action,
                        a.to.name(),
                        first.unwrap_or_default(),
                        b.action,
                        b.to.name(),
                        second.unwrap_or_default()
                    ));
                }
            }
        }
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn every_demo_set_stands_in_the_table() {
    let folder = format!("{}/../web-demo/sets", env!("CARGO_MANIFEST_DIR"));
    let mut files: Vec<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|f| {
            f.unwrap()
                .file_name()
                .into_string()
                .unwrap()
                .replace(".json", "")
        })
        .collect();
    files.sort();
    let mut table = sets();
    table.sort_unstable();
    assert_eq!(files, table);
}
