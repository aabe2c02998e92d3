//! What judging a set adds to its pictures: five defenders, how open a look is, flags at findings.

use super::mover::Body;
use super::shape::{Draw, disc, lines, sans};
use super::trail::Trails;
use super::view::{Camera, View};
use super::{Anchor, Item, Role};
use super::{dimension, ghost};
use crate::defence::Defence;
use crate::findings::{Finding, Severity};
use crate::looks::Look;
use crate::math::{BezPath, Listed, Point, unit};
use crate::set::{PlayerId, Set};
use crate::timeline::{MoverState, Slowed, Timeline};
use crate::voice::Voice;
use alloc::string::String;
use alloc::vec::Vec;
use core::f64::consts::TAU;

/// A flag is raised so long before what it marks, and stays so long after, seconds.
const BEFORE: f64 = 0.3;
const AFTER: f64 = 0.8;
/// Half the height of a flag, pixels.
const FLAG: f64 = 8.5;
/// From the middle of a body to its flag, pixels.
const BESIDE: f64 = 24.0;

/// What is known of a set beyond itself; anything may be left out.
#[derive(Clone, Copy, Debug, Default)]
pub struct Verdict<'a> {
    /// Five defenders.
    pub defence: Option<&'a Defence>,
    /// Chances against them.
    pub looks: &'a [Look],
    /// Flags.
    pub flags: &'a [Flag],
    /// Shows as ghosts where everybody stands at this instant, seconds.
    pub ghosts: Option<f64>,
    /// Stretches that are shown slowly, marked in the strip.
    pub slow: &'a [Slowed],
}

/// A finding as it is marked on the court and in the strip. Its words stand in the text.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flag {
    /// `a` to `z`, in time order; findings have letters since digits are players.
    pub letter: char,
    /// Circle, triangle or octagon.
    pub severity: Severity,
    /// When, seconds.
    pub t: f64,
    /// Until when, seconds.
    pub until: f64,
    /// In whose row it stands; nobody's: the ball's.
    pub who: Option<PlayerId>,
    /// Where on the floor, metres.
    pub place: Option<Point>,
}

impl Flag {
    /// The flags of `findings`, which are in time order; there are no more than letters.
    #[must_use]
    pub fn of(findings: &[Finding]) -> Vec<Self> {
        let flags = findings.iter().zip('a'..='z').map(|(f, letter)| Self {
            letter,
            severity: f.severity,
            t: f.t,
            until: f.until.unwrap_or(f.t),
            who: f.players.first().copied(),
            place: f.place,
        });
        flags.listed()
    }

    /// Whether it is raised on the court at `t`.
    fn up(&self, t: f64) -> bool {
        t >= self.t - BEFORE && t <= self.until + AFTER
    }

    /// Draws it around `at`.
    pub(super) fn draw(&self, at: Point, out: &mut Vec<Item>) {
        let shape = match self.severity {
            Severity::Note => disc(at, FLAG),
            Severity::Warning => polygon(at, 3, 1.35 * FLAG, 0.0),
            Severity::Violation => polygon(at, 8, 1.08 * FLAG, TAU / 16.0),
        };
        // A triangle's middle lies low.
        let down = if self.severity == Severity::Warning {
            5.0
        } else {
            3.8
        };
        out.stroke(shape.clone(), Role::Paper, 3.0);
        out.fill(shape, Role::Ink);
        let style = sans(11.0, true, Anchor::Middle);
        let at = Point::new(at.x, at.y + down);
        out.text(at, String::from(self.letter), Role::Paper, style);
    }
}

/// An even polygon around `middle`, a corner at `turn` from the top.
fn polygon(middle: Point, corners: u8, r: f64, turn: f64) -> BezPath {
    let corner = |i| middle + unit(turn + TAU * f64::from(i) / f64::from(corners)) * r;
    let points: Vec<Point> = (0..corners).map(corner).listed();
    let mut path = lines(&points);
    path.close_path();
    path
}

/// What a verdict is drawn into.
pub(super) struct Stage<'a> {
    pub(super) timeline: &'a Timeline,
    pub(super) set: &'a Set,
    pub(super) view: &'a View,
    pub(super) camera: &'a Camera,
    pub(super) t: f64,
    pub(super) voice: Voice,
}

