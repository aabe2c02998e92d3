//! Written places to metres.

use crate::athlete::Limits;
use crate::court::Court;
use crate::math::{Point, Vec2};
use crate::set::{PlayerId, SetPlace};

/// Where everybody stands as far as the written order has come.
#[derive(Clone, Copy, Debug)]
pub(super) struct Floor<'a> {
    pub court: &'a Court,
    pub at: [Option<Point>; 5],
    pub limits: [Limits; 5],
}

impl Floor<'_> {
    /// Where a player stands now; the ring for one who does not play.
    pub(super) fn of(&self, who: PlayerId) -> Point {
        self.at
            .get(who.index())
            .copied()
            .flatten()
            .unwrap_or(Point::ZERO)
    }

    /// Puts a player.
    pub(super) fn put(&mut self, who: PlayerId, at: Point) {
        if let Some(slot) = self.at.get_mut(who.index()) {
            *slot = Some(at);
        }
    }

    /// A player's limits.
    pub(super) fn limits(&self, who: PlayerId) -> &Limits {
        self.limits.get(who.index()).unwrap_or(&self.limits[0])
    }

    /// A written place in metres.
    pub(super) fn resolve(&self, place: &SetPlace, who: PlayerId) -> Point {
        match place {
            SetPlace::Spot { spot, dx, dy } => self.court.spot(*spot) + Vec2::new(*dx, *dy),
            SetPlace::Point { x, y } => Point::new(*x, *y),
            SetPlace::Beside(beside) => {
                let gap = beside.gap
                    + 0.5 * (self.limits(who).shoulder + self.limits(beside.who).shoulder);
                self.of(beside.who) + Vec2::new(beside.side.sign() * gap, 0.0)
            }
        }
    }
}
