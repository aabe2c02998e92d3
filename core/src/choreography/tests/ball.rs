//! Passes, hand-offs and the dribbled ball.

use super::*;

#[test]
fn a_taker_gets_the_ball_in_stride_from_a_giver_who_stands() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "dribble", "kind": "dribble-at", "to": [3.2, 6.0]},
           {"who": 1, "do": "handoff", "kind": "dho", "to": 2},
           {"who": 2, "do": "dribble", "to": "left slot"}"#,
    );
    let give = row(&play, (0, 1));
    let (set, release) = (give.at(Edge::Set).unwrap(), give.at(Edge::Release).unwrap());
    assert!(release - set >= 0.2 - 1e-5);
    assert!(speed(&play, 1, release) < 0.01);
    assert!(
        speed(&play, 2, release) > 2.5,
        "{}",
        speed(&play, 2, release)
    );
    let apart = distance(at(&play, 1, release), at(&play, 2, release));
    assert!((0.50..=0.65).contains(&apart), "{apart}");
}

#[test]
fn a_pass_to_a_spot_comes_with_the_feet() {
    let play = open(
        FIVE,
        r#"{"who": 3, "do": "cut", "kind": "lift", "to": [6.4, 2.6]}, {"who": 1, "do": "pass", "to": 3}"#,
    );
    let (arrives, catch) = (
        row(&play, (0, 0)).end,
        row(&play, (0, 1)).at(Edge::Catch).unwrap(),
    );
    assert!(
        (-0.05 - 1e-5..=0.15 + 1e-5).contains(&(catch - arrives)),
        "{}",
        catch - arrives
    );
}

#[test]
fn a_free_pass_may_leave_off_the_running_dribble() {
    let play = open(
        FIVE,
        r#"{"id": "d", "who": 1, "do": "dribble", "to": "right slot"},
           {"who": 1, "do": "pass", "to": 2, "free": true, "with": {"id": "d", "edge": "end", "lag": -0.2, "mine": "release"}}"#,
    );
    let release = row(&play, (0, 1)).at(Edge::Release).unwrap();
    assert!((row(&play, (0, 0)).end - release - 0.2).abs() < 1e-5);
    assert!(speed(&play, 1, release) > 0.3);
}

#[test]
fn a_dribble_is_whole_bounces_with_the_ball_in_hand_at_both_ends() {
    let play = open(
        FIVE,
        r#"{"who": 1, "do": "dribble", "to": "left wing"}, {"who": 1, "do": "pass", "to": 2}"#,
    );
    let tl = play.timeline();
    let span = tl
        .ball_spans()
        .iter()
        .find(|s| matches!(s.what, BallUse::Dribbled(_)))
        .unwrap();
    assert!(tl.ball(span.start + 1e-4).z > 0.9 && tl.ball(span.end - 1e-4).z > 0.9);
    let mut floor = 0;
    let mut low = false;
    let mut frame = Frame::default();
    let mut t = span.start;
    while t < span.end {
        tl.frame(t, &mut frame);
        let now = frame.ball.z < 0.2;
        floor += i32::from(now && !low);
        low = now;
        t += 0.005;
    }
    assert_eq!(
        floor,
        crate::math::round((span.end - span.start) / 0.5) as i32
    );
}
