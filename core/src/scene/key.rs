//! The key of marks.

use super::measure::text_width;
use super::shape::{Draw, disc, head, lines, push_lines, sans};
use super::way::{Wave, Way};
use super::{Anchor, Dash, Item, Role, Scene, mark};
use crate::math::{BezPath, Point, Vec2};
use crate::set::{Set, Verb};
use crate::voice::messages::key as word;
use crate::voice::{Text, Voice};
use alloc::vec::Vec;

const SAMPLE: f64 = 30.0;
const LINE: f64 = 24.0;
const SIZE: f64 = 13.0;

/// What the key can show, in its order.
const ENTRIES: [(Entry, Text); 7] = [
    (Entry::Mark(Verb::Cut), word::CUT),
    (Entry::Mark(Verb::Pass), word::PASS),
    (Entry::Mark(Verb::Dribble), word::DRIBBLE),
    (Entry::Mark(Verb::Screen), word::SCREEN),
    (Entry::Mark(Verb::Handoff), word::HANDOFF),
    (Entry::Mark(Verb::Shot), word::SHOT),
    (Entry::Waits, word::WAITS),
];

#[derive(Clone, Copy, PartialEq)]
enum Entry {
    Mark(Verb),
    Waits,
}

/// The marks that `set` uses with their words, `width_px` wide and as many lines as that needs.
#[must_use]
pub fn key(set: &Set, width_px: f64, voice: Voice) -> Scene {
    let mut out = Scene {
        width: width_px,
        height: LINE,
        items: Vec::new(),
    };
    let (mut x, mut y) = (1.0, 0.5 * LINE);
    for (entry, text) in ENTRIES {
        let used = match entry {
            Entry::Mark(verb) => set.actions().any(|(_, a)| a.verb == verb),
            // Whoever uses a screen waits for it.
            Entry::Waits => set
                .actions()
                .any(|(_, a)| !a.off.is_empty() || !a.ties.is_empty()),
        };
        if !used {
            continue;
        }
        let word = voice.word(text);
        let wide = SAMPLE + 7.0 + text_width(word, SIZE, false);
        if x > 1.0 && x + wide > width_px {
            (x, y) = (1.0, y + LINE);
            out.height += LINE;
        }
        sample(entry, Point::new(x, y), &mut out.items);
        let at = Point::new(x + SAMPLE + 7.0, y + 4.5);
        out.items.text(
            at,
            word.into(),
            Role::Soft,
            sans(SIZE, false, Anchor::Start),
        );
        x += wide + 16.0;
    }
    out
}

fn sample(entry: Entry, start: Point, out: &mut Vec<Item>) {
    let right = Vec2::new(1.0, 0.0);
    let end = start + right * SAMPLE;
    let line = |to: f64| lines(&[start, start + right * to]);
    let upright = |x: f64, half: f64| {
        let p = start + right * x;
        [p - Vec2::new(0.0, half), p + Vec2::new(0.0, half)]
    };
    match entry {
        Entry::Mark(Verb::Pass) => {
            out.dashed(
                line(SAMPLE - 1.0),
                Role::Ink,
                2.0,
                Dash { on: 6.0, off: 4.0 },
            );
            out.pen(head(end, right, 7.2), Role::Ink, 1.8);
        }
        Entry::Mark(Verb::Dribble) => {
            let wave = Wave {
                length: 10.4,
                height: 4.5,
                straight: 9.0,
            };
            let path = wave.along(&Way::straight(start, end), 0.0, SAMPLE);
            out.pen(path, Role::Ink, 1.8);
            out.pen(head(end, right, 7.2), Role::Ink, 1.8);
        }
        Entry::Mark(Verb::Screen) => {
            out.stroke(line(SAMPLE), Role::Ink, 2.0);
            out.stroke(lines(&upright(SAMPLE, 7.0)), Role::Ink, 3.2);
        }
        Entry::Mark(Verb::Handoff) => {
            out.stroke(line(SAMPLE), Role::Ink, 2.0);
            let mut bars = BezPath::new();
            push_lines(&mut bars, &upright(12.5, 6.0));
            push_lines(&mut bars, &upright(17.5, 6.0));
            out.stroke(bars, Role::Ink, 2.2);
        }
        Entry::Mark(Verb::Shot) => {
            mark::double_line(start, end, Role::Ink, out);
            out.pen(head(end, right, 8.5), Role::Ink, 1.8);
        }
        Entry::Waits => {
            out.dots(line(SAMPLE - 6.0), Role::Ink, 1.8);
            out.fill(disc(end - right * 2.0, 3.0), Role::Ink);
        }
        Entry::Mark(_) => {
            out.stroke(line(SAMPLE - 1.0), Role::Ink, 2.0);
            out.pen(head(end, right, 7.2), Role::Ink, 1.8);
        }
    }
}
