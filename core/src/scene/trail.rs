//! Trails: where somebody has run and where they are about to, by the trade's marks.

use super::mover::{Body, start_ring};
use super::shape::{Draw, head, lines};
use super::view::{Camera, View};
use super::way::{Wave, Way};
use super::{Dash, Item, Role, mark};
use crate::math::{Point, direction};
use crate::set::{Action, Edge, PlayerId, Set, Verb};
use crate::timeline::{TimedAction, Timeline};
use alloc::vec::Vec;

/// A trail stays full so long after its run, seconds.
const LINGERS: f64 = 1.0;
/// What starts within this is shown as coming, seconds.
const COMING: f64 = 1.5;
/// Leg of an arrow head, metres and least pixels.
const HEAD: (f64, f64) = (0.20, 5.5);
/// A shot's line ends so far from the middle of the ring, metres.
const SHORT_OF_RING: f64 = 0.35;

/// Draws trails of one timeline through one camera.
pub(super) struct Trails<'a> {
    pub(super) timeline: &'a Timeline,
    pub(super) set: &'a Set,
    pub(super) view: &'a View,
    pub(super) camera: Camera,
}

/// What a line is drawn with.
#[derive(Clone, Copy)]
pub(super) struct Pen {
    pub(super) role: Role,
    pub(super) width: f64,
}

