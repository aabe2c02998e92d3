//! What the checkers read: the set with everything sampled and looked up once.

use super::{Rules, Settings};
use crate::court::{Court, Side, Spot, SpotName};
use crate::math::{Point, distance, floor};
use crate::set::{ActionId, Edge, Kind, PlayerId, Set, Verb};
use crate::timeline::{BallUse, Frame, MoverState, TimedAction, TimedScreen, Timeline};
use alloc::vec::Vec;

/// Samples a second.
const RATE: f64 = 50.0;

/// A cutter passes a screener.
#[derive(Clone, Copy, Debug)]
pub struct ScreenUse {
    /// Index of the cutter's action in [`Timeline::actions`].
    pub cut: usize,
    /// Who cuts.
    pub cutter: PlayerId,
    /// Who screens.
    pub screener: PlayerId,
    /// When the cutter is level with the screener.
    pub by: f64,
    /// Whether it is the first on the cutter's way.
    pub first: bool,
    /// The screen; `None`: a body used where it stands.
    pub screen: Option<TimedScreen>,
}

/// A pass as it came out.
#[derive(Clone, Copy, Debug)]
pub struct Throw {
    /// Its action.
    pub id: ActionId,
    /// From whom.
    pub from: PlayerId,
    /// To whom.
    pub to: PlayerId,
    /// The trade's name, where written.
    pub kind: Option<Kind>,
    /// When it leaves the hands.
    pub release: f64,
    /// When it is caught.
    pub catch: f64,
    /// Whether the passer was dribbling until then.
    pub dribbled: bool,
}

/// A set to be judged.
#[derive(Debug)]
pub struct Case<'a> {
    /// What was written.
    pub set: &'a Set,
    /// Where it is played.
    pub court: &'a Court,
    /// When everything happens.
    pub timeline: &'a Timeline,
    /// From where on something is found.
    pub settings: &'a Settings,
    /// The limits of the rule set.
    pub rules: Rules,
    /// Everything, sampled evenly.
    pub frames: Vec<Frame>,
    /// Who passes which screener.
    pub uses: Vec<ScreenUse>,
    /// All passes.
    pub throws: Vec<Throw>,
    /// Who throws in, and when the ball is in play.
    pub throw_in: Option<(PlayerId, f64)>,
    /// When the shot leaves.
    pub shot: Option<f64>,
    /// The shot, or else when the last action ends.
    pub goal: f64,
}

impl<'a> Case<'a> {
    /// Samples and looks up.
    #[must_use]
    pub fn new(
        set: &'a Set,
        court: &'a Court,
        timeline: &'a Timeline,
        settings: &'a Settings,
    ) -> Self {
        let throws = throws(timeline);
        let actions = timeline.actions();
        let shot = actions
            .iter()
            .filter(|a| a.verb == Verb::Shot)
            .filter_map(|a| a.at(Edge::Release))
            .reduce(f64::max);
        let last = actions.iter().map(|a| a.end).fold(0.0, f64::max);
        let thrower = set.first_holder().filter(|who| {
            let at = timeline.player(*who, 0.0).map(|p| p.at());
            at.is_some_and(|p| !court.in_bounds(p, 0.0))
        });
        let throw_in = thrower.map(|who| {
            let caught = throws.iter().find(|t| t.from == who).map(|t| t.catch);
            (who, caught.unwrap_or(timeline.duration()))
        });
        Self {
            set,
            court,
            timeline,
            settings,
            rules: Rules::of(set.court),
            frames: frames(timeline),
            uses: uses(set, timeline),
            throws,
            throw_in,
            shot,
            goal: shot.unwrap_or(last),
        }
    }

    /// A player's mean shoulder breadth with another, metres.
    #[must_use]
    pub fn shoulders(&self, a: PlayerId, b: PlayerId) -> f64 {
        0.5 * (self.timeline.limits(a).shoulder + self.timeline.limits(b).shoulder)
    }

    /// Nearer than this two bodies overlap.
    #[must_use]
    pub fn touch(&self, a: PlayerId, b: PlayerId) -> f64 {
        self.settings.touch * self.shoulders(a, b)
    }

    /// A player at `t`.
    #[must_use]
    pub fn player(&self, who: PlayerId, t: f64) -> MoverState {
        self.timeline.player(who, t).unwrap_or_default()
    }

    /// Between two players at `t`.
    #[must_use]
    pub fn gap(&self, a: PlayerId, b: PlayerId, t: f64) -> f64 {
        distance(self.player(a, t).at(), self.player(b, t).at())
    }

