//! The strip drawn like a score: one row a player, one for the ball, time to the right.

use super::ball::disc_at;
use super::bits::Row;
use super::measure::fitted;
use super::shape::{Draw, disc, lines, push_lines, rect, sans};
use super::{Anchor, Area, Dash, Item, Role, Scene, Verdict};
#[cfg(feature = "authoring")]
use super::{fork, instants};
use crate::math::{BezPath, Listed, Point, push_decimal};
use crate::set::PlayerId;
use crate::strip::{BallBit, BallRow, Slur, Strip};
use crate::voice::Voice;
use crate::words;
use alloc::string::String;
use alloc::vec::Vec;

/// Height of a row, pixels.
const ROW: f64 = 23.0;
/// Height of the beats' names, pixels.
const HEADER: f64 = 30.0;
/// Room for numbers at the left, pixels.
const LEFT: f64 = 30.0;
/// Room for the ruler below, pixels.
const RULER: f64 = 30.0;

/// Where the beats' names stand, pixels from the top; those of branches stand over them.
#[cfg(feature = "authoring")]
fn names_at(strip: &Strip) -> f64 {
    if strip.forks.is_empty() { 19.7 } else { 23.5 }
}

#[cfg(not(feature = "authoring"))]
fn names_at(_: &Strip) -> f64 {
    19.7
}

/// What a strip is drawn for.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct StripView {
    /// Width, CSS pixels.
    pub width_px: f64,
    /// Who is followed, by [`PlayerId::index`].
    pub follow: [bool; 5],
    /// Shows only the followed rows and the ball.
    pub folded: bool,
    /// The beat now, which is a band; `None` on paper.
    pub beat: Option<usize>,
    /// Shows what holds the set up, and what has time to spare.
    pub holds_up: bool,
    /// In the lighter colours of what is to come. The page lays both over each other and cuts
    /// them at the playhead, which it draws itself.
    pub to_come: bool,
    /// How what is written in it is told.
    pub voice: Voice,
}

/// A row's place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StripRow {
    /// Whose; `None` is the ball's.
    pub who: Option<PlayerId>,
    /// Its middle, CSS pixels from the top.
    pub y: f64,
    /// Its height, CSS pixels.
    pub height: f64,
}

/// Where things lie, for pointers and the playhead.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StripGeometry {
    /// Where time begins, CSS pixels.
    pub left: f64,
    /// Where it ends, CSS pixels.
    pub right: f64,
    /// Seconds between both.
    pub duration: f64,
    /// Height of the beats' names, CSS pixels: the playhead starts below.
    pub header: f64,
    /// Rows in order, top down.
    pub rows: Vec<StripRow>,
    /// The ruler's line, CSS pixels: the playhead ends there.
    pub ruler: f64,
    /// Height of all, CSS pixels.
    pub height: f64,
}

impl StripGeometry {
    /// Where `view` lays the things of `strip`.
    #[must_use]
    pub fn of(strip: &Strip, view: &StripView) -> Self {
        let shown = |who: PlayerId| !view.folded || view.follow.get(who.index()) == Some(&true);
        let rows: Vec<StripRow> = strip
            .rows
            .iter()
            .map(|r| Some(r.who))
            .filter(|who| who.is_none_or(shown))
            .chain([None])
            .zip(0u8..)
            .map(|(who, i)| StripRow {
                who,
                y: HEADER + ROW * (f64::from(i) + 0.5),
                height: ROW,
            })
            .listed();
        let end = rows.last().map_or(HEADER, |r| r.y + 0.5 * ROW);
        Self {
            left: LEFT,
            right: (view.width_px - 1.0).max(LEFT + 1.0),
            duration: strip.duration.max(0.1),
            header: HEADER,
            rows,
            ruler: end + 5.5,
            height: end + RULER,
        }
    }

    /// Where `t` seconds lie, CSS pixels.
    #[must_use]
    pub fn x(&self, t: f64) -> f64 {
        self.left + (self.right - self.left) * t / self.duration
    }

    /// Which instant lies at `x` CSS pixels; within the set.
    #[must_use]
    pub fn t(&self, x: f64) -> f64 {
        ((x - self.left) / (self.right - self.left) * self.duration).clamp(0.0, self.duration)
    }

    /// The middle of a player's row, where it is shown.
    #[must_use]
    pub fn row(&self, who: PlayerId) -> Option<f64> {
        self.rows.iter().find(|r| r.who == Some(who)).map(|r| r.y)
    }

    fn end(&self) -> f64 {
        self.ruler - 5.5
    }
}

