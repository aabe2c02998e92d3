/** The set's name, its court, level and length, and what concerns the whole reader. */

import { button, make, write } from "../build.js";
import { PART } from "../names.js";

/** @import { Commands, State } from "../reader.js" */

export class Heading {
  #say;
  #title = make("h2", { part: PART.title });
  #court = make("span");
  #level = make("span", { class: "wide-only" });
  #length = make("span");
  #captions;
  #full;
  /** What concerns the whole reader; the reader lays it where there is room. */
  words;
  node;

  /** @param {Commands} ask */
  constructor(ask) {
    const { say } = ask;
    this.#say = say;
    this.#captions = button(
      { class: "word", "data-word": say.captions },
      () => ask.captions(),
      say.captions,
    );
    this.#full = button({ class: "word" }, () => ask.fullScreen(), say.fullScreen);
    this.words = make("div", { class: "words" }, this.#captions, this.#full);
    const about = make("p", { class: "about" }, this.#court, this.#level, this.#length);
    this.node = make("header", {}, this.#title, about, this.words);
  }

  /** @param {string} title */
  set title(title) {
    write(this.#title, title);
  }

  /** @param {{ courtTitle: string, levelTitle: string, duration: number }} set */
  about({ courtTitle, levelTitle, duration }) {
    write(this.#court, courtTitle);
    write(this.#level, ` · ${levelTitle}`);
    write(this.#length, ` · ${this.#say.seconds({ time: duration })}`);
  }

  /** @param {State} state */
  update({ full, captions }) {
    this.#captions.setAttribute("aria-pressed", String(captions));
    write(this.#full, full ? this.#say.close : this.#say.fullScreen);
  }
}
