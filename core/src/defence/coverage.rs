//! How screens are played: what the screened defender and the screener's defender want while a
//! screen is on, and on which side of a body they go by.
//!
//! Common practice, no source, for every figure.

use super::STEPS;
use super::offence::{Offence, Step};
use super::plan::Meeting;
use crate::math::{Point, Vec2, direction, distance, length};
use crate::set::{Coverage, Deed, PlayerId};

/// A trailing defender keeps so far behind the cutter's middle, metres.
const TRAIL: f64 = 0.55;
/// On the cutter's way a chaser is faster by no more than this, m/s.
const GAIN: f64 = 1.0;
/// Before the cut the defender comes up to the man: so early, seconds, and so near, metres.
const ATTACH: f64 = 1.6;
const NEAR: f64 = 0.85;
/// How long after the pass-by a screen still matters to those it hit, seconds.
const AFTER: f64 = 0.9;
/// Under a screen the defender waits so far on and so far toward the ring from where the cutter
/// comes out, metres each.
const MEETS: f64 = 0.6;
/// Who was told to go round is on the way for so long after it, seconds, or until so far past it,
/// metres: from there the man is guarded as usual.
const ROUND: (f64, f64) = (1.6, 0.3);
/// A switch is called so long before the pass-by, seconds.
const CALL: f64 = 0.1;
/// Who takes a man over at a switch waits so far from where that man comes out, metres.
const TOUCH: f64 = 0.9;
/// A show lasts so long from the cue on, seconds: 0.6–1.0.
const SHOW: f64 = 0.8;
/// How far below the screen a dropping big stays, and one who plays ice, metres: 1.5–3.0.
const DROP: f64 = 2.2;
const ICE: f64 = 2.5;
/// From so long before the pass-by until so long after it, seconds.
const BACK: (f64, f64) = (1.5, 0.6);
/// Between the man and the screen a top-locking defender stands so far from the man, metres.
const LOCK: f64 = 0.75;
/// Each of two who trap is so far from the ball, metres.
const TRAP: f64 = 0.8;
/// Two trap for as long as the ball stays there, but no longer than this after the pass-by, seconds.
const TRAPPED: f64 = 3.0;
/// A roll that begins later than this after the pass-by, seconds, or is slower than this, m/s, is
/// not tagged; the low man tags from so near, metres.
const ROLLS: (f64, f64) = (3.0, 1.0);
const TAG: f64 = 0.8;

/// What a meeting asks of one defender.
#[derive(Clone, Copy, Debug)]
pub(super) struct Order {
    pub to: Point,
    pub v: Vec2,
    /// On which side of the screener's body to go by: a direction from the body, unit.
    pub round: Option<Vec2>,
    /// The attacker whose way this defender is there to be in.
    pub meets: Option<PlayerId>,
    /// Runs the cutter's own way with eyes for nothing else: into what stands in it.
    pub blind: bool,
    /// No faster than this, m/s.
    pub top: f64,
    /// What it is called where it leaves the own man.
    pub does: Option<Deed>,
}

impl Order {
    pub(super) fn to(to: Point, v: Vec2) -> Self {
        Self {
            to,
            v,
            round: None,
            meets: None,
            blind: false,
            top: f64::INFINITY,
            does: None,
        }
    }

    fn does(self, deed: Deed) -> Self {
        Self {
            does: Some(deed),
            ..self
        }
    }

    fn round(self, side: Vec2) -> Self {
        Self {
            round: Some(side),
            ..self
        }
    }

    pub(super) fn meets(self, who: PlayerId) -> Self {
        Self {
            meets: Some(who),
            ..self
        }
    }
}

/// The side of the body on which the cutter goes by.
pub(super) fn arm(m: &Meeting) -> Vec2 {
    direction(m.by_at - m.screen.at).unwrap_or(Vec2::new(0.0, -1.0))
}

/// What the defender of the cutter wants, who is at `own`; `t` is the instant that is in the
/// defender's mind, `last` the last screen of that run.
pub(super) fn screened(
    m: &Meeting,
    last: &Meeting,
    t: f64,
    (seen, own): (&Step, Point),
    offence: &Offence,
) -> Option<Order> {
    let cutter = seen.place(m.cutter)?;
    let v = seen.velocity(m.cutter);
    if t < m.burst - ATTACH {
        return None;
    }
    if m.asked == Some(Deed::GoesRound) && t >= m.burst {
        let side = m.side.map_or(-arm(m), |s| Vec2::new(s.sign(), 0.0));
        let course = direction(offence.at(m.by).velocity(m.cutter)).unwrap_or(Vec2::ZERO);
        let past = (own - m.by_at).dot(course) > ROUND.1;
        let goes = t < m.by + ROUND.0 && !past;
        let order = Order::to(cutter + v * 0.2, v).round(side);
        return goes.then(|| order.does(Deed::GoesRound));
    }
    // Who is about to catch is closed out to, not run after; but a gate is seen too late.
    let catches = seen.with == Some(m.cutter) && !m.on_ball && !m.gate;
    if t > m.by + AFTER || (catches && t > m.by) {
        return None;
    }
    match m.coverage {
        Coverage::TopLock | Coverage::Ice if t < m.by => {
            // Between the man and the screen, on the screen's high side.
            let way = direction(m.screen.at - cutter)?;
            Some(Order::to(cutter + way * LOCK, v * 0.8).round(arm(m)))
        }
        Coverage::Under | Coverage::Through if t < m.burst => None,
        _ if t < m.burst => attached(m, seen),
        Coverage::Under | Coverage::Through if t > m.by + 0.2 => None,
        Coverage::Under | Coverage::Through if t < last.by => {
            // On the ring's side of every screen to where the man comes out of the last.
            let out = direction(offence.at(last.by).velocity(m.cutter)).unwrap_or(Vec2::ZERO);
            let to_ring = direction(Point::ZERO - last.by_at).unwrap_or(Vec2::ZERO);
            Some(Order::to(last.by_at + (out + to_ring) * MEETS, Vec2::ZERO).round(-arm(m)))
        }
        Coverage::Under | Coverage::Through => Some(Order::to(cutter + v * 0.25, v).round(-arm(m))),
        Coverage::Switch if t > m.by - CALL => None,
        _ => {
            // Past the screen a man who has stopped is guarded as usual.
            let follows = t < m.by + 0.1 || length(v) > 1.5;
            follows.then(|| Order {
                blind: true,
                ..behind(m, t, cutter, v, offence)
            })
        }
    }
}

