//! Sine and cosine together.
//!
//! Own code where a library would do, for one reason: that library's reduction of arguments up to
//! 10³⁰⁸ weighs two kilobytes of the hundred an embed may have, and angles on a court stay small.

use super::{round, sqrt};
use core::f64::consts::FRAC_2_PI;

/// π/2 in three parts, the first two of 33 bits, so that a few thousand times each is exact
/// (Cody and Waite, "Software Manual for the Elementary Functions", 1980).
const HALF_PI: [f64; 3] = [
    1.570_796_326_734_125_6,
    6.077_100_506_303_966e-11,
    2.022_266_248_795_950_6e-21,
];

/// Minimax coefficients on ±π/4 of (sin r − r)/r³ and of (cos r − 1 + r²/2)/r⁴ in powers of r², as
/// published with the freely distributable mathematical library fdlibm (Sun Microsystems, 1993).
const SIN: [f64; 6] = [
    -1.666_666_666_666_663_2e-1,
    8.333_333_333_322_49e-3,
    -1.984_126_982_985_795e-4,
    2.755_731_370_707_006_8e-6,
    -2.505_076_025_340_686_3e-8,
    1.589_690_995_211_55e-10,
];
const COS: [f64; 6] = [
    4.166_666_666_666_66e-2,
    -1.388_888_888_887_411e-3,
    2.480_158_728_947_673e-5,
    -2.755_731_435_139_066_3e-7,
    2.087_572_321_298_175e-9,
    -1.135_964_755_778_819_5e-11,
];

/// Sine and cosine of `x` radians, right to 2 · 10⁻¹⁶ within ±1000 turns.
#[must_use]
pub fn sin_cos(x: f64) -> (f64, f64) {
    // Away from zero at a half, so that an angle and its mirror image keep the same digits.
    let quarters = round(x * FRAC_2_PI);
    let [a, b, c] = HALF_PI;
    let r = x - quarters * a - quarters * b - quarters * c;
    let z = r * r;
    let s = r + r * z * power_series(&SIN, z);
    let c = 1.0 - 0.5 * z + z * z * power_series(&COS, z);
    match quarters as i64 & 3 {
        0 => (s, c),
        1 => (c, -s),
        2 => (-s, -c),
        _ => (-c, s),
    }
}

/// Sine of `x` radians.
#[must_use]
pub fn sin(x: f64) -> f64 {
    sin_cos(x).0
}

/// Cosine of `x` radians.
#[must_use]
pub fn cos(x: f64) -> f64 {
    sin_cos(x).1
}

/// Tangent of `x` radians.
#[must_use]
pub fn tan(x: f64) -> f64 {
    let (s, c) = sin_cos(x);
    s / c
}

/// The angle in [0, π] whose cosine is `x`, radians; what is beyond ±1 counts as ±1.
#[must_use]
pub fn acos(x: f64) -> f64 {
    super::atan2(sqrt((1.0 - x * x).max(0.0)), x)
}

fn power_series(coefficients: &[f64], z: f64) -> f64 {
    coefficients.iter().rev().fold(0.0, |sum, c| sum * z + c)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn prop_agrees_with_the_library(x in -6000.0..6000.0_f64, near in -7.0..7.0_f64) {
            for x in [x, near] {
                let (s, c) = sin_cos(x);
                prop_assert!((s - libm::sin(x)).abs() <= 4e-16, "sin {}", x);
                prop_assert!((c - libm::cos(x)).abs() <= 4e-16, "cos {}", x);
                prop_assert!((s * s + c * c - 1.0).abs() <= 8e-16);
            }
        }

        #[test]
        fn prop_is_odd_and_even(x in -100.0..100.0_f64) {
            let ((s, c), (t, d)) = (sin_cos(x), sin_cos(-x));
            prop_assert_eq!((s, c), (-t, d));
        }

        #[test]
        fn prop_arc_cosine_agrees_with_the_library(x in -1.0..1.0_f64) {
            prop_assert!((acos(x) - libm::acos(x)).abs() <= 1e-15 / (1.0 - x * x).sqrt().max(1e-4));
        }
    }

    #[test]
    fn an_eighth_of_a_turn_mirrors_exactly() {
        use core::f64::consts::FRAC_PI_4;
        let ((s, c), (t, d)) = (sin_cos(FRAC_PI_4), sin_cos(-FRAC_PI_4));
        assert_eq!((s.to_bits(), c.to_bits()), ((-t).to_bits(), d.to_bits()));
    }

    #[test]
    fn quarter_turns_are_as_exact_as_pi_is() {
        use core::f64::consts::{FRAC_PI_2, PI};
        for (x, s, c) in [(0.0, 0.0, 1.0), (FRAC_PI_2, 1.0, 0.0), (PI, 0.0, -1.0)] {
            let (t, d) = sin_cos(x);
            assert!((s - t).abs() < 2e-16 && (c - d).abs() < 2e-16, "{x}");
        }
        assert!(sin_cos(f64::NAN).0.is_nan());
        assert!(sin_cos(f64::INFINITY).1.is_nan());
    }
}
