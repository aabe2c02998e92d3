//! Where the ball is while somebody has it, and how it gets from hand to hand.

use super::{BallState, MoverState};
use crate::athlete::Limits;
use crate::court::Side;
use crate::flight::{Flight, GRAVITY};
use crate::math::{Point, Vec2, sqrt, unit};
use crate::set::PlayerId;

/// How far in front of the body's middle the ball is held, metres.
const REACH: f64 = 0.33;
/// Height at which it is held, as a share of stature: in front of the chest.
const CHEST: f64 = 0.63;
/// Height of the hand that dribbles, as a share of stature: at the hip.
const HIP: f64 = 0.50;
/// A dribbled ball is so far in front and beside the body, metres.
const DRIBBLE: Vec2 = Vec2::new(0.28, 0.30);
/// A dribble that goes less far across the court is straight on, metres.
const STRAIGHT: f64 = 0.3;
/// Seconds of one bounce. Common practice, no source.
const BOUNCE: f64 = 0.5;
/// Seconds in which the ball is taken up or down between two heights.
const LIFT: f64 = 0.25;

/// One stretch of the ball's life, ready to be asked.
#[derive(Clone, Copy, Debug)]
pub(super) struct Carry {
    pub start: f64,
    /// When what the ball does began; before `start` where a branch goes on with it.
    #[cfg(feature = "authoring")]
    pub since: f64,
    /// From when to when all of a dribble lasts, of which this is a part.
    #[cfg(feature = "authoring")]
    pub stay: [f64; 2],
    /// What a flight comes down from where it was thrown to: a branch may have bent the receiver's way.
    #[cfg(feature = "authoring")]
    pub drift: Vec2,
    pub end: f64,
    pub how: How,
}

#[derive(Clone, Copy, Debug)]
pub(super) enum How {
    /// In two hands; heights at the start and at the end, chest height between.
    Held {
        who: PlayerId,
        from: f64,
        to: f64,
        chest: f64,
    },
    /// `bounces` whole bounces, in hand at both ends.
    Dribbled {
        who: PlayerId,
        hand: Side,
        bounces: u32,
        hip: f64,
        chest: f64,
        radius: f64,
    },
    Air(Flight),
    Handed {
        from: PlayerId,
        to: PlayerId,
        chest: f64,
    },
    /// Falls from the ring.
    Falls {
        from: f64,
        radius: f64,
    },
}

#[cfg(feature = "authoring")]
impl How {
    /// A dribble in so many bounces.
    pub(super) fn in_bounces(mut self, count: u32) -> Self {
        if let Self::Dribbled { bounces, .. } = &mut self {
            *bounces = count.max(1);
        }
        self
    }
}

/// Chest height of the ball.
pub(super) fn chest(limits: &Limits) -> f64 {
    CHEST * limits.stature
}

/// Hip height of the ball.
pub(super) fn hip(limits: &Limits) -> f64 {
    HIP * limits.stature
}

/// Whole bounces of a dribble of `lasts` seconds.
pub(super) fn bounces(lasts: f64) -> u32 {
    (crate::math::round(lasts / BOUNCE) as u32).max(1)
}

/// The hand that dribbles from `x0` to `x1` across the court: the one on the side the dribble goes
/// to; straight on, the one farther from the middle. Common practice, no source.
pub(super) fn hand(x0: f64, x1: f64) -> Side {
    let across = if (x1 - x0).abs() > STRAIGHT {
        x1 - x0
    } else {
        x0
    };
    if across < 0.0 {
        Side::Left
    } else {
        Side::Right
    }
}

/// The place of the held ball over the floor.
pub(super) fn hands(p: &MoverState) -> Point {
    Point::new(p.x, p.y) + unit(p.facing) * REACH
}

/// 0 at the ends of `[0, lasts]`, 1 from `LIFT` inside them, smooth.
fn inside(t: f64, lasts: f64) -> f64 {
    let ramp = LIFT.min(0.5 * lasts).max(1e-6);
    let u = (t.min(lasts - t) / ramp).clamp(0.0, 1.0);
    u * u * (3.0 - 2.0 * u)
}

