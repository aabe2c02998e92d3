/** Whether a press on a player picks that one alone, or one more. */

import { button } from "../build.js";

/** @import { Commands } from "../reader.js" */

export class Several {
  #ask;
  #follow = 0;
  #on = false;
  node;

  /** @param {Commands} ask */
  constructor(ask) {
    this.#ask = ask;
    const { say } = ask;
    const toggle = () => {
      this.#on = !this.#on;
      this.#tell();
    };
    this.node = button({ class: "word", "data-word": say.several }, toggle, say.several);
    this.#tell();
  }

  /** A press on a player; with a key held down it adds. @param {number} player @param {MouseEvent} event */
  pick(player, { shiftKey, ctrlKey, metaKey }) {
    const bit = 1 << (player - 1);
    const adds = this.#on || shiftKey || ctrlKey || metaKey;
    if (!adds && this.#follow !== bit) this.#ask.follow(0);
    this.#ask.follow(bit);
  }

  /** @param {number} follow */
  update(follow) {
    this.#follow = follow;
  }

  #tell() {
    this.node.setAttribute("aria-pressed", String(this.#on));
  }
}
