//! The page side of Backcut: opens a set, hands out frames, paints pictures on a canvas.
//!
//! Thin on purpose. Everything that is known about the game lives in the crate `backcut`; here are
//! only the crossing to JavaScript and the canvas painter, which knows nothing but display lists.
//! One [`Play`] is one open set; the page frees it when its element leaves the document.
//!
//! The package holds two builds: without the feature `full` it has what the first frame and playing
//! need, with it all the rest. A page starts with the first and fetches the other when asked.

#![cfg_attr(target_arch = "wasm32", no_std)]

extern crate alloc;

mod canvas;
mod fault;
#[cfg(feature = "full")]
mod film;
mod frame;
#[cfg(feature = "full")]
mod full;
mod judged;
#[cfg(feature = "full")]
mod link;
mod play;
#[cfg(feature = "full")]
mod quiz;
#[cfg(feature = "full")]
mod reads;
#[cfg(feature = "full")]
mod roles;
#[cfg(target_arch = "wasm32")]
mod runtime;
#[cfg(feature = "full")]
mod tried;
#[cfg(feature = "full")]
mod voice;
#[cfg(feature = "full")]
mod walk;

pub use canvas::Palette;
#[cfg(feature = "full")]
pub use link::open_link;
pub use play::{Play, byte_limit, empty_court_height, paint_empty_court};
