//! From a schedule to a timeline.

use super::floor::Floor;
use super::gaze::Gaze;
use super::hands::{self, Carry, How};
use super::possession;
use super::timetable::{TieEnd, TimedAction, TimedBeat, TimedTie, Wait};
use super::{BallSpan, BallUse, Mover, MoverState, TimedScreen, Timeline, Trail};
use crate::athlete::Limits;
use crate::court::Court;
use crate::flight::{self, Flight, Spot3};
use crate::math::{BezPath, Listed, Point};
use crate::motion::facing;
use crate::set::{Edge, Kind, PlayerId, Set, Verb};
use crate::timing::{RowTimes, Schedule};
use alloc::vec::Vec;

/// Seconds shown after the last thing that happens.
const AFTER: f64 = 0.4;
/// Seconds a made shot falls before the picture ends.
const FALL: f64 = 0.5;

impl Timeline {
    /// The timeline of a scheduled set.
    #[must_use]
    pub fn build(set: &Set, court: &Court, mut schedule: Schedule) -> Self {
        let limits = set.limits();
        let mut quiet: f64 = 0.0;
        for r in &schedule.rows {
            quiet = quiet.max(r.end);
        }
        for t in &schedule.transfers {
            quiet = quiet.max(t.catch);
        }
        #[cfg(feature = "authoring")]
        if let Some(coming) = schedule.coming {
            quiet = quiet.max(coming.at);
        }
        let shot = possession::shot(&schedule);
        let first = set.first_holder();
        // The flight of the shot settles the end; it needs the shooter's place only.
        let ring = court.marks().ring_height;
        let shot_flight = shot.and_then(|(who, release)| {
            let (at, _) = schedule.place(who, release)?;
            Some((
                release,
                shot_from(at, 0.0, &limits, who, None, ring).duration(),
            ))
        });
        let made = shot_flight.map_or(0.0, |(release, lasts)| release + lasts + FALL);
        let duration = (quiet + AFTER).max(made);
        let mut spans = possession::spans(&schedule, first, duration);
        let movers = movers(set, &mut schedule, &spans, duration);
        let mut out = Self {
            duration,
            movers,
            carries: Vec::new(),
            spans: Vec::new(),
            actions: actions(&schedule),
            trails: Vec::new(),
            ties: ties(&schedule),
            beats: beats(set, &schedule, duration),
            screens: screens(&schedule),
            limits,
            #[cfg(feature = "authoring")]
            begins: 0.0,
        };
        out.carries = carries(&out, set, &schedule, &mut spans, ring);
        out.spans = spans;
        out.trails = (0..schedule.rows.len())
            .map(|row| trail(&out, &schedule, row))
            .listed();
        out
    }
}

/// Everybody with the own runs, which are taken out of the schedule.
fn movers(
    set: &Set,
    schedule: &mut Schedule,
    spans: &[BallSpan],
    duration: f64,
) -> [Option<Mover>; 5] {
    let starts = schedule.choreography.starts;
    let floor = Floor::new(&starts, &schedule.runs, spans, duration);
    let mut movers = PlayerId::ALL.map(|who| {
        let start = starts.get(who.index()).copied().flatten()?;
        let mut gaze = Gaze::new(who, set, schedule, &floor);
        let first = set
            .player(who)
            .and_then(|p| p.facing)
            .or_else(|| gaze.at(0.0))
            .unwrap_or(0.0);
        let facing = facing::Track::build(|t| gaze.at(t), duration, facing::TURN_RATE, first);
        Some(Mover {
            start,
            runs: Vec::new(),
            facing,
        })
    });
    for placed in core::mem::take(&mut schedule.runs) {
        if let Some(Some(mover)) = movers.get_mut(placed.run.who.index()) {
            mover.runs.push(placed);
        }
    }
    movers
}

fn shot_from(
    at: Point,
    facing: f64,
    limits: &[Limits; 5],
    who: PlayerId,
    kind: Option<Kind>,
    ring: f64,
) -> Flight {
    let height = limits.get(who.index()).map_or(2.3, |l| l.release_height);
    let state = MoverState {
        x: at.x,
        y: at.y,
        facing,
        speed: 0.0,
    };
    flight::shot(Spot3::above(hands::hands(&state), height), kind, ring)
}

