use super::*;
use crate::math::distance;
use crate::set::{Kind, Verb};
use proptest::prelude::*;

fn spot(x: f64, y: f64, z: f64) -> Spot3 {
    Spot3 { x, y, z }
}

fn apart(a: Spot3, b: Spot3) -> f64 {
    let flat = distance(a.floor(), b.floor());
    crate::math::sqrt(flat * flat + (a.z - b.z) * (a.z - b.z))
}

fn passes() -> impl Iterator<Item = Option<Kind>> {
    let named = Kind::table().iter().filter(|r| r.verb == Verb::Pass);
    named.map(|r| Some(r.kind)).chain([None])
}

#[test]
fn every_pass_goes_from_hand_to_hand() {
    for level in Level::ALL {
        let limits = level.limits();
        for kind in passes() {
            for d in [0.0, 0.3, 1.0, 2.5, 5.0, 9.0, 14.0] {
                let from = spot(1.0, 8.0, release_height(kind, &limits));
                let to = spot(1.0 - 0.6 * d, 8.0 - 0.8 * d, catch_height(kind, &limits));
                let flight = pass(from, to, kind, &limits);
                assert!(apart(flight.at(0.0), from) < 1e-9);
                assert!(
                    apart(flight.at(flight.duration()), to) < 1e-9,
                    "{kind:?} {d}"
                );
                assert!((flight.duration() - pass_time(d, kind, &limits)).abs() < 1e-9);
                assert!(apart(flight.at(99.0), to) < 1e-9);
                assert!(apart(flight.at(-1.0), from) < 1e-9);
            }
        }
    }
}

#[test]
fn only_bounce_passes_meet_the_floor() {
    let limits = Level::Adult.limits();
    for kind in passes() {
        let flight = pass(spot(0.0, 8.0, 1.2), spot(3.0, 4.0, 0.8), kind, &limits);
        let bounces = matches!(kind, Some(Kind::Bounce | Kind::Pocket));
        assert_eq!(flight.bounce().is_some(), bounces, "{kind:?}");
        if let Some((t, at)) = flight.bounce() {
            let share = distance(at, Point::new(0.0, 8.0)) / 5.0;
            assert!((0.4..0.8).contains(&share), "{share}");
            assert!((flight.at(t).z - BALL_RADIUS).abs() < 1e-9);
        }
    }
}

/// Usual heights: the floor at about two thirds, and the physics of the floor kept.
#[test]
fn a_bounce_pass_keeps_what_the_floor_leaves_it() {
    for level in Level::ALL {
        let limits = level.limits();
        let kind = Some(Kind::Bounce);
        for d in [2.0, 3.0, 4.0, 5.0] {
            let from = spot(0.0, 0.0, release_height(kind, &limits));
            let to = spot(d, 0.0, catch_height(kind, &limits));
            let flight = pass(from, to, kind, &limits);
            let (t, at) = flight.bounce().unwrap();
            assert!(
                (0.45..0.75).contains(&(at.x / d)),
                "{level:?} {d}: {}",
                at.x / d
            );
            let h = 1e-6;
            let into = (flight.at(t - h).z - flight.at(t).z) / h;
            let out = (flight.at(t + h).z - flight.at(t).z) / h;
            assert!((out / into - 0.76).abs() < 1e-3, "{}", out / into);
            let before = at.x / t;
            let after = (d - at.x) / (flight.duration() - t);
            assert!((after / before - 0.6).abs() < 1e-6);
        }
    }
}

#[test]
fn a_lob_to_the_rim_clears_every_hand() {
    for level in Level::ALL {
        let limits = level.limits();
        let kind = Some(Kind::Lob);
        let from = spot(0.0, 7.0, release_height(kind, &limits));
        let to = spot(0.5, 0.8, catch_height(kind, &limits));
        let apex = pass(from, to, kind, &limits).apex();
        assert!(
            apex > limits.reach + 0.5 && apex < limits.reach + 1.6,
            "{level:?} {apex}"
        );
        if level == Level::Adult {
            assert!(apex >= 3.2);
        }
    }
}

#[test]
fn shots_fall_through_the_middle_of_the_ring() {
    for kind in [
        None,
        Some(Kind::Layup),
        Some(Kind::Floater),
        Some(Kind::CatchAndShoot),
    ] {
        for l in [0.0, 0.4, 1.0, 1.3, 2.5, 4.191, 6.75, 7.24, 12.0] {
            for z in [1.8, 2.4, 2.9, 3.2] {
                let flight = shot(spot(0.6 * l, 0.8 * l, z), kind, 3.05);
                let t = flight.duration();
                assert!(apart(flight.at(t), spot(0.0, 0.0, 3.05)) < 1e-9);
                assert!(flight.apex() > 3.05, "{kind:?} {l} {z}");
                let (before, end) = (flight.at(t - 1e-6), flight.at(t));
                let fall = (before.z - end.z) / 1e-6;
                let forward = distance(before.floor(), end.floor()) / 1e-6;
                let entry = crate::math::atan2(fall, forward).to_degrees();
                if l <= 7.24 && (kind != Some(Kind::Layup) || l < 1.3) {
                    assert!(entry >= 32.69, "{kind:?} {l} {z}: {entry}");
                }
            }
        }
    }
}

#[test]
fn speed_depends_on_distance_kind_and_level() {
    assert!((pass_speed(5.0, None, 1.0) - 9.48).abs() < 1e-12);
    assert!((pass_speed(5.0, Some(Kind::Bounce), 1.0) - 0.85 * 9.48).abs() < 1e-12);
    assert!((pass_speed(5.0, None, 0.65) - 0.65 * 9.48).abs() < 1e-12);
    assert_eq!(pass_speed(0.0, None, 1.0), 3.78);
    assert_eq!(pass_speed(30.0, None, 1.0), 10.82);
}

proptest! {
    #[test]
    fn prop_a_farther_pass_never_flies_shorter(a in 0.0..14.0f64, b in 0.0..14.0f64) {
        let limits = Level::Adult.limits();
        for kind in passes() {
            let [near, far] = [a.min(b), a.max(b)].map(|d| pass_time(d, kind, &limits));
            prop_assert!(near <= far + 1e-9, "{kind:?}");
        }
    }

    #[test]
    fn prop_a_bounce_pass_arrives_wherever_it_is_caught(
        d in 0.0..12.0f64, z0 in 0.3..2.2f64, z1 in 0.2..1.6f64
    ) {
        let to = spot(d, 1.0, z1);
        let flight = pass(spot(0.0, 1.0, z0), to, Some(Kind::Bounce), &Level::Adult.limits());
        prop_assert!(apart(flight.at(flight.duration()), to) < 1e-9);
        prop_assert!(flight.duration().is_finite() && flight.duration() > 0.0);
        let low = (0..=100).map(|i| flight.at(flight.duration() * f64::from(i) / 100.0).z);
        prop_assert!(low.fold(9.0, f64::min) >= BALL_RADIUS - 1e-9);
    }
}
