//! "Did you mean": the allowed word nearest to the one written.

use alloc::vec::Vec;

/// The nearest of `allowed` to `word` by edit distance (optimal string alignment), or `None` where
/// more than a third of the letters would have to change.
///
/// ```
/// assert_eq!(backcut::spelling::nearest("left wnig", ["left wing", "left slot"]), Some("left wing"));
/// assert_eq!(backcut::spelling::nearest("sauna", ["left wing", "left slot"]), None);
/// ```
#[must_use]
pub fn nearest<'a>(word: &str, allowed: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    // A long word is never a typing slip, and the table below must stay small.
    if word.len() > 64 {
        return None;
    }
    allowed
        .into_iter()
        .map(|a| (edits(word, a), a))
        .filter(|(d, a)| d * 3 <= word.chars().count().max(a.chars().count()))
        .min_by_key(|(d, _)| *d)
        .map(|(_, a)| a)
}

/// Whether two words are the same but for letter case (of the letters a–z), a hyphen for a space,
/// and space around the first: how a word of a set file is compared with those that are known.
///
/// ```
/// assert!(backcut::spelling::same_word(" Pin_Down", "pin-down"));
/// assert!(!backcut::spelling::same_word("pin downs", "pin-down"));
/// ```
#[must_use]
pub fn same_word(written: &str, known: &str) -> bool {
    let plain = |byte: u8| match byte {
        b'-' | b'_' => b' ',
        byte => byte.to_ascii_lowercase(),
    };
    let written = written.trim_ascii().bytes().map(plain);
    written.eq(known.bytes().map(plain))
}

fn edits(a: &str, b: &str) -> usize {
    let a: Vec<char> = a.chars().map(|c| c.to_ascii_lowercase()).collect();
    let b: Vec<char> = b.chars().map(|c| c.to_ascii_lowercase()).collect();
    let mut before: Vec<usize> = Vec::new();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, ca) in a.iter().enumerate() {
        let mut next = alloc::vec![i + 1];
        for (j, cb) in b.iter().enumerate() {
            let at = |r: &[usize], k: usize| r.get(k).copied().unwrap_or(usize::MAX - 1);
            let mut d = (at(&row, j) + usize::from(ca != cb))
                .min(at(&row, j + 1) + 1)
                .min(at(&next, j) + 1);
            let swapped = i > 0 && j > 0 && a.get(i - 1) == Some(cb) && b.get(j - 1) == Some(ca);
            if swapped {
                d = d.min(at(&before, j - 1) + 1);
            }
            next.push(d);
        }
        before = core::mem::replace(&mut row, next);
    }
    row.last().copied().unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use std::string::String;

    #[test]
    fn one_slip_of_each_sort_costs_one() {
        for slip in ["wing", "wng", "wiing", "wong", "wnig", "WING"] {
            let cost = usize::from(slip.to_lowercase() != "wing");
            assert_eq!(edits(slip, "wing"), cost, "{slip}");
        }
        assert_eq!(edits("", "wing"), 4);
        assert_eq!(edits("wing", ""), 4);
    }

    #[test]
    fn nearest_takes_the_nearest_and_the_first_of_equals() {
        assert_eq!(nearest("slto", ["slot", "spot"]), Some("slot"));
        assert_eq!(nearest("elbaw", ["elbow", "elbiw"]), Some("elbow"));
    }

    #[test]
    fn nearest_is_silent_where_too_much_would_change() {
        assert_eq!(nearest("cut", ["top"]), None);
        assert_eq!(nearest("", ["top"]), None);
        assert_eq!(nearest("top", []), None);
        assert_eq!(nearest(&"top ".repeat(50), ["top"]), None);
    }

    #[test]
    fn a_third_of_the_letters_may_change_and_no_more() {
        assert_eq!(nearest("abcxxx", ["abcdef"]), None);
        assert_eq!(nearest("abcdxx", ["abcdef"]), Some("abcdef"));
    }

    proptest! {
        #[test]
        fn prop_distance_has_two_directions_and_a_zero(a in "[a-dé]{0,9}", b in "[a-dé]{0,9}") {
            prop_assert_eq!(edits(&a, &b), edits(&b, &a));
            prop_assert_eq!(edits(&a, &b) == 0, a == b);
            prop_assert!(edits(&a, &b) <= a.chars().count().max(b.chars().count()));
        }

        #[test]
        fn prop_a_letter_too_many_is_forgiven(word in "[a-z]{3,12}", at in 0..12_usize) {
            let cut = at.min(word.len());
            let typed: String = [&word[..cut], "q", &word[cut..]].concat();
            prop_assert_eq!(nearest(&typed, [word.as_str()]), Some(word.as_str()));
        }
    }
}
