//! One open set, as the page sees it.

use crate::canvas::{Palette, paint};
use crate::fault::{thrown, unknown};
use crate::frame::{self, Buffer, LENGTH};
use crate::judged::Judged;
use alloc::borrow::ToOwned;
use alloc::boxed::Box;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;
use backcut::athlete::Level;
use backcut::court::{Court, RuleSet};
use backcut::document::LIMITS;
use backcut::fault::Faults;
use backcut::math::Point;
use backcut::play::{Options, Play as Core};
use backcut::scene::{self, CloseUp, Item, Scene, StripView, View};
use backcut::set::PlayerId;
use backcut::timeline::Frame;
use backcut::voice::Voice;
use backcut::words;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;
use web_sys::CanvasRenderingContext2d as Context;

/// An open set. Times are seconds, sizes CSS pixels; `follow` has bit 0 for player 1.
#[wasm_bindgen]
#[derive(Debug)]
pub struct Play {
    pub(crate) core: Core,
    frame: Frame,
    buffer: Buffer,
    /// Kept between frames, so that its list need not grow anew.
    movers: Scene,
    pub(crate) judged: Judged,
    /// What fills the court.
    look_at: Option<Point>,
    /// The line that is drawn, where that of a read is shown.
    #[cfg(feature = "full")]
    pub(crate) main: Option<Core>,
    /// The read whose line is shown.
    #[cfg(feature = "full")]
    pub(crate) read: String,
}

#[wasm_bindgen]
impl Play {
    /// Opens the set file in `bytes`; `court` and `level` by name and `mirror` override what it
    /// says.
    ///
    /// # Errors
    /// An array of faults where the file, or what is asked for, cannot be understood.
    #[allow(
        clippy::needless_pass_by_value,
        reason = "what comes over from JavaScript is owned"
    )]
    pub fn open(
        bytes: &[u8],
        court: Option<String>,
        level: Option<String>,
        mirror: bool,
    ) -> Result<Self, JsValue> {
        options(court.as_deref(), level.as_deref(), mirror)
            .and_then(|options| Core::open(bytes, &options))
            .map(Self::of)
            .map_err(|faults| thrown(&faults, Voice::default()))
    }

    /// The set's name.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn title(&self) -> String {
        self.core.set().title.clone()
    }

    /// The rule set's name as people write it.
    #[wasm_bindgen(getter, js_name = courtTitle)]
    #[must_use]
    pub fn court_title(&self) -> String {
        words::court(self.core.set().court, self.core.voice()).to_owned()
    }

    /// The athletes' level as people write it.
    #[wasm_bindgen(getter, js_name = levelTitle)]
    #[must_use]
    pub fn level_title(&self) -> String {
        words::level(self.core.set().level, self.core.voice()).to_owned()
    }

    /// Who takes part, bit 0 for player 1.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn players(&self) -> u8 {
        let bits = self.core.set().players.iter().map(|p| 1 << p.id.index());
        bits.fold(0, |mask, bit: u8| mask | bit)
    }

    /// Whether it has reads: lines that may be shown in place of the one drawn.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn branches(&self) -> bool {
        !self.core.set().reads.is_empty()
    }

    /// How long it lasts.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn duration(&self) -> f64 {
        self.core.timeline().duration()
    }

    /// When each beat starts.
    #[wasm_bindgen(getter, js_name = beatStarts)]
    #[must_use]
    pub fn beat_starts(&self) -> Vec<f64> {
        self.core
            .timeline()
            .beats()
            .iter()
            .map(|b| b.start)
            .collect()
    }

    /// Whether some of it is to be shown slowly; the build for the first frame knows no more.
    #[wasm_bindgen(getter)]
    #[must_use]
    pub fn slowed(&self) -> bool {
        !self.core.set().slow.is_empty()
    }

    /// The name of a beat, counted from 0.
    #[wasm_bindgen(js_name = beatTitle)]
    #[must_use]
    pub fn beat_title(&self, beat: usize) -> String {
        self.core.beat_title(beat)
    }

    /// What the author says of a beat, counted from 0; empty where that is left to the program.
    #[must_use]
    pub fn said(&self, beat: usize) -> String {
        self.core.said(beat).to_owned()
    }

    /// Fills the frame buffer with the instant `t`.
    pub fn frame(&mut self, t: f64) {
        self.core.timeline().frame(t, &mut self.frame);
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

    /// How much larger than life bodies are drawn at this width.
    #[wasm_bindgen(js_name = bodyScale)]
    #[must_use]
    pub fn body_scale(&self, width: f64) -> f64 {
        let shoulder = self.core.set().level.limits().shoulder;
        self.view(width, 0).enlargement(self.core.court(), shoulder)
    }

    /// Height of the court's picture for this width.
    #[wasm_bindgen(js_name = courtHeight)]
    #[must_use]
    pub fn court_height(&self, width: f64) -> f64 {
        self.view(width, 0).height_px(self.core.court())
    }

    /// Paints the court without anybody on it.
    #[wasm_bindgen(js_name = paintCourt)]
    pub fn paint_court(&self, context: &Context, palette: &Palette, width: f64, density: f64) {
        let scene = self.core.court_scene(&self.view(width, 0));
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
        let view = self.view(width, follow);
        let verdict = self.judged.verdict();
        self.core
            .movers_scene(verdict.as_ref(), t, &view, &mut self.movers);
        paint(&self.movers, context, palette, density);
    }

    /// Paints the court with a beat as it is drawn for paper.
    #[wasm_bindgen(js_name = paintBeat)]
    pub fn paint_beat(
        &self,
        context: &Context,
        palette: &Palette,
        width: f64,
        density: f64,
        beat: usize,
    ) {
        let scene = self.core.beat_scene(beat, width);
        paint(&scene, context, palette, density);
    }

    /// Where the close-up of a beat lies on the court: left, top, width, height; nothing where the
    /// beat has none at this width.
    #[wasm_bindgen(js_name = closeUp)]
    #[must_use]
    pub fn close_up(&self, width: f64, beat: usize) -> Vec<f64> {
        let close = self.core.close_up(beat, &self.core.view(width));
        close.map_or(Vec::new(), |CloseUp { area, .. }| {
            vec![area.x, area.y, area.width, area.height]
        })
    }

    /// From now on the court is filled with the close-up of `beat`, or, without one, shown whole.
    #[wasm_bindgen(js_name = lookAt)]
    pub fn look_at(&mut self, width: f64, beat: Option<usize>) {
        let close = beat.and_then(|beat| self.core.close_up(beat, &self.core.view(width)));
        self.look_at = close.map(|close| close.middle);
    }

    /// Where things lie in the strip: left and right end of its time, lower edge of the beats'
    /// names, the ruler's line, height.
    #[wasm_bindgen(js_name = stripGeometry)]
    #[must_use]
    pub fn strip_geometry(&self, width: f64, follow: u8, folded: bool) -> Vec<f64> {
        let view = strip_view(width, None, follow, folded, false);
        let g = self.core.strip_geometry(&view);
        vec![g.left, g.right, g.header, g.ruler, g.height]
    }

    /// Paints the strip as it looks once played, or, with `to_come`, as it looks before that.
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
        let view = StripView {
            holds_up: self.judged.holds_up(),
            voice: self.core.voice(),
            ..strip_view(width, Some(beat), follow, folded, to_come)
        };
        let verdict = self.judged.verdict();
        let scene = self.core.strip_scene(verdict.as_ref(), &view);
        paint(&scene, context, palette, density);
    }

    /// Height of the key of marks.
    #[wasm_bindgen(js_name = keyHeight)]
    #[must_use]
    pub fn key_height(&self, width: f64) -> f64 {
        self.core.key_scene(width).height
    }

    /// The words of the key, one a mark.
    #[wasm_bindgen(getter, js_name = keyWords)]
    #[must_use]
    pub fn key_words(&self) -> Vec<String> {
        let items = self.core.key_scene(f64::from(u16::MAX)).items;
        let words = items.into_iter().filter_map(|item| match item {
            Item::Text { text, .. } => Some(text),
            _ => None,
        });
        words.collect()
    }

    /// Paints the key of marks.
    #[wasm_bindgen(js_name = paintKey)]
    pub fn paint_key(&self, context: &Context, palette: &Palette, width: f64, density: f64) {
        let scene = self.core.key_scene(width);
        paint(&scene, context, palette, density);
    }
}

