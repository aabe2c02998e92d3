//! Places, targets and the use of screens.

use super::{number, player, word};
use crate::court::Spot;
use crate::document::json::{Json, Value};
use crate::document::words;
use crate::set::{Beside, Off, SetPlace, Target, Via};

/// Metres between two bodies that stand beside each other, where the file does not say.
/// Common practice, no source.
const GAP: f64 = 0.6;

pub(super) fn place(node: &Json) -> Option<SetPlace> {
    match &node.value {
        Value::Text(text) => Some(SetPlace::Spot {
            spot: Spot::parse(text)?,
            dx: 0.0,
            dy: 0.0,
        }),
        Value::List(items) => match items.as_slice() {
            [x, y] => Some(SetPlace::Point {
                x: x.number()?,
                y: y.number()?,
            }),
            _ => None,
        },
        Value::Object(_) => match node.get("beside") {
            Some(who) => Some(SetPlace::Beside(Beside {
                who: player(who)?,
                side: word(node, "side").and_then(words::side)?,
                gap: number(node, "gap").unwrap_or(GAP),
            })),
            None => Some(SetPlace::Spot {
                spot: Spot::parse(word(node, "spot")?)?,
                dx: number(node, "dx").unwrap_or(0.0),
                dy: number(node, "dy").unwrap_or(0.0),
            }),
        },
        _ => None,
    }
}

pub(super) fn target(node: &Json) -> Option<Target> {
    match node.value {
        Value::Number(_) => player(node).map(Target::Player),
        _ => place(node).map(Target::Place),
    }
}

/// A screener: the number alone, or an object that names them as `key`.
pub(super) fn off(node: &Json, key: &str) -> Option<Off> {
    Some(Off {
        who: player(node.get(key).unwrap_or(node))?,
        side: word(node, "side").and_then(words::off_side),
    })
}

pub(super) fn via(node: &Json) -> Option<Via> {
    match node.get("off") {
        Some(_) => off(node, "off").map(Via::Off),
        None => place(node).map(Via::Place),
    }
}
