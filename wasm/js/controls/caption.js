/**
 * The beat: its name, its place among the others, what happens in it. All captions lie on each
 * other and one is seen, so that nothing below moves when the beat changes.
 */

import { button, glyph, make, write } from "../build.js";
import { PART } from "../names.js";

/** @import { Commands, State } from "../reader.js" */
/** @import { Say } from "../../pkg/words/say.js" */

export class Caption {
  #say;
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
    this.#say = ask.say;
    this.#fold = button(
      { class: "word fold" },
      () => ask.fold(),
      `${ask.say.allRows} `,
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
    const say = this.#say;
    const beats = this.#titles.length;
    write(this.#title, beatTitle);
    write(this.#count, beats > 0 ? say.beatOf({ beat: beat + 1, beats }) : "");
    write(this.#scale, beats > 0 ? scaleNote(say, bodyScale) : "");
    [...this.#captions.children].forEach((p, i) => p.toggleAttribute("hidden", i !== beat));
    this.#fold.hidden = !foldable;
    this.#fold.setAttribute("aria-expanded", String(!folded));
  }

  /** Has the beat read out, after a reader asked for it. @param {State} state */
  announce({ beat, beatTitle }) {
    const caption = this.#captions.children[beat]?.textContent ?? "";
    const at = { beat: beat + 1, beats: this.#titles.length, title: beatTitle };
    write(this.#said, this.#say.beatTold({ ...at, caption }));
  }
}

/** @param {Say} say @param {number} scale of bodies */
export function scaleNote(say, scale) {
  return scale >= 1.05 ? say.bodies({ scale }) : say.marks;
}
