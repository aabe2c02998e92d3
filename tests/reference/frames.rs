//! What every frame of every clean demo set must obey.
//!
//! Limits of bodies: the levels of `backcut::athlete`, whose sprint constants are fits to published
//! splits (Haugen, Breitschadel, Seiler 2019, `PLoS` One 14(7):e0215551), whose braking and plant
//! values make published combine times come out, and whose bodies are those of ANSUR II; the rest is
//! judgement. Gravity: 9.80665 m/s², CGPM 1901. Overlap and reach: common practice, no source.

#![allow(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test file: helpers may fail loudly"
)]

use backcut::math::{Point, turn_between};
use backcut::play::{Options, Play};
use backcut::set::{Edge, PlayerId, Verb};
use backcut::timeline::{BallUse, Frame, MoverState, Timeline};

const DT: f64 = 1.0 / 240.0;

fn sets() -> Vec<(String, Vec<u8>)> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../web-demo/sets");
    let mut out: Vec<(String, Vec<u8>)> = std::fs::read_dir(folder)
        .unwrap()
        .map(|e| e.unwrap().path())
        .filter(|p| p.extension().is_some_and(|e| e == "json"))
        .map(|p| {
            (
                p.file_stem().unwrap().to_string_lossy().into_owned(),
                std::fs::read(&p).unwrap(),
            )
        })
        .collect();
    out.sort();
    assert_eq!(out.len(), 8);
    out
}

fn clean() -> impl Iterator<Item = (String, Play)> {
    sets()
        .into_iter()
        .filter(|(name, _)| name != "fogbank")
        .map(|(name, text)| (name, Play::open(&text, &Options::default()).unwrap()))
}

/// Consecutive frames of a set.
fn frames(timeline: &Timeline) -> Vec<Frame> {
    let count = (timeline.duration() / DT) as usize;
    (0..=count)
        .map(|i| {
            let mut frame = Frame::default();
            timeline.frame(i as f64 * DT, &mut frame);
            frame
        })
        .collect()
}

fn movers(frame: &Frame) -> impl Iterator<Item = (PlayerId, MoverState)> {
    PlayerId::ALL
        .into_iter()
        .filter_map(|p| frame.players[p.index()].map(|m| (p, m)))
}

fn place(m: &MoverState) -> Point {
    Point::new(m.x, m.y)
}

#[test]
fn nobody_is_faster_or_harder_than_the_level() {
    for (name, play) in clean() {
        let tl = play.timeline();
        let all = frames(tl);
        for pair in all.windows(2) {
            for ((who, a), (_, b)) in movers(&pair[0]).zip(movers(&pair[1])) {
                let l = tl.limits(who);
                let t = pair[0].t;
                assert!(b.speed <= l.v_max, "{name} {t}: {who:?} {}", b.speed);
                let moved = place(&a).distance(place(&b)) / DT;
                assert!(moved <= l.v_max * 1.01, "{name} {t}: {who:?} moved {moved}");
                let gain = (b.speed - a.speed) / DT;
                // A foot that holds in a turn straight back shows as a stop and a start, each no
                // harder than a plant.
                let holds = (a.speed == 0.0 || b.speed == 0.0) && gain.abs() * DT <= l.plant_dv;
                assert!(
                    holds || gain <= l.v_max / l.tau * 1.02,
                    "{name} {t}: {who:?} gains {gain}"
                );
                assert!(
                    holds || -gain <= l.brake * 1.02,
                    "{name} {t}: {who:?} brakes {gain}"
                );
                let turn = turn_between(a.facing, b.facing).abs() / DT;
                assert!(
                    turn <= 540_f64.to_radians() * 1.001,
                    "{name} {t}: {who:?} turns {turn}"
                );
            }
        }
    }
}

/// Of every move whose pace is written: the pace is a top speed, and the ball lowers it.
#[test]
fn nobody_exceeds_the_written_pace() {
    let mut moves = 0;
    for (name, play) in clean() {
        let tl = play.timeline();
        for action in tl.actions() {
            let written = play.set().action(action.id).unwrap();
            let Some(pace) = written.pace.filter(|_| action.verb != Verb::Screen) else {
                continue;
            };
            moves += 1;
            let ball = action.verb == Verb::Dribble;
            let top = tl.limits(action.who).effort(pace, ball).top;
            let from = action.at(Edge::Plant).unwrap_or(action.start);
            let count = ((action.end - from) / DT) as u32;
            for i in 1..count {
                let t = from + f64::from(i) * DT;
                let speed = tl.player(action.who, t).unwrap().speed;
                assert!(
                    speed <= top * 1.001,
                    "{name} {t}: {:?} at {speed} of {top}",
                    action.who
                );
            }
        }
    }
    assert!(moves > 12);
}

