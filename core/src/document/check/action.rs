//! One action by itself: who may do it, to whom, and what it needs.

use super::{Checker, at};
use crate::document::json::Json;
use crate::document::told::told;
use crate::math::Listed;
use crate::set::{Action, Family, Kind, PlayerId, Target, Verb, Via};
use crate::voice::Said;
use crate::voice::messages::fault as m;
use alloc::string::ToString;
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
                    m::SEVERAL_DO_ONE
                        .with("n", action.who.len().to_string())
                        .with("verb", action.verb.name()),
                    m::ONE_EACH,
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
                told(m::TWICE_IN_LIST, m::EACH_ONCE)
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
            let message = match action.verb {
                Verb::Pass => m::PASSES_TO_SELF,
                Verb::Handoff => m::HANDS_TO_SELF,
                Verb::Screen => m::SCREENS_FOR_SELF,
                Verb::Fake => m::FAKES_AT_SELF,
                _ => m::OWN_SCREEN,
            };
            told(message.with("own", own.to_string()), m::NAME_MATE)
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
                    (true, _) => m::TO_A_PLACE,
                    (false, Verb::Pass) => m::NOBODY_RECEIVES,
                    (false, _) => m::NOBODY_TAKES,
                };
                let told = told(found, m::TO_IS_MATE);
                if written {
                    told.hint(m::CATCH_IS_AT)
                } else {
                    told
                }
            });
    }

    fn destination(&mut self, action: &Action, node: &Json) {
        if action.receiver().is_some() {
            self.report.add(at(node, "to").start, "place-needed", &|_| {
                told(
                    m::VERB_NEEDS_PLACE.with("verb", action.verb.name()),
                    m::PLACE_FORMS,
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
                    m::VERB_LACKS_TO.with("verb", action.verb.name()),
                    m::TO_IS_END,
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
                told(m::FOR_NOBODY, m::FOR_IS_MATE)
            });
        }
        let whom = at(node, "for");
        self.known(&action.for_whom, whom);
        self.once(&action.for_whom, whom);
        self.not_oneself(action, &action.for_whom, whom, "screen-for-oneself");
        if action.kind == Some(Kind::Gate) && action.who.len() != 2 {
            self.report
                .add(at(node, "who").start, "gate-needs-two", &|_| {
                    let found: Said = match action.who.len() {
                        1 => m::NO_GATE_ALONE.into(),
                        n => m::GATE_OF.with("n", n.to_string()),
                    };
                    told(found, m::TWO_SCREENERS)
                });
        }
    }
}
