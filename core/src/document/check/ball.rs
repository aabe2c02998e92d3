//! Who has the ball, action by action in written order.

use super::{Checker, at};
use crate::document::json::Json;
use crate::document::told::told;
use crate::set::{Action, Kind, PlayerId, Verb, holder_after};
use crate::voice::Message;
use crate::voice::messages::fault as m;
use alloc::string::ToString;

/// Where the ball is.
#[derive(Clone, Copy)]
pub(super) enum Ball {
    /// In this player's hands.
    With(PlayerId),
    /// On its way to the ring.
    Shot,
    /// That depends on what is not known yet, or on what has been reported.
    Unknown,
}

impl Checker<'_, '_, '_> {
    /// Reports what needs a ball that is elsewhere; returns where it is afterwards.
    pub(super) fn ball(&mut self, ball: Ball, action: &Action, node: &Json) -> Ball {
        let Some(actor) = action.actor() else {
            return ball;
        };
        let Some((code, does)) = needs_ball(action) else {
            return ball;
        };
        let own = actor.number();
        match ball {
            Ball::With(holder) if !action.who.contains(&holder) => {
                let holder = holder.number();
                self.report.add(at(node, "who").start, code, &|_| {
                    told(
                        m::WITHOUT_BALL
                            .with("does", does.with("own", own.to_string()))
                            .with("holder", holder.to_string()),
                        m::ONLY_HOLDER,
                    )
                });
            }
            Ball::Shot => self.report.add(node.start, "after-the-shot", &|_| {
                told(
                    m::AFTER_SHOT.with("does", does.with("own", own.to_string())),
                    m::SHOT_ENDS,
                )
            }),
            _ => {}
        }
        match action.verb {
            Verb::Shot => Ball::Shot,
            // Whoever lacks a receiver has been told; who has the ball then, nobody knows.
            _ if matches!(action.verb, Verb::Pass | Verb::Handoff)
                && action.receiver().is_none() =>
            {
                Ball::Unknown
            }
            _ => holder_after(Some(actor), action).map_or(Ball::Unknown, Ball::With),
        }
    }
}

/// The code and the words for an action that needs the ball; `None` for all others.
fn needs_ball(action: &Action) -> Option<(&'static str, Message)> {
    Some(match action.verb {
        Verb::Pass => ("pass-without-ball", m::PASSES),
        Verb::Dribble => ("dribble-without-ball", m::DRIBBLES),
        Verb::Shot => ("shot-without-ball", m::SHOOTS),
        Verb::Handoff => ("handoff-without-ball", m::HANDS_OFF),
        Verb::Fake => {
            let pretends = matches!(action.of, Some(Verb::Pass | Verb::Shot))
                || matches!(action.kind, Some(Kind::PassFake | Kind::ShotFake));
            return pretends.then_some(("fake-without-ball", m::FAKES_WITH_BALL));
        }
        Verb::Cut | Verb::Screen | Verb::Hold => return None,
    })
}
