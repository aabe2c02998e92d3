/** How fast it plays, as a list, where there is no room for its words side by side. */

import { SPEEDS } from "../names.js";
import { choice } from "./choice.js";

/** @import { Commands, State } from "../reader.js" */

export class Pace {
  #list;
  node;

  /** @param {Commands} ask */
  constructor(ask) {
    const { say } = ask;
    const words = [say.slow, say.halfSpeed, say.gameSpeed];
    this.#list = choice(
      say.speed,
      words.map((word, i) => ({ value: String(SPEEDS[i]), word })),
      (value) => ask.rate(Number(value)),
    );
    this.node = this.#list.node;
  }

  /** @param {State} state */
  update({ rate }) {
    this.#list.select.value = String(rate);
  }
}
