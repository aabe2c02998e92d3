/** How fast it plays. */

import { button } from "../build.js";
import { SPEED } from "../names.js";
import { choice } from "./choice.js";

/** @import { Commands, State } from "../reader.js" */

export class Speed {
  #buttons;
  #list;
  nodes;

  /** @param {Commands} ask */
  constructor(ask) {
    this.#buttons = SPEED.map(({ rate, word }) =>
      button({ class: "cell word wide-only", "data-word": word }, () => ask.rate(rate), word),
    );
    this.#list = choice(
      "Speed",
      SPEED.map(({ rate, phrase }) => ({ value: String(rate), word: phrase })),
      (value) => ask.rate(Number(value)),
    );
    this.nodes = { words: this.#buttons, list: this.#list.node };
  }

  /** @param {State} state */
  update({ rate }) {
    SPEED.forEach((speed, i) => {
      this.#buttons[i]?.setAttribute("aria-pressed", String(speed.rate === rate));
    });
    this.#list.select.value = String(rate);
  }
}
