use super::*;
use crate::document;
use crate::play::{Options, Play};
use crate::scene::fixture::turnstile;
use crate::set::{Edge, Verb};
use crate::voice::{Units, Voice};
use proptest::collection::vec;
use proptest::prelude::*;
use std::format;
use std::string::String;

fn marks(pairs: &[(f64, f64)]) -> Vec<FilmMark> {
    let mark = |&(t, film): &(f64, f64)| FilmMark { t, film };
    pairs.iter().map(mark).collect()
}

fn map(pairs: &[(f64, f64)]) -> FilmMap {
    FilmMap::of(&marks(pairs))
}

#[test]
fn film_without_marks_starts_with_the_set() {
    assert_eq!(FilmMap::default().film_at(2.5), 2.5);
    assert_eq!(FilmMap::default().set_at(2.5), 2.5);
    assert_eq!(FilmMap::default().rate_at(2.5), 1.0);
}

#[test]
fn one_mark_shifts_the_film_and_leaves_its_speed() {
    let one = map(&[(2.0, 7.0)]);
    assert_eq!(one.film_at(0.0), 5.0);
    assert_eq!(one.film_at(3.5), 8.5);
    assert_eq!(one.rate_at(0.0), 1.0);
}

#[test]
fn time_runs_evenly_between_marks_and_on_beyond_them() {
    let bent = map(&[(1.0, 3.0), (2.0, 5.0), (4.0, 6.0)]);
    assert_eq!(bent.film_at(1.5), 4.0);
    assert_eq!(bent.film_at(3.0), 5.5);
    assert_eq!(bent.film_at(0.0), 1.0, "as between the first two");
    assert_eq!(bent.film_at(6.0), 7.0, "as between the last two");
    assert_eq!(bent.rate_at(0.0), 2.0);
    assert_eq!(bent.rate_at(2.0), 0.5, "of what comes after the mark");
    assert_eq!(bent.rate_at(9.0), 0.5);
}

#[test]
fn mark_that_is_not_later_does_not_count() {
    let odd = map(&[
        (0.0, 3.0),
        (0.0, 4.0),
        (1.0, 2.0),
        (f64::NAN, 5.0),
        (2.0, 5.0),
    ]);
    assert_eq!(odd.marks(), marks(&[(0.0, 3.0), (2.0, 5.0)]));
}

#[test]
fn tied_instants_stay_in_order_and_one_instant_is_tied_once() {
    let two = marks(&[(0.0, 3.0), (4.0, 8.0)]);
    let three = tied(&two, 2.00004, 5.0).unwrap();
    assert_eq!(three, marks(&[(0.0, 3.0), (2.0, 5.0), (4.0, 8.0)]));
    let moved = tied(&three, 2.03, 5.2).unwrap();
    assert_eq!(moved, marks(&[(0.0, 3.0), (2.03, 5.2), (4.0, 8.0)]));
}

#[test]
fn film_that_would_run_backwards_is_not_tied() {
    let two = marks(&[(0.0, 3.0), (4.0, 8.0)]);
    assert_eq!(tied(&two, 2.0, 3.0), Err(NotTied::Backwards));
    assert_eq!(tied(&two, 2.0, 8.2), Err(NotTied::Backwards));
    assert_eq!(tied(&two, 5.0, 7.9), Err(NotTied::Backwards));
    assert_eq!(tied(&two, -0.1, 3.0), Err(NotTied::OutOfRange));
    assert_eq!(tied(&two, 1.0, f64::INFINITY), Err(NotTied::OutOfRange));
    let many: Vec<FilmMark> = (0..50_u8)
        .map(|i| FilmMark {
            t: f64::from(i),
            film: f64::from(i),
        })
        .collect();
    assert_eq!(tied(&many, 50.5, 50.5), Err(NotTied::Full));
    assert!(tied(&many, 49.0, 49.5).is_ok(), "in place of another");
}

#[test]
fn differences_are_counted_from_the_first_mark_and_name_what_happens() {
    let t = turnstile();
    let set = t.time(4, Verb::Screen, 0, Edge::Set);
    let catch = t.time(2, Verb::Pass, 0, Edge::Catch);
    let pairs = [(0.0, 10.0), (set + 0.03, set + 10.63), (catch, catch + 9.8)];
    let all = differences(&map(&pairs), &t.timeline);
    let late: Vec<Option<f64>> = all.iter().map(|d| d.late).collect();
    assert_eq!(late.first(), Some(&None));
    assert!((all[1].late.unwrap() - 0.6).abs() < 1e-9);
    assert!((all[2].late.unwrap() + 0.2).abs() < 1e-9);
    let edges = all[1..].iter().map(|d| d.happening.unwrap().mark.edge);
    assert_eq!(edges.collect::<Vec<_>>(), [Edge::Set, Edge::Catch]);
}

#[test]
fn mark_away_from_every_instant_names_none() {
    let t = turnstile();
    let instants: Vec<f64> = t
        .timeline
        .actions()
        .iter()
        .flat_map(|a| &a.marks)
        .map(|m| m.t)
        .collect();
    let quiet = (0..100_u8)
        .map(|i| f64::from(i) * 0.05)
        .find(|x| instants.iter().all(|m| (m - x).abs() > 0.1))
        .unwrap();
    let all = differences(&map(&[(quiet, 3.0)]), &t.timeline);
    assert_eq!(all[0].happening, None);
}

