/** Buttons for the modes that teach a set. What they open comes when one is first pressed. */

import { button, make } from "../build.js";
import { paceOf } from "../slow.js";
import { importTeaching } from "../source.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay } from "../load.js" */
/** @import { Say } from "../../pkg/words/say.js" */
/** @import { Commands, State } from "../reader.js" */
/** @typedef {typeof import("../teaching.js")} Teaching */

/**
 * One way to teach a set. Its node stands below the controls while it is on.
 *
 * @typedef {object} Mode
 * @property {HTMLElement} node
 * @property {(play: FullPlay | undefined) => void} take another set or line, or none
 * @property {() => void} begin
 * @property {() => void} end
 * @property {(state: State) => void} update what the reader shows is another thing
 * @property {(state: State) => void} instant it is another time
 */

/**
 * The modes: what makes each, and whether it goes on beside others. One that is not there has no
 * button.
 *
 * @type {readonly { name: string, word: (say: Say) => string, beside: boolean, make: (teaching: Teaching, host: BackcutSet, ask: Commands, leave: () => void) => Mode }[]}
 */
const MODES = [
  {
    name: "walk",
    word: (say) => say.walkThrough,
    beside: false,
    make: (teaching, host, ask, leave) => new teaching.Walk(host, ask, leave),
  },
  {
    name: "loop",
    word: (say) => say.loop,
    beside: false,
    make: (teaching, host, ask) => new teaching.Loop(host, ask),
  },
  {
    name: "roles",
    word: (say) => say.roles,
    beside: true,
    make: ({ Roles }, host, ask) => new Roles(host, ask),
  },
  {
    name: "quiz",
    word: (say) => say.quiz,
    beside: false,
    make: (teaching, host, ask, leave) => new teaching.Quiz(host, ask, leave),
  },
  {
    name: "film",
    word: (say) => say.film,
    beside: false,
    make: ({ Film }, host, ask) => new Film(host, ask),
  },
];

export class Teach {
  #host;
  #ask;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  #state = /** @type {State | undefined} */ (undefined);
  /** By name, once it was asked for. @type {Map<string, Mode>} */
  #made = new Map();
  /** The names of those that are on. @type {Set<string>} */
  #on = new Set();
  /** By name: a cell in a wide reader, a word in a narrow one. @type {Map<string, HTMLButtonElement[]>} */
  #openers = new Map();
  /** Whether slow stretches are shown slowly, and the words that turn it on and off. */
  #slowly = true;
  #slow;
  #nothing = make("p", { role: "alert", hidden: "" });
  #row = make("div", { class: "row teach wide-only", role: "group" });
  #panels = make("div", { class: "teaching" }, this.#nothing);
  /** What it adds: a row of a wide reader, or words of a narrow one, and what those open. */
  nodes = { row: this.#row, words: /** @type {HTMLElement[]} */ ([]), panels: this.#panels };

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, ask) {
    this.#host = host;
    this.#ask = ask;
    const { say } = ask;
    this.#nothing.append(say.teachingFailed);
    this.#row.setAttribute("aria-label", say.teach);
    for (const { name, word } of MODES) {
      this.#openers.set(
        name,
        this.#words(word(say), () => this.#toggle(name)),
      );
    }
    this.#slow = this.#words(say.slowStretches, () => {
      this.#slowly = !this.#slowly;
      this.#pace();
    });
    this.#pace();
  }

  /** A word for a wide and one for a narrow reader. @param {string} word @param {() => void} act */
  #words(word, act) {
    const one = (/** @type {string} */ look) =>
      button({ class: look, "data-word": word, "aria-pressed": "false" }, act, word);
    const [cell, narrow] = [one("cell word wide-only"), one("word narrow-only")];
    this.#row.append(cell);
    this.nodes.words.push(narrow);
    return [cell, narrow];
  }

  /** @param {FullPlay | undefined} play another set or line, or none that can be taught */
  take(play) {
    if (play === this.#play) return;
    this.#play = play;
    this.#pace();
    for (const mode of this.#made.values()) mode.take(play);
  }

  /** Has it play as the set has it shown, where that is wanted. */
  #pace() {
    const slow = this.#play?.slow;
    for (const word of this.#slow) {
      word.hidden = !slow?.length;
      word.setAttribute("aria-pressed", String(this.#slowly));
    }
    this.#ask.stretch(paceOf(this.#slowly ? slow : undefined));
  }

  /** Ends what is on, for good. */
  end() {
    for (const name of this.#on) this.#end(name);
  }

  /** @param {State} state */
  update(state) {
    this.#state = state;
    for (const name of this.#on) this.#made.get(name)?.update(state);
  }

  /** @param {State} state */
  instant(state) {
    this.#state = state;
    for (const name of this.#on) this.#made.get(name)?.instant(state);
  }

  /** @param {string} name */
  async #toggle(name) {
    if (this.#on.has(name)) return this.#end(name);
    const kind = MODES.find((mode) => mode.name === name);
    if (!kind) return;
    if (!kind.beside) {
      for (const other of MODES)
        if (!other.beside && this.#on.has(other.name)) this.#end(other.name);
    }
    this.#press(name, true);
    const [teaching] = await Promise.all([importTeaching().catch(() => {}), this.#ask.goFull()]);
    this.#nothing.hidden = Boolean(teaching && this.#play);
    // Put away meanwhile, or put away and asked for again.
    if (!this.#on.has(name) || this.#made.get(name)?.node.hidden === false) return;
    if (!teaching || !this.#play) return this.#press(name, false);
    this.#ask.learn(teaching.words);
    const mode = this.#made.get(name) ?? this.#make(kind, teaching);
    mode.node.hidden = false;
    mode.begin();
    if (this.#state) mode.update(this.#state);
    this.#fold(mode);
  }

  /** On a phone all the words fold again, so that court and mode are seen together. @param {Mode} mode */
  #fold({ node }) {
    const root = this.#host.shadowRoot;
    /** @type {HTMLElement | null | undefined} */
    const more = root?.querySelector("[data-narrow][data-more] .more");
    if (!more) return;
    more.click();
    // What had the focus is hidden now.
    if (!root?.activeElement?.checkVisibility()) node.querySelector("button")?.focus();
  }

  /** @param {(typeof MODES)[number]} kind @param {Teaching} teaching */
  #make(kind, teaching) {
    const root = this.#host.shadowRoot;
    if (root) teaching.teachingStyles(root);
    const mode = kind.make(teaching, this.#host, this.#ask, () => this.#leave(kind.name));
    this.#made.set(kind.name, mode);
    this.#panels.append(mode.node);
    mode.take(this.#play);
    return mode;
  }

  /** @param {string} name */
  #end(name) {
    this.#press(name, false);
    const mode = this.#made.get(name);
    if (!mode || mode.node.hidden) return;
    mode.node.hidden = true;
    mode.end();
  }

  /** A mode ends by itself: whoever was in it goes on from its button. @param {string} name */
  #leave(name) {
    this.#end(name);
    const opener = this.#openers.get(name)?.find((seen) => seen.offsetParent);
    /** @type {HTMLElement | null | undefined} */
    const more = this.#host.shadowRoot?.querySelector(".more");
    // On a phone it is folded away.
    (opener ?? more)?.focus();
  }

  /** @param {string} name @param {boolean} on */
  #press(name, on) {
    if (on) this.#on.add(name);
    else this.#on.delete(name);
    for (const opener of this.#openers.get(name) ?? []) {
      opener.setAttribute("aria-pressed", String(on));
    }
  }
}
