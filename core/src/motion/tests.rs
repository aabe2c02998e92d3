use super::*;
use crate::athlete::{Level, Limits, Pace};
use crate::math::Point;
use crate::path::{Knot, Path};
use alloc::vec::Vec;
use proptest::prelude::*;

fn line(d: f64) -> Path {
    Path::through(&[
        Knot::Smooth(Point::new(0.0, 1.0)),
        Knot::Smooth(Point::new(0.6 * d, 1.0 + 0.8 * d)),
    ])
}

fn one(path: &Path, effort: Effort) -> [Leg; 1] {
    [Leg {
        end: path.length(),
        effort,
    }]
}

fn sprint(limits: &Limits) -> Effort {
    limits.effort(Pace::Sprint, false)
}

#[test]
fn rest_to_rest_on_a_straight_line_is_the_closed_form() {
    for level in Level::ALL {
        let limits = level.limits();
        for pace in Pace::ALL {
            for d in [0.1, 0.5, 1.0, 2.0, 4.0, 6.0, 8.0, 10.0, 20.0] {
                let path = line(d);
                let effort = limits.effort(pace, false);
                let law = Law::build(&path, &one(&path, effort), &limits, 0.0, 0.0);
                let wanted = rest_to_rest(&limits, effort, d);
                assert!(
                    (law.duration() - wanted).abs() < 1e-8,
                    "{level:?} {pace:?} {d}"
                );
            }
        }
    }
}

#[test]
fn a_line_of_no_length_takes_no_time() {
    let p = Point::new(1.0, 2.0);
    let limits = Level::Adult.limits();
    for knots in [
        &[][..],
        &[Knot::Smooth(p)],
        &[Knot::Smooth(p), Knot::Plant(p)],
    ] {
        let path = Path::through(knots);
        let law = Law::build(&path, &one(&path, sprint(&limits)), &limits, 0.0, 0.0);
        assert_eq!(law.duration(), 0.0);
        assert_eq!(law.at(0.3), Sample { s: 0.0, v: 0.0 });
        assert_eq!(law.time_at(0.0), 0.0);
    }
}

#[test]
fn a_turn_straight_back_holds_the_foot() {
    let limits = Level::Elite.limits();
    let at = |y| Point::new(0.0, y);
    let path = Path::through(&[
        Knot::Smooth(at(0.0)),
        Knot::Plant(at(5.0)),
        Knot::Smooth(at(0.0)),
    ]);
    let law = Law::build(&path, &one(&path, sprint(&limits)), &limits, 0.0, 0.0);
    let turn = law.time_at(5.0);
    assert!((law.at(turn - 1e-9).v - 1.5).abs() < 1e-6);
    assert_eq!(law.at(turn + 0.1), Sample { s: 5.0, v: 0.0 });
    assert!((law.at(turn + limits.plant_time + 1e-9).v - 1.5).abs() < 1e-6);
}

#[test]
fn a_right_angle_costs_speed_but_no_stop() {
    let limits = Level::Elite.limits();
    let knots = [(0.0, 0.0), (0.0, 5.0), (5.0, 5.0)].map(|(x, y)| Knot::Plant(Point::new(x, y)));
    let path = Path::through(&knots);
    let law = Law::build(&path, &one(&path, sprint(&limits)), &limits, 0.0, 0.0);
    let v = law.at(law.time_at(5.0)).v;
    assert!((v - 2.12132).abs() < 1e-5, "{v}");
}

#[test]
fn one_leg_gives_its_pace_to_its_own_part_only() {
    let limits = Level::Adult.limits();
    let path = line(12.0);
    let legs = [
        Leg {
            end: 4.0,
            effort: limits.effort(Pace::Walk, false),
        },
        Leg {
            end: 12.0,
            effort: sprint(&limits),
        },
    ];
    let law = Law::build(&path, &legs, &limits, 0.0, 0.0);
    assert!(law.at(law.time_at(3.9)).v <= 1.4 + 1e-9);
    assert!(law.at(law.time_at(8.0)).v > 4.0);
}

#[test]
fn a_move_takes_at_least_what_is_written() {
    let limits = Level::Adult.limits();
    let path = line(10.0);
    let legs = [4.0, 10.0].map(|end| Leg {
        end,
        effort: sprint(&limits),
    });
    let free = Law::build(&path, &legs, &limits, 0.0, 0.0);
    for takes in [2.5, 4.0, 30.0] {
        let law = Law::build_taking(&path, &legs, &[None, Some(takes)], &limits, 0.0, 0.0);
        let taken = law.duration() - law.time_at(4.0);
        assert!(
            taken >= takes && taken < takes * (1.0 + 1e-5),
            "{taken} for {takes}"
        );
    }
    let law = Law::build_taking(&path, &legs, &[Some(0.1), None], &limits, 0.0, 0.0);
    assert_eq!(law.duration(), free.duration());
}

#[test]
fn entry_too_fast_for_a_stop_is_lowered() {
    let limits = Level::Adult.limits();
    let path = line(1.0);
    let law = Law::build(&path, &one(&path, sprint(&limits)), &limits, 8.0, 0.0);
    assert!((law.at(0.0).v - crate::math::sqrt(2.0 * limits.brake)).abs() < 1e-9);
}

#[test]
fn strange_numbers_end_in_a_finite_law() {
    let limits = Level::Adult.limits();
    let path = line(3.0);
    for (top, accel) in [(0.0, 0.0), (f64::NAN, 1.0), (5.0, f64::NAN), (-1.0, -1.0)] {
        let law = Law::build(
            &path,
            &one(&path, Effort { top, accel }),
            &limits,
            f64::NAN,
            f64::NAN,
        );
        assert!(law.duration().is_finite(), "{top} {accel}");
        assert!(law.at(1.0).s.is_finite());
    }
}

