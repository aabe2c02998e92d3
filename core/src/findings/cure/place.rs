//! Other places to try: a step along or across the court, or a named spot nearby.

use super::{Edit, Part};
use crate::court::{Court, Side, Spot, SpotName};
use crate::findings::case::Case;
use crate::math::{Point, Vec2, distance, round, sort_short};
use crate::set::{ActionId, Edge, PlayerId, SetPlace, Target, Verb, Via};
use alloc::vec::Vec;

/// Named spots near to a place that are tried.
pub(super) const SPOTS: usize = 8;
/// A player is sent no further than this from where the set had them go.
const FAR: f64 = 5.0;

/// Every place of an action, a step of 0.2 m up to 1 m along and across the court.
pub(super) fn steps(case: &Case<'_>, action: ActionId) -> Vec<Edit> {
    let mut out = Vec::new();
    for step in 1..=5 {
        let by = 0.2 * f64::from(step);
        for (part, at) in places(case, action) {
            // Outward before inward, so that a mirrored set tries the mirrored steps.
            let out_x = if at.x < 0.0 { -1.0 } else { 1.0 };
            let ways = [
                Vec2::new(0.0, 1.0),
                Vec2::new(0.0, -1.0),
                Vec2::new(out_x, 0.0),
                Vec2::new(-out_x, 0.0),
            ];
            out.extend(ways.iter().map(|way| Edit::Move {
                action,
                part,
                to: tenth(at + *way * by),
                by,
            }));
        }
    }
    out
}

fn tenth(p: Point) -> SetPlace {
    let cut = |v: f64| round(v * 10.0) / 10.0 + 0.0;
    SetPlace::Point {
        x: cut(p.x),
        y: cut(p.y),
    }
}

/// The written places of an action, on the floor.
fn places(case: &Case<'_>, action: ActionId) -> Vec<(Part, Point)> {
    let Some(a) = case.set.action(action) else {
        return Vec::new();
    };
    let mut out: Vec<(Part, Point)> = Vec::new();
    let vias = a.via.iter().filter_map(|v| match v {
        Via::Place(p) => Some(p),
        Via::Off(_) => None,
    });
    for (i, p) in vias.enumerate() {
        out.extend(point(case.court, p).map(|p| (Part::Via(i), p)));
    }
    if let Some(Target::Place(p)) = &a.to {
        out.extend(point(case.court, p).map(|p| (Part::To, p)));
    }
    if let Some(p) = &a.at {
        out.extend(point(case.court, p).map(|p| (Part::At, p)));
    }
    out
}

fn point(court: &Court, place: &SetPlace) -> Option<Point> {
    match place {
        SetPlace::Spot { spot, dx, dy } => Some(court.spot(*spot) + Vec2::new(*dx, *dy)),
        SetPlace::Point { x, y } => Some(Point::new(*x, *y)),
        SetPlace::Beside(_) => None,
    }
}

/// The named spots on which one can stay, the nearest to `p` first.
pub(super) fn spots_near(court: &Court, p: Point) -> Vec<(Spot, f64)> {
    let stays = |name: &SpotName| {
        !matches!(
            name,
            SpotName::Logo
                | SpotName::DeepTop
                | SpotName::Nail
                | SpotName::MidPaint
                | SpotName::LowPaint
                | SpotName::Rim
                | SpotName::Blob
                | SpotName::Slob
        )
    };
    let mut out: Vec<(Spot, f64)> = Vec::new();
    for (name, _, _, sided) in SpotName::TABLE {
        if !stays(&name) {
            continue;
        }
        let own = if p.x < 0.0 { Side::Left } else { Side::Right };
        let sides: &[Option<Side>] = if sided {
            &[Some(own), Some(own.mirrored())]
        } else {
            &[None]
        };
        out.extend(sides.iter().map(|side| {
            let spot = Spot { name, side: *side };
            (spot, distance(court.spot(spot), p))
        }));
    }
    sort_short(&mut out, |a, b| a.1.total_cmp(&b.1));
    out
}

pub(super) fn on(spot: Spot) -> SetPlace {
    SetPlace::Spot {
        spot,
        dx: 0.0,
        dy: 0.0,
    }
}

/// The end of an action on one of the nearest spots instead; who was to stand outside the arc
/// stays outside it.
pub(super) fn elsewhere(case: &Case<'_>, action: ActionId) -> Vec<Edit> {
    let end = places(case, action).into_iter().find(|p| p.0 == Part::To);
    let Some((part, at)) = end else {
        return Vec::new();
    };
    let outside = |p: Point| distance(p, Point::ZERO) > case.court.marks().arc - 0.6;
    spots_near(case.court, at)
        .into_iter()
        .filter(|(spot, _)| outside(case.court.spot(*spot)) == outside(at))
        .take(SPOTS)
        .map(|(spot, by)| Edit::Move {
            action,
            part,
            to: on(spot),
            by,
        })
        .collect()
}

/// The last move of each player ends on one of `names`, who comes nearest first.
pub(super) fn ends_at(case: &Case<'_>, names: &[SpotName]) -> Vec<Edit> {
    let mut near: Vec<(Edit, f64)> = Vec::new();
    for player in &case.set.players {
        let last = case.last_move(player.id, case.timeline.duration());
        let Some(last) = last.filter(|a| a.at(Edge::End).is_some()) else {
            continue;
        };
        if takes_the_shot(case, player.id) {
            continue;
        }
        let at = case.player(player.id, last.end).at();
        let spots = spots_near(case.court, at);
        let wanted = spots
            .into_iter()
            .filter(|(s, by)| names.contains(&s.name) && *by < FAR);
        near.extend(wanted.map(|(spot, by)| {
            let edit = Edit::Move {
                action: last.id,
                part: Part::To,
                to: on(spot),
                by,
            };
            (edit, by)
        }));
    }
    sort_short(&mut near, |a, b| a.1.total_cmp(&b.1));
    near.into_iter().map(|n| n.0).collect()
}

fn takes_the_shot(case: &Case<'_>, who: PlayerId) -> bool {
    let shot = Verb::Shot;
    case.timeline
        .actions()
        .iter()
        .any(|a| a.verb == shot && a.who == who)
}
