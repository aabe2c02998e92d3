//! One open set, as the page sees it.

use crate::canvas::{Palette, paint};
use crate::fault::thrown;
use crate::frame::{self, Buffer, LENGTH};
use crate::stub::{self as play, Facade, StripView, View};
use backcut::court::{Court, RuleSet};
use backcut::scene::Scene;
use backcut::timeline::Frame;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;
use web_sys::CanvasRenderingContext2d as Context;

/// An open set. Times are seconds, sizes CSS pixels; `follow` has bit 0 for player 1.
#[wasm_bindgen]
#[derive(Debug)]
pub struct Play {
    inner: Facade,
    frame: Frame,
    buffer: Buffer,
    /// Kept between frames, so that its list need not grow anew.
    movers: Scene,
}

#[wasm_bindgen]
impl Play {
    /// Opens the set file in `bytes`; `court` and `level` override what it says.
    ///
    /// # Errors
    /// An array of faults where the file cannot be understood.
    #[allow(
        clippy::needless_pass_by_value,
        reason = "what comes over from JavaScript is owned"
    )]
    pub fn open(
        bytes: &[u8],
        court: Option<String>,
        _level: Option<String>,
        _mirror: bool,
    ) -> Result<Self, JsValue> {
        let court = court.as_deref().and_then(RuleSet::parse);
        Ok(Self {
            inner: Facade::open(bytes, court).map_err(|faults| thrown(&faults))?,
            frame: Frame::default(),
            buffer: Box::new([0.0; LENGTH]),
            movers: Scene::default(),
        })
    }

    /// The set's name.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn title(&self) -> String {
        self.inner.title()
    }

    /// The rule set's name as people write it.
    #[wasm_bindgen(getter, js_name = courtTitle)]
    #[must_use]
    pub fn court_title(&self) -> String {
        self.inner.court.rules().title().to_owned()
    }

    /// The athletes' level as people write it.
    #[wasm_bindgen(getter, js_name = levelTitle)]
    #[must_use]
    pub fn level_title(&self) -> String {
        self.inner.level_title()
    }

    /// Who takes part, bit 0 for player 1.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn players(&self) -> u8 {
        self.inner.players()
    }

    /// How long it lasts.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn duration(&self) -> f64 {
        self.inner.duration()
    }

    /// When each beat starts.
    #[wasm_bindgen(getter, js_name = beatStarts)]
    #[must_use]
    pub fn beat_starts(&self) -> Vec<f64> {
        self.inner.beats().iter().map(|b| b.0).collect()
    }

    /// The name of a beat, counted from 0.
    #[wasm_bindgen(js_name = beatTitle)]
    #[must_use]
    pub fn beat_title(&self, beat: usize) -> String {
        self.inner.beat_title(beat)
    }

    /// What happens in a beat, in a coach's words.
    #[must_use]
    pub fn caption(&self, beat: usize) -> String {
        self.inner.caption(beat)
    }

    /// The picture at `t` in words.
    #[must_use]
    pub fn describe(&self, t: f64) -> String {
        self.inner.describe(t)
    }

    /// Fills the frame buffer with the instant `t`.
    pub fn frame(&mut self, t: f64) {
        self.inner.frame(t, &mut self.frame);
        frame::write(&self.frame, &mut self.buffer);
    }

    /// Where the frame buffer lies in memory; it has [`Play::frame_length`] single floats.
    #[wasm_bindgen(getter, js_name = framePointer)]
    #[must_use]
    pub fn frame_pointer(&self) -> *const f32 {
        self.buffer.as_ptr()
    }

    /// Single floats in the frame buffer.
    #[wasm_bindgen(getter, js_name = frameLength)]
    #[must_use]
    pub fn frame_length(&self) -> usize {
        LENGTH
    }

    /// A number over the bits of all frames, to compare builds; hexadecimal.
    #[wasm_bindgen(js_name = frameHash)]
    #[must_use]
    pub fn frame_hash(&self, fps: f64) -> String {
        format!("{:016x}", self.inner.hash(fps))
    }

    /// How much larger than life bodies are drawn at this width.
    #[wasm_bindgen(js_name = bodyScale)]
    #[must_use]
    pub fn body_scale(&self, width: f64) -> f64 {
        self.inner.body_scale(&view(width, 0))
    }

    /// Height of the court's picture for this width.
    #[wasm_bindgen(js_name = courtHeight)]
    #[must_use]
    pub fn court_height(&self, width: f64) -> f64 {
        self.inner.court_scene(&view(width, 0)).height
    }

    /// Paints the court without anybody on it.
    #[wasm_bindgen(js_name = paintCourt)]
    pub fn paint_court(&self, context: &Context, palette: &Palette, width: f64, density: f64) {
        let scene = self.inner.court_scene(&view(width, 0));
        paint(&scene, context, palette, density);
    }

    /// Paints everybody, the ball and the trails at `t`, on nothing.
    #[wasm_bindgen(js_name = paintMovers)]
    pub fn paint_movers(
        &mut self,
        context: &Context,
        palette: &Palette,
        width: f64,
        density: f64,
        t: f64,
        follow: u8,
    ) {
        self.inner
            .movers_scene(t, &view(width, follow), &mut self.movers);
        paint(&self.movers, context, palette, density);
    }

    /// Height of the strip.
    #[wasm_bindgen(js_name = stripHeight)]
    #[must_use]
    pub fn strip_height(&self, width: f64, folded: bool) -> f64 {
        let view = strip_view(width, 0, 0, folded, false);
        self.inner.strip_scene(&view).height
    }

    /// Where the strip's time begins, from its left edge; it ends at its right edge.
    #[wasm_bindgen(js_name = stripLeft)]
    #[must_use]
    pub fn strip_left(&self, _width: f64) -> f64 {
        play::STRIP_LEFT
    }

    /// Paints the strip as it looks once played, or as it looks before that.
    #[wasm_bindgen(js_name = paintStrip)]
    #[allow(
        clippy::too_many_arguments,
        reason = "an object would cost more to cross than it says"
    )]
    pub fn paint_strip(
        &self,
        context: &Context,
        palette: &Palette,
        width: f64,
        density: f64,
        beat: usize,
        follow: u8,
        folded: bool,
        to_come: bool,
    ) {
        let view = strip_view(width, beat, follow, folded, to_come);
        paint(&self.inner.strip_scene(&view), context, palette, density);
    }
}

/// Height of an empty court of the default rule set.
#[wasm_bindgen(js_name = emptyCourtHeight)]
#[must_use]
pub fn empty_court_height(width: f64) -> f64 {
    empty_court(width).height
}

/// Paints an empty court of the default rule set.
#[wasm_bindgen(js_name = paintEmptyCourt)]
pub fn paint_empty_court(context: &Context, palette: &Palette, width: f64, density: f64) {
    paint(&empty_court(width), context, palette, density);
}

fn empty_court(width: f64) -> Scene {
    play::court_scene(&Court::of(RuleSet::default()), &view(width, 0))
}

fn view(width_px: f64, follow: u8) -> View {
    View {
        width_px,
        follow: mask(follow),
    }
}

fn strip_view(width_px: f64, beat: usize, follow: u8, folded: bool, to_come: bool) -> StripView {
    StripView {
        width_px,
        follow: mask(follow),
        beat,
        folded,
        to_come,
    }
}

fn mask(bits: u8) -> [bool; 5] {
    std::array::from_fn(|i| bits & (1 << i) != 0)
}