/// What the ball does in each span, with the heights at the seams agreed.
fn carries(
    tl: &Timeline,
    set: &Set,
    schedule: &Schedule,
    spans: &mut Vec<BallSpan>,
    ring: f64,
) -> Vec<Carry> {
    let radius = flight::ball_radius(set.level);
    let limits = |who: PlayerId| *tl.limits(who);
    let mut out: Vec<Carry> = Vec::new();
    let all = core::mem::take(spans);
    for (i, span) in all.iter().enumerate() {
        let before = i.checked_sub(1).and_then(|b| all.get(b));
        let how = match span.what {
            BallUse::Held(who) => {
                let l = limits(who);
                let chest = hands::chest(&l);
                let from = match before.map(|b| b.what) {
                    Some(BallUse::Pass { kind, .. }) => flight::catch_height(kind, &l),
                    _ => chest,
                };
                let to = match all.get(i + 1).map(|n| n.what) {
                    Some(BallUse::Pass { kind, .. }) => flight::release_height(kind, &l),
                    Some(BallUse::Shot(_)) => l.release_height,
                    _ => chest,
                };
                How::Held {
                    who,
                    from,
                    to,
                    chest,
                }
            }
            BallUse::Dribbled(who) => How::Dribbled {
                who,
                hand: hands::hand(
                    tl.player(who, span.start).unwrap_or_default().x,
                    tl.player(who, span.end).unwrap_or_default().x,
                ),
                bounces: hands::bounces(span.end - span.start),
                hip: hands::hip(&limits(who)),
                chest: hands::chest(&limits(who)),
                radius,
            },
            BallUse::Pass { from, to, kind } => {
                let (a, b) = (tl.player(from, span.start), tl.player(to, span.end));
                let (a, b) = (a.unwrap_or_default(), b.unwrap_or_default());
                // A free pass off the dribble leaves from where the dribble has the ball.
                let height = match before.map(|b| b.what) {
                    Some(BallUse::Dribbled(_)) => hands::chest(&limits(from)),
                    _ => flight::release_height(kind, &limits(from)),
                };
                let leaves = Spot3::above(hands::hands(&a), height);
                let comes = Spot3::above(hands::hands(&b), flight::catch_height(kind, &limits(to)));
                let flight = flight::pass(leaves, comes, kind, &limits(from));
                How::Air(flight.lasting(span.end - span.start))
            }
            BallUse::Handoff { from, to } => How::Handed {
                from,
                to,
                chest: hands::chest(&limits(from)),
            },
            BallUse::Shot(who) => {
                let p = tl.player(who, span.start).unwrap_or_default();
                let kind = shot_kind(schedule);
                let flight = shot_from(Point::new(p.x, p.y), p.facing, &tl.limits, who, kind, ring);
                How::Air(flight)
            }
            BallUse::Through => How::Falls { from: ring, radius },
        };
        let (start, end) = (span.start, span.end);
        if let (BallUse::Shot(_), How::Air(flight)) = (span.what, how) {
            let through = (start + flight.duration()).min(end);
            out.push(Carry::new(start, through, how));
            out.push(Carry::new(through, end, How::Falls { from: ring, radius }));
            spans.push(BallSpan {
                start,
                end: through,
                what: span.what,
            });
            spans.push(BallSpan {
                start: through,
                end,
                what: BallUse::Through,
            });
        } else {
            out.push(Carry::new(start, end, how));
            spans.push(*span);
        }
    }
    out
}

fn shot_kind(schedule: &Schedule) -> Option<Kind> {
    schedule
        .choreography
        .steps
        .iter()
        .rev()
        .find_map(|s| match s {
            crate::choreography::Step::Shot { row, .. } => {
                schedule.choreography.rows.get(*row).map(|r| r.kind)
            }
            _ => None,
        })?
}