/// Direction changes: on a bend sideways acceleration, at a plant the change of velocity.
#[test]
fn nobody_corners_harder_than_the_level() {
    for (name, play) in clean() {
        let tl = play.timeline();
        let all = frames(tl);
        for three in all.windows(3) {
            for who in PlayerId::ALL {
                let [a, b, c] = [0, 1, 2].map(|i| three[i].players[who.index()]);
                let (Some(a), Some(b), Some(c)) = (a, b, c) else {
                    continue;
                };
                let l = tl.limits(who);
                let (v, w) = ((place(&b) - place(&a)) / DT, (place(&c) - place(&b)) / DT);
                if v.hypot() < 0.3 || w.hypot() < 0.3 {
                    continue;
                }
                let change = (w - v).hypot();
                let sideways = v.cross(w).abs() / v.hypot() / DT;
                let planted = tl.actions().iter().any(|action| {
                    action.who == who
                        && action
                            .marks
                            .iter()
                            .any(|m| m.edge == Edge::Plant && (m.t - three[1].t).abs() < 2.0 * DT)
                });
                let plant = planted && change <= l.plant_dv * 1.05;
                assert!(
                    plant || sideways <= l.lateral * 1.03,
                    "{name} {}: {who:?} {sideways} m/s² sideways, {change} m/s at once",
                    three[1].t
                );
            }
        }
    }
}

#[test]
fn bodies_do_not_pass_through_each_other() {
    for (name, play) in clean() {
        let tl = play.timeline();
        for frame in frames(tl) {
            for (a, p) in movers(&frame) {
                for (b, q) in movers(&frame).filter(|(b, _)| *b > a) {
                    let apart = place(&p).distance(place(&q));
                    // Shut, the posts of a gate stand shoulder to shoulder.
                    let least = if tl.limits(a).shoulder < 0.5 {
                        0.40
                    } else {
                        0.50
                    };
                    assert!(apart > least, "{name} {}: {a:?} and {b:?} {apart}", frame.t);
                }
            }
        }
    }
}

#[test]
fn everybody_stays_on_the_floor() {
    for (name, play) in clean() {
        let throws_in = name == "tidepool" || name == "slipway";
        for frame in frames(play.timeline()) {
            for (who, m) in movers(&frame) {
                let thrower = throws_in && who.number() == 3;
                let inside = play.court().in_bounds(place(&m), 0.0);
                assert!(thrower || inside, "{name} {}: {who:?} {m:?}", frame.t);
            }
        }
    }
}

#[test]
fn there_is_one_ball_and_it_never_jumps() {
    for (name, play) in clean() {
        let tl = play.timeline();
        let all = frames(tl);
        for pair in all.windows(2) {
            let [a, b] = [pair[0].ball, pair[1].ball];
            let jump = ((a.x - b.x).powi(2) + (a.y - b.y).powi(2) + (a.z - b.z).powi(2)).sqrt();
            // 14 m/s at most: a hard pass, or hands that swing round with a turning body.
            assert!(jump < 14.0 * DT, "{name} {}: {jump}", pair[0].t);
            if let Some(holder) = b.holder {
                let m = pair[1].players[holder.index()].unwrap();
                let reach = place(&m).distance(Point::new(b.x, b.y));
                assert!(
                    reach < 0.75,
                    "{name} {}: {holder:?} holds it {reach} away",
                    pair[1].t
                );
            }
            assert!(b.z > 0.1 && b.z < 8.0, "{name} {}: {}", pair[1].t, b.z);
        }
    }
}

#[test]
fn hands_and_ball_meet() {
    for (name, play) in clean() {
        let tl = play.timeline();
        for pair in tl.ball_spans().windows(2) {
            let t = pair[0].end;
            assert!((t - pair[1].start).abs() < 1e-12, "{name}: a gap at {t}");
            let [a, b] = [tl.ball(t - 1e-7), tl.ball(t + 1e-7)];
            let off = ((a.x - b.x).powi(2) + (a.y - b.y).powi(2) + (a.z - b.z).powi(2)).sqrt();
            assert!(
                off < 0.1,
                "{name} {t}: {off} between {:?} and {:?}",
                pair[0].what,
                pair[1].what
            );
        }
    }
}

/// Second differences inside each arc: gravity and nothing else.
#[test]
fn the_ball_flies_under_gravity() {
    let mut arcs = 0;
    for (name, play) in clean() {
        let tl = play.timeline();
        for span in tl.ball_spans() {
            // Two of the eight differences straddle the floor at most, when a pass bounces.
            let astray = match span.what {
                BallUse::Pass { kind, .. } => {
                    let bounces = kind.is_some_and(|k| matches!(k.row().name, "bounce" | "pocket"));
                    if bounces { 2 } else { 0 }
                }
                BallUse::Shot(_) => 0,
                _ => continue,
            };
            let mut strays = 0;
            arcs += 1;
            let h = (span.end - span.start) / 10.0;
            for i in 1..9 {
                let t = span.start + h * f64::from(i);
                let [a, b, c] = [t - h, t, t + h].map(|t| tl.ball(t));
                let g = (a.z - 2.0 * b.z + c.z) / (h * h);
                // At the floor the bounce pushes up, hard.
                let at_the_floor = strays < astray && g > 0.0;
                strays += usize::from(at_the_floor);
                assert!(
                    at_the_floor || (g + 9.806_65).abs() < 0.01,
                    "{name} {t}: {g}"
                );
                let drift = (a.x - 2.0 * b.x + c.x).abs() + (a.y - 2.0 * b.y + c.y).abs();
                assert!(at_the_floor || drift < 1e-9, "{name} {t}: drifts {drift}");
            }
        }
    }
    assert!(arcs > 12);
}

