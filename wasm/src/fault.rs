//! Faults as plain objects, so that a page can show them without a class of ours.

use backcut::fault::{AUTHORING, Fault, Faults};
use backcut::voice::{Said, Voice};
use js_sys::{Array, Object, Reflect};
use wasm_bindgen::JsValue;

/// An array of `{code, pointer, line, column, found, allowed, help, message}`; its property `more`
/// counts those that were left out. Undefined where this build does not tell.
pub(crate) fn thrown(faults: &Faults, voice: Voice) -> JsValue {
    if !AUTHORING {
        return JsValue::UNDEFINED;
    }
    let list: Array = faults.list.iter().map(|f| object(f, voice)).collect();
    set(&list, "more", count(faults.more));
    list.into()
}

/// Adds the fault of a page that asks for something unknown, for example a court by a wrong name.
pub(crate) fn unknown(faults: &mut Faults, what: &str, name: &str, allowed: &[&str]) {
    if !AUTHORING {
        faults.more += 1;
        return;
    }
    faults.push(Fault::unknown_option(what, name, allowed.join(", ")));
}

fn object(fault: &Fault, voice: Voice) -> JsValue {
    let object = Object::new();
    let told = |said: &Option<Said>| said.as_ref().map(|said| said.told(voice));
    set(&object, "code", fault.code.into());
    set(&object, "pointer", fault.place.pointer.as_str().into());
    set(&object, "line", fault.place.line.into());
    set(&object, "column", fault.place.column.into());
    set(&object, "found", fault.found.told(voice).into());
    set(&object, "allowed", told(&fault.allowed).into());
    set(&object, "help", told(&fault.help).into());
    set(&object, "message", fault.told(voice).into());
    object.into()
}

fn count(n: usize) -> JsValue {
    u32::try_from(n).unwrap_or(u32::MAX).into()
}

/// Sets a property of a plain object.
pub(crate) fn set(target: &JsValue, name: &str, value: JsValue) {
    // Fails only on a frozen target; this one was made a moment ago.
    let _ = Reflect::set(target, &name.into(), &value);
}
