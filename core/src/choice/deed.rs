//! What a single defender is seen to do.

use super::Seen;
use super::scene::{GOES, Pair, Scene};
use crate::court::Side;
use crate::defence::Meeting;
use crate::math::{Point, Vec2, angle_of, direction, distance, length, turn_between};
use crate::set::{Coverage, Deed, PlayerId, Read};
use core::f64::consts::PI;

/// A defender so far behind trails, metres: past level, more than a lean.
const BEHIND: f64 = 0.3;
/// And no more than this aside, metres, or than the distance behind.
const ASIDE: f64 = 0.4;
/// Eyes see where a body heads: its place in so many seconds at its pace.
const HEADS: f64 = 0.25;
/// And where it will be level with a screen, as far ahead as this, seconds.
const FORESEES: f64 = 0.8;
/// Whoever goes round will be so far off the cutter's line, metres.
const ROUND: f64 = 0.5;
/// Whoever shoots the gap is so much nearer to where the man comes out than the man, metres.
const AHEAD: f64 = 0.3;
/// A man is out of a screen so long after it, seconds.
const COMES_OUT: f64 = 0.8;
/// A body no more than this before the screen is level with it, metres.
const LEVEL: f64 = 0.2;
/// Between man and screen: no farther off the man and off the line than this, metres.
const LOCK: (f64, f64) = (1.3, 0.5);
/// Off the man and nearer to the ring, metres: on the ball, and off it.
const SAGS: (f64, f64) = (1.5, 2.8);
/// On the low side of the man: so much nearer to the baseline, and no farther off than this, metres.
const LOW: (f64, f64) = (0.3, 2.5);
/// Half the field of view, radians: a man farther off the nose is not seen.
const VIEW: f64 = 100.0 / 180.0 * PI;
// Common practice, no source, for all of these.

/// What decided a read, in numbers. Metres and seconds.
#[derive(Clone, Copy, Debug, PartialEq)]
#[allow(
    missing_docs,
    reason = "`x` the defender, `man` the own man, in every row"
)]
pub enum Measure {
    /// There was nothing to see.
    Nothing,
    /// How the screen is played.
    Plays { coverage: Coverage },
    /// So far behind the man on the man's way; negative: in front.
    Behind {
        x: PlayerId,
        man: PlayerId,
        gap: f64,
    },
    /// So far to the offence's right of the cutter's line; negative: to the left.
    Aside {
        x: PlayerId,
        man: PlayerId,
        off: f64,
    },
    /// So much nearer than the man to where the man comes out; negative: farther.
    Ahead { x: PlayerId, man: PlayerId, by: f64 },
    /// So far from the man, and so far off the line from man to screen.
    Between {
        x: PlayerId,
        man: PlayerId,
        gap: f64,
        off: f64,
    },
    /// Whom the defender has now.
    Has { x: PlayerId, man: PlayerId },
    /// So far from the man.
    Gap {
        x: PlayerId,
        man: PlayerId,
        gap: f64,
    },
    /// So much nearer than the man to the baseline; negative: farther.
    Low { x: PlayerId, man: PlayerId, by: f64 },
    /// The chest is turned so far from the man, radians.
    Turned { x: PlayerId, man: PlayerId, by: f64 },
    /// A pass now would be past every hand by so much; negative: a hand, of that defender, is there
    /// before the ball.
    Lane {
        from: PlayerId,
        to: PlayerId,
        hand: Option<PlayerId>,
        margin: f64,
    },
}

/// Whether a defender is seen to do that; `None` where there is nothing to see it by.
pub(super) fn seen(
    scene: &Scene<'_>,
    read: &Read,
    pair: &Pair,
    does: Deed,
    side: Option<Side>,
) -> Option<Seen> {
    let screen = || scene.meeting(read, Some(pair.man), pair.t);
    match does {
        Deed::Trails => trails(pair),
        Deed::GoesRound => goes_round(scene, pair, screen()?, side),
        Deed::ShootsTheGap => shoots(scene, pair, screen()?),
        Deed::TopLocks => top_locks(pair, screen()?),
        Deed::Switches => Some(Seen {
            holds: pair.has != pair.x,
            measure: Measure::Has {
                x: pair.x,
                man: pair.has,
            },
        }),
        Deed::StepsOut => steps_out(scene, pair),
        Deed::Sags => sags(scene, pair),
        Deed::TurnsHead => turns_head(scene, pair),
        Deed::StaysLow => Some(stays_low(pair)),
    }
}

/// Behind the man, on the way the man goes.
fn trails(p: &Pair) -> Option<Seen> {
    let way = direction(p.v).filter(|_| length(p.v) >= GOES)?;
    let back = p.at - p.defender.at();
    let (gap, aside) = (back.dot(way), back.cross(way).abs());
    Some(Seen {
        holds: gap >= BEHIND && aside <= ASIDE.max(gap),
        measure: Measure::Behind {
            x: p.x,
            man: p.man,
            gap,
        },
    })
}

