//! Chances: who, where, when, how open, for how long. From geometry and physics alone; no shooting
//! percentages.

use crate::athlete::Limits;
use crate::defence::{Defence, DefenderState, STEPS};
use crate::flight::{Spot3, catch_height, pass, release_height};
use crate::math::{Listed, Point, Vec2, direction, distance, length, sqrt};
use crate::motion::Sprint;
use crate::set::{ActionId, Coverage, Edge, PlayerId, Verb};
use crate::timeline::{BallUse, TimedAction, Timeline};
use alloc::vec::Vec;

/// A defender contests a shot from so far between middles, metres: near enough with a hand up.
/// Common practice, no source.
const CONTEST: f64 = 1.0;
/// A dribble this near to the ring is a drive that got there, metres: the edge of the paint.
/// Common practice, no source.
const PAINT: f64 = 2.5;
/// The last of a pass belongs to the receiver's hands and body, metres. Common practice, no source.
const RECEIVED: f64 = 0.6;
/// A hand that is in the way already still has to be brought to the ball: this share of a reaction.
/// Common practice, no source.
const BROUGHT: f64 = 0.5;
/// Shoulder height, standing and bent low, as shares of stature; a hop adds so many metres.
/// From memory (standing); common practice, no source (the rest).
const SHOULDER: (f64, f64) = (0.45, 0.82);
const HOP: f64 = 0.15;
/// A look is shown for so long from its instant, seconds: long enough to be read in passing.
const STANDS: f64 = 0.6;
/// Instants of a flight at which hands are looked for.
const SAMPLES: u8 = 20;

/// How close the nearest defender is.
///
/// Source: the classes of the NBA's public shot dashboards, 0–2, 2–4, 4–6 and more than 6 feet, as
/// quoted by Carnegie Mellon Sports Analytics.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Openness {
    /// Under 2 ft.
    VeryTight,
    /// 2 to 4 ft.
    Tight,
    /// 4 to 6 ft.
    Open,
    /// Over 6 ft.
    WideOpen,
}

impl Openness {
    /// The class of a separation in metres.
    #[must_use]
    pub fn of(separation: f64) -> Self {
        const FOOT: f64 = 0.3048;
        if separation < 2.0 * FOOT {
            Self::VeryTight
        } else if separation < 4.0 * FOOT {
            Self::Tight
        } else if separation < 6.0 * FOOT {
            Self::Open
        } else {
            Self::WideOpen
        }
    }
}

/// What sort of chance.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Chance {
    /// A pass is caught, or a hand-off taken.
    Catch,
    /// A dribble comes to the ring.
    Drive,
    /// A shot leaves the hands.
    Finish,
}

impl Chance {
    /// Its stable name.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Catch => "catch",
            Self::Drive => "drive",
            Self::Finish => "shot",
        }
    }
}

/// One chance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Look {
    /// The pass, hand-off, dribble or shot.
    pub action: ActionId,
    /// Catch, drive or finish.
    pub chance: Chance,
    /// Who has it.
    pub who: PlayerId,
    /// When, seconds.
    pub t: f64,
    /// Where.
    pub at: Point,
    /// Distance to the nearest defender, middle to middle, metres.
    pub separation: f64,
    /// Which one, named by the number of the man at the start.
    pub nearest: Option<PlayerId>,
    /// Seconds until a defender can contest, from what every defender is doing at this instant.
    pub open: f64,
    /// Seconds the shooter needs to get the shot off.
    pub needs: f64,
    /// For a catch: the least time, seconds, by which the ball is past every hand that could reach
    /// it; negative where a hand is there first.
    pub lane: Option<f64>,
    /// Whose hand that is, named by the number of the man at the start; `None` where none can reach.
    pub hand: Option<PlayerId>,
}

impl Look {
    /// Whether it is on at `t` seconds: it is measured at its instant, and shown for a little longer.
    #[must_use]
    pub fn is_on(&self, t: f64) -> bool {
        (0.0..=STANDS).contains(&(t - self.t))
    }

    /// Whether a defender is near enough to contest at once.
    #[must_use]
    pub fn contested(&self) -> bool {
        self.open <= 0.0
    }

    /// The class of its separation.
    #[must_use]
    pub fn openness(&self) -> Openness {
        Openness::of(self.separation)
    }
}

/// All looks of a set against `defence`, in time order.
#[must_use]
pub fn looks(timeline: &Timeline, defence: &Defence) -> Vec<Look> {
    let found = timeline
        .actions()
        .iter()
        .filter_map(|a| chance(timeline, a));
    let mut out: Vec<Look> = found
        .chain(drives(timeline))
        .filter_map(|c| look(timeline, defence, &c))
        .listed();
    crate::math::sort_short(&mut out, |a, b| a.t.total_cmp(&b.t));
    out
}

