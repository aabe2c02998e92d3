//! One action by itself: who may do it, to whom, and what it needs.

use super::{Checker, at};
use crate::document::json::Json;
use crate::document::told::told;
use crate::math::Listed;
use crate::set::{Action, Family, Kind, PlayerId, Target, Verb, Via};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

impl Checker<'_, '_, '_> {
    pub(super) fn action(&mut self, action: &Action, node: &Json) {
        self.who(action, node);
        self.places(action, node);
        match action.verb {
            Verb::Pass | Verb::Handoff => self.receiver(action, node),
            Verb::Cut | Verb::Dribble => {
                self.destination(action, node);
                self.offs(action, node);
            }
            Verb::Screen => self.screen(action, node),
            Verb::Fake => {
                if let Some(to) = action.receiver() {
                    self.not_oneself(action, &[to], at(node, "to"), "fake-to-oneself");
                }
            }
            Verb::Shot | Verb::Hold => {}
        }
    }

    fn who(&mut self, action: &Action, node: &Json) {
        let who = at(node, "who");
        self.known(&action.who, who);
        self.once(&action.who, who);
        if action.who.len() > 1 && !matches!(action.verb, Verb::Screen | Verb::Hold | Verb::Fake) {
            self.report.add(who.start, "one-player-only", &|_| {
                told(
                    format!("{} players do one {}", action.who.len(), action.verb.name()),
                    "only a screen, a hold and a fake are done by several as one; write one \
                     action for each player",
                )
            });
        }
    }

    fn once(&mut self, who: &[PlayerId], node: &Json) {
        let twice = who
            .iter()
            .enumerate()
            .any(|(i, p)| who.iter().take(i).any(|q| q == p));
        if twice {
            self.report.add(node.start, "same-player-twice", &|_| {
                told("a player stands twice in this list", "each player once")
            });
        }
    }

    fn places(&mut self, action: &Action, node: &Json) {
        match &action.to {
            Some(Target::Place(place)) => self.place(place, at(node, "to"), &action.who),
            Some(Target::Player(player)) => self.known_one(*player, at(node, "to")),
            None => {}
        }
        if let Some(place) = &action.at {
            self.place(place, at(node, "at"), &action.who);
        }
        let nodes = node.get("via").map_or(&[][..], Json::items);
        for (via, node) in action.via.iter().zip(nodes) {
            match via {
                Via::Place(place) => self.place(place, node, &action.who),
                Via::Off(off) => {
                    self.known_one(off.who, at(node, "off"));
                    self.not_oneself(action, &[off.who], node, "off-oneself");
                }
            }
        }
    }

    fn not_oneself(
        &mut self,
        action: &Action,
        others: &[PlayerId],
        node: &Json,
        code: &'static str,
    ) {
        let Some(own) = others.iter().find(|p| action.who.contains(p)) else {
            return;
        };
        let own = own.number();
        self.report.add(node.start, code, &|_| {
            let found = match action.verb {
                Verb::Pass => format!("{own} passes to {own}"),
                Verb::Handoff => format!("{own} hands the ball to {own}"),
                Verb::Screen => format!("{own} screens for {own}"),
                Verb::Fake => format!("{own} fakes at {own}"),
                _ => format!("{own} cannot use a screen of {own}"),
            };
            told(found, "name a team mate")
        });
    }

    fn receiver(&mut self, action: &Action, node: &Json) {
        if let Some(to) = action.receiver() {
            let code = match action.verb {
                Verb::Pass => "pass-to-oneself",
                _ => "handoff-to-oneself",
            };
            self.not_oneself(action, &[to], at(node, "to"), code);
            return;
        }
        let written = action.to.is_some();
        self.report
            .add(at(node, "to").start, "receiver-missing", &|_| {
                let found = match (written, action.verb) {
                    (true, _) => "this goes to a place, not to a player",
                    (false, Verb::Pass) => "nobody receives this pass",
                    (false, _) => "nobody takes this hand-off",
                };
                let told = told(found, "\"to\" is the number of a team mate");
                if written {
                    told.hint("The place of the catch or the exchange is \"at\".")
                } else {
                    told
                }
            });
    }

    fn destination(&mut self, action: &Action, node: &Json) {
        if action.receiver().is_some() {
            self.report.add(at(node, "to").start, "place-needed", &|_| {
                told(
                    format!("a {} goes to a place, not to a player", action.verb.name()),
                    "a spot, [x, y], or {\"beside\": 4, \"side\": \"left\"}",
                )
            });
        }
        // These kinds say where they end: at the ring, or where they began.
        let knows_its_end = action.kind.is_some_and(|kind| {
            kind.row().family == Family::Rim || matches!(kind, Kind::Hesitation | Kind::Crossover)
        });
        if action.to.is_none() && node.get("to").is_none() && !knows_its_end {
            self.report.add(node.start, "missing-field", &|_| {
                told(
                    format!("a {} has no \"to\"", action.verb.name()),
                    "\"to\" is where it ends: a spot like \"left wing\", or [x, y]",
                )
            });
        }
    }

    fn offs(&mut self, action: &Action, node: &Json) {
        let off = at(node, "off");
        let screeners: Vec<PlayerId> = action.off.iter().map(|o| o.who).listed();
        self.once(&screeners, off);
        self.not_oneself(action, &screeners, off, "off-oneself");
        let single = core::slice::from_ref(off);
        let nodes = if off.items().is_empty() {
            single
        } else {
            off.items()
        };
        for (who, node) in screeners.iter().zip(nodes) {
            self.known_one(*who, at(node, "who"));
        }
    }

    fn screen(&mut self, action: &Action, node: &Json) {
        if action.for_whom.is_empty() {
            self.report.add(node.start, "screen-for-nobody", &|_| {
                told(
                    "this screen is for nobody",
                    "\"for\" is the number of a team mate",
                )
            });
        }
        let whom = at(node, "for");
        self.known(&action.for_whom, whom);
        self.once(&action.for_whom, whom);
        self.not_oneself(action, &action.for_whom, whom, "screen-for-oneself");
        if action.kind == Some(Kind::Gate) && action.who.len() != 2 {
            self.report
                .add(at(node, "who").start, "gate-needs-two", &|_| {
                    let found = match action.who.len() {
                        1 => String::from("one player cannot be a gate"),
                        n => format!("{n} players are a gate"),
                    };
                    told(found, "two screeners, as a list: \"who\": [4, 5]")
                });
        }
    }
}