/// Some run: knots, legs, level.
fn some_run() -> impl Strategy<Value = (Path, Vec<Leg>, Limits, f64, f64)> {
    let knot = (-7.0..7.0f64, -1.0..11.0f64, 0..4u8).prop_map(|(x, y, kind)| {
        let p = Point::new(x, y);
        if kind == 0 {
            Knot::Plant(p)
        } else {
            Knot::Smooth(p)
        }
    });
    (
        prop::collection::vec(knot, 2..7),
        prop::collection::vec((0.0..1.0f64, 0..4usize, any::<bool>()), 1..4),
        0..7usize,
        0.0..7.0f64,
        0.0..7.0f64,
    )
        .prop_map(|(knots, mut legs, level, entry, exit)| {
            let path = Path::through(&knots);
            let limits = Level::ALL[level].limits();
            legs.sort_by(|a, b| a.0.total_cmp(&b.0));
            let legs = legs.iter().map(|&(share, pace, ball)| Leg {
                end: share * path.length(),
                effort: limits.effort(Pace::ALL[pace], ball),
            });
            (path.clone(), legs.collect(), limits, entry, exit)
        })
}

fn leg_at(legs: &[Leg], s: f64) -> &Leg {
    let last = legs.last().unwrap();
    legs.iter().find(|l| s < l.end).unwrap_or(last)
}

proptest! {
    #[test]
    fn prop_speed_never_exceeds_the_limit((path, legs, limits, entry, exit) in some_run()) {
        let law = Law::build(&path, &legs, &limits, entry, exit);
        prop_assert!(law.duration().is_finite());
        for i in 0..=400 {
            let t = law.duration() * f64::from(i) / 400.0;
            let Sample { s, v } = law.at(t);
            let near = |l: &Leg| (l.end - s).abs() < 1e-6;
            if legs.iter().any(near) || path.plants().iter().any(|p| (p.s - s).abs() < 1e-6) {
                continue;
            }
            prop_assert!(v <= leg_at(&legs, s).effort.top + 1e-6, "pace at {s}");
            let bend = (limits.lateral / path.curvature(s).abs().max(1e-9)).max(0.16);
            prop_assert!(v * v <= bend * 1.04 + 1e-6, "bend at {s}: {v} over {}", bend.sqrt());
        }
        for plant in path.plants() {
            let v = law.at(law.time_at(plant.s) - 1e-9).v;
            let cap = limits.plant_dv / (2.0 * (0.5 * plant.angle).sin()).max(1e-9);
            prop_assert!(v <= cap + 1e-5, "plant: {v} over {cap}");
        }
        prop_assert!(law.at(law.duration()).v <= exit + 1e-9);
    }

    #[test]
    fn prop_speed_changes_no_faster_than_an_athlete_can((path, legs, limits, entry, exit) in some_run()) {
        let law = Law::build(&path, &legs, &limits, entry, exit);
        let n = 2000;
        let step = law.duration() / f64::from(n);
        for i in 0..n {
            let [a, b] = [i, i + 1].map(|i| law.at(f64::from(i) * step));
            if a.v == 0.0 || b.v == 0.0 {
                continue; // A foot holds, or the run begins.
            }
            let accel = legs.iter().map(|l| l.effort.accel).fold(0.0, f64::max);
            let most = accel * (limits.v_max - a.v).max(0.0) / limits.tau;
            let change = (b.v - a.v) / step;
            prop_assert!(change <= most + 0.02, "speeds up by {change} over {most} at {}", a.s);
            prop_assert!(change >= -limits.brake - 1e-3, "brakes by {change} at {}", a.s);
        }
    }

    #[test]
    fn prop_the_law_inverts((path, legs, limits, entry, exit) in some_run()) {
        let law = Law::build(&path, &legs, &limits, entry, exit);
        let mut before = -1.0;
        for i in 0..=200 {
            let s = path.length() * f64::from(i) / 200.0;
            let t = law.time_at(s);
            prop_assert!(t > before || path.length() == 0.0, "{t} after {before}");
            before = t;
            prop_assert!((law.at(t).s - s).abs() < 1e-7, "{} for {s}", law.at(t).s);
        }
    }

    #[test]
    fn prop_less_speed_never_takes_less_time(
        (path, legs, limits, entry, exit) in some_run(),
        which in 0..4usize,
        share in 0.2..1.0f64,
    ) {
        let stretches = limit::stretches(&path, &legs, &limits);
        let law = Law::solve(&stretches, &legs, &limits, entry, exit);
        let mut slower = legs.clone();
        let i = which % slower.len();
        slower[i].effort.top *= share;
        let slow = Law::solve(&stretches, &slower, &limits, entry, exit);
        prop_assert!(slow.duration() >= law.duration() - 1e-9);
    }

    #[test]
    fn prop_place_and_speed_are_continuous((path, legs, limits, entry, exit) in some_run()) {
        let law = Law::build(&path, &legs, &limits, entry, exit);
        let n = 3000;
        let step = law.duration() / f64::from(n);
        for i in 0..n {
            let [a, b] = [i, i + 1].map(|i| law.at(f64::from(i) * step));
            let turning = a.v == 0.0 || b.v == 0.0;
            prop_assert!((b.v - a.v).abs() <= 9.0 * step + 1e-6 || turning, "{a:?} {b:?}");
            prop_assert!(b.s >= a.s && b.s - a.s <= 9.0 * step + 1e-9, "{a:?} {b:?}");
        }
    }
}
