/** What each key asks for; they act only while the focus is inside the element. */

import { ATTRIBUTE } from "./names.js";

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

/** What has its own use for keys: what is typed into, lists, media, what scrolls sideways. */
const KEEPS = "input,textarea,select,audio,video,[role=region]";

/** Without letters, digits and marks; WCAG 2.2, 2.1.4 asks for a way to turn them off. */
export const NO_CHARACTERS = "no-characters";

/** Whether a key acts in `host`. @param {string} key @param {Element} host */
export function acts(key, host) {
  const named = key.length > 1 || key === " ";
  return Object.hasOwn(KEYS, key) && (named || host.getAttribute(ATTRIBUTE.keys) !== NO_CHARACTERS);
}

/** Does what the key asks for. @param {Event} event @param {Commands} ask @param {Element} host @param {EventTarget} [target] where it was pressed, if that is over */
export function onKey(event, ask, host, target = event.composedPath()[0]) {
  if (!(event instanceof KeyboardEvent) || event.defaultPrevented) return;
  if (event.altKey || event.ctrlKey || event.metaKey) return;
  if (!(target instanceof HTMLElement) || target.isContentEditable || target.matches(KEEPS)) return;
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  if (!acts(key, host) || (key === " " && target.matches("button,summary"))) return;
  const [name, by = 0, inStrip] = KEYS[key] ?? ["help"];
  if (inStrip && !target.matches("[role=slider]")) return;
  event.preventDefault();
  /** @type {(by: number) => void} */ (ask[name])(by);
}
