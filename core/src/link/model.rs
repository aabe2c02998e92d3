//! What the next bit of a set file likely is.
//!
//! Several contexts look at the text so far, each with its own memory of which bit came next: the
//! word, the two last words, the last one to six bytes. A mixer weighs them by how well each has
//! done (logistic mixing: Mahoney, Adaptive Weighing of Context Models for Lossless Data
//! Compression, 2005). Contexts that know the format (field, verb) were tried and gained nothing.
//!
//! Whole numbers only, so that every machine has the same opinion. All of it is frozen with the
//! version of the link: the smallest change makes old links unreadable.

use super::repeat::Repeat;
use super::vote::{squash, stretched};
use alloc::vec;
use alloc::vec::Vec;

/// Contexts that vote on each bit.
const CONTEXTS: usize = 8;
/// Votes: two of each context, one of the longest repeat, one that never changes.
const VOTES: usize = 2 * CONTEXTS + 2;
/// Memories of all contexts together; four bytes each.
const SLOT_BITS: u32 = 18;
/// How fast the mixer learns.
const RATE: i32 = 5;
/// Sorts of repeats, each with weights of its own.
const SORTS: usize = 4;
/// The vote that never changes.
const ALWAYS: i32 = 256;
/// A weight of one.
const ONE: i32 = 1 << 16;

/// Multiplies well: 2³² over the golden ratio (Knuth, The Art of Computer Programming 3, 6.4).
const GOLDEN: u32 = 0x9E37_79B1;

/// What one context has seen at one place: how likely a one is, of 2¹⁶; how often it was asked;
/// and a trace of the context, to know it from others that fall on the same slot.
#[derive(Clone, Copy)]
struct Slot {
    one: u16,
    seen: u8,
    trace: u8,
}

const FRESH: Slot = Slot {
    one: 1 << 15,
    seen: 0,
    trace: 0,
};

/// The text so far, and an opinion on its next bit.
#[derive(Clone)]
pub(super) struct Model {
    slots: Vec<Slot>,
    stretched: Vec<i16>,
    weights: Vec<i32>,
    text: Vec<u8>,
    word: u32,
    word_before: u32,
    /// The hashes of the contexts of the byte being read.
    contexts: [u32; CONTEXTS],
    /// Bits of that byte so far, led by a one.
    partial: u32,
    /// Where each context's memory of the next bit lies.
    at: [usize; CONTEXTS],
    votes: [i32; VOTES],
    /// Which weights are in use, and what came out.
    set: usize,
    mixed: i32,
    repeat: Repeat,
}

/// One more thing in a hash.
pub(super) fn add(hash: u32, more: u32) -> u32 {
    (hash ^ more.wrapping_mul(0x85EB_CA6B))
        .wrapping_add(0x27D4_EB2F)
        .wrapping_mul(GOLDEN)
        .rotate_left(15)
}

impl Model {
    pub(super) fn new() -> Self {
        let mut model = Self {
            slots: vec![FRESH; 1 << SLOT_BITS],
            stretched: stretched(),
            weights: vec![ONE / 8; VOTES * SORTS * (CONTEXTS + 1)],
            text: Vec::new(),
            word: 0,
            word_before: 0,
            contexts: [0; CONTEXTS],
            partial: 1,
            at: [0; CONTEXTS],
            votes: [0; VOTES],
            set: 0,
            mixed: 0,
            repeat: Repeat::none(),
        };
        model.look();
        model
    }

    /// Learns `text` by heart.
    pub(super) fn prime(&mut self, text: &str) {
        for byte in text.bytes() {
            for place in (0..8).rev() {
                self.learn(byte >> place & 1 == 1);
            }
        }
    }

    /// How likely the next bit is a one, of 2¹⁶; never certain.
    pub(super) fn likely(&self) -> u32 {
        (squash(self.mixed) as u32) << 4
    }