fn actions(schedule: &Schedule) -> Vec<TimedAction> {
    schedule
        .choreography
        .rows
        .iter()
        .zip(&schedule.rows)
        .map(|(row, times)| TimedAction {
            id: row.id,
            who: row.who,
            verb: row.verb,
            kind: row.kind,
            start: times.start,
            end: times.end,
            slack: times.slack,
            critical: times.critical,
            marks: times.marks.clone(),
            waits: times
                .waits
                .iter()
                .map(|(start, end)| Wait {
                    start: *start,
                    end: *end,
                })
                .listed(),
        })
        .listed()
}

fn ties(schedule: &Schedule) -> Vec<TimedTie> {
    let end = |(action, edge, t): (usize, Edge, f64)| TieEnd { action, edge, t };
    schedule
        .ties
        .iter()
        .map(|t| TimedTie {
            from: end(t.from),
            to: end(t.to),
            lag: t.lag,
            written: t.written,
            critical: t.critical,
        })
        .listed()
}

/// A beat shows from the first start of its own actions, but not before something of the beat
/// before it has come about (a screen set, a pass gone, a way run), until the next one shows.
fn beats(set: &Set, schedule: &Schedule, duration: f64) -> Vec<TimedBeat> {
    let rows = || schedule.choreography.rows.iter().zip(&schedule.rows);
    let mut starts: Vec<f64> = Vec::new();
    let mut come_about = 0.0;
    for (b, _) in (0u16..).zip(&set.beats) {
        let own = || rows().filter(|(r, _)| r.id.beat == b);
        let first = own().map(|(_, t)| t.start).fold(f64::INFINITY, f64::min);
        let before = starts.last().copied().unwrap_or(0.0);
        let start = if b == 0 || first.is_infinite() {
            before
        } else {
            first
        };
        starts.push(start.max(come_about).clamp(before, duration));
        come_about = own()
            .map(|(r, t)| point_of(r.verb, t))
            .fold(f64::INFINITY, f64::min);
        if come_about.is_infinite() {
            come_about = before;
        }
    }
    let ends: Vec<f64> = starts.iter().skip(1).copied().chain([duration]).listed();
    starts
        .iter()
        .zip(ends)
        .map(|(start, end)| TimedBeat { start: *start, end })
        .listed()
}

/// When an action has done what it is there for.
fn point_of(verb: Verb, times: &RowTimes) -> f64 {
    let edge = match verb {
        Verb::Screen => Edge::Set,
        Verb::Pass | Verb::Handoff | Verb::Shot => Edge::Release,
        Verb::Cut | Verb::Dribble | Verb::Hold | Verb::Fake => Edge::End,
    };
    possession::instant(times, edge).unwrap_or(times.end)
}

fn screens(schedule: &Schedule) -> Vec<TimedScreen> {
    schedule
        .screens
        .iter()
        .filter_map(|s| {
            let screen = *schedule.choreography.screens.get(s.screen)?;
            let row = screen.row.and_then(|r| schedule.rows.get(r))?;
            let shut = possession::instant(row, Edge::Shut);
            Some(TimedScreen {
                screen,
                set: s.set,
                free: s.free,
                shut,
            })
        })
        .listed()
}

/// The way of one row, from the runs of its player.
fn trail(tl: &Timeline, schedule: &Schedule, row: usize) -> Option<Trail> {
    let who = schedule.choreography.rows.get(row)?.who;
    let mover = tl.movers.get(who.index())?.as_ref()?;
    let mut whole = BezPath::new();
    let mut pieces = Vec::new();
    for (i, placed) in mover.runs.iter().enumerate() {
        for leg in placed.run.legs.iter().filter(|l| l.row == row) {
            if leg.s[1] - leg.s[0] > 0.05 {
                pieces.push((i, leg.s[0], leg.s[1]));
                let way = placed.run.path().between(leg.s[0], leg.s[1]);
                whole.extend(way.elements().iter().copied());
            }
        }
    }
    (!pieces.is_empty()).then_some(Trail { who, whole, pieces })
}
