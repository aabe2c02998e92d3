//! Prints a hash over the bits of all frames of each set file named, one a line: what the native
//! build moves, for the wasm build to be held against.

use backcut::play::{Options, Play};
use std::io::{self, Write};

/// Film speed: often enough that no action falls between two frames.
const FPS: u32 = 60;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut out = io::stdout().lock();
    for file in std::env::args_os().skip(1) {
        for mirror in [false, true] {
            let options = Options {
                mirror,
                ..Options::default()
            };
            let play = Play::open(&std::fs::read(&file)?, &options)?;
            writeln!(out, "{:016x}", play.timeline().hash(FPS))?;
        }
    }
    Ok(())
}
