//! Numbers as text, without the float formatter: it alone weighs more than a painter in wasm.

use alloc::string::String;

/// Appends `x` rounded to `places` decimals (at most 6), halves away from zero, without trailing
/// zeros: `2`, `-0.35`. What is no finite number becomes `0`.
///
/// ```
/// use backcut::math::push_decimal;
/// let mut out = String::new();
/// push_decimal(&mut out, -1.005, 1);
/// assert_eq!(out, "-1");
/// ```
pub fn push_decimal(out: &mut String, x: f64, places: u8) {
    push(out, x, places, true);
}

/// As [`push_decimal`], but all `places` are written: `2.0`.
pub fn push_fixed(out: &mut String, x: f64, places: u8) {
    push(out, x, places, false);
}

fn push(out: &mut String, x: f64, places: u8, short: bool) {
    let places = u32::from(places.min(6));
    let unit = 10_u64.pow(places);
    let x = if x.is_finite() { x } else { 0.0 };
    // Beyond this nothing on a page is meant; the cast saturates in any case.
    let scaled = (x.abs().min(1e9) * unit as f64 + 0.5) as u64;
    if x < 0.0 && scaled > 0 {
        out.push('-');
    }
    push_whole(out, scaled / unit, 1);
    let mut rest = scaled % unit;
    let mut digits = places;
    while short && digits > 0 && rest.is_multiple_of(10) {
        rest /= 10;
        digits -= 1;
    }
    if digits > 0 {
        out.push('.');
        push_whole(out, rest, digits);
    }
}

/// `n` with at least `least` digits.
fn push_whole(out: &mut String, n: u64, least: u32) {
    if n > 9 || least > 1 {
        push_whole(out, n / 10, least.saturating_sub(1));
    }
    out.push(char::from(b'0' + (n % 10) as u8));
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn short(x: f64, places: u8) -> String {
        let mut s = String::new();
        push_decimal(&mut s, x, places);
        s
    }

    #[test]
    fn short_numbers_lose_their_zeros_and_fixed_ones_keep_them() {
        assert_eq!(short(10.0, 2), "10");
        assert_eq!(short(0.05, 2), "0.05");
        assert_eq!(short(-0.001, 2), "0");
        assert_eq!(short(99.999, 2), "100");
        assert_eq!(short(f64::NAN, 2), "0");
        let mut s = String::new();
        push_fixed(&mut s, 9.0, 1);
        assert_eq!(s, "9.0");
    }

    proptest! {
        #[test]
        fn prop_what_is_written_reads_back_within_half_a_unit(x in -1e6..1e6_f64) {
            let back: f64 = short(x, 2).parse().unwrap();
            prop_assert!((back - x).abs() <= 0.005_000_1);
        }
    }
}
