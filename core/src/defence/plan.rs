//! Which screens the defence will meet, and how it is asked to play each.

use crate::choreography::Screen;
use crate::court::Side;
use crate::math::Point;
use crate::set::{ActionId, Coverage, Deed, Edge, PlayerId, Set};
use crate::timeline::{BallUse, Timeline};
use alloc::vec::Vec;

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
    /// Which way round the screen, where that was asked for.
    pub side: Option<Side>,
    /// The screener's defender steps out by instruction.
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
            let standing = timeline.screens().iter().find(|s| {
                s.screen.who == screener && s.set <= mark.t + 0.5 && mark.t <= s.free + 0.1
            });
            // A giver of a hand-off screens for the taker too.
            let Some(there) = timeline.player(screener, mark.t) else {
                continue;
            };
            let screen = standing.map_or_else(
                || Screen {
                    row: None,
                    who: screener,
                    at: Point::new(there.x, there.y),
                    facing: there.facing,
                    shut_at: None,
                    twin: None,
                },
                |s| s.screen,
            );
            let Some(by) = timeline.player(action.who, mark.t) else {
                continue;
            };
            let cue = action
                .marks
                .iter()
                .find(|m| m.edge == Edge::Cue && m.of == mark.of);
            let has_ball = timeline.ball_spans().iter().any(|s| {
                s.start <= mark.t + 0.05
                    && mark.t <= s.end
                    && matches!(s.what, BallUse::Held(p) | BallUse::Dribbled(p) if p == action.who)
            });
            let taken = timeline.ball_spans().iter().any(|s| {
                matches!(s.what, BallUse::Handoff { from, to } if from == screener && to == action.who)
                    && s.start <= mark.t + 0.2
                    && mark.t <= s.end + 0.2
            });
            let mut meeting = Meeting {
                action: action.id,
                cutter: action.who,
                screener,
                coverage,
                side: None,
                steps_out: false,
                on_ball: has_ball || taken,
                burst: action.at(Edge::Plant).unwrap_or(action.start),
                cue: cue.map_or(mark.t - 0.3, |m| m.t),
                by: mark.t,
                by_at: Point::new(by.x, by.y),
                screen,
                gate: screen.twin.is_some(),
            };
            meeting.coverage = usual(coverage, meeting.on_ball);
            instruct(set, &mut meeting);
            out.push(meeting);
        }
    }
    crate::math::sort_short(&mut out, |a, b| a.by.total_cmp(&b.by));
    out
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
        let coverage = match order.does {
            Deed::Trails => Some(Coverage::Chase),
            Deed::GoesRound => Some(Coverage::Chase),
            Deed::ShootsTheGap => Some(Coverage::Under),
            Deed::TopLocks => Some(Coverage::TopLock),
            Deed::Switches => Some(Coverage::Switch),
            Deed::StepsOut | Deed::Sags | Deed::TurnsHead => None,
        };
        if order.who == meeting.cutter {
            if let Some(coverage) = coverage {
                meeting.coverage = coverage;
            }
            if order.does == Deed::GoesRound {
                meeting.side = Some(order.side.unwrap_or(Side::Right));
            }
        }
        if order.who == meeting.screener && order.does == Deed::StepsOut {
            meeting.steps_out = true;
        }
    }
}
