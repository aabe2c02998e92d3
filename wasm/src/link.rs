//! Sets in links.

use crate::fault::{set, thrown};
use crate::play::{Play, mask};
use alloc::string::String;
use alloc::vec::Vec;
use backcut::document;
use backcut::link::{self, View};
use backcut::set::Coverage;
use backcut::voice::{Units, Voice};
use js_sys::{Array, Object, Reflect, Uint8Array};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen]
impl Play {
    /// The set with all its reads, as it is shown, and a view of it as the fragment of a link, without the `#`.
    ///
    /// `view` has any of `{from, until, beat, read, follow, coverage, speed, paused}`: seconds, a
    /// beat counted from 1, a list of reads counted from 1 (each within the one before), bit 0 for
    /// player 1, a coverage by name, times the real speed, a flag.
    ///
    /// # Errors
    /// An array of faults where the set is too large for a link.
    pub fn link(&self, view: &JsValue) -> Result<String, JsValue> {
        let written = link::write(self.main().set(), &asked(view));
        written.map_err(|faults| thrown(&faults, self.core.voice()))
    }

    /// The set with all its reads, as it is shown, as a set file.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn text(&self) -> String {
        document::write(self.main().set())
    }
}

/// What is in a link, whole or from its `#` on: `{bytes, view}`, the set file and a view as
/// [`Play::link`] takes it.
///
/// # Errors
/// An array of faults, in the language of `tag`, where the link is damaged or holds no set.
#[wasm_bindgen(js_name = openLink)]
pub fn open_link(link: &str, tag: &str) -> Result<Object, JsValue> {
    let opened = link::read(link);
    let voice = Voice::new(tag, Units::default());
    let opened = opened.map_err(|faults| thrown(&faults, voice))?;
    let object = Object::new();
    let bytes = Uint8Array::from(opened.text.as_slice());
    set(&object, "bytes", bytes.into());
    set(&object, "view", told(&opened.view).into());
    Ok(object)
}

fn told(view: &View) -> Object {
    let object = Object::new();
    let read: Array = view.read.iter().map(|n| JsValue::from(*n)).collect();
    let bits = view.follow.iter().rev();
    let follow = bits.fold(0_u8, |mask, on| mask << 1 | u8::from(*on));
    set(&object, "from", view.from.into());
    set(&object, "until", view.until.into());
    set(&object, "beat", view.beat.into());
    set(&object, "read", read.into());
    set(&object, "follow", follow.into());
    set(
        &object,
        "coverage",
        view.coverage.map(Coverage::name).into(),
    );
    set(&object, "speed", view.speed.into());
    set(&object, "paused", view.paused.into());
    object
}

/// What a page asks for; what is not of the kind it should be counts as not asked for.
fn asked(view: &JsValue) -> View {
    let get = |name: &str| Reflect::get(view, &name.into()).unwrap_or(JsValue::UNDEFINED);
    let number = |name: &str| get(name).as_f64().filter(|n| n.is_finite());
    // The cast saturates, and drops what is behind the point.
    let whole = |value: &JsValue| value.as_f64().map(|n| n as u16).filter(|n| *n > 0);
    let read = get("read");
    let read: Vec<u16> = if Array::is_array(&read) {
        Array::from(&read)
            .iter()
            .filter_map(|n| whole(&n))
            .collect()
    } else {
        Vec::new()
    };
    View {
        from: number("from"),
        until: number("until"),
        beat: whole(&get("beat")),
        read,
        follow: mask(number("follow").map_or(0, |n| n as u8)),
        coverage: get("coverage")
            .as_string()
            .and_then(|c| Coverage::parse(&c)),
        speed: number("speed"),
        paused: get("paused").is_truthy(),
    }
}
