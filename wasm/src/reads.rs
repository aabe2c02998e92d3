//! Lines other than the one drawn.

use crate::fault::{set, thrown};
use crate::judged::Judged;
use crate::play::Play;
use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use backcut::branch::NotPlayed;
use backcut::fault::{Fault, Faults, Place};
use backcut::play::{NotBranched, Play as Core};
use backcut::words;
use core::mem;
use js_sys::{Array, Object};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen]
impl Play {
    /// The reads of the set, each before those within it: `{path, title, t}`. `path` is what
    /// [`Play::take_read`] takes; `t` is when its line is left, seconds. One whose instant never
    /// comes is left out.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn reads(&self) -> Array {
        let list = Array::new();
        listed(self.main(), "", &list);
        list
    }

    /// Shows the line of a read: `2`, or `2.1` for the first one within the second; empty: the line
    /// that is drawn. What was judged is forgotten.
    ///
    /// # Errors
    /// An array of faults where there is no such line; then all stays.
    #[wasm_bindgen(js_name = takeRead)]
    pub fn take_read(&mut self, path: &str) -> Result<(), JsValue> {
        if path.is_empty() {
            if let Some(main) = self.main.take() {
                self.core = main;
            }
        } else {
            let numbers = path.split('.').map(|n| n.parse().ok().filter(|n| *n > 0));
            let indices: Option<Vec<usize>> =
                numbers.map(|n: Option<usize>| n.map(|n| n - 1)).collect();
            let line = indices.ok_or(NotBranched::NoSuchRead);
            let line = line.and_then(|indices| self.main().branch(&indices));
            let line = line.map_err(|why| thrown(&faults(path, why)))?;
            let left = mem::replace(&mut self.core, line.play);
            self.main.get_or_insert(left);
        }
        path.clone_into(&mut self.read);
        self.judged = Judged::default();
        Ok(())
    }

    /// The read whose line is shown, as [`Play::take_read`] takes it.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn read(&self) -> String {
        self.read.clone()
    }
}

impl Play {
    /// The set as it is written, with all its reads.
    pub(crate) fn main(&self) -> &Core {
        self.main.as_ref().unwrap_or(&self.core)
    }
}

/// Adds the reads of `line`, which is at the read `within`, and those inside them.
fn listed(line: &Core, within: &str, list: &Array) {
    for (index, read) in line.set().reads.iter().enumerate() {
        let Some(t) = line.fork_instant(read) else {
            continue;
        };
        let path = format!("{within}{}", index + 1);
        let object = Object::new();
        set(&object, "path", path.as_str().into());
        set(
            &object,
            "title",
            words::read_title(read, index, line.voice()).into(),
        );
        set(&object, "t", t.into());
        list.push(&object);
        if read.reads.is_empty() {
            continue;
        }
        if let Ok(branch) = line.branch(&[index]) {
            listed(&branch.play, &format!("{path}."), list);
        }
    }
}

fn faults(path: &str, why: NotBranched) -> Faults {
    let allowed = match why {
        NotBranched::NotPlayed(NotPlayed::Waits(faults)) => return faults,
        NotBranched::NoSuchRead => "reads of the set, counted from 1",
        NotBranched::NotPlayed(NotPlayed::NoInstant) => "its instant never comes",
        NotBranched::NotPlayed(NotPlayed::AfterTheShot) => "at its instant the shot is gone",
    };
    let mut faults = Faults::default();
    faults.push(Fault {
        code: "unknown-option",
        place: Place::default(),
        found: format!("the page asks for the read “{path}”"),
        allowed: allowed.to_owned(),
        help: None,
        related: Vec::new(),
    });
    faults
}
