//! A run: the chained legs of one player as one way with one time law.

use crate::athlete::{Limits, Pace};
use crate::choreography::{Entry, Leg, Part};
use crate::math::{Listed, Point};
use crate::motion::{self, Law};
use crate::path::{Knot, Path};
use crate::set::{Edge, PlayerId};
use alloc::vec::Vec;

fn knot_at(knot: Knot) -> Point {
    match knot {
        Knot::Smooth(p) | Knot::Plant(p) | Knot::Toward(p, _) => p,
    }
}

/// One leg of a run: which part of which action, from where to where, when.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RunLeg {
    /// Index into the choreography's rows.
    pub row: usize,
    /// Which part of the action.
    pub part: Part,
    /// Metres from the start of the run.
    pub s: [f64; 2],
    /// Seconds from the start of the run.
    pub t: [f64; 2],
}

/// An instant of a run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RunMark {
    /// Index into the choreography's rows.
    pub row: usize,
    /// Which instant.
    pub edge: Edge,
    /// Which screener it is about.
    pub of: Option<PlayerId>,
    /// Seconds from the start of the run.
    pub t: f64,
}

/// A rigid piece of motion: one unknown, its start.
#[derive(Clone, Debug)]
pub struct Run {
    /// Who.
    pub who: PlayerId,
    /// Its legs in order.
    pub legs: Vec<RunLeg>,
    /// Its instants.
    pub marks: Vec<RunMark>,
    path: Path,
    law: Law,
}

impl Run {
    /// Chains legs into one way and finds its time law; one who comes in under way goes on from
    /// that speed.
    #[must_use]
    pub fn new(who: PlayerId, legs: &[&Leg], limits: &Limits, entry: Option<Entry>) -> Self {
        // Branches are for authors; the module of the first picture has none of this.
        let Some(entry) = entry.filter(|_| cfg!(feature = "authoring")) else {
            return Self::chained(who, legs, limits, None, 0.0);
        };
        let smooth = Self::chained(who, legs, limits, Some(entry), 0.0);
        if smooth.law.at(0.0).v >= entry.speed - 1e-9 {
            return smooth;
        }
        // Too fast for that turn or pace: straight on while the feet brake, then plant.
        let brakes = entry.speed * entry.speed / (2.0 * limits.brake.max(0.1));
        Self::chained(who, legs, limits, Some(entry), 1.02 * brakes + 0.02)
    }

    fn chained(
        who: PlayerId,
        legs: &[&Leg],
        limits: &Limits,
        entry: Option<Entry>,
        straight: f64,
    ) -> Self {
        let mut knots: Vec<Knot> = Vec::new();
        let mut bounds = Vec::with_capacity(legs.len());
        for leg in legs {
            let joined = !knots.is_empty();
            if joined && let (Some(end), Some(first)) = (knots.last_mut(), leg.knots.first()) {
                // A plant at the joint wins over a smooth end.
                if matches!(first, Knot::Plant(_)) {
                    *end = *first;
                }
            }
            let from = knots.len().saturating_sub(usize::from(joined));
            knots.extend(leg.knots.iter().skip(usize::from(joined)).copied());
            bounds.push((from, knots.len().saturating_sub(1)));
        }
        // A knot more where the feet brake first.
        let entry = entry.filter(|_| cfg!(feature = "authoring"));
        let shift = usize::from(cfg!(feature = "authoring") && straight > 0.0);
        if let Some(entry) = entry
            && let Some(first) = knots.first_mut()
        {
            let at = knot_at(*first);
            *first = Knot::Toward(at, entry.way);
            if shift > 0 {
                // Who is there already comes back.
                if knots.len() == 1 {
                    knots.push(Knot::Smooth(at));
                    bounds.iter_mut().for_each(|b| b.1 = 1);
                }
                knots.insert(1, Knot::Plant(at + entry.way * straight));
            }
        }
        if shift > 0 {
            for (from, to) in &mut bounds {
                (*from, *to) = (if *from > 0 { *from + shift } else { 0 }, *to + shift);
            }
        }
        let path = Path::through(&knots);
        let spans: Vec<[f64; 2]> = bounds
            .iter()
            .map(|(a, b)| [path.knot_s(*a), path.knot_s(*b)])
            .listed();
        let mut efforts: Vec<motion::Leg> = legs
            .iter()
            .zip(&spans)
            .map(|(leg, s)| motion::Leg {
                end: s[1],
                effort: leg.effort,
            })
            .listed();
        if shift > 0 {
            let braking = motion::Leg {
                end: path.knot_s(1),
                effort: limits.effort(Pace::Sprint, false),
            };
            efforts.insert(0, braking);
        }
        let speed = entry.map_or(0.0, |e| e.speed);
        let law = if legs.iter().any(|l| l.takes.is_some()) {
            let mut takes: Vec<Option<f64>> = legs.iter().map(|l| l.takes).listed();
            if shift > 0 {
                takes.insert(0, None);
            }
            Law::build_taking(&path, &efforts, &takes, limits, speed, 0.0)
        } else {
            Law::build(&path, &efforts, limits, speed, 0.0)
        };
        let mut out = Self {
            who,
            legs: Vec::new(),
            marks: Vec::new(),
            path,
            law,
        };
        for ((leg, s), (first, _)) in legs.iter().zip(&spans).zip(&bounds) {
            let t = [out.law.time_at(s[0]), out.law.time_at(s[1])];
            out.legs.push(RunLeg {
                row: leg.row,
                part: leg.part,
                s: *s,
                t,
            });
            for mark in &leg.marks {
                let knot = first + mark.knot;
                let knot = if *first == 0 && mark.knot > 0 {
                    knot + shift
                } else {
                    knot
                };
                let at = out.path.knot_s(knot) - mark.before;
                let t = out.law.time_at(at.max(s[0]));
                out.marks.push(RunMark {
                    row: leg.row,
                    edge: mark.edge,
                    of: mark.of,
                    t,
                });
            }
        }
        out
    }

    /// Seconds from start to end.
    #[must_use]
    pub fn duration(&self) -> f64 {
        self.law.duration()
    }

    /// The way.
    #[must_use]
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// The time law.
    #[must_use]
    pub fn law(&self) -> &Law {
        &self.law
    }

    /// Where the runner is `t` seconds after the start.
    #[must_use]
    pub fn point(&self, t: f64) -> Point {
        self.path.point(self.law.at(t).s)
    }

    /// The instant `edge` of `row`, seconds from the start; `of` a certain screener, or the first.
    #[must_use]
    pub fn mark(&self, row: usize, edge: Edge, of: Option<PlayerId>) -> Option<f64> {
        self.marks
            .iter()
            .find(|m| m.row == row && m.edge == edge && (of.is_none() || m.of == of))
            .map(|m| m.t)
    }

    /// The leg of that part of a row.
    #[must_use]
    pub fn leg(&self, row: usize, part: Part) -> Option<&RunLeg> {
        self.legs.iter().find(|l| l.row == row && l.part == part)
    }
}
