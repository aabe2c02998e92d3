//! What the tool says of reads, and its role cards.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    missing_docs,
    reason = "tests"
)]

mod runs;

use runs::{code, json, run, words};

#[test]
fn the_reads_are_held_against_each_coverage() {
    let text = words(&run("looks sets/gangway.json").stdout);
    assert!(
        text.contains("If they top-lock: X2 denies the first elbow."),
        "{text}"
    );
    assert!(text.contains("If they chase: as drawn."), "{text}");
    let table = json(&run("looks sets/gangway.json --json --coverage under").stdout);
    let row = &table["reads"][0];
    assert_eq!(
        (&row["coverage"], &row["line"]),
        (&"under".into(), &"1".into())
    );
    assert_eq!(row["asked"].as_array().unwrap().len(), 2);
    // Neither a set without reads nor a branch has anything to decide.
    for line in [
        "looks sets/fogbank.json",
        "looks sets/gangway.json --read 1",
    ] {
        let text = words(&run(line).stdout);
        assert!(!text.contains("Which read"), "{text}");
    }
}

#[test]
fn each_branch_is_checked_by_the_title_of_its_read() {
    let told = json(&run("check --json sets/turnstile.json").stdout);
    let reads = told["files"][0]["reads"].as_array().unwrap();
    assert_eq!(reads.len(), 3);
    let found = reads[2]["findings"].as_array().unwrap();
    assert!(!found.is_empty());
    let title = reads[2]["title"].as_str().unwrap();
    let text = words(&run("check sets/turnstile.json").stdout);
    assert!(text.contains(&format!(" {title}: ")), "{text}");
}

#[test]
fn cards_say_step_by_step_what_a_player_does() {
    let output = run("card sets/lighthouse.json --player 3");
    assert_eq!(code(&output), 0);
    let text = words(&output.stdout);
    assert!(text.starts_with("Lighthouse, 3: decoy\n"), "{text}");
    assert!(text.contains(" 1   1.1–5.2 s  Sprint off 5 and 1 to the top."));
    assert!(text.contains("Wait until 5 is still."));
    assert!(text.contains("If X2 sags: catch 4’s pass, then shoot off the screen."));
    assert!(!text.contains(", 4: "));
    let all = words(&run("card sets/lighthouse.json").stdout);
    for n in 1..=5 {
        assert!(all.contains(&format!("Lighthouse, {n}: ")), "{n}");
    }
    assert_eq!(code(&run("card sets/lighthouse.json --player 6")), 2);
    assert_eq!(code(&run("card sets/lighthouse.json --json")), 2);
}

#[test]
fn cards_speak_spanish_when_asked() {
    let text = words(&run("card sets/lighthouse.json --player 3 --lang es").stdout);
    assert!(text.starts_with("Lighthouse, 3: señuelo\n"), "{text}");
    assert!(text.contains("Espera a que 5 esté en posición."), "{text}");
    assert!(text.contains("1,1–5,2"), "{text}");
    let html = words(&run("card sets/lighthouse.json -o - --lang es").stdout);
    assert!(html.contains("<html lang=\"es\">"));
}

#[test]
fn the_page_of_cards_needs_nothing_and_runs_nothing() {
    let html = words(&run("card sets/turnstile.json -o -").stdout);
    assert_eq!(html.matches("<article class=\"card\"").count(), 5);
    assert_eq!(html.matches("<svg").count(), 5);
    for address in ["<script", "src=", "http://", "https://", "style=\""] {
        let bare = html.replace("http://www.w3.org/2000/svg", "");
        assert!(!bare.contains(address), "{address}");
    }
    let one = words(&run("card sets/turnstile.json -o - --player 4").stdout);
    assert_eq!(one.matches("<article class=\"card\"").count(), 1);
    assert!(one.contains("<strong>With 5, set a gate for 3 at the high post.</strong>"));
    assert!(one.contains("class=\"caution\"") && one.contains("arms in"));
}

#[test]
fn words_of_a_card_are_nine_points_on_paper() {
    let html = words(&run("card sets/turnstile.json -o -").stdout);
    let (_, print) = html.rsplit_once("@media print").unwrap();
    let sizes = print.split("font-size: ").skip(1);
    let points = sizes.map(|s| s.split_once("pt").unwrap().0.parse::<f64>().unwrap());
    assert!(points.fold(f64::MAX, f64::min) >= 9.0);
}

#[test]
fn a_card_can_be_that_of_a_branch() {
    let text = words(&run("card sets/turnstile.json --read 1 --player 3").stdout);
    assert!(text.contains("Fade to the right slot."), "{text}");
}
