use super::*;
use crate::timeline::Frame;
use proptest::prelude::*;

/// One player's move: who, what, where to.
fn moves() -> impl Strategy<Value = String> {
    let spots = prop::sample::select(std::vec![
        "left wing",
        "right wing",
        "left corner",
        "right corner",
        "left slot",
        "left block",
        "right block",
        "right elbow",
        "low paint",
        "rim",
    ]);
    let paces = prop::sample::select(std::vec!["walk", "jog", "run", "sprint"]);
    (2u8..=5, spots, paces, any::<bool>()).prop_map(|(who, to, pace, free)| {
        format!(r#"{{"who": {who}, "do": "cut", "to": "{to}", "pace": "{pace}", "free": {free}}}"#)
    })
}

fn sets() -> impl Strategy<Value = String> {
    let place = (-6.5..6.5f64, -0.9..8.0f64);
    let places = prop::collection::vec(place, 5);
    (places, prop::collection::vec(moves(), 1..7), 2u8..=5).prop_map(|(places, moves, to)| {
        let players: Vec<String> = places
            .iter()
            .zip(1..)
            .map(|((x, y), n)| {
                let ball = if n == 1 { r#", "ball": true"# } else { "" };
                format!(r#""{n}": {{"at": [{x:.2}, {y:.2}]{ball}}}"#)
            })
            .collect();
        let pass =
            format!(r#"{{"who": 1, "do": "pass", "to": {to}}}, {{"who": {to}, "do": "shot"}}"#);
        text(
            "",
            &players.join(","),
            &format!("{},{pass}", moves.join(",")),
        )
    })
}

/// Whether the offence of one moves as the mirror image of the other.
fn mirrors(here: &Play, there: &Play) -> bool {
    let (mut a, mut b) = (Frame::default(), Frame::default());
    (0..=60).all(|i| {
        let t = here.timeline().duration() * f64::from(i) / 60.0;
        here.timeline().frame(t, &mut a);
        there.timeline().frame(t, &mut b);
        a.players.iter().zip(&b.players).all(|pair| match pair {
            (Some(p), Some(q)) => (p.x + q.x).abs() < 1e-6 && (p.y - q.y).abs() < 1e-6,
            (p, q) => p.is_none() == q.is_none(),
        })
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn prop_a_mirrored_set_has_mirrored_findings(text in sets()) {
        let Ok(set) = crate::document::read(text.as_bytes()) else { return Ok(()) };
        let here = Play::of(set.clone(), &Options::default()).unwrap();
        let there = Play::of(set.mirrored(), &Options::default()).unwrap();
        // Where two sides are exactly alike, one has to be taken: such sets have no mirror image.
        prop_assume!(mirrors(&here, &there));
        let (a, b) = (judge(&here), judge(&there));
        prop_assert_eq!(a.len(), b.len());
        for (x, y) in a.iter().zip(&b) {
            prop_assert_eq!(x.code(), y.code());
            prop_assert_eq!(&x.players, &y.players);
            prop_assert_eq!(x.severity, y.severity);
            prop_assert!((x.t - y.t).abs() < 1e-6, "{} {}", x.t, y.t);
            match (x.place, y.place) {
                (Some(p), Some(q)) => prop_assert!((p.x + q.x).abs() < 1e-6 && (p.y - q.y).abs() < 1e-6),
                (p, q) => prop_assert_eq!(p, q),
            }
        }
    }

    #[test]
    fn prop_findings_are_finite_ordered_and_about_players_of_the_set(text in sets()) {
        let Ok(set) = crate::document::read(text.as_bytes()) else { return Ok(()) };
        let play = Play::of(set, &Options::default()).unwrap();
        let found = judge(&play);
        prop_assert!(found.is_sorted_by(|a, b| a.t <= b.t));
        for f in &found {
            prop_assert!(f.t.is_finite() && f.t >= -1e-9 && f.t <= play.timeline().duration() + 1e-9);
            prop_assert!(f.until.is_none_or(|u| u >= f.t));
            prop_assert!(f.players.iter().all(|p| play.set().player(*p).is_some()));
            let told = play.finding(f);
            prop_assert!(told.ends_with('.') && !told.contains('{'), "{}", told);
        }
    }
}