    /// The row of the timetable at `index`.
    #[must_use]
    pub fn action(&self, index: usize) -> Option<&'a TimedAction> {
        self.timeline.actions().get(index)
    }

    /// The id of the row at `index`.
    #[must_use]
    pub fn id(&self, index: usize) -> Option<ActionId> {
        self.action(index).map(|a| a.id)
    }

    /// The move that `who` is on at `t`.
    #[must_use]
    pub fn moving(&self, who: PlayerId, t: f64) -> Option<&'a TimedAction> {
        self.timeline
            .actions()
            .iter()
            .rfind(|a| a.who == who && is_move(a) && a.start <= t && t <= a.end)
    }

    /// The last move of `who` that has begun at `t`.
    #[must_use]
    pub fn last_move(&self, who: PlayerId, t: f64) -> Option<&'a TimedAction> {
        self.timeline
            .actions()
            .iter()
            .filter(|a| a.who == who && goes(a) && a.start <= t)
            .max_by(|a, b| a.start.total_cmp(&b.start))
    }

    /// The stretches from `from` to `to` in which `test` holds, without a gap.
    pub fn stretches(
        &self,
        (from, to): (f64, f64),
        mut test: impl FnMut(&Frame) -> bool,
    ) -> Vec<(f64, f64)> {
        let mut out: Vec<(f64, f64)> = Vec::new();
        let mut open: Option<(f64, f64)> = None;
        for frame in self.frames.iter().filter(|f| f.t >= from && f.t <= to) {
            if test(frame) {
                open = Some((open.map_or(frame.t, |o| o.0), frame.t));
            } else {
                out.extend(open.take());
            }
        }
        out.extend(open);
        out
    }

    /// All pairs of players, the lower number first.
    pub fn pairs(&self) -> impl Iterator<Item = (PlayerId, PlayerId)> {
        let ids: Vec<PlayerId> = self.set.players.iter().map(|p| p.id).collect();
        let rest = ids.clone();
        ids.into_iter().enumerate().flat_map(move |(i, a)| {
            let others: Vec<PlayerId> = rest.iter().skip(i + 1).copied().collect();
            others.into_iter().map(move |b| (a, b))
        })
    }

    /// Whether somebody at `p` fills a corner.
    #[must_use]
    pub fn in_corner(&self, p: Point) -> bool {
        [Side::Left, Side::Right].into_iter().any(|side| {
            let corner = self.court.spot(Spot {
                name: SpotName::Corner,
                side: Some(side),
            });
            distance(p, corner) < self.settings.corner
        })
    }

    /// From when to when the counts of a live ball run: in play, and not yet shot. What the picture
    /// shows after the last action is no part of the set.
    #[must_use]
    pub fn live(&self) -> (f64, f64) {
        let from = self.throw_in.map_or(0.0, |t| t.1);
        (from, self.goal)
    }
}

/// A player's place in a frame.
pub(super) fn place(frame: &Frame, who: PlayerId) -> Option<Point> {
    frame
        .players
        .get(who.index())
        .copied()
        .flatten()
        .map(|p| p.at())
}

/// Cuts and dribbles.
pub(super) fn is_move(a: &TimedAction) -> bool {
    matches!(a.verb, Verb::Cut | Verb::Dribble)
}

/// Whatever takes a player from one place to another.
pub(super) fn goes(a: &TimedAction) -> bool {
    is_move(a) || a.verb == Verb::Screen
}

fn frames(timeline: &Timeline) -> Vec<Frame> {
    let count = floor(timeline.duration() * RATE) as u32;
    (0..=count)
        .map(|i| {
            let mut frame = Frame::default();
            timeline.frame(f64::from(i) / RATE, &mut frame);
            frame
        })
        .collect()
}

fn throws(timeline: &Timeline) -> Vec<Throw> {
    let spans = timeline.ball_spans();
    let before = core::iter::once(None).chain(spans.iter().map(|s| Some(s.what)));
    spans
        .iter()
        .zip(before)
        .filter_map(|(span, before)| {
            let BallUse::Pass { from, to, kind } = span.what else {
                return None;
            };
            let row = timeline.actions().iter().find(|a| {
                let release = a.at(Edge::Release).unwrap_or(f64::INFINITY);
                a.verb == Verb::Pass && a.who == from && (release - span.start).abs() < 1e-6
            })?;
            Some(Throw {
                id: row.id,
                from,
                to,
                kind,
                release: span.start,
                catch: span.end,
                dribbled: matches!(before, Some(BallUse::Dribbled(_))),
            })
        })
        .collect()
}

fn uses(set: &Set, timeline: &Timeline) -> Vec<ScreenUse> {
    let mut out = Vec::new();
    for (cut, action) in timeline.actions().iter().enumerate() {
        let mut first = true;
        for mark in action.marks.iter().filter(|m| m.edge == Edge::PassBy) {
            let Some(screener) = mark.of else { continue };
            let screen = screen_of(set, timeline, screener, action.who, mark.t);
            out.push(ScreenUse {
                cut,
                cutter: action.who,
                screener,
                by: mark.t,
                first,
                screen,
            });
            first = false;
        }
    }
    out
}

/// The screen of `screener` that `cutter` passes at `by`: the last one begun before, else the
/// first one that is for them.
fn screen_of(
    set: &Set,
    timeline: &Timeline,
    screener: PlayerId,
    cutter: PlayerId,
    by: f64,
) -> Option<TimedScreen> {
    let theirs = |s: &&TimedScreen| {
        let row = s.screen.row.and_then(|r| timeline.actions().get(r));
        let written = row.and_then(|a| set.action(a.id));
        s.screen.who == screener
            && written.is_some_and(|a| a.for_whom.is_empty() || a.for_whom.contains(&cutter))
    };
    let started = |s: &&TimedScreen| {
        let row = s.screen.row.and_then(|r| timeline.actions().get(r));
        row.is_some_and(|a| a.start <= by)
    };
    let screens = timeline.screens();
    let begun = screens.iter().filter(theirs).rfind(started);
    // One begun long ago and left since is none.
    let begun = begun.filter(|s| s.free + 1.0 > by);
    begun
        .or_else(|| screens.iter().filter(theirs).find(|s| s.set > by))
        .copied()
}
