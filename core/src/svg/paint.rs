//! Items to elements.

use super::Palette;
use crate::math::{BezPath, PathEl, Point, push_decimal};
use crate::scene::{Anchor, Area, Dash, Item, Role, Scene, TextStyle};
use alloc::string::String;

const SANS: &str = "'Source Sans 3','Segoe UI','Helvetica Neue','Liberation Sans',Arial,sans-serif";
const SERIF: &str =
    "Charter,'Bitstream Charter','Iowan Old Style',Palatino,'Liberation Serif',Georgia,serif";
/// Width of a text's halo, pixels.
const HALO: f64 = 3.0;

/// `scene` as a whole SVG document with a title and a description for who cannot see it.
///
/// It has no ids, scripts, links or styles, so any number of them can stand in one page.
#[must_use]
pub fn paint(scene: &Scene, palette: &Palette, title: &str, desc: &str) -> String {
    let mut w = Writer {
        out: String::new(),
        palette,
    };
    w.raw("<svg xmlns=\"http://www.w3.org/2000/svg\"");
    w.number("width", scene.width);
    w.number("height", scene.height);
    w.view_box(0.0, 0.0, scene.width, scene.height);
    w.raw(" role=\"img\" stroke-linejoin=\"round\"");
    w.text_attribute("font-family", SANS);
    w.raw("><title>");
    w.escaped(title);
    w.raw("</title><desc>");
    w.escaped(desc);
    w.raw("</desc>\n");
    let mut clips = 0_u32;
    for item in &scene.items {
        match item {
            Item::Fill {
                path,
                role,
                opacity,
            } => w.fill(path, *role, *opacity),
            Item::Stroke {
                path,
                role,
                width,
                dash,
                round,
            } => w.stroke(path, *role, *width, *dash, *round),
            Item::Text {
                at,
                text,
                role,
                style,
            } => w.text(*at, text, *role, style),
            Item::Clip(area) => {
                w.clip(*area);
                clips += 1;
            }
            Item::Unclip if clips > 0 => {
                w.raw("</svg>\n");
                clips -= 1;
            }
            Item::Unclip => {}
        }
    }
    for _ in 0..clips {
        w.raw("</svg>");
    }
    w.raw("</svg>\n");
    w.out
}

struct Writer<'a> {
    out: String,
    palette: &'a Palette,
}

