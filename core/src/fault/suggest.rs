//! "Did you mean": the allowed word nearest to the one written.

use alloc::vec::Vec;

/// The nearest of `allowed` to `word` by edit distance (optimal string alignment), or `None` where
/// more than a third of the letters would have to change.
///
/// ```
/// assert_eq!(backcut::fault::nearest("left wnig", ["left wing", "left slot"]), Some("left wing"));
/// assert_eq!(backcut::fault::nearest("sauna", ["left wing", "left slot"]), None);
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

fn edits(a: &str, b: &str) -> usize {
    let a: Vec<char> = a.chars().flat_map(char::to_lowercase).collect();
    let b: Vec<char> = b.chars().flat_map(char::to_lowercase).collect();
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
