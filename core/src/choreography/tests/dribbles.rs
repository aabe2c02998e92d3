//! Dribbles.

use super::*;

#[test]
fn a_hesitation_slows_and_goes_again() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "dribble", "kind": "hesitation", "to": "low paint"}"#,
    );
    let d = row(&play, (0, 0));
    let speeds: Vec<f64> = (1..100)
        .map(|i| speed(&play, 1, d.start + (d.end - d.start) * f64::from(i) / 100.0))
        .collect();
    let slowest = speeds[20..75].iter().copied().fold(f64::INFINITY, f64::min);
    let before = speeds[..40].iter().copied().fold(0.0, f64::max);
    let after = speeds[50..].iter().copied().fold(0.0, f64::max);
    assert!(
        slowest < 1.6 && before > 2.5 && after > 2.5,
        "{before} {slowest} {after}"
    );
}

#[test]
fn a_hesitation_is_slow_for_three_to_five_tenths() {
    for (level, to) in [
        ("adult", "low paint"),
        ("adult", "nail"),
        ("u14", "low paint"),
    ] {
        let text = format!(
            r#"{{"backcut": 1, "title": "T", "level": "{level}", "players": {{{FIVE}}}, "beats": [{{"actions": [
                {{"who": 1, "do": "dribble", "kind": "hesitation", "to": "{to}"}}]}}]}}"#
        );
        let play = Play::open(text.as_bytes(), &Options::default()).unwrap();
        let d = row(&play, (0, 0));
        let from = d.at(Edge::Plant).unwrap() - 0.02;
        // A walk with the ball, a little below its top at both ends.
        let slow = (0..200).map(|i| from + 0.005 * f64::from(i));
        let slow = slow.filter(|t| speed(&play, 1, *t) < 1.45).count();
        let slow = 0.005 * slow as f64;
        assert!((0.3..=0.5).contains(&slow), "{level} {to}: {slow}");
    }
}

#[test]
fn a_crossover_changes_direction_at_a_plant() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "dribble", "kind": "crossover", "to": "left elbow"}"#,
    );
    let d = row(&play, (0, 0));
    let plant = d.at(Edge::Plant).unwrap();
    let way = |from: f64| direction(at(&play, 1, from + 0.05) - at(&play, 1, from)).unwrap();
    let turn = turn_between(angle_of(way(plant - 0.06)), angle_of(way(plant + 0.01)));
    let turn = turn.abs().to_degrees();
    assert!((30.0..=90.0).contains(&turn), "{turn}");
}

#[test]
fn a_retreating_dribbler_keeps_eyes_on_the_ring() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "dribble", "kind": "retreat", "to": [0, 9.4]}"#,
    );
    let d = row(&play, (0, 0));
    let half = 0.5 * (d.start + d.end);
    assert!(play.timeline().player(p(1), half).unwrap().facing.abs() < 0.3);
}

#[test]
fn takes_only_ever_lengthens() {
    let at = |takes: &str| {
        let action = format!(r#"{{"who": 1, "do": "dribble", "to": "right slot"{takes}}}"#);
        let play = open(FIVE, &action);
        let d = row(&play, (0, 0));
        d.end - d.start
    };
    let plain = at("");
    assert!((at(r#", "takes": 3"#) - 3.0).abs() < 0.01);
    assert!((at(r#", "takes": 0.2"#) - plain).abs() < 1e-9);
}
