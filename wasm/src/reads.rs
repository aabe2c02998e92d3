//! Lines other than the one drawn.

use crate::fault::{set, thrown};
use crate::full::named;
use crate::judged::Judged;
use crate::play::Play;
use alloc::borrow::ToOwned;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use backcut::branch::Line;
use backcut::choice::asked_coverage;
use backcut::play::{NotBranched, Play as Core};
use backcut::set::Coverage;
use backcut::words;
use core::mem;
use js_sys::{Array, Object};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen]
impl Play {
    /// The reads of the set that can be played, each before those within it: `{path, title, t,
    /// condition, coverage, by}`. `path` is what [`Play::take_read`] takes; `t` is when its line is left,
    /// seconds; `condition` follows an "if"; `coverage` is the name of the one that it asks for, if it
    /// asks for one; `by` are the numbers of those who must see it.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn reads(&self) -> Array {
        let lines = self.main().lines().ok();
        let branches = lines.iter().flat_map(|lines| lines.iter().skip(1));
        branches
            .filter_map(|(path, line)| self.branch_told(path, line))
            .collect()
    }

    /// What five under a coverage, by name, make of the set: `{path, asked: [{path, t, holds,
    /// text}]}`. `path` is the line that they decide, for [`Play::take_read`]; `asked` has every read
    /// that was asked on the way, `text` what was seen.
    ///
    /// # Errors
    /// An array of faults where there is no such coverage.
    pub fn decided(&self, coverage: &str) -> Result<JsValue, JsValue> {
        let coverage = named(coverage, self.core.voice())?;
        let decided = self
            .main()
            .decided(coverage)
            .map_err(|f| thrown(&f, self.core.voice()))?;
        let (own, voice) = (self.main().set(), self.main().voice());
        let asked = decided.asked.iter().map(|asked| {
            let object = Object::new();
            set(&object, "path", written(&asked.path).into());
            set(&object, "t", asked.t.into());
            set(&object, "holds", asked.seen.holds.into());
            set(&object, "text", words::seen(&asked.seen, own, voice).into());
            JsValue::from(object)
        });
        let asked: Array = asked.collect();
        let object = Object::new();
        set(&object, "path", written(&decided.path).into());
        set(&object, "asked", asked.into());
        Ok(object.into())
    }

    /// Which line answers a coverage, by name: `{path, title, text, reads: [{path, title, holds,
    /// text}]}`. The text of a read is what its line would end in.
    ///
    /// # Errors
    /// An array of faults where there is no such coverage.
    pub fn answer(&self, coverage: &str) -> Result<JsValue, JsValue> {
        let coverage = named(coverage, self.core.voice())?;
        let main = self.main();
        let answer = main
            .lines()
            .map_err(|f| thrown(&f, self.core.voice()))?
            .answer(coverage);
        let (own, voice) = (main.set(), main.voice());
        let line = |path: &[usize]| {
            let object = Object::new();
            set(&object, "path", written(path).into());
            set(&object, "title", words::line(own, path, voice).into());
            object
        };
        let reads = answer.tried.iter().map(|tried| {
            let object = line(&tried.path);
            set(&object, "holds", tried.shown().into());
            let end = words::end(tried.end.as_ref(), tried.ahead > 0.0, voice);
            set(&object, "text", end.into());
            JsValue::from(object)
        });
        let reads: Array = reads.collect();
        let object = line(&answer.decided.path);
        set(&object, "text", words::answer(&answer, own, voice).into());
        set(&object, "reads", reads.into());
        Ok(object.into())
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
            let line = line.map_err(|why| thrown(&why.faults(path), self.core.voice()))?;
            let left = mem::replace(&mut self.core, line.play);
            self.main.get_or_insert(left);
        }
        path.clone_into(&mut self.read);
        self.judged = Judged::of(&self.core);
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

    fn branch_told(&self, path: &[usize], line: &Line) -> Option<JsValue> {
        let (own, voice) = (self.main().set(), self.main().voice());
        let (index, read) = (*path.last()?, own.read(path)?);
        let object = Object::new();
        set(&object, "path", written(path).into());
        set(
            &object,
            "title",
            words::read_title(read, index, voice).into(),
        );
        set(&object, "t", line.past().last()?.until.into());
        let condition = words::condition(&read.condition, own, voice);
        set(&object, "condition", condition.into());
        let asks = asked_coverage(line.past()).map(Coverage::name);
        set(&object, "coverage", asks.into());
        let by: Array = read.by.iter().map(|p| JsValue::from(p.number())).collect();
        set(&object, "by", by.into());
        Some(object.into())
    }
}

/// A path as pages write it: `2.1`, each counted from 1; empty for the line that is drawn.
pub(crate) fn written(path: &[usize]) -> String {
    let mut out = String::new();
    for index in path {
        if !out.is_empty() {
            out.push('.');
        }
        out.push_str(&(index + 1).to_string());
    }
    out
}
