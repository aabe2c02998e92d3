/** What was found, each with its flag, and the look that is on. */

import { button, glyph, make, write } from "../build.js";

/** @import { FullPlay } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */

/** A look stands for so long, seconds; the picture has the same. */
const STANDS = 0.6;
/** So long cures are looked for at a stretch, milliseconds. */
const SLICE_MS = 4;
/** By severity: the word, and the flag's shape as on the court. */
const FLAGS = /** @type {Record<string, [string, string]>} */ ({
  note: ["Note", "M1 9 A8 8 0 1 1 17 9 A8 8 0 1 1 1 9 Z"],
  warning: ["Warning", "M9 0 L18 16 L0 16 Z"],
  violation: ["Violation", "M5.5 0.5 H12.5 L17.5 5.5 V12.5 L12.5 17.5 H5.5 L0.5 12.5 V5.5 Z"],
});

export class Notes {
  #ask;
  #look = make("p", { class: "look" });
  #timing = make("p", { class: "fine" }, "In ink: what holds it up. Dots after it: time to spare.");
  #list = make("ul", {});
  #none = make("p", {}, "Nothing to note.");
  #fine = make(
    "p",
    { class: "fine" },
    "Computed, so likely, never certain: the referee decides what is called, the supervising coach what is run.",
  );
  #told = "";
  #last = /** @type {{ state: State, play: FullPlay | undefined } | undefined} */ (undefined);
  #curing = false;
  node = make(
    "div",
    { class: "notes" },
    this.#timing,
    this.#look,
    this.#list,
    this.#none,
    this.#fine,
  );

  /** @param {Commands} ask */
  constructor(ask) {
    this.#ask = ask;
  }

  /** @param {State} state @param {FullPlay | undefined} play */
  update(state, play) {
    const { time, paused, notes, coverage, timing } = state;
    this.#timing.hidden = !timing;
    this.#fine.hidden = !notes && !coverage;
    this.#last = { state, play };
    const on = (/** @type {{ t: number }} */ { t }) => time >= t && time <= t + STANDS;
    const look = play && paused && coverage ? play.looks.find(on) : undefined;
    write(this.#look, look?.text ?? "");
    this.#look.hidden = !look;
    this.#list.hidden = !notes;
    const found = play && notes ? play.findings : [];
    this.#none.hidden = !notes || found.length > 0;
    const told = JSON.stringify(found);
    if (told === this.#told) return;
    this.#told = told;
    this.#list.replaceChildren(...found.map((finding) => this.#item(finding)));
    if (play && found.length > 0) this.#cure(play);
  }

  /** Lets cures be looked for in slices, so that nothing stutters; shows them once all are there. @param {FullPlay} play */
  async #cure(play) {
    if (this.#curing) return;
    this.#curing = true;
    for (let more = true; more;) {
      await new Promise((resolve) => setTimeout(resolve));
      if (this.#last?.play !== play || !this.node.isConnected) break;
      const start = performance.now();
      do more = play.cureOn();
      while (more && performance.now() - start < SLICE_MS);
    }
    this.#curing = false;
    if (this.#last) this.update(this.#last.state, this.#last.play);
  }

  /** @param {import("../load.js").Finding} finding */
  #item({ severity, letter, t, text, cure }) {
    const [word, shape] = FLAGS[severity] ?? ["", ""];
    const flag = glyph("0 0 18 18", shape, "flag");
    const mark = make(
      "span",
      { class: "mark" },
      flag,
      make("b", { "aria-hidden": "true" }, letter ?? ""),
    );
    const when = button({ class: "when" }, () => this.#ask.seek(t), `${t.toFixed(1)} s`);
    when.setAttribute("aria-label", `Show ${t.toFixed(1)} s`);
    const words = make("span", {}, make("strong", {}, `${word}: `), text);
    if (cure) words.append(" ", make("span", { class: "cure" }, cure));
    return make("li", {}, mark, words, when);
  }
}
