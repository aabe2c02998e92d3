//! Putting short lists in order.

use core::cmp::Ordering;

/// Sorts by insertion: stable, and a fraction of the code of the library's sort, which would be
/// there once for each sort of list. For lists as long as a set has actions, mostly in order.
///
/// ```
/// use backcut::math::sort_short;
/// let mut list = [(2, 'a'), (1, 'b'), (2, 'c'), (0, 'd')];
/// sort_short(&mut list, |a, b| a.0.cmp(&b.0));
/// assert_eq!(list, [(0, 'd'), (1, 'b'), (2, 'a'), (2, 'c')]);
/// ```
pub fn sort_short<T>(list: &mut [T], compare: impl Fn(&T, &T) -> Ordering) {
    for end in 1..list.len() {
        let mut at = end;
        while let Some([before, here]) = at.checked_sub(1).and_then(|i| list.get(i..=at)) {
            if compare(before, here) != Ordering::Greater {
                break;
            }
            list.swap(at - 1, at);
            at -= 1;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::sort_short;
    use proptest::prelude::*;
    use std::vec::Vec;

    proptest! {
        #[test]
        fn prop_it_sorts_as_the_library_does(list: Vec<(u8, u16)>) {
            let (mut ours, mut theirs) = (list.clone(), list);
            sort_short(&mut ours, |a, b| (a.0 % 8).cmp(&(b.0 % 8)));
            theirs.sort_by_key(|a| a.0 % 8);
            prop_assert_eq!(ours, theirs);
        }
    }
}
