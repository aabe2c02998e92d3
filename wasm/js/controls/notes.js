/** What was found, each with its flag, and the look that is on. */

import { button, glyph, make, write } from "../build.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { Finding, FullPlay } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */

/** So long cures are looked for at a stretch, milliseconds. */
const SLICE_MS = 4;
/** By severity: the flag's shape, as on the court. */
const FLAGS = {
  note: "M1 9 A8 8 0 1 1 17 9 A8 8 0 1 1 1 9 Z",
  warning: "M9 0 L18 16 L0 16 Z",
  violation: "M5.5 0.5 H12.5 L17.5 5.5 V12.5 L12.5 17.5 H5.5 L0.5 12.5 V5.5 Z",
};

export class Notes {
  #host;
  #ask;
  #look = make("p", { class: "look" });
  #timing;
  #list = make("ul", {});
  #none;
  #fine;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  /** The set whose cures are being looked for. */
  #curing = /** @type {FullPlay | undefined} */ (undefined);
  #found = 0;
  node;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, ask) {
    const { say } = ask;
    this.#host = host;
    this.#ask = ask;
    this.#timing = make("p", { class: "fine" }, say.timing);
    this.#none = make("p", {}, say.nothingFound);
    this.#fine = make("p", { class: "fine" }, say.likely);
    const parts = [this.#timing, this.#look, this.#list, this.#none, this.#fine];
    this.node = make("div", { class: "notes" }, ...parts);
  }

  /** @param {FullPlay | undefined} play what was found in it; nothing may be asked of the one before */
  take(play) {
    this.#play = play;
    const found = play?.findings ?? [];
    this.#show(found);
    if (play && this.#host.notes) this.#cure(play);
  }

  /** @param {State} state */
  update({ timing }) {
    const { coverage, notes } = this.#host;
    this.#timing.hidden = !timing;
    this.#fine.hidden = !notes && !coverage;
    this.#list.hidden = !notes;
    this.#tellNone();
  }

  /** Tells the look that is on, where it stands. @param {State} state */
  instant({ time, paused }) {
    const look = paused ? this.#play?.lookOn(time) : undefined;
    write(this.#look, look ?? "");
    this.#look.hidden = !look;
  }

  /** Says that nothing was found, where that is so. */
  #tellNone() {
    this.#none.hidden = !this.#host.notes || this.#found > 0;
  }

  /** @param {readonly Finding[]} found */
  #show(found) {
    this.#found = found.length;
    this.#list.replaceChildren(...found.map((finding) => this.#item(finding)));
  }

  /** Lets cures be looked for, and reads be tried, in slices, so that nothing stutters; shows them once all are there. @param {FullPlay} play */
  async #cure(play) {
    if (this.#curing === play) return;
    this.#curing = play;
    for (let more = true; more;) {
      await new Promise((resolve) => setTimeout(resolve));
      if (this.#play !== play) break;
      const start = performance.now();
      more = false;
      this.#ask.attempt(() => {
        do more = play.cureOn();
        while (more && performance.now() - start < SLICE_MS);
      });
    }
    if (this.#curing === play) this.#curing = undefined;
    if (this.#play !== play) return;
    const before = this.#found;
    this.#show(play.findings);
    // Reads have flags as well, and letters follow the time.
    if (this.#found !== before) this.#ask.layout();
    this.#tellNone();
  }

  /** @param {Finding} finding */
  #item({ severity, letter, t, text, cure }) {
    const { say } = this.#ask;
    const word = { note: say.note, warning: say.warning, violation: say.violation }[severity];
    const flag = glyph("0 0 18 18", FLAGS[severity], "flag");
    const mark = make(
      "span",
      { class: "mark" },
      flag,
      make("b", { "aria-hidden": "true" }, letter ?? ""),
    );
    const when = button({ class: "when" }, () => this.#ask.seek(t), say.seconds({ time: t }));
    when.setAttribute("aria-label", say.showInstant({ time: t }));
    const words = make("span", {}, make("strong", {}, word), " ", text);
    if (cure) words.append(" ", make("span", { class: "cure" }, cure));
    return make("li", {}, mark, words, when);
  }
}
