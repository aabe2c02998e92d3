//! Stand-in for the core's facade until it lands: a posed set that walks about.

use backcut::court::{Court, RuleSet};
use backcut::fault::{Fault, Faults, Place};
use backcut::math::{BezPath, Point, cos, sin};
use backcut::scene::{Anchor, Item, Role, Scene, TextStyle};
use backcut::timeline::{BallState, Frame, MoverState};

pub(crate) struct View {
    pub(crate) width_px: f64,
    pub(crate) follow: [bool; 5],
}

#[derive(Debug)]
pub(crate) struct Facade {
    pub(crate) court: Court,
}

pub(crate) const STRIP_LEFT: f64 = 30.0;
const DURATION: f64 = 9.2;

fn circle(p: Point, r: f64) -> BezPath {
    let k = 0.552_284_75 * r;
    let mut b = BezPath::new();
    b.move_to((p.x + r, p.y));
    b.curve_to((p.x + r, p.y + k), (p.x + k, p.y + r), (p.x, p.y + r));
    b.curve_to((p.x - k, p.y + r), (p.x - r, p.y + k), (p.x - r, p.y));
    b.curve_to((p.x - r, p.y - k), (p.x - k, p.y - r), (p.x, p.y - r));
    b.curve_to((p.x + k, p.y - r), (p.x + r, p.y - k), (p.x + r, p.y));
    b.close_path();
    b
}

fn rect(x: f64, y: f64, w: f64, h: f64) -> BezPath {
    let mut b = BezPath::new();
    b.move_to((x, y));
    b.line_to((x + w, y));
    b.line_to((x + w, y + h));
    b.line_to((x, y + h));
    b.close_path();
    b
}

fn line(a: (f64, f64), c: (f64, f64)) -> BezPath {
    let mut b = BezPath::new();
    b.move_to(a);
    b.line_to(c);
    b
}

fn text(at: Point, text: &str, role: Role, size: f64, bold: bool, anchor: Anchor) -> Item {
    Item::Text {
        at,
        text: text.to_owned(),
        role,
        style: TextStyle {
            size,
            bold,
            serif: false,
            anchor,
            halo: None,
        },
    }
}

