/** How fast it plays, as words side by side. */

import { button } from "../build.js";
import { SPEED } from "../names.js";

/** @import { Commands, State } from "../reader.js" */

export class Speed {
  nodes;

  /** @param {Commands} ask */
  constructor(ask) {
    this.nodes = SPEED.map(({ rate, word }) =>
      button({ class: "cell word wide-only", "data-word": word }, () => ask.rate(rate), word),
    );
  }

  /** @param {State} state */
  update({ rate }) {
    SPEED.forEach((speed, i) => {
      this.nodes[i]?.setAttribute("aria-pressed", String(speed.rate === rate));
    });
  }
}
