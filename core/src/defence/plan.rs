//! Which screens the defence will meet, and how it is asked to play each.

use crate::choreography::Screen;
use crate::court::Side;
use crate::math::Point;
use crate::set::{ActionId, Coverage, Deed, Edge, PlayerId, Set, Verb};
use crate::timeline::{BallUse, Timeline};
use alloc::vec::Vec;

/// Where no cue is known: so long before the pass-by. Common practice, no source.
const CUE: f64 = 0.3;

/// One use of a screen as the defence meets it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Meeting {
    /// The cut or dribble.
    pub action: ActionId,
    /// Who uses the screen.
    pub cutter: PlayerId,
    /// Whose screen.
    pub screener: PlayerId,
    /// How the defence plays it.
    pub coverage: Coverage,
    /// What the file tells the cutter's defender to do, where it does.
    pub asked: Option<Deed>,
    /// On which side.
    pub side: Option<Side>,
    /// The screener's defender steps out, by the file's instruction.
    pub steps_out: bool,
    /// Whether the cutter has the ball.
    pub on_ball: bool,
    /// When the cutter bursts.
    pub burst: f64,
    /// When the read can be made.
    pub cue: f64,
    /// When the cutter is by.
    pub by: f64,
    /// Where the cutter is then.
    pub by_at: Point,
    /// The screener's body.
    pub screen: Screen,
    /// Whether it is one post of a gate.
    pub gate: bool,
}

/// All meetings in time order under `coverage`, with the file's instructions for single actions.
pub(super) fn meetings(set: &Set, timeline: &Timeline, coverage: Coverage) -> Vec<Meeting> {
    let mut out: Vec<Meeting> = Vec::new();
    for action in timeline.actions() {
        for mark in action.marks.iter().filter(|m| m.edge == Edge::PassBy) {
            let Some(screener) = mark.of else { continue };
            let burst = action.at(Edge::Plant).unwrap_or(action.start);
            let cue = action
                .marks
                .iter()
                .find(|m| m.edge == Edge::Cue && m.of == mark.of);
            let used = Use {
                action: action.id,
                cutter: action.who,
                screener,
                by: mark.t,
                burst,
            };
            let has_ball = timeline.ball_spans().iter().any(|s| {
                s.start <= mark.t + 0.05
                    && mark.t <= s.end
                    && matches!(s.what, BallUse::Held(p) | BallUse::Dribbled(p) if p == action.who)
            });
            out.extend(meeting(
                timeline,
                &used,
                cue.map_or(mark.t - CUE, |m| m.t),
                has_ball,
            ));
        }
    }
    handoffs(timeline, &mut out);
    for m in &mut out {
        m.coverage = usual(coverage, m.on_ball);
        instruct(set, m);
    }
    crate::math::sort_short(&mut out, |a, b| a.by.total_cmp(&b.by));
    out
}

/// A giver of a hand-off screens for the taker.
fn handoffs(timeline: &Timeline, out: &mut Vec<Meeting>) {
    for span in timeline.ball_spans() {
        let BallUse::Handoff { from, to } = span.what else {
            continue;
        };
        let by = 0.5 * (span.start + span.end);
        let known = out
            .iter_mut()
            .find(|m| m.cutter == to && m.screener == from && (m.by - by).abs() < 0.3);
        if let Some(m) = known {
            m.on_ball = true;
            continue;
        }
        let row = timeline.actions().iter().find(|a| {
            a.verb == Verb::Handoff
                && a.who == from
                && a.at(Edge::Release).is_some_and(|r| (r - by).abs() < 0.3)
        });
        let burst = timeline
            .actions()
            .iter()
            .filter(|a| a.who == to && a.start < by && a.end > by - 0.05)
            .map(|a| a.start)
            .fold(by - 1.0, f64::max);
        if let Some(row) = row {
            let used = Use {
                action: row.id,
                cutter: to,
                screener: from,
                by,
                burst,
            };
            out.extend(meeting(timeline, &used, by - CUE, true));
        }
    }
}

/// Who passes whom when.
struct Use {
    action: ActionId,
    cutter: PlayerId,
    screener: PlayerId,
    by: f64,
    burst: f64,
}

fn meeting(timeline: &Timeline, u: &Use, cue: f64, on_ball: bool) -> Option<Meeting> {
    let standing = timeline
        .screens()
        .iter()
        .find(|s| s.screen.who == u.screener && s.set <= u.by + 0.5 && u.by <= s.free + 0.1);
    let there = timeline.player(u.screener, u.by)?;
    // Somebody used where they stand has no screen of his own.
    let screen = standing.map_or_else(
        || Screen {
            row: None,
            who: u.screener,
            at: Point::new(there.x, there.y),
            facing: there.facing,
            shut_at: None,
            twin: None,
        },
        |s| s.screen,
    );
    let by = timeline.player(u.cutter, u.by)?;
    Some(Meeting {
        action: u.action,
        cutter: u.cutter,
        screener: u.screener,
        coverage: Coverage::Chase,
        asked: None,
        side: None,
        steps_out: false,
        on_ball,
        burst: u.burst,
        cue,
        by: u.by,
        by_at: Point::new(by.x, by.y),
        screen,
        gate: screen.twin.is_some(),
    })
}

/// What a coverage made for ball screens means off the ball, and the other way round.
fn usual(coverage: Coverage, on_ball: bool) -> Coverage {
    use Coverage::{Blitz, Chase, Drop, Ice, Over, TopLock, WeakSideTag};
    match (coverage, on_ball) {
        (Drop | Ice | Blitz | WeakSideTag, false) => Chase,
        (Chase | TopLock, true) => Over,
        (other, _) => other,
    }
}

/// The file's word on a single action wins over the coverage.
fn instruct(set: &Set, meeting: &mut Meeting) {
    for order in &set.defence.on {
        if set.named(&order.action) != Some(meeting.action) {
            continue;
        }
        if order.who == meeting.cutter {
            (meeting.asked, meeting.side) = (Some(order.does), order.side);
            meeting.coverage = match order.does {
                Deed::Trails | Deed::GoesRound => Coverage::Chase,
                Deed::ShootsTheGap | Deed::StaysLow => Coverage::Under,
                Deed::TopLocks => Coverage::TopLock,
                Deed::Switches => Coverage::Switch,
                Deed::StepsOut | Deed::Sags | Deed::TurnsHead => meeting.coverage,
            };
        }
        if order.who == meeting.screener {
            match order.does {
                Deed::StepsOut => meeting.steps_out = true,
                Deed::Switches => meeting.coverage = Coverage::Switch,
                _ => {}
            }
        }
    }
}

/// What the file tells one defender to do for as long as an action lasts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Task {
    pub who: PlayerId,
    pub does: Deed,
    /// Seconds, with a moment before the action in which it shows.
    pub from: f64,
    pub to: f64,
}

/// How long before an action its defender does as told: long enough to be seen doing it when the
/// action begins. Common practice, no source.
const EARLY: f64 = 1.6;

/// All instructions of the file with their times.
pub(super) fn tasks(set: &Set, timeline: &Timeline) -> Vec<Task> {
    let on = set.defence.on.iter();
    on.filter_map(|order| {
        let id = set.named(&order.action)?;
        let rows = timeline.actions().iter().filter(|a| a.id == id);
        let (from, to) = rows.fold((f64::INFINITY, 0.0_f64), |(from, to), a| {
            (from.min(a.start), to.max(a.end))
        });
        from.is_finite().then_some(Task {
            who: order.who,
            does: order.does,
            from: from - EARLY,
            to,
        })
    })
    .collect()
}
