//! How screens are played: what the screened defender and the screener's defender want while a
//! screen is on, and on which side of a body they go by.

use super::offence::{Offence, Step};
use super::plan::Meeting;
use crate::math::{Point, Vec2, direction, distance, length};
use crate::set::{Coverage, PlayerId};

/// A trailing defender keeps so far behind the cutter's middle.
const TRAIL: f64 = 0.55;
/// How long after the pass-by a screen still matters to those it hit.
const AFTER: f64 = 0.9;
/// A switch is called so long before the pass-by.
const CALL: f64 = 0.1;
/// A show lasts so long. Common practice, no source: 0.6–1.0 s.
const SHOW: f64 = 0.8;
/// How far below the screen a dropping big stays.
const DROP: f64 = 2.2;
const ICE: f64 = 2.5;

/// What a meeting asks of one defender.
#[derive(Clone, Copy, Debug)]
pub(super) struct Order {
    pub to: Point,
    pub v: Vec2,
    /// On which side of the screener's body to go by: a direction from the body, unit.
    pub round: Option<Vec2>,
}

/// The side of the body on which the cutter goes by.
pub(super) fn arm(m: &Meeting) -> Vec2 {
    direction(m.by_at - m.screen.at).unwrap_or(Vec2::new(1.0, 0.0))
}

/// What the defender of the cutter wants; `t` is the instant that is in the defender's mind.
pub(super) fn screened(
    m: &Meeting,
    t: f64,
    seen: &Step,
    offence: &Offence,
    reaction: f64,
) -> Option<Order> {
    let cutter = seen.place(m.cutter)?;
    let v = seen.velocity(m.cutter);
    if t > m.by + AFTER {
        return None;
    }
    let before = t < m.burst;
    match m.coverage {
        Coverage::TopLock | Coverage::Ice if t < m.by => {
            // Between the man and the screen, on the screen's high side.
            let way = direction(m.screen.at - cutter)?;
            Some(Order {
                to: cutter + way * 0.75,
                v: v * 0.8,
                round: Some(arm(m)),
            })
        }
        _ if before => None,
        Coverage::Under | Coverage::Through => {
            let round = -arm(m);
            // Straight to where the man comes out.
            Some(Order {
                to: cutter + v * 0.25,
                v,
                round: Some(round),
            })
        }
        Coverage::Switch if t > m.by - CALL => None,
        _ => {
            if let Some(side) = m.side {
                let round = Vec2::new(side.sign(), 0.0);
                return Some(Order {
                    to: cutter + v * 0.2,
                    v,
                    round: Some(round),
                });
            }
            // The way the cutter ran, so far behind: over the screen on the same side, through the
            // gate while it is open.
            let mut back = t;
            let mut at = cutter;
            while back > m.burst - 1.0 {
                let p = offence.at(back).place(m.cutter)?;
                if distance(p, cutter) >= TRAIL {
                    at = p;
                    break;
                }
                back -= 1.0 / 60.0;
            }
            let past = t > m.by + 0.3 * reaction;
            (!past || length(v) > 1.5).then_some(Order {
                to: at,
                v,
                round: None,
            })
        }
    }
}

/// What the screener's defender wants.
pub(super) fn screener(m: &Meeting, t: f64, seen: &Step) -> Option<Order> {
    let s = seen.place(m.screener)?;
    let cutter = seen.place(m.cutter)?;
    let v = seen.velocity(m.cutter);
    let stay = |to: Point| {
        Some(Order {
            to,
            v: Vec2::ZERO,
            round: None,
        })
    };
    let to_ring = direction(Point::ZERO - s).unwrap_or(Vec2::ZERO);
    let show = m.steps_out || m.coverage == Coverage::Show;
    match m.coverage {
        _ if show && t >= m.cue - 0.2 && t <= m.cue + SHOW => {
            // Out into the cutter's way, square to it.
            let way = direction(m.by_at - s)?;
            stay(m.by_at + way * 0.35 + direction(v).unwrap_or(way) * 0.8)
        }
        Coverage::Drop if t >= m.burst - 0.5 && t <= m.by + 0.6 => stay(s + to_ring * DROP),
        Coverage::Ice if t >= m.burst - 0.5 && t <= m.by + 0.6 => {
            stay(s + to_ring * ICE + Vec2::new(m.screen.at.x.signum() * 0.6, -0.4))
        }
        Coverage::Blitz if t >= m.cue && t <= m.by + 1.5 => {
            let way = direction(s - cutter).unwrap_or(to_ring);
            Some(Order {
                to: cutter + way * 0.8,
                v: v * 0.9,
                round: None,
            })
        }
        Coverage::Through if t >= m.burst && t <= m.by + 0.3 => {
            // A step off, so that the team mate finds a way between.
            stay(s + to_ring * 1.5)
        }
        _ if t >= m.burst && t <= m.by + 0.2 => stay(s + to_ring * 1.0),
        _ => None,
    }
}

/// Whether both change men now.
pub(super) fn switches(m: &Meeting, t: f64) -> bool {
    m.coverage == Coverage::Switch && t >= m.by - CALL
}

/// Whom the low man tags and until when: the screener who rolls after a ball screen.
pub(super) fn tagged(m: &Meeting, t: f64) -> Option<PlayerId> {
    let on = m.coverage == Coverage::WeakSideTag && m.on_ball;
    (on && t >= m.by && t <= m.by + 0.9).then_some(m.screener)
}
