//! How much of the court is shown, how large, and for whom.

use super::{Area, close};
use crate::court::Court;
use crate::math::{BezPath, PathEl, Point};
#[cfg(feature = "authoring")]
use crate::quiz::Hidden;
use crate::set::PlayerId;
use crate::timeline::Timeline;
use crate::voice::Voice;

/// From this width on, trails are drawn in the wider of two pens, CSS pixels.
const WIDE_PX: f64 = 540.0;
/// Least depth shown below the ring, metres.
const LEAST_DEPTH: f64 = 7.85;
/// Shown outside the lines, metres.
const APRON: f64 = 0.4;
/// The same where somebody throws in from there, metres.
const WIDE_APRON: f64 = 0.8;

/// What a court picture is drawn for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct View {
    /// Width of the picture, CSS pixels.
    pub width_px: f64,
    /// Metres shown below the ring.
    pub depth: f64,
    /// Metres shown outside the lines.
    pub apron: f64,
    /// For paper: trails whole and in ink, arrows on all of them.
    pub print: bool,
    /// Who is followed, by [`PlayerId::index`].
    pub follow: [bool; 5],
    /// Whether trails are drawn.
    pub show_trails: bool,
    /// Whether a close-up opens in a corner where bodies had to be enlarged.
    pub inset: bool,
    /// Fills the picture with what a close-up shows around this place, at true scale.
    pub look_at: Option<Point>,
    /// How what is written in it is told.
    pub voice: Voice,
    /// What a question leaves out.
    #[cfg(feature = "authoring")]
    pub hidden: Hidden,
    /// Where an answer was, and where it should have been, metres: measured on the floor.
    #[cfg(feature = "authoring")]
    pub guess: Option<(Point, Point)>,
}

impl View {
    /// The usual view of a court, `width_px` wide.
    #[must_use]
    pub fn new(width_px: f64) -> Self {
        Self {
            width_px: width_px.clamp(40.0, 8000.0),
            depth: LEAST_DEPTH,
            apron: APRON,
            print: false,
            follow: [false; 5],
            show_trails: true,
            inset: true,
            look_at: None,
            voice: Voice::default(),
            #[cfg(feature = "authoring")]
            hidden: Hidden::default(),
            #[cfg(feature = "authoring")]
            guess: None,
        }
    }

    /// A view that shows everybody for the whole of `timeline`.
    #[must_use]
    pub fn of(timeline: &Timeline, court: &Court, width_px: f64) -> Self {
        let mut view = Self::new(width_px);
        let marks = court.marks();
        let steps = (timeline.duration() / 0.2).clamp(1.0, 600.0) as u16;
        for i in 0..=steps {
            let t = timeline.duration() * f64::from(i) / f64::from(steps);
            for at in PlayerId::ALL.iter().filter_map(|id| timeline.place(*id, t)) {
                view.depth = view.depth.max(at.y + 1.0);
                if at.x.abs() > marks.sideline || at.y < -marks.baseline {
                    view.apron = WIDE_APRON;
                }
            }
        }
        view.depth = view.depth.min(marks.half + 2.0);
        view
    }

    /// Height of the picture, CSS pixels.
    #[must_use]
    pub fn height_px(&self, court: &Court) -> f64 {
        (self.depth + court.marks().baseline + self.apron) * self.whole(court)
    }

    /// CSS pixels a metre.
    #[must_use]
    pub fn scale(&self, court: &Court) -> f64 {
        if self.look_at.is_none() {
            return self.whole(court);
        }
        // The picture keeps its size, and all that the inset shows is on it.
        let wide = self.width_px / close::WIDTH_PX;
        close::SCALE * wide.min(self.height_px(court) / close::HEIGHT_PX)
    }

    /// CSS pixels a metre where the whole court is shown.
    fn whole(&self, court: &Court) -> f64 {
        self.width_px / (2.0 * (court.marks().sideline + self.apron))
    }

    /// How much larger than life a body with these shoulders (metres) is drawn: 28 px wide where
    /// room is short, never under life size, never over 1.8 times.
    #[must_use]
    pub fn enlargement(&self, court: &Court, shoulder: f64) -> f64 {
        self.camera(court).enlargement(shoulder)
    }

    /// Whether anybody is followed.
    #[must_use]
    pub fn follows_some(&self) -> bool {
        self.follow.contains(&true)
    }

    /// Whether `who` is followed.
    #[must_use]
    pub fn follows(&self, who: PlayerId) -> bool {
        self.follow.get(who.index()).copied().unwrap_or(false)
    }

    /// The instant at which a picture of `t` shows `who`, seconds.
    #[cfg(feature = "authoring")]
    pub(super) fn seen_at(&self, who: PlayerId, t: f64) -> f64 {
        self.hidden.seen_at(who, t)
    }

    /// Questions are asked by the larger module.
    #[cfg(not(feature = "authoring"))]
    #[allow(clippy::unused_self, reason = "the other build has something to hide")]
    pub(super) fn seen_at(&self, _: PlayerId, t: f64) -> f64 {
        t
    }

    /// Whether a question asks where this defender is.
    #[cfg(feature = "authoring")]
    pub(super) fn hides_defender(&self, who: PlayerId) -> bool {
        self.hidden.defender == Some(who)
    }

