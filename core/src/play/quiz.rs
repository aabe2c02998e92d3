//! The facade's questions.

use super::Play;
use crate::defence::Defence;
use crate::looks::Look;
use crate::math::Point;
use crate::quiz::{self, Against, Answer, Asked, Question};
use crate::strip::ForkTo;
use crate::words;
use alloc::string::String;
use alloc::vec::Vec;

impl Play {
    /// Everything that can be asked of this set, and of the defence with its looks if there is one,
    /// in an order that follows from `number`.
    ///
    /// ```
    /// use backcut::play::{Options, Play};
    /// use backcut::quiz::Answer;
    /// let text = br#"{ "backcut": 1, "title": "Give and go", "players": {
    ///     "1": {"at": "top", "ball": true}, "2": {"at": "right wing"} },
    ///   "beats": [ { "actions": [
    ///     {"who": 1, "do": "pass", "to": 2},
    ///     {"who": 1, "do": "cut", "kind": "basket"} ] } ] }"#;
    /// let play = Play::open(text, &Options::default())?;
    /// let questions = play.questions(None, 1);
    /// let first = questions.first().unwrap();
    /// assert_eq!(play.question(first), "Where does 1 go?");
    /// assert_eq!(first.score(first.answer).points, 100);
    /// # Ok::<(), backcut::fault::Faults>(())
    /// ```
    #[must_use]
    pub fn questions(&self, defence: Option<(&Defence, &[Look])>, number: u32) -> Vec<Question> {
        // Reads are decided of a set as it is drawn.
        let is_branch = self.strip.forks.iter().any(|f| f.to == ForkTo::Drawn);
        let decided = defence.filter(|_| !is_branch && !self.set.reads.is_empty());
        let decided = decided.and_then(|(d, _)| self.decided(d.coverage()).ok());
        let against = defence.map(|(defence, looks)| Against {
            defence,
            looks,
            decided: decided.as_ref(),
        });
        let asked = Asked {
            set: &self.set,
            court: &self.court,
            timeline: &self.timeline,
            against,
        };
        quiz::questions(&asked, number)
    }

    /// A question in words.
    #[must_use]
    pub fn question(&self, question: &Question) -> String {
        words::question(&question.ask, self.voice())
    }

    /// What can be chosen, in words.
    #[must_use]
    pub fn choices(&self, question: &Question) -> Vec<String> {
        let choices = question.choices.iter();
        choices
            .map(|c| words::choice(*c, &self.set, self.voice()))
            .collect()
    }

    /// Who stands where as a question is asked, without what it hides.
    #[must_use]
    pub fn standing(&self, question: &Question, defence: Option<&Defence>) -> String {
        words::standing(&self.set, &self.timeline, defence, question, self.voice())
    }

    /// What is right and why, and how far off `reply` was.
    #[must_use]
    pub fn reason(&self, question: &Question, reply: Answer) -> String {
        words::reason(&self.set, &self.timeline, question, reply, self.voice())
    }

    /// A place on the floor, metres, in words: near which spot, and how far from the ring.
    #[must_use]
    pub fn whereabouts(&self, at: Point) -> String {
        words::cross(at, &self.court, self.voice())
    }
}
