/** A button for sharing the set. What it opens comes when it is first pressed. */

import { button, make } from "../build.js";
import { importSharing } from "../source.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */
/** @import { Sharing } from "./sharing.js" */

export class Share {
  #host;
  #ask;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  #state = /** @type {State | undefined} */ (undefined);
  #panel = /** @type {Sharing | undefined} */ (undefined);
  /** What opens it, in a wide and in a narrow reader. */
  wide;
  narrow;
  node;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, ask) {
    this.#host = host;
    this.#ask = ask;
    const { say } = ask;
    const share = say.share;
    this.wide = this.#opener(share, "cell word wide-only");
    this.narrow = this.#opener(share, "word narrow-only");
    this.node = make("div", { class: "sharing", role: "group", "aria-label": share, hidden: "" });
    this.node.addEventListener("keydown", ({ key }) => {
      if (key === "Escape") this.#close();
    });
  }

  /** @param {string} word @param {string} looks */
  #opener(word, looks) {
    const toggle = () => this.#toggle();
    return button({ class: looks, "aria-expanded": "false" }, toggle, word);
  }

  /** @param {FullPlay | undefined} play another set, or none that can be shared */
  take(play) {
    this.#play = play;
    this.#panel?.take(play);
  }

  /** @param {State} state */
  instant(state) {
    this.#state = state;
    this.#panel?.instant(state);
  }

  async #toggle() {
    if (!this.node.hidden) return this.#close();
    this.#open(true);
    if (!this.#panel) {
      const [sharing] = await Promise.all([importSharing().catch(() => {}), this.#ask.goFull()]);
      if (sharing) {
        this.#ask.learn(sharing.words);
        this.#panel ??= new sharing.Sharing(this.#host, this.#ask);
      }
    } else await this.#ask.goFull();
    if (!this.#panel || !this.#play) {
      return this.node.replaceChildren(make("p", { role: "alert" }, this.#ask.say.sharingFailed));
    }
    this.node.replaceChildren(this.#panel.node);
    this.#panel.take(this.#play);
    if (this.#state) this.#panel.instant(this.#state);
  }

  #close() {
    this.#open(false);
    // One of them is seen, and takes it.
    for (const opener of [this.wide, this.narrow]) opener.focus();
  }

  /** @param {boolean} open */
  #open(open) {
    this.node.hidden = !open;
    for (const opener of [this.wide, this.narrow]) {
      opener.setAttribute("aria-expanded", String(open));
    }
  }
}
