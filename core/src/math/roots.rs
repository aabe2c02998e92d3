//! Roots of continuous functions, with a fixed number of steps so that they end and agree
//! everywhere.

/// The root of `f` between `lo` and `hi`, where `f(lo)` and `f(hi)` differ in sign.
///
/// Halves until the bracket is a nanometre (or a nanosecond) wide. Returns the end at which `f` has the
/// sign of `f(hi)`, so a caller who needs `f ≥ 0` gets it.
#[must_use]
pub fn bisect(mut lo: f64, mut hi: f64, mut f: impl FnMut(f64) -> f64) -> f64 {
    let positive = f(hi) >= 0.0;
    for _ in 0..60 {
        if hi - lo < 1e-9 {
            break;
        }
        let mid = 0.5 * (lo + hi);
        if (f(mid) >= 0.0) == positive {
            hi = mid;
        } else {
            lo = mid;
        }
    }
    hi
}

/// The first `x` in `[lo, hi]` with `f(x) ≥ 0`, looked for in `steps` equal brackets.
#[must_use]
pub fn first_root(lo: f64, hi: f64, steps: u32, mut f: impl FnMut(f64) -> f64) -> Option<f64> {
    if f(lo) >= 0.0 {
        return Some(lo);
    }
    let mut a = lo;
    for i in 1..=steps {
        let b = lo + (hi - lo) * f64::from(i) / f64::from(steps);
        if f(b) >= 0.0 {
            return Some(bisect(a, b, f));
        }
        a = b;
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn first_root_is_the_start_where_nothing_is_missing() {
        assert_eq!(first_root(1.0, 2.0, 8, |_| 0.0), Some(1.0));
    }

    #[test]
    fn first_root_is_none_where_the_function_stays_below_zero() {
        assert_eq!(first_root(0.0, 2.0, 8, |x| x - 3.0), None);
        assert_eq!(first_root(0.0, 2.0, 0, |x| x - 1.0), None);
    }

    #[test]
    fn first_root_takes_the_first_of_several() {
        let f = |x: f64| -(x - 1.0) * (x - 2.0) * (x - 3.0) * (x - 4.0);
        let x = first_root(0.0, 5.0, 50, f).unwrap();
        assert!((x - 1.0).abs() < 1e-12, "{x}");
    }

    #[test]
    fn first_root_tells_the_end_of_the_range() {
        assert_eq!(first_root(0.0, 2.0, 8, |x| x - 2.0), Some(2.0));
    }

    proptest! {
        #[test]
        fn prop_bisect_finds_the_root_from_either_slope(root in -5.0..5.0_f64, rise in 0.1..9.0_f64) {
            for slope in [rise, -rise] {
                let f = |x: f64| slope * (x - root);
                let x = bisect(-6.0, 7.0, f);
                prop_assert!((x - root).abs() < 1.1e-9, "{x} for {root}");
                prop_assert_eq!(f(x) >= 0.0, f(7.0) >= 0.0, "the end with the sign of f(hi)");
            }
        }
    }
}
