/** What a reader sees and does about the film: its controls, where it is, what is said of it. */

import { button, glyph, make, write } from "../../build.js";
import { FRAME } from "../../names.js";

/** @import { Say } from "../../../pkg/words/say.js" */

/**
 * What is done then.
 *
 * @typedef {object} Acts
 * @property {(file: File) => void} pick
 * @property {() => void} place it shall stand elsewhere
 * @property {() => void} hear with its sound, or without
 * @property {() => void} part it is moved alone, or no longer
 * @property {() => void} tie
 * @property {(film: number) => void} move
 * @property {(by: number) => void} step by so many seconds
 * @property {() => void} save
 */

/**
 * What is shown.
 *
 * @typedef {object} Shown
 * @property {boolean} ready there is a film
 * @property {boolean} alone it is moved alone
 * @property {boolean} marked there are marks to save
 */

export class Panel {
  #say;
  #pick;
  #place;
  #sound;
  #alone;
  #mark;
  #save;
  #scrubber;
  #time = make("span", { class: "film-time" });
  #status = make("p", { class: "film-status", role: "status" });
  /** What could not be copied, to be copied by hand. */
  #field;
  #running;
  node;

  /** @param {Say} say @param {Acts} acts @param {HTMLElement} marks */
  constructor(say, acts, marks) {
    this.#say = say;
    const word = (/** @type {string} */ text, /** @type {() => void} */ act) =>
      button({ class: "word" }, act, text);
    const toggle = (/** @type {string} */ text, /** @type {() => void} */ act) =>
      button({ class: "word", "data-word": text, "aria-pressed": "false" }, act, text);
    const step = (
      /** @type {string} */ text,
      /** @type {number} */ by,
      /** @type {string} */ path,
    ) => {
      const drawn = glyph("0 0 8 14", path, "chevron");
      return button({ class: "cell", "aria-label": text }, () => acts.step(by), drawn);
    };
    const input = picker(say.pickFilm, acts.pick);
    this.#pick = word("", () => input.click());
    this.#place = word(say.pictureInPicture, acts.place);
    this.#sound = toggle(say.sound, acts.hear);
    this.#alone = toggle(say.filmAlone, acts.part);
    this.#mark = word(say.markThis, acts.tie);
    this.#save = word(say.copyMarked, acts.save);
    this.#scrubber = make("input", {
      ...{ type: "range", min: "0", max: "0", step: String(FRAME), "aria-label": say.film },
    });
    this.#scrubber.addEventListener("input", () => acts.move(this.#scrubber.valueAsNumber));
    this.#field = make("textarea", {
      ...{ readonly: "", rows: "3", "aria-label": say.markedFile, hidden: "" },
    });
    const back = step(say.filmFrameBack, -FRAME, "M7 1 L1 7 L7 13");
    const on = step(say.filmFrameOn, FRAME, "M1 1 L7 7 L1 13");
    this.#running = make(
      "div",
      {},
      make("div", { class: "film-line" }, back, this.#scrubber, on, this.#time),
      make("div", { class: "ways" }, this.#alone, this.#mark),
    );
    this.node = make(
      "div",
      { class: "film", role: "group", "aria-label": say.film },
      make("div", { class: "ways" }, this.#pick, this.#place, this.#sound, input),
      this.#running,
      this.#status,
      marks,
      make("div", { class: "ways" }, this.#save),
      this.#field,
      make("p", { class: "fine" }, say.filmStays),
    );
  }

  /** @param {Shown} shown */
  show({ ready, alone, marked }) {
    write(this.#pick, ready ? this.#say.anotherFilm : this.#say.pickFilm);
    for (const node of [this.#running, this.#place, this.#sound]) node.hidden = !ready;
    this.#alone.setAttribute("aria-pressed", String(alone));
    this.#mark.hidden = !alone;
    this.#save.hidden = !marked;
  }

  /** Where the film is. @param {number} film @param {number} length */
  at(film, length) {
    const told = this.#say.filmTime({ film, length });
    this.#scrubber.max = String(length);
    this.#scrubber.valueAsNumber = film;
    this.#scrubber.setAttribute("aria-valuetext", told);
    write(this.#time, told);
  }

  /** @param {string} words */
  tell(words) {
    write(this.#status, words);
  }

  /** @param {boolean} on whether it stands beside the court */
  beside(on) {
    write(this.#place, on ? this.#say.pictureInPicture : this.#say.sideBySide);
  }

  /** @param {boolean} on */
  heard(on) {
    this.#sound.setAttribute("aria-pressed", String(on));
  }

  /** Puts a text on the clipboard, or into a field where that is not to be had; says which. @param {string} text */
  async copy(text) {
    const done = await navigator.clipboard?.writeText(text).then(
      () => true,
      () => false,
    );
    this.#field.hidden = done === true;
    if (done) return this.#say.marksCopied;
    this.#field.value = text;
    this.#field.select();
    return this.#say.marksByHand;
  }
}

/** What opens the system's list of films. @param {string} label @param {(file: File) => void} pick */
function picker(label, pick) {
  const input = make("input", {
    ...{ type: "file", accept: "video/*", hidden: "", "aria-label": label },
  });
  input.addEventListener("change", () => {
    const file = input.files?.[0];
    if (file) pick(file);
    // The same file again is another pick.
    input.value = "";
  });
  return input;
}
