//! Findings against the rule books, by article; never at the very limit.
//!
//! Sources: FIBA Official Basketball Rules 2022 (Turkish federation's edition, own reading), Art.
//! 11.1 and 23.1 (out of bounds), 17.3.1 (throw-in), 26.1 with interpretations 26-4 and 26-5 (three
//! seconds), 29.1 (shot clock), 30.1 (backcourt); NBA Official Rules 2025-26, Rule 7 Sec. II, Rule 8
//! Sec. III, Rule 10 Sec. VI and IX; WNBA Official Rules 2025, the same rules; NCAA: 30 s by the
//! Men's Rules Changes 2020-21, Rule 2-11.6, and reports of the women's changes for 2019-20, the
//! rest from memory; NFHS Basketball Rules Book 2025-26, Rule 2-14, 7-6, 9-2-4, 9-7-1 to 9-7-3, 9-9.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    missing_docs,
    reason = "tests"
)]

use backcut::court::RuleSet;
use backcut::findings::{Settings, Severity};
use backcut::play::{Options, Play};
use backcut::set::Coverage;

/// Codes of the violations found under `rules` in a set of these players and actions.
fn violations(rules: RuleSet, players: &str, actions: &str) -> Vec<&'static str> {
    let text = format!(
        r#"{{ "backcut": 1, "title": "T", "court": "{}", "players": {{ {players} }},
              "beats": [ {{ "actions": [ {actions} ] }} ] }}"#,
        rules.name()
    );
    let play = Play::open(text.as_bytes(), &Options::default()).unwrap();
    backcut::findings::check(
        play.set(),
        play.court(),
        play.timeline(),
        &Settings::default(),
    )
    .into_iter()
    .filter(|f| f.severity == Severity::Violation)
    .map(|f| f.code())
    .collect()
}

fn held(seconds: f64) -> String {
    format!(
        r#"{{"who": 1, "do": "hold", "takes": {seconds}}}, {{"who": 1, "do": "pass", "to": 2}}"#
    )
}

const IN_THE_LANE: &str =
    r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}, "5": {"at": "mid paint"}"#;

/// FIBA 26.1.1, NBA 10-VI, WNBA 10-VI, NCAA 9, NFHS 9-7-1.
#[test]
fn three_seconds_in_the_lane_are_allowed_and_no_more() {
    for rules in RuleSet::ALL {
        // The hold starts at 0.2; the pass takes the rest: a count of about 2.9 and of 3.4.
        let (short, long) = (held(1.7), held(2.4));
        assert_eq!(violations(rules, IN_THE_LANE, &short), [""; 0], "{rules:?}");
        assert_eq!(
            violations(rules, IN_THE_LANE, &long),
            ["three-seconds"],
            "{rules:?}"
        );
    }
}

/// FIBA 26-5: no count during a throw-in; NFHS 9-7, 4-12-2 note: the same.
#[test]
fn a_throw_in_does_not_count_in_the_lane() {
    let players = r#""1": {"at": "top"}, "3": {"at": "right sideline throw-in", "ball": true}, "5": {"at": "mid paint"}"#;
    let late = r#"{"who": 3, "do": "hold", "takes": 3.5}, {"who": 3, "do": "pass", "to": 1}"#;
    for rules in RuleSet::ALL {
        assert_eq!(violations(rules, players, late), [""; 0], "{rules:?}");
    }
}

/// FIBA 26.1.1 (the lane lines belong to it) and 26.1.3 (both feet outside), NFHS 9-7-1 (one foot on
/// the line counts).
#[test]
fn a_foot_on_the_lane_line_is_in_the_lane() {
    for (beside, count) in [(0.05, 1), (0.30, 0)] {
        // FIBA's lane reaches 2.45 m from the axis.
        let players = format!(
            r#""1": {{"at": "top", "ball": true}}, "2": {{"at": "left wing"}}, "5": {{"at": [{}, 1.5]}}"#,
            2.45 + beside
        );
        let found = violations(RuleSet::Fiba, &players, &held(3.5));
        assert_eq!(found.len(), count, "{beside}");
    }
}

/// FIBA 17.3.1, NBA 8-III, NFHS 7-6, 9-2-4.
#[test]
fn a_throw_in_leaves_the_hands_within_five_seconds() {
    let players = r#""1": {"at": "top"}, "3": {"at": "right sideline throw-in", "ball": true}"#;
    let after = |seconds: f64| {
        format!(
            r#"{{"who": 3, "do": "hold", "takes": {seconds}}}, {{"who": 3, "do": "pass", "to": 1}}"#
        )
    };
    for rules in RuleSet::ALL {
        assert_eq!(
            violations(rules, players, &after(4.3)),
            [""; 0],
            "{rules:?}"
        );
        assert_eq!(
            violations(rules, players, &after(5.0)),
            ["throw-in-count"],
            "{rules:?}"
        );
    }
}

