//! Reads and the defence.

use super::{Taker, guarded, items, number, one_or_more, player, text, word};
use crate::document::json::Json;
use crate::document::words;
use crate::math::Listed;
use crate::set::{Condition, Coverage, Defence, Directive, Edge, Read, ReadInstant, Scope};
use alloc::string::ToString;
use alloc::vec::Vec;

impl<'t> Taker<'_, '_, 't> {
    /// The reads of a list; as deep as reads nest, which the depth of the text bounds.
    pub(super) fn reads(&mut self, list: Option<&'t Json>) -> Vec<Read> {
        let nodes = list.map_or(&[][..], Json::items);
        nodes.iter().map(|node| self.read(node)).listed()
    }

    fn read(&mut self, node: &'t Json) -> Read {
        let place = self.report.source.place(node.start);
        let at = self.instant(node.get("at").unwrap_or(node));
        let beats = node.get("beats");
        self.enter(beats);
        let read = Read {
            title: text(node, "title"),
            at,
            by: one_or_more(node, "by").filter_map(player).listed(),
            condition: node
                .get("if")
                .and_then(condition)
                .unwrap_or(Condition::Coverage(Coverage::Chase)),
            beats: self.beats(beats),
            reads: self.reads(node.get("reads")),
            place,
        };
        self.scopes.pop();
        read
    }

    pub(super) fn instant(&mut self, at: &Json) -> ReadInstant {
        let id = at.get("id");
        let name = id.and_then(Json::text).unwrap_or("");
        let found = id.and_then(|id| self.resolve(id, name));
        ReadInstant {
            action: name.to_string(),
            main: found.filter(|f| f.0 == Scope::Main).map(|f| f.1),
            edge: word(at, "edge")
                .and_then(words::edge)
                .unwrap_or(Edge::Start),
            of: at.get("of").and_then(player),
        }
    }
}

fn condition(node: &Json) -> Option<Condition> {
    if let Some(name) = word(node, "coverage") {
        return words::coverage(name).map(Condition::Coverage);
    }
    if let Some(name) = word(node, "does") {
        return Some(Condition::Does {
            who: guarded(node, "who")?,
            does: words::deed(name)?,
            side: word(node, "side").and_then(words::side),
        });
    }
    if let Some(under) = number(node, "under") {
        return Some(Condition::Separation {
            who: guarded(node, "who")?,
            under,
        });
    }
    Some(Condition::LaneClosed {
        from: player(node.get("from")?)?,
        to: player(node.get("to")?)?,
    })
}

pub(super) fn defence(node: &Json) -> Defence {
    Defence {
        all: word(node, "all").and_then(words::coverage),
        on: items(node, "on").filter_map(directive).listed(),
    }
}

fn directive(node: &Json) -> Option<Directive> {
    Some(Directive {
        action: text(node, "id")?,
        who: guarded(node, "who")?,
        does: word(node, "does").and_then(words::deed)?,
        side: word(node, "side").and_then(words::side),
    })
}