/// Where and when to measure.
struct Moment {
    action: ActionId,
    chance: Chance,
    who: PlayerId,
    t: f64,
    /// Of a pass: its release.
    release: Option<f64>,
}

fn chance(timeline: &Timeline, action: &TimedAction) -> Option<Moment> {
    let released = action.at(Edge::Release)?;
    let (chance, who, t, release) = match action.verb {
        Verb::Pass => {
            let (to, _) = receiver(timeline, released)?;
            (Chance::Catch, to, action.at(Edge::Catch)?, Some(released))
        }
        Verb::Handoff => {
            let (to, end) = receiver(timeline, released)?;
            (Chance::Catch, to, end, None)
        }
        Verb::Shot => (Chance::Finish, action.who, released, None),
        _ => return None,
    };
    Some(Moment {
        action: action.id,
        chance,
        who,
        t,
        release,
    })
}

/// To whom the ball that leaves at `release` goes, and when that is over.
fn receiver(timeline: &Timeline, release: f64) -> Option<(PlayerId, f64)> {
    timeline.ball_spans().iter().find_map(|s| match s.what {
        BallUse::Pass { to, .. } if (s.start - release).abs() < 0.02 => Some((to, s.end)),
        BallUse::Handoff { to, .. } if s.start - 0.02 < release && release < s.end + 0.02 => {
            Some((to, s.end))
        }
        _ => None,
    })
}

/// The instants at which a dribble comes into the paint, unless it ends in a shot there and then.
fn drives(timeline: &Timeline) -> impl Iterator<Item = Moment> {
    timeline.ball_spans().iter().filter_map(|span| {
        let BallUse::Dribbled(who) = span.what else {
            return None;
        };
        let steps = ((span.end - span.start) * f64::from(STEPS)) as u32;
        let far = |t: f64| timeline.player(who, t).map(|p| length(Vec2::new(p.x, p.y)));
        if far(span.start)? <= PAINT {
            return None;
        }
        let t = (1..=steps)
            .map(|i| span.start + f64::from(i) / f64::from(STEPS))
            .find(|t| far(*t).is_some_and(|d| d <= PAINT))?;
        let mut own = timeline.actions().iter().filter(|a| a.who == who);
        let row = own.find(|a| a.start <= t && t <= a.end && a.verb != Verb::Shot)?;
        Some(Moment {
            action: row.id,
            chance: Chance::Drive,
            who,
            t,
            release: None,
        })
    })
}

fn look(timeline: &Timeline, defence: &Defence, m: &Moment) -> Option<Look> {
    let state = timeline.player(m.who, m.t)?;
    let at = Point::new(state.x, state.y);
    let (nearest, separation) = nearest(defence, at, m.t);
    let lane = m.release.map(|r| lane_margin(timeline, defence, r, m.t));
    Some(Look {
        action: m.action,
        chance: m.chance,
        who: m.who,
        t: m.t,
        at,
        separation,
        nearest,
        open: contest(timeline, defence, at, m.t),
        needs: match m.chance {
            Chance::Catch => timeline.limits(m.who).release,
            Chance::Drive => timeline.limits(m.who).release_quick,
            Chance::Finish => 0.0,
        },
        lane: lane.map(|l| l.0),
        hand: lane.and_then(|l| l.1),
    })
}

fn defenders<'a>(
    timeline: &'a Timeline,
    defence: &'a Defence,
    t: f64,
) -> impl Iterator<Item = (PlayerId, DefenderState, &'a Limits)> {
    PlayerId::ALL
        .into_iter()
        .filter_map(move |p| Some((p, defence.state(p, t)?, timeline.limits(p))))
}

/// Who of the five is nearest to `at`, and how far away, metres.
pub(crate) fn nearest(defence: &Defence, at: Point, t: f64) -> (Option<PlayerId>, f64) {
    PlayerId::ALL
        .into_iter()
        .filter_map(|p| Some((Some(p), distance(defence.state(p, t)?.at(), at))))
        .fold((None, f64::INFINITY), |best, next| {
            if next.1 < best.1 { next } else { best }
        })
}

/// Seconds until the first defender can contest at `at`.
fn contest(timeline: &Timeline, defence: &Defence, at: Point, t: f64) -> f64 {
    defenders(timeline, defence, t)
        .map(|(_, s, l)| time_to_reach(&s, at, CONTEST, l))
        .fold(f64::INFINITY, f64::min)
}