impl Carry {
    pub(super) fn new(start: f64, end: f64, how: How) -> Self {
        Self {
            start,
            #[cfg(feature = "authoring")]
            since: start,
            #[cfg(feature = "authoring")]
            stay: [start, end],
            #[cfg(feature = "authoring")]
            drift: Vec2::ZERO,
            end,
            how,
        }
    }

    fn since(&self) -> f64 {
        #[cfg(feature = "authoring")]
        {
            self.since
        }
        #[cfg(not(feature = "authoring"))]
        {
            self.start
        }
    }

    /// 0 with the ball at the chest, 1 while it is dribbled.
    fn low(&self, t: f64) -> f64 {
        #[cfg(feature = "authoring")]
        let [from, to] = self.stay;
        #[cfg(not(feature = "authoring"))]
        let [from, to] = [self.start, self.end];
        inside((t - from).max(0.0), to - from)
    }

    /// How far a flight is off its first way.
    fn drifted(&self, t: f64) -> Vec2 {
        #[cfg(feature = "authoring")]
        {
            let u = ((t - self.start) / (self.end - self.start).max(1e-6)).clamp(0.0, 1.0);
            self.drift * (u * u * (3.0 - 2.0 * u))
        }
        #[cfg(not(feature = "authoring"))]
        {
            let _ = t;
            Vec2::ZERO
        }
    }

    pub(super) fn at(&self, t: f64, players: &[Option<MoverState>; 5]) -> BallState {
        let state = |who: PlayerId| {
            players
                .get(who.index())
                .copied()
                .flatten()
                .unwrap_or_default()
        };
        let tau = (t - self.since()).max(0.0);
        let lasts = self.end - self.since();
        match self.how {
            How::Held {
                who,
                from,
                to,
                chest,
            } => {
                let end = if tau < 0.5 * lasts { from } else { to };
                let z = end + (chest - end) * inside(tau, lasts);
                let at = hands(&state(who));
                BallState {
                    x: at.x,
                    y: at.y,
                    z,
                    holder: Some(who),
                }
            }
            How::Dribbled {
                who,
                hand,
                bounces,
                hip,
                chest,
                radius,
            } => {
                let p = state(who);
                let low = self.low(t);
                let ahead = unit(p.facing);
                let beside = Vec2::new(-ahead.y, ahead.x);
                let down =
                    Point::new(p.x, p.y) + ahead * DRIBBLE.x + beside * (DRIBBLE.y * hand.sign());
                let at = hands(&p).lerp(down, low);
                let hand = chest + (hip - chest) * low;
                let z = radius + bounce(tau, lasts / f64::from(bounces.max(1)), hand - radius);
                BallState {
                    x: at.x,
                    y: at.y,
                    z,
                    holder: Some(who),
                }
            }
            How::Air(flight) => {
                let (at, off) = (flight.at(tau), self.drifted(t));
                BallState {
                    x: at.x + off.x,
                    y: at.y + off.y,
                    z: at.z,
                    holder: None,
                }
            }
            How::Handed { from, to, chest } => {
                let share = (tau / lasts.max(1e-6)).clamp(0.0, 1.0);
                let at = hands(&state(from)).lerp(hands(&state(to)), share);
                let holder = if share < 0.5 { from } else { to };
                BallState {
                    x: at.x,
                    y: at.y,
                    z: chest,
                    holder: Some(holder),
                }
            }
            How::Falls { from, radius } => {
                let z = (from - 0.5 * GRAVITY * tau * tau).max(radius);
                BallState {
                    x: 0.0,
                    y: 0.0,
                    z,
                    holder: None,
                }
            }
        }
    }
}

/// Height over the floor of a ball pushed down from `hand` and back up in `period` seconds: under
/// gravity all the way, pushed by the hand at the top, as fast up as down (the floor's loss is what
/// the push makes good).
fn bounce(t: f64, period: f64, hand: f64) -> f64 {
    let half = 0.5 * period;
    // A period longer than a free fall would ask for a pull upward: then the ball waits in hand.
    let fall = sqrt(2.0 * hand.max(0.0) / GRAVITY).min(half).max(1e-6);
    let phase = t - period * crate::math::floor(t / period.max(1e-6));
    let tau = fall - (phase - half).abs();
    if tau <= 0.0 {
        return hand;
    }
    let push = hand / fall - 0.5 * GRAVITY * fall;
    (hand - push * tau - 0.5 * GRAVITY * tau * tau).max(0.0)
}