impl Play {
    pub(crate) fn of(core: Core) -> Self {
        Self {
            frame: Frame::default(),
            buffer: Box::new([0.0; LENGTH]),
            movers: Scene::default(),
            judged: Judged::of(&core),
            look_at: None,
            #[cfg(feature = "full")]
            main: None,
            #[cfg(feature = "full")]
            read: String::new(),
            core,
        }
    }

    pub(crate) fn view(&self, width: f64, follow: u8) -> View {
        self.judged.view(View {
            follow: mask(follow),
            look_at: self.look_at,
            ..self.core.view(width)
        })
    }
}

/// The longest file that is read, bytes; a page need not hand over more than one more.
#[wasm_bindgen(js_name = byteLimit)]
#[must_use]
pub fn byte_limit() -> usize {
    LIMITS.bytes
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
    scene::court(&Court::of(RuleSet::default()), &View::new(width))
}

pub(crate) fn options(
    court: Option<&str>,
    level: Option<&str>,
    mirror: bool,
) -> Result<Options, Faults> {
    let mut faults = Faults::default();
    let rules = court.and_then(RuleSet::parse);
    if let (Some(name), None) = (court, rules) {
        unknown(&mut faults, "court", name, &RuleSet::ALL.map(RuleSet::name));
    }
    let athletes = level.and_then(Level::parse);
    if let (Some(name), None) = (level, athletes) {
        unknown(&mut faults, "level", name, &Level::ALL.map(Level::name));
    }
    if !faults.is_empty() {
        return Err(faults);
    }
    Ok(Options {
        court: rules,
        level: athletes,
        mirror,
        voice: Voice::default(),
    })
}

fn strip_view(
    width_px: f64,
    beat: Option<usize>,
    follow: u8,
    folded: bool,
    to_come: bool,
) -> StripView {
    StripView {
        width_px,
        voice: Voice::default(),
        follow: mask(follow),
        folded,
        beat,
        holds_up: false,
        to_come,
    }
}

pub(crate) fn mask(bits: u8) -> [bool; 5] {
    PlayerId::ALL.map(|id| bits & (1 << id.index()) != 0)
}
