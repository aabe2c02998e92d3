/** The set's name, its court, level and length, and what concerns the whole reader. */

import { button, make, write } from "../build.js";
import { PART } from "../names.js";

/** @import { Commands, State } from "../reader.js" */

export class Heading {
  #title = make("h2", { part: PART.title });
  #court = make("span");
  #level = make("span", { class: "wide-only" });
  #length = make("span");
  #full;
  node;

  /** @param {Commands} ask */
  constructor(ask) {
    this.#full = button({ class: "word wide-only" }, () => ask.fullScreen(), "Full screen");
    const about = make("p", { class: "about" }, this.#court, this.#level, this.#length);
    this.node = make("header", {}, this.#title, about, this.#full);
  }

  /** @param {{ title: string, courtTitle: string, levelTitle: string, duration: number }} set */
  show({ title, courtTitle, levelTitle, duration }) {
    write(this.#title, title);
    write(this.#court, courtTitle);
    write(this.#level, ` · ${levelTitle}`);
    write(this.#length, ` · ${duration.toFixed(1)} s`);
  }

  /** @param {State} state */
  update({ full }) {
    write(this.#full, full ? "Close" : "Full screen");
  }
}
