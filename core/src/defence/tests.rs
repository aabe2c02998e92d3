//! Properties of the simulation over generated sets.
//!
//! `BACKCUT_SETS=2000 cargo test -p backcut --release defence` asks for thousands.

extern crate std;

use super::known::Courses;
use super::offence::Offence;
use super::simulate::Trial;
use super::*;
use crate::court::Court;
use crate::looks::{Chance, looks};
use crate::math::{Point, Vec2, distance, length};
use crate::play::{Options, Play};
use crate::set::Edge;
use alloc::format;
use alloc::string::String;

/// How many generated sets: `least` in a plain run, more where the environment asks.
fn how_many(least: u32) -> u32 {
    let asked = std::env::var("BACKCUT_SETS").ok();
    asked
        .and_then(|n| n.parse().ok())
        .unwrap_or(least)
        .max(least)
}

/// Numbers from a seed (Knuth's MMIX generator): the same sets on every machine.
struct Dice(u64);

impl Dice {
    fn share(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 40) as f64 / f64::from(1_u32 << 24)
    }

    fn near(&mut self, x: f64, y: f64, by: f64) -> String {
        let (dx, dy) = (self.share() - 0.5, self.share() - 0.5);
        format!("[{:.3}, {:.3}]", x + 2.0 * by * dx, y + 2.0 * by * dy)
    }

    fn one_of<'a>(&mut self, words: &[&'a str]) -> &'a str {
        words[(self.share() * words.len() as f64) as usize % words.len()]
    }
}

/// A set with one screen for 3 on the right, a pass to the cutter and a second cut on the left; `None`
/// where the dice fell so that it cannot be played.
fn generated(seed: u64) -> Option<Play> {
    let mut d = Dice(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ 0xBACC);
    let level = d.one_of(&["adult", "elite", "high school", "u14", "elite women"]);
    let (one, two) = (d.near(-0.6, 7.2, 0.6), d.near(-5.6, 3.0, 1.2));
    let (three, four) = (d.near(5.6, 0.6, 1.0), d.near(-2.6, 4.4, 0.8));
    let five = d.near(2.4, 4.2, 0.9);
    let screen = d.near(4.2, 3.0, 0.7);
    let to = d.one_of(&["top", "right slot", "right wing", "rim", "nail"]);
    let pace = d.one_of(&["sprint", "run"]);
    let quiet = d.one_of(&["rim", "left wing", "left slot"]);
    let end = d.one_of(&[
        r#"{ "who": 3, "do": "shot" }"#,
        r#"{ "who": 3, "do": "dribble", "to": "rim" }, { "who": 3, "do": "shot", "kind": "layup" }"#,
        r#"{ "who": 3, "do": "pass", "to": 2 }, { "who": 2, "do": "shot" }"#,
    ]);
    let text = format!(
        r#"{{ "backcut": 1, "title": "Made {seed}", "level": "{level}", "players": {{
             "1": {{"at": {one}, "ball": true}}, "2": {{"at": {two}}}, "3": {{"at": {three}}},
             "4": {{"at": {four}}}, "5": {{"at": {five}}} }},
           "beats": [ {{ "actions": [
             {{ "who": 5, "do": "screen", "for": 3, "at": {screen} }},
             {{ "id": "cut", "who": 3, "do": "cut", "off": 5, "to": "{to}", "pace": "{pace}" }},
             {{ "who": 2, "do": "cut", "to": "{quiet}" }},
             {{ "who": 1, "do": "pass", "to": 3 }},
             {end} ] }} ] }}"#
    );
    Play::open(text.as_bytes(), &Options::default()).ok()
}

fn all(count: u32) -> impl Iterator<Item = (u64, Play)> {
    (0..u64::from(count)).filter_map(|seed| Some((seed, generated(seed)?)))
}

fn courses(play: &Play) -> Courses<'_> {
    Courses::new(&[], play.set(), play.timeline())
}

fn trial<'a>(
    play: &'a Play,
    courses: &'a Courses<'a>,
    coverage: Coverage,
    later: f64,
) -> Trial<'a> {
    Trial {
        court: play.court(),
        courses,
        coverage,
        later,
    }
}

/// A coverage that goes with a seed, so that all come up.
fn some_coverage(seed: u64) -> Coverage {
    Coverage::TABLE[seed as usize % Coverage::TABLE.len()].0
}

fn player(n: u8) -> PlayerId {
    PlayerId::new(n).unwrap()
}

fn place(s: DefenderState) -> Point {
    Point::new(s.x, s.y)
}

