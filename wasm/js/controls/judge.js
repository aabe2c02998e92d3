/**
 * What judging a set adds to the reader: a defence to choose, notes with their flags, and how the
 * set does against every defence. It comes after the first picture, and its answers come with the
 * full module.
 */

import { button, make } from "../build.js";
import { choice } from "./choice.js";
import { Notes } from "./notes.js";
import { Outcomes } from "./outcomes.js";

/** @import { FullPlay, OpenSet } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */

const NONE = "Defence none";

export class Judge {
  #ask;
  #openers;
  #lists;
  #notesButton;
  #timingButton;
  #notes;
  #outcomes;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  /** What it adds, by where it stands: in the rows of a wide and of a narrow reader, by the title, below. */
  nodes;

  /** @param {Commands} ask */
  constructor(ask) {
    this.#ask = ask;
    this.#openers = ["wide-only", "narrow-only"].map((width) =>
      button({ class: `cell word ${width}` }, () => ask.coverage(""), "Defence"),
    );
    this.#lists = ["wide-only", "narrow-only"].map((width) => {
      const list = choice("Defence", [], (name) => ask.coverage(name || null));
      list.node.className = `cell choice ${width}`;
      return list;
    });
    this.#notesButton = button({ class: "word", "data-word": "Notes" }, () => ask.notes(), "Notes");
    const timing = "What holds it up";
    this.#timingButton = button({ class: "word", "data-word": timing }, () => ask.timing(), timing);
    this.#notes = new Notes(ask);
    this.#outcomes = new Outcomes(ask);
    const [wide, narrow] = [0, 1].map((i) =>
      [this.#openers[i], this.#lists[i]?.node].filter((node) => node !== undefined),
    );
    const below = make("div", { class: "judged" }, this.#notes.node, this.#outcomes.node);
    this.nodes = {
      wide: wide ?? [],
      narrow: narrow ?? [],
      words: [this.#timingButton, this.#notesButton],
      below,
    };
  }

  /** @param {State} state @param {OpenSet | undefined} play */
  update(state, play) {
    const full = play && "coverages" in play ? play : undefined;
    if (full !== this.#play) this.#take(full);
    const { coverage, notes, timing } = state;
    this.#notesButton.setAttribute("aria-pressed", String(notes));
    this.#timingButton.setAttribute("aria-pressed", String(timing));
    const chosen = full !== undefined && (coverage !== "" || this.#lists.some(hasFocus));
    this.#openers.forEach((opener, i) => {
      const list = this.#lists[i];
      if (!list) return;
      const focused = hasFocus({ select: opener });
      opener.hidden = chosen;
      list.node.hidden = !chosen;
      list.select.value = coverage;
      if (chosen && focused) list.select.focus();
    });
    this.#notes.update(state, full);
    this.#outcomes.update(state, full);
    this.nodes.below.hidden = !full || (!notes && !timing && coverage === "");
  }

  /** Another set is open, or none. @param {FullPlay | undefined} play */
  #take(play) {
    this.#play = play;
    const options = [{ value: "", word: NONE }];
    for (const name of play?.coverages ?? []) {
      options.push({ value: name, word: `Defence ${play?.coverageTitle(name)}` });
    }
    for (const { select } of this.#lists) {
      select.replaceChildren(...options.map(({ value, word }) => make("option", { value }, word)));
    }
  }
}

/** @param {{ select: HTMLElement }} list */
function hasFocus({ select }) {
  return select.getRootNode() instanceof ShadowRoot && select.matches(":focus");
}
