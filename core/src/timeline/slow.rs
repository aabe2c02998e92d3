//! Stretches shown slowly: "slow through the gate, then game speed".

#[cfg(feature = "authoring")]
use super::Timeline;
#[cfg(feature = "authoring")]
use crate::math::sort_short;
#[cfg(feature = "authoring")]
use crate::set::{Mark, Set, SlowEnd};
#[cfg(feature = "authoring")]
use alloc::vec::Vec;

/// A stretch that is shown slowly.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slowed {
    /// Seconds.
    pub from: f64,
    /// Seconds.
    pub to: f64,
    /// Times the speed at which the rest is shown; above 0, at most 1.
    pub rate: f64,
}

/// The slow stretches of `set` in seconds, in time order. One that has no length, or whose instant
/// does not come about on this line, is none.
#[cfg(feature = "authoring")]
#[must_use]
pub fn slow(timeline: &Timeline, set: &Set) -> Vec<Slowed> {
    let beat = |n: u16| timeline.beats().get(usize::from(n).checked_sub(1)?);
    let when = |end: &SlowEnd, starts: bool| match end {
        SlowEnd::Beat(n) if starts => Some(beat(*n)?.start),
        SlowEnd::Beat(n) => Some(beat(*n)?.end),
        SlowEnd::Instant(at) => {
            let id = set.named(&at.action)?;
            let fits = |m: &&Mark| m.edge == at.edge && (at.of.is_none() || m.of == at.of);
            let mut rows = timeline.actions().iter().filter(|a| a.id == id);
            rows.find_map(|a| a.marks.iter().find(fits)).map(|m| m.t)
        }
    };
    let mut out: Vec<Slowed> = Vec::new();
    for stretch in &set.slow {
        let ends = when(&stretch.from, true).zip(when(&stretch.to, false));
        if let Some((from, to)) = ends.filter(|(from, to)| from < to) {
            let rate = stretch.rate;
            out.push(Slowed { from, to, rate });
        }
    }
    sort_short(&mut out, |a, b| a.from.total_cmp(&b.from));
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::fixture::{Played, play};
    use std::format;

    /// Two beats; the second has a cut, `run`.
    fn slowed(stretches: &str) -> (Played, Vec<Slowed>) {
        let played = play(&format!(
            r#"{{ "backcut": 1, "title": "x", "players": {{
                "1": {{"at": "top", "ball": true}}, "2": {{"at": "left wing"}} }},
              "beats": [ {{ "actions": [ {{"who": 1, "do": "pass", "to": 2}} ] }},
                {{ "actions": [ {{"id": "run", "who": 1, "do": "cut", "to": "rim"}} ] }} ],
              "slow": [ {stretches} ] }}"#
        ));
        let all = slow(&played.timeline, &played.set);
        (played, all)
    }

    #[test]
    fn beats_are_slow_from_their_start_to_their_end() {
        let (played, all) = slowed(r#"{"from": 2, "to": 2, "rate": 0.5}"#);
        let beat = played.timeline.beats()[1];
        let rate = 0.5;
        let (from, to) = (beat.start, beat.end);
        assert_eq!(all, [Slowed { from, to, rate }]);
    }

    #[test]
    fn instants_bound_a_stretch_and_it_may_begin_with_a_beat() {
        let (played, all) = slowed(
            r#"{"from": {"id": "run", "edge": "start"}, "to": {"id": "run", "edge": "end"}, "rate": 0.3},
               {"from": 1, "to": {"id": "run", "edge": "start"}, "rate": 0.8}"#,
        );
        let run = played
            .timeline
            .actions()
            .iter()
            .find(|a| a.id.beat == 1)
            .unwrap();
        assert_eq!((all[0].from, all[0].to, all[0].rate), (0.0, run.start, 0.8));
        assert_eq!(
            (all[1].from, all[1].to, all[1].rate),
            (run.start, run.end, 0.3)
        );
    }

    #[test]
    fn a_stretch_that_ends_before_it_begins_is_none() {
        let (_, all) = slowed(
            r#"{"from": {"id": "run", "edge": "end"}, "to": {"id": "run", "edge": "start"}, "rate": 0.3}"#,
        );
        assert_eq!(all, []);
    }
}