impl Writer<'_> {
    fn raw(&mut self, text: &str) {
        self.out.push_str(text);
    }

    /// Text that is safe in an element and in an attribute; what XML 1.0 forbids is left out.
    fn escaped(&mut self, text: &str) {
        for c in text.chars() {
            match c {
                '&' => self.raw("&amp;"),
                '<' => self.raw("&lt;"),
                '>' => self.raw("&gt;"),
                '"' => self.raw("&quot;"),
                '\t' | '\n' | '\r' => self.out.push(' '),
                '\0'..='\u{1F}' | '\u{FFFE}' | '\u{FFFF}' => {}
                _ => self.out.push(c),
            }
        }
    }

    fn text_attribute(&mut self, name: &str, value: &str) {
        self.raw(" ");
        self.raw(name);
        self.raw("=\"");
        self.escaped(value);
        self.raw("\"");
    }

    fn number(&mut self, name: &str, value: f64) {
        self.raw(" ");
        self.raw(name);
        self.raw("=\"");
        push_decimal(&mut self.out, value, 2);
        self.raw("\"");
    }

    fn view_box(&mut self, x: f64, y: f64, width: f64, height: f64) {
        self.raw(" viewBox=\"");
        for (i, n) in [x, y, width, height].into_iter().enumerate() {
            if i > 0 {
                self.raw(" ");
            }
            push_decimal(&mut self.out, n, 2);
        }
        self.raw("\"");
    }

    fn path(&mut self, path: &BezPath) {
        self.raw("<path d=\"");
        for el in path.elements() {
            match *el {
                PathEl::MoveTo(p) => self.command('M', &[p]),
                PathEl::LineTo(p) => self.command('L', &[p]),
                PathEl::QuadTo(a, p) => self.command('Q', &[a, p]),
                PathEl::CurveTo(a, b, p) => self.command('C', &[a, b, p]),
                PathEl::ClosePath => self.command('Z', &[]),
            }
        }
        self.raw("\"");
    }

    fn command(&mut self, letter: char, points: &[Point]) {
        self.out.push(letter);
        for (i, n) in points.iter().flat_map(|p| [p.x, p.y]).enumerate() {
            // A sign separates as well as a space does.
            let before = self.out.len();
            push_decimal(&mut self.out, n, 2);
            if i > 0 && self.out.as_bytes().get(before) != Some(&b'-') {
                self.out.insert(before, ' ');
            }
        }
    }

    fn colour(&mut self, name: &str, role: Role) {
        let colour = self.palette.colour(role);
        self.text_attribute(name, colour);
    }

    fn fill(&mut self, path: &BezPath, role: Role, opacity: f64) {
        self.path(path);
        self.colour("fill", role);
        if opacity < 1.0 {
            self.number("fill-opacity", opacity);
        }
        self.raw("/>\n");
    }

    fn stroke(&mut self, path: &BezPath, role: Role, width: f64, dash: Option<Dash>, round: bool) {
        self.path(path);
        self.raw(" fill=\"none\"");
        self.colour("stroke", role);
        self.number("stroke-width", width);
        if round {
            self.raw(" stroke-linecap=\"round\"");
        }
        if let Some(Dash { on, off }) = dash {
            self.raw(" stroke-dasharray=\"");
            push_decimal(&mut self.out, on, 2);
            self.raw(" ");
            push_decimal(&mut self.out, off, 2);
            self.raw("\"");
        }
        self.raw("/>\n");
    }

    fn text(&mut self, at: Point, text: &str, role: Role, style: &TextStyle) {
        self.raw("<text");
        self.number("x", at.x);
        self.number("y", at.y);
        self.number("font-size", style.size);
        self.colour("fill", role);
        if style.bold {
            self.raw(" font-weight=\"700\"");
        }
        if style.serif {
            self.text_attribute("font-family", SERIF);
        }
        match style.anchor {
            Anchor::Start => {}
            Anchor::Middle => self.raw(" text-anchor=\"middle\""),
            Anchor::End => self.raw(" text-anchor=\"end\""),
        }
        if let Some(halo) = style.halo {
            self.colour("stroke", halo);
            self.number("stroke-width", HALO);
            self.raw(" paint-order=\"stroke\"");
        }
        self.raw(">");
        self.escaped(text);
        self.raw("</text>\n");
    }

    /// A document within cuts at its edges and, unlike a clip path, needs no id.
    fn clip(&mut self, area: Area) {
        self.raw("<svg");
        self.number("x", area.x);
        self.number("y", area.y);
        self.number("width", area.width);
        self.number("height", area.height);
        self.view_box(area.x, area.y, area.width, area.height);
        self.raw(">\n");
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scene::View;
    use alloc::vec::Vec;
    use proptest::prelude::*;

    /// Reads it whole: every element closed, every entity known.
    fn check(svg: &str) {
        let mut reader = quick_xml::Reader::from_str(svg);
        reader.config_mut().check_end_names = true;
        let mut depth = 0;
        loop {
            use quick_xml::{XmlVersion, events::Event};
            match reader.read_event().unwrap() {
                Event::Start(e) => {
                    for attribute in e.attributes() {
                        attribute
                            .unwrap()
                            .normalized_value(XmlVersion::Implicit1_0)
                            .unwrap();
                    }
                    depth += 1;
                }
                Event::End(_) => depth -= 1,
                Event::Eof => break,
                _ => {}
            }
        }
        assert_eq!(depth, 0);
        assert!(!svg.contains("NaN") && !svg.contains("inf"));
    }

    #[test]
    fn an_empty_court_is_a_whole_document() {
        let court = crate::court::Court::of(crate::court::RuleSet::Fiba);
        let scene = crate::scene::court(&court, &View::new(760.0));
        check(&paint(&scene, &Palette::light(), "Half court", ""));
    }

    #[test]
    fn an_inset_is_closed_even_where_the_scene_forgot_to() {
        let scene = Scene {
            width: 10.0,
            height: f64::NAN,
            items: alloc::vec![Item::Unclip, Item::Clip(Area::default())],
        };
        check(&paint(&scene, &Palette::dark(), "", ""));
    }

    proptest! {
        #[test]
        fn prop_any_words_make_a_well_formed_document(
            title in any::<String>(), words in any::<String>(), x in any::<f64>(),
        ) {
            let style = TextStyle {
                size: x, bold: true, serif: true, anchor: Anchor::End, halo: Some(Role::Paper),
            };
            let text = Item::Text { at: Point::new(x, -x), text: words, role: Role::Ink, style };
            let items: Vec<Item> = alloc::vec![text];
            check(&paint(&Scene { width: x, height: x, items }, &Palette::light(), &title, &title));
        }
    }
}
