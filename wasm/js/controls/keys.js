/** The list of keys, and the switch that turns those off that are typed by mistake. */

import { button, make } from "../build.js";
import { KEYS, NO_CHARACTERS, acts, onKey } from "../keys.js";
import { ATTRIBUTE } from "../names.js";

/** @import { Asked } from "../keys.js" */
/** @import { Commands } from "../reader.js" */
/** @import { Say } from "../../pkg/words/say.js" */

/** What each command does, given nothing or less, and given more; listed in this order. @param {Say} say */
const does = (say) =>
  /** @satisfies {Record<Asked[0], readonly string[]>} */ ({
    toggle: [say.playOrPause],
    move: [say.secondBack, say.secondOn],
    frame: [say.frameBack, say.frameOn],
    beat: [say.beatBack, say.nextBeat],
    seek: [say.toStart, say.toEnd],
    pace: [say.slower, say.faster],
    follow: [say.followEverybody, say.followAgain],
    captions: [say.captions],
    fullScreen: [say.fullScreen],
    help: [say.thisList],
  });

/** What is written on a key. @param {Say} say @returns {Record<string, string>} */
const caps = (say) => ({
  " ": say.spaceKey,
  ArrowLeft: say.leftKey,
  ArrowRight: say.rightKey,
  ArrowUp: say.upKey,
  ArrowDown: say.downKey,
  PageUp: say.pageUpKey,
  PageDown: say.pageDownKey,
  Home: say.homeKey,
  End: say.endKey,
});

/**
 * Which keys act in `host` and what they do, in the order of reading.
 *
 * @param {Element} host
 * @param {Say} say
 * @returns {{ caps: string[], does: string }[]}
 */
export function listed(host, say) {
  const told = does(say);
  const order = Object.keys(told);
  const written = caps(say);
  const rows = Object.entries(KEYS)
    .filter(([key]) => acts(key, host))
    .map(([key, [name, by = 0, inStrip]]) => {
      const [less = "", more = less] = told[name];
      const inStripOnly = by > 0 ? say.secondOnInStrip : say.secondBackInStrip;
      return {
        cap: written[key] ?? key.toUpperCase(),
        does: inStrip ? inStripOnly : by > 0 ? more : less,
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
  #say;
  #list = make("dl", {});
  #characters = make("input", { type: "checkbox" });
  node;
  /** Buttons that open it, in a wide and in a narrow reader. */
  wide;
  narrow;

  /** @param {Element} host @param {Commands} ask */
  constructor(host, ask) {
    const { say } = ask;
    this.#host = host;
    this.#say = say;
    const close = button({ class: "word" }, () => this.node.close(), say.close);
    const title = make("h3", { id: "keys" }, say.keys);
    this.node = make(
      "dialog",
      { class: "keys", "aria-labelledby": "keys" },
      make("div", { class: "line" }, title, close),
      make("p", {}, say.keysAct),
      this.#list,
      make("label", {}, this.#characters, say.charactersAct),
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
      button({ class: looks, "aria-haspopup": "dialog" }, () => this.open(), say.keys);
    this.wide = opener("cell word wide-only");
    this.narrow = opener("word narrow-only");
    ask.help = () => this.open();
    ask.key = (event) => onKey(event, ask, host);
    for (const [event, target] of ask.pressed.splice(0)) onKey(event, ask, host, target);
  }

  /** Opens it; once closed, the focus is where it was. */
  open() {
    this.#show();
    this.node.showModal();
  }

  #show() {
    this.#characters.checked = this.#host.getAttribute(ATTRIBUTE.keys) !== NO_CHARACTERS;
    const rows = listed(this.#host, this.#say).map(({ caps, does }) => {
      const keys = caps.flatMap((cap) => [" ", make("kbd", {}, cap)]);
      return make("div", {}, make("dt", {}, ...keys), make("dd", {}, does));
    });
    this.#list.replaceChildren(...rows);
  }
}
