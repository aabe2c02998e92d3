//! What each stage costs: a long set (25 actions) and the demo sets compiled, one instant asked
//! for, pictures made, the defence played. Prints a table of medians; never a test. `RESULTS.md`
//! beside it has the last figures and what is aimed at. `cargo bench … -- WORD` measures the rows
//! with that word only.

use backcut::document;
use backcut::fault::Faults;
use backcut::play::{Options, Play};
use backcut::scene::{Scene, StripView};
use backcut::set::{Coverage, PlayerId};
use backcut::svg::Palette;
use backcut::timeline::Frame;
use std::error::Error;
use std::fs;
use std::hint::black_box;
use std::io::{self, Write};
use std::time::{Duration, Instant};

const LONG: &[u8] = include_bytes!("sets/long.json");

/// CSS pixels.
const WIDTH: f64 = 800.0;
/// As long as a batch takes at least: the clock is coarse.
const BATCH: Duration = Duration::from_millis(1);
const BATCHES: usize = 101;

/// Writes one row: the median over many batches, and the fastest.
fn row<T>(name: &str, mut act: impl FnMut() -> T) -> io::Result<()> {
    let mut words = std::env::args().skip(1).filter(|a| !a.starts_with('-'));
    if words.next().is_some_and(|word| !name.contains(&word)) {
        return Ok(());
    }
    let mut batch = |times: u32| {
        let start = Instant::now();
        for _ in 0..times {
            black_box(act());
        }
        start.elapsed()
    };
    let mut times = 1;
    while batch(times) < BATCH {
        times *= 2;
    }
    let mut taken: Vec<Duration> = (0..BATCHES).map(|_| batch(times)).collect();
    taken.sort();
    let each = |i: usize| {
        let whole = taken.get(i).copied().unwrap_or_default();
        whole.as_secs_f64() * 1e6 / f64::from(times)
    };
    let (median, fastest) = (each(BATCHES / 2), each(0));
    writeln!(
        io::stdout().lock(),
        "{name:<22} {median:>10.3} {fastest:>10.3}"
    )
}

/// Instants of a set by the golden section, so that they fall everywhere and none near the last.
fn instants(play: &Play) -> impl FnMut() -> f64 + use<> {
    let (duration, mut share) = (play.timeline().duration(), 0.0);
    move || {
        share = (share + 0.618_033_988_749_895) % 1.0;
        share * duration
    }
}

fn compiling() -> Result<(), Box<dyn Error>> {
    let options = Options::default();
    row("25 actions: read", || document::read(black_box(LONG)))?;
    row("25 actions: compile", || {
        Play::open(black_box(LONG), &options)
    })?;
    let sets = concat!(env!("CARGO_MANIFEST_DIR"), "/../web-demo/sets");
    let mut files: Vec<_> = fs::read_dir(sets)?
        .map(|entry| entry.map(|e| e.path()))
        .collect::<Result<_, _>>()?;
    files.sort();
    for file in files {
        let text = fs::read(&file)?;
        let name = file.file_stem().unwrap_or_default().to_string_lossy();
        row(&format!("{name}: compile"), || {
            Play::open(black_box(&text), &options)
        })?;
    }
    Ok(())
}

fn showing(play: &Play) -> io::Result<()> {
    let view = play.view(WIDTH);
    let strip = StripView {
        width_px: WIDTH,
        ..StripView::default()
    };
    let (mut frame, mut scene) = (Frame::default(), Scene::default());
    let mut t = instants(play);
    row("state of all", || {
        play.timeline().frame(t(), &mut frame);
        frame.ball.z
    })?;
    row("state of one", || {
        play.timeline().player(PlayerId::ALL[0], t())
    })?;
    row("scene of the movers", || {
        play.movers_scene(None, t(), &view, &mut scene);
    })?;
    row("scene of the strip", || play.strip_scene(None, &strip))?;
    row("svg of an instant", || {
        play.poster(None, t(), WIDTH, &Palette::light())
    })?;
    row("svg of a beat", || {
        play.beat_poster(1, WIDTH, &Palette::print())
    })?;
    let defence = play.defence(Coverage::Chase);
    row("state of all ten", || {
        let t = t();
        play.timeline().frame(t, &mut frame);
        let five = PlayerId::ALL.map(|man| defence.state(man, t));
        (frame.ball.z, five)
    })
}

/// A demo set of ten seconds under one coverage, and what it leaves open.
fn defending() -> Result<(), Box<dyn Error>> {
    let ten = include_bytes!("../../web-demo/sets/tidepool.json");
    let play = Play::open(ten, &Options::default()).map_err(|faults| faults.to_string())?;
    let seconds = play.timeline().duration();
    assert!((9.8..10.2).contains(&seconds), "{seconds} s");
    row("ten seconds: five", || play.defence(Coverage::Chase))?;
    let defence = play.defence(Coverage::Chase);
    row("ten seconds: looks", || play.looks(&defence))?;
    Ok(())
}

fn main() -> Result<(), Box<dyn Error>> {
    let play =
        Play::open(LONG, &Options::default()).map_err(|faults: Faults| faults.to_string())?;
    assert_eq!(play.set().actions().count(), 25);
    writeln!(
        io::stdout().lock(),
        "{:<22} {:>10} {:>10}",
        "µs",
        "median",
        "fastest"
    )?;
    compiling()?;
    showing(&play)?;
    defending()?;
    Ok(())
}
