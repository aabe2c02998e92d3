//! What is asked, and what answers are worth.

use super::*;
use crate::defence::Defence;
use crate::document::tests::made;
use crate::looks::looks;
use crate::math::distance;
use crate::play::{Options, Play};
use crate::set::Coverage;
use crate::voice::{Units, Voice};
use alloc::string::String;
use proptest::collection::vec;
use proptest::prelude::*;
use std::format;

const DEMOS: [&str; 8] = [
    include_str!("../../../web-demo/sets/breakwater.json"),
    include_str!("../../../web-demo/sets/fogbank.json"),
    include_str!("../../../web-demo/sets/gangway.json"),
    include_str!("../../../web-demo/sets/lighthouse.json"),
    include_str!("../../../web-demo/sets/paper-boats.json"),
    include_str!("../../../web-demo/sets/slipway.json"),
    include_str!("../../../web-demo/sets/tidepool.json"),
    include_str!("../../../web-demo/sets/turnstile.json"),
];

/// 2 comes off a pin-down of 5 to the wing, where 1 passes.
const PIN_DOWN: &str = r#"{ "backcut": 1, "title": "Pin-down", "level": "adult", "players": {
    "1": {"at": "top", "ball": true}, "2": {"at": "right block"}, "4": {"at": "left elbow"},
    "5": {"at": "right slot"} },
  "beats": [ { "actions": [
    {"who": 5, "do": "screen", "kind": "pin-down", "for": 2, "at": [3.9, 2.6]},
    {"who": 2, "do": "cut", "off": 5, "to": "right wing"},
    {"who": 1, "do": "pass", "to": 2} ] } ] }"#;

fn open(text: &str) -> Play {
    Play::open(text.as_bytes(), &Options::default()).unwrap()
}

fn against(play: &Play, coverage: Coverage) -> (Defence, Vec<Look>) {
    let defence = play.defence(coverage);
    let looks = looks(play.timeline(), &defence);
    (defence, looks)
}

fn p(n: u8) -> PlayerId {
    PlayerId::new(n).unwrap()
}

/// The first question of which `is` holds, and its play.
fn asked(text: &str, is: impl Fn(&Question) -> bool) -> (Play, Question) {
    let play = open(text);
    let (defence, looks) = against(&play, Coverage::Chase);
    let all = play.questions(Some((&defence, &looks)), 3);
    let found = all.into_iter().find(is).expect("no such question");
    (play, found)
}

fn told(play: &Play, question: &Question, reply: Answer) -> String {
    play.reason(question, reply)
}

/// A question with this answer alone.
fn about(answer: Answer) -> Question {
    Question {
        ask: Ask::Ball { row: 0 },
        t: 0.0,
        hidden: Hidden::default(),
        choices: [Choice::AsDrawn, Choice::Read(0)].into(),
        answer,
        told: 0.0,
    }
}

#[test]
fn a_place_is_worth_all_within_half_a_metre_nothing_from_three_on_and_even_in_between() {
    let question = about(Answer::Place(Point::new(1.0, 2.0)));
    let points = |x: f64, y: f64| question.score(Answer::Place(Point::new(x, y))).points;
    assert_eq!(points(1.0, 2.0), 100);
    assert_eq!(points(1.0, 2.5), 100);
    assert_eq!(points(1.0, 3.75), 50);
    assert_eq!(points(4.0, 2.0), 0);
    assert_eq!(points(-40.0, 2.0), 0);
    let score = question.score(Answer::Place(Point::new(2.2, 3.6)));
    assert_eq!((score.points, score.off_s), (40, None));
    assert!((score.off_m.unwrap() - 2.0).abs() < 1e-12);
}

#[test]
fn an_instant_is_worth_all_within_a_seventh_of_a_second_and_nothing_from_one_on() {
    let question = about(Answer::Instant(2.0));
    let score = |t: f64| question.score(Answer::Instant(t));
    assert_eq!(score(2.0).points, 100);
    assert_eq!(score(1.85).points, 100);
    assert_eq!(score(2.575).points, 50);
    assert_eq!(score(1.425).points, 50);
    assert_eq!(score(3.0).points, 0);
    assert!(
        (score(1.5).off_s.unwrap() + 0.5).abs() < 1e-12,
        "early is below 0"
    );
}

