/** Play, and the steps by beat and by frame. */

import { button, glyph, make, write } from "../build.js";

/** @import { Commands, State } from "../reader.js" */
/** @import { Say } from "../../pkg/words/say.js" */

const TRIANGLE = "M0 0 L14 8 L0 16 Z";
const BARS = "M0 0 H5 V16 H0 Z M9 0 H14 V16 H9 Z";

export class Transport {
  #say;
  #word = make("span");
  #glyph = glyph("0 0 14 16", TRIANGLE, "glyph");
  #play;
  nodes;

  /** @param {Commands} ask */
  constructor(ask) {
    const { say } = ask;
    this.#say = say;
    this.#play = button({ class: "play" }, () => ask.toggle(), this.#glyph, this.#word);
    this.nodes = {
      play: this.#play,
      beat: stepper(say.beat, say.previousBeat, say.nextBeat, (by) => ask.beat(by)),
      frame: stepper(say.frame, say.previousFrame, say.nextFrame, (by) => ask.frame(by)),
    };
  }

  /** @param {State} state */
  update(state) {
    write(this.#word, wordOf(this.#say, state));
    this.#glyph.firstElementChild?.setAttribute("d", state.paused ? TRIANGLE : BARS);
  }
}

/** @param {Say} say @param {State} state */
function wordOf(say, { paused, ended, stepwise }) {
  if (!paused) return say.pause;
  if (ended) return say.again;
  return stepwise ? say.nextBeat : say.play;
}

/** @param {string} word @param {string} back @param {string} on @param {(by: number) => void} step */
function stepper(word, back, on, step) {
  return make(
    "div",
    { class: "cell stepper", role: "group", "aria-label": word },
    button({ "aria-label": back }, () => step(-1), chevron("M7 1 L1 7 L7 13")),
    make("span", { "aria-hidden": "true" }, word),
    button({ "aria-label": on }, () => step(1), chevron("M1 1 L7 7 L1 13")),
  );
}

/** @param {string} path */
function chevron(path) {
  return glyph("0 0 8 14", path, "chevron");
}
