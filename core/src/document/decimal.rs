//! Decimal numbers to the nearest `f64`, exact in the last bit.
//!
//! The standard library's parser gives the same values and is fast on long rows of numbers; its
//! tables take 10 kB of incompressible bytes, an eighth of what a page may load. A set file has
//! few numbers, all short: one multiplication or division by an exact power of ten does for those
//! (Clinger, How to Read Floating Point Numbers Accurately, 1990), whole-number arithmetic of any
//! length for the rest.

use alloc::vec::Vec;

/// Digits that can decide a rounding: 767 (from memory), and one for all that follow.
const DIGITS: usize = 770;

/// The value of `written`, a number by JSON's grammar; infinite where it is beyond the range.
pub(super) fn value(written: &str) -> f64 {
    let (magnitude, negative) = match written.strip_prefix('-') {
        Some(magnitude) => (magnitude, true),
        None => (written, false),
    };
    let value = Decimal::read(magnitude).value();
    if negative { -value } else { value }
}

/// Digits as a whole number, times a power of ten.
struct Decimal {
    digits: Vec<u8>,
    exponent: i32,
}

impl Decimal {
    fn read(magnitude: &str) -> Self {
        let mark = magnitude.bytes().position(|b| matches!(b, b'e' | b'E'));
        let end = mark.unwrap_or(magnitude.len());
        let mantissa = magnitude.get(..end).unwrap_or("");
        let mut exponent = magnitude.get(end + 1..).map_or(0, exponent_of);
        let mut digits = Vec::new();
        let mut in_fraction = false;
        for byte in mantissa.bytes() {
            if byte == b'.' {
                in_fraction = true;
                continue;
            }
            let digit = byte.wrapping_sub(b'0');
            if digits.len() < DIGITS {
                if digit > 0 || !digits.is_empty() {
                    digits.push(digit);
                }
                exponent -= i32::from(in_fraction);
            } else {
                // Only whether anything follows still matters.
                if let Some(last) = digits.last_mut() {
                    *last |= u8::from(digit > 0);
                }
                exponent += i32::from(!in_fraction);
            }
        }
        Self { digits, exponent }
    }

    fn value(&self) -> f64 {
        // The value lies between 10^(top - 1) and 10^top.
        let top = i32::try_from(self.digits.len()).unwrap_or(i32::MAX) + self.exponent;
        if self.digits.is_empty() || top < -330 {
            return 0.0;
        }
        if top > 310 {
            return f64::INFINITY;
        }
        self.short().unwrap_or_else(|| self.long())
    }

    /// The value where digits and power of ten are both exact: one rounding, the right one.
    fn short(&self) -> Option<f64> {
        if self.digits.len() > 15 || self.exponent.abs() > 22 {
            return None;
        }
        let digits = self
            .digits
            .iter()
            .fold(0.0, |n, d| n * 10.0 + f64::from(*d));
        let power = (0..self.exponent.abs()).fold(1.0, |p, _| p * 10.0);
        Some(if self.exponent < 0 {
            digits / power
        } else {
            digits * power
        })
    }

    /// The value by whole numbers: the quotient's first 64 bits and whether anything is left.
    fn long(&self) -> f64 {
        let mut over = Whole(Vec::new());
        for digit in &self.digits {
            over.times_plus(10, *digit);
        }
        let mut under = Whole(alloc::vec![1]);
        let grows = if self.exponent < 0 {
            &mut under
        } else {
            &mut over
        };
        for _ in 0..self.exponent.abs() / 9 {
            grows.times_plus(1_000_000_000, 0);
        }
        for _ in 0..self.exponent.abs() % 9 {
            grows.times_plus(10, 0);
        }
        // Bring the quotient into [1, 2): its power of two is then `exponent`.
        let mut exponent = over.bits() - under.bits();
        if exponent > 0 {
            under.shift_left(exponent.unsigned_abs());
        } else {
            over.shift_left(exponent.unsigned_abs());
        }
        if over.is_less(&under) {
            over.shift_left(1);
            exponent -= 1;
        }
        // Below half of the smallest number there is.
        if exponent < -1075 {
            return 0.0;
        }
        // Bits that the result keeps: 53, fewer where it is subnormal.
        let kept = (exponent + 1075).clamp(0, 53);
        let mut bits = 0_u64;
        for _ in 0..=kept {
            bits <<= 1;
            if !over.is_less(&under) {
                over.subtract(&under);
                bits |= 1;
            }
            over.shift_left(1);
        }
        // One bit more than is kept: half of the last place. To even where it is exactly that.
        let (mut kept_bits, half) = (bits >> 1, bits & 1 == 1);
        if half && (!over.is_zero() || kept_bits & 1 == 1) {
            kept_bits += 1;
        }
        assemble(kept_bits, exponent)
    }
}

/// The number of `bits`, the first of which stands for 2^`exponent` where it is not subnormal.
/// A carry out of the bits runs into the exponent, as it should.
fn assemble(bits: u64, exponent: i32) -> f64 {
    if exponent > 1023 {
        return f64::INFINITY;
    }
    let Ok(biased) = u64::try_from(exponent + 1022) else {
        return f64::from_bits(bits);
    };
    f64::from_bits((biased << 52) + bits)
}

