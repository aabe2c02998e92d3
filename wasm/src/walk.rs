//! A walk through the set: where it stops and why, and ghosts of what is next.

use crate::fault::set;
use crate::play::Play;
use alloc::vec::Vec;
use js_sys::{Array, Object};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen]
impl Play {
    /// Where a walk through the set stops: `{t, text, players}`, in time order.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn stops(&self) -> Array {
        let stops = self.core.stops();
        let told = stops.iter().map(|stop| {
            let object = Object::new();
            let players = stop.players().into_iter();
            let players: Array = players.map(|p| JsValue::from(p.number())).collect();
            set(&object, "t", stop.t.into());
            set(&object, "text", self.core.stop(stop).into());
            set(&object, "players", players.into());
            JsValue::from(object)
        });
        told.collect()
    }

    /// What is shown slowly: of each stretch from when, until when, and times which speed.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn slow(&self) -> Vec<f64> {
        let all = self.judged.slow.iter();
        all.flat_map(|s| [s.from, s.to, s.rate]).collect()
    }

    /// From now on shows where everybody stands at `until` as ghosts; without it nobody.
    #[wasm_bindgen(js_name = showGhosts)]
    pub fn show_ghosts(&mut self, until: Option<f64>) {
        self.judged.ghosts = until;
    }
}