#[test]
fn a_choice_is_right_or_wrong_and_other_sorts_of_answers_are_no_answer() {
    let question = about(Answer::Choice(1));
    assert_eq!(question.score(Answer::Choice(1)).points, 100);
    assert_eq!(question.score(Answer::Choice(0)).points, 0);
    assert_eq!(question.score(Answer::Choice(99)).points, 0);
    assert_eq!(question.score(Answer::Instant(1.0)), Score::default());
    let place = about(Answer::Place(Point::ZERO));
    assert_eq!(place.score(Answer::Choice(0)), Score::default());
}

#[test]
fn what_is_no_number_is_worth_nothing() {
    for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        let place = about(Answer::Place(Point::ZERO));
        for at in [Point::new(bad, 0.0), Point::new(0.0, bad)] {
            assert_eq!(place.score(Answer::Place(at)), Score::default());
        }
        let instant = about(Answer::Instant(1.0));
        assert_eq!(instant.score(Answer::Instant(bad)), Score::default());
    }
}

#[test]
fn a_way_is_asked_for_while_its_runner_stands_and_its_end_is_the_answer() {
    let is = |q: &Question| matches!(q.ask, Ask::Where { who, .. } if who == p(2));
    let (play, question) = asked(PIN_DOWN, is);
    let Answer::Place(right) = question.answer else {
        panic!("no place: {question:?}");
    };
    let stands = play.timeline().player(p(2), question.t).unwrap();
    assert!(stands.speed < 0.3 && distance(stands.at(), right) > 1.5);
    let wing = play.timeline().player(p(2), question.told).unwrap();
    assert!(distance(wing.at(), right) < 1e-9);
    assert_eq!(play.question(&question), "Where does 2 go?");
    let off = Answer::Place(Point::new(right.x - 1.2, right.y));
    assert!(question.hidden.hides(p(2)) && !question.hidden.hides(p(5)));
    let reason = told(&play, &question, off);
    assert!(
        reason.ends_with("off 5 to the right wing. You were 1.2 m off: 2 ends on the right wing."),
        "{reason}"
    );
}

#[test]
fn a_cutter_leaves_on_account_of_the_feet_and_is_told_what_early_and_late_do() {
    let is = |q: &Question| matches!(q.ask, Ask::When { who, .. } if who == p(2));
    let (play, question) = asked(PIN_DOWN, is);
    let Answer::Instant(right) = question.answer else {
        panic!("no instant: {question:?}");
    };
    let screen = play.timeline().screens()[0].set;
    assert!(question.t < right - 1.0, "there is time to look");
    let on_time = told(&play, &question, Answer::Instant(right + 0.1));
    assert!(on_time.ends_with("You were on time."), "{on_time}");
    assert!(on_time.contains("5 is set"), "{on_time}");
    // Far too early, the screen is not there when the cutter is.
    let early = told(&play, &question, Answer::Instant(right - 1.0));
    assert!(
        early.ends_with("You were 1.0 s early: 5 is not set by then."),
        "{early}, set at {screen}"
    );
    let late = told(&play, &question, Answer::Instant(right + 0.6));
    assert!(late.contains("0.6 s late: 5 had stood for 1."), "{late}");
    let never = told(&play, &question, Answer::Instant(f64::NAN));
    assert!(never.ends_with("You did not press."), "{never}");
}

#[test]
fn at_a_cue_the_own_defender_is_asked_for() {
    let is = |q: &Question| matches!(q.ask, Ask::Defender { .. });
    let (play, question) = asked(PIN_DOWN, is);
    assert_eq!(play.question(&question), "Where is X2?");
    assert_eq!(question.hidden.defender, Some(p(2)));
    let (defence, _) = against(&play, Coverage::Chase);
    let at = defence.state(p(2), question.t).unwrap().at();
    assert_eq!(question.answer, Answer::Place(at));
    let standing = play.standing(&question, Some(&defence));
    assert!(
        standing.contains("X5 is") && !standing.contains("X2 is"),
        "{standing}"
    );
    assert!(told(&play, &question, question.answer).starts_with("X2 is "));
}

#[test]
fn who_gets_the_ball_is_one_of_the_others() {
    let is = |q: &Question| matches!(q.ask, Ask::Ball { .. });
    let (play, question) = asked(PIN_DOWN, is);
    assert_eq!(play.choices(&question), ["2", "4", "5"]);
    assert_eq!(question.answer, Answer::Choice(0));
    assert!(question.hidden.ball);
    let reason = told(&play, &question, Answer::Choice(2));
    assert!(
        reason.starts_with("1 passes to 2") && reason.ends_with("Not 5."),
        "{reason}"
    );
}

