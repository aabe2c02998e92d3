/**
 * How the set does against every defence that it can meet: rows defences, columns looks, cells
 * seconds open. Each row is a simulation of its own, made one at a time so that nothing stutters.
 */

import { button, make } from "../build.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay, Look } from "../load.js" */
/** @import { Commands } from "../reader.js" */

/** Bar length of a second, as a share of a cell. */
const SECOND = 0.4;

export class Outcomes {
  #host;
  #ask;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  #table = make("table", {});
  #details = make(
    "details",
    {},
    make("summary", {}, "Against every defence: seconds open"),
    make(
      "div",
      {
        class: "wide",
        role: "region",
        tabindex: "0",
        "aria-label": "Seconds open against every defence",
      },
      this.#table,
    ),
    make(
      "p",
      { class: "fine" },
      "From the instant of each look until a defender can contest it. “Hand” stands where a hand can get to the pass. Tight to wide open: by distance, in the classes of the NBA’s public shot dashboards.",
    ),
  );
  #rows = /** @type {Map<string, HTMLTableRowElement>} */ (new Map());
  node = this.#details;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, ask) {
    this.#host = host;
    this.#ask = ask;
    this.#details.addEventListener("toggle", () => this.#fill());
  }

  /** @param {FullPlay | undefined} play another set, or none */
  take(play) {
    this.#play = play;
    this.#rows.clear();
    this.#table.replaceChildren();
    this.#fill();
  }

  update() {
    this.#details.hidden = this.#host.coverage === "";
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
    if (!play || !this.#details.open || this.#rows.size > 0) return;
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
        if (!this.#table.tHead) this.#table.prepend(head(looks));
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
    const seconds = Math.max(0, open);
    const show = button({}, () => this.#see(coverage, t), seconds.toFixed(1));
    show.setAttribute("aria-label", `${seconds.toFixed(1)} seconds: ${text}`);
    show.title = text;
    show.style.setProperty("--open", String(Math.min(1, seconds * SECOND)));
    if (lane !== undefined && lane < 0) show.append(make("small", {}, " hand"));
    return make("td", {}, show);
  }
}

/** @param {readonly Look[]} looks */
function head(looks) {
  const cells = looks.map(({ title, t }) =>
    make("th", { scope: "col" }, title, make("small", {}, `${t.toFixed(1)} s`)),
  );
  return make("thead", {}, make("tr", {}, make("td", {}), ...cells));
}
