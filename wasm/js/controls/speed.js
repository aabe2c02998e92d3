/** How fast it plays, as words side by side. */

import { button } from "../build.js";
import { SPEEDS } from "../names.js";

/** @import { Commands, State } from "../reader.js" */

export class Speed {
  nodes;

  /** @param {Commands} ask */
  constructor({ say, rate }) {
    const words = [say.slow, say.half, say.gameSpeed];
    this.nodes = words.map((word, i) =>
      button({ class: "cell word wide-only", "data-word": word }, () => rate(SPEEDS[i] ?? 1), word),
    );
  }

  /** @param {State} state */
  update({ rate }) {
    this.nodes.forEach((node, i) => node.setAttribute("aria-pressed", String(SPEEDS[i] === rate)));
  }
}
