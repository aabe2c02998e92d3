//! Chances: who, where, when, how open, for how long. From geometry and physics alone; no shooting
//! percentages.

use crate::athlete::Limits;
use crate::court::Court;
use crate::defence::{Defence, DefenderState};
use crate::math::{Point, Vec2, direction, distance, length};
use crate::motion::Sprint;
use crate::set::{ActionId, Coverage, Edge, PlayerId, Set, Verb};
use crate::timeline::{BallUse, Timeline};
use alloc::vec::Vec;

/// A defender contests a shot from so far between middles, metres: an arm's length.
/// Common practice, no source.
const CONTEST: f64 = 1.0;
/// A hand reaches a passing ball from so far, metres. Common practice, no source.
const HAND: f64 = 0.9;

/// How close the nearest defender is, in the classes of the league's public shot data: 0–2, 2–4,
/// 4–6 and more than 6 feet.
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
    /// A pass is caught.
    Catch,
    /// A shot leaves the hands.
    Finish,
}

/// One chance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Look {
    /// The pass or the shot.
    pub action: ActionId,
    /// Catch or finish.
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
}

impl Look {
    /// The class of its separation.
    #[must_use]
    pub fn openness(&self) -> Openness {
        Openness::of(self.separation)
    }
}

/// All looks of a set against `defence`, in time order.
#[must_use]
pub fn looks(timeline: &Timeline, defence: &Defence) -> Vec<Look> {
    let mut out = Vec::new();
    for action in timeline.actions() {
        let (chance, who, edge) = match action.verb {
            Verb::Pass => {
                let Some(to) = receiver(timeline, action.at(Edge::Release)) else {
                    continue;
                };
                (Chance::Catch, to, Edge::Catch)
            }
            Verb::Shot => (Chance::Finish, action.who, Edge::Release),
            _ => continue,
        };
        let Some(t) = action.at(edge) else { continue };
        let Some(state) = timeline.player(who, t) else {
            continue;
        };
        let at = Point::new(state.x, state.y);
        let (nearest, separation) = nearest(timeline, defence, at, t);
        let lane = action.at(Edge::Release).filter(|_| chance == Chance::Catch);
        out.push(Look {
            action: action.id,
            chance,
            who,
            t,
            at,
            separation,
            nearest,
            open: contest(timeline, defence, at, t),
            needs: if chance == Chance::Catch {
                timeline.limits(who).release
            } else {
                0.0
            },
            lane: lane.map(|release| lane_margin(timeline, defence, release, t)),
        });
    }
    crate::math::sort_short(&mut out, |a, b| a.t.total_cmp(&b.t));
    out
}

fn receiver(timeline: &Timeline, release: Option<f64>) -> Option<PlayerId> {
    let release = release?;
    timeline.ball_spans().iter().find_map(|s| match s.what {
        BallUse::Pass { to, .. } if (s.start - release).abs() < 0.02 => Some(to),
        _ => None,
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

fn nearest(timeline: &Timeline, defence: &Defence, at: Point, t: f64) -> (Option<PlayerId>, f64) {
    defenders(timeline, defence, t)
        .map(|(p, s, _)| (Some(p), distance(Point::new(s.x, s.y), at)))
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

/// By how many seconds the ball is past every hand, at the place where it is closest.
fn lane_margin(timeline: &Timeline, defence: &Defence, release: f64, catch: f64) -> f64 {
    let mut least = f64::INFINITY;
    for (_, state, limits) in defenders(timeline, defence, release) {
        for i in 1..=20_i32 {
            let tau = (catch - release) * f64::from(i) / 20.0;
            let ball = timeline.ball(release + tau);
            if ball.z > limits.reach + 0.15 {
                continue;
            }
            // The last metre belongs to the receiver's hands and body.
            let end = timeline.ball(catch);
            if distance(Point::new(ball.x, ball.y), Point::new(end.x, end.y)) < 0.6 {
                continue;
            }
            let reach = time_to_reach(&state, Point::new(ball.x, ball.y), HAND, limits);
            // A hand that is there already still has to be brought up.
            let reaction = limits.reaction * if reach > 0.0 { 1.0 } else { 0.5 };
            least = least.min(reach + reaction - tau);
        }
    }
    least
}

/// One row of the outcome table: a coverage and what it leaves open.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcome {
    /// Under which coverage.
    pub coverage: Coverage,
    /// The looks it leaves, the same actions in every row.
    pub looks: Vec<Look>,
}

/// What a set yields against every coverage that it can meet.
#[must_use]
pub fn outcomes(set: &Set, court: &Court, timeline: &Timeline) -> Vec<Outcome> {
    coverages(set, court, timeline)
        .into_iter()
        .map(|coverage| {
            let defence = Defence::simulate(set, court, timeline, coverage);
            Outcome {
                coverage,
                looks: looks(timeline, &defence),
            }
        })
        .collect()
}

/// The coverages a set can meet: those for screens off the ball where it has one, those for ball
/// screens where it has one; `chase` always, which is also "everybody stays with the own man".
#[must_use]
pub fn coverages(set: &Set, court: &Court, timeline: &Timeline) -> Vec<Coverage> {
    let plain = Defence::simulate(set, court, timeline, Coverage::Chase);
    let on_ball = plain.meetings().iter().any(|m| m.on_ball);
    let off_ball = plain.meetings().iter().any(|m| !m.on_ball);
    Coverage::TABLE
        .iter()
        .map(|r| r.0)
        .filter(|c| match c {
            Coverage::Chase => true,
            Coverage::TopLock => off_ball,
            Coverage::Over
            | Coverage::Drop
            | Coverage::Ice
            | Coverage::Blitz
            | Coverage::WeakSideTag => on_ball,
            Coverage::Under | Coverage::Switch | Coverage::Show | Coverage::Through => {
                on_ball || off_ball
            }
        })
        .collect()
}
