/** An instant to be found by hand, for who reads that nothing shall move by itself. */

import { button, make, write } from "../../build.js";

/** @import { Say } from "../../../pkg/words/say.js" */
/** @import { Question } from "../quiz.js" */

/** So far a key moves it, seconds: less than what is still right. */
const STEP = 0.1;

export class Slider {
  #say;
  #input = make("input", { type: "range", step: String(STEP), "aria-describedby": "how" });
  #time = make("span", { class: "count" });
  #answer;
  #take;
  node;

  /** @param {Say} say @param {(t: number) => void} seek seconds @param {() => void} answer with the instant that is shown */
  constructor(say, seek, answer) {
    this.#say = say;
    this.#take = () => {
      if (!this.#answer.disabled) answer();
    };
    this.#answer = button({ class: "play" }, this.#take, say.answer);
    this.#input.addEventListener("input", () => {
      this.#answer.disabled = false;
      seek(this.#input.valueAsNumber);
      this.#tell();
    });
    this.node = make(
      "div",
      { hidden: "" },
      make("div", { class: "slide" }, this.#input, this.#time),
      this.#answer,
    );
  }

  /** @param {Question} asked */
  show({ text, t, told }) {
    const from = { min: String(t), max: String(told), "aria-label": text };
    for (const [name, value] of Object.entries(from)) this.#input.setAttribute(name, value);
    this.#input.value = String(t);
    this.#answer.disabled = true;
    this.node.hidden = false;
    this.#tell();
  }

  /** Answers, if it was moved. */
  take() {
    this.#take();
  }

  #tell() {
    const told = this.#say.atSeconds({ t: this.#input.valueAsNumber });
    this.#input.setAttribute("aria-valuetext", told);
    write(this.#time, told);
  }
}
