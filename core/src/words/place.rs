//! Places in words.

use super::{names, phrases};
use crate::court::{Court, Side, Spot, SpotName};
use crate::math::{Point, distance};
use crate::set::{PlayerId, SetPlace};
use crate::voice::Voice;
use crate::voice::messages::action as m;
use alloc::string::String;

/// A written place, as where somebody goes: `to the top`, `toward the left slot`, `beside 4`.
#[must_use]
pub fn whither(place: &SetPlace, court: &Court, voice: Voice) -> String {
    Told::written(place, court).whither(voice)
}

/// Within this of a spot one is on it, metres. Common practice, no source.
const ON: f64 = 0.5;

/// A place, by what it is told by.
pub(super) enum Told {
    /// On this spot.
    On(Spot),
    /// Not far from it.
    Near(Spot),
    /// Beside a team mate.
    Beside(PlayerId),
}

impl Told {
    /// A written place. A spot that was moved, or a point, is told by the nearest spot.
    pub(super) fn written(place: &SetPlace, court: &Court) -> Self {
        match place {
            SetPlace::Spot { spot, dx, dy } if dx.abs() + dy.abs() < 1e-9 => Self::On(*spot),
            SetPlace::Spot { spot, dx, dy } => {
                let p = court.spot(*spot);
                Self::of(Point::new(p.x + dx, p.y + dy), court)
            }
            SetPlace::Point { x, y } => Self::of(Point::new(*x, *y), court),
            SetPlace::Beside(beside) => Self::Beside(beside.who),
        }
    }

    pub(super) fn of(p: Point, court: &Court) -> Self {
        let (spot, away) = nearest(p, court);
        if away <= ON {
            Self::On(spot)
        } else {
            Self::Near(spot)
        }
    }

    /// As where somebody goes: `to the top`, `toward the left slot`, `beside 4`.
    pub(super) fn whither(&self, voice: Voice) -> String {
        self.told("to", "toward", voice)
    }

    /// As where somebody is: `on the right wing`, `near the nail`, `beside 4`.
    pub(super) fn whereabouts(&self, voice: Voice) -> String {
        self.told("at", "near", voice)
    }

    fn told(&self, on: &str, near: &str, voice: Voice) -> String {
        let form = |spot: &Spot, form| {
            let side = match spot.side {
                Some(Side::Left) => "left",
                Some(Side::Right) => "right",
                None => "",
            };
            voice.form(phrases::spot(spot.name), form, &[("side", side)])
        };
        match self {
            Self::On(spot) => form(spot, on),
            Self::Near(spot) => form(spot, near),
            Self::Beside(who) => voice.fill(m::BESIDE, &[("who", &names([*who], voice))]),
        }
    }
}

fn nearest(p: Point, court: &Court) -> (Spot, f64) {
    let mut best = (
        Spot {
            name: SpotName::Top,
            side: None,
        },
        f64::INFINITY,
    );
    for (name, _, _, sided) in SpotName::TABLE {
        let sides: &[Option<Side>] = if sided {
            &[Some(Side::Left), Some(Side::Right)]
        } else {
            &[None]
        };
        for side in sides {
            let spot = Spot { name, side: *side };
            let away = distance(court.spot(spot), p);
            if away < best.1 {
                best = (spot, away);
            }
        }
    }
    best
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::court::RuleSet;

    #[test]
    fn a_place_is_told_by_the_spot_it_is_on_or_near() {
        let court = Court::of(RuleSet::Fiba);
        let wing = court.spot(Spot::parse("right wing").unwrap());
        let told = |x: f64, y: f64| Told::of(Point::new(wing.x + x, wing.y + y), &court);
        assert_eq!(
            told(0.0, 0.0).whereabouts(Voice::default()),
            "on the right wing"
        );
        assert_eq!(
            told(0.1, 0.2).whither(Voice::default()),
            "to the right wing"
        );
        assert_eq!(
            told(-0.8, 0.6).whereabouts(Voice::default()),
            "near the right wing"
        );
        assert_eq!(
            told(-0.8, 0.6).whither(Voice::default()),
            "toward the right wing"
        );
    }
}
