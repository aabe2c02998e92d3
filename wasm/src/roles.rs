//! Role cards, said to the player.

use crate::fault::set;
use crate::play::Play;
use alloc::string::String;
use backcut::set::PlayerId;
use backcut::svg::Palette as Colours;
use js_sys::{Array, Object};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen]
impl Play {
    /// The role card of a player, by number: `{player, title, part, begin, steps, cautions}`, each step
    /// `{t, end, time, text, wait, look, why, reads, beat}`, seconds, which `time` has in words, beats
    /// counted from 0.
    /// Undefined of somebody who takes no part.
    #[must_use]
    pub fn card(&self, player: u8) -> JsValue {
        let card = PlayerId::new(player).and_then(|who| self.core.card(who));
        let Some(card) = card else {
            return JsValue::UNDEFINED;
        };
        let words = self.core.card_words(&card);
        let steps: Array = card
            .steps
            .iter()
            .zip(&words.steps)
            .map(|(step, told)| {
                let object = Object::new();
                let reads: Array = told
                    .reads
                    .iter()
                    .map(|r| JsValue::from(r.as_str()))
                    .collect();
                set(&object, "t", step.start.into());
                set(&object, "end", step.end.into());
                set(&object, "time", told.time.as_str().into());
                set(&object, "text", told.text.as_str().into());
                set(&object, "wait", told.wait.as_str().into());
                set(&object, "look", told.look.as_str().into());
                set(&object, "why", told.why.as_str().into());
                set(&object, "reads", reads.into());
                set(&object, "beat", JsValue::from(step.beat));
                JsValue::from(object)
            })
            .collect();
        let cautions = self.core.cautions_for(card.who).into_iter();
        let cautions: Array = cautions.map(JsValue::from).collect();
        let object = Object::new();
        set(&object, "player", player.into());
        set(&object, "part", words.part.as_str().into());
        set(&object, "title", words.title.as_str().into());
        set(&object, "begin", words.begin.as_str().into());
        set(&object, "steps", steps.into());
        set(&object, "cautions", cautions.into());
        object.into()
    }

    /// What a player does in the whole set, drawn for paper: a standalone SVG, black on white, `width`
    /// CSS pixels wide.
    #[wasm_bindgen(js_name = cardPicture)]
    #[must_use]
    pub fn card_picture(&self, player: u8, width: f64) -> String {
        let who = PlayerId::new(player);
        let card = who.and_then(|who| self.core.card(who));
        let Some(card) = card else {
            return String::new();
        };
        let words = self.core.card_words(&card);
        let named = (words.title.as_str(), words.begin.as_str());
        self.core
            .card_poster(card.who, width, &Colours::print(), named)
    }
}
