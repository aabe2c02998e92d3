//! Who is where when a read is asked.

use super::Seen;
use super::deed::{self, Measure};
use crate::defence::{Defence, DefenderState, Meeting};
use crate::looks;
use crate::math::{Point, Vec2, direction, distance};
use crate::set::{Condition, Coverage, Deed, PlayerId, Read, Set};
use crate::timeline::Timeline;

/// A body's velocity is taken over so many seconds before the instant.
const BACK: f64 = 1.0 / 30.0;
/// What a defender is about shows after so many seconds. Common practice, no source.
const SHOWS: f64 = 0.1;
/// An attacker slower than this goes nowhere yet, m/s. Common practice, no source.
pub(super) const GOES: f64 = 1.0;

/// A line and five who defend it.
#[derive(Clone, Copy, Debug)]
pub struct Scene<'a> {
    /// What is played.
    pub set: &'a Set,
    /// When it happens.
    pub timeline: &'a Timeline,
    /// The five.
    pub defence: &'a Defence,
}

/// A defender, the own man, and the screen between them, at the instant of a read.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pair {
    pub x: PlayerId,
    pub defender: DefenderState,
    /// Whom `x` guarded when the read's action began.
    pub man: PlayerId,
    pub at: Point,
    /// How the man moves, m/s.
    pub v: Vec2,
    /// Whom `x` guards now.
    pub has: PlayerId,
    pub t: f64,
}

impl Scene<'_> {
    /// What is seen of a read's condition at `t` seconds.
    #[must_use]
    pub fn seen(&self, read: &Read, t: f64) -> Seen {
        let nothing = Seen {
            holds: false,
            measure: Measure::Nothing,
        };
        match read.condition {
            Condition::Coverage(coverage) => self.coverage(read, coverage, t),
            Condition::Does { who, does, side } => self
                .pair(read, who, t)
                .and_then(|pair| deed::seen(self, read, &pair, does, side))
                .unwrap_or(nothing),
            Condition::Separation { who, under } => {
                let gap = self.guard_of(who, t).and_then(|x| {
                    let man = self.timeline.player(who, t)?;
                    let gap = distance(self.defence.state(x, t)?.at(), man.at());
                    Some((x, gap))
                });
                gap.map_or(nothing, |(x, gap)| Seen {
                    holds: gap < under,
                    measure: Measure::Gap { x, man: who, gap },
                })
            }
            Condition::LaneClosed { from, to } => {
                let lane = looks::lane(self.timeline, self.defence, (from, to), t);
                lane.map_or(nothing, |(margin, hand)| Seen {
                    holds: margin < 0.0,
                    measure: Measure::Lane {
                        from,
                        to,
                        hand,
                        margin,
                    },
                })
            }
        }
    }

    /// The coverage that meets the screen which the read is about; else what all five play.
    fn coverage(&self, read: &Read, asked: Coverage, t: f64) -> Seen {
        let meets = self.meeting(read, None, t).map(|m| m.coverage);
        let plays = meets.unwrap_or(self.defence.coverage());
        Seen {
            holds: asked == plays || asked == self.defence.coverage(),
            measure: Measure::Plays { coverage: plays },
        }
    }

    fn pair(&self, read: &Read, x: PlayerId, t: f64) -> Option<Pair> {
        let id = self.set.named(&read.at.action);
        let rows = self.timeline.actions().iter();
        let start = rows.filter(|r| Some(r.id) == id).map(|r| r.start);
        let man = self.defence.man_of(x, start.fold(t, f64::min));
        Some(Pair {
            x,
            defender: self.defence.state(x, t)?,
            man,
            at: self.timeline.player(man, t)?.at(),
            v: self.velocity(man, t)?,
            has: self.defence.man_of(x, t),
            t,
        })
    }

    fn velocity(&self, who: PlayerId, t: f64) -> Option<Vec2> {
        let at = |t: f64| self.timeline.player(who, t).map(|p| p.at());
        Some((at(t)? - at(t - BACK)?) / BACK)
    }

    /// Whether a defender has been about that for long enough to be seen.
    pub(super) fn about(&self, p: &Pair, deed: Deed) -> bool {
        let at = |t: f64| self.defence.deed_of(p.x, t) == Some(deed);
        at(p.t) && at(p.t - SHOWS)
    }

    /// Who guards `man` at `t`.
    pub(super) fn guard_of(&self, man: PlayerId, t: f64) -> Option<PlayerId> {
        let mut all = PlayerId::ALL.into_iter();
        all.find(|x| self.set.player(*x).is_some() && self.defence.man_of(*x, t) == man)
    }

    /// The use of a screen that a read is about: of its action, by its screener where it names one;
    /// the next to come, else the last. `of`: of the screens that this player uses or sets.
    pub(super) fn meeting(&self, read: &Read, of: Option<PlayerId>, t: f64) -> Option<&Meeting> {
        let id = self.set.named(&read.at.action);
        let mine = |m: &&Meeting| of.is_none_or(|p| m.cutter == p || m.screener == p);
        let all = || self.defence.meetings().iter().filter(mine);
        let named =
            |m: &&Meeting| Some(m.action) == id && read.at.of.is_none_or(|p| m.screener == p);
        let to_come = |m: &&Meeting| m.by >= t - 1e-9;
        all()
            .filter(named)
            .find(to_come)
            .or_else(|| all().rfind(named))
            .or_else(|| all().find(to_come))
            .or_else(|| all().next_back())
    }

    /// The way a meeting's cutter goes as the screen is passed.
    pub(super) fn course(&self, m: &Meeting) -> Vec2 {
        let at = |t: f64| self.timeline.player(m.cutter, t).map(|p| p.at());
        let way = at(m.by - BACK).zip(at(m.by + BACK));
        way.and_then(|(a, b)| direction(b - a))
            .unwrap_or(Vec2::ZERO)
    }
}
