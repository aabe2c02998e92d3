/** What each key asks for; they act only while the focus is inside the element. */

import { ATTRIBUTE, SPEEDS } from "./names.js";

/** @import { BackcutSet } from "./element.js" */
/** @import { Commands } from "./reader.js" */

/**
 * A command, what it is given, and whether it is asked for in the strip alone: elsewhere the key
 * scrolls the page.
 *
 * @typedef {[ask: "toggle" | "move" | "frame" | "beat" | "seek" | "pace" | "follow" | "captions" | "fullScreen" | "help", by?: number, inStrip?: boolean]} Asked
 */

/** Keys as media players have them; digits are players. @type {Readonly<Record<string, Asked>>} */
export const KEYS = {
  " ": ["toggle"],
  k: ["toggle"],
  ArrowLeft: ["move", -1],
  ArrowRight: ["move", 1],
  ArrowDown: ["move", -1, true],
  ArrowUp: ["move", 1, true],
  ",": ["frame", -1],
  ".": ["frame", 1],
  PageDown: ["beat", -1],
  PageUp: ["beat", 1],
  Home: ["seek", 0],
  End: ["seek", Infinity],
  "<": ["pace", -1],
  ">": ["pace", 1],
  0: ["follow", 0],
  1: ["follow", 1 << 0],
  2: ["follow", 1 << 1],
  3: ["follow", 1 << 2],
  4: ["follow", 1 << 3],
  5: ["follow", 1 << 4],
  c: ["captions"],
  f: ["fullScreen"],
  "?": ["help"],
};

/**
 * What a mode does by which key, besides those above; in the quiz they have no part but full screen
 * and this list. `Shift+` stands before a key that is pressed with it.
 */
export const MODE_KEYS = /** @type {const} */ ({
  walk: { Enter: "goOn", "Shift+Enter": "goBack", Escape: "leave" },
  loop: {
    s: "start",
    e: "end",
    ArrowLeft: "earlier",
    ArrowDown: "earlier",
    ArrowRight: "later",
    ArrowUp: "later",
    Home: "earliest",
    End: "latest",
  },
  quiz: {
    " ": "press",
    Enter: "press",
    ArrowLeft: "move",
    ArrowRight: "move",
    ArrowUp: "move",
    ArrowDown: "move",
    "Shift+ArrowLeft": "stride",
    "Shift+ArrowRight": "stride",
    "Shift+ArrowUp": "stride",
    "Shift+ArrowDown": "stride",
  },
});

/**
 * What a mode's keys ask for.
 *
 * @template {keyof typeof MODE_KEYS} Mode
 * @typedef {(typeof MODE_KEYS)[Mode][keyof (typeof MODE_KEYS)[Mode]] & string} ModeAct
 */

/**
 * What a mode does by this key. A page may send keys of any name.
 *
 * @template {keyof typeof MODE_KEYS} Mode
 * @param {Mode} mode
 * @param {string | undefined} key
 * @returns {ModeAct<Mode> | undefined}
 */
export function actOf(mode, key = "") {
  const acts = /** @type {Readonly<Record<string, any>>} */ (MODE_KEYS[mode]);
  return Object.hasOwn(acts, key) ? acts[key] : undefined;
}

/** What is asked for by keys alone: seconds on or back, and the next faster or slower speed. @type {Partial<Record<Asked[0], (host: BackcutSet, by: number) => void>>} */
const BY_KEYS = {
  move: (host, by) => {
    if (host.readyState) host.currentTime += by;
  },
  pace: (host, by) => {
    const now = host.playbackRate;
    const next = by > 0 ? SPEEDS.find((rate) => rate > now) : SPEEDS.findLast((rate) => rate < now);
    host.playbackRate = next ?? now;
  },
};

/** What an arrow key moves an end of the loop by, seconds. */
export const HANDLE_STEP = 0.1;

/** Held down, these go on; what turns something on and off does so once. */
const REPEATS = ["move", "frame", "beat"];

/** What has its own use for keys: what is typed into, lists, media, what scrolls sideways. */
const KEEPS = "input,textarea,select,audio,video,[role=region]";

/** Without letters, digits and marks; WCAG 2.2, 2.1.4 asks for a way to turn them off. */
export const NO_CHARACTERS = "no-characters";

/** Whether a key of these tables acts in `host`. @param {string} key @param {Element} host */
export function acts(key, host) {
  const named = key.length > 1 || key === " ";
  return named || host.getAttribute(ATTRIBUTE.keys) !== NO_CHARACTERS;
}

/**
 * The key, by its name in these tables, if it was not meant for something else.
 *
 * @param {Event} event
 * @param {Element} host
 * @param {EventTarget} [target] where it was pressed, if that is over
 */
export function pressed(event, host, target = event.composedPath()[0]) {
  if (!(event instanceof KeyboardEvent) || event.defaultPrevented) return;
  if (event.altKey || event.ctrlKey || event.metaKey) return;
  if (!(target instanceof HTMLElement) || target.isContentEditable || target.matches(KEEPS)) return;
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  return acts(key, host) ? key : undefined;
}

/** Does what the key asks for. @param {Event} event @param {Commands} ask @param {BackcutSet} host @param {EventTarget} [target] where it was pressed, if that is over */
export function onKey(event, ask, host, target = event.composedPath()[0]) {
  const key = pressed(event, host, target) ?? "";
  if (!Object.hasOwn(KEYS, key) || !(target instanceof HTMLElement)) return;
  if (key === " " && target.matches("button,summary")) return;
  const [name, by = 0, inStrip] = KEYS[key] ?? ["help"];
  if (inStrip && !target.matches("[role=slider]")) return;
  event.preventDefault();
  if (/** @type {KeyboardEvent} */ (event).repeat && !REPEATS.includes(name)) return;
  const byKeys = BY_KEYS[name];
  if (byKeys) byKeys(host, by);
  else /** @type {(by: number) => void} */ (ask[/** @type {keyof Commands} */ (name)])(by);
}
