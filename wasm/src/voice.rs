//! In which language and measure a set is told.

use crate::fault::thrown;
use crate::play::{Play, options};
use alloc::string::String;
use backcut::play::{Options, Play as Core};
use backcut::voice::{Units, Voice};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen]
impl Play {
    /// [`Play::open`], told from the start as [`Play::speak`] has it, its faults too.
    ///
    /// # Errors
    /// An array of faults where the file, or what is asked for, cannot be understood.
    #[wasm_bindgen(js_name = openIn)]
    #[allow(
        clippy::needless_pass_by_value,
        reason = "what comes over from JavaScript is owned"
    )]
    pub fn open_in(
        tag: &str,
        units: Option<String>,
        bytes: &[u8],
        court: Option<String>,
        level: Option<String>,
        mirror: bool,
    ) -> Result<Self, JsValue> {
        let voice = voice(tag, units.as_deref());
        options(court.as_deref(), level.as_deref(), mirror)
            .and_then(|options| Core::open(bytes, &Options { voice, ..options }))
            .map(Self::of)
            .map_err(|faults| thrown(&faults, voice))
    }

    /// From now on everything is told in the language of `tag` (BCP 47; English where there is no
    /// such language here), with its decimal mark, and in `units`: `m` or `ft`, else as the court
    /// measures. Pictures with words in them must be painted anew.
    #[allow(
        clippy::needless_pass_by_value,
        reason = "what comes over from JavaScript is owned"
    )]
    pub fn speak(&mut self, tag: &str, units: Option<String>) {
        let voice = voice(tag, units.as_deref());
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

fn voice(tag: &str, units: Option<&str>) -> Voice {
    Voice::new(tag, units.and_then(Units::parse).unwrap_or_default())
}
