/** How fast it plays, as a list, where there is no room for its words side by side. */

import { SPEED } from "../names.js";
import { choice } from "./choice.js";

/** @import { Commands, State } from "../reader.js" */

export class Pace {
  #list;
  node;

  /** @param {Commands} ask */
  constructor(ask) {
    this.#list = choice(
      "Speed",
      SPEED.map(({ rate, phrase }) => ({ value: String(rate), word: phrase })),
      (value) => ask.rate(Number(value)),
    );
    this.node = this.#list.node;
  }

  /** @param {State} state */
  update({ rate }) {
    this.#list.select.value = String(rate);
  }
}