impl Facade {
    pub(crate) fn open(bytes: &[u8], court: Option<RuleSet>) -> Result<Self, Faults> {
        let text = String::from_utf8_lossy(bytes);
        if !text.trim_start().starts_with('{') || text.contains("elbwo") {
            return Err(Fault {
                code: "unknown-spot",
                place: Place {
                    pointer: "/players/1/at".into(),
                    line: 3,
                    column: 9,
                },
                found: "“left elbwo” is no spot".into(),
                allowed: "a spot of the court".into(),
                help: Some("Did you mean “left elbow”?".into()),
                related: Vec::new(),
            }
            .into());
        }
        Ok(Self {
            court: Court::of(court.unwrap_or_default()),
        })
    }
    pub(crate) fn title(&self) -> String {
        "Turnstile".into()
    }
    pub(crate) fn level_title(&self) -> String {
        "adult".into()
    }
    pub(crate) fn players(&self) -> u8 {
        0b11111
    }
    pub(crate) fn body_scale(&self, view: &View) -> f64 {
        (28.0 / (0.52 * view.width_px / 15.8)).clamp(1.0, 1.8)
    }
    pub(crate) fn duration(&self) -> f64 {
        DURATION
    }
    pub(crate) fn beats(&self) -> Vec<(f64, f64)> {
        vec![(0.0, 3.3), (3.3, 4.9), (4.9, 6.8), (6.8, DURATION)]
    }
    pub(crate) fn beat_title(&self, i: usize) -> String {
        ["Zipper", "Set the gate", "Through the gate", "Shot"]
            .get(i)
            .copied()
            .unwrap_or_default()
            .into()
    }
    pub(crate) fn caption(&self, _: usize) -> String {
        "3 bursts up between 4 and 5; they shut it behind 3 and stand. 2 passes as 3’s feet land."
            .into()
    }
    pub(crate) fn describe(&self, t: f64) -> String {
        format!("At {t:.1} seconds 2 has the ball at the left wing.")
    }
    pub(crate) fn frame(&self, t: f64, out: &mut Frame) {
        out.t = t;
        for (i, p) in out.players.iter_mut().enumerate() {
            let a = i as f64 * 1.2 + t * 0.3;
            *p = Some(MoverState {
                x: 5.0 * cos(a),
                y: 4.0 + 3.0 * sin(a),
                facing: a,
                speed: 1.5,
            });
        }
        out.ball = BallState {
            x: 0.3,
            y: 4.0,
            z: 1.0,
            holder: None,
        };
    }
    pub(crate) fn hash(&self, fps: f64) -> u64 {
        let mut frame = Frame::default();
        let mut h = 0xcbf2_9ce4_8422_2325_u64;
        let mut i = 0.0;
        while i / fps <= DURATION {
            self.frame(i / fps, &mut frame);
            for p in frame.players.iter().flatten() {
                h = (h ^ p.x.to_bits()).wrapping_mul(0x0100_0000_01b3);
            }
            i += 1.0;
        }
        h
    }
    pub(crate) fn court_scene(&self, view: &View) -> Scene {
        court_scene(&self.court, view)
    }
    pub(crate) fn movers_scene(&self, t: f64, view: &View, out: &mut Scene) {
        out.items.clear();
        out.width = view.width_px;
        let s = view.width_px / 15.8;
        out.height = s * 9.825;
        let mut frame = Frame::default();
        self.frame(t, &mut frame);
        let px = |x: f64, y: f64| Point::new((x + 7.9) * s, (y + 1.975) * s);
        for (i, p) in frame.players.iter().enumerate() {
            let Some(p) = p else { continue };
            let f = view.follow.get(i) == Some(&true);
            let at = px(p.x, p.y);
            out.items.push(Item::Fill {
                path: circle(at, 14.0),
                role: if f { Role::Follow } else { Role::Offence },
                opacity: 1.0,
            });
            out.items.push(text(
                Point::new(at.x, at.y + 5.0),
                &format!("{}", i + 1),
                Role::OffenceNumber,
                14.0,
                true,
                Anchor::Middle,
            ));
        }
        let at = px(frame.ball.x, frame.ball.y);
        out.items.push(Item::Fill {
            path: circle(at, 6.0),
            role: Role::Ball,
            opacity: 1.0,
        });
    }
    pub(crate) fn strip_scene(&self, view: &StripView) -> Scene {
        let rows = if view.folded { 2.0 } else { 6.0 };
        let (left, top, row) = (30.0, 30.0, 23.0);
        let mut scene = Scene {
            width: view.width_px,
            height: top + rows * row + 28.0,
            items: Vec::new(),
        };
        let x = |t: f64| left + t / DURATION * (view.width_px - left);
        let (b0, b1) = *self.beats().get(view.beat).unwrap_or(&(0.0, 0.0));
        scene.items.push(Item::Fill {
            path: rect(x(b0), 0.0, x(b1) - x(b0), top + rows * row),
            role: Role::Band,
            opacity: 1.0,
        });
        for (i, (start, _)) in self.beats().iter().enumerate() {
            scene.items.push(Item::Stroke {
                path: line((x(*start), 0.0), (x(*start), top + rows * row)),
                role: Role::Rule,
                width: 1.0,
                dash: None,
                round: false,
            });
            scene.items.push(text(
                Point::new(x(*start) + 7.0, 19.0),
                &self.beat_title(i),
                if i == view.beat { Role::Ink } else { Role::Soft },
                13.0,
                i == view.beat,
                Anchor::Start,
            ));
        }
        for i in 0..rows as usize {
            let y = top + (i as f64 + 0.5) * row;
            let f = view.follow.get(i) == Some(&true);
            scene.items.push(text(
                Point::new(16.0, y + 5.0),
                &format!("{}", i + 1),
                if f { Role::Follow } else { Role::Soft },
                13.0,
                true,
                Anchor::Middle,
            ));
            let role = match (f, view.to_come) {
                (true, true) => Role::FollowToCome,
                (true, false) => Role::Follow,
                (false, true) => Role::OffenceToCome,
                (false, false) => Role::Offence,
            };
            scene.items.push(Item::Fill {
                path: rect(x(i as f64), y - 5.0, x(3.0) - x(0.0), 10.0),
                role,
                opacity: 1.0,
            });
        }
        for i in 0..=9 {
            let y = top + rows * row;
            scene.items.push(text(
                Point::new(x(f64::from(i)), y + 18.0),
                &format!("{i}"),
                Role::Soft,
                11.0,
                false,
                Anchor::Middle,
            ));
        }
        scene
    }
}

pub(crate) struct StripView {
    pub(crate) width_px: f64,
    pub(crate) follow: [bool; 5],
    pub(crate) beat: usize,
    pub(crate) folded: bool,
    pub(crate) to_come: bool,
}

pub(crate) fn court_scene(court: &Court, view: &View) -> Scene {
    let s = view.width_px / 15.8;
    let m = court.marks();
    let px = |x: f64, y: f64| ((x + 7.9) * s, (y + 1.975) * s);
    let mut scene = Scene {
        width: view.width_px,
        height: 9.825 * s,
        items: Vec::new(),
    };
    let (x, y) = px(-m.lane, -m.baseline);
    scene.items.push(Item::Fill {
        path: rect(x, y, 2.0 * m.lane * s, (m.baseline + m.free_throw) * s),
        role: Role::Lane,
        opacity: 1.0,
    });
    let (x, y) = px(-m.sideline, -m.baseline);
    scene.items.push(Item::Stroke {
        path: rect(x, y, 2.0 * m.sideline * s, 20.0 * s),
        role: Role::Line,
        width: 2.0,
        dash: None,
        round: false,
    });
    scene.items.push(Item::Stroke {
        path: circle(px(0.0, 0.0).into(), m.arc * s),
        role: Role::Line,
        width: 2.0,
        dash: None,
        round: false,
    });
    scene
}
