//! Reads that never come up, and reads that make things worse.

use super::{Finding, Settings, Severity, What, in_order};
use crate::choice::{Answer, Lines, Tried};
use crate::set::Coverage;
use alloc::vec::Vec;

/// What is found of a set's reads: `answers` are those under every coverage that it can meet.
///
/// ```
/// use backcut::findings::{self, Settings};
/// use backcut::play::{Options, Play};
/// let text = br#"{ "backcut": 1, "title": "Never", "players": {
///     "1": {"at": "top", "ball": true}, "2": {"at": "left wing"} },
///   "beats": [ { "actions": [
///     {"id": "in", "who": 1, "do": "pass", "to": 2}, {"who": 2, "do": "shot"} ] } ],
///   "reads": [ { "at": {"id": "in", "edge": "release"}, "by": [2], "if": {"coverage": "ice"},
///     "beats": [ { "actions": [ {"who": 2, "do": "hold"} ] } ] } ] }"#;
/// let play = Play::open(text, &Options::default())?;
/// let found = findings::check_reads(&play.lines()?, &play.answers()?, &Settings::default());
/// assert_eq!(found[0].code(), "read-never");
/// # Ok::<(), backcut::fault::Faults>(())
/// ```
#[must_use]
pub fn check_reads(lines: &Lines, answers: &[Answer], settings: &Settings) -> Vec<Finding> {
    let mut found: Vec<Finding> = lines
        .refused()
        .iter()
        .map(|(path, _)| Finding {
            read: path.clone(),
            ..Finding::new(What::ReadNever { comes: false }, Severity::Warning, 0.0)
        })
        .collect();
    for (path, line) in lines.iter().skip(1) {
        let t = line.past().last().map_or(0.0, |p| p.until);
        let tried = answers.iter().filter_map(|answer| {
            let tried = answer.tried.iter().find(|t| t.path == path)?;
            Some((answer.decided.coverage, tried))
        });
        let (shown, mut told): (Vec<_>, Vec<_>) = tried.partition(|(_, tried)| tried.shown());
        told.retain(|(_, tried)| tried.told);
        // What five show of themselves comes before what they have to be told.
        let of = if shown.is_empty() { &told } else { &shown };
        let what = if of.is_empty() {
            Some((None, What::ReadNever { comes: true }, None))
        } else {
            worst(of, settings)
        };
        found.extend(what.map(|(coverage, what, tried)| {
            let ends = tried.map(|t| [t.end, t.instead.0]);
            let who = ends.into_iter().flatten().flatten().map(|look| look.who);
            Finding {
                read: path.to_vec(),
                coverage,
                ..Finding::new(what, Severity::Warning, t).of(who)
            }
        }));
    }
    in_order(&mut found);
    found
}

/// The coverage under which a read that comes up is worst, where it is worse than the line it leaves.
fn worst<'a>(
    tried: &[(Coverage, &'a Tried)],
    settings: &Settings,
) -> Option<(Option<Coverage>, What, Option<&'a Tried>)> {
    let mut out = None;
    let mut most = settings.worse;
    for (coverage, tried) in tried {
        let (instead, before) = (tried.instead.0, tried.instead.1);
        if tried.ahead > settings.stolen && before <= settings.shut {
            let what = What::ReadStolen { by: tried.ahead };
            return Some((Some(*coverage), what, None));
        }
        // Where a hand has a pass of the other line, it comes to nothing.
        let both = tried.end.zip(instead).filter(|_| before <= settings.shut);
        // A catch and a shot off the dribble do not compare.
        let Some((end, other)) = both.filter(|(end, other)| end.chance == other.chance) else {
            continue;
        };
        let (open, instead) = (end.open.max(0.0), other.open.max(0.0));
        if instead - open > most {
            most = instead - open;
            let what = What::ReadWorse { open, instead };
            out = Some((Some(*coverage), what, Some(*tried)));
        }
    }
    out
}
