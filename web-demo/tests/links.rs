//! Links from the command line: made, opened, refused.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    missing_docs,
    reason = "tests"
)]

mod runs;

use runs::{code, demo_sets, feed, json, run, words};

#[test]
fn a_link_opens_to_the_set_it_was_made_of_and_says_what_to_show() {
    for set in demo_sets() {
        let made = run(&format!("link {set}"));
        assert_eq!(code(&made), 0, "{}", words(&made.stderr));
        let link = words(&made.stdout);
        assert!(link.starts_with("#set=1.") && link.len() < 2000, "{link}");
        let opened = run(&format!("open {link}"));
        assert_eq!(code(&opened), 0, "{}", words(&opened.stderr));
        assert!(opened.stderr.is_empty(), "nothing was asked for");
        assert_eq!(words(&feed("link -", &opened.stdout).stdout), link, "{set}");
    }
    let made = run(
        "link sets/turnstile.json --at 3.4 --until 6 --beat 2 --read 1 --follow 3,5 \
                    --coverage switch --speed 0.5 --paused --base https://club.example/a.html",
    );
    let link = words(&made.stdout);
    assert!(link.starts_with("https://club.example/a.html#set=1."));
    assert!(link.ends_with("&t=3.4,6&beat=2&read=1&follow=3,5&coverage=switch&speed=0.5&paused\n"));
    let opened = feed("open -", link.as_bytes());
    assert_eq!(
        words(&opened.stderr).trim(),
        "The link asks for: 3.4 to 6 s, beat 2, read 1, follow 3, follow 5, against switch, \
         0.5 times the speed, paused."
    );
}

#[test]
fn a_mirrored_link_holds_the_mirrored_set() {
    let made = run("link sets/gangway.json --mirror");
    let opened = run(&format!("open {}", words(&made.stdout)));
    let again = feed("link - --mirror", &opened.stdout);
    assert_eq!(again.stdout, run("link sets/gangway.json").stdout);
    assert_ne!(again.stdout, made.stdout);
}

#[test]
fn a_link_tells_its_sizes() {
    let told = json(&run("link sets/tidepool.json --json").stdout);
    let link = told["link"].as_str().unwrap();
    assert_eq!(told["characters"], link.len());
    assert!(told["text"].as_u64().unwrap() > 3 * link.len() as u64);
    assert!(told["file"].as_u64().unwrap() > 1000);
}

#[test]
fn a_damaged_link_writes_nothing_and_says_so() {
    let link = words(&run("link sets/tidepool.json").stdout);
    let cut = &link.trim()[..link.len() / 2];
    let folder = std::env::temp_dir().join(format!("backcut-link-{}", std::process::id()));
    let output = run(&format!("open {cut} -o {}", folder.display()));
    assert_eq!(code(&output), 1);
    assert!(words(&output.stderr).contains("[link-damaged]"));
    assert!(output.stdout.is_empty() && !folder.exists());
    for (line, expected) in [
        ("open", 2),
        ("open hello", 1),
        ("link sets/tidepool.json --until 3 --at 4", 2),
        ("link sets/tidepool.json --follow 6", 2),
        ("link sets/tidepool.json --coverage all", 2),
        ("time sets/tidepool.json --paused", 2),
    ] {
        assert_eq!(code(&run(line)), expected, "{line}");
    }
    assert_eq!(code(&feed("open -", &[b'A'; 100_000])), 1);
    assert_eq!(code(&feed("open -", &[0xff; 10])), 1);
}
