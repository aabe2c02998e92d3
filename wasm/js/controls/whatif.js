/** A choice of the line that is shown: as drawn, by a read, or as the defence plays. */

import { button, make } from "../build.js";
import { ATTRIBUTE, DEFENDED } from "../names.js";
import { choice } from "./choice.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay, OpenSet } from "../load.js" */
/** @import { Commands } from "../reader.js" */
/** @import { Say } from "../../pkg/words/say.js" */

export class WhatIf {
  #host;
  #ask;
  #play = /** @type {OpenSet | undefined} */ (undefined);
  #full = /** @type {FullPlay | undefined} */ (undefined);
  #controls;
  /** What it adds, in the rows of a wide and of a narrow reader. */
  nodes;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, ask) {
    this.#host = host;
    this.#ask = ask;
    const { say } = ask;
    const control = (/** @type {string} */ width) => {
      const list = choice(say.whatIf, [], (value) => this.#choose(value), width);
      const open = async () => {
        await ask.goFull();
        if (!this.#full) return;
        opener.hidden = true;
        list.node.hidden = false;
        list.select.focus();
      };
      const opener = button({ class: `cell word ${width}` }, open, say.whatIf);
      return { opener, list };
    };
    this.#controls = [control("wide-only"), control("narrow-only")];
    const [wide, narrow] = this.#controls.map(({ opener, list }) => [opener, list.node]);
    this.nodes = { wide: wide ?? [], narrow: narrow ?? [] };
  }

  /** @param {OpenSet | undefined} play another set or line, or none */
  take(play) {
    if (play === this.#play) return;
    this.#play = play;
    this.#full = play && "reads" in play ? play : undefined;
    const options = offered(this.#ask.say, this.#full);
    const branches = this.#full ? this.#full.reads.length > 0 : play?.branches;
    for (const { opener, list } of this.#controls) {
      const focused = list.select.matches(":focus");
      list.select.replaceChildren(...options.map((option) => option.cloneNode(true)));
      const chosen = this.#full !== undefined && (this.#host.read !== "" || focused);
      opener.hidden = chosen || !branches;
      list.node.hidden = !chosen || !branches;
    }
    this.update();
  }

  update() {
    for (const { list } of this.#controls) list.select.value = this.#host.read;
  }

  /** @param {string} value */
  #choose(value) {
    // What the defence does is not seen without one.
    if (value === DEFENDED) this.#host.coverage ||= this.#full?.coverages[0] ?? "";
    // Five who are there play what the line is an answer to.
    const asked = this.#full?.reads.find(({ path }) => path === value)?.coverage;
    if (asked && this.#host.coverage) this.#host.coverage = asked;
    if (value) this.#host.read = value;
    else this.#host.removeAttribute(ATTRIBUTE.read);
  }
}

/** @param {Say} say @param {FullPlay | undefined} play */
function offered(say, play) {
  const option = (/** @type {string} */ value, /** @type {string} */ word) =>
    make("option", { value }, word);
  return [
    option("", say.asDrawn),
    ...(play?.reads ?? []).map(({ path, title }) => option(path, say.whatIfRead({ read: title }))),
    option(DEFENDED, say.asDefended),
  ];
}
