//! Portable arithmetic: the same bits natively and in wasm.
//!
//! Free functions over the `libm` crate; never the platform's `sin`, `exp` or `powf`, whose
//! last bit differs from machine to machine. Points and curves are kurbo's.

mod angle;
mod decimal;
mod list;
mod order;
mod roots;
mod trig;

pub use angle::{angle_of, rotated, turn_between, unit, wrap_angle};
pub use decimal::{push_decimal, push_fixed};
pub use kurbo::{BezPath, CubicBez, PathEl, Point, Vec2};
pub use list::Listed;
pub use order::sort_short;
pub use roots::{bisect, first_root};
pub use trig::{acos, cos, sin, sin_cos, tan};

/// Square root. IEEE 754 fixes every bit, so the hardware may do it.
#[inline]
#[must_use]
pub fn sqrt(x: f64) -> f64 {
    #[cfg(feature = "std")]
    {
        x.sqrt()
    }
    #[cfg(all(not(feature = "std"), target_arch = "wasm32"))]
    {
        wasm::sqrt(x)
    }
    #[cfg(all(not(feature = "std"), not(target_arch = "wasm32")))]
    {
        libm::sqrt(x)
    }
}

/// Wasm has the instruction, but Rust without the standard library has a name only for the one that
/// takes two numbers at once. As one of the two is all that is used, the compiler makes the
/// instruction for one. What is enabled for one function is enabled for the whole module, though: its
/// copies go by vectors too, which browsers have had since March 2023. By hand a root takes a quarter of the time in
/// which a set is opened, and half a kilobyte.
#[cfg(all(not(feature = "std"), target_arch = "wasm32"))]
mod wasm {
    use core::arch::wasm32::{f64x2_extract_lane, f64x2_splat, f64x2_sqrt};

    #[target_feature(enable = "simd128")]
    pub(super) fn sqrt(x: f64) -> f64 {
        f64x2_extract_lane::<0>(f64x2_sqrt(f64x2_splat(x)))
    }
}

/// Length of a vector. Not `hypot`: its extra care against overflow is not needed on a court, and
/// its last bit is not fixed.
#[inline]
#[must_use]
pub fn length(v: Vec2) -> f64 {
    sqrt(v.x * v.x + v.y * v.y)
}

/// Distance between two points, metres.
#[inline]
#[must_use]
pub fn distance(a: Point, b: Point) -> f64 {
    length(b - a)
}

/// `v` at length one, or `None` where it is too short to have a direction.
#[inline]
#[must_use]
pub fn direction(v: Vec2) -> Option<Vec2> {
    let l = length(v);
    (l > 1e-9).then(|| v / l)
}

pub use libm::{asin, atan, atan2, ceil, exp, floor, log as ln, pow, round};
