//! Text to set to text, and texts that are nearly sets.

use super::made;
use crate::document::{read, write};
use crate::fault::Place;
use crate::set::{Beat, Read, Set};
use proptest::collection::vec;
use proptest::prelude::*;
use std::format;

/// The set without its places in the file, which differ from text to text.
fn placeless(mut set: Set) -> Set {
    fn beats(beats: &mut [Beat]) {
        for beat in beats {
            beat.place = Place::default();
            for action in &mut beat.actions {
                action.place = Place::default();
                for tie in &mut action.ties {
                    tie.place = Place::default();
                }
            }
        }
    }
    fn reads(list: &mut [Read]) {
        for read in list {
            read.place = Place::default();
            beats(&mut read.beats);
            reads(&mut read.reads);
        }
    }
    beats(&mut set.beats);
    reads(&mut set.reads);
    set
}

proptest! {
    #[test]
    fn prop_a_written_set_reads_back_the_same(numbers in vec(any::<u16>(), 0..300)) {
        let text = made::set(&numbers);
        let set = read(text.as_bytes()).map_err(|f| TestCaseError::fail(format!("{f}\n{text}")))?;
        let written = write(&set);
        let again = read(written.as_bytes())
            .map_err(|f| TestCaseError::fail(format!("{f}\n{written}")))?;
        prop_assert_eq!(write(&again), written);
        prop_assert_eq!(placeless(again), placeless(set));
    }

    #[test]
    fn prop_any_bytes_give_faults_or_a_set(bytes in vec(any::<u8>(), 0..200)) {
        if let Err(faults) = read(&bytes) {
            prop_assert!(!faults.list.is_empty());
        }
    }

    #[test]
    fn prop_a_damaged_set_gives_faults_or_a_set(
        numbers in vec(any::<u16>(), 0..200),
        damage in vec((any::<prop::sample::Index>(), 0..4_u8, any::<prop::sample::Index>()), 1..6),
    ) {
        const SCRAPS: [&str; 12] = [
            "null", "\"", "{", "]", ",", "-1e400", "99", "\"x\"", "[[[]]]", "{\"id\": 4}", "true", "\u{7f}",
        ];
        let mut text = made::set(&numbers).into_bytes();
        for (at, how, scrap) in damage {
            if text.is_empty() {
                break;
            }
            let at = at.index(text.len());
            let end = (at + 1 + usize::from(how) * 3).min(text.len());
            match how {
                0 => drop(text.drain(at..end)),
                1 => drop(text.splice(at..end, scrap.get(&SCRAPS).bytes())),
                2 => drop(text.splice(at..at, scrap.get(&SCRAPS).bytes())),
                _ => text[at] ^= 1 << (at % 8),
            }
        }
        match read(&text) {
            Ok(set) => prop_assert!(read(write(&set).as_bytes()).is_ok()),
            Err(faults) => {
                prop_assert!(!faults.list.is_empty());
                let lines = text.iter().filter(|b| **b == b'\n').count();
                for fault in &faults.list {
                    prop_assert!((1..=lines + 1).contains(&(fault.place.line as usize)));
                    prop_assert!(fault.place.column >= 1);
                    prop_assert!((1..400).contains(&std::string::ToString::to_string(&fault.found).len()));
                }
            }
        }
    }
}