#[test]
fn shots_go_down_through_the_middle_of_the_ring() {
    for (name, play) in clean() {
        let tl = play.timeline();
        let through = tl.ball_spans().iter().find(|s| s.what == BallUse::Through);
        let t = through
            .unwrap_or_else(|| panic!("{name} ends with a shot"))
            .start;
        let (at, before) = (tl.ball(t), tl.ball(t - 0.01));
        assert!(at.x.hypot(at.y) < 1e-3, "{name}: {at:?}");
        assert!(
            (at.z - play.court().marks().ring_height).abs() < 1e-3,
            "{name}: {at:?}"
        );
        assert!(before.z > at.z, "{name}: rises into the ring");
    }
}

#[test]
fn screens_are_still_from_set_to_free() {
    for (name, play) in clean() {
        let tl = play.timeline();
        for s in tl.screens() {
            let end = s.shut.unwrap_or(s.free);
            let mut t = s.set + 1e-6;
            while t < end - 1e-6 {
                let m = tl.player(s.screen.who, t).unwrap();
                assert!(
                    place(&m).distance(s.screen.at) < 1e-3,
                    "{name} {t}: {:?}",
                    s.screen.who
                );
                t += 0.02;
            }
        }
    }
}

#[test]
fn cutters_pass_screens_that_have_stood_long_enough() {
    for (name, play) in clean() {
        let tl = play.timeline();
        for action in tl
            .actions()
            .iter()
            .filter(|a| matches!(a.verb, Verb::Cut | Verb::Dribble))
        {
            for by in action.marks.iter().filter(|m| m.edge == Edge::PassBy) {
                let screen = tl
                    .screens()
                    .iter()
                    .rfind(|s| Some(s.screen.who) == by.of && s.set < by.t && by.t < s.free + 0.01);
                let Some(screen) = screen else { continue };
                assert!(by.t - screen.set > 0.3 - 1e-3, "{name}: {action:?}");
                let m = tl.player(action.who, by.t).unwrap();
                let gap = place(&m).distance(screen.screen.at);
                assert!(
                    gap > 0.42 && gap < 0.80,
                    "{name}: {:?} passes at {gap}",
                    action.who
                );
            }
        }
    }
}

/// All numbers of a frame, to the last bit.
fn bits(frame: &Frame) -> Vec<u64> {
    let b = frame.ball;
    let holder = b.holder.map_or(0, PlayerId::number);
    movers(frame)
        .flat_map(|(_, m)| [m.x, m.y, m.facing, m.speed])
        .chain([b.x, b.y, b.z, f64::from(holder)])
        .map(f64::to_bits)
        .collect()
}

#[test]
fn any_order_of_instants_gives_the_same_bits() {
    /// Greater than any number of frames, and prime: its multiples come by every frame.
    const STRIDE: usize = 7919;
    for (name, play) in clean() {
        let tl = play.timeline();
        let all = frames(tl);
        assert!(all.len() < STRIDE);
        let mut frame = Frame::default();
        for i in (0..all.len()).map(|i| i * STRIDE % all.len()) {
            tl.frame(all[i].t, &mut frame);
            assert_eq!(bits(&frame), bits(&all[i]), "{name} {}", frame.t);
        }
    }
}

#[test]
fn a_mirrored_set_moves_in_mirrored_frames_on_every_court_and_level() {
    for (name, text) in sets() {
        for court in backcut::court::RuleSet::ALL {
            for level in backcut::athlete::Level::ALL {
                let open = |mirror| {
                    let options = Options {
                        court: Some(court),
                        level: Some(level),
                        mirror,
                        ..Options::default()
                    };
                    Play::open(&text, &options)
                        .unwrap_or_else(|f| panic!("{name} {court:?} {level:?}: {f}"))
                };
                let (plain, mirrored) = (open(false), open(true));
                let end = plain.timeline().duration();
                assert!((end - mirrored.timeline().duration()).abs() < 1e-9);
                let (mut a, mut b) = (Frame::default(), Frame::default());
                for i in 0..=20 {
                    let t = end * f64::from(i) / 20.0;
                    plain.timeline().frame(t, &mut a);
                    mirrored.timeline().frame(t, &mut b);
                    for ((who, p), (_, q)) in movers(&a).zip(movers(&b)) {
                        let off = (p.x + q.x).abs() + (p.y - q.y).abs();
                        assert!(off < 1e-9, "{name} {court:?} {level:?} {t}: {who:?} {off}");
                        assert!(turn_between(p.facing, -q.facing).abs() < 1e-9);
                    }
                    let (p, q) = (a.ball, b.ball);
                    let off = (p.x + q.x).abs() + (p.y - q.y).abs() + (p.z - q.z).abs();
                    assert!(off < 1e-9, "{name} {court:?} {level:?} {t}: ball {off}");
                    assert_eq!(p.holder, q.holder);
                }
            }
        }
    }
}
