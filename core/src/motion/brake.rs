//! The backward pass: caps lowered to what braking can still obey.

use super::Leg;
use super::law::SLOWEST;
use super::limit::Stretch;
use alloc::vec::Vec;

/// Stretches shorter than this, metres, are none.
pub(super) const NOTHING: f64 = 1e-9;

/// A stretch with the cap on w = v² that keeps all later caps too; a straight line in w over s.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bound {
    pub(super) s: [f64; 2],
    pub(super) w: [f64; 2],
    pub(super) leg: usize,
    /// Seconds the foot holds at the end.
    pub(super) hold: f64,
}

impl Bound {
    /// dw/ds.
    pub(super) fn slope(&self) -> f64 {
        (self.w[1] - self.w[0]) / (self.s[1] - self.s[0])
    }
}

/// The bounds of a run that leaves with w no greater than `exit`, in running order.
pub(super) fn bounds(stretches: &[Stretch], legs: &[Leg], brake: f64, exit: f64) -> Vec<Bound> {
    let mut made = Vec::with_capacity(stretches.len() + 4);
    let mut next = exit;
    for stretch in stretches.iter().rev() {
        let leg = stretch.leg;
        let top = legs.get(leg).map_or(SLOWEST, |l| l.effort.top.max(SLOWEST));
        let [w0, w1] = stretch.w.map(|w| w.min(top * top));
        let [s0, s1] = stretch.s;
        let end = w1.min(stretch.w_end).min(next);
        let hold = stretch.hold;
        // Braking and cap are straight lines: they cross at most once, `back` before the end.
        let rise = (w1 - w0) / (s1 - s0) + 2.0 * brake;
        let back = if rise > 0.0 {
            (w1 - end) / rise
        } else {
            f64::INFINITY
        };
        if back > s1 - s0 - NOTHING {
            next = (end + 2.0 * brake * (s1 - s0)).min(w0);
            add(
                &mut made,
                Bound {
                    s: [s0, s1],
                    w: [next, end],
                    leg,
                    hold,
                },
            );
        } else {
            next = w0;
            let mut cap = Bound {
                s: [s0, s1],
                w: [w0, end],
                leg,
                hold,
            };
            if back > NOTHING {
                cap = Bound {
                    s: [s0, s1 - back],
                    w: [w0, end + 2.0 * brake * back],
                    leg,
                    hold: 0.0,
                };
                add(
                    &mut made,
                    Bound {
                        s: [cap.s[1], s1],
                        w: [cap.w[1], end],
                        leg,
                        hold,
                    },
                );
            }
            add(&mut made, cap);
        }
    }
    made.reverse();
    made
}

/// Adds the bound before all others, as one with the next where the two make one line.
fn add(made: &mut Vec<Bound>, bound: Bound) {
    if let Some(next) = made.last_mut() {
        let joined = bound.leg == next.leg && bound.hold == 0.0 && bound.w[1] == next.w[0];
        if joined && (bound.slope() - next.slope()).abs() < 1e-9 {
            (next.s[0], next.w[0]) = (bound.s[0], bound.w[0]);
            return;
        }
    }
    made.push(bound);
}
