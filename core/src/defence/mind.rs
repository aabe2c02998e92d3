//! What one defender wants of the next step, from what is in the mind: who helps, who plays a
//! screen, who steps out of the way.

use super::body::{Want, radius};
use super::coverage::{self, Order};
use super::offence::{Bodies, LOOKS, Offence, Step};
use super::place::{Eyes, Manner, inside};
use super::simulate::{Defender, Simulation};
use crate::guard::UNSEEN;
use crate::math::{Point, Vec2, direction, length, unit};
use crate::set::{Deed, PlayerId};

/// Added to the reaction while the head is turned as the file says, seconds.
const TURNED: f64 = 0.25;
/// Cosine of half the field of view (100°): farther off the nose, a man is not seen.
const VIEW: f64 = -0.17;
/// A defender steps aside for an attacker who would be there within so many seconds, until this
/// far off the attacker's way, metres; for the own man only at the last moment.
const YIELD: f64 = 0.5;
const LAST_MOMENT: f64 = 0.35;
const ASIDE: f64 = 0.5;
/// Nobody plans to be aside in less than this, seconds.
const SOONEST: f64 = 0.15;
/// And everybody gives way by more than what just does: legs take a moment to get going.
const BOOST: f64 = 1.5;
/// Helpers keep so far from each other, metres.
const APART: f64 = 1.1;
/// A body on the straight way is gone round at this clearance between the surfaces, metres, at this
/// pace, m/s.
const CLEAR: f64 = 0.08;
const ROUND: f64 = 3.0;
// Common practice, no source, for all of these.

impl Simulation<'_> {
    /// What `d` wants of the step that ends at `t`, and what that is called where it leaves the own
    /// man.
    pub(super) fn intent(&self, d: &Defender, t: f64) -> (Want, Option<Deed>) {
        let reaction = self.reaction(d, t);
        let seen = self.offence.seen(t, reaction);
        let mind = t - reaction;
        let eyes = Eyes {
            step: &seen,
            man: d.man,
            manner: self.manner(d, mind),
        };
        let face = if eyes.on_ball() {
            eyes.man_at()
        } else {
            eyes.ball()
        };
        let order = self
            .helping(d, &eyes)
            .or_else(|| self.ordered(d, mind, &seen))
            .unwrap_or_else(|| {
                let (to, v) = eyes.usual();
                let to = if eyes.helps() { self.apart(d, to) } else { to };
                Order::to(to, v)
            });
        let stays = [order.meets, eyes.step.with.filter(|p| *p == d.man)];
        let want = Want {
            to: inside(self.court, order.to),
            v: order.v,
            face,
            top: order.top,
            out: d.touch.felt + out_of_the_way(d, t, self.offence, stays),
        };
        // Bodies too are where they were a reaction ago: who stands still only now is run into.
        let bodies = self.offence.bodies(mind);
        let side = order.round.or(d.touch.round);
        let round = match side {
            None if order.blind => None,
            _ => way_round(d, &want, side, bodies),
        };
        let want = match round {
            // Keeps the pace: a way round is no place to stop at.
            Some(to) => Want {
                to,
                v: direction(to - d.body.at).map_or(Vec2::ZERO, |w| w * ROUND),
                ..want
            },
            None => want,
        };
        let turned = || self.told(d, t, Deed::TurnsHead).then_some(Deed::TurnsHead);
        (want, order.does.or_else(turned))
    }

    /// Reaction, longer while the own man is out of view or the head is turned.
    fn reaction(&self, d: &Defender, t: f64) -> f64 {
        let man = self.offence.place(d.man, t);
        let way = man.and_then(|m| direction(m - d.body.at));
        let behind = way.is_some_and(|way| way.dot(unit(d.body.facing)) < VIEW);
        let turned = self.told(d, t, Deed::TurnsHead);
        d.limits.reaction + if behind { UNSEEN } else { 0.0 } + if turned { TURNED } else { 0.0 }
    }

    /// Whether the file tells `d` to do that at `t`.
    fn told(&self, d: &Defender, t: f64, does: Deed) -> bool {
        let mut tasks = self.knowledge.at(t).tasks.iter();
        tasks.any(|k| k.who == d.who && k.does == does && k.from <= t && t <= k.to)
    }

    fn manner(&self, d: &Defender, mind: f64) -> Manner {
        if self.told(d, mind, Deed::Sags) {
            Manner::Sags
        } else if self.told(d, mind, Deed::TopLocks) {
            Manner::Denies
        } else {
            Manner::Usual
        }
    }

    /// The order of the screen that concerns a defender now. The one that is on comes before the one
    /// after it: a big who drops against a ball screen is not yet with the man whom a second screen
    /// will free.
    fn ordered(&self, d: &Defender, mind: f64, seen: &Step) -> Option<Order> {
        let known = self.knowledge.at(mind);
        let open = known.meetings.iter().zip(&known.switched);
        open.filter(|(_, switched)| !**switched).find_map(|(m, _)| {
            if d.man == m.cutter {
                let mut run = known.meetings.iter().rev();
                let last = run.find(|o| (o.action, o.cutter) == (m.action, m.cutter));
                let here = (seen, d.body.at);
                coverage::screened(m, last.unwrap_or(m), mind, here, known.offence)
            } else if d.man == m.screener {
                coverage::screener(m, mind, seen)
            } else {
                let out = [Some(m.cutter), Some(m.screener)];
                coverage::tag(m, mind, seen).filter(|_| self.low_man(&out) == Some(d.who))
            }
        })
    }

    /// The low man leaves for a ball that nobody stops; the next one zones up between the two who
    /// are left.
    fn helping(&self, d: &Defender, eyes: &Eyes<'_>) -> Option<Order> {
        let help = self.help.filter(|_| !eyes.on_ball())?;
        if help.who == d.who {
            let order = Order::to(help.meet, Vec2::ZERO);
            return Some(eyes.step.with.map_or(order, |h| order.meets(h)));
        }
        let helper = self.defenders.iter().find(|o| o.who == help.who)?;
        let next = self.low_man(&[eyes.step.with, Some(helper.man)]);
        let left = eyes.step.place(helper.man)?;
        (next == Some(d.who) && eyes.helps()).then(|| {
            let between = eyes.man_at().midpoint(left);
            Order::to(between.lerp(Point::ZERO, 0.3), Vec2::ZERO)
        })
    }

    /// Helpers spread: half of what they lack of their distance is this one's to give.
    fn apart(&self, d: &Defender, mut p: Point) -> Point {
        for o in self.defenders.iter().filter(|o| o.who != d.who) {
            let lacks = APART - length(p - o.body.at);
            if let Some(out) = direction(p - o.body.at).filter(|_| lacks > 0.0) {
                p += out * (0.5 * lacks);
            }
        }
        p
    }
}