/// The same with reads for two coverages.
fn with_reads() -> String {
    PIN_DOWN
        .replace(
            r#"{"who": 2, "do": "cut""#,
            r#"{"id": "cut", "who": 2, "do": "cut""#,
        )
        .replace(
            "} ] } ] }",
            r#"} ] } ], "reads": [
            {"title": "They switch", "at": {"id": "cut", "edge": "cue"}, "by": [5, 1],
             "if": {"coverage": "switch"}, "beats": [ {"actions": [
               {"who": 5, "do": "cut", "kind": "slip", "to": "rim"},
               {"who": 1, "do": "pass", "kind": "lob", "to": 5} ]} ]},
            {"at": {"id": "cut", "edge": "cue"}, "by": [2, 1],
             "if": {"coverage": "under"}, "beats": [ {"actions": [
               {"who": 2, "do": "cut", "kind": "fade", "to": "right corner"},
               {"who": 1, "do": "pass", "kind": "skip", "to": 2} ]} ]} ] }"#,
        )
}

#[test]
fn what_now_is_what_the_coverage_on_the_floor_asks_for() {
    let text = with_reads();
    let play = open(&text);
    let read = |coverage: Coverage| {
        let (defence, looks) = against(&play, coverage);
        let all = play.questions(Some((&defence, &looks)), 0);
        let mut all = all.into_iter();
        all.find(|q| matches!(q.ask, Ask::Read { .. })).unwrap()
    };
    let switched = read(Coverage::Switch);
    assert_eq!(
        play.choices(&switched),
        [
            "Go on as drawn",
            "5 slips to the rim, 1 lobs it to 5",
            "2 fades to the right corner, 1 skips it to 2"
        ]
    );
    assert_eq!(switched.answer, Answer::Choice(1));
    assert_eq!(
        told(&play, &switched, Answer::Choice(1)),
        "They play switch. They switch: 5 slips to the rim, 1 lobs it to 5. You had it."
    );
    assert_eq!(read(Coverage::Under).answer, Answer::Choice(2));
    let chased = read(Coverage::Chase);
    assert_eq!(chased.answer, Answer::Choice(0));
    assert_eq!(
        told(&play, &chased, Answer::Choice(1)),
        "They play chase. Nothing here asks for another way."
    );
}

#[test]
fn a_cross_is_told_by_its_spot_and_from_the_ring() {
    let play = open(PIN_DOWN);
    assert_eq!(
        play.whereabouts(Point::new(-5.5, 4.1)),
        "on the left wing: 5.5 m to the left of the ring, 4.1 m out"
    );
    assert!(
        play.whereabouts(Point::new(7.0, -0.5))
            .ends_with(", 0.5 m behind it")
    );
}

#[test]
fn what_now_in_a_demo_set_is_what_the_defence_decides() {
    let play = open(DEMOS[7]);
    let mut reads = 0;
    for coverage in play.coverages() {
        let (defence, looks) = against(&play, coverage);
        let path = play.decided(coverage).unwrap().path;
        let all = play.questions(Some((&defence, &looks)), 0);
        let asked = all.iter().filter(|q| matches!(q.ask, Ask::Read { .. }));
        let right = |q: &Question| match q.answer {
            Answer::Choice(i) => q.choices[i],
            _ => panic!("no choice: {q:?}"),
        };
        let taken: Vec<Choice> = asked.map(right).filter(|c| *c != Choice::AsDrawn).collect();
        let expected: Vec<Choice> = path.first().map(|i| Choice::Read(*i)).into_iter().collect();
        assert_eq!(taken, expected, "{coverage:?}");
        reads += taken.len();
    }
    assert!(reads > 0, "no coverage asks for a read");
}

#[test]
fn without_a_defence_nothing_of_it_is_asked() {
    let play = open(&with_reads());
    let all = play.questions(None, 5);
    let needs = |q: &Question| {
        matches!(
            q.ask,
            Ask::Defender { .. } | Ask::Open { .. } | Ask::Read { .. }
        )
    };
    assert!(!all.is_empty() && !all.iter().any(needs));
}