const TEXT: &str = r#"{ "backcut": 1, "title": "Give and go", "x-club": "ours", "players": {
    "1": {"at": "top", "ball": true}, "2": {"at": "right wing"} },
  "beats": [ { "actions": [ {"who": 1, "do": "pass", "to": 2} ] } ],
  "film": [{"t": 0, "film": 3}] }"#;

#[test]
fn marks_that_were_edited_are_written_into_the_set() {
    let mut play = Play::open(TEXT.as_bytes(), &Options::default()).unwrap();
    play.tie_film(0.5, 4.25).unwrap();
    assert_eq!(play.tie_film(0.3, 9.0), Err(NotTied::Backwards));
    let again = document::read(document::write(play.set()).as_bytes()).unwrap();
    assert_eq!(again.film, marks(&[(0.0, 3.0), (0.5, 4.25)]));
    assert_eq!(again.extras, play.set().extras);
    play.untie_film(7);
    play.untie_film(0);
    assert_eq!(play.set().film, marks(&[(0.5, 4.25)]));
}

#[test]
fn differences_are_told_in_words() {
    let mut play = Play::open(TEXT.as_bytes(), &Options::default()).unwrap();
    let pass = play.timeline().actions()[0].clone();
    let (release, catch) = (
        pass.at(Edge::Release).unwrap(),
        pass.at(Edge::Catch).unwrap(),
    );
    play.untie_film(0);
    play.tie_film(release, 3.0).unwrap();
    play.tie_film(catch, 3.6 + catch - release).unwrap();
    let told = |play: &Play| -> Vec<String> {
        let all = play.film_differences();
        all.iter().map(|d| play.film_difference(d)).collect()
    };
    assert_eq!(
        told(&play),
        [
            "Both are counted from here: 1 lets it go.",
            "Ours was 0.6 s late here: 2 catches."
        ]
    );
    play.tie_film(catch, 2.7 + catch - release).unwrap();
    assert_eq!(told(&play)[1], "Ours was 0.3 s early here: 2 catches.");
    play.tie_film(catch, 3.05 + catch - release).unwrap();
    assert_eq!(told(&play)[1], "Ours was on time here: 2 catches.");
    play.tie_film(catch, 3.64 + catch - release).unwrap();
    play.speak(Voice::new("es", Units::default()));
    assert_eq!(
        told(&play)[1],
        "Lo nuestro llegó aquí 0,6\u{a0}s tarde: 2 recibe."
    );
}

/// Marks as a set file may have them, a twentieth of a second apart or more.
fn some_marks() -> impl Strategy<Value = Vec<FilmMark>> {
    let steps = vec((0.05..6.0_f64, 0.05..40.0_f64), 0..10);
    ((0.0..3.0_f64, 0.0..900.0_f64), steps).prop_map(|((t, film), steps)| {
        let mut last = FilmMark { t, film };
        let mut out = std::vec![];
        for (dt, df) in steps {
            out.push(last);
            last = FilmMark {
                t: last.t + dt,
                film: last.film + df,
            };
        }
        out
    })
}

proptest! {
    #[test]
    fn prop_there_and_back_is_the_same_instant(marks in some_marks(), t in -5.0..80.0_f64) {
        let map = FilmMap::of(&marks);
        prop_assert!((map.set_at(map.film_at(t)) - t).abs() < 1e-9);
    }

    #[test]
    fn prop_later_in_the_set_is_later_in_the_film(
        marks in some_marks(),
        t in -5.0..80.0_f64,
        dt in 1e-6..5.0_f64,
    ) {
        let map = FilmMap::of(&marks);
        prop_assert!(map.film_at(t + dt) > map.film_at(t));
        prop_assert!(map.rate_at(t) > 0.0);
    }

    #[test]
    fn prop_marks_are_met(marks in some_marks()) {
        let map = FilmMap::of(&marks);
        for mark in &marks {
            prop_assert!((map.film_at(mark.t) - mark.film).abs() < 1e-12, "{}", format!("{mark:?}"));
            prop_assert!((map.set_at(mark.film) - mark.t).abs() < 1e-12);
        }
    }

    #[test]
    fn prop_whatever_is_asked_the_answer_is_finite(
        pairs in vec((any::<f64>(), any::<f64>()), 0..6),
        near in vec((0.0..0.01_f64, 0.0..1e5_f64), 0..6),
        at in any::<f64>(),
    ) {
        for pairs in [pairs, near] {
            let map = map(&pairs);
            for x in [at, f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 0.0, -0.0] {
                prop_assert!(map.film_at(x).is_finite());
                prop_assert!(map.set_at(x).is_finite());
                prop_assert!(map.rate_at(x).is_finite());
            }
        }
    }

    #[test]
    fn prop_what_is_tied_is_a_set_file_again(
        marks in some_marks(),
        asked in vec((0.0..60.0_f64, 0.0..900.0_f64), 1..8),
    ) {
        let mut play = Play::open(TEXT.as_bytes(), &Options::default()).unwrap();
        play.untie_film(0);
        let asked = marks.iter().map(|m| (m.t, m.film)).chain(asked);
        for (t, film) in asked {
            let before = play.film();
            match play.tie_film(t, film) {
                Ok(()) => {
                    let near = |m: &FilmMark| (m.t - t).abs() < 0.001 && (m.film - film).abs() < 0.001;
                    prop_assert!(play.film().marks().iter().any(near));
                }
                Err(_) => prop_assert_eq!(play.film(), before),
            }
        }
        let again = document::read(document::write(play.set()).as_bytes());
        prop_assert_eq!(again.map(|set| set.film).ok(), Some(play.set().film.clone()));
    }
}
