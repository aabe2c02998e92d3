/** How fast it plays, as a list, where there is no room for its words side by side. */

import { make } from "../build.js";
import { SPEEDS } from "../names.js";
import { choice } from "./choice.js";

/** @import { Commands, State } from "../reader.js" */

export class Pace {
  #say;
  #list;
  /** A speed that a page has set and the list has not. */
  #other = make("option", { hidden: "" });
  node;

  /** @param {Commands} ask */
  constructor(ask) {
    const { say } = ask;
    this.#say = say;
    const words = [say.slow, say.halfSpeed, say.gameSpeed];
    this.#list = choice(
      say.speed,
      words.map((word, i) => ({ value: String(SPEEDS[i]), word })),
      (value) => ask.rate(Number(value)),
    );
    this.#list.select.append(this.#other);
    this.node = this.#list.node;
  }

  /** @param {State} state */
  update({ rate }) {
    this.#other.hidden = SPEEDS.some((speed) => speed === rate);
    if (!this.#other.hidden) {
      this.#other.value = String(rate);
      this.#other.textContent = this.#say.otherSpeed({ rate });
    }
    this.#list.select.value = String(rate);
  }
}
