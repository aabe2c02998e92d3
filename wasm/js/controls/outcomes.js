/**
 * How the set does against every defence that it can meet: rows defences, columns looks, cells
 * seconds open. Each row is a simulation of its own, made one at a time so that nothing stutters.
 */

import { button, make } from "../build.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay, Look } from "../load.js" */
/** @import { Commands } from "../reader.js" */
/** @import { Say } from "../../pkg/words/say.js" */

/** Bar length of a second, as a share of a cell. */
const SECOND = 0.4;

export class Outcomes {
  #host;
  #ask;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  #table = make("table", {});
  #rows = /** @type {Map<string, HTMLTableRowElement>} */ (new Map());
  node;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, ask) {
    this.#host = host;
    this.#ask = ask;
    const { say } = ask;
    const region = { role: "region", tabindex: "0", "aria-label": say.openAgainstAll };
    this.node = make(
      "details",
      {},
      make("summary", {}, say.againstAll),
      make("div", { class: "wide", ...region }, this.#table),
      make("p", { class: "fine" }, say.classes),
    );
    this.node.addEventListener("toggle", () => this.#fill());
  }

  /** @param {FullPlay | undefined} play another set, or none */
  take(play) {
    this.#play = play;
    this.#rows.clear();
    this.#table.replaceChildren();
    this.#fill();
  }

  update() {
    this.node.hidden = this.#host.coverage === "";
    this.#mark();
  }

  /** Which row is on the floor. */
  #mark() {
    for (const [name, row] of this.#rows) {
      row.setAttribute("aria-current", String(name === this.#host.coverage));
    }
  }

  async #fill() {
    const play = this.#play;
    if (!play || !this.node.open || this.#rows.size > 0) return;
    const body = make("tbody", {});
    this.#table.replaceChildren(body);
    for (const name of play.coverages) {
      const row = make("tr", {}, make("th", { scope: "row" }, play.coverageTitle(name)));
      this.#rows.set(name, row);
      body.append(row);
    }
    this.#mark();
    for (const [name, row] of [...this.#rows]) {
      await new Promise((resolve) => setTimeout(resolve));
      if (play !== this.#play) return;
      this.#ask.attempt(() => {
        const looks = play.outcome(name);
        if (!this.#table.tHead) this.#table.prepend(head(this.#ask.say, looks));
        row.append(...looks.map((look) => this.#cell(name, look)));
      });
    }
  }

  /** Shows an instant against a defence. @param {string} coverage @param {number} t */
  #see(coverage, t) {
    this.#host.pause();
    this.#host.coverage = coverage;
    this.#host.currentTime = t;
  }

  /** @param {string} coverage @param {Look} look */
  #cell(coverage, look) {
    const { t, open, lane, text } = look;
    const { say } = this.#ask;
    const seconds = Math.max(0, open);
    const show = button({}, () => this.#see(coverage, t), say.open({ seconds }));
    show.setAttribute("aria-label", say.openTold({ seconds, look: text }));
    show.title = text;
    show.style.setProperty("--open", String(Math.min(1, seconds * SECOND)));
    if (lane !== undefined && lane < 0) show.append(make("small", {}, ` ${say.hand}`));
    return make("td", {}, show);
  }
}

/** @param {Say} say @param {readonly Look[]} looks */
function head(say, looks) {
  const cells = looks.map(({ title, t }) =>
    make("th", { scope: "col" }, title, make("small", {}, say.seconds({ time: t }))),
  );
  return make("thead", {}, make("tr", {}, make("td", {}), ...cells));
}
