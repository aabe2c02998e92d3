//! In which language and measure a set is told.

use crate::play::Play;
use alloc::string::String;
use backcut::voice::{Units, Voice};
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen]
impl Play {
    /// From now on everything is told in the language of `tag` (BCP 47; English where there is no
    /// such language here), with its decimal mark, and in `units`: `m` or `ft`, else as the court
    /// measures. Pictures with words in them must be painted anew.
    #[allow(
        clippy::needless_pass_by_value,
        reason = "what comes over from JavaScript is owned"
    )]
    pub fn speak(&mut self, tag: &str, units: Option<String>) {
        let units = units.as_deref().and_then(Units::parse);
        let voice = Voice::new(tag, units.unwrap_or_default());
        self.core.speak(voice);
        if let Some(main) = &mut self.main {
            main.speak(voice);
        }
    }

    /// The tag of the language in which everything is told.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn language(&self) -> String {
        String::from(self.core.voice().language().tag())
    }
}
