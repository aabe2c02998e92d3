use super::*;
use crate::scene::fixture::{Played, breakwater, p, play, turnstile};

fn of(played: &Played, who: u8) -> Card {
    card(&played.set, &played.court, &played.timeline, p(who)).unwrap()
}

fn step(card: &Card, n: usize) -> &Step {
    &card.steps[n]
}

#[test]
fn who_takes_no_part_has_no_card() {
    let played = play(
        r#"{ "backcut": 1, "title": "T", "players": { "1": {"at": "top", "ball": true},
          "2": {"at": "left wing"} }, "beats": [ { "actions": [ {"who": 1, "do": "pass", "to": 2} ] } ] }"#,
    );
    assert!(card(&played.set, &played.court, &played.timeline, p(3)).is_none());
}

#[test]
fn a_cutter_waits_for_the_feet_of_the_screener() {
    let card = of(&turnstile(), 2);
    let burst = step(&card, 0);
    let feet: Vec<PlayerId> = burst
        .cues
        .iter()
        .filter(|c| (c.edge, c.mine) == (Edge::Set, Edge::PassBy))
        .map(|c| c.who)
        .collect();
    assert_eq!(feet, [p(4)]);
    assert_eq!(burst.eyes, Eyes::Defender(p(2)));
}

#[test]
fn a_screener_stays_for_whoever_comes_by() {
    let played = turnstile();
    let card = of(&played, 4);
    let screen = step(&card, 0);
    let by = played.time(2, Verb::Cut, 0, Edge::PassBy);
    assert_eq!(screen.purpose, Some(Purpose::Frees { who: p(2), t: by }));
    assert_eq!(screen.eyes, Eyes::Defender(p(2)));
    assert_eq!(card.parts, [Part::Screener]);
}

#[test]
fn giver_and_taker_know_of_each_other() {
    let played = breakwater();
    let give = of(&played, 5);
    let hands = give
        .steps
        .iter()
        .find(|s| s.cues.iter().any(|c| c.mine == Edge::Release));
    assert_eq!(hands.unwrap().cues[0].who, p(1));
    assert_eq!(hands.unwrap().eyes, Eyes::Mate(p(1)));
}

#[test]
fn who_holds_the_corner_is_told_what_for() {
    let card = of(&breakwater(), 3);
    assert_eq!(card.parts, [Part::Spacer]);
    assert_eq!(card.steps.len(), 1);
    assert_eq!(step(&card, 0).what, Doing::Stays);
    assert_eq!(step(&card, 0).purpose, Some(Purpose::Space(Room::Corner)));
}

/// A run off a screen to `to`, and a shot of somebody else's.
fn loud(to: &str) -> Card {
    let text = r#"{ "backcut": 1, "title": "T", "players": {
        "1": {"at": "top", "ball": true}, "2": {"at": "left wing"},
        "3": {"at": "right corner"}, "4": {"at": "right elbow"} },
      "beats": [ { "actions": [
        {"who": 4, "do": "screen", "for": 3, "at": "right mid post"},
        {"who": 3, "do": "cut", "off": 4, "to": "TO"},
        {"who": 1, "do": "pass", "to": 2}, {"who": 2, "do": "shot"} ] } ] }"#;
    of(&play(&text.replace("TO", to)), 3)
}

#[test]
fn a_run_off_a_screen_that_gets_no_ball_is_a_decoy() {
    let card = loud("right slot");
    assert_eq!(step(&card, 0).purpose, Some(Purpose::Decoy { to: p(2) }));
    assert_eq!(card.parts, [Part::Decoy]);
    assert_eq!(
        step(&loud("rim"), 0).purpose,
        Some(Purpose::Threat { to: p(2) })
    );
}

#[test]
fn who_clears_out_is_told_who_comes_through() {
    let played = play(
        r#"{ "backcut": 1, "title": "T", "players": {
            "1": {"at": "top", "ball": true}, "2": {"at": "right wing"} },
          "beats": [ { "actions": [
            {"id": "clear", "who": 2, "do": "cut", "kind": "through", "to": "left corner"},
            {"who": 1, "do": "dribble", "to": "right wing", "after": "clear"},
            {"who": 1, "do": "shot"} ] } ] }"#,
    );
    let card = of(&played, 2);
    let Some(Purpose::MakesRoom { who, t }) = step(&card, 0).purpose else {
        panic!("{card:?}");
    };
    let at = played.timeline.player(p(1), t).unwrap().at();
    let left = played.timeline.player(p(2), 0.0).unwrap().at();
    assert!(who == p(1) && crate::math::distance(at, left) < 1.5);
}

#[test]
fn what_standing_is_worth_is_said_once() {
    let card = loud("right slot");
    let played = breakwater();
    for card in [card, of(&played, 2), of(&played, 5)] {
        let pairs = card.steps.windows(2);
        assert!(
            pairs
                .filter(|s| s[1].what == Doing::Stays)
                .all(|s| s[0].purpose != s[1].purpose)
        );
    }
}
