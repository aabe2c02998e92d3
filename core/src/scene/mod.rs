//! What a picture consists of: a display list in CSS pixels, coloured by role.
//!
//! Painters (svg here, canvas in the wasm layer) know only this. Pixels, not metres, since the
//! look sets least widths in pixels; the court's scale is settled before anything is drawn.

mod item;
pub use item::{Anchor, Dash, Item, Role, Scene, TextStyle};