impl Verdict<'_> {
    /// What is next, under everybody who is there.
    pub(super) fn ghosts(&self, trails: &Trails<'_>, t: f64, out: &mut Vec<Item>) {
        if let Some(until) = self.ghosts.filter(|until| *until > t) {
            ghost::draw(trails, t, until, out);
        }
    }

    /// The defenders, under the attackers.
    pub(super) fn defenders(&self, stage: &Stage<'_>, out: &mut Vec<Item>) {
        let Some(defence) = self.defence else { return };
        for who in PlayerId::ALL {
            let state = defence.state(who, stage.t);
            let Some(d) = state.filter(|_| !stage.view.hides_defender(who)) else {
                continue;
            };
            let state = MoverState {
                x: d.x,
                y: d.y,
                facing: d.facing,
                ..MoverState::default()
            };
            let body = Body::of(&state, stage.timeline.limits(who), stage.camera);
            body.draw_defender(who, stage.camera.print, out);
        }
    }

    /// Looks and flags, over all bodies.
    pub(super) fn marks(&self, stage: &Stage<'_>, out: &mut Vec<Item>) {
        let bodies = self.bodies(stage);
        if let Some(defence) = self.defence
            && stage.view.measures_looks()
        {
            for look in self.looks.iter().filter(|l| l.is_on(stage.t)) {
                dimension::look(look, defence, stage, &bodies, out);
            }
        }
        let up = self.flags.iter().filter(|f| f.up(stage.t));
        let mut taken: Vec<Point> = bodies;
        for flag in up {
            let Some(place) = flag.place else { continue };
            let at = free_place(stage.camera, stage.camera.px(place), &taken);
            taken.push(at);
            flag.draw(at, out);
        }
    }

    /// Where everybody is drawn.
    fn bodies(&self, stage: &Stage<'_>) -> Vec<Point> {
        let mut out = stage.attackers();
        for who in PlayerId::ALL {
            let defender = self.defence.and_then(|d| d.state(who, stage.t));
            out.extend(defender.map(|d| stage.camera.px(Point::new(d.x, d.y))));
        }
        out
    }
}

impl Stage<'_> {
    /// Where the attackers are drawn.
    pub(super) fn attackers(&self) -> Vec<Point> {
        let at = PlayerId::ALL.into_iter();
        let at = at.filter_map(|who| self.timeline.player(who, self.t));
        at.map(|m| self.camera.px(m.at())).listed()
    }
}

/// Of the places around `middle`, the one with most room, right before left before above and below.
fn free_place(camera: &Camera, middle: Point, taken: &[Point]) -> Point {
    let mut best = (f64::NEG_INFINITY, middle);
    for turn in [0.25, 0.75, 0.0, 0.5, 0.125, 0.375, 0.625, 0.875] {
        let at = middle + unit(TAU * turn) * BESIDE;
        let near = taken.iter().map(|p| crate::math::distance(*p, at));
        let room = near.fold(BESIDE, f64::min);
        let room = if camera.area.is_near(at, -FLAG - 2.0) {
            room
        } else {
            -1.0
        };
        // Ever so little room more is no reason to move a flag.
        if room > best.0 + 3.0 {
            best = (room, at);
        }
    }
    best.1
}

#[cfg(test)]
mod tests {
    use super::super::fixture::{Played, p, texts, turnstile};
    use super::super::{Scene, Staged, StripView, View, movers, strip};
    use super::*;
    use crate::set::Coverage;

