/** The list of keys, and the switch that turns those off that are typed by mistake. */

import { button, make } from "../build.js";
import { KEYS, NO_CHARACTERS, acts } from "../keys.js";
import { ATTRIBUTE } from "../names.js";

/** @import { Asked } from "../keys.js" */
/** @import { Commands } from "../reader.js" */

/** What each command does, given nothing or less, and given more; listed in this order. */
const DOES = /** @type {const} @satisfies {Record<Asked[0], readonly string[]>} */ ({
  toggle: ["Play or pause"],
  move: ["1 second back", "1 second on"],
  frame: ["1 frame back", "1 frame on"],
  beat: ["Beat back", "Next beat"],
  seek: ["To the start", "To the end"],
  pace: ["Slower", "Faster"],
  follow: ["Follow all", "Follow that player; again: all"],
  captions: ["Captions"],
  fullScreen: ["Full screen"],
  help: ["This list"],
});
/** What is written on a key. */
const CAPS = /** @type {Record<string, string>} */ ({
  " ": "Space",
  ArrowLeft: "Left",
  ArrowRight: "Right",
  ArrowUp: "Up",
  ArrowDown: "Down",
  PageUp: "Page Up",
  PageDown: "Page Down",
});

/**
 * Which keys act in `host` and what they do, in the order of reading.
 *
 * @param {Element} host
 * @returns {{ caps: string[], does: string }[]}
 */
export function listed(host) {
  const order = Object.keys(DOES);
  const rows = Object.entries(KEYS)
    .filter(([key]) => acts(key, host))
    .map(([key, [name, by = 0, inStrip]]) => {
      const [less = "", more = less] = DOES[name];
      const does = (by > 0 ? more : less) + (inStrip ? ", in the strip" : "");
      return {
        cap: CAPS[key] ?? (key.length > 1 ? key : key.toUpperCase()),
        does,
        at: order.indexOf(name),
      };
    })
    .sort((a, b) => a.at - b.at);
  const out = /** @type {Map<string, string[]>} */ (new Map());
  for (const { cap, does } of rows) out.set(does, [...(out.get(does) ?? []), cap]);
  return [...out].map(([does, caps]) => ({ caps, does }));
}

export class Keys {
  #host;
  #list = make("dl", {});
  #characters = make("input", { type: "checkbox" });
  node;
  /** Buttons that open it, in a wide and in a narrow reader. */
  wide;
  narrow;

  /** @param {Element} host @param {Commands} ask */
  constructor(host, ask) {
    this.#host = host;
    const close = button({ class: "word" }, () => this.node.close(), "Close");
    const title = make("h3", { id: "keys" }, "Keys");
    this.node = make(
      "dialog",
      { class: "keys", "aria-labelledby": "keys" },
      make("div", { class: "line" }, title, close),
      make("p", {}, "They act while the focus is in this set."),
      this.#list,
      make("label", {}, this.#characters, "Letters, digits and marks act too"),
    );
    // What is pressed in here is not meant for the set, nor for the page.
    this.node.addEventListener("keydown", (event) => {
      event.stopPropagation();
      if (event.key === "?") this.node.close();
    });
    this.#characters.addEventListener("change", () => {
      if (this.#characters.checked) host.removeAttribute(ATTRIBUTE.keys);
      else host.setAttribute(ATTRIBUTE.keys, NO_CHARACTERS);
      this.#show();
    });
    const opener = (/** @type {string} */ looks) =>
      button({ class: looks, "aria-haspopup": "dialog" }, () => this.open(), "Keys");
    this.wide = opener("cell word wide-only");
    this.narrow = opener("word narrow-only");
    ask.help = () => this.open();
  }

  /** Opens it; once closed, the focus is where it was. */
  open() {
    this.#show();
    this.node.showModal();
  }

  #show() {
    this.#characters.checked = this.#host.getAttribute(ATTRIBUTE.keys) !== NO_CHARACTERS;
    const rows = listed(this.#host).map(({ caps, does }) => {
      const keys = caps.flatMap((cap) => [" ", make("kbd", {}, cap)]);
      return make("div", {}, make("dt", {}, ...keys), make("dd", {}, does));
    });
    this.#list.replaceChildren(...rows);
  }
}
