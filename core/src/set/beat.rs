//! Players, places and beats.

#[cfg(feature = "authoring")]
use super::ReadInstant;
use super::{Action, PlayerId};
use crate::athlete::Level;
use crate::court::{Side, Spot};
use crate::fault::Place;
use alloc::string::String;
use alloc::vec::Vec;

/// Where in the file something was written, so that a fault found later still points there.
pub type Pointer = Place;

/// A player as the set begins.
#[derive(Clone, Debug, PartialEq)]
pub struct Player {
    /// Number.
    pub id: PlayerId,
    /// Where they stand.
    pub at: SetPlace,
    /// Whether they hold the ball.
    pub ball: bool,
    /// Which way they look, radians in the court's convention; `None`: at the ball.
    pub facing: Option<f64>,
    /// Level, where it differs from the set's.
    pub level: Option<Level>,
}

/// A place on the court as written.
#[derive(Clone, Debug, PartialEq)]
pub enum SetPlace {
    /// A named spot, moved by `dx`, `dy` metres.
    Spot {
        /// The spot.
        spot: Spot,
        /// Metres to the offence's right.
        dx: f64,
        /// Metres toward half court.
        dy: f64,
    },
    /// `[x, y]` in metres.
    Point {
        /// Metres to the offence's right of the ring.
        x: f64,
        /// Metres from the ring toward half court.
        y: f64,
    },
    /// Beside a team mate.
    Beside(Beside),
}

/// A place beside a team mate, body to body.
#[derive(Clone, Debug, PartialEq)]
pub struct Beside {
    /// Who.
    pub who: PlayerId,
    /// On which side, as the offence sees it when it faces the ring.
    pub side: Side,
    /// Metres between the shoulders.
    pub gap: f64,
}

/// A stage of the set that a coach teaches as one step.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Beat {
    /// Its name.
    pub title: Option<String>,
    /// The author's words; they win over generated ones.
    pub say: Option<String>,
    /// What happens, in written order.
    pub actions: Vec<Action>,
    /// Where it stands in the file.
    pub place: Pointer,
}

/// A stretch to be shown slowly.
#[cfg(feature = "authoring")]
#[derive(Clone, Debug, PartialEq)]
pub struct SlowStretch {
    /// From there; of a beat, from its start.
    pub from: SlowEnd,
    /// To there; of a beat, to its end.
    pub to: SlowEnd,
    /// Factor on speed, 0 < rate ≤ 1.
    pub rate: f64,
}

/// A stretch to be shown slowly; what shows only the first picture knows no more than that it is
/// there.
#[cfg(not(feature = "authoring"))]
#[derive(Clone, Debug, PartialEq)]
pub struct SlowStretch;

/// One end of a slow stretch.
#[cfg(feature = "authoring")]
#[derive(Clone, Debug, PartialEq)]
pub enum SlowEnd {
    /// A beat; 1 is the first.
    Beat(u16),
    /// An instant of an action of the main line.
    Instant(ReadInstant),
}

/// One mark that ties an instant of the set to one of a film.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FilmMark {
    /// Seconds of the set.
    pub t: f64,
    /// Seconds of the film.
    pub film: f64,
}

impl FilmMark {
    /// Latest instant of a set that can be marked, seconds.
    pub const LATEST: i32 = 60;
    /// Latest instant of a film that can be marked, seconds: over a day of it.
    pub const LATEST_OF_FILM: i32 = 100_000;
    /// How many marks a set may have.
    pub const MOST: usize = 50;
}