    /// Takes the next bit.
    pub(super) fn learn(&mut self, bit: bool) {
        let error = ((i32::from(bit) << 12) - squash(self.mixed)) * RATE;
        let weights = self.weights.iter_mut().skip(self.set * VOTES);
        for (weight, vote) in weights.zip(&self.votes) {
            *weight = weight.wrapping_add((vote * error + (1 << 13)) >> 14);
        }
        for at in self.at {
            if let Some(slot) = self.slots.get_mut(at) {
                slot.one = moved(slot.one, bit, slot.seen);
                slot.seen = slot.seen.saturating_add(1);
            }
        }
        self.repeat.learn(&self.text, self.partial, bit);
        self.partial = self.partial << 1 | u32::from(bit);
        if self.partial > 255 {
            self.take(self.partial as u8);
            self.partial = 1;
        }
        self.look();
    }

    fn take(&mut self, byte: u8) {
        self.text.push(byte);
        self.repeat.advance(&self.text);
        if byte.is_ascii_alphanumeric() || byte > 127 {
            self.word = add(self.word, u32::from(byte.to_ascii_lowercase()));
        } else if self.word != 0 {
            self.word_before = self.word;
            self.word = 0;
        }
        let words = [self.word, add(self.word, self.word_before)];
        let mut run = 0;
        let runs = self.text.iter().rev().map(|byte| {
            run = add(run, u32::from(*byte) + 1);
            run
        });
        let all = words.into_iter().chain(runs).zip(1_u32..);
        for (context, (hash, n)) in self.contexts.iter_mut().zip(all) {
            *context = add(hash, n);
        }
    }

    /// The slot of a context: at its place or the one beside it, else the one of the two that has
    /// seen less.
    fn find(&self, place: usize, trace: u8) -> usize {
        let at = |place: usize| self.slots.get(place).copied().unwrap_or(FRESH);
        let (own, beside) = (at(place), at(place ^ 1));
        let kept = own.trace == trace && own.seen > 0;
        let moved = beside.trace == trace && beside.seen > 0;
        if kept || (!moved && own.seen <= beside.seen) {
            place
        } else {
            place ^ 1
        }
    }

    fn stretch(&self, likely: u16) -> i32 {
        let vote = self.stretched.get(usize::from(likely >> 4));
        vote.map_or(0, |v| i32::from(*v))
    }

    /// Collects the votes on the next bit.
    fn look(&mut self) {
        let mut known = 0;
        let mut votes = [0; VOTES];
        let (pairs, rest) = votes.split_at_mut(2 * CONTEXTS);
        let mut all = self.at;
        let each = all.iter_mut().zip(self.contexts);
        for ((at, context), pair) in each.zip(pairs.chunks_exact_mut(2)) {
            let hash = add(context, self.partial);
            let trace = (hash & 255) as u8;
            *at = self.find((hash >> (32 - SLOT_BITS)) as usize, trace);
            let Some(slot) = self.slots.get_mut(*at) else {
                continue;
            };
            if slot.trace != trace {
                *slot = Slot { trace, ..FRESH };
            }
            if slot.seen > 0
                && let [first, second] = pair
            {
                known += 1;
                let one = slot.one;
                *first = self.stretch(one);
                *second = (i32::from(one) - (1 << 15)) >> 5;
            }
        }
        let going_on = self.repeat.vote(&self.text, self.partial);
        if let [repeat, always] = rest {
            *always = ALWAYS;
            if let Some((expected, right)) = going_on {
                let sure = self.stretch(right);
                *repeat = if expected { sure } else { -sure };
            }
        }
        self.at = all;
        self.votes = votes;
        self.set = self.repeat.sort(going_on.is_some()) * (CONTEXTS + 1) + known;
        let weights = self.weights.iter().skip(self.set * VOTES);
        let sum: i64 = weights
            .zip(&self.votes)
            .map(|(weight, vote)| i64::from(*weight) * i64::from(*vote))
            .sum();
        self.mixed = (sum >> 16).clamp(-2047, 2047) as i32;
    }
}

/// A likelihood of 2¹⁶ after one more bit; the more were seen, the less it moves.
pub(super) fn moved(one: u16, bit: bool, seen: u8) -> u16 {
    let goal = if bit { 65_535_i32 } else { 0 };
    let by = 2 * i32::from(seen) + 3;
    (i32::from(one) + (goal - i32::from(one)) * 2 / by) as u16
}