/// A man who is about to use a screen is met early and held close, on the side from which they can be
/// followed: the ring's, not the screen's.
fn attached(m: &Meeting, seen: &Step) -> Option<Order> {
    let cutter = seen.place(m.cutter)?;
    // The ball's man is guarded as usual, and so is one at the ring: there is no room behind.
    if m.on_ball || length(cutter.to_vec2()) < 4.0 * NEAR {
        return None;
    }
    let to_screen = direction(m.screen.at - cutter).unwrap_or(Vec2::ZERO);
    let to_ring = direction(Point::ZERO - cutter)?;
    // Where the screen lies toward the ring, that side is enough.
    let off = 0.5 * (1.0 - to_ring.dot(to_screen).max(0.0));
    let way = direction(to_ring - to_screen * off)?;
    Some(Order::to(cutter + way * NEAR, seen.velocity(m.cutter)))
}

/// The place on the way that the cutter ran, no faster round its bends than that way allows: over
/// the screen on the same side, through the gate while it is open.
fn behind(m: &Meeting, t: f64, cutter: Point, v: Vec2, offence: &Offence) -> Order {
    let mut back = t;
    while back > m.burst {
        match offence.place(m.cutter, back) {
            Some(p) if distance(p, cutter) >= TRAIL => {
                let pace = length(offence.at(back).velocity(m.cutter));
                return Order {
                    top: pace + GAIN,
                    ..Order::to(p, v)
                };
            }
            _ => back -= 1.0 / f64::from(STEPS),
        }
    }
    Order::to(cutter, v)
}

/// What the screener's defender wants.
pub(super) fn screener(m: &Meeting, t: f64, seen: &Step) -> Option<Order> {
    let s = seen.place(m.screener)?;
    let cutter = seen.place(m.cutter)?;
    let v = seen.velocity(m.cutter);
    let stay = |to: Point| Some(Order::to(to, Vec2::ZERO));
    let to_ring = direction(Point::ZERO - s).unwrap_or(Vec2::ZERO);
    let down = t >= (m.burst - 0.5).min(m.by - BACK.0) && t <= m.by + BACK.1;
    let show = m.steps_out || m.coverage == Coverage::Show;
    match m.coverage {
        _ if show && t >= m.cue - 0.4 && t <= m.cue + SHOW => {
            // Out into the cutter's way, square to it.
            let way = direction(m.by_at - s)?;
            let ahead = direction(v).unwrap_or(way);
            stay(m.by_at + way * 0.35 + ahead * 0.8).map(|o| o.meets(m.cutter).does(Deed::StepsOut))
        }
        Coverage::Drop if down => stay(s + to_ring * DROP),
        Coverage::Ice if down => {
            let outward = m.screen.at.x.signum() * 0.6;
            stay(s + to_ring * ICE + Vec2::new(outward, -0.4))
        }
        Coverage::Blitz if t >= m.cue && t <= m.by + TRAPPED && seen.with == Some(m.cutter) => {
            let way = direction(s - cutter).unwrap_or(to_ring);
            let trap = Order::to(cutter + way * TRAP, v * 0.9);
            Some(trap.meets(m.cutter).does(Deed::StepsOut))
        }
        Coverage::Switch if t >= m.cue - 0.5 && t <= m.by => {
            // Touches up: waits where the cutter comes out, toward the ball on the ring's side.
            let from = |p: Point| direction(p - m.by_at).unwrap_or(to_ring);
            let way = direction(from(Point::ZERO) + from(seen.ball)).unwrap_or(to_ring);
            stay(m.by_at + way * TOUCH)
        }
        Coverage::Through if t >= m.burst && t <= m.by + 0.3 => {
            // A step off, so that the team mate finds a way between.
            stay(s + to_ring * 1.5)
        }
        // At the screener, out of the team mate's way.
        _ if (down || t >= m.burst) && t <= m.by + 0.2 => stay(s + to_ring * 0.85 - arm(m) * 0.35),
        _ => None,
    }
}

/// Whether both change men now.
pub(super) fn switches(m: &Meeting, t: f64) -> bool {
    m.coverage == Coverage::Switch && t >= m.by - CALL
}

/// The low man tags a screener who rolls after a ball screen.
pub(super) fn tag(m: &Meeting, t: f64, seen: &Step) -> Option<Order> {
    let on = m.coverage == Coverage::WeakSideTag && m.on_ball;
    if !on || t < m.by || t > m.by + ROLLS.0 {
        return None;
    }
    let roller = seen.place(m.screener)?;
    let to_ring = direction(Point::ZERO - roller)?;
    let v = seen.velocity(m.screener);
    let order = Order::to(roller + to_ring * TAG, v).meets(m.screener);
    (v.dot(to_ring) > ROLLS.1).then_some(order.does(Deed::Sags))
}
