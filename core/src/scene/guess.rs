//! An answer on the floor: a cross where it was given, a ring where it should have been, and how far
//! apart they are.

use super::shape::{Draw, disc, lines, push_lines};
use super::verdict::Stage;
use super::{Item, Role, dimension};
use crate::math::{Point, distance};
use crate::quiz::FULL_M;
use crate::words;
use alloc::vec::Vec;

/// Half a cross, pixels.
const CROSS: f64 = 8.0;
/// Radius of the ring, pixels.
const RING: f64 = 11.0;

pub(super) fn draw(stage: &Stage<'_>, out: &mut Vec<Item>) {
    let Some((given, right)) = stage.view.guess else {
        return;
    };
    let (a, b) = (stage.camera.px(given), stage.camera.px(right));
    let ring = disc(b, RING);
    out.stroke(ring.clone(), Role::Paper, 5.0);
    out.stroke(ring, Role::Follow, 2.0);
    let corner = |x: f64, y: f64| Point::new(a.x + CROSS * x, a.y + CROSS * y);
    let mut cross = lines(&[corner(-1.0, -1.0), corner(1.0, 1.0)]);
    push_lines(&mut cross, &[corner(-1.0, 1.0), corner(1.0, -1.0)]);
    out.stroke(cross.clone(), Role::Paper, 5.0);
    out.stroke(cross, Role::Follow, 2.0);
    let off = distance(given, right);
    if off > FULL_M {
        let text = words::distance(off, stage.set.court, stage.voice);
        dimension::between(a, b, text, stage, &stage.attackers(), out);
    }
}

#[cfg(test)]
mod tests {
    use super::super::fixture::{Played, p, texts, turnstile};
    use super::super::{Item, Scene, Staged, Verdict, View, movers};
    use crate::defence::Defence;
    use crate::math::Point;
    use crate::quiz::Hidden;
    use crate::set::{Coverage, Edge, PlayerId, Verb};

    fn drawn(played: &Played, verdict: Option<&Verdict<'_>>, t: f64, view: &View) -> Scene {
        let staged = Staged {
            timeline: &played.timeline,
            set: &played.set,
            court: &played.court,
        };
        let mut out = Scene::default();
        movers(&staged, verdict, t, view, &mut out);
        out
    }

    fn strokes(scene: &Scene) -> usize {
        let stroke = |i: &&Item| matches!(i, Item::Stroke { .. });
        scene.items.iter().filter(stroke).count()
    }

    fn hiding(ways: &[PlayerId], ball: bool) -> View {
        View {
            hidden: Hidden {
                ways: PlayerId::ALL.map(|who| ways.contains(&who)),
                ball,
                ..Hidden::default()
            },
            inset: false,
            ..View::new(760.0)
        }
    }

    #[test]
    fn a_way_that_is_asked_for_is_not_drawn_and_those_of_others_are() {
        let played = turnstile();
        // Just before the zipper everybody's way is to come.
        let t = 0.0;
        let all = strokes(&drawn(&played, None, t, &hiding(&[], false)));
        let one = strokes(&drawn(&played, None, t, &hiding(&[p(2)], false)));
        let two = strokes(&drawn(&played, None, t, &hiding(&[p(2), p(1)], false)));
        assert!(all > one && one > two, "{all} {one} {two}");
        // On the way, what is done stays, and the rest and its arrow go.
        let t = played.time(2, Verb::Cut, 0, Edge::PassBy);
        let whole = drawn(&played, None, t, &hiding(&[], false));
        let done = drawn(&played, None, t, &hiding(&[p(2)], false));
        assert!(strokes(&whole) > strokes(&done));
        let trails = View {
            show_trails: false,
            ..hiding(&[], false)
        };
        assert!(strokes(&done) > strokes(&drawn(&played, None, t, &trails)));
    }

    #[test]
    fn where_the_ball_goes_is_not_drawn_and_no_pass_to_a_hidden_way() {
        let played = turnstile();
        let t = played.time(1, Verb::Pass, 0, Edge::Start) - 0.05;
        let all = strokes(&drawn(&played, None, t, &hiding(&[], false)));
        let ball = strokes(&drawn(&played, None, t, &hiding(&[], true)));
        assert!(ball < all);
        let cutter = strokes(&drawn(&played, None, t, &hiding(&[p(2)], false)));
        let both = strokes(&drawn(&played, None, t, &hiding(&[p(2)], true)));
        assert_eq!(cutter, both, "the pass to 2 would tell where 2 goes");
    }

    #[test]
    fn a_defender_who_is_asked_for_is_not_drawn_nor_measured_to() {
        let played = turnstile();
        let defence = Defence::simulate(
            &played.set,
            &played.court,
            &played.timeline,
            Coverage::Chase,
        );
        let looks = crate::looks::looks(&played.timeline, &defence);
        let look = looks.iter().find(|l| l.nearest == Some(p(3))).unwrap();
        let verdict = Verdict {
            defence: Some(&defence),
            looks: &[*look],
            flags: &[],
            ..Verdict::default()
        };
        let mut view = hiding(&[], false);
        let crosses = |view: &View| {
            let scene = drawn(&played, Some(&verdict), look.t, view);
            let all = texts(&scene);
            let measured = all.iter().any(|t| t.ends_with(" m"));
            (all.iter().filter(|t| **t == "X").count(), measured)
        };
        assert_eq!(crosses(&view), (5, true));
        view.hidden.defender = Some(p(3));
        assert_eq!(crosses(&view), (4, false));
    }

    #[test]
    fn who_is_to_be_sent_stays_until_then() {
        let played = turnstile();
        let leaves = played.time(3, Verb::Cut, 0, Edge::Plant);
        let mut view = hiding(&[p(3)], false);
        let place = |view: &View, t: f64| {
            let scene = drawn(&played, None, t, view);
            let digit = scene.items.iter().find_map(|i| match i {
                Item::Text { at, text, .. } if text == "3" => Some(*at),
                _ => None,
            });
            digit.unwrap()
        };
        let (then, later) = (place(&view, leaves), place(&view, leaves + 1.0));
        assert!(crate::math::distance(then, later) > 20.0);
        view.hidden.stays = Some((p(3), leaves));
        assert_eq!(place(&view, leaves), then);
        assert_eq!(place(&view, leaves + 1.0), then);
        assert_ne!(place(&view, leaves - 1.0), then);
    }

    #[test]
    fn an_answer_is_measured_unless_it_is_right() {
        let played = turnstile();
        let measured = |given: Point| {
            let view = View {
                guess: Some((given, Point::new(1.0, 5.0))),
                ..View::new(760.0)
            };
            let scene = drawn(&played, None, 1.0, &view);
            let text = texts(&scene).into_iter().find(|t| t.ends_with(" m"));
            text.map(alloc::string::String::from)
        };
        assert_eq!(measured(Point::new(1.0, 3.5)).as_deref(), Some("1.5 m"));
        assert_eq!(measured(Point::new(1.0, 4.8)), None);
    }
}
