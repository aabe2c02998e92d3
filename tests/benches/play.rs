//! How long it takes natively to open each demo set, and to say where everybody is. Prints
//! `name, microseconds to open, nanoseconds a frame`, medians; never a test.

use backcut::play::{Options, Play};
use backcut::timeline::Frame;
use std::error::Error;
use std::hint::black_box;
use std::io::{self, Write};
use std::time::{Duration, Instant};

const OPENINGS: usize = 101;
const FRAMES: u32 = 20_000;

fn main() -> Result<(), Box<dyn Error>> {
    let mut out = io::stdout().lock();
    let sets = concat!(env!("CARGO_MANIFEST_DIR"), "/../web-demo/sets");
    let mut files: Vec<_> = std::fs::read_dir(sets)?
        .map(|entry| entry.map(|e| e.path()))
        .collect::<Result<_, _>>()?;
    files.sort();
    for file in files {
        let text = std::fs::read(&file)?;
        let options = Options::default();
        let play = Play::open(&text, &options)?;
        let mut openings: Vec<Duration> = (0..OPENINGS)
            .map(|_| {
                let start = Instant::now();
                let _ = black_box(Play::open(black_box(&text), &options));
                start.elapsed()
            })
            .collect();
        openings.sort();
        let open = openings.get(OPENINGS / 2).copied().unwrap_or_default();
        let mut frame = Frame::default();
        let step = play.timeline().duration() / f64::from(FRAMES);
        let start = Instant::now();
        for i in 0..FRAMES {
            play.timeline()
                .frame(black_box(f64::from(i) * step), &mut frame);
            black_box(&frame);
        }
        let each = start.elapsed().as_secs_f64() * 1e9 / f64::from(FRAMES);
        let name = file.file_stem().unwrap_or_default().to_string_lossy();
        writeln!(out, "{name}, {:.0}, {each:.0}", open.as_secs_f64() * 1e6)?;
    }
    Ok(())
}
