//! What the first frame can do without: words, the defence, looks and findings.
//!
//! Lists come over as arrays of plain objects, so that a page needs no class of ours to read them.

use crate::fault::{set, thrown, unknown};
use crate::play::Play;
use crate::tried::Tried;
use alloc::borrow::ToOwned;
use alloc::string::String;
use alloc::vec::Vec;
use backcut::fault::Faults;
use backcut::findings::{Finding, Search, Settings};
use backcut::looks::Look;
use backcut::scene::Flag;
use backcut::set::{Coverage, PlayerId};
use backcut::voice::Voice;
use backcut::words;
use js_sys::{Array, Object};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

#[wasm_bindgen]
impl Play {
    /// What happens in a beat, counted from 0, in a coach's words.
    #[must_use]
    pub fn caption(&self, beat: usize) -> String {
        self.core.caption(beat)
    }

    /// The picture at `t` in words; while something is asked, without what is asked for.
    #[must_use]
    pub fn describe(&self, t: f64) -> String {
        if let Some(standing) = self.standing(t) {
            return standing;
        }
        let defence = self.judged.defence.as_ref();
        defence.map_or_else(
            || self.core.describe(t),
            |defence| self.core.describe_against(defence, t),
        )
    }

    /// A number over the bits of all frames, to compare builds.
    #[wasm_bindgen(js_name = frameHash)]
    #[must_use]
    pub fn frame_hash(&self, fps: u32) -> u64 {
        self.core.timeline().hash(fps)
    }

    /// The coverages that this set can meet, by their names in a set file.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn coverages(&self) -> Vec<String> {
        let all = self.core.coverages().into_iter();
        all.map(|c| c.name().to_owned()).collect()
    }

    /// A coverage in words, by its name in a set file.
    #[wasm_bindgen(js_name = coverageTitle)]
    #[must_use]
    pub fn coverage_title(&self, name: &str) -> String {
        let title = |c| words::coverage(c, self.core.voice());
        Coverage::parse(name).map_or("", title).to_owned()
    }

    /// The coverage that the file asks for; nothing where it asks for none.
    #[wasm_bindgen(getter, js_name = writtenCoverage)]
    #[must_use]
    pub fn written_coverage(&self) -> Option<String> {
        self.core.set().defence.all.map(|c| c.name().to_owned())
    }

    /// Puts five defenders on the floor under a coverage, by name, and measures every look; without
    /// a name takes them off again.
    ///
    /// # Errors
    /// An array of faults where there is no such coverage.
    #[allow(
        clippy::needless_pass_by_value,
        reason = "what comes over from JavaScript is owned"
    )]
    pub fn defend(&mut self, coverage: Option<String>) -> Result<(), JsValue> {
        let Some(name) = coverage else {
            self.judged.defence = None;
            self.judged.looks.clear();
            return Ok(());
        };
        let defence = self.core.defence(named(&name, self.core.voice())?);
        self.judged.looks = self.core.looks(&defence);
        self.judged.defence = Some(defence);
        Ok(())
    }

    /// Shows in the strip what holds the set up and what has time to spare, or no longer.
    #[wasm_bindgen(js_name = showTiming)]
    pub fn show_timing(&mut self, on: bool) {
        self.judged.timing = on;
    }

    /// A number over the bits of every defender's every state, to compare builds; 0 without defence.
    #[wasm_bindgen(getter, js_name = defenceHash)]
    #[must_use]
    pub fn defence_hash(&self) -> u64 {
        let defence = self.judged.defence.as_ref();
        defence.map_or(0, backcut::defence::Defence::hash)
    }

    /// The looks against the defence on the floor: `{t, who, chance, separation, open, needs, lane,
    /// openness, contested, title, text}`, metres and seconds.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn looks(&self) -> Array {
        self.listed(&self.judged.looks)
    }

    /// The look that is on at `t`, in words, if one is.
    #[wasm_bindgen(js_name = lookOn)]
    #[must_use]
    pub fn look_on(&self, t: f64) -> Option<String> {
        let look = self.judged.looks.iter().find(|l| l.is_on(t));
        look.map(|l| words::look(l, self.core.set(), self.core.voice()))
    }

    /// The looks against another coverage, by name: one row of the outcome table. What is on the
    /// floor stays.
    ///
    /// # Errors
    /// An array of faults where there is no such coverage.
    pub fn outcome(&self, coverage: &str) -> Result<Array, JsValue> {
        let defence = self.core.defence(named(coverage, self.core.voice())?);
        Ok(self.listed(&self.core.looks(&defence)))
    }

    /// Finds what breaks a rule, a body or the timing, with what the defence on the floor shows, and
    /// raises a flag for each; or takes the flags away. Cures come by [`Play::cure_on`].
    pub fn judge(&mut self, on: bool) {
        let judged = &mut self.judged;
        judged.on = on;
        judged.against = None;
        if on {
            let settings = Settings::default();
            // The same whoever defends, and cures take time to prove.
            let search = || self.core.search(None, &settings);
            judged.own.get_or_insert_with(search);
            let defence = judged.defence.as_ref();
            judged.against = defence.map(|d| self.core.search(Some(d), &settings));
        }
        judged.gather();
        judged.flags = Flag::of(&judged.findings);
    }

    /// Looks a little further for cures, then tries the reads of a set as it is drawn against each
    /// coverage; whether there is more to do.
    #[wasm_bindgen(js_name = cureOn)]
    pub fn cure_on(&mut self) -> bool {
        let settings = Settings::default();
        let judged = &mut self.judged;
        let on = |search: &mut Option<Search>| {
            let search = search.as_mut();
            search.is_some_and(|search| self.core.cure_on(search, &settings))
        };
        let cures = judged.on && (on(&mut judged.own) || on(&mut judged.against));
        let drawn = judged.on && self.main.is_none();
        let mut reads = || {
            let tried = &mut judged.tried;
            drawn && tried.get_or_insert_with(|| Tried::of(&self.core)).go_on()
        };
        let more = cures || reads();
        if !more {
            judged.gather();
            judged.flags = Flag::of(&judged.findings);
        }
        more
    }

    /// What was found: `{code, severity, letter, t, players, text, cure}`; findings beyond the
    /// alphabet have no letter.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn findings(&self) -> Array {
        let found = self.judged.findings.iter().enumerate();
        let letter = |i: usize| self.judged.flags.get(i).map(|f| String::from(f.letter));
        found.map(|(i, f)| self.found(f, letter(i))).collect()
    }
}

