//! State of all movers and the ball at any instant, and the timetable behind it.

mod ball;
mod build;
mod floor;
mod frame;
mod gaze;
mod hands;
mod possession;
mod slow;
#[cfg(feature = "authoring")]
mod splice;
mod timetable;

pub use ball::{BallSpan, BallUse};
pub use frame::{BallState, Frame, MoverState};
pub use slow::Slowed;
#[cfg(feature = "authoring")]
pub use slow::slow;
pub use timetable::{TieEnd, TimedAction, TimedBeat, TimedTie, Wait};

#[cfg(feature = "authoring")]
pub(crate) use splice::Splice;

use crate::athlete::Limits;
use crate::choreography::Screen;
use crate::math::{BezPath, Point};
use crate::motion::{Sample, facing};
use crate::set::PlayerId;
use crate::timing::{PlacedRun, Run};
use alloc::vec::Vec;
use hands::Carry;

/// Everything that can be asked of a scheduled set.
///
/// Any instant costs the same, in any order, and allocates nothing: a search in a short table and
/// an interpolation.
#[derive(Clone, Debug)]
pub struct Timeline {
    duration: f64,
    movers: [Option<Mover>; 5],
    carries: Vec<Carry>,
    spans: Vec<BallSpan>,
    actions: Vec<TimedAction>,
    trails: Vec<Option<Trail>>,
    ties: Vec<TimedTie>,
    beats: Vec<TimedBeat>,
    screens: Vec<TimedScreen>,
    limits: [Limits; 5],
    /// When its read is made, of a branch.
    #[cfg(feature = "authoring")]
    begins: f64,
}

/// A screen while it stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TimedScreen {
    /// Who, where, which way.
    pub screen: Screen,
    /// Still from here …
    pub set: f64,
    /// … until the screener may leave, seconds.
    pub free: f64,
    /// When a gate starts to shut.
    pub shut: Option<f64>,
}

#[derive(Clone, Debug)]
struct Mover {
    start: Point,
    runs: Vec<PlacedRun>,
    facing: facing::Track,
}

#[derive(Clone, Debug)]
struct Trail {
    who: PlayerId,
    /// The whole way of the action.
    whole: BezPath,
    /// Its pieces: index of the mover's run, metres from, metres to.
    pieces: Vec<(usize, f64, f64)>,
}

impl Mover {
    fn run_at(&self, t: f64) -> Option<&PlacedRun> {
        let after = self.runs.partition_point(|r| r.start <= t);
        self.runs.get(after.checked_sub(1)?)
    }

    /// Place and speed on the run that is under way or was the last.
    fn sample(&self, t: f64) -> Option<(&Run, Sample)> {
        let PlacedRun { start, run } = self.run_at(t)?;
        let mut sample = run.law().at(t - start);
        if t - start >= run.duration() {
            sample.v = 0.0;
        }
        Some((run, sample))
    }

    fn place(&self, t: f64) -> Point {
        self.sample(t)
            .map_or(self.start, |(run, sample)| run.path().point(sample.s))
    }

    fn state(&self, t: f64) -> MoverState {
        let (p, speed) = match self.sample(t) {
            Some((run, sample)) => (run.path().point(sample.s), sample.v),
            None => (self.start, 0.0),
        };
        MoverState {
            x: p.x,
            y: p.y,
            facing: self.facing.at(t),
            speed,
        }
    }
}

impl Timeline {
    /// Seconds from the first instant to the last.
    #[must_use]
    pub fn duration(&self) -> f64 {
        self.duration
    }

    /// Fills `out` with everything at `t`; beyond the ends, the ends hold.
    pub fn frame(&self, t: f64, out: &mut Frame) {
        let t = t.clamp(0.0, self.duration);
        out.t = t;
        for (slot, mover) in out.players.iter_mut().zip(&self.movers) {
            *slot = mover.as_ref().map(|m| m.state(t));
        }
        out.ball = self.ball_among(t, &out.players);
    }

    /// One player at `t`.
    #[must_use]
    pub fn player(&self, id: PlayerId, t: f64) -> Option<MoverState> {
        let mover = self.movers.get(id.index())?.as_ref()?;
        Some(mover.state(t.clamp(0.0, self.duration)))
    }

    /// Where one player stands at `t`.
    pub(crate) fn place(&self, id: PlayerId, t: f64) -> Option<Point> {
        let mover = self.movers.get(id.index())?.as_ref()?;
        Some(mover.place(t.clamp(0.0, self.duration)))
    }

