use super::build::is_drawn;
use super::*;
use crate::scene::fixture::{Played, breakwater, p, turnstile};
use crate::set::{Edge, Verb};
use crate::timeline::{TieEnd, TimedTie};

fn built(played: &Played) -> Strip {
    build(&played.timeline, &played.set)
}

fn row(strip: &Strip, n: u8) -> &Row {
    strip.rows.iter().find(|r| r.who == p(n)).unwrap()
}

#[test]
fn a_profile_holds_the_speeds_of_its_run() {
    let strip = built(&turnstile());
    let Some(BitKind::Move(speeds)) = row(&strip, 2).bits.first().map(|b| b.what.clone()) else {
        panic!("no run");
    };
    let top = speeds.iter().copied().fold(0.0, f64::max);
    assert!(top > 2.0 && speeds[0] < 0.1, "{speeds:?}");
}

#[test]
fn a_row_is_in_time_order_and_nothing_lies_over_another_thing() {
    for played in [turnstile(), breakwater()] {
        for row in built(&played).rows {
            for (a, b) in row.bits.iter().zip(row.bits.iter().skip(1)) {
                // Hand-offs are instants on a line; who has passed may leave before the catch; a
                // shot begins with the catch, as the feet land.
                let may = [&a.what, &b.what]
                    .iter()
                    .any(|w| matches!(w, BitKind::Handoff | BitKind::Pass | BitKind::Shot));
                assert!(may || a.end <= b.start + 1e-9, "{a:?} {b:?}");
            }
        }
    }
}

#[test]
fn a_wait_at_the_plant_cuts_a_move_in_two() {
    let played = turnstile();
    let cut = played.action(3, Verb::Cut, 0);
    let strip = built(&played);
    let kinds: Vec<&str> = row(&strip, 3)
        .bits
        .iter()
        .filter(|b| b.start >= cut.start - 1e-9 && b.end <= cut.end + 1e-9)
        .map(|b| match b.what {
            BitKind::Move(_) => "move",
            BitKind::Wait => "wait",
            _ => "else",
        })
        .collect();
    let waits = cut.waits.iter().filter(|w| w.end - w.start > 0.12).count();
    assert_eq!(kinds.iter().filter(|k| **k == "wait").count(), waits);
    assert_eq!(kinds.first(), Some(&"move"));
    assert_eq!(kinds.last(), Some(&"move"));
}

#[test]
fn a_screen_stands_from_the_instant_it_is_set() {
    let played = turnstile();
    let strip = built(&played);
    let screens: Vec<&Bit> = row(&strip, 5)
        .bits
        .iter()
        .filter(|b| matches!(b.what, BitKind::Screen(_)))
        .collect();
    let set = played.time(5, Verb::Screen, 0, Edge::Set);
    assert_eq!(screens.len(), 1);
    assert!((screens[0].start - set).abs() < 1e-9);
}

#[test]
fn a_gates_shutting_lies_within_its_box() {
    let played = turnstile();
    let strip = built(&played);
    for (n, nth) in [(4, 1), (5, 0)] {
        let shuts = played.time(n, Verb::Screen, nth, Edge::Shut);
        let gate = row(&strip, n)
            .bits
            .iter()
            .find(|b| matches!(b.what, BitKind::Screen(Some(_))))
            .unwrap();
        let BitKind::Screen(Some((start, end))) = gate.what else {
            panic!("no gate");
        };
        assert!(
            (start - shuts).abs() < 0.1 && start < end && end <= gate.end,
            "{start} {end}"
        );
    }
}

#[test]
fn a_hand_off_stands_in_both_rows() {
    let strip = built(&breakwater());
    for n in [1, 5] {
        let bars = row(&strip, n)
            .bits
            .iter()
            .filter(|b| b.what == BitKind::Handoff)
            .count();
        assert_eq!(bars, 1, "row {n}");
    }
}

#[test]
fn the_balls_row_has_no_gap_and_one_bar_a_holder() {
    let played = turnstile();
    let strip = built(&played);
    let whats: Vec<BallRow> = strip.ball.iter().map(|b| b.what).collect();
    assert_eq!(
        whats,
        [
            BallRow::With(p(1)),
            BallRow::Pass,
            BallRow::With(p(2)),
            BallRow::Pass,
            BallRow::With(p(3)),
            BallRow::Shot
        ]
    );
    for (a, b) in strip.ball.iter().zip(strip.ball.iter().skip(1)) {
        assert!((a.end - b.start).abs() < 1e-9);
    }
    assert!(strip.ball[0].start.abs() < 1e-9);
}

#[test]
fn ties_within_a_row_and_loose_ones_nobody_wrote_are_not_drawn() {
    let played = turnstile();
    let actions = played.timeline.actions();
    let end = |action: usize, t: f64| TieEnd {
        action,
        edge: Edge::Start,
        t,
    };
    let tie = |from, to, written| TimedTie {
        from,
        to,
        lag: 0.2,
        written,
        critical: false,
    };
    let drawn = |t: TimedTie| is_drawn(&t, &actions[t.from.action], &actions[t.to.action]);
    // 1 dribbles, 4 screens, 2 cuts, 1 passes.
    assert!(drawn(tie(end(1, 1.0), end(2, 1.2), false)));
    assert!(!drawn(tie(end(1, 1.0), end(2, 1.6), false)));
    assert!(drawn(tie(end(1, 1.0), end(2, 1.6), true)));
    assert!(!drawn(tie(end(0, 1.0), end(3, 1.2), true)));
}
