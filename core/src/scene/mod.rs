//! What a picture consists of: a display list in CSS pixels, coloured by role.
//!
//! Painters (svg here, canvas in the wasm layer) know only this. Pixels, not metres, since the
//! look sets least widths in pixels; the court's scale is settled before anything is drawn.

mod ball;
mod bits;
mod close;
mod court;
mod dimension;
#[cfg(test)]
pub(crate) mod fixture;
#[cfg(feature = "authoring")]
mod fork;
mod ghost;
#[cfg(feature = "authoring")]
mod guess;
#[cfg(feature = "authoring")]
mod instants;
mod item;
mod key;
mod margin;
mod mark;
mod measure;
mod mover;
#[cfg(feature = "authoring")]
mod part;
mod picture;
mod shape;
mod strip;
#[cfg(test)]
mod tests;
mod trail;
mod verdict;
mod view;
mod way;

pub use close::{CloseUp, close_up};
pub use court::court;
pub use item::{Anchor, Area, Dash, Item, Role, Scene, TextStyle};
pub use key::key;
#[cfg(feature = "authoring")]
pub use part::part;
pub use picture::{Staged, beat, movers, picture};
pub use strip::{StripGeometry, StripRow, StripView, strip};
pub use verdict::{Flag, Verdict};
pub use view::View;