impl Trails<'_> {
    /// One trail a player, the latest, and what comes next.
    pub(super) fn at(&self, t: f64, out: &mut Vec<Item>) {
        for who in PlayerId::ALL {
            let t = self.view.seen_at(who, t);
            let [now, next] = self.about(who, t);
            if let Some((index, action)) = now {
                self.now(index, action, t, out);
            }
            if let Some((index, action)) = next {
                self.coming(index, action, out);
            }
        }
    }

    /// The rows of `who` that have a trail at `t`: the latest, and what is shown as coming.
    fn about(&self, who: PlayerId, t: f64) -> [Option<(usize, &TimedAction)>; 2] {
        let actions = self.timeline.actions();
        let own = || actions.iter().enumerate().filter(|(_, a)| a.who == who);
        let now = own()
            .filter(|(_, a)| a.start <= t)
            .max_by(|a, b| a.1.start.total_cmp(&b.1.start));
        let next = own()
            .filter(|(_, a)| a.start > t && a.start <= t + COMING)
            .min_by(|a, b| a.1.start.total_cmp(&b.1.start));
        // A shot comes off two feet or the last step: while its shooter still runs, its line
        // would only lie over the trail.
        let running = now.is_some_and(|(_, a)| t < a.end);
        [
            now,
            next.filter(|(_, a)| !(running && a.verb == Verb::Shot)),
        ]
    }

    /// What is run, or about to be, at `t`; what is done no longer.
    #[cfg(feature = "authoring")]
    pub(super) fn shown(&self, t: f64) -> impl Iterator<Item = &TimedAction> {
        let about = PlayerId::ALL
            .into_iter()
            .flat_map(move |who| self.about(who, t));
        about
            .flatten()
            .map(|(_, action)| action)
            .filter(move |a| t <= a.end + LINGERS)
    }

    /// All trails of a beat, whole.
    pub(super) fn of_beat(&self, beat: usize, out: &mut Vec<Item>) {
        for (index, action) in self.timeline.actions().iter().enumerate() {
            if usize::from(action.id.beat) == beat {
                self.whole(index, action, self.pens(action.who).0, out);
            }
        }
    }

    /// One trail from its start to its end.
    pub(super) fn whole(&self, index: usize, action: &TimedAction, pen: Pen, out: &mut Vec<Item>) {
        match self.way(index, action) {
            Some(way) => {
                self.line(action.verb, &way, way.length(), pen, out);
                self.head(action, &way, pen, out);
            }
            // Who screens where they stand has a bar and no line.
            None => self.bar(action, None, pen, out),
        }
        self.handoff(action, pen.role, out);
    }

    fn now(&self, index: usize, action: &TimedAction, t: f64, out: &mut Vec<Item>) {
        let (full, faint) = self.pens(action.who);
        let pen = if t <= action.end + LINGERS {
            full
        } else {
            faint
        };
        let hidden = self.hides(action);
        if let Some(way) = self.way(index, action) {
            let ran = self.ran(index, action, &way, t);
            if ran < way.length() - 0.5 && !hidden {
                // Whole in the fainter pen first: so dashes and waves of both parts are in step.
                self.line(action.verb, &way, way.length(), faint, out);
                self.head(action, &way, faint, out);
            }
            if ran > 0.5 {
                self.line(action.verb, &way, ran, pen, out);
                start_ring(way.at(0.0).0, faint.role, out);
            }
        }
        if !hidden {
            self.handoff(action, pen.role, out);
        }
    }

    fn coming(&self, index: usize, action: &TimedAction, out: &mut Vec<Item>) {
        if self.hides(action) {
            return;
        }
        let faint = self.pens(action.who).1;
        if let Some(way) = self.way(index, action) {
            self.line(action.verb, &way, way.length(), faint, out);
            start_ring(way.at(0.0).0, faint.role, out);
            self.head(action, &way, faint, out);
        }
        self.handoff(action, faint.role, out);
    }

    /// Whether what is to come of an action would tell what a question asks for.
    #[cfg(feature = "authoring")]
    fn hides(&self, action: &TimedAction) -> bool {
        let hidden = &self.view.hidden;
        let gives = matches!(action.verb, Verb::Pass | Verb::Handoff | Verb::Shot);
        let to = self.set.action(action.id).and_then(Action::receiver);
        hidden.hides(action.who)
            || gives && (hidden.ball || to.is_some_and(|who| hidden.hides(who)))
    }

    /// Questions are asked by the larger module.
    #[cfg(not(feature = "authoring"))]
    #[allow(clippy::unused_self, reason = "the other build has something to hide")]
    fn hides(&self, _: &TimedAction) -> bool {
        false
    }

    /// The pens for what was run and for what is faint.
    fn pens(&self, who: PlayerId) -> (Pen, Pen) {
        let (run, thin) = if self.camera.wide {
            (2.4, 1.5)
        } else {
            (1.9, 1.2)
        };
        let pen = |role, width| Pen { role, width };
        if self.camera.print {
            (pen(Role::Ink, 1.7), pen(Role::Ink, 1.7))
        } else if self.view.follows(who) {
            (pen(Role::Follow, run + 0.5), pen(Role::FollowToCome, thin))
        } else if self.view.follows_some() {
            (pen(Role::Faint, thin), pen(Role::Faint, thin))
        } else {
            (pen(Role::Ink, run), pen(Role::Faint, thin))
        }
    }

    /// The line of an action: the way over the floor, of a pass or a shot the ball's.
    fn way(&self, index: usize, action: &TimedAction) -> Option<Way> {
        match action.verb {
            Verb::Pass => {
                let release = action.at(Edge::Release)?;
                let catch = action.at(Edge::Catch)?;
                let from = self.body(action.who, release)?;
                let to = self.body(self.set.action(action.id)?.receiver()?, catch)?;
                between(from.middle, from.tip() + 4.0, to.middle, to.wide + 6.0)
            }
            Verb::Shot => {
                let from = self.body(action.who, action.at(Edge::Release)?)?;
                let short = SHORT_OF_RING * self.camera.scale;
                let ring = self.camera.px(Point::ZERO);
                between(from.middle, from.tip() + 4.0, ring, short)
            }
            _ => {
                let way = Way::of(self.timeline.trail(index)?, &self.camera);
                (way.length() > 1.0).then_some(way)
            }
        }
    }

    /// How many pixels of the way lie behind at `t`.
    fn ran(&self, index: usize, action: &TimedAction, way: &Way, t: f64) -> f64 {
        let share = |from: f64, to: f64| ((t - from) / (to - from).max(1e-6)).clamp(0.0, 1.0);
        let release = action.at(Edge::Release).unwrap_or(action.start);
        match action.verb {
            Verb::Pass => {
                way.length() * share(release, action.at(Edge::Catch).unwrap_or(action.end))
            }
            // A shot is told once it is gone.
            Verb::Shot => way.length() * share(release, release + 0.3),
            _ if t >= action.end => way.length(),
            _ => Way::of(&self.timeline.trail_until(index, t), &self.camera).length(),
        }
    }

    fn line(&self, verb: Verb, way: &Way, to: f64, pen: Pen, out: &mut Vec<Item>) {
        match verb {
            Verb::Pass => {
                let dash = if self.camera.wide {
                    Dash { on: 9.0, off: 6.0 }
                } else {
                    Dash { on: 5.0, off: 3.6 }
                };
                out.dashed(way.part(0.0, to), pen.role, pen.width, dash);
            }
            Verb::Shot => mark::double_line(way.at(0.0).0, way.at(to).0, pen.role, out),
            Verb::Dribble => {
                let wave = Wave {
                    length: (0.34 * self.camera.scale).max(8.0),
                    height: (0.095 * self.camera.scale).max(2.6),
                    straight: (0.42 * self.camera.scale).max(9.0),
                };
                out.pen(wave.along(way, 0.0, to), pen.role, pen.width);
            }
            _ => out.pen(way.part(0.0, to), pen.role, pen.width),
        }
    }

    /// What a line ends in: an arrow, of a screen a bar.
    fn head(&self, action: &TimedAction, way: &Way, pen: Pen, out: &mut Vec<Item>) {
        if action.verb == Verb::Screen {
            self.bar(action, Some(way), pen, out);
            return;
        }
        let (tip, along) = way.at(way.length());
        let leg = (HEAD.0 * self.camera.scale).max(HEAD.1);
        out.pen(head(tip, along, leg), pen.role, pen.width);
    }

    /// The bar of a screen where it will be set. Nobody stands there yet, so the line goes on to
    /// it.
    fn bar(&self, action: &TimedAction, way: Option<&Way>, pen: Pen, out: &mut Vec<Item>) {
        let set = action.at(Edge::Set).filter(|_| action.verb == Verb::Screen);
        let Some(body) = set.and_then(|t| self.body(action.who, t)) else {
            return;
        };
        if let Some(way) = way {
            let (end, _) = way.at(way.length());
            out.pen(lines(&[end, body.at(0.0, body.tip())]), pen.role, pen.width);
        }
        mark::screen_bar(&body, &self.camera, pen.role, out);
    }

    /// The bars of a hand-off, across the taker's line.
    fn handoff(&self, action: &TimedAction, role: Role, out: &mut Vec<Item>) {
        let written = self.set.action(action.id);
        // The taker's way to it is a row of the same action.
        if action.verb != Verb::Handoff || written.and_then(Action::actor) != Some(action.who) {
            return;
        }
        let taker = written.and_then(Action::receiver);
        let (Some(taker), Some(t)) = (taker, action.at(Edge::Release)) else {
            return;
        };
        let place = |t: f64| {
            self.timeline
                .player(taker, t)
                .map(|m| self.camera.px(Point::new(m.x, m.y)))
        };
        if let (Some(a), Some(at), Some(b)) = (place(t - 0.08), place(t), place(t + 0.08))
            && let Some(along) = direction(b - a)
        {
            let k = self
                .camera
                .enlargement(self.timeline.limits(taker).shoulder);
            mark::handoff_bars(at, along, k * self.camera.scale, role, out);
        }
    }

    fn body(&self, who: PlayerId, t: f64) -> Option<Body> {
        let state = self.timeline.player(who, t)?;
        Some(Body::of(&state, self.timeline.limits(who), &self.camera))
    }
}

/// The straight way from `a` to `b`, shortened at both ends.
fn between(a: Point, off_a: f64, b: Point, off_b: f64) -> Option<Way> {
    let along = direction(b - a)?;
    let way = Way::straight(a, b);
    (way.length() > off_a + off_b + 4.0)
        .then(|| Way::straight(a + along * off_a, b - along * off_b))
}

/// A plain arrow from `a` to `b`.
pub(super) fn arrow(a: Point, b: Point, role: Role, width: f64, leg: f64, out: &mut Vec<Item>) {
    out.pen(lines(&[a, b]), role, width);
    if let Some(along) = direction(b - a) {
        out.pen(head(b, along, leg), role, width);
    }
}