/// Seconds that 3 is open at the catch.
fn open_at_the_catch(play: &Play, defence: &Defence) -> Option<f64> {
    let all = looks(play.timeline(), defence);
    let mut own = all.iter().filter(|l| l.chance == Chance::Catch);
    own.find(|l| l.who == player(3)).map(|l| l.open)
}

#[test]
fn most_generated_sets_can_be_played() {
    assert!(all(200).count() > 150, "{}", all(200).count());
}

#[test]
fn prop_nobody_passes_through_a_standing_body() {
    for (seed, play) in all(how_many(300)) {
        let courses = courses(&play);
        let defence = trial(&play, &courses, some_coverage(seed), 0.0).play();
        let mut stood = [0_u32; 5];
        let offence = &courses.last.offence;
        for i in 0..offence.len() {
            let t = i as f64 / f64::from(STEPS);
            for (body, stood) in offence.bodies(t).iter().zip(&mut stood) {
                let Some(body) = body.filter(|b| b.standing) else {
                    *stood = 0;
                    continue;
                };
                // Who turns on the spot moves the shoulders.
                let still = offence.bodies(t - 1.0 / f64::from(STEPS));
                let still = still.iter().flatten();
                let moved = still.map(|b| distance(b.ends[0], body.ends[0]));
                let moved = moved.fold(f64::INFINITY, f64::min) > 1e-3;
                *stood = if moved { 0 } else { *stood + 1 };
                for who in PlayerId::ALL {
                    let own = body::radius(play.timeline().limits(who));
                    let [before, now] = [t - 1.0 / f64::from(STEPS), t]
                        .map(|t| body.depth(place(defence.state(who, t).unwrap()), own));
                    // Nobody steps into a body; who is stopped on is given a moment to be clear.
                    assert!(
                        now <= before.max(0.0) + 1e-5,
                        "{seed}: X{who:?} {now} at {t}"
                    );
                    assert!(*stood < 30 || now < 0.02, "{seed}: X{who:?} {now} at {t}");
                }
            }
        }
    }
}

#[test]
fn prop_a_contact_is_as_deep_as_the_bodies_say_and_more_than_a_brush() {
    let mut count = 0;
    for (seed, play) in all(how_many(300)) {
        let defence = play.defence(some_coverage(seed));
        let limits = |p| play.timeline().limits(p);
        let mut before = 0.0;
        for c in defence.contacts() {
            count += 1;
            assert!(
                before <= c.from && c.from <= c.deepest && c.deepest <= c.to,
                "{c:?}"
            );
            assert!(c.depth > 0.05 || c.to - c.from > 0.1, "{c:?}");
            before = c.from;
            let x = place(defence.state(c.who, c.deepest).unwrap());
            let man = play.timeline().player(c.with, c.deepest).unwrap();
            let far = distance(x, Point::new(man.x, man.y));
            let deep = body::radius(limits(c.who)) + body::radius(limits(c.with)) - far;
            assert!((deep - c.depth).abs() < 1e-6, "{seed}: {deep} {c:?}");
            // The point of the defender's edge that is deepest in the attacker.
            assert!((distance(c.at, x) - body::radius(limits(c.who)).min(far)).abs() < 1e-6);
        }
    }
    assert!(count > 10, "{count}");
}

#[test]
fn prop_nobody_is_faster_than_their_legs() {
    let dt = 1.0 / f64::from(STEPS);
    for (seed, play) in all(how_many(300)) {
        let defence = play.defence(some_coverage(seed));
        for (who, track) in PlayerId::ALL.into_iter().zip(&defence.tracks) {
            let limits = play.timeline().limits(who);
            // The hardest start, braking and turn at once; contact may stop a body at once.
            let most = limits.v_max / limits.tau + limits.brake.max(limits.lateral);
            for pair in track.windows(2) {
                let (a, b) = (pair[0], pair[1]);
                let (va, vb) = (Vec2::new(a.vx, a.vy), Vec2::new(b.vx, b.vy));
                assert!(length(vb) <= limits.v_max, "{seed}");
                // By legs; attackers push nobody, team mates slide past each other.
                let moved = distance(place(a), place(b)) / dt;
                assert!(moved <= limits.v_max + 4.0, "{seed}: {moved}");
                let faster = length(vb) - length(va);
                assert!(faster <= most * dt + 1e-9, "{seed}: {}", faster / dt);
            }
        }
    }
}

#[test]
fn prop_the_same_input_gives_the_same_bits() {
    for (seed, play) in all(60) {
        let coverage = some_coverage(seed);
        assert_eq!(play.defence(coverage).hash(), play.defence(coverage).hash());
    }
}

#[test]
fn coverages_and_sides_have_hashes_of_their_own() {
    let play = generated(1).unwrap();
    let [a, b] = [Coverage::Chase, Coverage::Under].map(|c| play.defence(c).hash());
    assert_ne!(a, b);
}