/// The exponent as far as it can matter.
fn exponent_of(written: &str) -> i32 {
    let (digits, negative) = match written.strip_prefix('-') {
        Some(digits) => (digits, true),
        None => (written.strip_prefix('+').unwrap_or(written), false),
    };
    let size = digits.bytes().fold(0_i32, |n, b| {
        // A file of 256 kB has no number whose digits make up for this.
        (n * 10 + i32::from(b.wrapping_sub(b'0'))).min(1_000_000)
    });
    if negative { -size } else { size }
}

/// A whole number of any length, lowest 32 bits first, no zero at the top.
struct Whole(Vec<u32>);

impl Whole {
    fn is_zero(&self) -> bool {
        self.0.is_empty()
    }

    fn bits(&self) -> i32 {
        let top = self.0.last().map_or(0, |l| 32 - l.leading_zeros());
        let below = self.0.len().saturating_sub(1) * 32;
        i32::try_from(below).unwrap_or(i32::MAX) + i32::try_from(top).unwrap_or(0)
    }

    fn times_plus(&mut self, factor: u32, digit: u8) {
        let mut carry = u64::from(digit);
        for limb in &mut self.0 {
            carry += u64::from(*limb) * u64::from(factor);
            *limb = carry as u32;
            carry >>= 32;
        }
        if carry > 0 {
            self.0.push(carry as u32);
        }
    }

    fn shift_left(&mut self, by: u32) {
        if self.is_zero() {
            return;
        }
        let mut carry = 0_u64;
        for limb in &mut self.0 {
            carry |= u64::from(*limb) << (by % 32);
            *limb = carry as u32;
            carry >>= 32;
        }
        if carry > 0 {
            self.0.push(carry as u32);
        }
        let whole = core::iter::repeat_n(0, by as usize / 32);
        self.0.splice(0..0, whole);
    }

    fn is_less(&self, other: &Self) -> bool {
        self.0
            .len()
            .cmp(&other.0.len())
            .then_with(|| self.0.iter().rev().cmp(other.0.iter().rev()))
            .is_lt()
    }

    /// Takes away `other`, which is not larger.
    fn subtract(&mut self, other: &Self) {
        let mut borrow = 0_i64;
        let theirs = other.0.iter().chain(core::iter::repeat(&0));
        for (limb, their) in self.0.iter_mut().zip(theirs) {
            borrow += i64::from(*limb) - i64::from(*their);
            *limb = borrow as u32;
            borrow >>= 32;
        }
        while self.0.last() == Some(&0) {
            self.0.pop();
        }
    }
}

#[cfg(test)]
mod tests {
    use super::value;
    use proptest::prelude::*;

    #[track_caller]
    fn as_std(text: &str) {
        let std: f64 = text.parse().unwrap();
        assert_eq!(value(text).to_bits(), std.to_bits(), "{text}");
    }

    #[test]
    fn edges_of_the_range_round_as_they_must() {
        for text in [
            "0",
            "-0",
            "0.0e99",
            "1",
            "0.1",
            "1e22",
            "1e23",
            "9007199254740993",
            "9007199254740992.5",
            "9007199254740993.00000000000000000000000000001",
            "1.7976931348623157e308",
            "1.7976931348623158e308",
            "1.7976931348623159e308",
            "1e309",
            "1.797693134862315807e308",
            "2.2250738585072014e-308",
            "2.2250738585072011e-308",
            "4.9e-324",
            "2.4703282292062327e-324",
            "2.4703282292062328e-324",
            "1e-330",
            "1e-400",
            "123456789012345678901234567890",
            "1e-999999999999",
            "1e999999999999",
            "0.000000000000000000000000000000000000000000001e45",
        ] {
            as_std(text);
        }
    }

    #[test]
    fn a_digit_far_behind_decides_a_tie() {
        let tie = "1.00000000000000011102230246251565404236316680908203125";
        as_std(tie);
        let zeros = "0".repeat(2000);
        as_std(&std::format!("{tie}{zeros}"));
        as_std(&std::format!("{tie}{zeros}1"));
        as_std(&std::format!("0.{zeros}{zeros}1e4000"));
        as_std(&std::format!("1{zeros}e-2000"));
        as_std(&std::format!("7{zeros}.{zeros}3e-2300"));
    }

    proptest! {
        #[test]
        fn prop_values_are_those_of_the_standard_library(
            text in "-?(0|[1-9][0-9]{0,40})(\\.[0-9]{1,40})?([eE][+-]?[0-9]{1,3})?",
        ) {
            as_std(&text);
        }

        #[test]
        fn prop_shortest_and_longest_digits_read_back(bits in any::<u64>()) {
            let n = f64::from_bits(bits);
            if n.is_finite() {
                as_std(&std::format!("{n}"));
                as_std(&std::format!("{n:e}"));
                as_std(&std::format!("{n:.40e}"));
            }
        }

        #[test]
        fn prop_halves_between_neighbours_round_to_even(bits in 0_u64..0x7fe0_0000_0000_0000, shift in -2_i64..3) {
            // The exact decimal of the middle between two numbers below 2^60, and a hair beside it.
            let n = f64::from_bits(bits % 0x43b0_0000_0000_0000);
            if n >= 1.0 {
                let text = std::format!("{n:.60}");
                as_std(&text);
                let next = f64::from_bits(n.to_bits() + 1);
                let (a, b) = (n as u128, next as u128);
                if n >= 9_007_199_254_740_992.0 {
                    let middle = i128::try_from(u128::midpoint(a, b)).unwrap() + i128::from(shift);
                    as_std(&std::format!("{middle}"));
                }
            }
        }
    }
}