/// Where eyes see a defender come level with the screen.
fn crosses(p: &Pair, m: &Meeting, course: Vec2) -> Point {
    let v = Vec2::new(p.defender.vx, p.defender.vy);
    let (left, pace) = ((m.by_at - p.defender.at()).dot(course), v.dot(course));
    let soon = if left > 0.0 && pace > GOES {
        left / pace
    } else {
        HEADS
    };
    p.defender.at() + v * soon.min(FORESEES)
}

/// On the way past the screen wide of the cutter's line, and not after the cutter.
fn goes_round(scene: &Scene<'_>, p: &Pair, m: &Meeting, side: Option<Side>) -> Option<Seen> {
    let course = scene.course(m);
    // Across the cutter's line, to the offence's right.
    let right = if course.y.abs() < 1e-3 {
        Vec2::new(1.0, 0.0)
    } else {
        Vec2::new(course.y, -course.x) * course.y.signum()
    };
    let off = (crosses(p, m, course) - m.by_at).dot(right);
    let there = side.is_none_or(|s| s.sign() * off > 0.0);
    Some(Seen {
        holds: scene.about(p, Deed::GoesRound) && off.abs() >= ROUND && there,
        measure: Measure::Aside {
            x: p.x,
            man: p.man,
            off,
        },
    })
}

/// Past the screen, or on its far side, and nearer than the man to where the man comes out.
fn shoots(scene: &Scene<'_>, p: &Pair, m: &Meeting) -> Option<Seen> {
    let (holds, by) = gap(scene, p, m);
    Some(Seen {
        holds,
        measure: Measure::Ahead {
            x: p.x,
            man: p.man,
            by,
        },
    })
}

fn gap(scene: &Scene<'_>, p: &Pair, m: &Meeting) -> (bool, f64) {
    let x = p.defender.at();
    let mut out = scene.defence.meetings().iter();
    let last = out.rfind(|o| (o.action, o.cutter) == (m.action, m.cutter));
    let after = last.unwrap_or(m).by + COMES_OUT;
    let out = scene.timeline.player(m.cutter, after);
    let out = out.map_or(m.by_at, |out| out.at());
    let by = distance(p.at, out) - distance(x, out);
    let off = x - m.screen.at;
    let arm = direction(m.by_at - m.screen.at).unwrap_or(Vec2::ZERO);
    let past = off.dot(scene.course(m)) >= -LEVEL || off.dot(arm) <= -LEVEL;
    (by >= AHEAD && past, by)
}

/// Between the man and the screen that the man wants to use.
fn top_locks(p: &Pair, m: &Meeting) -> Option<Seen> {
    let to = m.screen.at - p.at;
    let way = direction(to)?;
    let x = p.defender.at() - p.at;
    let (gap, off) = (x.dot(way), x.cross(way).abs());
    Some(Seen {
        holds: gap > 0.0 && gap <= LOCK.0.min(length(to)) && off <= LOCK.1.min(gap),
        measure: Measure::Between {
            x: p.x,
            man: p.man,
            gap,
            off,
        },
    })
}

/// On the way out to somebody else while still on the own man.
fn steps_out(scene: &Scene<'_>, p: &Pair) -> Option<Seen> {
    let out = scene.about(p, Deed::StepsOut);
    Some(Seen {
        holds: out && p.has == p.man,
        measure: Measure::Gap {
            x: p.x,
            man: p.man,
            gap: distance(p.defender.at(), p.at),
        },
    })
}

/// Far off the man, toward the ring.
fn sags(scene: &Scene<'_>, p: &Pair) -> Option<Seen> {
    let x = p.defender.at();
    let gap = distance(x, p.at);
    let on_ball = scene.timeline.ball(p.t).holder == Some(p.man);
    let far = if on_ball { SAGS.0 } else { SAGS.1 };
    let nearer = length(x.to_vec2()) < length(p.at.to_vec2());
    Some(Seen {
        holds: (gap >= far && nearer) || scene.about(p, Deed::Sags),
        measure: Measure::Gap {
            x: p.x,
            man: p.man,
            gap,
        },
    })
}

/// Between the man and the baseline, and still guarding.
fn stays_low(p: &Pair) -> Seen {
    let x = p.defender.at();
    let by = p.at.y - x.y;
    Seen {
        holds: by >= LOW.0 && distance(x, p.at) <= LOW.1,
        measure: Measure::Low {
            x: p.x,
            man: p.man,
            by,
        },
    }
}

/// The own man is out of the field of view.
fn turns_head(scene: &Scene<'_>, p: &Pair) -> Option<Seen> {
    let way = direction(p.at - p.defender.at())?;
    let by = turn_between(p.defender.facing, angle_of(way)).abs();
    Some(Seen {
        holds: by > VIEW || scene.about(p, Deed::TurnsHead),
        measure: Measure::Turned {
            x: p.x,
            man: p.man,
            by,
        },
    })
}