#[test]
fn a_round_of_five_has_several_kinds_and_another_number_another_order() {
    for demo in DEMOS {
        let play = open(demo);
        let all = play.questions(None, 1);
        assert!(all.len() >= 5, "{}: {}", play.set().title, all.len());
        let kinds = |q: &Question| core::mem::discriminant(&q.ask);
        let first = all.iter().take(5).map(kinds);
        let several: std::collections::HashSet<_> = first.collect();
        assert!(several.len() >= 2, "{}", play.set().title);
        assert_ne!(all, play.questions(None, 2), "{}", play.set().title);
    }
}

#[test]
fn it_is_asked_and_told_in_spanish_too() {
    let is = |q: &Question| matches!(q.ask, Ask::When { who, .. } if who == p(2));
    let (mut play, question) = asked(PIN_DOWN, is);
    play.speak(Voice::new("es", Units::Courts));
    assert_eq!(play.question(&question), "¿Cuándo sale 2?");
    let Answer::Instant(right) = question.answer else {
        panic!("no instant: {question:?}");
    };
    let early = told(&play, &question, Answer::Instant(right - 1.0));
    assert!(
        early.ends_with("Te adelantaste 1,0\u{a0}s: 5 aún no está en posición."),
        "{early}"
    );
}

/// Each question stands within the set and has its answer among what can be answered.
fn verify(play: &Play, defence: Option<(&Defence, &[Look])>, number: u32) {
    let all = play.questions(defence, number);
    assert_eq!(
        all,
        play.questions(defence, number),
        "same number, same questions"
    );
    let duration = play.timeline().duration();
    for question in &all {
        let shown = format!("{}: {question:?}", play.set().title);
        assert!((0.0..=duration).contains(&question.t), "{shown}");
        assert!(
            question.told <= duration && question.told >= question.t,
            "{shown}"
        );
        match question.answer {
            Answer::Place(at) => assert!(play.court().in_bounds(at, 0.0), "{shown}"),
            Answer::Instant(t) => assert!(t > question.t && t <= duration, "{shown}"),
            Answer::Choice(i) => {
                assert!(
                    i < question.choices.len() && question.choices.len() > 1,
                    "{shown}"
                );
            }
        }
        assert_eq!(question.score(question.answer).points, 100, "{shown}");
        assert!(!play.question(question).contains('{'));
        assert!(!play.standing(question, defence.map(|d| d.0)).contains('{'));
        let reason = told(play, question, question.answer);
        assert!(!reason.contains('{') && reason.ends_with('.'), "{reason}");
    }
}

#[test]
fn every_question_of_every_demo_set_can_be_answered() {
    for demo in DEMOS {
        let play = open(demo);
        verify(&play, None, 7);
        for coverage in play.coverages() {
            let (defence, looks) = against(&play, coverage);
            verify(&play, Some((&defence, &looks)), 7);
        }
    }
}

proptest! {
    // Each is played against five.
    #![proptest_config(ProptestConfig::with_cases(48))]
    #[test]
    fn prop_every_question_of_a_made_set_can_be_answered(
        numbers in vec(any::<u16>(), 0..300), number: u32,
    ) {
        let text = made::set(&numbers);
        if let Ok(play) = Play::open(text.as_bytes(), &Options::default()) {
            verify(&play, None, number);
            let (defence, looks) = against(&play, Coverage::Switch);
            verify(&play, Some((&defence, &looks)), number);
        }
    }

}

proptest! {
    #[test]
    fn prop_farther_off_is_never_worth_more(
        right in (-8.0..8.0_f64, -2.0..12.0_f64), way in 0.0..6.3_f64,
        a in 0.0..20.0_f64, b in 0.0..20.0_f64,
    ) {
        let right = Point::new(right.0, right.1);
        let at = |off: f64| right + crate::math::unit(way) * off;
        let (near, far) = (a.min(b), a.max(b));
        let place = about(Answer::Place(right));
        let points = |off: f64| place.score(Answer::Place(at(off))).points;
        prop_assert!(points(near) >= points(far) && points(near) <= 100);
        let instant = about(Answer::Instant(5.0));
        for sign in [1.0, -1.0] {
            let points = |off: f64| instant.score(Answer::Instant(5.0 + sign * off)).points;
            prop_assert!(points(near) >= points(far) && points(near) <= 100);
        }
    }
}
