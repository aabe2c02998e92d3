//! Links: how long they are, against a general compressor; and that old ones open for ever.
//!
//! `tests/links/v1` holds links with the texts they must open to. They are never made anew: a change
//! that breaks one has broken every link that people have sent. `BLESS=1` adds those of sets that
//! have none yet.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test stops at what it cannot read"
)]

use backcut::document;
use backcut::link::{self, View};
use backcut::set::{Coverage, Set};
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

/// A link that mail and chat programs pass on whole, characters. Common practice, no source.
const MOST: usize = 2000;
/// What the long set takes, with a margin: more would mean that the model has become worse.
const LONG_SET: usize = 1400;

fn here() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).to_owned()
}

fn sets_in(folder: &str) -> Vec<(String, Set)> {
    let mut paths: Vec<PathBuf> = fs::read_dir(here().join(folder))
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|e| e == "json"))
        .collect();
    paths.sort();
    let set = |path: &PathBuf| {
        let name = path.file_stem().unwrap().to_str().unwrap().to_owned();
        (name, document::read(&fs::read(path).unwrap()).unwrap())
    };
    paths.iter().map(set).collect()
}

/// Every demo set, and those of `links`.
fn all() -> Vec<(String, Set)> {
    let mut sets = sets_in("../web-demo/sets");
    sets.extend(sets_in("links"));
    assert_eq!(sets.len(), 10);
    sets
}

/// A view that asks for everything.
fn view() -> View {
    View {
        from: Some(12.345),
        until: Some(14.0),
        beat: Some(3),
        read: vec![2, 1],
        follow: [true, false, false, true, false],
        coverage: Some(Coverage::WeakSideTag),
        speed: Some(0.25),
        paused: true,
    }
}

/// Bytes of `text` by Brotli (RFC 7932) at its best.
fn brotli(text: &str) -> usize {
    let mut out = Vec::new();
    let mut writer = brotli::CompressorWriter::new(&mut out, 4096, 11, 22);
    writer.write_all(text.as_bytes()).unwrap();
    drop(writer);
    out.len()
}

/// `text` without the blanks and line breaks that mean nothing.
fn tight(text: &str) -> String {
    let (mut quoted, mut escaped) = (false, false);
    let keep = |c: &char| {
        match c {
            _ if escaped => escaped = false,
            '\\' => escaped = quoted,
            '"' => quoted = !quoted,
            _ => {}
        }
        quoted || !c.is_ascii_whitespace()
    };
    text.chars().filter(keep).collect()
}

#[test]
fn every_set_fits_in_a_link_that_is_passed_on_whole() {
    for (name, set) in all() {
        let link = link::write(&set, &view()).unwrap();
        let length = "https://club.example/playbook/sets/#".len() + link.len();
        assert!(length <= MOST, "{name}: {length}");
        let back = link::read(&link).unwrap();
        assert_eq!(back.text, document::write(&set).into_bytes(), "{name}");
        assert_eq!(back.view, view());
    }
}

#[test]
fn eight_beats_forty_actions_and_three_reads_fit_in_1400_characters() {
    let sets = all();
    let (_, set) = sets.iter().find(|(name, _)| name == "ferry-bell").unwrap();
    assert_eq!((set.beats.len(), set.reads.len()), (8, 3));
    assert_eq!(set.actions().count(), 40);
    let link = link::write(set, &View::default()).unwrap();
    assert!(link.len() <= LONG_SET, "{}", link.len());
}

#[test]
fn a_link_is_shorter_than_by_a_general_compressor() {
    for (name, set) in all() {
        let link = link::write(&set, &View::default()).unwrap();
        // Three bytes in four letters; its lead, length and checksum are counted against it.
        let ours = link.len() * 3 / 4;
        let theirs = brotli(&tight(&document::write(&set)));
        // A third is gained where it is a set of the game, less for the one of foreign words.
        assert!(ours < theirs, "{name}: {ours} bytes, Brotli {theirs}");
        if name != "foreign" {
            assert!(
                ours * 3 < theirs * 2,
                "{name}: {ours} bytes, Brotli {theirs}"
            );
        }
    }
}

#[test]
fn links_that_were_sent_open_for_ever() {
    let folder = here().join("links/v1");
    if std::env::var_os("BLESS").is_some() {
        for (name, set) in all() {
            let path = folder.join(name).with_extension("link");
            if !path.exists() {
                fs::write(&path, link::write(&set, &view()).unwrap() + "\n").unwrap();
                fs::write(path.with_extension("txt"), document::write(&set)).unwrap();
            }
        }
    }
    let mut opened = 0;
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.extension().is_some_and(|e| e == "link") {
            let link = link::read(&fs::read_to_string(&path).unwrap()).unwrap();
            let text = fs::read(path.with_extension("txt")).unwrap();
            assert!(link.text == text, "{}", path.display());
            assert_eq!(link.view, view(), "{}", path.display());
            opened += 1;
        }
    }
    assert!(opened >= 10, "{opened}");
}
