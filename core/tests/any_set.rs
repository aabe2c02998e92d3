//! Whatever somebody writes, what comes out moves like players and a ball.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    missing_docs,
    reason = "tests"
)]

mod written;

use backcut::play::{Options, Play};
use backcut::set::Mark;
use backcut::stops::{Stop, Waiting, Why};
use backcut::timeline::Timeline;
use proptest::prelude::*;
use written::{Seed, verify, written};

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
