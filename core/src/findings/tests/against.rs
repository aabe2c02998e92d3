use super::*;
use crate::court::RuleSet;
use crate::set::Coverage;

fn against(text: &str, coverage: Coverage) -> Vec<Finding> {
    let play = open(text);
    check_against(
        play.set(),
        play.court(),
        play.timeline(),
        &play.defence(coverage),
        &Settings::default(),
    )
}

fn defenders(f: &Finding) -> Vec<u8> {
    f.defenders.iter().map(|p| p.number()).collect()
}

/// 1 holds for so long, then passes; `more` belongs to the head of the file.
fn held(rules: RuleSet, seconds: f64, more: &str) -> String {
    text(
        &format!(r#""court": "{}"{more}"#, rules.name()),
        r#""1": {"at": "top", "ball": true}, "2": {"at": "left wing"}"#,
        &format!(
            r#"{{"id": "wait", "who": 1, "do": "hold", "takes": {seconds}}}, {{"who": 1, "do": "pass", "to": 2}}"#
        ),
    )
}

#[test]
fn a_holder_with_a_defender_near_runs_out_of_time_where_the_rules_count() {
    let long = against(&held(RuleSet::Fiba, 5.3, ""), Coverage::Chase);
    let guarded = has(&long, "closely-guarded");
    assert_eq!(guarded.severity, Severity::Warning);
    assert_eq!((numbers(&guarded), defenders(&guarded)), (vec![1], vec![1]));
    let nearly = against(&held(RuleSet::Fiba, 4.1, ""), Coverage::Chase);
    assert_eq!(has(&nearly, "closely-guarded").severity, Severity::Note);
    has_no(
        &against(&held(RuleSet::Fiba, 3.2, ""), Coverage::Chase),
        "closely-guarded",
    );
    has_no(
        &against(&held(RuleSet::Nba, 9.0, ""), Coverage::Chase),
        "closely-guarded",
    );
}

#[test]
fn a_defender_who_sags_guards_closely_only_where_six_feet_are_close() {
    let sags = r#", "defence": {"on": [{"id": "wait", "who": "X1", "does": "sags"}]}"#;
    let found = |rules| against(&held(rules, 6.0, sags), Coverage::Chase);
    has_no(&found(RuleSet::Fiba), "closely-guarded");
    has(&found(RuleSet::Nfhs), "closely-guarded");
}

#[test]
fn a_dribble_stops_the_count_but_not_in_every_rule_book() {
    let dribbled = |rules: RuleSet| {
        let set = text(
            &format!(r#""court": "{}""#, rules.name()),
            r#""1": {"at": "top", "ball": true}, "2": {"at": "left corner"}"#,
            r#"{"who": 1, "do": "dribble", "to": "right wing", "takes": 7}, {"who": 1, "do": "pass", "to": 2}"#,
        );
        against(&set, Coverage::Chase)
    };
    has_no(&dribbled(RuleSet::NcaaMen), "closely-guarded");
    has(&dribbled(RuleSet::Nfhs), "closely-guarded");
}

#[test]
fn a_pass_into_hands_is_stolen_and_a_short_one_is_not() {
    // X2 shoots the gap under both elbows and is on the wing before 2.
    let gangway = include_str!("../../../../web-demo/sets/gangway.json");
    let stolen = against(gangway, Coverage::Under);
    let stolen = has(&stolen, "pass-stolen");
    assert_eq!(numbers(&stolen), [1, 2]);
    assert_eq!(defenders(&stolen), [2]);
    assert_eq!(stolen.coverage, Some(Coverage::Under));
    has_no(&against(gangway, Coverage::Chase), "pass-stolen");
    let players = r#""1": {"at": "top", "ball": true}, "2": {"at": "right wing"},
        "3": {"at": "left corner"}, "4": {"at": "left low wing"}, "5": {"at": "left slot"}"#;
    let actions = r#"{"who": 1, "do": "pass", "to": 5}, {"who": 5, "do": "shot"}"#;
    let swing = against(&text("", players, actions), Coverage::Show);
    has_no(&swing, "pass-stolen");
    has_no(&swing, "lane-shut");
}

#[test]
fn the_hand_in_the_lane_is_not_always_the_receivers_own_defender() {
    let players =
        r#""1": {"at": "right wing", "ball": true}, "2": {"at": [2, 9]}, "3": {"at": [-3, 7]}"#;
    let across = against(
        &text("", players, r#"{"who": 1, "do": "pass", "to": 3}"#),
        Coverage::Chase,
    );
    let shut = has(&across, "lane-shut");
    assert_eq!((numbers(&shut), defenders(&shut)), (vec![1, 3], vec![2]));
}

#[test]
fn a_receiver_who_gets_open_a_moment_later_was_passed_to_too_soon() {
    let early = |lag: f64| {
        let actions = format!(
            r#"{{"who": 5, "do": "screen", "kind": "back", "for": 2, "at": [5.3, 1.4]}},
               {{"id": "cut", "who": 2, "do": "cut", "off": 5, "to": "top", "free": true}},
               {{"who": 1, "do": "pass", "to": 2, "free": true,
                 "with": {{"id": "cut", "edge": "pass-by", "lag": {lag}, "mine": "release"}}}},
               {{"who": 2, "do": "shot"}}"#
        );
        let players = r#""1": {"at": "right corner", "ball": true}, "2": {"at": "right low wing"},
            "3": {"at": "top"}, "4": {"at": "right elbow"}, "5": {"at": "right block"}"#;
        against(&text("", players, &actions), Coverage::Chase)
    };
    let soon = has(&early(-0.4), "pass-too-soon");
    assert_eq!((numbers(&soon), defenders(&soon)), (vec![1, 2], vec![2]));
    has_no(&early(0.2), "pass-too-soon");
}

#[test]
fn a_catch_with_a_defender_at_arms_length_is_tight() {
    // 5 has screened, X5 is at the shoulder when the ball comes late, and not yet when it comes soon.
    let passed = |lag: f64| {
        let actions = format!(
            r#"{{"who": 5, "do": "screen", "kind": "pin-down", "for": 2, "at": [2.0, 2.9]}},
               {{"id": "cut", "who": 2, "do": "cut", "off": 5, "to": "right wing", "pace": "jog"}},
               {{"who": 1, "do": "pass", "to": 5, "free": true,
                 "with": {{"id": "cut", "edge": "pass-by", "lag": {lag}, "mine": "release"}}}},
               {{"who": 5, "do": "shot"}}"#
        );
        let players = r#""1": {"at": "right elbow", "ball": true}, "2": {"at": "right slot"},
            "3": {"at": "left block"}, "4": {"at": "right wing"}, "5": {"at": "left wing"}"#;
        against(&text("", players, &actions), Coverage::Chase)
    };
    let tight = has(&passed(1.5), "tight-catch");
    assert_eq!((numbers(&tight), defenders(&tight)), (vec![1, 5], vec![5]));
    has_no(&passed(0.3), "tight-catch");
}

const BACK: &str = r#""1": {"at": "right slot", "ball": true}, "2": {"at": "right block"},
    "3": {"at": "left block"}, "4": {"at": "left low wing"}, "5": {"at": "low paint"}"#;

/// 5 screens at the left slot for 2, who runs by without waiting, or waits.
fn runs_by(cut: &str) -> Vec<Finding> {
    let actions = format!(
        r#"{{"who": 5, "do": "screen", "kind": "pin-down", "for": 2, "at": [-5.7, 5.9]}},
           {{"id": "cut", "who": 2, "do": "cut", "off": 5, "to": "left block" {cut}}}"#
    );
    against(&text("", BACK, &actions), Coverage::TopLock)
}

#[test]
fn a_screen_that_lands_before_a_moving_defender_leaves_too_little_room() {
    let close = has(&runs_by(r#", "free": true"#), "screen-too-close");
    assert_eq!((numbers(&close), defenders(&close)), (vec![5, 2], vec![2]));
    assert!(matches!(close.what, What::ScreenTooClose { moving: true, room, due } if room < due));
    has_no(&runs_by(""), "screen-too-close");
}

#[test]
fn who_never_gets_to_a_screen_is_owed_no_room() {
    // X2 goes under and passes a step from 5.
    let players = r#""1": {"at": "left wing", "ball": true}, "2": {"at": "right slot"},
        "3": {"at": "left block"}, "4": {"at": "left corner"}, "5": {"at": "top"}"#;
    let actions = r#"{"who": 5, "do": "screen", "kind": "away", "for": 2, "at": [-3.1, 1.6]},
        {"id": "cut", "who": 2, "do": "cut", "off": 5, "to": "top", "pace": "sprint"},
        {"who": 4, "do": "cut", "kind": "backdoor", "to": "rim"},
        {"who": 1, "do": "pass", "to": 4, "free": true,
          "with": {"id": "cut", "edge": "pass-by", "lag": -0.3, "mine": "release"}},
        {"who": 4, "do": "shot"}"#;
    let found = against(&text("", players, actions), Coverage::Under);
    has_no(&found, "screen-too-close");
}

#[test]
fn a_screen_behind_a_defender_who_looks_away_needs_a_step() {
    let players = r#""1": {"at": "top", "ball": true}, "2": {"at": "right wing"},
        "3": {"at": "left elbow"}, "4": {"at": "left block"}, "5": {"at": "left slot"}"#;
    let screen = |at: &str| {
        let actions = format!(
            r#"{{"who": 5, "do": "screen", "kind": "pin-down", "for": 2, "at": {at}}},
               {{"who": 2, "do": "cut", "off": 5, "to": "left elbow", "pace": "sprint", "free": true}}"#
        );
        against(&text("", players, &actions), Coverage::Chase)
    };
    let blind = has(&screen("[1.4, 5.1]"), "screen-too-close");
    assert_eq!((numbers(&blind), defenders(&blind)), (vec![5, 2], vec![2]));
    assert!(matches!(blind.what, What::ScreenTooClose { moving: false, room, due } if room < due));
    has_no(&screen("[0.4, 5.1]"), "screen-too-close");
}

#[test]
fn a_screener_who_runs_into_the_screened_is_called_and_one_who_goes_round_is_not() {
    let players = r#""1": {"at": "left block", "ball": true}, "2": {"at": "right slot"},
        "3": {"at": "right wing"}, "4": {"at": "right low wing"}, "5": {"at": "left slot"}"#;
    let screen = |at: &str| {
        let actions = format!(
            r#"{{"who": 5, "do": "screen", "kind": "cross", "for": 2, "at": {at}}},
               {{"who": 2, "do": "cut", "off": 5, "to": "low paint", "pace": "sprint"}}"#
        );
        against(&text("", players, &actions), Coverage::Chase)
    };
    let contact = has(&screen("[4.3, 2.4]"), "screen-contact");
    assert_eq!(contact.severity, Severity::Violation);
    assert_eq!((numbers(&contact), defenders(&contact)), (vec![5], vec![2]));
    has_no(&screen("[5.5, 2.4]"), "screen-contact");
}

#[test]
fn a_cutter_who_runs_over_a_helper_answers_for_it() {
    // X4 keeps the lane shut below the ring's front.
    let run = |to: &str| {
        let actions = format!(
            r#"{{"who": 5, "do": "screen", "kind": "back", "for": 2, "at": [-5.7, 6.3]}},
               {{"id": "cut", "who": 2, "do": "cut", "off": 5, "to": "{to}", "free": true}},
               {{"who": 1, "do": "pass", "to": 2, "free": true,
                 "with": {{"id": "cut", "edge": "pass-by", "lag": 0.7, "mine": "release"}}}},
               {{"who": 2, "do": "shot"}}"#
        );
        let players = r#""1": {"at": "left elbow", "ball": true}, "2": {"at": "left slot"},
            "3": {"at": "top"}, "4": {"at": "right block"}, "5": {"at": "low paint"}"#;
        against(&text("", players, &actions), Coverage::Chase)
    };
    let over = has(&run("rim"), "runs-into");
    assert_eq!((numbers(&over), defenders(&over)), (vec![2], vec![4]));
    has_no(&run("left low wing"), "runs-into");
}

#[test]
fn a_defender_who_runs_into_a_cutter_is_not_run_into() {
    // X5 comes across 2 on the way to the ring.
    let players = r#""1": {"at": "right corner", "ball": true}, "2": {"at": "left elbow"},
        "3": {"at": "left corner"}, "4": {"at": "left low wing"}, "5": {"at": "right slot"}"#;
    let actions = r#"{"who": 5, "do": "screen", "kind": "cross", "for": 2, "at": [1.1, 1.9]},
        {"id": "cut", "who": 2, "do": "cut", "off": 5, "to": "right corner", "pace": "jog", "free": true},
        {"who": 4, "do": "cut", "kind": "backdoor", "to": "rim"},
        {"who": 1, "do": "pass", "to": 4, "free": true,
          "with": {"id": "cut", "edge": "pass-by", "lag": 0.5, "mine": "release"}},
        {"who": 4, "do": "shot"}"#;
    let set = text("", players, actions);
    let met = open(&set)
        .defence(Coverage::Chase)
        .contacts()
        .iter()
        .any(|c| {
            (c.who.number(), c.with.number()) == (5, 2) && c.closing > Settings::default().contact
        });
    assert!(met);
    let found = against(&set, Coverage::Chase);
    let into = of(&found, "runs-into");
    assert!(
        into.iter()
            .all(|f| (numbers(f), defenders(f)) != (vec![2], vec![5])),
        "{into:?}"
    );
}

#[test]
fn a_screener_who_runs_into_somebody_else_is_no_moving_screen() {
    let players = r#""1": {"at": "top", "ball": true}, "2": {"at": "low paint"},
        "3": {"at": "left elbow"}, "4": {"at": "right block"}, "5": {"at": "left wing"}"#;
    let actions = r#"{"who": 5, "do": "screen", "kind": "cross", "for": 2, "at": [2.2, 3.5]},
        {"who": 2, "do": "cut", "off": 5, "to": "left low wing", "pace": "jog"}"#;
    let own = against(&text("", players, actions), Coverage::Chase);
    has_no(&own, "screen-contact");
    let into = has(&own, "runs-into");
    assert_eq!((numbers(&into), defenders(&into)), (vec![5], vec![5]));
}

#[test]
fn a_decoy_far_from_the_ring_pulls_help_and_one_at_the_ring_pulls_none() {
    let lighthouse = include_str!("../../../../web-demo/sets/lighthouse.json");
    for coverage in [Coverage::Chase, Coverage::Switch, Coverage::Under] {
        has_no(&against(lighthouse, coverage), "decoy-ignored");
    }
    let players = r#""1": {"at": "left low wing", "ball": true}, "2": {"at": "left wing"},
        "3": {"at": "right block"}, "4": {"at": "right corner"}, "5": {"at": "left block"}"#;
    let actions = r#"{"who": 5, "do": "screen", "kind": "pin-down", "for": 2, "at": [-1.1, 0.5]},
        {"id": "cut", "who": 2, "do": "cut", "off": 5, "to": "right corner", "free": true},
        {"who": 4, "do": "cut", "kind": "backdoor", "to": "rim"},
        {"who": 1, "do": "pass", "to": 4, "free": true,
          "with": {"id": "cut", "edge": "pass-by", "lag": 0.4, "mine": "release"}},
        {"who": 4, "do": "shot"}"#;
    let ignored = against(&text("", players, actions), Coverage::Under);
    assert_eq!(numbers(&has(&ignored, "decoy-ignored")), [2, 4]);
    // Who gets the ball in the end is no decoy.
    let fed = actions.replace(
        r#"{"who": 4, "do": "shot"}"#,
        r#"{"who": 4, "do": "pass", "to": 2}, {"who": 2, "do": "shot"}"#,
    );
    has_no(
        &against(&text("", players, &fed), Coverage::Under),
        "decoy-ignored",
    );
}

#[test]
fn a_set_whose_every_chance_is_contested_says_so() {
    let shot = |at: &str| {
        let players = format!(r#""1": {{"at": "left wing", "ball": true}}, "2": {{"at": {at}}}"#);
        let actions = r#"{"who": 1, "do": "pass", "to": 2}, {"who": 2, "do": "shot"}"#;
        against(&text("", &players, actions), Coverage::Chase)
    };
    let post = shot(r#""left block""#);
    assert_eq!(numbers(&has(&post, "no-look")), [2]);
    // A skip to the far corner finds help half way to the ring.
    let far = shot(r#""right corner""#);
    has_no(&far, "no-look");
}

#[test]
fn what_needs_defenders_names_its_coverage_in_the_sentence() {
    let play = open(&held(RuleSet::Fiba, 5.3, ""));
    let found = play.findings_against(&play.defence(Coverage::Switch), &Settings::default());
    let guarded = has(&found, "closely-guarded");
    let told = play.finding(&guarded);
    assert!(
        told.starts_with("Against five who stay with their own: X1 stays close to 1 for 5."),
        "{told}"
    );
    assert!(told.ends_with("the referee decides."), "{told}");
    let gangway = open(include_str!("../../../../web-demo/sets/gangway.json"));
    let found = gangway.findings_against(&gangway.defence(Coverage::Under), &Settings::default());
    assert!(!found.is_empty());
    for finding in &found {
        let told = gangway.finding(finding);
        assert!(told.starts_with("If they go under: "), "{told}");
    }
    let cure = play.cure(&guarded).unwrap();
    assert!(cure.starts_with("Let 1 hold for "), "{cure}");
    for alone in &judge(&play) {
        assert_eq!(alone.coverage, None);
        assert!(alone.defenders.is_empty());
    }
}
