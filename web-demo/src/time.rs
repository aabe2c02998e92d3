//! `backcut time`: when everything happens, what has time to spare and what holds it up.

use crate::Failure;
use crate::args::{Overrides, Source};
use crate::catalogue::Catalogue;
use backcut::branch::Dropped;
use backcut::play::{Branched, Play};
use backcut::set::{Edge, Mark, PlayerId, Set, SetPlace, Target};
use backcut::timeline::{TieEnd, TimedAction, Timeline};
use backcut::words;
use serde::ser::SerializeMap;
use serde::{Serialize, Serializer};
use std::io::{self, Write};

/// Prints the timetable.
///
/// # Errors
/// When the file has faults or the output cannot be written.
pub(crate) fn run(
    file: &Source,
    overrides: Overrides,
    json: bool,
    out: &mut dyn Write,
) -> Result<(), Failure> {
    let branch = file.branch(&file.read()?, overrides)?;
    let play = &branch.play;
    if json {
        serde_json::to_writer(&mut *out, &timetable(&branch))?;
        out.write_all(b"\n")?;
    } else {
        let told = Catalogue::new(play.voice());
        write_table(out, play, &told)?;
        write_forks(out, &branch, &told)?;
    }
    Ok(())
}

#[derive(Serialize)]
struct Timetable {
    duration: f64,
    actions: Vec<Row>,
    ties: Vec<Tie>,
    /// When the reads of this branch were made.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    forks: Vec<f64>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    reads: Vec<Fork>,
}

/// A read that leaves this line.
#[derive(Serialize)]
struct Fork {
    title: String,
    /// When it is made; `None`: its instant never comes.
    t: Option<f64>,
}

#[derive(Serialize)]
struct Row {
    id: String,
    who: u8,
    #[serde(rename = "do")]
    verb: &'static str,
    start: f64,
    end: f64,
    slack: Option<f64>,
    critical: bool,
    instants: Instants,
}

#[derive(Serialize)]
struct Tie {
    from: End,
    to: End,
    lag: f64,
    written: bool,
    critical: bool,
}

#[derive(Serialize)]
struct End {
    action: String,
    who: u8,
    edge: &'static str,
    t: f64,
}

/// Instants by the name of the edge, in time order. An edge that an action has more than once (one
/// `pass-by` a screener) carries the screener's number from the second on: `pass-by:5`.
struct Instants(Vec<(String, f64)>);

impl Instants {
    fn of(marks: &[Mark]) -> Self {
        let mut seen: Vec<Edge> = Vec::new();
        let named = marks.iter().map(|mark| {
            let again = seen.contains(&mark.edge);
            seen.push(mark.edge);
            let name = match mark.of {
                Some(screener) if again => format!("{}:{}", mark.edge.name(), screener.number()),
                _ => mark.edge.name().to_owned(),
            };
            (name, mark.t)
        });
        Self(named.collect())
    }
}

impl Serialize for Instants {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(self.0.len()))?;
        for (name, t) in &self.0 {
            map.serialize_entry(name, t)?;
        }
        map.end()
    }
}

/// The written id, or "beat.action" counted from 1.
fn id(set: &Set, row: &TimedAction) -> String {
    set.action(row.id)
        .and_then(|a| a.id.clone())
        .unwrap_or_else(|| {
            format!(
                "{}.{}",
                u32::from(row.id.beat) + 1,
                u32::from(row.id.action) + 1
            )
        })
}

fn timetable(branch: &Branched) -> Timetable {
    let play = &branch.play;
    let (set, timeline) = (play.set(), play.timeline());
    let actions = timeline.actions().iter().map(|row| Row {
        id: id(set, row),
        who: row.who.number(),
        verb: row.verb.name(),
        start: row.start,
        end: row.end,
        slack: row.slack,
        critical: row.critical,
        instants: Instants::of(&row.marks),
    });
    let end = |end: &TieEnd| {
        timeline.actions().get(end.action).map(|row| End {
            action: id(set, row),
            who: row.who.number(),
            edge: end.edge.name(),
            t: end.t,
        })
    };
    let ties = timeline.ties().iter().filter_map(|tie| {
        Some(Tie {
            from: end(&tie.from)?,
            to: end(&tie.to)?,
            lag: tie.lag,
            written: tie.written,
            critical: tie.critical,
        })
    });
    Timetable {
        duration: timeline.duration(),
        actions: actions.collect(),
        ties: ties.collect(),
        forks: branch.forks.clone(),
        reads: forks(play),
    }
}

fn forks(play: &Play) -> Vec<Fork> {
    let reads = play.set().reads.iter().zip(0..);
    reads
        .map(|(read, index)| Fork {
            title: words::read_title(read, index, play.voice()),
            t: play.fork_instant(read),
        })
        .collect()
}