/// How fast to go which way so as not to be run into by an attacker; nobody gives way to the one
/// they are there to meet, nor to the own man with the ball. Who is about to run one over is
/// avoided by eye and foot, without the reaction that a decision takes.
fn out_of_the_way(d: &Defender, t: f64, offence: &Offence, stays: [Option<PlayerId>; 2]) -> Vec2 {
    let all = PlayerId::ALL.iter().filter(|p| !stays.contains(&Some(**p)));
    all.filter_map(|p| {
        let soon = if *p == d.man { LAST_MOMENT } else { YIELD };
        let (when, miss) = nearest_pass(d, *p, t, offence, soon)?;
        let lacks = ASIDE - length(miss);
        (lacks > 0.0).then(|| {
            let v = offence.at(t + when).velocity(*p);
            aside(d, miss, v, lacks / when.max(SOONEST))
        })
    })
    .fold(Vec2::ZERO, |sum, way| sum + way)
}

/// How fast to go to the side, on which one will be anyway, of somebody who comes at `v`; `pace` is
/// what just does.
fn aside(d: &Defender, miss: Vec2, v: Vec2, pace: f64) -> Vec2 {
    let across = Vec2::new(-v.y, v.x);
    let side = if across.dot(miss) < 0.0 {
        -across
    } else {
        across
    };
    let way = direction(side).unwrap_or(Vec2::ZERO);
    way * (d.body.v.dot(way) + BOOST * pace)
}

/// When an attacker on the way to come is nearest to a defender who goes on as now, and how they lie
/// then; `None` where they do not come nearer.
fn nearest_pass(
    d: &Defender,
    p: PlayerId,
    t: f64,
    offence: &Offence,
    soon: f64,
) -> Option<(f64, Vec2)> {
    let apart = |ahead: f64| Some(d.body.at + d.body.v * ahead - offence.place(p, t + ahead)?);
    let mut from = apart(0.0)?;
    // Nobody comes from farther in that time.
    let reach = length(d.body.v) * soon + offence.roams(p, t) + ASIDE;
    if from.hypot2() > reach * reach {
        return None;
    }
    let mut best = None;
    let mut least = from.hypot2();
    for i in 0..((soon / LOOKS.1) as u32).min(LOOKS.0) {
        let began = f64::from(i) * LOOKS.1;
        let to = apart(began + LOOKS.1)?;
        let step = to - from;
        let share = (-from.dot(step) / step.hypot2().max(1e-6)).clamp(0.0, 1.0);
        let miss = from + step * share;
        if miss.hypot2() < least {
            least = miss.hypot2();
            best = Some((began + share * LOOKS.1, miss));
        }
        from = to;
    }
    best
}

/// The point beside the first wall on the straight way; `None` where the way is clear. Two bodies
/// with no way between them are one wall.
fn way_round(d: &Defender, want: &Want, side: Option<Vec2>, bodies: &Bodies) -> Option<Point> {
    let way = want.to - d.body.at;
    let long = length(way);
    let ahead = direction(way)?;
    let own = radius(&d.limits);
    let standing = || bodies.iter().flatten().filter(|b| b.standing);
    let mut first: Option<(f64, [Point; 2], f64)> = None;
    for body in standing() {
        let wall = standing()
            .filter(|o| *o != body)
            .find_map(|o| body.joined(o, 2.0 * own))
            .unwrap_or(body.ends);
        let middle = wall[0].midpoint(wall[1]);
        let along = (middle - d.body.at).dot(ahead);
        let [a, b] = wall.map(|e| (e - d.body.at).cross(ahead));
        let need = body.radius + own + CLEAR;
        // On the straight way: the shoulder line crosses it, or comes too near.
        let off = if a * b <= 0.0 {
            0.0
        } else {
            a.abs().min(b.abs())
        };
        if along > 0.05 && along < long + 0.1 && off < need && first.is_none_or(|f| along < f.0) {
            first = Some((along, wall, need));
        }
    }
    let (_, wall, need) = first?;
    let across = Vec2::new(ahead.y, -ahead.x);
    let middle = wall[0].midpoint(wall[1]);
    let lean = (middle - d.body.at).cross(ahead);
    let side = match side {
        Some(r) if r.dot(across).abs() > 0.1 => r.dot(across).signum(),
        // The shorter way; a tie goes toward the axis, which a mirrored set mirrors.
        _ if lean.abs() > 1e-6 => -lean.signum(),
        _ => -(middle.x * across.x).signum(),
    };
    Some(middle + across * (side * (0.5 * length(wall[1] - wall[0]) + need)))
}
