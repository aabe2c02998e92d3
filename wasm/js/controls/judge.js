/**
 * What judging a set adds to the reader: a defence to choose, notes with their flags, and how the
 * set does against every defence. It comes after the first picture, and its answers come with the
 * full module.
 */

import { button, make } from "../build.js";
import { choice } from "./choice.js";
import { Notes } from "./notes.js";
import { Outcomes } from "./outcomes.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */
/** @import { Say } from "../../pkg/words/say.js" */

export class Judge {
  #host;
  #say;
  #wide;
  #narrow;
  #notesButton;
  #timingButton;
  #notes;
  #outcomes;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  /** What it adds, by where it stands: in the rows of a wide and of a narrow reader, by the title, below. */
  nodes;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, ask) {
    const { say } = ask;
    this.#host = host;
    this.#say = say;
    this.#wide = this.#defence(ask, "wide-only");
    this.#narrow = this.#defence(ask, "narrow-only");
    const toggleNotes = () => {
      host.notes = !host.notes;
    };
    this.#notesButton = button({ class: "word", "data-word": say.notes }, toggleNotes, say.notes);
    const timing = say.holdsUp;
    this.#timingButton = button({ class: "word", "data-word": timing }, () => ask.timing(), timing);
    this.#notes = new Notes(host, ask);
    this.#outcomes = new Outcomes(host, ask);
    this.nodes = {
      wide: [this.#wide.opener, this.#wide.list.node],
      narrow: [this.#narrow.opener, this.#narrow.list.node],
      words: [this.#timingButton, this.#notesButton],
      below: make("div", { class: "judged" }, this.#notes.node, this.#outcomes.node),
    };
  }

  /** A button that asks for a defence, and the list that takes its place. @param {Commands} ask @param {string} width */
  #defence(ask, width) {
    const open = async () => {
      await ask.goFull();
      // The set's own, else one that every set can meet.
      this.#host.coverage = this.#play?.writtenCoverage ?? this.#play?.coverages[0] ?? "";
    };
    const choose = (/** @type {string} */ name) => {
      this.#host.coverage = name;
    };
    return {
      opener: button({ class: `cell word ${width}` }, open, this.#say.defence),
      list: choice(this.#say.defence, [], choose, width),
    };
  }

  /** Another set, another verdict on it, or none: what was asked of it before is asked anew. @param {FullPlay | undefined} play */
  take(play) {
    if (play !== this.#play) {
      this.#play = play;
      for (const { list } of [this.#wide, this.#narrow]) {
        list.select.replaceChildren(...offered(this.#say, play));
      }
      this.#outcomes.take(play);
    }
    this.#notes.take(play);
  }

  /** @param {State} state */
  update(state) {
    const { timing } = state;
    const { coverage, notes } = this.#host;
    this.#notesButton.setAttribute("aria-pressed", String(notes));
    this.#timingButton.setAttribute("aria-pressed", String(timing));
    const controls = [this.#wide, this.#narrow];
    const choosing = controls.some(({ list }) => list.select.matches(":focus"));
    const chosen = this.#play !== undefined && (coverage !== "" || choosing);
    for (const { opener, list } of controls) {
      const focused = opener.matches(":focus");
      opener.hidden = chosen;
      list.node.hidden = !chosen;
      list.select.value = coverage;
      if (chosen && focused) list.select.focus();
    }
    this.#notes.update(state);
    this.#outcomes.update();
    this.nodes.below.hidden = !this.#play || (!notes && !timing && coverage === "");
  }

  /** Brings what depends on the time up to date. @param {State} state */
  instant(state) {
    this.#notes.instant(state);
  }
}

/** @param {Say} say @param {FullPlay | undefined} play */
function offered(say, play) {
  const named = (play?.coverages ?? []).map((name) =>
    make("option", { value: name }, say.defenceAs({ coverage: play?.coverageTitle(name) ?? "" })),
  );
  return [make("option", { value: "" }, say.defenceNone), ...named];
}
