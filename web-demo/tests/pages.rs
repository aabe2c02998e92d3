//! What `backcut page` and `backcut site` write for those who put sets on pages and link to them.
//! How it plays is tested in browsers; here no built package is needed.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    reason = "a test stops at what it cannot read"
)]

use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

fn run(words: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_backcut"))
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .args(words)
        .stdin(Stdio::null())
        .output()
        .unwrap()
}

/// The demo site as its tool writes it, removed again at the end.
struct Site(PathBuf);

const BASE: &str = "http://club.example:8080/sets/";

impl Site {
    fn made(name: &str) -> Self {
        let out = std::env::temp_dir().join(format!("backcut-{name}-{}", std::process::id()));
        let output = run(&[
            "site",
            ".",
            out.to_str().unwrap(),
            "--base",
            BASE.trim_end_matches('/'),
        ]);
        assert!(
            output.status.success(),
            "{}",
            String::from_utf8_lossy(&output.stderr)
        );
        Self(out)
    }

    fn text(&self, path: &str) -> String {
        fs::read_to_string(self.0.join(path)).unwrap()
    }

    /// The file behind an address of the site.
    fn behind(&self, address: &str) -> PathBuf {
        self.0.join(address.strip_prefix(BASE).expect(address))
    }
}

impl Drop for Site {
    fn drop(&mut self) {
        fs::remove_dir_all(&self.0).unwrap();
    }
}

/// The value of `wanted` in the first tag of `html` that has all of `marks`.
fn attribute(html: &str, marks: &[&str], wanted: &str) -> Option<String> {
    let tag = html
        .split('<')
        .find(|tag| marks.iter().all(|mark| tag.contains(mark)))?;
    let (_, value) = tag.split_once(&format!(" {wanted}=\""))?;
    value.split_once('"').map(|(value, _)| value.to_owned())
}

fn sets() -> Vec<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("sets");
    fs::read_dir(folder)
        .unwrap()
        .map(|entry| {
            entry
                .unwrap()
                .path()
                .file_stem()
                .unwrap()
                .to_str()
                .unwrap()
                .to_owned()
        })
        .collect()
}

/// oEmbed 1.0, sections 2.3.4 "response parameters" and 2.3.4.4 "the rich type",
/// <https://oembed.com>.
#[test]
fn a_set_page_leads_to_an_oembed_answer_with_all_that_the_standard_requires() {
    let site = Site::made("oembed");
    for set in sets() {
        let page = site.text(&format!("playbook/{set}.html"));
        let link = [
            "link",
            "rel=\"alternate\"",
            "type=\"application/json+oembed\"",
        ];
        let address = attribute(&page, &link, "href").unwrap();
        let answer: Value =
            serde_json::from_slice(&fs::read(site.behind(&address)).unwrap()).unwrap();
        assert_eq!(
            (&answer["version"], &answer["type"]),
            (&"1.0".into(), &"rich".into())
        );
        let html = answer["html"].as_str().unwrap();
        assert!(answer["width"].as_u64() > Some(0) && answer["height"].as_u64() > Some(0));
        // A thumbnail has its address and both its sizes, or none of them.
        let thumbnail = site.behind(answer["thumbnail_url"].as_str().unwrap());
        assert_eq!(
            png_size(&thumbnail),
            (
                answer["thumbnail_width"].as_u64().unwrap(),
                answer["thumbnail_height"].as_u64().unwrap()
            )
        );
        let source = attribute(html, &["iframe"], "src").unwrap();
        assert!(source.starts_with(&format!("{BASE}backcut/frame.html#src=../sets/{set}.json")));
        for (name, value) in [("width", &answer["width"]), ("height", &answer["height"])] {
            let said = attribute(html, &["iframe"], name).unwrap();
            assert_eq!(Some(said.parse().unwrap()), value.as_u64());
        }
    }
}

/// Width and height from a PNG's first chunk: W3C, PNG specification, 11.2.1 IHDR.
fn png_size(path: &Path) -> (u64, u64) {
    let bytes = fs::read(path).unwrap();
    assert_eq!(&bytes[..8], b"\x89PNG\r\n\x1a\n");
    let number = |at: usize| u64::from(u32::from_be_bytes(bytes[at..at + 4].try_into().unwrap()));
    (number(16), number(20))
}

/// The four properties that the Open Graph protocol requires of every page, <https://ogp.me>.
#[test]
fn a_set_page_has_what_a_preview_needs() {
    let site = Site::made("preview");
    for set in sets() {
        let page = site.text(&format!("playbook/{set}.html"));
        let told = |name: &str| {
            attribute(&page, &["meta", &format!("property=\"{name}\"")], "content").unwrap()
        };
        let file: Value = serde_json::from_str(&site.text(&format!("sets/{set}.json"))).unwrap();
        assert_eq!(told("og:title"), file["title"].as_str().unwrap());
        assert_eq!(told("og:type"), "article");
        assert_eq!(told("og:url"), format!("{BASE}playbook/{set}.html"));
        assert_eq!(png_size(&site.behind(&told("og:image"))), (1200, 630));
        let card = attribute(&page, &["meta", "name=\"twitter:card\""], "content");
        assert_eq!(card.as_deref(), Some("summary_large_image"));
    }
}

