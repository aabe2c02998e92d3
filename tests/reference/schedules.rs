//! Schedules against solvers and textbooks of another origin.
//!
//! - `microlp`, a linear-programming solver (simplex): earliest starts are the least sum, just in
//!   time is the greatest sum with the fixed ones pinned; contradictions are infeasible.
//! - Hillier FS, Lieberman GJ, *Introduction to Operations Research*, the Reliable Construction Co.
//!   project: duration, slack and critical path. From memory.
//! - The seven-activity example of the Program Evaluation and Review Technique as encyclopaedias
//!   give it: expected times, slack. From memory.

#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::needless_range_loop,
    reason = "a test file: helpers may fail loudly"
)]

use backcut::timing::network::{Constraint, Network};
use microlp::{ComparisonOp, OptimizationDirection, Problem, Variable};
use proptest::prelude::*;

fn hard(from: usize, to: usize, least: i64) -> Constraint {
    Constraint {
        from,
        to,
        least,
        wanted: least,
        softness: 0,
    }
}

/// Least or greatest starts by linear programming; `None` where there are none.
fn by_lp(
    nodes: usize,
    constraints: &[Constraint],
    pinned: &[(usize, i64)],
    least: bool,
) -> Option<Vec<i64>> {
    let direction = if least {
        OptimizationDirection::Minimize
    } else {
        OptimizationDirection::Maximize
    };
    let mut lp = Problem::new(direction);
    let x: Vec<Variable> = (0..nodes)
        .map(|n| match pinned.iter().find(|(p, _)| *p == n) {
            Some((_, at)) => lp.add_var(0.0, (*at as f64, *at as f64)),
            None => lp.add_var(1.0, (0.0, 1e5)),
        })
        .collect();
    for c in constraints.iter().filter(|c| c.from != c.to) {
        lp.add_constraint(
            [(x[c.to], 1.0), (x[c.from], -1.0)],
            ComparisonOp::Ge,
            c.least as f64,
        );
    }
    let solved = lp.solve().ok()?;
    Some(x.iter().map(|v| solved[*v].round() as i64).collect())
}

