/** The list of keys, and the switch that turns those off that are typed by mistake. */

import { button, make } from "../build.js";
import { HANDLE_STEP, KEYS, MODE_KEYS, NO_CHARACTERS, acts, onKey } from "../keys.js";
import { ATTRIBUTE } from "../names.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { Asked, ModeAct } from "../keys.js" */
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

/** The same of the modes, with their names. @param {Say} say */
const doesIn = (say) =>
  /** @satisfies {{ [mode in keyof typeof MODE_KEYS]: { title: string, does: Record<ModeAct<mode>, string> } }} */ ({
    walk: {
      title: say.walkThrough,
      does: { goOn: say.goOn, goBack: say.toLastStop, leave: say.leaveWalk },
    },
    loop: {
      title: say.loop,
      does: {
        start: say.loopFrom,
        end: say.loopTo,
        earlier: say.handleEarlier({ by: HANDLE_STEP }),
        later: say.handleLater({ by: HANDLE_STEP }),
        earliest: say.handleEarliest,
        latest: say.handleLatest,
      },
    },
    quiz: {
      title: say.quiz,
      does: { press: say.pressOrAnswer, move: say.moveCross, stride: say.moveCrossFar },
    },
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
  Enter: say.enterKey,
  Escape: say.escapeKey,
  Shift: say.shiftKey,
});

/**
 * Keys that do the same; `Shift` and the key that is pressed with it are two of one entry.
 *
 * @typedef {{ caps: string[][], does: string }} Row
 */

/**
 * Which keys act in `host` and what they do, in the order of reading: the reader's, and those that
 * a mode has besides.
 *
 * @param {Element} host
 * @param {Say} say
 * @returns {{ title: string | undefined, rows: Row[] }[]}
 */
export function listed(host, say) {
  const told = does(say);
  const order = Object.keys(told);
  const own = Object.entries(KEYS).map(([key, [name, by = 0, inStrip]]) => {
    const [less = "", more = less] = told[name];
    const inStripOnly = by > 0 ? say.secondOnInStrip : say.secondBackInStrip;
    return {
      key,
      does: inStrip ? inStripOnly : by > 0 ? more : less,
      at: order.indexOf(name),
    };
  });
  own.sort((a, b) => a.at - b.at);
  const written = caps(say);
  const rows = (/** @type {readonly { key: string, does: string }[]} */ all) => {
    const out = /** @type {Map<string, string[][]>} */ (new Map());
    for (const { key, does } of all) {
      if (!acts(key, host)) continue;
      const cap = key.split("+").map((part) => written[part] ?? part.toUpperCase());
      out.set(does, [...(out.get(does) ?? []), cap]);
    }
    return [...out].map(([does, caps]) => ({ caps, does }));
  };
  const toldIn = /** @type {Record<string, { title: string, does: Record<string, string> }>} */ (
    doesIn(say)
  );
  const modes = Object.entries(MODE_KEYS).map(([mode, keys]) => {
    const { title, does = {} } = toldIn[mode] ?? {};
    const all = Object.entries(keys).map(([key, name]) => ({ key, does: does[name] ?? "" }));
    return { title, rows: rows(all) };
  });
  return [{ title: undefined, rows: rows(own) }, ...modes];
}

export class Keys {
  #host;
  #say;
  #list = make("div");
  #characters = make("input", { type: "checkbox" });
  node;
  /** Buttons that open it, in a wide and in a narrow reader. */
  wide;
  narrow;

  /** @param {BackcutSet} host @param {Commands} ask */
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
    const groups = listed(this.#host, this.#say).flatMap(({ title, rows }) => {
      const list = make("dl", {}, ...rows.map(shown));
      return title ? [make("h4", {}, title), list] : [list];
    });
    this.#list.replaceChildren(...groups);
  }
}

/** @param {Row} row */
function shown({ caps, does }) {
  const keys = caps.flatMap((cap) => cap.flatMap((part) => [" ", make("kbd", {}, part)]));
  return make("div", {}, make("dt", {}, ...keys), make("dd", {}, does));
}
