/** Play, and the steps by beat and by frame. */

import { button, glyph, make, write } from "../build.js";

/** @import { Commands, State } from "../reader.js" */

const TRIANGLE = "M0 0 L14 8 L0 16 Z";
const BARS = "M0 0 H5 V16 H0 Z M9 0 H14 V16 H9 Z";

export class Transport {
  #word = make("span");
  #glyph = glyph("0 0 14 16", TRIANGLE, "glyph");
  #play;
  nodes;

  /** @param {Commands} ask */
  constructor(ask) {
    this.#play = button({ class: "play" }, () => ask.toggle(), this.#glyph, this.#word);
    this.nodes = {
      play: this.#play,
      beat: stepper("Beat", "beat", (by) => ask.beat(by)),
      frame: stepper("Frame", "frame", (by) => ask.frame(by)),
    };
  }

  /** @param {State} state */
  update(state) {
    write(this.#word, wordOf(state));
    this.#glyph.firstElementChild?.setAttribute("d", state.paused ? TRIANGLE : BARS);
  }
}

/** @param {State} state */
function wordOf({ paused, ended, stepwise }) {
  if (!paused) return "Pause";
  if (ended) return "Again";
  return stepwise ? "Next beat" : "Play";
}

/** @param {string} word @param {string} what @param {(by: number) => void} step */
function stepper(word, what, step) {
  return make(
    "div",
    { class: "cell stepper", role: "group", "aria-label": word },
    button({ "aria-label": `Previous ${what}` }, () => step(-1), chevron("M7 1 L1 7 L7 13")),
    make("span", { "aria-hidden": "true" }, word),
    button({ "aria-label": `Next ${what}` }, () => step(1), chevron("M1 1 L7 7 L1 13")),
  );
}

/** @param {string} path */
function chevron(path) {
  return glyph("0 0 8 14", path, "chevron");
}
