/** What is seen of a quiz below the court: the question, its answers, what is said of them. */

import { button, make, write } from "../../build.js";
import { Choices } from "./choices.js";
import { Slider } from "./slider.js";

/** @import { Say } from "../../../pkg/words/say.js" */
/** @import { Question, Result } from "../quiz.js" */

/**
 * What a learner can ask for.
 *
 * @typedef {object} Asks
 * @property {() => void} start has the set play until a press
 * @property {() => void} press
 * @property {(choice: number) => void} choose counted from 0
 * @property {(t: number) => void} seek seconds
 * @property {() => void} stop answers with the instant that is shown
 * @property {() => void} next
 * @property {() => void} again shows once more how it goes on, or the next picture of it
 * @property {() => void} another round
 * @property {() => void} forget
 * @property {() => void} leave
 */

/** Its buttons, by name. @typedef {"start" | "now" | "next" | "again" | "another" | "forget"} Act */

export class Panel {
  #say;
  #acts;
  #choices;
  #slider;
  #count = make("span", { class: "count" });
  #points = make("span", { class: "count" });
  #question = make("h3", { tabindex: "-1" });
  #how = make("p", { class: "how", id: "how" });
  #standing = make("p", { class: "unseen", id: "standing" });
  #reason = make("p", { class: "reason", role: "status" });
  #told = make("p", { class: "told", role: "status", hidden: "" });
  node;

  /** @param {Say} say @param {Asks} ask */
  constructor(say, ask) {
    this.#say = say;
    const act = (/** @type {string} */ word, /** @type {() => void} */ does, look = "play") =>
      button({ class: look }, does, word);
    /** @type {Record<Act, HTMLButtonElement>} */
    this.#acts = {
      start: act(say.play, ask.start),
      now: act(say.now, ask.press),
      next: act(say.nextQuestion, ask.next),
      again: act(say.seeAgain, ask.again, "word"),
      another: act(say.anotherRound, ask.another),
      forget: act(say.forgetResults, ask.forget, "word"),
    };
    const { now } = this.#acts;
    // A press is meant for the instant at which the finger comes down.
    now.addEventListener("pointerdown", ask.press);
    // Else the click that follows would hit what stands there by then.
    now.addEventListener("touchstart", (event) => event.preventDefault());
    this.#choices = new Choices(say.answer, ask.choose);
    this.#slider = new Slider(say, ask.seek, ask.stop);
    this.node = make(
      "div",
      { class: "quiz", role: "group", "aria-label": say.quiz },
      make(
        "div",
        { class: "line" },
        this.#count,
        this.#points,
        act(say.endQuiz, ask.leave, "word"),
      ),
      this.#question,
      this.#how,
      this.#standing,
      this.#choices.node,
      this.#slider.node,
      this.#reason,
      this.#told,
      make("div", { class: "acts" }, ...Object.values(this.#acts)),
    );
  }

  /** Whether a key on `target` means the press that is waited for. @param {Element} target */
  takesPress(target) {
    return target === this.#acts.now || !target.matches("button");
  }

  /** How far the round is. @param {number} question counted from 0 @param {number} questions @param {number} points @param {number | undefined} best */
  count(question, questions, points, best) {
    const say = this.#say;
    write(this.#count, say.questionOf({ question: question + 1, questions }));
    write(
      this.#points,
      best === undefined ? say.points({ points }) : say.pointsSoFar({ points, best }),
    );
  }

  /** Asks. @param {Question} asked @param {boolean} still whether nothing moves by itself */
  pose(asked, still) {
    const { kind, text, standing, choices } = asked;
    const say = this.#say;
    const slides = still && kind === "instant";
    const instant = slides ? say.answerStill : say.answerInstant;
    const how = { place: say.answerPlace, instant, choice: say.answerChoice };
    this.tell(text, how[kind], kind === "instant" && !slides ? ["start"] : []);
    write(this.#standing, standing);
    this.#choices.show(text, choices);
    if (slides) this.#slider.show(asked);
    if (slides || kind === "choice") this.focus();
  }

  /** Answers with what is chosen, if anything is. */
  choose() {
    if (this.#slider.node.hidden) this.#choices.take();
    else this.#slider.take();
  }

  /** Waits for a press. */
  wait() {
    this.#offer(["now"]);
  }

  /** Says what an answer was worth. @param {Question} asked @param {Result} result @param {boolean} last @param {string} again what shows more of it; empty: nothing does */
  answer({ text }, { points, reason, choice, read }, last, again) {
    this.tell(text, "", again ? ["next", "again"] : ["next"]);
    this.#choices.tell(choice);
    this.#reason.replaceChildren(make("strong", {}, this.#say.points({ points })), ` ${reason}`);
    this.#told.hidden = read === undefined;
    write(this.#acts.next, last ? this.#say.seeSum : this.#say.nextQuestion);
    write(this.#acts.again, again);
  }

  /** What happens in the picture. @param {string} text */
  caption(text) {
    write(this.#told, text);
  }

  /** The sum of a round. @param {string} sum @param {string} how @param {string} kept what is kept of it @param {readonly Act[]} acts */
  sum(sum, how, kept, acts) {
    this.tell(sum, how, acts);
    this.remark(kept);
    for (const part of [this.#count, this.#points]) write(part, "");
    this.focus();
  }

  /** @param {string} text */
  remark(text) {
    write(this.#reason, text);
  }

  /** One thing large and one small; all else is put away. @param {string} large @param {string} small @param {readonly Act[]} acts the first has the focus */
  tell(large, small, acts) {
    write(this.#question, large);
    write(this.#how, small);
    this.#how.hidden = small === "";
    for (const part of [this.#standing, this.#reason, this.#told]) write(part, "");
    for (const part of [this.#choices.node, this.#slider.node, this.#told]) part.hidden = true;
    this.#offer(acts);
  }

  /** Puts the focus on the question. */
  focus() {
    this.#question.focus();
  }

  /** @param {readonly Act[]} acts */
  #offer(acts) {
    for (const [name, act] of Object.entries(this.#acts)) {
      act.hidden = !acts.includes(/** @type {Act} */ (name));
    }
    const [first] = acts;
    if (first) this.#acts[first].focus();
  }
}