fn networks() -> impl Strategy<Value = (usize, Vec<Constraint>)> {
    (3_usize..9).prop_flat_map(|nodes| {
        let one = (0..nodes, 1..nodes, -40_i64..60);
        let all = prop::collection::vec(one, 2..24);
        (
            Just(nodes),
            all.prop_map(|v| v.into_iter().map(|(a, b, w)| hard(a, b, w)).collect()),
        )
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn prop_earliest_starts_are_the_least_solution_of_the_inequalities((nodes, all) in networks()) {
        let all: Vec<Constraint> = all.into_iter().filter(|c| c.from != c.to).collect();
        let mut network = Network::new(nodes);
        all.iter().for_each(|c| network.add(*c));
        let ours = network.earliest().ok().map(|e| e.start);
        prop_assert_eq!(ours, by_lp(nodes, &all, &[(0, 0)], true));
    }

    #[test]
    fn prop_latest_starts_are_the_greatest_solution_with_the_goal_pinned(
        (nodes, all) in networks(), goal in 1_usize..9
    ) {
        let all: Vec<Constraint> = all.into_iter().filter(|c| c.from != c.to).collect();
        let goal = goal % nodes;
        let mut network = Network::new(nodes);
        all.iter().for_each(|c| network.add(*c));
        if let Ok(earliest) = network.earliest() {
            let latest = network.latest(&earliest, |n| n == 0 || n == goal);
            let pins = [(0, 0), (goal, earliest.start[goal])];
            let lp = by_lp(nodes, &all, &pins, false).expect("earliest is a solution");
            for n in 0..nodes {
                match latest[n] {
                    Some(at) => prop_assert_eq!(at, lp[n]),
                    // Nothing that is pinned waits for it: the program may push it to its bound.
                    None => prop_assert!(lp[n] > 50_000, "{n}: {}", lp[n]),
                }
            }
        }
    }

    #[test]
    fn prop_what_contradicts_really_does((nodes, all) in networks()) {
        let mut network = Network::new(nodes);
        all.iter().filter(|c| c.from != c.to).for_each(|c| network.add(*c));
        if let Err(found) = network.earliest() {
            // The circle closes, and its waits add up to what is said to be missing.
            let circle: Vec<Constraint> =
                found.constraints.iter().map(|i| network.constraints()[*i]).collect();
            prop_assert!(found.short > 0);
            prop_assert_eq!(circle.iter().map(|c| c.least).sum::<i64>(), found.short);
            for (i, c) in circle.iter().enumerate() {
                prop_assert_eq!(c.from, circle[(i + 1) % circle.len()].to);
            }
        }
    }

    #[test]
    fn prop_just_in_time_keeps_every_wait((nodes, all) in networks(), fixed in any::<u16>()) {
        let mut network = Network::new(nodes);
        all.iter().filter(|c| c.from != c.to).for_each(|c| network.add(*c));
        if let Ok(earliest) = network.earliest() {
            let is_fixed = |n: usize| n == 0 || fixed >> n & 1 == 1;
            let late = network.just_in_time(&earliest, is_fixed, |n| (n % 3 == 0).then_some(30));
            for c in network.constraints() {
                prop_assert!(late[c.to] >= late[c.from] + c.least);
            }
            for n in 0..nodes {
                prop_assert!(late[n] >= earliest.start[n]);
                prop_assert!(!is_fixed(n) || late[n] == earliest.start[n]);
            }
        }
    }
}

/// A project of activities: name, duration, what it follows. Nodes are starts; 0 begins, the last
/// one ends.
struct Project {
    names: Vec<&'static str>,
    network: Network,
}

fn project(activities: &[(&'static str, i64, &[&str])]) -> Project {
    let names: Vec<&'static str> = activities.iter().map(|a| a.0).collect();
    let end = names.len() + 1;
    let node = |name: &str| {
        1 + names
            .iter()
            .position(|n| *n == name)
            .expect("a known activity")
    };
    let mut network = Network::new(end + 1);
    for (name, lasts, after) in activities {
        network.add(hard(0, node(name), 0));
        for before in *after {
            let before = activities
                .iter()
                .find(|a| a.0 == *before)
                .expect("a known activity");
            network.add(hard(node(before.0), node(name), before.1));
        }
        network.add(hard(node(name), end, *lasts));
    }
    Project { names, network }
}

impl Project {
    /// Duration, slack by activity, critical path.
    fn solve(mut self) -> (i64, Vec<(&'static str, i64)>, String) {
        let end = self.names.len() + 1;
        let earliest = self.network.earliest().expect("no circle");
        let latest = self.network.latest(&earliest, |n| n == 0 || n == end);
        let slack = self
            .names
            .iter()
            .enumerate()
            .map(|(i, name)| {
                (
                    *name,
                    latest[i + 1].expect("leads to the end") - earliest.start[i + 1],
                )
            })
            .filter(|(_, slack)| *slack > 0)
            .collect();
        let mut path = String::new();
        for c in self.network.critical(&earliest, end).iter().rev() {
            let c = self.network.constraints()[*c];
            if c.from > 0 {
                path.push_str(self.names[c.from - 1]);
            }
        }
        (earliest.start[end], slack, path)
    }
}

#[test]
fn reliable_construction_takes_44_weeks() {
    let all = project(&[
        ("A", 2, &[]),
        ("B", 4, &["A"]),
        ("C", 10, &["B"]),
        ("D", 6, &["C"]),
        ("E", 4, &["C"]),
        ("F", 5, &["E"]),
        ("G", 7, &["D"]),
        ("H", 9, &["E", "G"]),
        ("I", 7, &["C"]),
        ("J", 8, &["F", "I"]),
        ("K", 4, &["J"]),
        ("L", 5, &["J"]),
        ("M", 2, &["H"]),
        ("N", 6, &["K", "L"]),
    ]);
    let (weeks, slack, path) = all.solve();
    assert_eq!(weeks, 44);
    assert_eq!(
        slack,
        [("D", 4), ("G", 4), ("H", 4), ("I", 2), ("K", 1), ("M", 4)]
    );
    assert_eq!(path, "ABCEFJLN");
}

#[test]
fn review_technique_example_takes_19_51_days() {
    // Hundredths of a day.
    let all = project(&[
        ("a", 400, &[]),
        ("b", 533, &[]),
        ("c", 517, &["a"]),
        ("d", 633, &["a"]),
        ("e", 517, &["b", "c"]),
        ("f", 450, &["d"]),
        ("g", 517, &["e"]),
    ]);
    let (days, slack, path) = all.solve();
    assert_eq!(days, 1951);
    assert_eq!(slack, [("b", 384), ("d", 468), ("f", 468)]);
    assert_eq!(path, "aceg");
}
