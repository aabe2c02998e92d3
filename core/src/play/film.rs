//! The user's own film beside the set.

use super::Play;
use crate::film::{self, Difference, FilmMap, NotTied};
use crate::words;
use alloc::string::String;
use alloc::vec::Vec;

impl Play {
    /// Which instants of the set and of the film are the same.
    #[must_use]
    pub fn film(&self) -> FilmMap {
        FilmMap::of(&self.set.film)
    }

    /// Ties the set's instant `t` to the film's instant `film`; the mark is part of the set from
    /// then on, and in what is written of it.
    ///
    /// # Errors
    /// Why it cannot be tied; the marks stay as they were.
    pub fn tie_film(&mut self, t: f64, film: f64) -> Result<(), NotTied> {
        self.set.film = film::tied(&self.set.film, t, film)?;
        Ok(())
    }

    /// Takes a mark away, counted from 0; nothing where there is no such mark.
    pub fn untie_film(&mut self, index: usize) {
        if index < self.set.film.len() {
            self.set.film.remove(index);
        }
    }

    /// Where what was filmed was run earlier or later than it is drawn, mark by mark.
    #[must_use]
    pub fn film_differences(&self) -> Vec<Difference> {
        film::differences(&self.film(), &self.timeline)
    }

    /// Why something cannot be tied, and what helps.
    #[must_use]
    pub fn not_tied(&self, why: NotTied) -> &'static str {
        words::not_tied(why, self.voice())
    }

    /// A mark in words.
    #[must_use]
    pub fn film_difference(&self, difference: &Difference) -> String {
        words::film_difference(difference, &self.set, self.voice())
    }
}
