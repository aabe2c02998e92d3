//! From timeline to strip.

use super::{Band, Row, Slur, Strip, ball, row};
use crate::math::Listed;
#[cfg(feature = "authoring")]
use crate::set::PlayerId;
use crate::set::Set;
use crate::timeline::{TieEnd, TimedAction, TimedTie, Timeline};
use alloc::vec::Vec;

/// Two instants this near are one to the eye; a tie that holds nothing up is looser than that.
/// Common practice, no source.
const TIGHT: f64 = 0.08;

/// The strip of `timeline`, which was built from `set`.
#[must_use]
pub fn build(timeline: &Timeline, set: &Set) -> Strip {
    Strip {
        duration: timeline.duration(),
        bands: bands(timeline, set),
        rows: set
            .players
            .iter()
            .map(|p| Row {
                who: p.id,
                bits: row::bits(timeline, set, p.id),
                #[cfg(feature = "authoring")]
                instants: own_instants(timeline, set, p.id),
            })
            .listed(),
        ball: ball::row(timeline),
        slurs: slurs(timeline),
        #[cfg(feature = "authoring")]
        forks: Vec::new(),
    }
}

#[cfg(feature = "authoring")]
fn own_instants(timeline: &Timeline, set: &Set, who: PlayerId) -> Vec<f64> {
    let all = timeline
        .actions()
        .iter()
        .flat_map(|a| row::instants(set, a));
    all.filter(|(theirs, _)| *theirs == who)
        .map(|(_, t)| t)
        .listed()
}

fn bands(timeline: &Timeline, set: &Set) -> Vec<Band> {
    timeline
        .beats()
        .iter()
        .zip(&set.beats)
        .map(|(times, beat)| Band {
            start: times.start,
            end: times.end,
            title: beat.title.clone(),
        })
        .listed()
}

fn slurs(timeline: &Timeline) -> Vec<Slur> {
    let mut out: Vec<Slur> = Vec::new();
    let row = |end: &TieEnd| timeline.actions().get(end.action);
    for tie in timeline.ties() {
        let (Some(from), Some(to)) = (row(&tie.from), row(&tie.to)) else {
            continue;
        };
        let slur = Slur {
            from: from.who,
            from_t: tie.from.t,
            to: to.who,
            to_t: tie.to.t,
            critical: tie.critical,
        };
        if is_drawn(tie, from, to) && !out.contains(&slur) {
            out.push(slur);
        }
    }
    out
}

/// Whether a reader should see a tie: it lies between two players, and was written or holds
/// somebody up. Posts of one gate have a row each but are one action, so nothing ties them.
pub(super) fn is_drawn(tie: &TimedTie, from: &TimedAction, to: &TimedAction) -> bool {
    let holds = tie.to.t - tie.from.t - tie.lag < TIGHT;
    from.who != to.who && from.id != to.id && (tie.written || holds)
}