    /// Questions are asked by the larger module.
    #[cfg(not(feature = "authoring"))]
    #[allow(clippy::unused_self, reason = "the other build has something to hide")]
    pub(super) fn hides_defender(&self, _: PlayerId) -> bool {
        false
    }

    /// Whether looks are measured: beside an answer, another distance would be in the way.
    #[cfg(feature = "authoring")]
    pub(super) fn measures_looks(&self) -> bool {
        self.guess.is_none() && self.hidden.defender.is_none()
    }

    /// Questions are asked by the larger module.
    #[cfg(not(feature = "authoring"))]
    #[allow(clippy::unused_self, reason = "the other build has something to hide")]
    pub(super) fn measures_looks(&self) -> bool {
        true
    }

    /// The floor under a place of the picture, metres.
    #[cfg(feature = "authoring")]
    #[must_use]
    pub fn floor_at(&self, court: &Court, px: Point) -> Point {
        let camera = self.camera(court);
        ((px - camera.origin) / camera.scale).to_point()
    }

    /// Where a place on the floor lies in the picture, CSS pixels.
    #[cfg(feature = "authoring")]
    #[must_use]
    pub fn px_at(&self, court: &Court, floor: Point) -> Point {
        self.camera(court).px(floor)
    }

    pub(super) fn camera(&self, court: &Court) -> Camera {
        let scale = self.scale(court);
        let (middle, top) = match self.look_at {
            Some(p) => (p.x, p.y - 0.5 * self.height_px(court) / scale),
            None => (0.0, -court.marks().baseline - self.apron),
        };
        Camera {
            scale,
            origin: Point::new(0.5 * self.width_px - middle * scale, -top * scale),
            area: Area {
                x: 0.0,
                y: 0.0,
                width: self.width_px,
                height: self.height_px(court),
            },
            wide: self.width_px >= WIDE_PX,
            print: self.print,
            true_scale: false,
        }
    }
}

/// From metres on the floor to CSS pixels.
#[derive(Clone, Copy, Debug)]
pub(super) struct Camera {
    /// Pixels a metre.
    pub(super) scale: f64,
    /// Where the floor under the ring lies.
    pub(super) origin: Point,
    /// What it fills.
    pub(super) area: Area,
    /// Whether there is room for the wider pen.
    pub(super) wide: bool,
    /// For paper.
    pub(super) print: bool,
    /// Never enlarges anybody.
    pub(super) true_scale: bool,
}

impl Camera {
    pub(super) fn px(&self, p: Point) -> Point {
        self.origin + p.to_vec2() * self.scale
    }

    pub(super) fn path(&self, path: &BezPath) -> BezPath {
        path.elements()
            .iter()
            .map(|el| match *el {
                PathEl::MoveTo(p) => PathEl::MoveTo(self.px(p)),
                PathEl::LineTo(p) => PathEl::LineTo(self.px(p)),
                PathEl::QuadTo(a, b) => PathEl::QuadTo(self.px(a), self.px(b)),
                PathEl::CurveTo(a, b, c) => PathEl::CurveTo(self.px(a), self.px(b), self.px(c)),
                PathEl::ClosePath => PathEl::ClosePath,
            })
            .collect()
    }

    pub(super) fn enlargement(&self, shoulder: f64) -> f64 {
        if self.true_scale {
            return 1.0;
        }
        (28.0 / (shoulder * self.scale)).clamp(1.0, 1.8)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::court::RuleSet;

    fn enlarged(width_px: f64) -> f64 {
        View::new(width_px).enlargement(&Court::of(RuleSet::Fiba), 0.52)
    }

    #[test]
    fn bodies_are_enlarged_where_room_is_short_and_true_where_it_is_not() {
        assert!((enlarged(760.0) - 28.0 / (0.52 * 760.0 / 15.8)).abs() < 1e-12);
        assert!((enlarged(358.0) - 1.8).abs() < 1e-12);
        assert!((enlarged(15.8 * 56.0) - 1.0).abs() < 1e-12);
    }

    #[cfg(feature = "authoring")]
    #[test]
    fn a_place_of_the_picture_is_the_floor_under_it() {
        let court = Court::of(RuleSet::Fiba);
        for look_at in [None, Some(Point::new(2.0, 3.0))] {
            let view = View {
                look_at,
                ..View::new(390.0)
            };
            let floor = Point::new(-3.25, 4.5);
            let back = view.floor_at(&court, view.px_at(&court, floor));
            assert!(crate::math::distance(back, floor) < 1e-9);
        }
        let ring = View::new(790.0).px_at(&court, Point::ZERO);
        assert!((ring.x - 395.0).abs() < 1e-9);
    }

    #[test]
    fn the_ring_lies_in_the_middle_and_depth_ends_at_the_lower_edge() {
        let court = Court::of(RuleSet::Fiba);
        let view = View::new(790.0);
        let camera = view.camera(&court);
        assert!((camera.px(Point::ZERO).x - 395.0).abs() < 1e-9);
        let low = camera.px(Point::new(0.0, view.depth)).y;
        assert!((low - view.height_px(&court)).abs() < 1e-9);
    }
}
