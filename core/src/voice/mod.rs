//! In which language something is told, with which decimal mark, in which measure; and the
//! catalogues of everything that is told.
//!
//! The catalogues are `locales/LANGUAGE/*.ftl` (Project Fluent); the build script makes constants
//! of them. Without the feature `authoring` there is only English in the court's own measure, and a
//! [`Voice`] takes no room.

mod marks;
mod message;
mod said;
#[cfg(test)]
mod tests;

pub(crate) use message::messages;
pub(crate) use message::{Forms, Message, Text};
pub use said::Said;

use alloc::string::String;

/// A language of the catalogues.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Language {
    /// English.
    #[default]
    English,
    /// Spanish as it is coached in.
    #[cfg(feature = "authoring")]
    Spanish,
}

impl Language {
    /// All of them.
    pub const ALL: &'static [Self] = &[
        Self::English,
        #[cfg(feature = "authoring")]
        Self::Spanish,
    ];

    /// The language that serves whoever asks for `tag` (BCP 47, RFC 5646) best: the one of the same
    /// primary subtag, else English.
    ///
    /// ```
    /// use backcut::voice::Language;
    /// assert_eq!(Language::of("es-MX"), Language::Spanish);
    /// assert_eq!(Language::of("eu"), Language::English);
    /// ```
    #[must_use]
    pub fn of(tag: &str) -> Self {
        let primary = tag.split(['-', '_']).next().unwrap_or_default();
        let same = |l: &&Self| primary.eq_ignore_ascii_case(l.tag());
        Self::ALL.iter().find(same).copied().unwrap_or_default()
    }

    /// Its own tag: `es`.
    #[must_use]
    pub fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            #[cfg(feature = "authoring")]
            Self::Spanish => "es",
        }
    }
}

/// What distances are told in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Units {
    /// As the court's rule book measures: metres or feet, with one decimal.
    #[default]
    Courts,
    /// Metres with one decimal.
    #[cfg(feature = "authoring")]
    Metres,
    /// Feet and whole inches.
    #[cfg(feature = "authoring")]
    FeetAndInches,
}

impl Units {
    /// `m` or `ft`.
    #[cfg(feature = "authoring")]
    #[must_use]
    pub fn parse(name: &str) -> Option<Self> {
        match name {
            "m" => Some(Self::Metres),
            "ft" => Some(Self::FeetAndInches),
            _ => None,
        }
    }
}

/// What parts whole numbers from decimals.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Mark {
    #[default]
    Point,
    #[cfg(feature = "authoring")]
    Comma,
}

/// How something is told. The default is English, as the court measures.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Voice {
    language: Language,
    units: Units,
    mark: Mark,
}

/// Countries where Spanish is written with a decimal point, and `419`, Latin America as a whole.
/// Source: Unicode CLDR 48, `numbers/symbols` of `es_419` and its children; the test beside holds it
/// against those data.
#[cfg(feature = "authoring")]
const POINT: [&str; 14] = [
    "419", "BR", "BZ", "CU", "DO", "GT", "HN", "MX", "NI", "PA", "PE", "PR", "SV", "US",
];

impl Voice {
    /// English, as the court measures: the default.
    pub const ENGLISH: Self = Self {
        language: Language::English,
        units: Units::Courts,
        mark: Mark::Point,
    };

    /// The voice for a language tag (BCP 47), which also settles the decimal mark: Spanish has a
    /// comma, but a point in Mexico and some other countries.
    ///
    /// ```
    /// use backcut::voice::{Language, Units, Voice};
    /// let voice = Voice::new("es-ES", Units::Metres);
    /// assert_eq!(voice.language(), Language::Spanish);
    /// ```
    #[cfg(feature = "authoring")]
    #[must_use]
    pub fn new(tag: &str, units: Units) -> Self {
        let language = Language::of(tag);
        // A region is the first subtag of two letters or three digits (RFC 5646, section 2.2.4).
        let is_region =
            |s: &&str| s.len() == 2 || (s.len() == 3 && s.bytes().all(|b| b.is_ascii_digit()));
        let region = tag.split(['-', '_']).skip(1).find(is_region);
        let pointed = |region| POINT.iter().any(|p| p.eq_ignore_ascii_case(region));
        let mark = match language {
            Language::Spanish if !region.is_some_and(pointed) => Mark::Comma,
            Language::English | Language::Spanish => Mark::Point,
        };
        Self {
            language,
            units,
            mark,
        }
    }

    /// In which language.
    #[must_use]
    pub fn language(self) -> Language {
        self.language
    }

    /// In which measure.
    #[must_use]
    pub fn units(self) -> Units {
        self.units
    }

    /// A number that is written with a point, in the way of the language.
    pub(crate) fn marked(self, number: &str) -> String {
        match self.mark {
            Mark::Point => String::from(number),
            #[cfg(feature = "authoring")]
            Mark::Comma => number.replace('.', ","),
        }
    }
}
