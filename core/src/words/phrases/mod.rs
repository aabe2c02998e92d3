//! Which message of the catalogue says what: choices by kind, verb, spot and code, no words.

mod action;
#[cfg(feature = "authoring")]
pub(super) mod card;
mod finding;
mod kind;
mod look;
mod place;
#[cfg(feature = "authoring")]
mod stop;

pub(super) use action::{doing, event, fakes, holds, moves, passes, shoots};
pub(super) use finding::{sentence, under};
pub(super) use kind::kind;
pub(super) use look::{chance, coverage, openness};
pub(super) use place::spot;
#[cfg(feature = "authoring")]
pub(super) use stop::{awaited, goes};