/// Whether the offence itself is mirrored (a ball exactly on the axis has to be dribbled by one hand).
fn mirrors(a: &Offence, b: &Offence) -> bool {
    let same = |p: Point, q: Point| (p.x + q.x).abs() < 1e-9 && (p.y - q.y).abs() < 1e-9;
    (0..a.len()).all(|i| {
        let t = i as f64 / f64::from(STEPS);
        let (a, b) = (a.at(t), b.at(t));
        same(a.ball, b.ball)
            && a.at
                .iter()
                .flatten()
                .zip(b.at.iter().flatten())
                .all(|(p, q)| same(*p, *q))
    })
}

#[test]
fn prop_a_mirrored_set_is_defended_in_the_mirror() {
    let (mut ties, mut count) = (0, 0);
    for (seed, play) in all(how_many(300)) {
        let mirror = Options {
            mirror: true,
            ..Options::default()
        };
        let other = Play::of(play.set().clone(), &mirror).unwrap();
        if !mirrors(&courses(&play).last.offence, &courses(&other).last.offence) {
            continue;
        }
        count += 1;
        let coverage = some_coverage(seed);
        let (a, b) = (play.defence(coverage), other.defence(coverage));
        let mut worst: f64 = 0.0;
        for (p, q) in a.tracks.iter().flatten().zip(b.tracks.iter().flatten()) {
            worst = worst.max((p.x + q.x).abs()).max((p.y - q.y).abs());
        }
        ties += u32::from(worst > 0.01);
    }
    // Exact side ties, and those that rounding decides after a while.
    assert!(count > 200 && ties * 20 <= count, "{ties} of {count}");
}

#[test]
fn prop_a_slower_chaser_on_a_straight_run_is_never_earlier() {
    let mut d = Dice(7);
    for _ in 0..60 {
        let (x, y) = (-6.0 + d.share(), 1.0 + 5.0 * d.share());
        let text = format!(
            r#"{{ "backcut": 1, "title": "Run", "players": {{
                 "1": {{"at": [{x:.2}, {y:.2}]}}, "2": {{"at": [6.5, 8.5], "ball": true}} }},
               "beats": [ {{ "actions": [
                 {{ "who": 1, "do": "cut", "to": [{:.2}, {y:.2}], "pace": "sprint" }},
                 {{ "who": 2, "do": "hold", "takes": 5 }} ] }} ] }}"#,
            x + 7.0 + 3.0 * d.share()
        );
        let play = Play::open(text.as_bytes(), &Options::default()).unwrap();
        let courses = courses(&play);
        let end = play.timeline().player(player(1), 9.0).unwrap();
        // Behind the runner all the way: until halfway along the run.
        let line = 0.5 * (x + end.x);
        let mut before = 0.0;
        for later in [0.0, 0.1, 0.2, 0.3] {
            let chaser = trial(&play, &courses, Coverage::Chase, later).play();
            let track = &chaser.tracks[0];
            let arrives = track
                .iter()
                .position(|s| s.x >= line)
                .unwrap_or(track.len());
            assert!(
                arrives as f64 + 1.0 >= before,
                "{text} {later}: {arrives} {before}"
            );
            before = arrives as f64;
        }
    }
}

#[test]
fn prop_the_median_seconds_open_rise_with_the_reaction() {
    let mut open: [Vec<f64>; 3] = Default::default();
    for (_, play) in all(how_many(300)) {
        let courses = courses(&play);
        for (list, later) in open.iter_mut().zip([0.0, 0.15, 0.3]) {
            let defence = trial(&play, &courses, Coverage::Chase, later).play();
            list.extend(open_at_the_catch(&play, &defence));
        }
    }
    let medians = open.map(|mut list| {
        list.sort_by(f64::total_cmp);
        list[list.len() / 2]
    });
    assert!(
        medians[0] < medians[1] && medians[1] < medians[2],
        "{medians:?}"
    );
}

#[test]
fn prop_a_screen_that_can_be_walked_through_opens_nobody() {
    let (mut worse, mut count, mut gained) = (Vec::new(), 0, 0.0);
    for (seed, play) in all(how_many(300)) {
        let courses = courses(&play);
        let solid = trial(&play, &courses, Coverage::Chase, 0.0).play();
        let courses = courses.without_body(player(5));
        let passable = trial(&play, &courses, Coverage::Chase, 0.0).play();
        if let Some((solid, air)) =
            open_at_the_catch(&play, &solid).zip(open_at_the_catch(&play, &passable))
        {
            count += 1;
            gained += solid - air;
            // A tenth is what a table of seconds open shows.
            if air > solid + 0.1 {
                worse.push((seed, solid, air));
            }
        }
    }
    assert!(gained > 0.0);
    assert!(worse.len() * 100 <= count as usize, "{worse:?} of {count}");
}

