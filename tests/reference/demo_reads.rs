//! Every read of the demo sets, and every read inside one: what a defence may not know before it is
//! made.
//!
//! Common practice, no source: a defender reacts to what the offence does, not to what it is about to
//! do instead.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    missing_docs,
    reason = "tests"
)]

use backcut::defence::{Defence, STEPS};
use backcut::findings::Settings;
use backcut::play::{Branched, Options, Play};
use backcut::set::{Condition, Coverage, Directive, PlayerId, Read};
use std::fs;
use std::path::{Path, PathBuf};

/// A branch of a demo set and the line that it leaves.
struct Forked {
    name: String,
    line: Play,
    /// The same line of a file that tells a defender to do what the read asks for.
    told: Play,
    branch: Branched,
}

/// Paths to all reads of a set, those inside others after them.
fn paths(reads: &[Read], at: &[usize], out: &mut Vec<Vec<usize>>) {
    for (i, read) in reads.iter().enumerate() {
        let path = [at, &[i]].concat();
        out.push(path.clone());
        paths(&read.reads, &path, out);
    }
}

fn files() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../web-demo/sets");
    let mut files: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .map(|e| e.unwrap().path())
        .filter(|p| p.extension().is_some_and(|e| e == "json"))
        .collect();
    files.sort();
    files
}

fn all() -> Vec<Forked> {
    let mut out = Vec::new();
    for file in files() {
        let play = Play::open(&fs::read(&file).unwrap(), &Options::default()).unwrap();
        let mut found = Vec::new();
        paths(&play.set().reads, &[], &mut found);
        for path in found {
            let (_, before) = path.split_last().unwrap();
            let stem = file.file_stem().unwrap().to_str().unwrap();
            out.push(Forked {
                name: format!("{stem} {path:?}"),
                line: play.branch(before).unwrap().play,
                told: telling(&play, &path).branch(before).unwrap().play,
                branch: play.branch(&path).unwrap(),
            });
        }
    }
    assert!(out.len() >= 13, "{} reads", out.len());
    out
}

/// The set with an instruction to do what the read at `path` asks for, where one can be given.
fn telling(play: &Play, path: &[usize]) -> Play {
    let mut set = play.set().clone();
    let read = set.read(path).unwrap();
    if let Condition::Does { who, does, side } = read.condition {
        let order = Directive {
            action: read.at.action.clone(),
            who,
            does,
            side,
        };
        set.defence.on.push(order);
    }
    Play::of(set, &Options::default()).unwrap()
}

/// The bits of all five at one step.
fn bits(defence: &Defence, step: u32) -> Vec<u64> {
    let t = f64::from(step) / f64::from(STEPS);
    let of = |who| {
        let s = defence.state(who, t).unwrap_or_default();
        let man = u64::from(defence.man_of(who, t).number());
        [s.x, s.y, s.facing, s.vx, s.vy]
            .map(f64::to_bits)
            .into_iter()
            .chain([man])
    };
    PlayerId::ALL.into_iter().flat_map(of).collect()
}

#[test]
fn no_defender_knows_a_read_before_it_is_made() {
    let mut differ = 0;
    for forked in all() {
        let Forked { name, line, .. } = &forked;
        let (branch, at) = (&forked.branch.play, *forked.branch.forks.last().unwrap());
        let steps = (at * f64::from(STEPS) + 1e-6) as u32;
        for (coverage, ..) in Coverage::TABLE {
            let [plain, told, made] = [line, &forked.told, branch].map(|p| p.defence(coverage));
            let alike = |a: &Defence| (0..=steps).all(|step| bits(a, step) == bits(&made, step));
            // Who is told does so from before the fork, and that is all there is to know.
            let before = [&plain, &told].into_iter().find(|a| alike(a));
            let before =
                before.unwrap_or_else(|| panic!("{name}, {coverage:?}: known before {at}"));
            differ += u32::from(before != &plain);
            let events = |d: &Defence| {
                let events = d.events().iter();
                let events = events.filter(|e| e.t < at - 0.5);
                events.map(|e| format!("{e:?}")).collect::<Vec<_>>()
            };
            assert_eq!(events(before), events(&made), "{name}, {coverage:?}");
        }
    }
    assert!(differ > 20, "told {differ} times");
}

#[test]
fn what_a_read_answers_is_seen_on_its_line() {
    for file in files() {
        let play = Play::open(&fs::read(&file).unwrap(), &Options::default()).unwrap();
        let lines = play.lines().unwrap();
        for tried in lines.answer(Coverage::Chase).tried {
            let read = play.set().read(&tried.path).unwrap();
            // Nobody can be told a coverage.
            let tells = matches!(read.condition, Condition::Does { .. });
            assert!(!tells || tried.shown() || tried.told, "{file:?}: {tried:?}");
        }
    }
}

#[test]
fn every_read_is_defended_in_the_end() {
    for Forked {
        name, line, branch, ..
    } in all()
    {
        let ends = branch.play.timeline().duration();
        let differ = Coverage::TABLE.iter().any(|(coverage, ..)| {
            let [a, b] = [&line, &branch.play].map(|p| p.defence(*coverage));
            let step = (ends * f64::from(STEPS)) as u32;
            bits(&a, step) != bits(&b, step)
        });
        assert!(differ, "{name}: the five take no notice");
    }
}

#[test]
fn no_defender_leaps_when_a_read_is_made() {
    for Forked { name, branch, .. } in all() {
        for (coverage, ..) in Coverage::TABLE {
            let defence = branch.play.defence(coverage);
            let dt = 1.0 / f64::from(STEPS);
            let first = (branch.forks[0] / dt) as u32;
            for (who, step) in PlayerId::ALL
                .into_iter()
                .flat_map(|w| (first..first + 90).map(move |s| (w, s)))
            {
                let [a, b] = [0, 1].map(|i| defence.state(who, f64::from(step + i) * dt));
                let (Some(a), Some(b)) = (a, b) else { continue };
                let top = branch.play.timeline().limits(who).v_max;
                // A sweep of touching bodies may add a little.
                let went = (b.x - a.x).hypot(b.y - a.y) / dt;
                assert!(
                    went < top + 4.0,
                    "{name}, {coverage:?}: X{who:?} at {went} m/s"
                );
            }
        }
    }
}

#[test]
fn what_is_found_on_a_branch_has_no_cure() {
    let settings = Settings::default();
    let found = |play: &Play| {
        let five = play.defence(Coverage::Chase);
        let mut all = play.findings(&settings);
        all.extend(play.findings_against(&five, &settings));
        all
    };
    let all: Vec<_> = all().iter().flat_map(|f| found(&f.branch.play)).collect();
    assert!(!all.is_empty());
    assert!(all.iter().all(|f| f.cure.is_none()));
}
