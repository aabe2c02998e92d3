use super::*;
use crate::athlete::{Level, Pace};
use crate::court::{RuleSet, Spot};
use crate::scene::fixture::{breakwater, p, turnstile};
use crate::set::{
    Action, ActionId, Edge, Kind, Off, Set, SetPlace, Target, Tie, TieRelation, Verb,
};
use crate::voice::Voice;
use std::vec;

/// English, as the court measures.
const ENGLISH: Voice = Voice::ENGLISH;

fn blank(who: &[u8], verb: Verb) -> Action {
    Action {
        id: None,
        who: who.iter().map(|n| p(*n)).collect(),
        verb,
        kind: None,
        to: None,
        at: None,
        via: vec![],
        for_whom: vec![],
        off: vec![],
        side: None,
        pace: None,
        takes: None,
        ties: vec![],
        free: false,
        say: None,
        of: None,
        place: crate::fault::Place::default(),
    }
}

fn spot(name: &str) -> SetPlace {
    SetPlace::Spot {
        spot: Spot::parse(name).unwrap(),
        dx: 0.0,
        dy: 0.0,
    }
}

fn off(who: u8) -> Off {
    Off {
        who: p(who),
        side: None,
    }
}

/// One beat of these actions.
fn set_of(actions: Vec<Action>) -> Set {
    let mut set = turnstile().set;
    set.beats.truncate(1);
    set.beats[0].actions = actions;
    set
}

fn told(action: Action) -> String {
    super::action(
        &set_of(vec![action]),
        None,
        ActionId { beat: 0, action: 0 },
        ENGLISH,
    )
}

#[test]
fn a_screen_says_what_it_is_and_for_whom() {
    let pin = Action {
        kind: Some(Kind::PinDown),
        for_whom: vec![p(3)],
        ..blank(&[5], Verb::Screen)
    };
    assert_eq!(told(pin), "5 sets a pin-down for 3.");
    let gate = Action {
        kind: Some(Kind::Gate),
        for_whom: vec![p(3)],
        at: Some(spot("nail")),
        ..blank(&[4, 5], Verb::Screen)
    };
    assert_eq!(told(gate), "4 and 5 set a gate for 3 at the nail.");
}

#[test]
fn a_trade_word_that_carries_a_name_is_told_plainly() {
    let screen = Action {
        kind: Some(Kind::BackOnTheRoller),
        ..blank(&[2], Verb::Screen)
    };
    assert_eq!(told(screen), "2 sets a back screen on the roller.");
    let cut = Action {
        kind: Some(Kind::HighPostRub),
        ..blank(&[1], Verb::Cut)
    };
    assert_eq!(told(cut), "1 makes a high-post rub.");
}

#[test]
fn a_cut_says_off_whom_and_where_to() {
    let cut = Action {
        pace: Some(Pace::Sprint),
        off: vec![off(5), off(1)],
        to: Some(Target::Place(spot("top"))),
        ..blank(&[3], Verb::Cut)
    };
    assert_eq!(told(cut), "3 sprints off 5 and 1 to the top.");
}

#[test]
fn through_a_gate_one_goes_between_its_posts() {
    let gate = Action {
        kind: Some(Kind::Gate),
        ..blank(&[4, 5], Verb::Screen)
    };
    let cut = Action {
        off: vec![off(4), off(5)],
        to: Some(Target::Place(SetPlace::Point { x: 0.0, y: 8.2 })),
        ..blank(&[3], Verb::Cut)
    };
    let set = set_of(vec![gate, cut]);
    let told = action(&set, None, ActionId { beat: 0, action: 1 }, ENGLISH);
    assert_eq!(told, "3 cuts between 4 and 5 toward the deep top.");
}

#[test]
fn who_waits_for_a_screen_is_said_to_wait() {
    let played = turnstile();
    let told = |beat, n| {
        let id = ActionId { beat, action: n };
        action(&played.set, Some(&played.timeline), id, ENGLISH)
    };
    let cut = played.action(3, Verb::Cut, 0);
    assert_eq!(
        told(1, 2).contains("waits for 4 and 5 to stand, then sprints between 4 and 5 to the top"),
        !cut.waits.is_empty()
    );
}

#[test]
fn a_pass_says_where_it_is_caught() {
    let pass = Action {
        to: Some(Target::Player(p(2))),
        at: Some(spot("right wing")),
        ..blank(&[1], Verb::Pass)
    };
    assert_eq!(told(pass), "1 passes to 2 on the right wing.");
    let played = turnstile();
    let id = ActionId { beat: 2, action: 0 };
    let told = action(&played.set, Some(&played.timeline), id, ENGLISH);
    assert_eq!(told, "2 passes to 3 at the top.");
}