#[test]
fn a_closeout_brakes() {
    let text = br#"{ "backcut": 1, "title": "Skip", "players": {
        "1": {"at": "left wing", "ball": true}, "2": {"at": "right corner"} },
      "beats": [ { "actions": [
        { "who": 1, "do": "pass", "kind": "skip", "to": 2 },
        { "who": 2, "do": "hold", "takes": 3 } ] } ] }"#;
    let play = Play::open(text, &Options::default()).unwrap();
    let defence = play.defence(Coverage::Chase);
    let man = play.timeline().player(player(2), 9.0).unwrap();
    let gap = |s: &DefenderState| distance(place(*s), Point::new(man.x, man.y));
    let track = &defence.tracks[1];
    assert!(gap(&track[0]) > 3.5, "helps two passes away");
    let arrives = track.iter().find(|s| gap(s) <= 1.05).unwrap();
    let speed = length(Vec2::new(arrives.vx, arrives.vy));
    assert!(speed <= 1.5, "{speed}");
    assert!((0.8..=1.05).contains(&gap(track.last().unwrap())));
}

#[test]
fn a_gate_is_switched_once() {
    let gate = include_bytes!("../../../web-demo/sets/turnstile.json");
    let play = Play::open(gate, &Options::default()).unwrap();
    let defence = play.defence(Coverage::Switch);
    let through = play
        .timeline()
        .actions()
        .iter()
        .find(|a| a.who == player(3) && a.at(Edge::PassBy).is_some());
    let by = through.and_then(|a| a.at(Edge::PassBy)).unwrap();
    let changes = defence
        .events()
        .iter()
        .filter(|e| (e.t - by).abs() < 0.6 && matches!(e.what, Incident::TookOver { .. }));
    assert_eq!(changes.count(), 2, "{:?}", defence.events());
}

#[test]
fn everybody_guards_somebody_and_nobody_twice() {
    for (seed, play) in all(60) {
        let defence = play.defence(some_coverage(seed));
        for men in &defence.men {
            let mut men = *men;
            men.sort();
            assert_eq!(men, PlayerId::ALL);
        }
    }
}

#[test]
fn courts_of_all_rule_sets_hold_the_defence() {
    for rules in crate::court::RuleSet::ALL {
        let options = Options {
            court: Some(rules),
            ..Options::default()
        };
        let play = Play::of(generated(3).unwrap().set().clone(), &options).unwrap();
        let defence = play.defence(Coverage::Over);
        let marks = *Court::of(rules).marks();
        for s in defence.tracks.iter().flatten() {
            assert!(s.x.abs() < marks.sideline + 1.5 && s.y > -marks.baseline - 1.5);
            assert!(s.facing.is_finite());
        }
    }
}

/// 1 steps toward `fake`, then goes to the other side; the most that 1 is away from X1 on the way.
fn beaten_by(fake: f64, later: f64) -> f64 {
    let text = format!(
        r#"{{ "backcut": 1, "title": "Fake", "players": {{
             "1": {{"at": [0, 5.5]}}, "2": {{"at": [0, 9], "ball": true}} }},
           "beats": [ {{ "actions": [
             {{ "who": 1, "do": "cut", "to": [{fake:.2}, 5.5], "pace": "sprint" }},
             {{ "who": 1, "do": "cut", "to": [-4, 5.5], "pace": "sprint" }},
             {{ "who": 2, "do": "hold", "takes": 4 }} ] }} ] }}"#
    );
    let play = Play::open(text.as_bytes(), &Options::default()).unwrap();
    let courses = courses(&play);
    let defence = trial(&play, &courses, Coverage::Chase, later).play();
    let cut = play
        .timeline()
        .actions()
        .iter()
        .rfind(|a| a.who == player(1));
    let end = cut.unwrap().end;
    let man = play.timeline().player(player(1), end).unwrap();
    distance(
        place(defence.state(player(1), end).unwrap()),
        Point::new(man.x, man.y),
    )
}

#[test]
fn a_fake_beats_the_quicker_defender() {
    // Who is a twentieth slower has not moved yet when the fake is over.
    let [quick, slow] = [0.15, 0.2].map(|later| beaten_by(0.68, later));
    assert!(quick > slow + 0.2, "{quick} {slow}");
    // Against no fake worth the name, the quicker one is nearer.
    let [quick, slow] = [0.1, 0.2].map(|later| beaten_by(0.1, later));
    assert!(quick < slow, "{quick} {slow}");
}
