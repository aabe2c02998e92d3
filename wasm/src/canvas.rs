//! Paints a display list on a 2-D canvas.

use alloc::string::String;
use alloc::vec::Vec;
use backcut::math::{BezPath, PathEl, Point, push_decimal};
use backcut::scene::{Anchor, Dash, Item, Role, Scene, TextStyle};
use js_sys::{Array, Number};
use wasm_bindgen::prelude::wasm_bindgen;
use web_sys::CanvasRenderingContext2d as Context;

/// Width of the contour behind a text that asks for one, pixels.
const HALO: f64 = 3.0;

/// The page's colours and type faces.
#[wasm_bindgen]
#[derive(Debug)]
pub struct Palette {
    colours: Vec<String>,
    serif: String,
    sans: String,
}

#[wasm_bindgen]
impl Palette {
    /// CSS colours in the order of [`Role::ALL`], one a line, and two CSS font families: the one for
    /// what a coach says and the one for what one operates. A colour left out is painted black.
    #[wasm_bindgen(constructor)]
    #[must_use]
    pub fn new(colours: String, serif: String, sans: String) -> Self {
        let (mut list, mut start) = (Vec::new(), 0);
        let ends = colours.bytes().enumerate().filter(|(_, b)| *b == b'\n');
        for end in ends.map(|(i, _)| i).chain([colours.len()]) {
            list.push(String::from(colours.get(start..end).unwrap_or("")));
            start = end + 1;
        }
        Self {
            colours: list,
            serif,
            sans,
        }
    }
}

impl Palette {
    fn colour(&self, role: Role) -> &str {
        let place = Role::ALL.iter().position(|r| *r == role);
        place
            .and_then(|i| self.colours.get(i))
            .map_or("#000", String::as_str)
    }

    fn font(&self, style: &TextStyle) -> String {
        let mut font = String::from(if style.bold { "bold " } else { "" });
        push_decimal(&mut font, style.size, 2);
        font.push_str("px ");
        font.push_str(if style.serif { &self.serif } else { &self.sans });
        font
    }
}

/// Paints `scene` from the canvas's upper left corner, `density` canvas pixels to a CSS pixel, after
/// clearing what was there.
pub(crate) fn paint(scene: &Scene, context: &Context, palette: &Palette, density: f64) {
    let mut brush = Brush {
        context,
        palette,
        fill: None,
        stroke: None,
        dash: None,
        style: None,
    };
    // Sets what nothing else sets: an earlier painter may have left anything behind.
    brush.reset(density);
    context.clear_rect(0.0, 0.0, scene.width, scene.height);
    for item in &scene.items {
        brush.item(item);
    }
}

/// The context with what was last set on it: most items share their colour with the one before.
struct Brush<'a> {
    context: &'a Context,
    palette: &'a Palette,
    fill: Option<Role>,
    stroke: Option<Role>,
    dash: Option<Dash>,
    style: Option<TextStyle>,
}

impl Brush<'_> {
    fn reset(&mut self, density: f64) {
        // Fails on a matrix that is not finite; then nothing can be drawn anyway.
        let _ = self
            .context
            .set_transform(density, 0.0, 0.0, density, 0.0, 0.0);
        self.context.set_global_alpha(1.0);
        self.context.set_line_join("round");
        let _ = self.context.set_line_dash(&Array::new());
    }

    fn item(&mut self, item: &Item) {
        match item {
            Item::Fill {
                path,
                role,
                opacity,
            } => {
                self.trace(path);
                self.fill_with(*role);
                self.context.set_global_alpha(*opacity);
                self.context.fill();
                self.context.set_global_alpha(1.0);
            }
            Item::Stroke {
                path,
                role,
                width,
                dash,
                round,
            } => {
                self.trace(path);
                self.stroke_with(*role);
                self.dash_with(*dash);
                self.context
                    .set_line_cap(if *round { "round" } else { "butt" });
                self.context.set_line_width(*width);
                self.context.stroke();
            }
            Item::Text {
                at,
                text,
                role,
                style,
            } => self.text(*at, text, *role, style),
            Item::Clip(area) => {
                // So that what is restored later is known.
                self.dash_with(None);
                self.context.save();
                self.context.begin_path();
                self.context.rect(area.x, area.y, area.width, area.height);
                self.context.clip();
            }
            Item::Unclip => {
                self.context.restore();
                // The context forgot what was set since the clip; so must this.
                (self.fill, self.stroke, self.dash, self.style) = (None, None, None, None);
            }
        }
    }

    fn trace(&self, path: &BezPath) {
        let c = self.context;
        c.begin_path();
        for element in path.elements() {
            match *element {
                PathEl::MoveTo(p) => c.move_to(p.x, p.y),
                PathEl::LineTo(p) => c.line_to(p.x, p.y),
                PathEl::QuadTo(a, p) => c.quadratic_curve_to(a.x, a.y, p.x, p.y),
                PathEl::CurveTo(a, b, p) => c.bezier_curve_to(a.x, a.y, b.x, b.y, p.x, p.y),
                PathEl::ClosePath => c.close_path(),
            }
        }
    }

    fn text(&mut self, at: Point, text: &str, role: Role, style: &TextStyle) {
        if self.style.as_ref() != Some(style) {
            self.letter_with(style);
        }
        // The next two fail only on positions that are not finite; such a text has no place.
        if let Some(halo) = style.halo {
            self.stroke_with(halo);
            self.dash_with(None);
            self.context.set_line_width(2.0 * HALO);
            let _ = self.context.stroke_text(text, at.x, at.y);
        }
        self.fill_with(role);
        let _ = self.context.fill_text(text, at.x, at.y);
    }

    /// To set a font, even the same again, has browsers bring the page's styles up to date.
    fn letter_with(&mut self, style: &TextStyle) {
        self.context.set_font(&self.palette.font(style));
        self.context.set_text_align(match style.anchor {
            Anchor::Start => "left",
            Anchor::Middle => "center",
            Anchor::End => "right",
        });
        self.style = Some(*style);
    }

    fn fill_with(&mut self, role: Role) {
        if self.fill != Some(role) {
            self.context.set_fill_style_str(self.palette.colour(role));
            self.fill = Some(role);
        }
    }

    fn stroke_with(&mut self, role: Role) {
        if self.stroke != Some(role) {
            self.context.set_stroke_style_str(self.palette.colour(role));
            self.stroke = Some(role);
        }
    }

    fn dash_with(&mut self, dash: Option<Dash>) {
        if self.dash != dash {
            let pattern = Array::new();
            if let Some(dash) = dash {
                pattern.push(&Number::from(dash.on));
                pattern.push(&Number::from(dash.off));
            }
            // Fails only on a pattern that is no list of numbers.
            let _ = self.context.set_line_dash(&pattern);
            self.dash = dash;
        }
    }
}
