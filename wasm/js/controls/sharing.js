/** What there is to share: a link, a tag, a frame, a picture of the link, the file. */

import { button, make, write } from "../build.js";
import { MOST_IN_PICTURE, address, frame, link, opener, page, tag, text } from "../copies.js";
import { picture } from "../qr.js";

/** @import { OnPage } from "../copies.js" */
/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */

/** @typedef {"link" | "frame" | "tag" | "file"} Copied */
/** @typedef {(set: OnPage) => string | Promise<string>} Maker */

export class Sharing {
  #host;
  #say;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  #state = /** @type {State | undefined} */ (undefined);
  #moment;
  #system;
  /** What needs a page that opens links. */
  #linked;
  #status = make("p", { class: "fine", role: "status" });
  /** What could not be copied, to be copied by hand. */
  #field;
  #drawn = make("div", { class: "qr", hidden: "" });
  #file;
  /** For a set that lies in no file. */
  #text;
  node;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, { say }) {
    this.#host = host;
    this.#say = say;
    const way = (/** @type {string} */ word, /** @type {() => void} */ act) =>
      button({ class: "word" }, act, word);
    const copy = (
      /** @type {string} */ word,
      /** @type {Copied} */ what,
      /** @type {Maker} */ made,
    ) => way(word, () => this.#copy(what, made));
    this.#field = make("textarea", {
      ...{ readonly: "", rows: "3", "aria-label": say.toCopy, hidden: "" },
    });
    this.#file = make("a", { class: "word", download: "" }, say.download);
    this.#system = way(say.send, () => this.#send());
    this.#moment = copy("", "link", (set) => link(set, true));
    this.#linked = [
      copy(say.copyLink, "link", link),
      this.#moment,
      copy(say.copyFrame, "frame", (set) => frame(set, say)),
      way(say.qrCode, () => this.#draw()),
    ];
    this.#text = copy(say.copyFile, "file", text);
    const ways = [
      ...[this.#system, ...this.#linked, copy(say.copyTag, "tag", tag)],
      ...[this.#file, this.#text],
    ];
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
    write(this.#moment, this.#say.copyLinkAt({ time: state.time }));
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

  /** @param {Copied} what @param {Maker} make */
  async #copy(what, make) {
    this.#clear();
    const set = this.#set;
    if (!set) return;
    const text = await this.#made(() => make(set));
    if (text === undefined) return;
    const done = await navigator.clipboard?.writeText(text).then(
      () => true,
      () => false,
    );
    if (done) return write(this.#status, this.#say.copied({ what }));
    write(this.#status, this.#say.copyByHand({ what }));
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
    const say = this.#say;
    if (!text) return write(this.#status, say.tooLongForQr);
    this.#drawn.replaceChildren(picture(text, short ? say.qrOfSet : say.qrOfPage));
    this.#drawn.hidden = false;
    write(this.#status, short ? say.opensSet : say.opensPage);
  }

  /** What can be made of the set; a set too large for a link says so. @param {() => string | Promise<string>} make */
  async #made(make) {
    try {
      return await make();
    } catch {
      write(this.#status, this.#say.tooLongForLink);
      return undefined;
    }
  }
}
