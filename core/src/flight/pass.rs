//! Passes: how fast, how high, how long.

use super::{Arc, BALL_RADIUS, Flight, GRAVITY, Spot3};
use crate::athlete::Limits;
use crate::math::{bisect, distance, sqrt};
use crate::set::{Family, Kind};

/// Mean speed, m/s, of passes over 0.5, 1.5 … 9.5 m.
///
/// Source: Kono R, Fujii K (2024), arXiv 2406.08749, arrays in the authors' public code (630 NBA
/// games of 2015–16, optical tracking; all kinds together).
const MEAN_SPEED: [f64; 10] = [
    3.78, 6.30, 7.30, 8.20, 9.12, 9.84, 10.37, 10.64, 10.81, 10.82,
];

/// No pass is over sooner, s. Common practice, no source.
const SHORTEST: f64 = 0.1;

/// The share of the way at which a bounce pass meets the floor. Common practice, no source.
const BOUNCE_SHARE: f64 = 2.0 / 3.0;
/// Upward speed kept at the floor: √(rebound over drop) of a ball that meets the drop test (1.2 to
/// 1.4 m from 1.8 m, an older international rule).
const RESTITUTION: f64 = 0.76;
/// Forward speed kept when a hollow ball without spin grips the floor: 1/(1 + 2/3).
const FLOOR_SHARE: f64 = 0.6;

/// The stature to which heights of hands belong, metres.
const STATURE: f64 = 1.9;

/// Mean speed over the floor, m/s, of a pass over `distance` metres; `scale` is the level's factor
/// on pass speeds.
///
/// A table by distance, times a factor by kind (common practice, no source).
#[must_use]
pub fn pass_speed(distance: f64, kind: Option<Kind>, scale: f64) -> f64 {
    let x = (distance - 0.5).clamp(0.0, 9.0);
    let i = x as usize;
    let a = MEAN_SPEED.get(i).copied().unwrap_or(10.82);
    let b = MEAN_SPEED.get(i + 1).copied().unwrap_or(a);
    (a + (b - a) * (x - i as f64)) * kind_factor(kind) * scale.max(0.05)
}

/// How much faster than the mean a kind is. Common practice, no source.
fn kind_factor(kind: Option<Kind>) -> f64 {
    match kind {
        Some(Kind::Baseball) => 1.3,
        Some(Kind::OneHand) => 1.05,
        Some(Kind::Bounce | Kind::Hook) => 0.85,
        // A bounce pass pushed from the dribble: 0.85 · 0.95.
        Some(Kind::Pocket) => 0.81,
        _ => 1.0,
    }
}

fn family(kind: Option<Kind>) -> Family {
    kind.map_or(Family::Flat, |k| k.row().family)
}

/// Height at which a pass of that kind leaves the hands, metres: by kind for a stature of 1.9 m,
/// scaled with stature. Common practice, no source.
#[must_use]
pub fn release_height(kind: Option<Kind>, limits: &Limits) -> f64 {
    let height = match (kind, family(kind)) {
        (Some(Kind::Shovel | Kind::Pitch), _) => 1.0,
        (Some(Kind::OneHand), _) => 1.4,
        (_, Family::High) => 2.1,
        (_, Family::Bounce) => 1.1,
        (_, Family::Lob) => 1.8,
        _ => 1.3,
    };
    height * limits.stature / STATURE
}

/// Height at which a pass of that kind is usually caught, metres: chest for flat ones, chin for
/// high ones, hip after a bounce, a hand's length above standing reach for a lob. Common practice,
/// no source.
#[must_use]
pub fn catch_height(kind: Option<Kind>, limits: &Limits) -> f64 {
    let height = match (kind, family(kind)) {
        (Some(Kind::Shovel | Kind::Pitch), _) => 1.1,
        (_, Family::High) => 1.6,
        (_, Family::Bounce) => 0.75,
        (_, Family::Lob) => return 1.1 * limits.reach,
        _ => 1.3,
    };
    height * limits.stature / STATURE
}

