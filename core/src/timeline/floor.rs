//! Where everybody is at every sample of a facing track: worked out once for all eyes.

use super::{BallSpan, BallUse};
use crate::math::{Listed, Point, Vec2};
use crate::motion::facing;
use crate::set::PlayerId;
use crate::timing::PlacedRun;
use alloc::vec::Vec;

/// Slower than this a player does not have to look where the feet go, m/s.
const STROLL: f64 = 0.7;

/// One player at one sample.
#[derive(Clone, Copy, Debug)]
pub(super) struct Foot {
    pub at: Point,
    /// The way the feet go, where they go faster than a stroll.
    pub way: Option<Vec2>,
}

/// The ball at one sample.
#[derive(Clone, Copy, Debug, Default)]
struct Seen {
    with: Option<PlayerId>,
    at: Option<Point>,
}

/// All players and the ball at all samples.
#[derive(Debug)]
pub(super) struct Floor {
    feet: [Vec<Foot>; 5],
    ball: Vec<Seen>,
}

impl Floor {
    /// Samples from 0 to `duration`; `runs` in order of start.
    pub(super) fn new(
        starts: &[Option<Point>; 5],
        runs: &[PlacedRun],
        spans: &[BallSpan],
        duration: f64,
    ) -> Self {
        let count = facing::samples(duration);
        let feet = PlayerId::ALL.map(|who| {
            let Some(mut at) = starts.get(who.index()).copied().flatten() else {
                return Vec::new();
            };
            let mut own = runs.iter().filter(|r| r.run.who == who).peekable();
            let mut now: Option<&PlacedRun> = None;
            let mut node = 0;
            let mut feet = Vec::with_capacity(count);
            for i in 0..count {
                let t = facing::time_of(i);
                while let Some(next) = own.next_if(|r| r.start <= t) {
                    (now, node) = (Some(next), 0);
                }
                let mut way = None;
                if let Some(r) = now {
                    let since = t - r.start;
                    let sample = r.run.law().at(since);
                    let pose = r.run.path().pose_onward(sample.s, &mut node);
                    at = pose.0;
                    if since >= r.run.duration() {
                        now = None;
                    } else if sample.v > STROLL {
                        way = Some(pose.1);
                    }
                }
                feet.push(Foot { at, way });
            }
            feet
        });
        let ball = Vec::new();
        let mut floor = Self { feet, ball };
        let mut spans = spans.iter().peekable();
        let mut now: Option<&BallSpan> = None;
        floor.ball = (0..count)
            .map(|i| {
                let t = facing::time_of(i);
                while let Some(next) = spans.next_if(|s| s.start <= t) {
                    now = Some(next);
                }
                now.map_or_else(Seen::default, |span| floor.seen(span, t))
            })
            .listed();
        floor
    }

    /// Roughly where the ball is during `span`.
    fn seen(&self, span: &BallSpan, t: f64) -> Seen {
        let at = |p: PlayerId| self.foot(p, t).map(|f| f.at);
        let (with, at) = match span.what {
            BallUse::Held(p) | BallUse::Dribbled(p) => (Some(p), at(p)),
            BallUse::Pass { from, to, .. } | BallUse::Handoff { from, to } => {
                let share = (t - span.start) / (span.end - span.start).max(1e-6);
                let ends = at(from).zip(at(to));
                (None, ends.map(|(a, b)| a.lerp(b, share.clamp(0.0, 1.0))))
            }
            BallUse::Shot(_) | BallUse::Through => (None, Some(Point::ZERO)),
        };
        Seen { with, at }
    }

    /// Where `who` sees the ball; `None` while it is in the own hands.
    pub(super) fn ball(&self, who: PlayerId, t: f64) -> Option<Point> {
        let seen = self.ball.get(facing::sample_of(t))?;
        seen.at.filter(|_| seen.with != Some(who))
    }

    /// A player at the sample nearest to `t`.
    pub(super) fn foot(&self, who: PlayerId, t: f64) -> Option<&Foot> {
        let feet = self.feet.get(who.index())?;
        feet.get(facing::sample_of(t).min(feet.len().checked_sub(1)?))
    }
}