/// Where the line was left, what that has cost, and where it can be left.
fn write_forks(out: &mut dyn Write, branch: &Branched, told: &Catalogue) -> io::Result<()> {
    for t in &branch.forks {
        let t = told.number(*t, 2);
        writeln!(out, "\n{}", told.fill("left-at", [("t", t.into())]))?;
    }
    let stops = branch.dropped.iter().filter_map(|d| match d {
        Dropped::Action { who, .. } => Some(who.number()),
        Dropped::Tie { .. } => None,
    });
    let mut stops: Vec<u8> = stops.collect();
    stops.sort_unstable();
    stops.dedup();
    for who in stops {
        writeln!(out, "  {}", told.fill("leaves-out", [("who", who.into())]))?;
    }
    for drop in &branch.dropped {
        if let Dropped::Tie { who, .. } = drop {
            let who = who.number().into();
            writeln!(out, "  {}", told.fill("waits-no-longer", [("who", who)]))?;
        }
    }
    let reads = forks(&branch.play);
    if !reads.is_empty() {
        writeln!(out, "\n{}", told.word("reads"))?;
    }
    for (number, read) in (1..).zip(reads) {
        match read.t {
            Some(t) => writeln!(out, "  {number}  {:>6}  {}", told.number(t, 2), read.title)?,
            None => writeln!(out, "  {number}  {:>6}  {}", told.word("never"), read.title)?,
        }
    }
    Ok(())
}

fn write_table(out: &mut dyn Write, play: &Play, told: &Catalogue) -> io::Result<()> {
    let (set, timeline) = (play.set(), play.timeline());
    writeln!(
        out,
        "{}: {} s, {}, {}",
        set.title,
        told.number(timeline.duration(), 1),
        words::level(set.level, play.voice()),
        words::court(set.court, play.voice())
    )?;
    let does: Vec<String> = timeline
        .actions()
        .iter()
        .map(|row| does(set, row, told))
        .collect();
    let width = does
        .iter()
        .map(|d| d.chars().count())
        .max()
        .unwrap_or(0)
        .max(4);
    for (number, _) in (0u16..).zip(&set.beats) {
        let title = play.beat_title(usize::from(number));
        writeln!(out, "\n{title}")?;
        let [from, to, spare] = ["from", "to", "spare"].map(|id| told.word(id));
        writeln!(out, "     {:width$} {from:>6} {to:>6}   {spare}", "")?;
        for (row, does) in timeline
            .actions()
            .iter()
            .zip(&does)
            .filter(|(r, _)| r.id.beat == number)
        {
            let spare = match row.slack {
                _ if row.critical => told.word("holds-up"),
                Some(slack) => told.number(slack, 2),
                None => told.word("nobody-waits"),
            };
            let who = row.who.number();
            let [start, end] = [row.start, row.end].map(|t| told.number(t, 2));
            writeln!(out, "  {who}  {does:width$} {start:>6} {end:>6}   {spare}")?;
        }
    }
    writeln!(out, "\n{}", told.word("what-holds-up"))?;
    for line in chain(set, timeline, told) {
        writeln!(out, "  {line}")?;
    }
    Ok(())
}

/// What a row does in a few words: `pass to 2`, `pin-down for 3`, `cut to the top "loud"`.
fn does(set: &Set, row: &TimedAction, told: &Catalogue) -> String {
    let plain = || told.word(row.verb.name());
    let mut does = row.kind.map_or_else(plain, |k| words::kind(k, told.voice));
    let Some(action) = set.action(row.id) else {
        return does;
    };
    let whom = |id: &str, does: String, who: PlayerId| {
        told.fill(id, [("what", does.into()), ("who", who.number().into())])
    };
    match &action.to {
        Some(Target::Player(p)) if *p != row.who => does = whom("to-player", does, *p),
        Some(Target::Place(place @ SetPlace::Spot { .. })) => {
            does += " ";
            does += &words::whither(place, &set.floor(), told.voice);
        }
        _ => {}
    }
    for cutter in &action.for_whom {
        does = whom("for-player", does, *cutter);
    }
    if let Some(id) = &action.id {
        does += &format!(" \u{201c}{id}\u{201d}");
    }
    does
}

/// What the end of the set hangs on, first to last, with what each of it waits for.
fn chain(set: &Set, timeline: &Timeline, told: &Catalogue) -> Vec<String> {
    let name = |row: &TimedAction| format!("{} {}", row.who.number(), does(set, row, told));
    let mut rows: Vec<(usize, &TimedAction)> = timeline
        .actions()
        .iter()
        .enumerate()
        .filter(|(_, row)| row.critical)
        .collect();
    rows.sort_by(|(_, a), (_, b)| a.start.total_cmp(&b.start));
    rows.iter()
        .map(|(index, row)| {
            let waits: String = timeline
                .ties()
                .iter()
                .filter(|tie| tie.critical && tie.to.action == *index)
                .filter_map(|tie| timeline.actions().get(tie.from.action))
                .map(|other| told.fill("waits-for", [("what", name(other).into())]))
                .collect();
            let [start, end] = [row.start, row.end].map(|t| told.number(t, 2));
            let to = told.word("to");
            format!("{start:>6} {to} {end:>5}  {}{waits}", name(row))
        })
        .collect()
}