impl Play {
    fn found(&self, f: &Finding, letter: Option<String>) -> JsValue {
        let object = Object::new();
        let players: Array = f
            .players
            .iter()
            .map(|p: &PlayerId| JsValue::from(p.number()))
            .collect();
        set(&object, "code", f.code().into());
        set(&object, "severity", f.severity.name().into());
        set(&object, "letter", letter.into());
        set(&object, "t", f.t.into());
        set(&object, "players", players.into());
        set(&object, "text", self.core.finding(f).into());
        set(&object, "cure", self.core.cure(f).into());
        object.into()
    }

    fn listed(&self, looks: &[Look]) -> Array {
        looks.iter().map(|l| self.told(l)).collect()
    }

    fn told(&self, l: &Look) -> JsValue {
        let object = Object::new();
        let voice = self.core.voice();
        let openness = words::openness(l.openness(), voice);
        set(&object, "t", l.t.into());
        set(&object, "who", l.who.number().into());
        set(&object, "chance", l.chance.name().into());
        set(&object, "separation", l.separation.into());
        set(&object, "open", l.open.into());
        set(&object, "needs", l.needs.into());
        set(&object, "lane", l.lane.into());
        set(&object, "openness", openness.into());
        set(&object, "contested", l.contested().into());
        set(&object, "title", words::chance(l, voice).into());
        set(
            &object,
            "text",
            words::look(l, self.core.set(), voice).into(),
        );
        object.into()
    }
}

/// The coverage of that name.
pub(crate) fn named(name: &str, voice: Voice) -> Result<Coverage, JsValue> {
    Coverage::parse(name).ok_or_else(|| {
        let mut faults = Faults::default();
        let all = Coverage::TABLE.map(|row| row.1);
        unknown(&mut faults, "coverage", name, &all);
        thrown(&faults, voice)
    })
}
