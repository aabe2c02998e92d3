//! A set on the other side of the court.

use super::{Action, Beat, Condition, Off, OffSide, Read, Set, SetPlace, Target, Via};

impl Set {
    /// The same set with left and right exchanged; mirrored twice it is the set itself.
    #[must_use]
    pub fn mirrored(mut self) -> Self {
        for player in &mut self.players {
            place(&mut player.at);
            player.facing = player.facing.map(|f| 0.0 - f);
        }
        self.beats.iter_mut().for_each(beat);
        self.reads.iter_mut().for_each(read);
        for directive in &mut self.defence.on {
            directive.side = directive.side.map(crate::court::Side::mirrored);
        }
        self
    }
}

fn place(at: &mut SetPlace) {
    match at {
        SetPlace::Spot { spot, dx, .. } => {
            *spot = spot.mirrored();
            *dx = 0.0 - *dx;
        }
        SetPlace::Point { x, .. } => *x = 0.0 - *x,
        SetPlace::Beside(b) => b.side = b.side.mirrored(),
    }
}

fn side(side: &mut Option<OffSide>) {
    *side = side.map(|s| match s {
        OffSide::Left => OffSide::Right,
        OffSide::Right => OffSide::Left,
        other => other,
    });
}

fn off(o: &mut Off) {
    side(&mut o.side);
}

fn action(a: &mut Action) {
    if let Some(Target::Place(p)) = &mut a.to {
        place(p);
    }
    if let Some(p) = &mut a.at {
        place(p);
    }
    for via in &mut a.via {
        match via {
            Via::Place(p) => place(p),
            Via::Off(o) => off(o),
        }
    }
    a.off.iter_mut().for_each(off);
    side(&mut a.side);
}

fn beat(b: &mut Beat) {
    b.actions.iter_mut().for_each(action);
}

fn read(r: &mut Read) {
    if let Condition::Does { side, .. } = &mut r.condition {
        *side = side.map(crate::court::Side::mirrored);
    }
    r.beats.iter_mut().for_each(beat);
    r.reads.iter_mut().for_each(read);
}
