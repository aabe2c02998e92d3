//! The user's own film beside the set; the film itself stays with the page. What was filmed, and
//! tied by marks, is the set as it is drawn, whichever line is shown.

use crate::fault::set;
use crate::play::Play;
use alloc::borrow::ToOwned;
use alloc::string::String;
use backcut::play::Play as Core;
use js_sys::{Array, Object};
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen]
impl Play {
    /// The marks that tie set and film, in order of time: `{t, film, text}`, seconds, and how late
    /// what was filmed is there, in words.
    #[wasm_bindgen(getter, js_name = filmMarks)]
    #[must_use]
    pub fn film_marks(&self) -> Array {
        let main = self.main();
        let all = main.film_differences();
        let told = all.iter().map(|d| {
            let object = Object::new();
            set(&object, "t", d.t.into());
            set(&object, "film", d.film.into());
            set(&object, "text", main.film_difference(d).into());
            object
        });
        told.collect()
    }

    /// Until when the line that is shown is the one that was filmed, seconds: a read leaves it.
    #[wasm_bindgen(getter, js_name = filmedUntil)]
    #[must_use]
    pub fn filmed_until(&self) -> f64 {
        self.core.left_at().unwrap_or(f64::INFINITY)
    }

    /// The film's instant at an instant of the set.
    #[wasm_bindgen(js_name = filmAt)]
    #[must_use]
    pub fn film_at(&self, t: f64) -> f64 {
        self.main().film().film_at(t)
    }

    /// The set's instant at an instant of the film.
    #[wasm_bindgen(js_name = setAt)]
    #[must_use]
    pub fn set_at(&self, film: f64) -> f64 {
        self.main().film().set_at(film)
    }

    /// Seconds of film that go by in a second of the set.
    #[wasm_bindgen(js_name = filmRate)]
    #[must_use]
    pub fn film_rate(&self, t: f64) -> f64 {
        self.main().film().rate_at(t)
    }

    /// Ties an instant of the set to one of the film; the mark is in [`Play::text`] from then on.
    /// Else why that cannot be.
    #[wasm_bindgen(js_name = tieFilm)]
    #[must_use]
    pub fn tie_film(&mut self, t: f64, film: f64) -> Option<String> {
        let refused = self.main_mut().tie_film(t, film).err();
        refused.map(|why| self.core.not_tied(why).to_owned())
    }

    /// Takes a mark away, counted from 0.
    #[wasm_bindgen(js_name = untieFilm)]
    pub fn untie_film(&mut self, index: usize) {
        self.main_mut().untie_film(index);
    }
}

impl Play {
    fn main_mut(&mut self) -> &mut Core {
        self.main.as_mut().unwrap_or(&mut self.core)
    }
}
