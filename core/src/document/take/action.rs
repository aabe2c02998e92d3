//! Actions and their ties.

use super::{Taker, flag, items, number, one_or_more, place, player, text, word};
use crate::document::json::Json;
use crate::document::words;
use crate::math::Listed;
use crate::set::{Action, Edge, Kind, Tie, TieRelation, Verb};

impl Taker<'_, '_, '_> {
    pub(super) fn action(&mut self, node: &Json) -> Action {
        self.actions += 1;
        let verb = word(node, "do").and_then(words::verb).unwrap_or(Verb::Hold);
        let players = |key| one_or_more(node, key).filter_map(player).listed();
        let stands = self.report.source.place(node.start);
        let mut ties = alloc::vec::Vec::new();
        for (key, relation) in [("after", TieRelation::After), ("with", TieRelation::With)] {
            ties.extend(one_or_more(node, key).filter_map(|tie| self.tie(tie, relation)));
        }
        Action {
            id: text(node, "id"),
            who: players("who"),
            verb,
            kind: word(node, "kind").and_then(|k| Kind::parse(verb, k)),
            to: node.get("to").and_then(place::target),
            at: node.get("at").and_then(place::place),
            via: items(node, "via").filter_map(place::via).listed(),
            for_whom: players("for"),
            off: one_or_more(node, "off")
                .filter_map(|o| place::off(o, "who"))
                .listed(),
            side: word(node, "side").and_then(words::off_side),
            pace: word(node, "pace").and_then(words::pace),
            takes: number(node, "takes"),
            ties,
            free: flag(node, "free"),
            say: text(node, "say"),
            of: word(node, "of").and_then(words::faked),
            place: stands,
        }
    }

    fn tie(&mut self, node: &Json, relation: TieRelation) -> Option<Tie> {
        let name = node.get("id").unwrap_or(node);
        let (scope, to) = self.resolve(name, name.text()?)?;
        let usual = match relation {
            TieRelation::After => Edge::End,
            TieRelation::With => Edge::Start,
        };
        Some(Tie {
            relation,
            to,
            scope,
            edge: word(node, "edge").and_then(words::edge).unwrap_or(usual),
            of: node.get("of").and_then(player),
            lag: number(node, "lag").unwrap_or(0.0),
            mine: word(node, "mine")
                .and_then(words::edge)
                .unwrap_or(Edge::Start),
            place: self.report.source.place(node.start),
        })
    }
}
