/**
 * How the set does against every defence that it can meet: rows defences, columns looks, cells
 * seconds open. Each row is a simulation of its own, made one at a time so that nothing stutters.
 */

import { button, make } from "../build.js";
import { ATTRIBUTE } from "../names.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { Answer, FullPlay, Look } from "../load.js" */
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
        if (!this.#table.tHead)
          this.#table.prepend(head(this.#ask.say, looks, play.reads.length > 0));
        row.append(...looks.map((look) => this.#cell(name, look)));
        if (play.reads.length > 0) row.append(this.#line(name, play.answer(name)));
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
    show.title = text;
    show.style.setProperty("--open", String(Math.min(1, seconds * SECOND)));
    if (lane !== undefined && lane < 0) {
      show.append(make("small", {}, ` ${say.hand}`));
      // Who speaks to it says what is seen.
      show.setAttribute("aria-label", `${show.textContent}: ${text}`);
    } else show.setAttribute("aria-label", say.openTold({ seconds, look: text }));
    return make("td", {}, show);
  }

  /** The line that answers a coverage. @param {string} coverage @param {Answer} answer */
  #line(coverage, { path, title, text }) {
    const show = button({}, () => this.#take(coverage, path), title);
    show.title = text;
    show.setAttribute("aria-label", `${title}. ${text}`);
    return make("td", {}, show);
  }

  /** Shows a line against a defence. @param {string} coverage @param {string} path */
  #take(coverage, path) {
    this.#host.coverage = coverage;
    if (path) this.#host.read = path;
    else this.#host.removeAttribute(ATTRIBUTE.read);
  }
}

/** @param {Say} say @param {readonly Look[]} looks @param {boolean} reads whether there are any */
function head(say, looks, reads) {
  const cells = looks.map(({ title, t }) =>
    make("th", { scope: "col" }, title, make("small", {}, say.seconds({ time: t }))),
  );
  if (reads) cells.push(make("th", { scope: "col" }, say.answeredBy));
  return make("thead", {}, make("tr", {}, make("td", {}), ...cells));
}
