//! Runs the tool: a process with arguments, streams and an exit status.
#![allow(dead_code, reason = "each file of tests uses some of it")]

use serde_json::Value;
use std::io::{BufRead, BufReader, Write};
use std::path::PathBuf;
use std::process::{Child, Command, Output, Stdio};

/// The tool, in the folder of the demo.
pub(crate) fn tool() -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_backcut"));
    command.current_dir(env!("CARGO_MANIFEST_DIR"));
    command
}

/// Runs a line without input.
pub(crate) fn run(line: &str) -> Output {
    tool()
        .args(line.split_whitespace())
        .stdin(Stdio::null())
        .output()
        .unwrap()
}

/// Runs with `input` on standard input.
pub(crate) fn feed(line: &str, input: &[u8]) -> Output {
    let mut child = tool()
        .args(line.split_whitespace())
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    // The tool may stop reading a file that is too long: then the rest cannot be written.
    let _ = child.stdin.take().unwrap().write_all(input);
    child.wait_with_output().unwrap()
}

/// The first line that it says; what comes after is not read.
pub(crate) fn first_line(child: &mut Child) -> String {
    let mut line = String::new();
    let mut out = BufReader::new(child.stdout.take().unwrap());
    out.read_line(&mut line).unwrap();
    line
}

/// The exit status.
pub(crate) fn code(output: &Output) -> i32 {
    output.status.code().expect("ended by itself")
}

/// What it said.
pub(crate) fn words(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).unwrap()
}

/// What it said, as JSON.
pub(crate) fn json(bytes: &[u8]) -> Value {
    serde_json::from_slice(bytes).unwrap()
}

/// The names of the demo sets.
pub(crate) fn demo_sets() -> Vec<String> {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("sets");
    let mut names: Vec<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| format!("sets/{}", entry.unwrap().file_name().into_string().unwrap()))
        .collect();
    names.sort();
    names
}

/// A set file with one fault, in its second line.
pub(crate) const BROKEN: &[u8] = br#"{ "backcut": 1, "title": "T",
  "players": { "1": {"at": "top", "ball": true}, "2": {"at": "left wnig"} },
  "beats": [ { "actions": [ { "who": 1, "do": "pass", "to": 2 } ] } ] }"#;