/// The flight of a pass from hand to hand.
///
/// Flat and high passes take the mean time for their distance; gravity sets the arc. A lob gets its
/// height first and its time from that. A bounce pass meets the floor at two thirds of the way
/// where its speed and the height of the catch allow, else as near as they do.
#[must_use]
pub fn pass(from: Spot3, to: Spot3, kind: Option<Kind>, limits: &Limits) -> Flight {
    let d = distance(from.floor(), to.floor());
    let speed = pass_speed(d, kind, limits.pass_scale);
    match family(kind) {
        Family::Bounce => bounce(from, to, d, speed),
        Family::Lob => over(from, to, lob_apex(from.z, to.z, limits)),
        _ => Flight {
            first: Arc {
                from,
                to,
                time: (d / speed).max(SHORTEST),
            },
            second: None,
        },
    }
}

/// Seconds a pass of that kind over `distance` metres flies between its usual heights: for plans.
#[must_use]
pub fn pass_time(distance: f64, kind: Option<Kind>, limits: &Limits) -> f64 {
    let from = Spot3 {
        x: 0.0,
        y: 0.0,
        z: release_height(kind, limits),
    };
    let to = Spot3 {
        x: distance.max(0.0),
        y: 0.0,
        z: catch_height(kind, limits),
    };
    pass(from, to, kind, limits).duration()
}

/// Top of a lob: 0.9 m above the higher hand, and over everybody's reach: 3.2 m among adults of
/// 1.85 m. Common practice, no source.
fn lob_apex(z0: f64, z1: f64, limits: &Limits) -> f64 {
    let over_hands = z0.max(z1) + 0.9 * limits.stature / STATURE;
    over_hands.max(3.2 * limits.stature / 1.85)
}

/// The arc with its top at `apex`: T = √(2(apex − z₀)/g) + √(2(apex − z₁)/g).
pub(super) fn over(from: Spot3, to: Spot3, apex: f64) -> Flight {
    let fall = |z: f64| sqrt(2.0 * (apex - z).max(0.0) / GRAVITY);
    let time = (fall(from.z) + fall(to.z)).max(SHORTEST);
    Flight {
        first: Arc { from, to, time },
        second: None,
    }
}

/// Two arcs with the floor between them.
///
/// With a given speed the share of the way fixes the height of the catch. Caught low, the bounce
/// comes later than two thirds; caught high, it comes sooner and the pass is thrown harder.
fn bounce(from: Spot3, to: Spot3, d: f64, speed: f64) -> Flight {
    let z0 = from.z.max(BALL_RADIUS + 0.05);
    let z1 = to.z.max(BALL_RADIUS + 0.01);
    let throw = |late: f64| Throw {
        share: BOUNCE_SHARE + if late > 0.0 { late } else { 0.2 * late },
        speed: speed * (1.0 - late.min(0.0)),
        z0,
        d: d.max(0.5),
    };
    let late = if throw(0.0).catch() > z1 {
        bisect(0.0, 0.98 - BOUNCE_SHARE, |late| z1 - throw(late).catch())
    } else {
        bisect(-1.5, 0.0, |late| z1 - throw(late).catch())
    };
    let throw = throw(late);
    let [t1, t2] = throw.times();
    let floor = Spot3 {
        x: from.x + throw.share * (to.x - from.x),
        y: from.y + throw.share * (to.y - from.y),
        z: BALL_RADIUS,
    };
    // The second arc ends at the hands, whatever was left of the search.
    Flight {
        first: Arc {
            from,
            to: floor,
            time: t1,
        },
        second: Some(Arc {
            from: floor,
            to,
            time: t2,
        }),
    }
}

/// A bounce pass, tried.
struct Throw {
    share: f64,
    speed: f64,
    z0: f64,
    d: f64,
}

impl Throw {
    /// Seconds to the floor and from there to the hands.
    fn times(&self) -> [f64; 2] {
        [
            self.share * self.d / self.speed,
            (1.0 - self.share) * self.d / (FLOOR_SHARE * self.speed),
        ]
    }

    /// Height at the catch: R + e·w·t₂ − g t₂²/2, with w the speed into the floor.
    fn catch(&self) -> f64 {
        let [t1, t2] = self.times();
        let into_floor = (self.z0 - BALL_RADIUS) / t1 + 0.5 * GRAVITY * t1;
        BALL_RADIUS + RESTITUTION * into_floor * t2 - 0.5 * GRAVITY * t2 * t2
    }
}
