//! Roots of continuous functions, with a fixed number of steps so that they end and agree
//! everywhere.

/// The root of `f` between `lo` and `hi`, where `f(lo)` and `f(hi)` differ in sign.
///
/// Sixty halvings: the bracket ends below 1e-17 of its width. Returns the end at which `f` has the
/// sign of `f(hi)`, so a caller who needs `f ≥ 0` gets it.
#[must_use]
pub fn bisect(mut lo: f64, mut hi: f64, mut f: impl FnMut(f64) -> f64) -> f64 {
    let positive = f(hi) >= 0.0;
    for _ in 0..60 {
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
