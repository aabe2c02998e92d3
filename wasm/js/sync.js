/**
 * Sets of one page with the same `sync` share one clock: what is done to one is done to all, so that
 * two defences, or two sets, can be watched side by side.
 */

import { ATTRIBUTE, FRAME, TAG } from "./names.js";

/** @import { BackcutSet } from "./element.js" */

/** What each event of one means for another. */
const FOLLOWS = /** @type {Record<string, (other: BackcutSet, one: BackcutSet) => void>} */ ({
  play: (other) => other.play().catch(() => {}),
  pause: (other) => other.pause(),
  ratechange: (other, one) => (other.playbackRate = one.playbackRate),
  seeked: (other, one) => bring(other, one, 0),
  // What is out of the window has no clock of its own.
  timeupdate: (other, one) => bring(other, one, FRAME),
});

/** Brings the other to the same instant, if it is further away. @param {BackcutSet} other @param {BackcutSet} one @param {number} away seconds */
function bring(other, one, away) {
  // The shorter of two stands at its end.
  const time = Math.min(one.currentTime, other.duration);
  if (Math.abs(other.currentTime - time) > away) other.currentTime = time;
}

let listening = false;

/** Keeps them together, from now on and once a page. */
export function keepTogether() {
  if (listening) return;
  listening = true;
  for (const [name, act] of Object.entries(FOLLOWS)) {
    // These events do not bubble, but the page may watch them on their way down.
    document.addEventListener(name, (event) => pass(event.target, act), true);
  }
}

/** @param {EventTarget | null} target @param {(other: BackcutSet, one: BackcutSet) => void} act */
function pass(target, act) {
  if (!(target instanceof Element) || target.localName !== TAG) return;
  const one = /** @type {BackcutSet} */ (target);
  const group = one.getAttribute(ATTRIBUTE.sync);
  if (!group) return;
  for (const other of /** @type {NodeListOf<BackcutSet>} */ (document.querySelectorAll(TAG))) {
    if (other !== one && other.getAttribute(ATTRIBUTE.sync) === group && other.readyState > 0) {
      act(other, one);
    }
  }
}
