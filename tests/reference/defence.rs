//! What the trade knows about coverages, shown by the simulation and not by a table.
//!
//! Common practice, no source, for every fact.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    missing_docs,
    reason = "tests"
)]

use backcut::athlete::{Level, Pace};
use backcut::defence::{Defence, Incident};
use backcut::looks::{Chance, Look, Openness};
use backcut::motion::rest_to_rest;
use backcut::play::{Options, Play};
use backcut::set::{Coverage, Edge, PlayerId};
use serde_json::{Value, json};

/// A demo set with something changed.
fn demo_with(set: &str, change: impl FnOnce(&mut Value)) -> Play {
    let path = format!("{}/../web-demo/sets/{set}.json", env!("CARGO_MANIFEST_DIR"));
    let mut value: Value = serde_json::from_slice(&std::fs::read(path).unwrap()).unwrap();
    change(&mut value);
    open(&value)
}

fn demo(set: &str) -> Play {
    demo_with(set, |_| {})
}

fn open(set: &Value) -> Play {
    Play::open(set.to_string().as_bytes(), &Options::default()).unwrap_or_else(|f| panic!("{f:?}"))
}

fn player(n: u8) -> PlayerId {
    PlayerId::new(n).unwrap()
}

/// The last catch or shot of a player.
fn last(play: &Play, defence: &Defence, who: u8, chance: Chance) -> Look {
    let looks = play.looks(defence);
    let own = looks
        .iter()
        .rfind(|l| l.who == player(who) && l.chance == chance);
    *own.unwrap_or_else(|| panic!("{looks:?}"))
}

/// Metres to the ring.
fn far(x: f64, y: f64) -> f64 {
    (x * x + y * y).sqrt()
}

/// Metres between a defender and an attacker.
fn apart(play: &Play, defence: &Defence, x: u8, man: u8, t: f64) -> f64 {
    let d = defence.state(player(x), t).unwrap();
    let p = play.timeline().player(player(man), t).unwrap();
    ((d.x - p.x).powi(2) + (d.y - p.y).powi(2)).sqrt()
}

