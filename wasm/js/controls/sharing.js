/** What there is to share: a link, a tag, a frame, a picture of the link, the file. */

import { button, make, write } from "../build.js";
import { MOST_IN_PICTURE, address, frame, link, opener, page, tag, text } from "../copies.js";
import { picture } from "../qr.js";

/** @import { OnPage } from "../copies.js" */
/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay } from "../load.js" */
/** @import { State } from "../reader.js" */

export class Sharing {
  #host;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  #state = /** @type {State | undefined} */ (undefined);
  #moment;
  #system;
  /** What needs a page that opens links. */
  #linked;
  #status = make("p", { class: "fine", role: "status" });
  /** What could not be copied, to be copied by hand. */
  #field = make("textarea", { readonly: "", rows: "3", "aria-label": "To copy", hidden: "" });
  #drawn = make("div", { class: "qr", hidden: "" });
  #file = make("a", { class: "word", download: "" }, "Download set");
  /** For a set that lies in no file. */
  #text;
  node;

  /** @param {BackcutSet} host */
  constructor(host) {
    this.#host = host;
    const way = (/** @type {string} */ word, /** @type {() => void} */ act) =>
      button({ class: "word" }, act, word);
    const copy = (
      /** @type {string} */ word,
      /** @type {(set: OnPage) => string | Promise<string>} */ make,
    ) => way(`Copy ${word}`, () => this.#copy(word, make));
    this.#system = way("Send", () => this.#send());
    this.#moment = way("", () => this.#copy("link", (set) => link(set, true)));
    this.#linked = [
      copy("link", link),
      this.#moment,
      copy("frame", frame),
      way("QR code", () => this.#draw()),
    ];
    this.#text = copy("set file", text);
    const ways = [this.#system, ...this.#linked, copy("tag", tag), this.#file, this.#text];
    this.node = make(
      "div",
      {},
      make("div", { class: "ways" }, ...ways),
      this.#status,
      this.#field,
      this.#drawn,
    );
  }

  /** @param {FullPlay | undefined} play another set, or none */
  take(play) {
    this.#play = play;
    const linked = opener(this.#host) !== undefined;
    for (const way of this.#linked) way.hidden = !linked;
    this.#system.hidden = !linked || !("share" in navigator);
    const file = address(this.#host);
    this.#file.hidden = !file;
    this.#text.hidden = !!file;
    if (file) this.#file.href = file;
    this.#clear();
  }

  /** @param {State} state */
  instant(state) {
    this.#state = state;
    write(this.#moment, `Copy link at ${state.time.toFixed(1)} s`);
  }

  #clear() {
    write(this.#status, "");
    this.#field.hidden = true;
    this.#drawn.hidden = true;
  }

  /** @returns {OnPage | undefined} */
  get #set() {
    const [host, play, state] = [this.#host, this.#play, this.#state];
    const panel = this.node.parentElement?.offsetHeight ?? 0;
    return play && state && { host, play, state, panel };
  }

  /** @param {string} word @param {(set: OnPage) => string | Promise<string>} make */
  async #copy(word, make) {
    this.#clear();
    const set = this.#set;
    if (!set) return;
    const text = await this.#made(() => make(set));
    if (text === undefined) return;
    const done = await navigator.clipboard?.writeText(text).then(
      () => true,
      () => false,
    );
    if (done) return write(this.#status, `The ${word} is copied.`);
    write(this.#status, `The browser lets nothing be copied here. Copy the ${word} by hand:`);
    this.#field.hidden = false;
    this.#field.value = text;
    this.#field.select();
  }

  /** The system's own sheet; who closes it has changed their mind. */
  async #send() {
    this.#clear();
    const set = this.#set;
    if (!set) return;
    const url = await this.#made(() => link(set));
    if (url) await navigator.share({ title: set.play.title, url }).catch(() => {});
  }

  async #draw() {
    this.#clear();
    const set = this.#set;
    if (!set) return;
    const whole = await this.#made(() => link(set));
    if (whole === undefined) return;
    const short = whole.length <= MOST_IN_PICTURE;
    const text = short ? whole : page(this.#host);
    if (!text) return write(this.#status, "The set is too long for a QR code.");
    const opens = short ? "the set" : "this page";
    this.#drawn.replaceChildren(picture(text, `QR code that opens ${opens}`));
    this.#drawn.hidden = false;
    const why = short ? "" : ": the set itself is too long for a phone to read";
    write(this.#status, `Opens ${opens}${why}.`);
  }

  /** What can be made of the set; a set too large for a link says so. @param {() => string | Promise<string>} make */
  async #made(make) {
    try {
      return await make();
    } catch {
      write(this.#status, "The set is too long for a link. Share its file.");
      return undefined;
    }
  }
}
