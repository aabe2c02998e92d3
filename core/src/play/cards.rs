//! Role cards.

use super::Play;
use crate::card::{self, Card};
use crate::scene::{self, View};
use crate::set::PlayerId;
use crate::svg::{self, Palette};
use crate::words::{self, CardWords};
use alloc::string::String;
use alloc::vec::Vec;

impl Play {
    /// The role card of `who`: what they do, what for, what to wait for and where to look. `None` of
    /// somebody who takes no part.
    ///
    /// ```
    /// use backcut::play::{Options, Play};
    /// use backcut::set::PlayerId;
    /// let text = br#"{ "backcut": 1, "title": "Give and go", "players": {
    ///     "1": {"at": "top", "ball": true}, "2": {"at": "right wing"} },
    ///   "beats": [ { "actions": [
    ///     {"who": 1, "do": "pass", "to": 2},
    ///     {"who": 1, "do": "cut", "kind": "basket"} ] } ] }"#;
    /// let play = Play::open(text, &Options::default())?;
    /// let card = PlayerId::new(1).and_then(|who| play.card(who)).unwrap();
    /// let words = play.card_words(&card);
    /// assert_eq!(words.steps[0].text, "Pass to 2 on the right wing.");
    /// assert_eq!(words.steps[0].look, "Eyes: 2.");
    /// # Ok::<(), backcut::fault::Faults>(())
    /// ```
    #[must_use]
    pub fn card(&self, who: PlayerId) -> Option<Card> {
        card::card(&self.set, &self.court, &self.timeline, who)
    }

    /// A card of this set, said to the player.
    #[must_use]
    pub fn card_words(&self, card: &Card) -> CardWords {
        words::card(card, &self.set, &self.timeline, self.voice())
    }

    /// Those of [`Play::cautions`] that concern `who`.
    #[must_use]
    pub fn cautions_for(&self, who: PlayerId) -> Vec<&'static str> {
        words::cautions_for(&self.set, who, self.voice())
    }

    /// What is drawn on the card of `who`: their way in ink, the others in grey, for paper.
    #[must_use]
    pub fn card_scene(&self, who: PlayerId, width_px: f64) -> scene::Scene {
        let view = View {
            print: true,
            ..self.view(width_px)
        };
        scene::part(&self.staged(), who, &view)
    }

    /// [`Play::card_scene`] as a standalone SVG. `title` names it for those who cannot see it,
    /// `told` says what they would see.
    #[must_use]
    pub fn card_poster(
        &self,
        who: PlayerId,
        width_px: f64,
        palette: &Palette,
        (title, told): (&str, &str),
    ) -> String {
        svg::paint(&self.card_scene(who, width_px), palette, title, told)
    }
}