    /// The way of one player from `from` to `to`, seconds.
    pub(crate) fn way(&self, id: PlayerId, from: f64, to: f64) -> BezPath {
        let mut out = BezPath::new();
        let mover = self.movers.get(id.index()).and_then(Option::as_ref);
        for PlacedRun { start, run } in mover.iter().flat_map(|m| &m.runs) {
            let at = |t: f64| run.law().at((t - start).clamp(0.0, run.duration())).s;
            let (s0, s1) = (at(from), at(to));
            if s1 - s0 > 1e-3 {
                out.extend(run.path().between(s0, s1).elements().iter().copied());
            }
        }
        out
    }

    /// How fast one player is at `t`, m/s; 0 of one who is not there.
    pub(crate) fn speed(&self, id: PlayerId, t: f64) -> f64 {
        let mover = self.movers.get(id.index()).and_then(Option::as_ref);
        let sample = mover.and_then(|m| m.sample(t.clamp(0.0, self.duration)));
        sample.map_or(0.0, |(_, sample)| sample.v)
    }

    /// The ball at `t`.
    #[must_use]
    pub fn ball(&self, t: f64) -> BallState {
        let mut frame = Frame::default();
        self.frame(t, &mut frame);
        frame.ball
    }

    fn ball_among(&self, t: f64, players: &[Option<MoverState>; 5]) -> BallState {
        let after = self.carries.partition_point(|c| c.start <= t);
        match self.carries.get(after.max(1) - 1) {
            Some(carry) => carry.at(t, players),
            None => BallState::default(),
        }
    }

    /// The timetable, a row a player and action, in written order.
    #[must_use]
    pub fn actions(&self) -> &[TimedAction] {
        &self.actions
    }

    /// Who waited for whom.
    #[must_use]
    pub fn ties(&self) -> &[TimedTie] {
        &self.ties
    }

    /// When each beat shows.
    #[must_use]
    pub fn beats(&self) -> &[TimedBeat] {
        &self.beats
    }

    /// The life of the ball.
    #[must_use]
    pub fn ball_spans(&self) -> &[BallSpan] {
        &self.spans
    }

    /// Everybody who stands as a screen.
    #[must_use]
    pub fn screens(&self) -> &[TimedScreen] {
        &self.screens
    }

    /// A player's limits.
    #[must_use]
    pub fn limits(&self, id: PlayerId) -> &Limits {
        self.limits.get(id.index()).unwrap_or(&self.limits[0])
    }

    /// Index of the beat that shows at `t`.
    #[must_use]
    pub fn beat_at(&self, t: f64) -> usize {
        self.beats.partition_point(|b| b.start <= t).max(1) - 1
    }

    /// The whole way on the floor of one row of [`Timeline::actions`], metres; `None` for what is
    /// done standing.
    #[must_use]
    pub fn trail(&self, action: usize) -> Option<&BezPath> {
        self.trails.get(action)?.as_ref().map(|t| &t.whole)
    }

    /// The part of that way that is behind the player at `t`.
    #[must_use]
    pub fn trail_until(&self, action: usize, t: f64) -> BezPath {
        let mut out = BezPath::new();
        let Some(trail) = self.trails.get(action).and_then(Option::as_ref) else {
            return out;
        };
        let Some(mover) = self.movers.get(trail.who.index()).and_then(Option::as_ref) else {
            return out;
        };
        for (run, s0, s1) in &trail.pieces {
            let Some(placed) = mover.runs.get(*run).filter(|r| r.start <= t) else {
                continue;
            };
            let now = placed.run.law().at(t - placed.start).s.clamp(*s0, *s1);
            if now - s0 > 1e-3 {
                out.extend(
                    placed
                        .run
                        .path()
                        .between(*s0, now)
                        .elements()
                        .iter()
                        .copied(),
                );
            }
        }
        out
    }

    /// A hash over the bits of every frame at `fps` frames a second (FNV-1a, 64 bit): two builds
    /// that move alike to the last bit have the same.
    #[must_use]
    pub fn hash(&self, fps: u32) -> u64 {
        let mut hash = 0xcbf2_9ce4_8422_2325_u64;
        let mut take = |x: f64| {
            for byte in x.to_bits().to_le_bytes() {
                hash = (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3);
            }
        };
        let mut frame = Frame::default();
        let count = crate::math::floor(self.duration * f64::from(fps)) as u32;
        for i in 0..=count {
            self.frame(f64::from(i) / f64::from(fps.max(1)), &mut frame);
            for p in frame.players.iter().flatten() {
                [p.x, p.y, p.facing, p.speed]
                    .into_iter()
                    .for_each(&mut take);
            }
            let b = frame.ball;
            let holder = b.holder.map_or(0, PlayerId::number);
            [b.x, b.y, b.z, f64::from(holder)]
                .into_iter()
                .for_each(&mut take);
        }
        hash
    }
}
