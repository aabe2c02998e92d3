//! What the first frame can do without.

use crate::play::Play;
use alloc::string::String;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen]
impl Play {
    /// What happens in a beat, counted from 0, in a coach's words.
    #[must_use]
    pub fn caption(&self, beat: usize) -> String {
        self.core.caption(beat)
    }

    /// The picture at `t` in words.
    #[must_use]
    pub fn describe(&self, t: f64) -> String {
        self.core.describe(t)
    }

    /// A number over the bits of all frames, to compare builds.
    #[wasm_bindgen(js_name = frameHash)]
    #[must_use]
    pub fn frame_hash(&self, fps: u32) -> u64 {
        self.core.timeline().hash(fps)
    }
}
