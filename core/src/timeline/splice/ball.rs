//! The ball through a fork: a dribble goes on to a whole bounce, a ball in the air to its catch.

use crate::math::{Listed, Point, Vec2, ceil};
use crate::timeline::hands::{self, Carry, How};
use crate::timeline::{BallSpan, BallUse, Frame, Timeline};
use crate::timing::Coming;
use alloc::vec::Vec;

/// A dribbled ball is taken up to the chest in so many seconds.
const TAKE_UP: f64 = 0.25;
/// What is dribbled for less than this longer is taken up at once, seconds: two steps.
const LONGER: f64 = 0.4;
// Common practice, no source.

impl Timeline {
    /// What the ball does at `t`.
    pub(crate) fn ball_use(&self, t: f64) -> Option<BallSpan> {
        let after = self.spans.partition_point(|s| s.start < t);
        self.spans.get(after.checked_sub(1)?).copied()
    }

    /// Seconds after `t` until the ball is in two hands again: out of the air, or up from the floor.
    pub(crate) fn in_hand_after(&self, t: f64) -> f64 {
        match self.last_carry(t) {
            Some(carry) => match carry.how {
                How::Held { chest, .. } => {
                    // Caught high, or on its way up to be thrown.
                    let z = carry.at(t, &[None; 5]).z;
                    if (z - chest).abs() > 0.02 {
                        TAKE_UP
                    } else {
                        0.0
                    }
                }
                How::Dribbled { .. } => lifted(carry, t).end - t,
                _ => carry.end - t,
            },
            None => 0.0,
        }
    }

    /// The pass that is in the air at `t`; its instant is counted from then.
    pub(crate) fn coming(&self, t: f64) -> Option<Coming> {
        let span = self.ball_use(t).filter(|s| s.end > t)?;
        let BallUse::Pass { from, to, .. } = span.what else {
            return None;
        };
        let thrown = self.player(from, span.start)?;
        Some(Coming {
            to,
            from: Point::new(thrown.x, thrown.y),
            at: span.end - t,
        })
    }

    fn last_carry(&self, t: f64) -> Option<&Carry> {
        let after = self.carries.partition_point(|c| c.start < t);
        self.carries.get(after.checked_sub(1)?)
    }

    /// The ball's ways, and when the branch's own begin.
    pub(super) fn carries_into(&self, rest: &Self, at: f64) -> (Vec<Carry>, f64) {
        let kept = self.carries.partition_point(|c| c.start < at);
        let mut out: Vec<Carry> = self.carries.iter().take(kept).copied().listed();
        let mut joins = at;
        let mut dribbled = false;
        if let Some(last) = out.last().copied() {
            match last.how {
                How::Held { .. } => {}
                How::Dribbled { .. } => {
                    let until = match rest.carries.first().map(|c| (c.how, c.end)) {
                        Some((How::Dribbled { .. }, end)) => at + end,
                        _ => at,
                    };
                    joins = dribbled_on(&last, at, until, &mut out);
                    dribbled = true;
                }
                How::Air(_) => {
                    joins = last.end;
                    out.push(self.met(rest, &last, at));
                }
                _ => joins = last.end,
            }
        }
        let from = self.ball_height(joins, &out);
        let mut first = true;
        for (i, carry) in rest.carries.iter().enumerate() {
            let (start, end) = ((carry.start + at).max(joins), carry.end + at);
            let same = dribbled && first && matches!(carry.how, How::Dribbled { .. });
            if end <= start + 1e-9 || same {
                continue;
            }
            let next = rest.carries.get(i + 1);
            let dribble = next.filter(|c| matches!(c.how, How::Dribbled { .. }));
            let comes_down = dribble.is_some_and(|c| c.end + at - joins > 3.0 * TAKE_UP);
            let held = matches!(carry.how, How::Held { .. });
            if first && held && comes_down && end - start < TAKE_UP {
                // What was caught high just now has no time to come down before that dribble.
                continue;
            }
            if first && dribbled && start > joins + 1e-9 && !matches!(carry.how, How::Held { .. }) {
                // Taken up, and not thrown yet.
                out.extend(held_on(out.last(), joins, start));
                first = false;
            }
            let mut start = if first { joins } else { start };
            if let How::Dribbled { who, chest, .. } = carry.how
                && first
                && (from - chest).abs() > 0.02
                && end - start > 3.0 * TAKE_UP
            {
                // Down from where it was caught first.
                let held = How::Held {
                    who,
                    from,
                    to: chest,
                    chest,
                };
                out.push(Carry::new(start, start + 2.0 * TAKE_UP, held));
                start += 2.0 * TAKE_UP;
            }
            let how = match carry.how {
                How::Held { who, to, chest, .. } if first => How::Held {
                    who,
                    from,
                    to,
                    chest,
                },
                // No time for a bounce.
                How::Dribbled { who, chest, .. } if end - start < TAKE_UP => How::Held {
                    who,
                    from: if first { from } else { chest },
                    to: chest,
                    chest,
                },
                dribble @ How::Dribbled { .. } => dribble.in_bounces(hands::bounces(end - start)),
                how => how,
            };
            out.push(Carry::new(start, end, how));
            first = false;
        }
        (out, joins)
    }

