//! Where the strip parts: a branch leaves the rule under the beats' names and ends above them, by
//! name.

use super::measure::fitted;
use super::shape::{Draw, disc, sans};
use super::{Anchor, Item, Role, StripGeometry};
use crate::math::{BezPath, Point};
use crate::strip::Fork;
use crate::voice::Voice;
use crate::words;
use alloc::vec::Vec;

/// How far to the right of its instant a branch has turned level, pixels.
const TURN: f64 = 9.0;
/// Height of a name, pixels.
const NAME: f64 = 11.0;
/// Where the names stand, pixels from the top.
const BASELINE: f64 = 10.0;
/// Height of a branch whose name has no room, pixels.
const SHORT: f64 = 5.0;
/// Nearer to each other, two branches have no room for both their names, pixels.
const LEAST: f64 = 48.0;

/// Draws `forks`, which are in time order. Of some that are too near to be read the first is named.
pub(super) fn forks(forks: &[Fork], geometry: &StripGeometry, voice: Voice, out: &mut Vec<Item>) {
    let mut free = geometry.left - LEAST;
    for (i, fork) in forks.iter().enumerate() {
        let x = geometry.x(fork.t);
        let next = forks.iter().skip(i).map(|f| geometry.x(f.t));
        let end = next.fold(geometry.right, |end, at| {
            if at >= x + LEAST { end.min(at) } else { end }
        });
        let name = fitted(&words::fork(fork, voice), NAME, false, end - x - TURN - 8.0);
        if x < free + LEAST || name.is_empty() {
            stem(x, geometry.header - SHORT, geometry, out);
            continue;
        }
        free = x;
        stem(x, BASELINE - 4.0, geometry, out);
        let at = Point::new(x + TURN + 4.0, BASELINE);
        out.text(at, name, Role::Soft, sans(NAME, false, Anchor::Start));
    }
}

/// The branch's line: up from the rule, and level.
fn stem(x: f64, level: f64, geometry: &StripGeometry, out: &mut Vec<Item>) {
    let rule = geometry.header;
    let mut path = BezPath::new();
    path.move_to(Point::new(x, rule));
    path.curve_to(
        Point::new(x, 0.5 * (level + rule)),
        Point::new(x, level),
        Point::new(x + TURN, level),
    );
    out.stroke(path.clone(), Role::Paper, 3.4);
    out.stroke(path, Role::Ink, 1.2);
    out.fill(disc(Point::new(x, rule), 2.9), Role::Ink);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::measure::text_width;
    use crate::strip::ForkTo;

    fn drawn(instants: &[f64]) -> (Vec<(f64, f64)>, usize) {
        let geometry = StripGeometry {
            left: 30.0,
            right: 530.0,
            duration: 10.0,
            header: 30.0,
            ..StripGeometry::default()
        };
        let fork = |t: &f64| Fork {
            t: *t,
            to: ForkTo::Read(0, Some("X5 steps out and leaves the ring".into())),
        };
        let list: Vec<Fork> = instants.iter().map(fork).collect();
        let mut items = Vec::new();
        forks(&list, &geometry, Voice::ENGLISH, &mut items);
        let names = items.iter().filter_map(|item| match item {
            Item::Text { at, text, .. } => Some((at.x, at.x + text_width(text, NAME, false))),
            _ => None,
        });
        let stems = items.len() - names.clone().count();
        (names.collect(), stems / 3)
    }

    #[test]
    fn every_branch_leaves_the_rule_and_no_name_runs_into_another() {
        for instants in [
            &[][..],
            &[0.0],
            &[4.0, 4.0],
            &[4.0, 4.1, 6.0],
            &[1.0, 3.0, 9.0],
            &[9.9, 10.0],
        ] {
            let (names, stems) = drawn(instants);
            assert_eq!(stems, instants.len(), "{instants:?}");
            assert!(names.iter().all(|n| n.1 <= 530.0), "{instants:?} {names:?}");
            assert!(
                names.windows(2).all(|pair| pair[0].1 < pair[1].0 - TURN),
                "{instants:?} {names:?}"
            );
        }
    }

    #[test]
    fn branches_that_are_far_apart_are_all_named() {
        assert_eq!(drawn(&[1.0, 4.0, 8.0]).0.len(), 3);
        assert_eq!(drawn(&[4.0, 4.1]).0.len(), 1);
    }
}
