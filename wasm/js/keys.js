/** What each key asks for; they act only while the focus is inside the element. */

/** @import { Commands } from "./reader.js" */

const SECOND = 1;

/** @type {Record<string, (ask: Commands) => void>} */
const KEYS = {
  " ": (ask) => ask.toggle(),
  ArrowLeft: (ask) => ask.move(-SECOND),
  ArrowRight: (ask) => ask.move(SECOND),
  ",": (ask) => ask.frame(-1),
  ".": (ask) => ask.frame(1),
  PageUp: (ask) => ask.beat(1),
  PageDown: (ask) => ask.beat(-1),
  Home: (ask) => ask.seek(0),
  End: (ask) => ask.seek(Infinity),
  f: (ask) => ask.fullScreen(),
  0: (ask) => ask.follow(0),
  1: (ask) => ask.follow(1 << 0),
  2: (ask) => ask.follow(1 << 1),
  3: (ask) => ask.follow(1 << 2),
  4: (ask) => ask.follow(1 << 3),
  5: (ask) => ask.follow(1 << 4),
};

/** Keys that a focused button, link or list has its own use for. */
const OWN = /** @type {Record<string, string>} */ ({
  BUTTON: " ",
  A: "",
  SELECT: " ArrowLeft ArrowRight PageUp PageDown Home End 0 1 2 3 4 5 f",
});

/** Does what the key asks for. @param {KeyboardEvent} event @param {Commands} ask */
export function onKey(event, ask) {
  if (event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey) return;
  const target = event.composedPath()[0];
  if (!(target instanceof HTMLElement) || isTypedInto(target)) return;
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  const act = Object.hasOwn(KEYS, key) ? KEYS[key] : undefined;
  if (!act || OWN[target.tagName]?.includes(key)) return;
  event.preventDefault();
  act(ask);
}

/** @param {HTMLElement} element */
function isTypedInto(element) {
  return element.isContentEditable || element.matches("input, textarea");
}