/// FIBA 29.1.1, NBA and WNBA 7-II: 24 s; NCAA 2-11: 30 s; NFHS 2-14: none.
#[test]
fn the_shot_leaves_before_the_shot_clock_ends() {
    let players = r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}"#;
    let shot = |seconds: f64| {
        format!(r#"{{"who": 1, "do": "hold", "takes": {seconds}}}, {{"who": 1, "do": "shot"}}"#)
    };
    for (rules, clock) in [
        (RuleSet::Fiba, Some(24.0)),
        (RuleSet::Nba, Some(24.0)),
        (RuleSet::Wnba, Some(24.0)),
        (RuleSet::NcaaMen, Some(30.0)),
        (RuleSet::NcaaWomen, Some(30.0)),
        (RuleSet::Nfhs, None),
    ] {
        let Some(clock) = clock else {
            assert_eq!(violations(rules, players, &shot(40.0)), [""; 0]);
            continue;
        };
        assert_eq!(
            violations(rules, players, &shot(clock - 1.5)),
            [""; 0],
            "{rules:?}"
        );
        assert_eq!(
            violations(rules, players, &shot(clock)),
            ["shot-clock"],
            "{rules:?}"
        );
    }
}

/// FIBA 30.1 with 28.1.2 and 2.4: the line itself is backcourt.
#[test]
fn the_ball_may_not_return_over_the_half_court_line() {
    let players = r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}"#;
    for (rules, frontcourt) in [
        (RuleSet::Fiba, 13.975 - 1.575),
        (RuleSet::Nba, 14.3002 - 1.6002),
        (RuleSet::Nfhs, 12.7762 - 1.6002),
    ] {
        let to = |y: f64| format!(r#"{{"who": 1, "do": "dribble", "to": [0, {y}]}}"#);
        assert_eq!(
            violations(rules, players, &to(frontcourt - 0.4)),
            [""; 0],
            "{rules:?}"
        );
        assert_eq!(
            violations(rules, players, &to(frontcourt)),
            ["backcourt"],
            "{rules:?}"
        );
    }
}

/// FIBA 11.1, 23.1; NFHS 7-1: the line is out; a team mate without the ball is no violation here.
#[test]
fn the_boundary_line_is_out_of_bounds_for_the_ball() {
    let players = r#""1": {"at": "right wing", "ball": true}, "2": {"at": "left wing"}"#;
    let to = |x: f64| format!(r#"{{"who": 1, "do": "dribble", "to": [{x}, 2]}}"#);
    // FIBA's sideline lies 7.5 m from the axis, a foot reaches 0.15 m.
    assert_eq!(violations(RuleSet::Fiba, players, &to(7.2)), [""; 0]);
    assert_eq!(
        violations(RuleSet::Fiba, players, &to(7.45)),
        ["out-of-bounds"]
    );
}

/// Whether a five-second call is likely in a set of these actions, with 1 and 2 at the top and the
/// wing.
fn guarded(rules: RuleSet, defence: &str, actions: &str) -> bool {
    let text = format!(
        r#"{{ "backcut": 1, "title": "T", "court": "{}", {defence} "players": {{
                "1": {{"at": "top", "ball": true}}, "2": {{"at": "left wing"}} }},
              "beats": [ {{ "actions": [ {actions} ] }} ] }}"#,
        rules.name()
    );
    let play = Play::open(text.as_bytes(), &Options::default()).unwrap();
    let defence = play.defence(Coverage::Chase);
    let found = play.findings_against(&defence, &Settings::default());
    found
        .iter()
        .any(|f| f.code() == "closely-guarded" && f.severity == Severity::Warning)
}

/// FIBA 27.1 and 27.2, NBA and WNBA 10 (none), NCAA 9-11.3 (2015-16) and 4-35.2, NFHS 4-10 and 9-10-1:
/// five seconds for a holder, where there is a count at all.
#[test]
fn a_closely_guarded_holder_has_five_seconds_where_the_rules_count_them() {
    let hold = |seconds: f64| {
        format!(
            r#"{{"id": "w", "who": 1, "do": "hold", "takes": {seconds}}}, {{"who": 1, "do": "pass", "to": 2}}"#
        )
    };
    for rules in RuleSet::ALL {
        let counts = !matches!(rules, RuleSet::Nba | RuleSet::Wnba);
        assert!(!guarded(rules, "", &hold(3.8)), "{rules:?}");
        assert_eq!(guarded(rules, "", &hold(5.6)), counts, "{rules:?}");
    }
    // Within 1 m by FIBA's book, within six feet by the schools' and colleges': X1 stands 1.8 m off,
    // from middle to middle.
    let sags = r#""defence": {"on": [{"id": "w", "who": "X1", "does": "sags"}]},"#;
    for (rules, near) in [
        (RuleSet::Fiba, false),
        (RuleSet::NcaaMen, true),
        (RuleSet::NcaaWomen, true),
        (RuleSet::Nfhs, true),
    ] {
        assert_eq!(guarded(rules, sags, &hold(6.5)), near, "{rules:?}");
    }
}

/// NFHS 9-10-1: a dribbler too; NCAA 9-11.3: not since 2015-16; FIBA 27.2: a dribble is an answer.
#[test]
fn a_closely_guarded_dribbler_has_five_seconds_by_one_book_only() {
    let dribble = r#"{"who": 1, "do": "dribble", "to": "right wing", "takes": 7}"#;
    for rules in RuleSet::ALL {
        assert_eq!(
            guarded(rules, "", dribble),
            rules == RuleSet::Nfhs,
            "{rules:?}"
        );
    }
}
