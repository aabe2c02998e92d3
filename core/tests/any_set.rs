//! Whatever somebody writes, what comes out moves like players and a ball.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    missing_docs,
    reason = "tests"
)]

mod written;

use backcut::play::{Options, Play};
use backcut::set::{Mark, PlayerId, Verb};
use backcut::stops::{Stop, Waiting, Why};
use backcut::timeline::{Frame, Timeline};
use proptest::prelude::*;
use written::{Seed, written};

const DT: f64 = 1.0 / 240.0;

/// What is wrong with how a set moves, if anything.
fn verify(tl: &Timeline) -> Result<(), String> {
    let mut last: Option<Frame> = None;
    for i in 0..=(tl.duration() / DT) as u32 {
        let mut now = Frame::default();
        tl.frame(f64::from(i) * DT, &mut now);
        if let Some(before) = last {
            bodies(tl, &before, &now)?;
            ball(&before, &now)?;
        }
        last = Some(now);
    }
    for pair in tl.ball_spans().windows(2) {
        if pair[0].end != pair[1].start {
            return Err(format!("two balls or none: {pair:?}"));
        }
    }
    for tie in tl.ties().iter().filter(|t| t.written) {
        if tie.to.t < tie.from.t + tie.lag - 1e-5 {
            return Err(format!("a tie does not hold: {tie:?}"));
        }
    }
    for s in tl.screens() {
        if s.free < s.set {
            return Err(format!("free before set: {s:?}"));
        }
        let end = s.shut.unwrap_or(s.free);
        let moves = (0..=20)
            .map(|i| s.set + 1e-6 + (end - s.set - 2e-6).max(0.0) * f64::from(i) / 20.0)
            .any(|t| tl.player(s.screen.who, t).is_some_and(|m| m.speed > 1e-6));
        if moves {
            return Err(format!("a screen moves: {s:?}"));
        }
    }
    Ok(())
}

fn bodies(tl: &Timeline, before: &Frame, now: &Frame) -> Result<(), String> {
    for who in PlayerId::ALL {
        let i = who.index();
        let (Some(a), Some(b)) = (before.players[i], now.players[i]) else {
            continue;
        };
        let top = tl.limits(who).v_max + 0.01;
        let went = (b.x - a.x).hypot(b.y - a.y);
        if b.speed > top || went > top * DT + 1e-6 {
            return Err(format!("{who:?} runs {} at {}", went / DT, now.t));
        }
        let busy = tl.actions().iter().any(|a| {
            a.who == who
                && matches!(
                    a.verb,
                    Verb::Cut | Verb::Dribble | Verb::Screen | Verb::Handoff
                )
                && a.start - DT <= now.t
                && now.t <= a.end + DT
        });
        if b.speed > 1e-6 && !busy {
            return Err(format!("{who:?} moves without an action at {}", now.t));
        }
    }
    Ok(())
}

fn ball(before: &Frame, now: &Frame) -> Result<(), String> {
    let (a, b) = (before.ball, now.ball);
    if ![b.x, b.y, b.z].iter().all(|v| v.is_finite()) {
        return Err(format!("no ball at {}", now.t));
    }
    let went = ((b.x - a.x).powi(2) + (b.y - a.y).powi(2) + (b.z - a.z).powi(2)).sqrt();
    if went > 0.1 {
        return Err(format!("the ball jumps {went} m at {}", now.t));
    }
    Ok(())
}

/// What is wrong with where a walk through a set stops, if anything.
fn stops(play: &Play) -> Result<(), String> {
    let (tl, stops) = (play.timeline(), play.stops());
    if stops != play.stops() {
        return Err("another walk each time".to_owned());
    }
    if let Some(pair) = stops.windows(2).find(|s| s[1].t < s[0].t + 0.3) {
        return Err(format!("not one after the other: {pair:?}"));
    }
    for Stop { t, why } in &stops {
        if why.is_empty() || !(0.0..tl.duration()).contains(t) {
            return Err(format!("nothing stops at {t} for {why:?}"));
        }
        for wait in why {
            if let Why::Wait(wait) = wait {
                waiting(tl, wait)?;
            }
        }
    }
    let beats = (0..tl.beats().len()).all(|n| {
        let is = |why: &Why| *why == Why::Beat(n);
        stops.iter().any(|s| s.why.iter().any(is))
    });
    if !beats {
        return Err("a beat starts without a stop".to_owned());
    }
    Ok(())
}

/// Whether that wait is what the schedule says, and somebody stands for it.
fn waiting(tl: &Timeline, wait: &Waiting) -> Result<(), String> {
    // Feet are down a moment after a catch, a spot is free a moment after its leaver has started.
    let has = |id, edge, t: f64, late: f64| {
        let is = |m: &Mark| m.edge == edge && (-1e-6..=late).contains(&(t - m.t));
        let mut rows = tl.actions().iter().filter(|a| a.id == id);
        rows.any(|a| a.marks.iter().any(is))
    };
    let binds = (wait.t - wait.awaited.t - wait.lag).abs() < 0.1;
    let theirs = &wait.awaited;
    let known =
        has(wait.action, wait.edge, wait.t, 1e-6) && has(theirs.action, theirs.edge, theirs.t, 1.0);
    let stood = wait.goes.is_none_or(|goes| {
        let at = |t: f64| tl.player(wait.who[0], t).map(|m| m.at());
        let (a, b) = (at(goes - 0.1).unwrap(), at(goes).unwrap());
        (a.x - b.x).hypot(a.y - b.y) < 0.03
    });
    if binds && known && stood {
        return Ok(());
    }
    Err(format!(
        "binds {binds}, known {known}, stood {stood}: {wait:?}"
    ))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn prop_any_set_keeps_the_rules_of_motion(
        players in 2_usize..=5,
        holder in 0_usize..5,
        stand in 0_usize..16,
        seeds in prop::collection::vec(any::<Seed>(), 1..9),
    ) {
        let text = written(players, holder, stand, &seeds);
        match Play::open(text.as_bytes(), &Options::default()) {
            Ok(play) => {
                let tl = play.timeline();
                prop_assert!(tl.duration() < 4.0 + 8.0 * seeds.len() as f64, "{text}");
                let found = verify(tl);
                prop_assert!(found.is_ok(), "{found:?}\n{text}");
                let found = stops(&play);
                prop_assert!(found.is_ok(), "{found:?}\n{text}");
            }
            Err(faults) => for fault in &faults.list {
                prop_assert_eq!(fault.code, "contradictory-waits", "{}\n{}", fault.found, text);
            }
        }
    }
}
