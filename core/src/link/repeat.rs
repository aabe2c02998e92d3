//! The longest repeat: where the same bytes stood before, the text may go on as it did there.

use super::model::{add, moved};
use alloc::vec;
use alloc::vec::Vec;

/// Shortest repeat that counts, bytes.
const LEAST: usize = 8;
/// Repeats are told apart up to this length.
const MOST: usize = 31;
/// Bits of the table of places.
const BITS: u32 = 14;
/// How slowly trust in repeats of one length moves.
const PATIENCE: u8 = 60;

/// The last place at which the same bytes stood as now, and how often such a place was right.
#[derive(Clone)]
pub(super) struct Repeat {
    /// Where the text went on after bytes of this hash.
    last: Vec<u32>,
    /// Offset of the byte that should come next; 0 for none.
    next: usize,
    /// How many bytes before it were the same; 0 where nothing is expected.
    length: usize,
    /// How likely the repeat goes on, of 2¹⁶, by its length.
    right: [u16; MOST + 1],
}

impl Repeat {
    pub(super) fn none() -> Self {
        Self {
            last: vec![0; 1 << BITS],
            next: 0,
            length: 0,
            right: [3 << 14; MOST + 1],
        }
    }

    /// The next bit, were it to go on as it did there.
    fn expected(&self, text: &[u8], partial: u32) -> Option<bool> {
        if self.length == 0 {
            return None;
        }
        let byte = u32::from(*text.get(self.next)?) | 256;
        let bits = 31 - partial.leading_zeros();
        (byte >> (8 - bits) == partial).then_some(byte >> (7 - bits) & 1 == 1)
    }

    /// The bit it expects and how likely, of 2¹⁶, that comes.
    pub(super) fn vote(&self, text: &[u8], partial: u32) -> Option<(bool, u16)> {
        let right = self.right.get(self.length)?;
        Some((self.expected(text, partial)?, *right))
    }

    /// Which of the four sorts of repeat it is: none, short, long, longer.
    pub(super) fn sort(&self, expects: bool) -> usize {
        match self.length {
            _ if !expects => 0,
            0..=8 => 1,
            9..=16 => 2,
            _ => 3,
        }
    }

    /// Takes the bit that came.
    pub(super) fn learn(&mut self, text: &[u8], partial: u32, bit: bool) {
        if let Some(expected) = self.expected(text, partial)
            && let Some(right) = self.right.get_mut(self.length)
        {
            *right = moved(*right, expected == bit, PATIENCE);
        }
    }

    /// Looks on after a byte was added to `text`.
    pub(super) fn advance(&mut self, text: &[u8]) {
        let end = text.len();
        if self.length > 0 && text.get(self.next) == text.last() {
            self.next += 1;
            self.length = (self.length + 1).min(MOST);
        } else {
            self.length = 0;
        }
        let Some(tail) = end.checked_sub(LEAST).and_then(|at| text.get(at..)) else {
            return;
        };
        let hash = tail
            .iter()
            .fold(0, |hash, byte| add(hash, u32::from(*byte)));
        let Some(last) = self.last.get_mut((hash >> (32 - BITS)) as usize) else {
            return;
        };
        if self.length == 0 && *last > 0 {
            self.next = *last as usize;
            let (before, now) = (text.get(..self.next).unwrap_or(&[]), text);
            let same = before.iter().rev().zip(now.iter().rev());
            self.length = same.take(MOST).take_while(|(a, b)| a == b).count();
        }
        *last = end as u32;
    }
}
