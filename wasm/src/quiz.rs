//! Questions on the open set: asked, hidden on the court, answered.

use crate::fault::set;
use crate::play::Play;
use crate::reads::written;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;
use backcut::math::Point;
use backcut::quiz::{Answer, Ask, Hidden, Question};
use backcut::scene::View;
use js_sys::{Array, Object};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

/// The questions that were asked last, and what the court shows of one.
#[derive(Debug, Default)]
pub(crate) struct Quiz {
    questions: Vec<Question>,
    posed: Option<usize>,
    hidden: Hidden,
    guess: Option<(Point, Point)>,
}

impl Quiz {
    /// `view` as it is while a question stands. A close-up would lie over places to point at, and
    /// tell where something happens.
    pub(crate) fn view(&self, view: View) -> View {
        if self.posed.is_none() {
            return view;
        }
        // Instants of the followed are marked on their ways.
        View {
            follow: if self.asks() { [false; 5] } else { view.follow },
            hidden: self.hidden,
            guess: self.guess,
            inset: false,
            look_at: None,
            ..view
        }
    }

    /// Whether a question stands that has not been answered.
    fn asks(&self) -> bool {
        self.hidden != Hidden::default()
    }
}

#[wasm_bindgen]
impl Play {
    /// Everything that can be asked of this set, and of the defence on the floor, in an order that
    /// follows from `number`: `{kind, t, told, text, standing, choices}`. `kind` is `place`,
    /// `instant` or `choice`; it stands, or plays, from `t` seconds, and by `told` the answer has
    /// been seen; where the set does not show it, `told` is `t`.
    pub fn questions(&mut self, number: u32) -> Array {
        let judged = &self.judged;
        let defence = judged.defence.as_ref();
        let against = defence.map(|defence| (defence, judged.looks.as_slice()));
        let questions = self.core.questions(against, number);
        let told: Array = questions.iter().map(|q| self.asked(q)).collect();
        self.judged.quiz = Quiz {
            questions,
            ..Quiz::default()
        };
        told
    }

    /// From now on the court hides what the question with this index asks for; without one all is
    /// shown again, and no answer.
    pub fn pose(&mut self, index: Option<usize>) {
        let quiz = &mut self.judged.quiz;
        let question = index.and_then(|i| quiz.questions.get(i));
        quiz.hidden = question.map_or_else(Hidden::default, |q| q.hidden);
        quiz.posed = index.filter(|_| question.is_some());
        quiz.guess = None;
    }

    /// Answers with a place, metres: `{points, off, x, y, reason}`, `off` in metres. The court shows
    /// both places from now on. Undefined where there is no such question.
    #[wasm_bindgen(js_name = answerPlace)]
    pub fn answer_place(&mut self, index: usize, x: f64, y: f64) -> JsValue {
        self.answered(index, Answer::Place(Point::new(x, y)))
    }

    /// Answers with an instant, seconds; no number where none was given: `{points, off, t, reason}`,
    /// `off` in seconds, below 0 where it was early. The court shows all from now on.
    #[wasm_bindgen(js_name = answerInstant)]
    pub fn answer_instant(&mut self, index: usize, t: f64) -> JsValue {
        self.answered(index, Answer::Instant(t))
    }

    /// Answers with one of the choices, counted from 0: `{points, choice, read, reason}`, with the right
    /// one; `read` is the line that shows it, as [`Play::take_read`] takes it, where that is another
    /// than this one. The court shows all from now on.
    #[wasm_bindgen(js_name = answerChoice)]
    pub fn answer_choice(&mut self, index: usize, choice: usize) -> JsValue {
        self.answered(index, Answer::Choice(choice))
    }

    /// The floor under a place of the court's picture, CSS pixels: metres to the right of the ring
    /// and toward half court.
    #[wasm_bindgen(js_name = floorAt)]
    #[must_use]
    pub fn floor_at(&self, width: f64, x: f64, y: f64) -> Vec<f64> {
        let view = self.view(width, 0);
        let floor = view.floor_at(self.core.court(), Point::new(x, y));
        vec![floor.x, floor.y]
    }

    /// Where a place on the floor, metres, lies in the court's picture, CSS pixels.
    #[wasm_bindgen(js_name = pixelAt)]
    #[must_use]
    pub fn pixel_at(&self, width: f64, x: f64, y: f64) -> Vec<f64> {
        let view = self.view(width, 0);
        let px = view.px_at(self.core.court(), Point::new(x, y));
        vec![px.x, px.y]
    }

    /// A place on the floor in words, metres.
    #[must_use]
    pub fn whereabouts(&self, x: f64, y: f64) -> String {
        self.core.whereabouts(Point::new(x, y))
    }
}

impl Play {
    /// The picture at `t` in words while a question stands: who is where, and nothing of what is
    /// asked. `None` where nothing is.
    pub(crate) fn standing(&self, t: f64) -> Option<String> {
        let quiz = &self.judged.quiz;
        let posed = quiz.posed.filter(|_| quiz.asks());
        let question = posed.and_then(|i| quiz.questions.get(i))?;
        let now = Question {
            t,
            ..question.clone()
        };
        Some(self.core.standing(&now, self.judged.defence.as_ref()))
    }

    fn asked(&self, q: &Question) -> JsValue {
        let object = Object::new();
        let kind = match q.answer {
            Answer::Place(_) => "place",
            Answer::Instant(_) => "instant",
            Answer::Choice(_) => "choice",
        };
        let choices = self.core.choices(q).into_iter().map(JsValue::from);
        let defence = self.judged.defence.as_ref();
        set(&object, "kind", kind.into());
        set(&object, "t", q.t.into());
        set(&object, "told", q.told.into());
        set(&object, "text", self.core.question(q).into());
        set(&object, "standing", self.core.standing(q, defence).into());
        set(&object, "choices", choices.collect::<Array>().into());
        object.into()
    }

    fn answered(&mut self, index: usize, reply: Answer) -> JsValue {
        let quiz = &mut self.judged.quiz;
        let Some(question) = quiz.questions.get(index) else {
            return JsValue::UNDEFINED;
        };
        let object = Object::new();
        let score = question.score(reply);
        set(&object, "points", score.points.into());
        match (question.answer, reply) {
            (Answer::Place(right), Answer::Place(given)) => {
                set(&object, "off", score.off_m.into());
                set(&object, "x", right.x.into());
                set(&object, "y", right.y.into());
                quiz.guess = score.off_m.map(|_| (given, right));
            }
            (Answer::Instant(right), _) => {
                set(&object, "off", score.off_s.into());
                set(&object, "t", right.into());
            }
            (Answer::Choice(right), _) => {
                set(&object, "choice", u32::try_from(right).unwrap_or(0).into());
                if let Ask::Read {
                    read: Some(read), ..
                } = question.ask
                {
                    set(&object, "read", written(&[read]).into());
                }
            }
            _ => {}
        }
        quiz.hidden = Hidden::default();
        let reason = self.core.reason(question, reply);
        set(&object, "reason", reason.into());
        object.into()
    }
}
