//! Who has the ball, by written order.

use super::{Action, ActionId, Kind, PlayerId, Set, Verb};
use crate::math::Listed;
use alloc::vec::Vec;

/// Who has the ball after `action` where `before` had it: a pass and a hand-off move it on, a shot
/// ends all possession.
#[must_use]
pub fn holder_after(before: Option<PlayerId>, action: &Action) -> Option<PlayerId> {
    match action.verb {
        Verb::Handoff if action.kind == Some(Kind::Keep) => before,
        Verb::Pass | Verb::Handoff => action.receiver().or(before),
        Verb::Shot => None,
        Verb::Cut | Verb::Dribble | Verb::Screen | Verb::Hold | Verb::Fake => before,
    }
}

impl Set {
    /// Each action of the main line with the player who has the ball before it, in written order;
    /// `None` after the shot.
    #[must_use]
    pub fn holders(&self) -> Vec<(ActionId, Option<PlayerId>)> {
        self.actions()
            .scan(self.first_holder(), |holder, (id, action)| {
                let before = *holder;
                *holder = holder_after(before, action);
                Some((id, before))
            })
            .listed()
    }
}
