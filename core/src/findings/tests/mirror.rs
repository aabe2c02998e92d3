use super::*;
use crate::defence::Defence;
use crate::set::{Coverage, PlayerId};
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

fn against(play: &Play, defence: &Defence) -> Vec<Finding> {
    let settings = Settings::default();
    check_against(
        play.set(),
        play.court(),
        play.timeline(),
        defence,
        &settings,
    )
}

/// Whether one defence moves as the mirror image of the other.
fn defended_alike(here: &Defence, there: &Defence, duration: f64) -> bool {
    PlayerId::ALL.into_iter().all(|who| {
        (0..=120).all(|i| {
            let t = duration * f64::from(i) / 120.0;
            match (here.state(who, t), there.state(who, t)) {
                (Some(p), Some(q)) => (p.x + q.x).abs() < 1e-6 && (p.y - q.y).abs() < 1e-6,
                (p, q) => p.is_none() == q.is_none(),
            }
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
    fn prop_a_mirrored_set_has_mirrored_findings_against_five(text in sets(), c in 0usize..11) {
        let Ok(set) = crate::document::read(text.as_bytes()) else { return Ok(()) };
        let here = Play::of(set.clone(), &Options::default()).unwrap();
        let there = Play::of(set.mirrored(), &Options::default()).unwrap();
        prop_assume!(mirrors(&here, &there));
        let [x, y] = [&here, &there].map(|p| p.defence(Coverage::TABLE[c].0));
        // Where rounding decides a side the defence has no mirror image either.
        prop_assume!(defended_alike(&x, &y, here.timeline().duration()));
        let (a, b) = (against(&here, &x), against(&there, &y));
        prop_assert_eq!(a.len(), b.len());
        for (x, y) in a.iter().zip(&b) {
            prop_assert_eq!(x.code(), y.code());
            prop_assert_eq!(&x.players, &y.players);
            prop_assert_eq!(&x.defenders, &y.defenders);
            prop_assert_eq!(x.severity, y.severity);
            prop_assert!((x.t - y.t).abs() < 1e-6, "{} {}", x.t, y.t);
            let (Some(p), Some(q)) = (x.place, y.place) else { continue };
            prop_assert!((p.x + q.x).abs() < 1e-5 && (p.y - q.y).abs() < 1e-5);
        }
    }

    #[test]
    fn prop_findings_against_five_are_about_the_set_and_name_their_coverage(
        text in sets(), c in 0usize..11
    ) {
        let Ok(set) = crate::document::read(text.as_bytes()) else { return Ok(()) };
        let play = Play::of(set, &Options::default()).unwrap();
        let coverage = Coverage::TABLE[c].0;
        let found = against(&play, &play.defence(coverage));
        prop_assert!(found.is_sorted_by(|a, b| a.t <= b.t));
        for f in &found {
            prop_assert_eq!(f.coverage, Some(coverage));
            prop_assert!(f.t.is_finite() && f.t >= 0.0 && f.t <= play.timeline().duration() + 1e-9);
            prop_assert!(f.until.is_none_or(|u| u >= f.t));
            prop_assert!(!f.defenders.is_empty());
            let of_the_set = |p: &PlayerId| play.set().player(*p).is_some();
            prop_assert!(f.players.iter().all(of_the_set) && f.defenders.iter().all(of_the_set));
            let told = play.finding(f);
            prop_assert!(told.contains('X') || f.code() == "no-look", "{}", told);
            prop_assert!(told.ends_with('.') && !told.contains('{'), "{}", told);
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