    fn verdict<'a>(defence: &'a Defence, looks: &'a [Look], flags: &'a [Flag]) -> Verdict<'a> {
        Verdict {
            defence: Some(defence),
            looks,
            flags,
            ..Verdict::default()
        }
    }

    fn drawn(played: &Played, verdict: &Verdict<'_>, t: f64, width: f64) -> Scene {
        let staged = Staged {
            timeline: &played.timeline,
            set: &played.set,
            court: &played.court,
        };
        let mut out = Scene::default();
        movers(&staged, Some(verdict), t, &View::new(width), &mut out);
        out
    }

    fn simulated(played: &Played) -> (Defence, Vec<Look>) {
        let defence = Defence::simulate(
            &played.set,
            &played.court,
            &played.timeline,
            Coverage::Chase,
        );
        let looks = crate::looks::looks(&played.timeline, &defence);
        (defence, looks)
    }

    #[test]
    fn five_defenders_stand_under_the_attackers() {
        let played = turnstile();
        let (defence, _) = simulated(&played);
        let scene = drawn(&played, &verdict(&defence, &[], &[]), 1.0, 760.0);
        let outlined = |i: &&Item| {
            matches!(
                i,
                Item::Fill {
                    role: Role::Field,
                    ..
                }
            )
        };
        let filled = |i: &Item| {
            matches!(
                i,
                Item::Fill {
                    role: Role::Offence,
                    ..
                }
            )
        };
        assert_eq!(scene.items.iter().filter(outlined).count(), 5);
        let last = scene.items.iter().rposition(|i| outlined(&i)).unwrap();
        assert!(scene.items.iter().skip(last).any(filled));
        assert_eq!(texts(&scene).iter().filter(|t| **t == "X").count(), 5);
    }

    #[test]
    fn where_room_is_short_defenders_lose_their_x_and_keep_their_number() {
        let played = turnstile();
        let (defence, _) = simulated(&played);
        let scene = drawn(&played, &verdict(&defence, &[], &[]), 1.0, 200.0);
        let texts = texts(&scene);
        assert!(!texts.contains(&"X"));
        assert_eq!(texts.iter().filter(|t| **t == "3").count(), 2);
    }

    #[test]
    fn a_look_is_measured_at_its_catch_and_gone_a_second_later() {
        let played = turnstile();
        let (defence, looks) = simulated(&played);
        let look = looks.iter().find(|l| l.who == p(3)).unwrap();
        let measured = |t: f64| {
            let only = [*look];
            let scene = drawn(&played, &verdict(&defence, &only, &[]), t, 760.0);
            texts(&scene).iter().any(|t| t.ends_with(" m"))
        };
        assert!(measured(look.t) && measured(look.t + 0.5));
        assert!(!measured(look.t - 0.1) && !measured(look.t + 0.7));
    }

    #[test]
    fn flags_stand_clear_of_bodies_and_of_each_other() {
        let played = turnstile();
        let (defence, _) = simulated(&played);
        let at = played.timeline.player(p(4), 1.0).unwrap().at();
        let flag = |letter, severity| Flag {
            letter,
            severity,
            t: 1.0,
            until: 1.0,
            who: Some(p(4)),
            place: Some(at),
        };
        let flags = [
            flag('a', Severity::Note),
            flag('b', Severity::Warning),
            flag('c', Severity::Violation),
        ];
        let verdict = verdict(&defence, &[], &flags);
        let scene = drawn(&played, &verdict, 1.0, 760.0);
        let places: Vec<Point> = scene
            .items
            .iter()
            .filter_map(|i| match i {
                Item::Text { at, text, .. } if ["a", "b", "c"].contains(&text.as_str()) => {
                    Some(*at)
                }
                _ => None,
            })
            .collect();
        assert_eq!(places.len(), 3);
        for (i, a) in places.iter().enumerate() {
            for b in places.iter().skip(i + 1) {
                assert!(crate::math::distance(*a, *b) > 2.0 * FLAG, "{places:?}");
            }
        }
        assert!(!texts(&drawn(&played, &verdict, 5.0, 760.0)).contains(&"a"));
    }

    #[test]
    fn the_strip_says_how_open_the_shot_is_and_carries_the_flags() {
        let played = turnstile();
        let (defence, looks) = simulated(&played);
        let flags = [Flag {
            letter: 'a',
            severity: Severity::Note,
            t: 1.0,
            until: 2.0,
            who: None,
            place: None,
        }];
        let data = crate::strip::build(&played.timeline, &played.set);
        let view = StripView {
            width_px: 720.0,
            ..StripView::default()
        };
        let scene = strip(&data, Some(&verdict(&defence, &looks, &flags)), &view);
        let texts = texts(&scene);
        let shot = looks
            .iter()
            .rfind(|l| l.chance == crate::looks::Chance::Finish);
        assert!(
            texts.contains(&crate::words::open(shot.unwrap(), Voice::default()).as_str()),
            "{texts:?}"
        );
        assert!(texts.contains(&"a"));
    }

    #[test]
    fn a_slow_stretch_says_how_slow_beside_its_rail_and_within_the_strip() {
        let played = turnstile();
        let data = crate::strip::build(&played.timeline, &played.set);
        let end = played.timeline.duration();
        for (from, to, rate, said) in [
            (4.0, 6.0, 0.5, "× 0.5"),
            (4.0, end, 0.25, "× 0.25"),
            (1.0, 2.0, 0.3, "× 0.3"),
        ] {
            let view = StripView {
                width_px: 330.0,
                ..StripView::default()
            };
            let slow = [Slowed { from, to, rate }];
            let verdict = Verdict {
                slow: &slow,
                ..Verdict::default()
            };
            let geometry = super::super::StripGeometry::of(&data, &view);
            let scene = strip(&data, Some(&verdict), &view);
            let told = scene.items.iter().find_map(|i| match i {
                Item::Text {
                    at, text, style, ..
                } if text == said => Some((at.x, *style)),
                _ => None,
            });
            let (x, style) = told.unwrap();
            let width = super::super::measure::text_width(said, style.size, style.bold);
            let (left, right) = match style.anchor {
                Anchor::Start => (x, x + width),
                _ => (x - width, x),
            };
            assert!(left >= geometry.left && right <= geometry.right, "{said}");
            let rail = [from, to].map(|t| geometry.x(t));
            assert!(right < rail[0] || left > rail[1], "{said} lies on its rail");
        }
    }

    #[test]
    fn on_a_phone_how_open_a_shot_is_lies_over_no_run() {
        let played = turnstile();
        let (defence, looks) = simulated(&played);
        let data = crate::strip::build(&played.timeline, &played.set);
        let view = StripView {
            width_px: 330.0,
            ..StripView::default()
        };
        let scene = strip(&data, Some(&verdict(&defence, &looks, &[])), &view);
        let geometry = super::super::StripGeometry::of(&data, &view);
        let look = looks
            .iter()
            .rfind(|l| l.chance == crate::looks::Chance::Finish)
            .unwrap();
        let said = crate::words::open(look, Voice::default());
        let (at, style) = scene
            .items
            .iter()
            .find_map(|i| match i {
                Item::Text {
                    at, text, style, ..
                } if *text == said => Some((*at, *style)),
                _ => None,
            })
            .unwrap();
        let width = super::super::measure::text_width(&said, style.size, style.bold);
        let left = match style.anchor {
            Anchor::End => at.x - width,
            _ => at.x,
        };
        let row = data.rows.iter().find(|r| r.who == look.who).unwrap();
        for bit in &row.bits {
            if matches!(bit.what, crate::strip::BitKind::Move(_)) {
                let [from, to] = [bit.start, bit.end].map(|t| geometry.x(t));
                assert!(to <= left || from >= left + width, "{from} {to} {left}");
            }
        }
    }

    #[test]
    fn who_cannot_see_it_hears_who_is_nearest_to_the_ball() {
        let played = turnstile();
        let (defence, _) = simulated(&played);
        let told = crate::words::guarded(
            &played.timeline,
            &defence,
            &played.set,
            1.0,
            Voice::default(),
        );
        assert!(
            told.starts_with("X1 is ") && told.ends_with(" m from the ball."),
            "{told}"
        );
        let flight = played.time(1, crate::set::Verb::Pass, 0, crate::set::Edge::Release) + 0.1;
        assert_eq!(
            crate::words::guarded(
                &played.timeline,
                &defence,
                &played.set,
                flight,
                Voice::default()
            ),
            ""
        );
    }

    #[test]
    fn there_are_no_more_flags_than_letters() {
        use crate::findings::What;
        let finding = Finding {
            what: What::NoSafety,
            severity: Severity::Note,
            t: 1.0,
            until: None,
            players: Vec::new(),
            defenders: Vec::new(),
            coverage: None,
            place: None,
            actions: Vec::new(),
            read: Vec::new(),
            cure: None,
        };
        let many: Vec<Finding> = core::iter::repeat_n(finding, 40).collect();
        let flags = Flag::of(&many);
        assert_eq!(flags.len(), 26);
        assert_eq!(flags.last().map(|f| f.letter), Some('z'));
    }
}
