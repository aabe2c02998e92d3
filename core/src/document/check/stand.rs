//! Whether a place lies on the court.

use super::{Checker, at};
use crate::court::SpotName;
use crate::document::json::Json;
use crate::document::told::told;
use crate::math::Point;
use crate::set::{PlayerId, SetPlace};
use crate::voice::messages::fault as m;
use alloc::format;
use alloc::string::{String, ToString};

/// How far behind a line a thrower-in may stand, metres. Common practice, no source.
const BEHIND: f64 = 1.0;

impl Checker<'_, '_, '_> {
    /// Reports a place off the court, or beside nobody; `own` are those who go there.
    pub(super) fn place(&mut self, place: &SetPlace, node: &Json, own: &[PlayerId]) {
        let (point, behind) = match place {
            SetPlace::Spot { spot, dx, dy } => {
                let p = self.court.spot(*spot);
                let throw_in = matches!(spot.name, SpotName::Blob | SpotName::Slob);
                (
                    Point::new(p.x + dx, p.y + dy),
                    if throw_in { BEHIND } else { 0.0 },
                )
            }
            SetPlace::Point { x, y } => (Point::new(*x, *y), 0.0),
            SetPlace::Beside(beside) => {
                self.known_one(beside.who, at(node, "beside"));
                if own.contains(&beside.who) {
                    self.report.add(node.start, "beside-oneself", &|_| {
                        let who = beside.who.number();
                        told(m::BESIDE_SELF.with("who", who.to_string()), m::BESIDE)
                    });
                }
                return;
            }
        };
        if self.court.in_bounds(point, -behind) {
            return;
        }
        let marks = *self.court.marks();
        let throw_in = self.court.in_bounds(point, -BEHIND) && behind == 0.0;
        self.report.add(node.start, "off-court", &|_| {
            let told = told(
                m::OFF_COURT,
                m::COURT_IS
                    .with("side", metres(marks.sideline))
                    .with("back", metres(marks.baseline))
                    .with("half", metres(marks.half)),
            );
            if throw_in {
                told.hint(m::THROW_IN_SPOTS)
            } else {
                told
            }
        });
    }
}

/// A positive length to the millimetre. Not by `Display`, whose shortest digits of any `f64` weigh
/// more than the rest of this folder.
fn metres(length: f64) -> String {
    let millimetres = (length * 1000.0 + 0.5) as u32;
    let digits = format!("{}.{:03}", millimetres / 1000, millimetres % 1000);
    String::from(digits.trim_end_matches('0').trim_end_matches('.'))
}
