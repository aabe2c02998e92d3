//! Colours by role.

use crate::scene::Role;

/// A colour for each role, as written in SVG.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Palette {
    colours: [&'static str; Role::ALL.len()],
}

impl Palette {
    /// Warm paper.
    #[must_use]
    pub fn light() -> Self {
        Self {
            colours: [
                "#F7F3E9", "#EFE7D5", "#EDE4D0", "#1C2730", "#545E63", "#777E79", "#DAD2C1",
                "#6F7576", "#0B5A60", "#FFF", "#528889", "#AE3F28", "#FFF", "#C06A56", "#AC6E0A",
                "#FDFBF5",
            ],
        }
    }

    /// Dark ground.
    #[must_use]
    pub fn dark() -> Self {
        Self {
            colours: [
                "#12191D", "#1B262B", "#1E2A2F", "#EFE8D8", "#A9B2B1", "#77837F", "#2E3A3F",
                "#9B9991", "#63BDB7", "#0C1316", "#4B8C89", "#F08E6B", "#0C1316", "#BB7258",
                "#E2A83B", "#182126",
            ],
        }
    }

    /// Black on white, grey only as tint.
    #[must_use]
    pub fn print() -> Self {
        Self {
            colours: [
                "#FFF", "#EFEFEF", "#EFEFEF", "#000", "#3A3A3A", "#757575", "#BFBFBF", "#000",
                "#000", "#FFF", "#000", "#000", "#FFF", "#000", "#000", "#FFF",
            ],
        }
    }

    /// Colours of the page the picture stands in: the custom properties of the element, `--backcut-ink`
    /// and so on, each with the light colour where the page sets none. For SVG inside HTML.
    #[must_use]
    pub fn themed() -> Self {
        Self {
            colours: [
                "var(--backcut-paper,#F7F3E9)",
                "var(--backcut-lane,#EFE7D5)",
                "var(--backcut-band,#EDE4D0)",
                "var(--backcut-ink,#1C2730)",
                "var(--backcut-soft,#545E63)",
                "var(--backcut-line,#777E79)",
                "var(--backcut-rule,#DAD2C1)",
                "var(--backcut-faint,#6F7576)",
                "var(--backcut-offence,#0B5A60)",
                "var(--backcut-offence-number,#FFF)",
                "var(--backcut-offence-to-come,#528889)",
                "var(--backcut-follow,#AE3F28)",
                "var(--backcut-follow-number,#FFF)",
                "var(--backcut-follow-to-come,#C06A56)",
                "var(--backcut-ball,#AC6E0A)",
                "var(--backcut-field,#FDFBF5)",
            ],
        }
    }

    /// The custom property by which [`Palette::themed`] asks a page for the colour of `role`.
    #[must_use]
    pub fn property(role: Role) -> &'static str {
        let asked = Self::themed().colour(role);
        let name = asked.strip_prefix("var(").and_then(|a| a.split_once(','));
        name.map_or("", |(name, _)| name)
    }

    /// The colour of `role`.
    #[must_use]
    pub fn colour(&self, role: Role) -> &'static str {
        // Roles are declared in the order of `Role::ALL`, and so is the array.
        self.colours.get(role as usize).copied().unwrap_or("#000")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::vec::Vec;

    #[test]
    fn roles_are_declared_in_the_order_of_a_palette() {
        for (i, role) in Role::ALL.into_iter().enumerate() {
            assert_eq!(role as usize, i);
        }
        assert_eq!(Palette::light().colour(Role::Follow), "#AE3F28");
        assert_eq!(Palette::dark().colour(Role::Ball), "#E2A83B");
    }

    #[test]
    fn a_page_is_asked_for_each_colour_once_and_may_leave_it_light() {
        let mut asked = Vec::new();
        for role in Role::ALL {
            let property = Palette::property(role);
            let light = Palette::light().colour(role);
            assert_eq!(
                Palette::themed().colour(role),
                alloc::format!("var({property},{light})")
            );
            assert!(property.starts_with("--backcut-") && !asked.contains(&property));
            asked.push(property);
        }
    }

    /// Relative luminance of WCAG 2.2, "relative luminance".
    fn luminance(hex: &str) -> f64 {
        let digits: Vec<u32> = hex
            .trim_start_matches('#')
            .chars()
            .map(|c| c.to_digit(16).unwrap())
            .collect();
        let channel = |i: usize| {
            let v = if digits.len() == 3 {
                digits[i] * 17
            } else {
                digits[2 * i] * 16 + digits[2 * i + 1]
            };
            let c = f64::from(v) / 255.0;
            if c <= 0.04045 {
                c / 12.92
            } else {
                crate::math::pow((c + 0.055) / 1.055, 2.4)
            }
        };
        0.2126 * channel(0) + 0.7152 * channel(1) + 0.0722 * channel(2)
    }

    fn ratio(a: &str, b: &str) -> f64 {
        let (a, b) = (luminance(a), luminance(b));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    #[test]
    fn words_have_contrast_4_5_and_marks_3_on_every_ground() {
        for palette in [Palette::light(), Palette::dark(), Palette::print()] {
            for ground in [Role::Paper, Role::Lane, Role::Band].map(|r| palette.colour(r)) {
                for words in [Role::Ink, Role::Soft] {
                    assert!(ratio(palette.colour(words), ground) >= 4.5);
                }
                let marks = [
                    Role::Line,
                    Role::Faint,
                    Role::Offence,
                    Role::OffenceToCome,
                    Role::Follow,
                    Role::FollowToCome,
                    Role::Ball,
                ];
                for mark in marks {
                    assert!(
                        ratio(palette.colour(mark), ground) >= 3.0,
                        "{mark:?} on {ground}"
                    );
                }
            }
            for (number, body) in [
                (Role::OffenceNumber, Role::Offence),
                (Role::FollowNumber, Role::Follow),
            ] {
                assert!(ratio(palette.colour(number), palette.colour(body)) >= 4.5);
            }
        }
    }
}
