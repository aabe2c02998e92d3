/** What each mark on the court and in the strip means. */

import { glyph, make, write } from "../build.js";
import { PART } from "../names.js";
import { scaleNote } from "./caption.js";

/** @import { State } from "../reader.js" */

const HEAD = "M22 2 L29 7 L22 12";

/** Words and their marks, 30 by 14 pixels, as on the court. */
const MARKS = /** @type {const} */ ([
  ["cut", `M1 7 H28 ${HEAD}`],
  ["pass", `M1 7 H6 M9 7 H14 M17 7 H22 ${HEAD}`],
  ["dribble", `M1 7 C2 1 5 1 6 7 S10 13 11 7 S15 1 16 7 S20 13 21 7 H28 ${HEAD}`],
  ["screen", "M1 7 H28 M28 1 V13"],
  ["hand-off", "M1 7 H29 M13 2 V12 M17 2 V12"],
  ["shot", "M1 5 H25 M1 9 H25 M21 1 L29 7 L21 13"],
  [
    "waits",
    "M2 7 h.1 M6 7 h.1 M10 7 h.1 M14 7 h.1 M18 7 h.1 M22 7 h.1 M27 7 m-2 0 a2 2 0 1 0 4 0 a2 2 0 1 0 -4 0",
  ],
]);

export class Key {
  #scale = make("p", { class: "scale narrow-only" });
  node;

  constructor() {
    const items = MARKS.map(([word, path]) =>
      make("li", {}, glyph("0 0 30 14", path, "mark"), word),
    );
    this.node = make(
      "div",
      { class: "key", part: PART.key },
      make("ul", { "aria-label": "Key" }, ...items),
      this.#scale,
    );
  }

  /** @param {State} state */
  update({ bodyScale }) {
    write(this.#scale, scaleNote(bodyScale));
  }
}
