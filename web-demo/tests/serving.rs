//! What the tool serves: a folder, and the page of a file that is being written.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    missing_docs,
    reason = "tests"
)]

mod runs;

use runs::{BROKEN, first_line, tool};
use serde_json::Value;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::PathBuf;
use std::process::Stdio;

/// A server of the tool, ended when the test ends.
struct Server {
    child: std::process::Child,
    address: String,
}

impl Server {
    fn start(line: &str) -> Self {
        let mut child = tool()
            .args(line.split_whitespace())
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        let address = first_line(&mut child)
            .trim()
            .trim_start_matches("http://")
            .trim_end_matches('/')
            .to_owned();
        Self { child, address }
    }

    fn ask(&self, path: &str) -> TcpStream {
        let mut stream = TcpStream::connect(&self.address).unwrap();
        write!(
            stream,
            "GET {path} HTTP/1.1\r\nHost: {}\r\n\r\n",
            self.address
        )
        .unwrap();
        stream
    }

    fn get(&self, path: &str) -> String {
        let mut text = String::new();
        self.ask(path).read_to_string(&mut text).unwrap();
        text
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.child.kill().unwrap();
        self.child.wait().unwrap();
    }
}

#[test]
fn a_served_folder_gives_its_files_and_nothing_else() {
    let server = Server::start("serve . --port 0");
    assert!(
        server
            .get("/sets/lighthouse.json")
            .contains("\"Lighthouse\"")
    );
    assert!(server.get("/../Cargo.toml").starts_with("HTTP/1.1 404"));
    assert!(server.get("/sets").starts_with("HTTP/1.1 308"));
    assert!(server.get("/nothing").starts_with("HTTP/1.1 404"));
}

#[test]
fn the_page_of_a_file_tells_its_faults_as_they_come_and_go() {
    let path = std::env::temp_dir().join(format!("backcut-show-{}.json", std::process::id()));
    let good =
        std::fs::read(PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("sets/paper-boats.json"))
            .unwrap();
    std::fs::write(&path, &good).unwrap();
    let server = Server::start(&format!("show {} --port 0", path.display()));
    assert!(server.get("/").contains("/page.js"));
    assert!(server.get("/set.json").contains("Paper Boats"));
    let mut events = BufReader::new(server.ask("/events")).lines();
    let mut next = || loop {
        let line = events.next().unwrap().unwrap();
        if let Some(data) = line.strip_prefix("data: ") {
            return serde_json::from_str::<Value>(data).unwrap();
        }
    };
    assert_eq!(next()["title"], "Paper Boats");
    std::fs::write(&path, BROKEN).unwrap();
    let told = next();
    // A writer may be seen half way: then the next event tells the whole.
    let told = if told["faults"][0]["code"] == "unknown-spot" {
        told
    } else {
        next()
    };
    assert_eq!(told["faults"][0]["line"], 2);
    std::fs::write(&path, &good).unwrap();
    let mut state = next();
    while state["title"].is_null() {
        state = next();
    }
    assert_eq!(state["title"], "Paper Boats");
    std::fs::remove_file(path).unwrap();
}
