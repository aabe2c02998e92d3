/** What each mark on the court and in the strip means. */

import { make, write } from "../build.js";
import { PART } from "../names.js";
import { Surface } from "../surface.js";
import { scaleNote } from "./caption.js";

/** @import { Palette } from "../../pkg/raw/backcut.js" */
/** @import { OpenSet } from "../load.js" */
/** @import { State } from "../reader.js" */
/** @import { Say } from "../../pkg/words/say.js" */

export class Key {
  #say;
  #marks = new Surface();
  #picture = make("div", { class: "marks", role: "img" }, this.#marks.node);
  #width = 0;
  #scale = make("p", { class: "scale narrow-only" });
  node = make("div", { class: "key", part: PART.key }, this.#picture, this.#scale);

  /** @param {Say} say */
  constructor(say) {
    this.#say = say;
  }

  /** Takes a width. @param {OpenSet} play @param {number} width */
  layout(play, width) {
    const height = play.keyHeight(width);
    this.#picture.style.height = `${height}px`;
    this.#picture.setAttribute("aria-label", this.#say.key({ marks: play.keyWords.join(", ") }));
    this.#marks.resize(width, height);
    this.#width = width;
  }

  /** @param {OpenSet} play @param {Palette} palette */
  paint(play, palette) {
    this.#marks.paint((context, density) => play.paintKey(context, palette, this.#width, density));
  }

  /** @param {State} state */
  update({ bodyScale }) {
    write(this.#scale, scaleNote(this.#say, bodyScale));
  }

  release() {
    this.#marks.release();
  }
}
