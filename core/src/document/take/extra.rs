//! The author's own fields.

use crate::document::json::{Json, Value};
use crate::document::place::Source;
use crate::fault::AUTHORING;
use crate::set::Extra;
use alloc::string::ToString;
use alloc::vec::Vec;

/// Every `x-…` field of the file, in file order.
pub(super) fn all(tree: &Json, source: &Source<'_>) -> Vec<Extra> {
    let mut found = Vec::new();
    if !AUTHORING {
        return found;
    }
    let mut open = alloc::vec![tree];
    while let Some(node) = open.pop() {
        if let Value::List(items) = &node.value {
            open.extend(items.iter().rev());
        }
        for member in node.members() {
            if member.key.starts_with("x-") {
                found.push(Extra {
                    within: source.pointer(node.start),
                    name: member.key.clone(),
                    json: source.slice(&member.value).to_string(),
                });
            }
        }
        open.extend(
            node.members()
                .iter()
                .rev()
                .filter(|m| !m.key.starts_with("x-"))
                .map(|m| &m.value),
        );
    }
    found
}
