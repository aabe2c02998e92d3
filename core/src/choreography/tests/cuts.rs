//! Cuts.

use super::*;

#[test]
fn a_v_cut_has_two_legs_and_a_sharp_plant() {
    let play = open(
        FIVE,
        r#"{"who": 2, "do": "cut", "kind": "v-cut", "to": [3.2, 6.6]}"#,
    );
    let cut = row(&play, (0, 0));
    let plant = cut.at(Edge::Plant).unwrap();
    assert!(plant > cut.start + 0.3 && plant < cut.end - 0.5);
    let [start, turn, end] = [cut.start, plant, cut.end].map(|t| at(&play, 2, t));
    assert!(
        turn.to_vec2().hypot() < start.to_vec2().hypot(),
        "goes in first"
    );
    let corner = turn_between(angle_of(start - turn), angle_of(end - turn))
        .abs()
        .to_degrees();
    assert!((60.0..=120.0).contains(&corner), "{corner}");
    assert!(sharpest(&headings(&play, 2, cut.start, cut.end)) > 45.0);
}

#[test]
fn an_l_cut_turns_square() {
    let play = open(
        FIVE,
        r#"{"who": 4, "do": "cut", "kind": "l-cut", "to": "left wing"}"#,
    );
    let cut = row(&play, (0, 0));
    let turn = at(&play, 4, cut.at(Edge::Plant).unwrap());
    assert!(
        (turn.x - at(&play, 4, cut.start).x).abs() < 1e-6,
        "straight up the lane line"
    );
    let corner = sharpest(&headings(&play, 4, cut.start, cut.end));
    assert!((80.0..=100.0).contains(&corner), "{corner}");
}

#[test]
fn a_backdoor_cut_sells_plants_and_bursts() {
    let play = open(
        FIVE,
        r#"{"who": 2, "do": "cut", "kind": "backdoor", "to": "rim"}, {"who": 1, "do": "pass", "kind": "bounce", "to": 2}"#,
    );
    let cut = row(&play, (0, 0));
    let plant = cut.at(Edge::Plant).unwrap();
    let ball = at(&play, 1, 0.0);
    let (start, turn) = (at(&play, 2, cut.start), at(&play, 2, plant));
    assert!(
        distance(turn, ball) < distance(start, ball) - 0.4,
        "shows for the ball"
    );
    let slow = distance(start, turn) / (plant - cut.start);
    let fast = distance(turn, at(&play, 2, plant + 1.0));
    assert!(fast > 1.5 * slow, "{slow} then {fast} m/s");
    let release = row(&play, (0, 1)).at(Edge::Release).unwrap();
    assert!(
        (0.45..=1.0).contains(&(release - plant)),
        "pass {} after the plant",
        release - plant
    );
}

#[test]
fn a_basket_cut_steps_away_from_its_pass_first() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "pass", "to": 2}, {"who": 1, "do": "cut", "kind": "basket", "to": "rim"}"#,
    );
    let cut = row(&play, (0, 1));
    let (start, turn) = (
        at(&play, 1, cut.start),
        at(&play, 1, cut.at(Edge::Plant).unwrap()),
    );
    assert!(distance(turn, at(&play, 2, 1.0)) > distance(start, at(&play, 2, 1.0)) + 0.3);
    let release = row(&play, (0, 0)).at(Edge::Release).unwrap();
    assert!(cut.start - release <= 0.6, "no standing after the pass");
}

#[test]
fn a_curl_wraps_the_screener() {
    let play = open(
        FIVE,
        r#"{"who": 5, "do": "screen", "kind": "down", "for": 3, "at": [4.6, 3.2]},
           {"who": 3, "do": "cut", "kind": "curl", "off": 5, "to": "low paint"}"#,
    );
    let cut = row(&play, (0, 1));
    let by = cut.at(Edge::PassBy).unwrap();
    let near = nearest(&play, 3, 5, by - 0.3, by + 0.6);
    assert!((0.5..=0.9).contains(&near), "{near}");
    let way = headings(&play, 3, cut.at(Edge::Plant).unwrap(), cut.end);
    assert!(by > cut.at(Edge::Plant).unwrap());
    let turn: f64 = way
        .windows(2)
        .map(|w| turn_between(angle_of(w[0]), angle_of(w[1])))
        .sum();
    assert!(
        (90.0..=150.0).contains(&turn.abs().to_degrees()),
        "{}",
        turn.to_degrees()
    );
}

#[test]
fn a_fade_stops_at_the_screen_and_bounces_away() {
    let play = open(
        FIVE,
        r#"{"who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.9, 2.6]},
           {"who": 3, "do": "cut", "kind": "fade", "off": 5, "to": "right corner"}"#,
    );
    let cut = row(&play, (0, 1));
    let plant = cut.marks.iter().rfind(|m| m.edge == Edge::Plant).unwrap().t;
    let stop = at(&play, 3, plant);
    assert!((0.6..=1.0).contains(&distance(stop, Point::new(4.9, 2.6))));
    assert!(distance(at(&play, 3, cut.end), stop) > 1.5);
}

#[test]
fn a_rejecting_cutter_shows_the_screen_and_goes_the_other_way() {
    let play = open(
        FIVE,
        r#"{"who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.9, 2.6]},
           {"who": 3, "do": "cut", "kind": "reject", "off": 5, "to": "rim"}"#,
    );
    let cut = row(&play, (0, 1));
    let plant = cut.marks.iter().rfind(|m| m.edge == Edge::Plant).unwrap().t;
    let [start, turn, end] = [cut.start, plant, cut.end].map(|t| at(&play, 3, t));
    assert!(distance(turn, Point::new(4.9, 2.6)) < distance(start, Point::new(4.9, 2.6)));
    assert!(
        distance(turn, Point::new(4.9, 2.6)) > 0.6,
        "does not use it"
    );
    assert!(distance(end, Point::ZERO) < 1.0);
}

#[test]
fn a_fill_goes_when_the_leaver_is_two_metres_gone() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "pass", "to": 2}, {"who": 1, "do": "cut", "kind": "basket", "to": "rim"},
           {"who": 4, "do": "cut", "kind": "fill", "to": "top"}"#,
    );
    let fill = row(&play, (0, 2));
    let gone = distance(at(&play, 1, fill.start), Point::new(0.0, 7.15));
    assert!((1.6..=3.2).contains(&gone), "{gone}");
}

#[test]
fn a_lift_goes_with_the_drive() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "dribble", "kind": "hard", "to": "nail"},
           {"who": 3, "do": "cut", "kind": "lift", "to": [6.6, 2.2]}"#,
    );
    assert!(row(&play, (0, 1)).start >= row(&play, (0, 0)).start - 1e-6);
}

#[test]
fn splitting_cutters_do_not_go_at_once() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "pass", "to": 5}, {"who": 1, "do": "cut", "kind": "split", "to": "right slot"},
           {"who": 2, "do": "cut", "kind": "split", "to": "left slot"}"#,
    );
    let apart = row(&play, (0, 2)).start - row(&play, (0, 1)).start;
    assert!(apart >= 0.4, "{apart}");
}

#[test]
fn clearing_out_goes_by_way_of_the_ring() {
    let play = open(
        FIVE,
        r#"{"who": 2, "do": "cut", "kind": "through", "to": "left corner"}"#,
    );
    let cut = row(&play, (0, 0));
    let mut t = cut.start;
    let mut least = f64::INFINITY;
    while t < cut.end {
        least = least.min(distance(at(&play, 2, t), Point::ZERO));
        t += 0.02;
    }
    assert!(least < 1.5, "{least}");
}
