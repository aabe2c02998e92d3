//! How wide words will be, roughly: what draws them is not known here.

use alloc::string::String;

/// Width of `text` in a sans face of `size` pixels, rather too wide than too narrow: system faces
/// differ by up to 15 %.
pub(super) fn text_width(text: &str, size: f64, bold: bool) -> f64 {
    let units: f64 = text
        .chars()
        .map(|c| match c {
            'i' | 'j' | 'l' | 'I' | '.' | ',' | ':' | '’' | '\'' | '|' => 0.29,
            'f' | 't' | 'r' | '-' | ' ' | '(' | ')' | '/' => 0.38,
            'm' | 'w' | 'M' | 'W' => 0.92,
            'A'..='Z' => 0.70,
            _ => 0.61,
        })
        .sum();
    units * size * if bold { 1.1 } else { 1.0 }
}

/// `text`, cut and ended with an ellipsis where it would be wider than `room` pixels; empty where
/// not even two letters fit.
pub(super) fn fitted(text: &str, size: f64, bold: bool, room: f64) -> String {
    if text_width(text, size, bold) <= room {
        return text.into();
    }
    let mut out = String::new();
    for c in text.chars() {
        out.push(c);
        if text_width(&out, size, bold) + 0.8 * size > room {
            out.pop();
            break;
        }
    }
    let kept = out.trim_ascii_end().len();
    out.truncate(kept);
    if out.chars().nth(1).is_none() {
        return String::new();
    }
    out.push('…');
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_name_that_fits_is_left_alone() {
        assert_eq!(fitted("Zipper", 13.0, false, 200.0), "Zipper");
        assert_eq!(fitted("Through the gate", 13.0, true, 60.0), "Throu…");
        assert_eq!(fitted("Shot", 13.0, false, 6.0), "");
    }

    proptest! {
        #[test]
        fn prop_what_is_cut_fits(text in ".{0,40}", room in 0.0..300.0_f64) {
            prop_assert!(text_width(&fitted(&text, 13.0, false, room), 13.0, false) <= room + 1e-9);
        }
    }
}
