//! Text to bits and back, as many bits as the model finds it surprising.
//!
//! A binary arithmetic coder (Witten, Neal, Cleary, Arithmetic Coding for Data Compression, 1987):
//! the bits so far are a place in a range that each bit narrows to its likely share.

use super::model::Model;
use alloc::vec::Vec;

/// The range that is left.
struct Range {
    low: u32,
    high: u32,
}

impl Range {
    fn whole() -> Self {
        Self {
            low: 0,
            high: u32::MAX,
        }
    }

    /// Where the share of a one, `likely` of 2¹⁶, ends.
    fn middle(&self, likely: u32) -> u32 {
        let width = u64::from(self.high - self.low);
        self.low + ((width * u64::from(likely)) >> 16) as u32
    }

    fn narrow(&mut self, middle: u32, bit: bool) {
        if bit {
            self.high = middle;
        } else {
            self.low = middle + 1;
        }
    }

    /// The leading byte, once both ends agree on it.
    fn settled(&mut self) -> Option<u8> {
        if (self.low ^ self.high) >> 24 != 0 {
            return None;
        }
        let byte = (self.high >> 24) as u8;
        self.low <<= 8;
        self.high = self.high << 8 | 255;
        Some(byte)
    }
}

/// `text` as short as the model makes it.
pub(super) fn encode(model: &mut Model, text: &[u8]) -> Vec<u8> {
    let mut range = Range::whole();
    let mut out = Vec::new();
    for byte in text {
        for place in (0..8).rev() {
            let bit = byte >> place & 1 == 1;
            let middle = range.middle(model.likely());
            range.narrow(middle, bit);
            model.learn(bit);
            while let Some(byte) = range.settled() {
                out.push(byte);
            }
        }
    }
    // One more byte ends within the range, whose ends differ in their first; a reader takes what is
    // missing for zeros.
    if range.low > 0 {
        out.push((range.low >> 24) as u8 + 1);
    }
    while out.last() == Some(&0) {
        out.pop();
    }
    out
}

/// The first `length` bytes of what `code` was made from.
pub(super) fn decode(model: &mut Model, code: &[u8], length: usize) -> Vec<u8> {
    let mut bytes = code.iter().copied().chain(core::iter::repeat(0));
    let mut next = move || u32::from(bytes.next().unwrap_or(0));
    let mut number = (0..4).fold(0, |number, _| number << 8 | next());
    let mut range = Range::whole();
    let mut text = Vec::new();
    while text.len() < length {
        let mut byte = 0;
        for _ in 0..8 {
            let middle = range.middle(model.likely());
            let bit = number <= middle;
            range.narrow(middle, bit);
            model.learn(bit);
            byte = byte << 1 | u8::from(bit);
            while range.settled().is_some() {
                number = number << 8 | next();
            }
        }
        text.push(byte);
    }
    text
}