#[test]
fn a_tie_is_told_as_people_say_it() {
    let mut cut = Action {
        kind: Some(Kind::Backdoor),
        to: Some(Target::Place(spot("rim"))),
        ..blank(&[2], Verb::Cut)
    };
    cut.ties.push(Tie {
        relation: TieRelation::With,
        to: ActionId { beat: 0, action: 0 },
        edge: Edge::PassBy,
        of: None,
        lag: 0.0,
        mine: Edge::Start,
        scope: crate::set::Scope::default(),
        place: crate::fault::Place::default(),
    });
    let loud = Action {
        off: vec![off(5)],
        ..blank(&[3], Verb::Cut)
    };
    let id = ActionId { beat: 0, action: 1 };
    let mut set = set_of(vec![loud, cut]);
    assert_eq!(
        action(&set, None, id, ENGLISH),
        "2 goes backdoor to the rim as 3 passes 5."
    );
    set.beats[0].actions[1].ties[0].lag = -0.2;
    set.beats[0].actions[1].ties[0].mine = Edge::Plant;
    assert_eq!(
        action(&set, None, id, ENGLISH),
        "2 goes backdoor to the rim, planting 0.2 seconds before 3 passes 5."
    );
}

#[test]
fn the_authors_words_win() {
    let mut set = set_of(vec![blank(&[1], Verb::Hold)]);
    set.beats[0].title = None;
    assert_eq!(super::set(&set, None, ENGLISH), ["Beat 1: 1 stays."]);
    set.beats[0].say = Some(String::from("1 watches."));
    assert_eq!(beat(&set, None, 0, ENGLISH), "1 watches.");
    assert_eq!(beat(&set, None, 7, ENGLISH), "");
}

#[test]
fn nobody_is_he_or_she_whatever_the_kind() {
    for row in Kind::table() {
        let action = Action {
            kind: Some(row.kind),
            to: Some(Target::Player(p(2))),
            ..blank(&[1], row.verb)
        };
        let told = told(action);
        let mut words = told.split(|c: char| !c.is_alphabetic());
        assert!(told.starts_with("1 ") && told.ends_with('.'), "{told}");
        assert!(
            !words.any(|w| ["he", "she", "his", "her", "him"].contains(&w)),
            "{told}"
        );
    }
}

#[test]
fn an_instant_says_time_beat_ball_and_who_does_what() {
    let played = turnstile();
    let told = describe(&played.timeline, &played.set, 1.0, ENGLISH);
    assert!(told.starts_with("1.0 seconds of "), "{told}");
    assert!(
        told.ends_with(
            ", beat 1, Zipper: 1 has the ball near the top; 1 dribbles to the right slot; \
             2 runs toward the left slot."
        ),
        "{told}"
    );
}

#[test]
fn the_taker_of_a_hand_off_comes_for_it() {
    let played = breakwater();
    let given = played.time(5, Verb::Handoff, 0, Edge::Release);
    let told = describe(&played.timeline, &played.set, given - 0.05, ENGLISH);
    assert!(
        told.contains("5 hands off to 1; 1 comes for the ball"),
        "{told}"
    );
}

#[test]
fn cautions_follow_from_what_the_set_asks_for() {
    let plain = set_of(vec![blank(&[1], Verb::Cut)]);
    assert!(cautions(&plain, ENGLISH).is_empty());
    let gate = Action {
        kind: Some(Kind::Gate),
        ..blank(&[4, 5], Verb::Screen)
    };
    let mut set = set_of(vec![gate]);
    let adult = cautions(&set, ENGLISH);
    assert!(adult.iter().any(|c| c.contains("gate")));
    assert!(
        !adult
            .iter()
            .any(|c| c.contains("Blind") || c.contains("Under 14"))
    );
    assert_eq!(adult.last(), Some(&"The supervising coach decides."));
    set.level = Level::U14;
    assert_eq!(cautions(&set, ENGLISH).len(), adult.len() + 1);
}

#[test]
fn two_players_who_run_to_the_rim_must_not_cross() {
    let dive = |who| Action {
        kind: Some(Kind::Dive),
        ..blank(&[who], Verb::Cut)
    };
    let crossed = |set: &Set| cautions(set, ENGLISH).iter().any(|c| c.contains("cross"));
    assert!(!crossed(&set_of(vec![dive(4), dive(4)])));
    assert!(crossed(&set_of(vec![dive(4), dive(5)])));
}

#[test]
fn distances_are_in_the_rule_sets_own_measure() {
    assert_eq!(distance(0.64, RuleSet::Fiba, ENGLISH), "0.6 m");
    assert_eq!(distance(3.048, RuleSet::Nfhs, ENGLISH), "10.0 ft");
}