/// Seconds until a body that is under way comes within `reach` of a place: brakes what leads away,
/// then sprints.
fn time_to_reach(s: &DefenderState, to: Point, reach: f64, limits: &Limits) -> f64 {
    let here = Point::new(s.x, s.y);
    let v = Vec2::new(s.vx, s.vy);
    let Some(way) = direction(to - here) else {
        return 0.0;
    };
    let far = length(to - here) - reach;
    if far <= 0.0 {
        return 0.0;
    }
    let closing = v.dot(way);
    let sprint = Sprint::new(limits, 1.0);
    if closing < 0.0 {
        let brakes = -closing / limits.brake;
        let lost = 0.5 * closing * closing / limits.brake;
        return brakes + sprint.time_to_distance(far + lost);
    }
    let since = sprint.time_to_speed(closing.min(0.98 * sprint.top));
    sprint.time_to_distance(sprint.distance(since) + far) - since
}

/// By how many seconds the ball is past every hand, at the place where it is closest, and whose
/// hand that is, for the pass that is thrown.
fn lane_margin(
    timeline: &Timeline,
    defence: &Defence,
    release: f64,
    catch: f64,
) -> (f64, Option<PlayerId>) {
    let at = |tau: f64| {
        let ball = timeline.ball(release + tau);
        (Point::new(ball.x, ball.y), ball.z)
    };
    past_hands(timeline, defence, (release, catch - release), at)
}

/// The same for a pass that could be thrown at `t`: straight, to where the receiver is then.
#[must_use]
pub fn lane(
    timeline: &Timeline,
    defence: &Defence,
    (from, to): (PlayerId, PlayerId),
    t: f64,
) -> Option<(f64, Option<PlayerId>)> {
    let (passer, receiver) = (timeline.player(from, t)?, timeline.player(to, t)?);
    let limits = timeline.limits(from);
    let leaves = Spot3::above(passer.hands(), release_height(None, limits));
    let comes = Spot3::above(receiver.at(), catch_height(None, timeline.limits(to)));
    let flight = pass(leaves, comes, None, limits);
    let at = |tau: f64| {
        let ball = flight.at(tau);
        (ball.floor(), ball.z)
    };
    Some(past_hands(timeline, defence, (t, flight.duration()), at))
}

/// Until the reaction is over a defender does what is under way; then the way to the ball is free.
/// `ball` is where it is so many seconds after the release, and how high.
fn past_hands(
    timeline: &Timeline,
    defence: &Defence,
    (release, lasts): (f64, f64),
    ball: impl Fn(f64) -> (Point, f64),
) -> (f64, Option<PlayerId>) {
    let (end, _) = ball(lasts);
    let flight: Vec<(f64, Point, f64)> = (1..=SAMPLES)
        .map(|i| {
            let tau = lasts * f64::from(i) / f64::from(SAMPLES);
            let (at, z) = ball(tau);
            (tau, at, z)
        })
        .filter(|(_, at, _)| distance(*at, end) >= RECEIVED)
        .listed();
    let (mut least, mut whose) = (f64::INFINITY, None);
    for (who, now, limits) in defenders(timeline, defence, release) {
        let Some(ready) = defence.state(who, release + limits.reaction) else {
            continue;
        };
        for (tau, at, z) in &flight {
            let Some(hand) = arm(*z, limits) else {
                continue;
            };
            let brought = BROUGHT * limits.reaction - tau;
            if distance(Point::new(now.x, now.y), *at) <= hand && brought < least {
                (least, whose) = (brought, Some(who));
            }
            let far = distance(Point::new(ready.x, ready.y), *at) - hand;
            if far / limits.v_max + limits.reaction - tau < least {
                let reach = time_to_reach(&ready, *at, hand, limits);
                let margin = limits.reaction + reach - tau;
                if margin < least {
                    (least, whose) = (margin, Some(who));
                }
            }
        }
    }
    (least, whose)
}

/// How far from the body's middle a hand reaches a ball at height `z`, metres: the arm from a
/// shoulder that bends and hops; `None` over or under every hand.
fn arm(z: f64, limits: &Limits) -> Option<f64> {
    let (low, high) = (
        SHOULDER.0 * limits.stature,
        SHOULDER.1 * limits.stature + HOP,
    );
    let off = (z - high).max(low - z).max(0.0);
    let arm = 0.5 * limits.span;
    (off < arm).then(|| sqrt(arm * arm - off * off))
}

/// One row of the outcome table: a coverage and what it leaves open.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcome {
    /// Under which coverage.
    pub coverage: Coverage,
    /// Whether the file names it as the defence's own.
    pub written: bool,
    /// The looks it leaves, the same actions in every row.
    pub looks: Vec<Look>,
}