/// A pin-down at the right for 3 out of the corner, the pass to 3.
fn pin_down(to: Value) -> Value {
    json!({ "backcut": 1, "title": "Pin-down", "players": {
        "1": {"at": "top", "ball": true}, "3": {"at": "right corner"}, "5": {"at": "right elbow"} },
      "beats": [ { "actions": [
        { "id": "wait", "who": 1, "do": "hold", "takes": 2.0 },
        { "who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.9, 2.6] },
        { "id": "cut", "who": 3, "do": "cut", "off": 5, "to": to, "pace": "sprint",
          "after": {"id": "wait", "mine": "plant"} },
        { "who": 1, "do": "pass", "to": 3 },
        { "who": 3, "do": "shot" } ] } ] })
}

#[test]
fn a_chaser_is_caught_by_the_gate() {
    let play = demo("turnstile");
    let defence = play.defence(Coverage::Chase);
    let held = defence.events().iter().any(|e| {
        e.who == player(3)
            && matches!(e.what, Incident::Held { by, .. } if [player(4), player(5)].contains(&by))
    });
    assert!(held, "{:?}", defence.events());
    let catch = last(&play, &defence, 3, Chance::Catch);
    assert_eq!(catch.openness(), Openness::WideOpen, "{catch:?}");
}

#[test]
fn who_goes_round_the_gate_arrives_late() {
    for side in ["left", "right"] {
        let play = demo_with("turnstile", |set| {
            set["defence"] =
                json!({"on": [{"id": "through", "who": "X3", "does": "goes round", "side": side}]});
        });
        let defence = play.defence(Coverage::Chase);
        let catch = last(&play, &defence, 3, Chance::Catch);
        let sign = if side == "left" { -1.0 } else { 1.0 };
        // On the side that was asked for, outside the posts.
        let wide = (0..600)
            .filter_map(|i| defence.state(player(3), f64::from(i) / 60.0))
            .filter(|s| (s.y - 4.95).abs() < 0.15)
            .map(|s| s.x * sign)
            .fold(f64::NEG_INFINITY, f64::max);
        assert!(wide > 0.6, "{side}: {wide}");
        assert!(catch.separation > 1.22, "{side}: {catch:?}");
    }
}

#[test]
fn under_gives_up_the_shot_behind_the_screen_and_stops_the_curl() {
    // 3 stops high of the screen, or goes round it into the lane; how near is X3 at the catch?
    let [shot, curl] = [json!("right wing"), json!([2.2, 3.6])].map(|to| open(&pin_down(to)));
    let gap = |play: &Play, coverage| {
        let defence = play.defence(coverage);
        let catch = last(play, &defence, 3, Chance::Catch);
        apart(play, &defence, 3, 3, catch.t)
    };
    let both = [Coverage::Chase, Coverage::Under];
    let (shots, curls) = (both.map(|c| gap(&shot, c)), both.map(|c| gap(&curl, c)));
    assert!(shots[1] > shots[0] + 0.2, "{shots:?}");
    assert!(curls[1] + 0.5 < curls[0], "{curls:?}");
}

#[test]
fn who_is_top_locked_and_cuts_backdoor_is_more_open() {
    // 3 refuses the screen that X3 keeps 3 off, and goes to the ring behind X3's back.
    let play = open(&json!({ "backcut": 1, "title": "Locked", "players": {
        "1": {"at": "top", "ball": true}, "2": {"at": "left wing"}, "3": {"at": "right corner"},
        "4": {"at": "left corner"}, "5": {"at": "right elbow"} },
      "beats": [ { "actions": [
        { "who": 1, "do": "dribble", "to": "right slot" },
        { "who": 5, "do": "screen", "kind": "pin-down", "for": 3, "at": [4.6, 2.4] },
        { "who": 3, "do": "cut", "kind": "reject", "off": 5, "to": "rim", "pace": "sprint" },
        { "who": 1, "do": "pass", "kind": "bounce", "to": 3 } ] } ] }));
    let [chase, lock] = [Coverage::Chase, Coverage::TopLock].map(|c| {
        let defence = play.defence(c);
        let catch = last(&play, &defence, 3, Chance::Catch);
        (apart(&play, &defence, 3, 3, catch.t), catch.open)
    });
    assert!(lock.0 > chase.0 + 1.0, "X3 is nearer: {lock:?} {chase:?}");
    assert!(
        lock.1 > chase.1 + 0.05,
        "no longer open: {lock:?} {chase:?}"
    );
}

#[test]
fn top_lock_stands_between_the_man_and_the_screen() {
    let play = open(&pin_down(json!("top")));
    let cut = play
        .timeline()
        .actions()
        .iter()
        .find(|a| a.who == player(3));
    let plant = cut.and_then(|a| a.at(Edge::Plant)).unwrap();
    // How far above the man's line to the ring the own defender stands when the cut begins.
    let [chase, lock] = [Coverage::Chase, Coverage::TopLock].map(|c| {
        let x = play.defence(c).state(player(3), plant).unwrap();
        let man = play.timeline().player(player(3), plant).unwrap();
        ((x.y - man.y) * man.x - (x.x - man.x) * man.y) / far(man.x, man.y)
    });
    assert!(lock > chase + 0.2 && lock > 0.3, "{lock} {chase}");
}

#[test]
fn a_switch_kills_the_curl_and_opens_the_slip() {
    let curl = open(&pin_down(json!([2.2, 3.6])));
    let mut slip = pin_down(json!("top"));
    let actions = slip["beats"][0]["actions"].as_array_mut().unwrap();
    actions.truncate(3);
    // 5 is gone before 3 is there.
    actions[1]["free"] = json!(true);
    actions.extend([
        json!({ "who": 5, "do": "cut", "kind": "slip", "to": "rim", "pace": "sprint",
          "with": {"id": "cut", "edge": "cue", "lag": 0.1} }),
        json!({ "who": 1, "do": "pass", "to": 5 }),
    ]);
    let slip = open(&slip);
    let both = [Coverage::Chase, Coverage::Switch];
    let curls = both.map(|c| last(&curl, &curl.defence(c), 3, Chance::Catch).separation);
    let slips = both.map(|c| last(&slip, &slip.defence(c), 5, Chance::Catch).separation);
    assert!(curls[1] < curls[0], "{curls:?}");
    assert!(slips[1] > slips[0], "{slips:?}");
}

#[test]
fn a_loud_decoy_pulls_help_off_the_quiet_side() {
    let loud = demo("lighthouse");
    let quiet = demo_with("lighthouse", |set| {
        // The same without the loud cut: 5, 1 and 3 stay where they are.
        let beats = set["beats"].as_array_mut().unwrap();
        for beat in beats.iter_mut() {
            let actions = beat["actions"].as_array_mut().unwrap();
            actions.retain(|a| a["id"] != "loud" && a["do"] != "screen");
            for a in actions.iter_mut() {
                a.as_object_mut().unwrap().remove("with");
            }
        }
        set["reads"] = json!([]);
    });
    let [a, b] = [&loud, &quiet].map(|play| {
        let defence = play.defence(Coverage::Chase);
        let shot = last(play, &defence, 2, Chance::Finish);
        // The nearest team mate of X2 to the ring when 2 has the ball at the rim.
        let others = [1, 3, 4, 5].map(|x| {
            let s = defence.state(player(x), shot.t).unwrap();
            (s.x * s.x + s.y * s.y).sqrt()
        });
        others.into_iter().fold(f64::INFINITY, f64::min)
    });
    assert!(a > b, "help is nearer without the loud cut: {a} {b}");
}

#[test]
fn a_tag_reaches_the_roller() {
    let play = demo("breakwater");
    let [plain, tagged] = [Coverage::Over, Coverage::WeakSideTag].map(|c| {
        let defence = play.defence(c);
        let times = (0..120).map(|i| 3.0 + f64::from(i) / 60.0);
        times
            .map(|t| [3, 4].map(|x| apart(&play, &defence, x, 5, t)))
            .fold(f64::INFINITY, |m, d| m.min(d[0]).min(d[1]))
    });
    assert!(tagged < plain, "{tagged} {plain}");
}

#[test]
fn the_defenders_of_one_action_do_as_they_are_told() {
    let told = |does: &str| {
        let mut set = pin_down(json!("top"));
        set["defence"] = json!({"on": [{"id": "cut", "who": "X3", "does": does}]});
        open(&set).defence(Coverage::Chase).hash()
    };
    let all = [
        "trails",
        "goes round",
        "shoots the gap",
        "top-locks",
        "switches",
        "sags",
        "turns head",
    ];
    let mut hashes = all.map(told).to_vec();
    hashes.sort_unstable();
    hashes.dedup();
    assert_eq!(hashes.len(), all.len(), "each is a defence of its own");
}

#[test]
fn a_straight_piece_added_to_a_way_never_makes_it_quicker() {
    for level in Level::ALL {
        for pace in Pace::ALL {
            let limits = level.limits();
            let takes = |d: f64| rest_to_rest(&limits, limits.effort(pace, false), d);
            for step in 1..400 {
                let d = 0.05 * f64::from(step);
                for more in [0.001, 0.1, 2.0] {
                    assert!(takes(d + more) > takes(d), "{level:?} {pace:?} {d}");
                }
            }
        }
    }
}
