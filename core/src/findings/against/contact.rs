//! Attackers who run into defenders.
//!
//! A screener must stand at contact (FIBA Art. 33.7, NBA Rule 12-B Sec. III, NFHS Rule 4-40); who runs
//! into a defender that was there answers for it.

use super::Against;
use crate::defence::Contact;
use crate::findings::{Finding, Severity, What};
use crate::math::{Vec2, direction};
use crate::set::Verb;
use crate::timeline::TimedAction;
use alloc::vec::Vec;

/// Once the cutter has been by for so long the screen is over, seconds. Common practice, no source.
const AFTER: f64 = 0.3;
/// Before the first touch, seconds: how the two came to it.
const BEFORE: f64 = 0.1;

/// Contacts that the moving attacker causes: the attacker comes at the defender, and faster than
/// the defender at the attacker.
pub(super) fn check(a: &Against<'_>) -> Vec<Finding> {
    let mut out = Vec::new();
    for c in a.defence.contacts() {
        if c.from > a.case.goal || c.closing < a.case.settings.contact || !causes(a, c) {
            continue;
        }
        let row = a.case.last_move(c.with, c.from);
        let closing = c.closing;
        let (what, severity) = if row.is_some_and(|x| screened(a, x, c)) {
            (What::ScreenContact { closing }, Severity::Violation)
        } else {
            (What::RunsInto { closing }, Severity::Warning)
        };
        out.push(
            Finding::new(what, severity, c.from)
                .until(c.to)
                .of([c.with])
                .by([c.who])
                .at(c.at)
                .about(row.map(|x| x.id)),
        );
    }
    out
}

/// Whether the defender is the one whom the screener is there to screen: any other is only in the
/// way.
fn screened(a: &Against<'_>, row: &TimedAction, c: &Contact) -> bool {
    let mut uses = a.case.uses.iter().filter(|u| u.screener == c.with);
    row.verb == Verb::Screen && uses.any(|u| u.by + AFTER > c.from && a.screened(u) == Some(c.who))
}

/// Whether the attacker brings the contact about.
fn causes(a: &Against<'_>, c: &Contact) -> bool {
    let t = (c.from - BEFORE).max(0.0);
    let (man, guard) = (a.case.player(c.with, t), a.defender(c.who, t));
    let Some(way) = direction(guard.at() - man.at()) else {
        return false;
    };
    let before = a.case.player(c.with, (t - BEFORE).max(0.0)).at();
    let push = ((man.at() - before) * (1.0 / BEFORE)).dot(way);
    let run = -Vec2::new(guard.vx, guard.vy).dot(way);
    push > run.max(a.case.settings.contact)
}
