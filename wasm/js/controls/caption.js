/**
 * The beat: its name, its place among the others, what happens in it. All captions lie on each
 * other and one is seen, so that nothing below moves when the beat changes.
 */

import { button, glyph, make, write } from "../build.js";
import { PART } from "../names.js";

/** @import { Commands, State } from "../reader.js" */

export class Caption {
  #title = make("h3");
  #count = make("span", { class: "count" });
  #scale = make("p", { class: "scale wide-only" });
  #captions = make("div", { class: "captions", part: PART.caption });
  #fold;
  #said = make("p", { class: "unseen", role: "status" });
  #titles = /** @type {string[]} */ ([]);
  node;

  /** @param {Commands} ask */
  constructor(ask) {
    this.#fold = button(
      { class: "word fold" },
      () => ask.fold(),
      "all rows ",
      glyph("0 0 14 8", "M1 1 L7 7 L13 1", "chevron"),
    );
    this.node = make(
      "div",
      { class: "beat" },
      make("div", { class: "line" }, this.#title, this.#count, this.#scale, this.#fold),
      this.#captions,
      this.#said,
    );
  }

  /** One line in place of captions. @param {string} text */
  say(text) {
    this.#captions.replaceChildren(make("p", {}, text));
  }

  /** @param {readonly string[]} titles @param {readonly string[]} captions */
  show(titles, captions) {
    this.#titles = [...titles];
    this.#captions.replaceChildren(...captions.map((text) => make("p", { hidden: "" }, text)));
  }

  /** @param {State} state */
  update({ beat, beatTitle, foldable, folded, bodyScale }) {
    write(this.#title, beatTitle);
    write(this.#count, this.#titles.length > 0 ? `beat ${beat + 1} of ${this.#titles.length}` : "");
    write(this.#scale, this.#titles.length > 0 ? scaleNote(bodyScale) : "");
    [...this.#captions.children].forEach((p, i) => p.toggleAttribute("hidden", i !== beat));
    this.#fold.hidden = !foldable;
    this.#fold.setAttribute("aria-expanded", String(!folded));
  }

  /** Has the beat read out, after a reader asked for it. @param {State} state */
  announce({ beat, beatTitle }) {
    const caption = this.#captions.children[beat]?.textContent ?? "";
    write(this.#said, `Beat ${beat + 1} of ${this.#titles.length}, ${beatTitle}. ${caption}`);
  }
}

/** @param {number} bodyScale */
export function scaleNote(bodyScale) {
  const bodies = bodyScale >= 1.05 ? ` Bodies × ${bodyScale.toFixed(1)}.` : "";
  return `Marks along the lines are 1 m.${bodies}`;
}