#[test]
fn a_card_has_words_and_bodies_on_it() {
    let site = Site::made("card");
    let pixels = resvg::tiny_skia::Pixmap::load_png(site.0.join("posters/lighthouse.png")).unwrap();
    let dark = |x0: u32, x1: u32| {
        let at = |x, y| pixels.pixel(x, y).unwrap().demultiply();
        (x0..x1)
            .flat_map(|x| (0..630).map(move |y| (x, y)))
            .filter(|&(x, y)| at(x, y).red() < 60)
            .count()
    };
    // Without faces, or without a court, its half is as good as empty.
    // Left the title in ink, right the court with bodies in the offence's colour.
    assert!(dark(0, 400) > 1000, "{}", dark(0, 400));
    assert!(dark(430, 1200) > 1000, "{}", dark(430, 1200));
}

#[test]
fn a_set_page_leads_to_a_card_for_each_player() {
    let site = Site::made("roles");
    for set in sets() {
        let page = site.text(&format!("playbook/{set}.html"));
        let link = format!("href=\"../cards/{set}.html\"");
        assert!(page.contains(&link), "{set}");
        let cards = site.text(&format!("cards/{set}.html"));
        let file: Value = serde_json::from_str(&site.text(&format!("sets/{set}.json"))).unwrap();
        let players = file["players"].as_object().unwrap();
        assert_eq!(
            cards.matches("<article class=\"card\"").count(),
            players.len()
        );
        for n in players.keys() {
            assert!(cards.contains(&format!("id=\"player-{n}\"")), "{set} {n}");
        }
        assert!(cards.contains("href=\"../cards.css\"") && !cards.contains("{{"));
    }
    assert!(site.text("cards.css").contains("@media print"));
}

#[test]
fn links_from_the_site_open_on_a_page_that_is_in_no_index() {
    let site = Site::made("open");
    let page = site.text("open.html");
    assert!(page.contains("<meta name=\"robots\" content=\"noindex\">"));
    assert!(page.contains("src=\"open.js\"") && site.0.join("open.js").is_file());
    assert!(!page.contains("{{"), "a name without its value");
    for set in sets() {
        let page = site.text(&format!("playbook/{set}.html"));
        let share = attribute(&page, &["backcut-set", "src="], "share");
        assert_eq!(share.as_deref(), Some("../open.html"));
    }
}

#[test]
fn a_set_page_says_all_of_it_without_script() {
    let site = Site::made("words");
    for set in sets() {
        let page = site.text(&format!("playbook/{set}.html"));
        let (_, rest) = page.split_once("<backcut-set").unwrap();
        let (inside, _) = rest.split_once("</backcut-set>").unwrap();
        assert!(
            inside
                .split_once('>')
                .unwrap()
                .1
                .trim_start()
                .starts_with("<svg "),
            "{set}"
        );
        let file: Value = serde_json::from_str(&site.text(&format!("sets/{set}.json"))).unwrap();
        for beat in file["beats"].as_array().unwrap() {
            let title = beat["title"].as_str().unwrap();
            assert!(
                inside.contains(&format!("<strong>{title}</strong>")),
                "{set}: {title}"
            );
        }
        assert!(
            inside.contains(&format!("href=\"../sets/{set}.json\"")),
            "{set}"
        );
        assert!(!page.contains("{{"), "{set}: a name without its value");
    }
}

#[test]
fn an_address_that_is_none_is_refused() {
    for wrong in [
        "club.example",
        "ftp://club.example",
        "https://",
        "https://a\"b/",
    ] {
        let output = run(&["site", ".", "nowhere", "--base", wrong]);
        assert_eq!(output.status.code(), Some(2), "{wrong}");
        assert!(!Path::new("nowhere").exists());
    }
}

#[test]
fn a_page_of_a_faulty_file_is_not_written() {
    let out = std::env::temp_dir().join(format!("backcut-page-{}.html", std::process::id()));
    let good = "sets/turnstile.json";
    let output = run(&["page", good, "Cargo.toml", "-o", out.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(1));
    assert!(String::from_utf8_lossy(&output.stderr).contains("Cargo.toml"));
    assert!(output.stdout.is_empty() && !out.exists());
    let output = run(&["page"]);
    assert_eq!(output.status.code(), Some(2));
}

#[test]
fn a_page_in_spanish_has_its_set_told_in_spanish() {
    let site = Site::made("spanish");
    let page = site.text("notes/torniquete.html");
    assert!(page.contains("lang=\"es\""));
    assert!(page.contains("src=\"../sets/torniquete.json\""));
    let (_, beats) = page.split_once("<ol>").unwrap();
    let (beats, _) = beats.split_once("</ol>").unwrap();
    assert!(beats.contains("<strong>Por la puerta</strong> "));
    // No author said it.
    assert!(beats.contains("1 pasa a 2"), "{beats}");
    assert!(site.text("index.html").contains("notes/torniquete.html"));
    let told: Value = serde_json::from_str(&site.text("sets/torniquete.json")).unwrap();
    let english: Value = serde_json::from_str(&site.text("sets/turnstile.json")).unwrap();
    assert_eq!(told["players"], english["players"], "it is the same set");
}