    /// The flight `carry`, met where its receiver is in `rest`: bent by what is lacking.
    fn met(&self, rest: &Self, carry: &Carry, at: f64) -> Carry {
        let span = self.ball_use(at).map(|s| s.what);
        let mut drift = Vec2::ZERO;
        if let Some(BallUse::Pass { to, .. }) = span
            && let (Some(was), Some(is)) =
                (self.player(to, carry.end), rest.player(to, carry.end - at))
        {
            drift = hands::hands(&is) - hands::hands(&was);
        }
        if carry.drift == Vec2::ZERO {
            Carry {
                start: at,
                drift,
                ..*carry
            }
        } else {
            // Bent before, by a read just made.
            Carry {
                drift: carry.drift + drift,
                ..*carry
            }
        }
    }

    fn ball_height(&self, t: f64, carries: &[Carry]) -> f64 {
        let mut frame = Frame::default();
        self.frame(t, &mut frame);
        carries.last().map_or(0.0, |c| c.at(t, &frame.players).z)
    }

    pub(super) fn spans_into(&self, rest: &Self, at: f64, joins: f64) -> Vec<BallSpan> {
        let mut out: Vec<BallSpan> = self.spans.iter().filter(|s| s.start < at).copied().listed();
        if let Some(last) = out.last_mut() {
            last.end = joins;
        }
        for span in &rest.spans {
            let start = out.last().map_or(at, |s| s.end);
            let end = (span.end + at).max(joins);
            if end <= start + 1e-9 {
                continue;
            }
            match out.last_mut() {
                Some(last) if last.what == span.what && is_hand(span.what) => last.end = end,
                _ => out.push(BallSpan {
                    start,
                    end,
                    what: span.what,
                }),
            }
        }
        out
    }
}

/// Whether the ball is with somebody.
fn is_hand(what: BallUse) -> bool {
    matches!(what, BallUse::Held(_) | BallUse::Dribbled(_))
}

/// The dribble `carry` from `at` on, to the first whole bounce at which there is time to take the
/// ball up.
fn lifted(carry: &Carry, at: f64) -> Carry {
    if carry.stay[1] - at < TAKE_UP {
        // On its way up already.
        return *carry;
    }
    let wanted = (at + TAKE_UP).max(carry.stay[0] + 1.8 * TAKE_UP);
    let up = bounced(carry, at, wanted);
    Carry {
        stay: [carry.stay[0], up.end],
        ..up
    }
}

/// The ball in the hands of who dribbled it.
fn held_on(dribbled: Option<&Carry>, start: f64, end: f64) -> Option<Carry> {
    let How::Dribbled { who, chest, .. } = dribbled?.how else {
        return None;
    };
    let (from, to) = (chest, chest);
    Some(Carry::new(
        start,
        end,
        How::Held {
            who,
            from,
            to,
            chest,
        },
    ))
}

/// The same to the first whole bounce from `until` on.
fn bounced(carry: &Carry, at: f64, until: f64) -> Carry {
    let How::Dribbled { bounces, .. } = carry.how else {
        return *carry;
    };
    let period = (carry.end - carry.since) / f64::from(bounces.max(1));
    let count = ceil((until - carry.since) / period.max(0.1) - 1e-9).max(1.0);
    Carry {
        start: at,
        end: carry.since + count * period,
        how: carry.how.in_bounces(count as u32),
        ..*carry
    }
}

/// The dribble `carry` from `at` on as far as the branch dribbles: at its own pace to the next whole
/// bounce, then in whole bounces to `until`, or up at once where that comes soon.
fn dribbled_on(carry: &Carry, at: f64, until: f64, out: &mut Vec<Carry>) -> f64 {
    let up = lifted(carry, at);
    let first = bounced(carry, at, at);
    if carry.stay[1] - at < TAKE_UP || until < up.end + LONGER {
        out.push(up);
        return up.end;
    }
    let stay = [carry.stay[0], until];
    out.push(Carry { stay, ..first });
    let count = hands::bounces(until - first.end);
    let next = Carry::new(first.end, until, carry.how.in_bounces(count));
    out.push(Carry { stay, ..next });
    until
}
