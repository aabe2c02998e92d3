//! What is asked, and what answers are worth.

use super::*;
use crate::defence::Defence;
use crate::document::tests::made;
use crate::looks::looks;
use crate::math::distance;
use crate::play::{Options, Play};
use crate::set::{Coverage, Edge};
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
fn who_waits_for_something_else_than_feet_is_told_of_that() {
    let text = PIN_DOWN.replace(
        r#"{"who": 1, "do": "pass", "to": 2} ] } ]"#,
        r#"{"id": "pass", "who": 1, "do": "pass", "to": 2},
           {"who": 4, "do": "cut", "to": "left corner", "after": {"id": "pass", "edge": "catch"}} ] } ]"#,
    );
    let is = |q: &Question| matches!(q.ask, Ask::When { who, .. } if who == p(4));
    let (play, question) = asked(&text, is);
    let reason = told(&play, &question, question.answer);
    assert!(
        reason.ends_with("once 2 catches. You were on time."),
        "{reason}"
    );
}

#[test]
fn in_the_demo_sets_nobody_is_said_to_be_set_but_screeners_and_nobody_leaves_after_the_wait() {
    let mut ahead = 0;
    for demo in DEMOS {
        let play = open(demo);
        for question in play.questions(None, 1) {
            let (Ask::When { tie, .. }, Answer::Instant(leaves)) = (&question.ask, question.answer)
            else {
                continue;
            };
            let tie = play.timeline().ties()[*tie];
            assert!(leaves <= tie.to.t + 0.05, "{question:?}");
            let reason = told(&play, &question, question.answer);
            let set = [" is set", " are set"]
                .iter()
                .any(|set| reason.contains(set));
            assert_eq!(set, tie.from.edge == Edge::Set, "{reason}");
            ahead += usize::from(reason.contains(" seconds before "));
        }
    }
    assert!(ahead > 0, "nobody leaves for what is to come");
}

#[test]
fn who_is_open_is_the_one_whose_look_is_and_has_clearly_more_room_than_the_others() {
    let mut found = 0;
    for demo in DEMOS {
        let play = open(demo);
        let (defence, looks) = against(&play, Coverage::Chase);
        for question in play.questions(Some((&defence, &looks)), 1) {
            let (Ask::Open { look }, Answer::Choice(right)) = (&question.ask, question.answer)
            else {
                continue;
            };
            found += 1;
            assert_eq!(question.choices[right], Choice::Player(look.who));
            let room = |who: PlayerId| {
                let at = play.timeline().place(who, question.t).unwrap();
                let five = PlayerId::ALL
                    .iter()
                    .filter_map(|x| defence.state(*x, question.t));
                five.map(|x| distance(x.at(), at))
                    .fold(f64::INFINITY, f64::min)
            };
            for choice in &question.choices {
                let Choice::Player(who) = choice else {
                    panic!("{choice:?}")
                };
                assert!(
                    *who == look.who || room(*who) + 0.3 <= room(look.who),
                    "{question:?}"
                );
                assert_eq!(
                    question
                        .score(Answer::Choice(
                            question.choices.iter().position(|c| c == choice).unwrap()
                        ))
                        .points,
                    if *who == look.who { 100 } else { 0 }
                );
            }
            let reason = told(&play, &question, question.answer);
            assert!(
                reason.contains(" catches with X") && reason.ends_with("You had it."),
                "{reason}"
            );
        }
    }
    assert!(found > 0, "no demo set asks who is open under chase");
}

#[test]
fn a_read_that_is_true_but_cannot_be_played_is_not_asked() {
    // At a shot's release nothing can be made of a read any more.
    let text = with_reads().replace(
        r#""at": {"id": "cut", "edge": "cue"}, "by": [5, 1]"#,
        r#""at": {"id": "shot", "edge": "end"}, "by": [5, 1]"#,
    );
    let text = text.replace(
        r#"{"who": 1, "do": "pass", "to": 2} ] } ], "reads""#,
        r#"{"who": 1, "do": "pass", "to": 2}, {"id": "shot", "who": 2, "do": "shot"} ] } ], "reads""#,
    );
    let play = open(&text);
    let decided = play.decided(Coverage::Switch).unwrap();
    let holds = decided.asked.iter().any(|a| a.path == [0] && a.seen.holds);
    assert!(holds && decided.path.is_empty(), "{decided:?}");
    let (defence, looks) = against(&play, Coverage::Switch);
    for question in play.questions(Some((&defence, &looks)), 0) {
        if let Ask::Read { read, .. } = question.ask {
            assert_eq!(read, None, "{question:?}");
        }
    }
}

#[test]
fn a_listener_is_told_where_somebody_waits_as_they_are_seen_to() {
    let is = |q: &Question| matches!(q.ask, Ask::When { who, .. } if who == p(2));
    let (play, question) = asked(PIN_DOWN, is);
    let at = |t: f64| {
        let now = Question {
            t,
            ..question.clone()
        };
        play.standing(&now, None)
    };
    let own = |text: &str| {
        let mut parts = text.split("; ");
        parts.find(|part| part.starts_with("2 ")).map(String::from)
    };
    let Answer::Instant(leaves) = question.answer else {
        panic!("{question:?}")
    };
    assert_eq!(own(&at(leaves + 0.4)), own(&at(leaves)));
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
