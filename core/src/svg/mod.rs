//! Paints a scene as a standalone SVG document.

mod paint;
mod palette;

pub use paint::paint;
pub use palette::Palette;