/// Draws `strip`, without a ground; with a verdict also how open its shots are, and its flags.
#[must_use]
pub fn strip(strip: &Strip, verdict: Option<&Verdict<'_>>, view: &StripView) -> Scene {
    let geometry = StripGeometry::of(strip, view);
    let score = Score {
        strip,
        view,
        geometry: &geometry,
    };
    let mut items = score.items();
    #[cfg(feature = "authoring")]
    fork::forks(&strip.forks, &geometry, view.voice, &mut items);
    if let Some(verdict) = verdict {
        verdict.in_strip(strip, &geometry, view, &mut items);
    }
    Scene {
        width: view.width_px,
        height: geometry.height,
        items,
    }
}

struct Score<'a> {
    strip: &'a Strip,
    view: &'a StripView,
    geometry: &'a StripGeometry,
}

impl Score<'_> {
    fn items(&self) -> Vec<Item> {
        let mut out = Vec::new();
        self.ground(&mut out);
        self.names(&mut out);
        for row in &self.strip.rows {
            if let Some(y) = self.geometry.row(row.who) {
                let row_pen = Row {
                    geometry: self.geometry,
                    y,
                    height: ROW,
                    role: self.role(row.who),
                    holds_up: self.view.holds_up,
                };
                row_pen.draw(&row.bits, &mut out);
            }
        }
        if let Some(row) = self.geometry.rows.iter().find(|r| r.who.is_none()) {
            self.ball(row.y, &mut out);
        }
        #[cfg(feature = "authoring")]
        instants::in_strip(self.strip, self.geometry, self.view, &mut out);
        for slur in &self.strip.slurs {
            self.slur(slur, &mut out);
        }
        self.ruler(&mut out);
        out
    }

    fn followed(&self, who: PlayerId) -> bool {
        self.view.follow.get(who.index()) == Some(&true)
    }

    fn role(&self, who: PlayerId) -> Role {
        match (self.followed(who), self.view.to_come) {
            (true, false) => Role::Follow,
            (true, true) => Role::FollowToCome,
            (false, false) => Role::Offence,
            (false, true) => Role::OffenceToCome,
        }
    }

    fn ground(&self, out: &mut Vec<Item>) {
        let g = self.geometry;
        if let Some(band) = self.view.beat.and_then(|b| self.strip.bands.get(b)) {
            let x = g.x(band.start);
            let area = Area {
                x,
                y: 0.0,
                width: g.x(band.end) - x,
                height: g.end(),
            };
            out.fill(rect(area), Role::Band);
        }
        let mut rules = BezPath::new();
        for y in [g.header]
            .into_iter()
            .chain(g.rows.iter().map(|r| r.y + 0.5 * r.height))
        {
            push_lines(&mut rules, &[Point::new(0.0, y), Point::new(g.right, y)]);
        }
        out.stroke(rules, Role::Rule, 1.0);
        let mut bars = BezPath::new();
        let ends = self.strip.bands.last().map(|b| b.end);
        for t in self.strip.bands.iter().map(|b| b.start).chain(ends) {
            let x = g.x(t);
            push_lines(&mut bars, &[Point::new(x, 0.0), Point::new(x, g.end())]);
        }
        out.stroke(bars, Role::Line, 1.0);
        for row in &g.rows {
            self.number(row, out);
        }
    }

    fn number(&self, row: &StripRow, out: &mut Vec<Item>) {
        let x = 17.0;
        let Some(who) = row.who else {
            disc_at(Point::new(x, row.y), 5.0, false, out);
            return;
        };
        let followed = self.followed(who);
        if followed {
            let area = Area {
                x: 0.0,
                y: row.y - 0.5 * row.height + 1.0,
                width: 3.0,
                height: row.height - 2.0,
            };
            out.fill(rect(area), Role::Follow);
        }
        let role = if followed { Role::Follow } else { Role::Soft };
        let at = Point::new(x, row.y + 4.8);
        out.text(
            at,
            number(f64::from(who.number())),
            role,
            sans(13.5, true, Anchor::Middle),
        );
    }

    fn names(&self, out: &mut Vec<Item>) {
        let g = self.geometry;
        let base = names_at(self.strip);
        for (i, band) in self.strip.bands.iter().enumerate() {
            let now = self.view.beat == Some(i);
            let room = g.x(band.end) - g.x(band.start) - 8.0;
            let title = band.title.clone();
            let title = title.unwrap_or_else(|| words::nth_beat(i, self.view.voice));
            let name = fitted(&title, 13.0, now, room);
            if !name.is_empty() {
                let role = if now { Role::Ink } else { Role::Soft };
                let at = Point::new(g.x(band.start) + 7.0, base);
                out.text(at, name, role, sans(13.0, now, Anchor::Start));
            }
        }
    }

    fn ball(&self, y: f64, out: &mut Vec<Item>) {
        let g = self.geometry;
        for BallBit { start, end, what } in &self.strip.ball {
            let (a, b) = (Point::new(g.x(*start), y), Point::new(g.x(*end), y));
            let hop = match what {
                BallRow::With(_) => {
                    out.pen(lines(&[a, b]), Role::Ball, 4.5);
                    continue;
                }
                BallRow::Pass => 0.4 * ROW,
                BallRow::Shot => 0.6 * ROW,
            };
            // Handles 4/3 as high as the hop itself.
            let (lift, third) = (hop * 4.0 / 3.0, (b.x - a.x) / 3.0);
            let mut path = BezPath::new();
            path.move_to(a);
            path.curve_to(
                Point::new(a.x + third, y - lift),
                Point::new(b.x - third, y - lift),
                b,
            );
            out.dashed(path, Role::Ball, 2.0, Dash { on: 4.0, off: 3.0 });
        }
        for bit in &self.strip.ball {
            if let BallRow::With(who) = bit.what {
                let at = Point::new(g.x(bit.start) + 8.0, y);
                out.fill(disc(at, 7.2), Role::Paper);
                out.stroke(disc(at, 7.2), Role::Ball, 1.6);
                out.text(
                    Point::new(at.x, at.y + 4.0),
                    number(f64::from(who.number())),
                    Role::Ink,
                    sans(11.0, true, Anchor::Middle),
                );
            }
        }
    }

    /// A curve that leaves and arrives upright, with a dot where the waiting ends.
    fn slur(&self, slur: &Slur, out: &mut Vec<Item>) {
        let g = self.geometry;
        let (Some(y0), Some(y1)) = (g.row(slur.from), g.row(slur.to)) else {
            return;
        };
        let (a, b) = (
            Point::new(g.x(slur.from_t), y0),
            Point::new(g.x(slur.to_t), y1),
        );
        let middle = 0.5 * (y0 + y1);
        let mut path = BezPath::new();
        path.move_to(a);
        path.curve_to(Point::new(a.x, middle), Point::new(b.x, middle), b);
        let width = if self.view.holds_up && slur.critical {
            2.0
        } else {
            1.2
        };
        let role = self.tie(slur);
        out.stroke(path.clone(), Role::Paper, width + 2.2);
        out.stroke(path, role, width);
        out.fill(disc(b, 3.6), Role::Paper);
        out.fill(disc(b, 2.9), role);
    }

    /// Ties of the followed stand out; but ink tells what holds the set up, where that is asked for.
    #[cfg(feature = "authoring")]
    fn tie(&self, slur: &Slur) -> Role {
        let own = self.followed(slur.from) || self.followed(slur.to);
        if own && !self.view.holds_up {
            Role::Follow
        } else {
            Role::Ink
        }
    }

    #[cfg(not(feature = "authoring"))]
    fn tie(&self, _: &Slur) -> Role {
        Role::Ink
    }

    fn ruler(&self, out: &mut Vec<Item>) {
        let g = self.geometry;
        let y = g.ruler;
        out.stroke(
            lines(&[Point::new(g.left, y), Point::new(g.right, y)]),
            Role::Soft,
            0.75,
        );
        let second = g.x(1.0) - g.x(0.0);
        // Labels need about 22 px each.
        let every = [1u16, 2, 5, 10]
            .into_iter()
            .find(|n| second * f64::from(*n) >= 22.0)
            .unwrap_or(20);
        let mut inked = BezPath::new();
        for n in 0..=(g.duration.min(600.0) as u16) {
            let t = f64::from(n);
            if n % 2 == 0 && t < g.duration {
                let end = g.x((t + 1.0).min(g.duration));
                push_lines(&mut inked, &[Point::new(g.x(t), y), Point::new(end, y)]);
            }
            if n % every == 0 {
                let at = Point::new(g.x(t), y + 14.5);
                out.text(at, number(t), Role::Soft, sans(11.0, false, Anchor::Middle));
            }
        }
        out.stroke(inked, Role::Soft, 3.1);
    }
}

fn number(n: f64) -> String {
    let mut out = String::new();
    push_decimal(&mut out, n, 0);
    out
}
