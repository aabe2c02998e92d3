//! The order of questions: as good as drawn from a hat, and the same for the same number.

use super::Question;
use crate::math::Listed;
use alloc::vec::Vec;

/// Numbers that look random: splitmix64, a published generator of one multiplication a step.
///
/// Source: Steele, Lea, Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014; the
/// constants are those of its widely used 64-bit variant. From memory.
pub(super) struct Hat(u64);

impl Hat {
    pub(super) fn new(number: u32) -> Self {
        Self(u64::from(number))
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A number from 0 up to `n`, without `n`.
    fn below(&mut self, n: usize) -> usize {
        (self.next() % (n.max(1) as u64)) as usize
    }

    /// A share, 0 to 1.
    pub(super) fn share(&mut self) -> f64 {
        self.below(1001) as f64 / 1000.0
    }

    fn shuffle<T>(&mut self, list: &mut [T]) {
        for end in (1..list.len()).rev() {
            list.swap(end, self.below(end + 1));
        }
    }
}

/// Deals the kinds in turn, so that no round is all of one kind.
pub(super) fn deal(mut kinds: Vec<Vec<Question>>, hat: &mut Hat) -> Vec<Question> {
    hat.shuffle(&mut kinds);
    for kind in &mut kinds {
        hat.shuffle(kind);
    }
    let most = kinds.iter().map(Vec::len).max().unwrap_or(0);
    let turn = |i| kinds.iter().filter_map(move |kind| kind.get(i).cloned());
    (0..most).flat_map(turn).listed()
}
