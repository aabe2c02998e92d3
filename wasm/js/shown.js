/** What a link asks to be shown of a set, by the words that stand behind it. */

import { ATTRIBUTE } from "./names.js";

/** @import { BackcutSet } from "./element.js" */

/**
 * Seconds; a beat counted from 1; bit 0 for player 1; a defence by name, empty for none; times the
 * real speed. What is not asked for is undefined.
 *
 * @typedef {object} Shown
 * @property {number | undefined} [from]
 * @property {number | undefined} [until]
 * @property {number | undefined} [beat]
 * @property {number | undefined} [follow]
 * @property {string | undefined} [coverage]
 * @property {number | undefined} [speed]
 * @property {boolean | undefined} [paused]
 */

const PLAYERS = [1, 2, 3, 4, 5];
/** What may be asked for at most, as in a link that holds a set: seconds, and times the real speed. */
const [LAST, FASTEST] = [3600, 16];

/** What `t=3.4,6&beat=2&follow=1,4&paused` and the like ask for; what means nothing is passed over. @param {string} words @returns {Shown} */
export function shownBy(words) {
  const asked = new URLSearchParams(words);
  const number = (/** @type {string | null | undefined} */ text, least = 0, most = LAST) => {
    const value = parseFloat(text ?? "");
    return value >= least && value <= most ? value : undefined;
  };
  const [from, until] = (asked.get("t") ?? "").replace(/^npt:/, "").split(",");
  const follow = asked.get("follow");
  return {
    from: number(from),
    until: number(until),
    beat: number(asked.get("beat"), 1),
    follow: follow === null ? undefined : bits(follow),
    coverage: asked.get("coverage") ?? undefined,
    speed: number(asked.get("speed"), Number.MIN_VALUE, FASTEST),
    paused: asked.has("paused") && asked.get("paused") !== "false",
  };
}

/** @param {string} players */
function bits(players) {
  return PLAYERS.reduce(
    (mask, n) => (players.includes(String(n)) ? mask | (1 << (n - 1)) : mask),
    0,
  );
}

/**
 * Shows that of `element`, now or once its set is there. A range is played and then stands at its
 * end, unless it is to be paused, or the reader wants nothing to move by itself.
 *
 * @param {BackcutSet} element
 * @param {Shown} shown
 */
export function show(element, { from, until, beat, follow, coverage, speed, paused }) {
  if (coverage !== undefined) element.setAttribute(ATTRIBUTE.coverage, coverage);
  if (follow !== undefined) {
    const players = PLAYERS.filter((n) => follow & (1 << (n - 1)));
    element.setAttribute(ATTRIBUTE.follow, players.join(" "));
  }
  if (speed !== undefined) element.playbackRate = speed;
  if (paused) {
    element.autoplay = false;
    element.pause();
  }
  if (from !== undefined) element.currentTime = from;
  else if (beat !== undefined) element.ready.then(() => (element.beat = beat)).catch(() => {});
  ranges.get(element)?.abort();
  if (until === undefined || paused) return;
  if (from === undefined) element.currentTime = 0;
  stopAt(element, until);
  const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
  // Rejected where there is no set, which is said already.
  if (!still) element.play().catch(() => {});
}

/** What ends the range that an element plays. @type {WeakMap<BackcutSet, AbortController>} */
const ranges = new WeakMap();

/** Has it stand at `until` when it gets there, once. @param {BackcutSet} element @param {number} until */
function stopAt(element, until) {
  const range = new AbortController();
  ranges.set(element, range);
  const watch = () => {
    if (range.signal.aborted || element.paused) return;
    if (element.currentTime < until) return requestAnimationFrame(watch);
    range.abort();
    element.pause();
    element.currentTime = until;
  };
  element.addEventListener("play", watch, range);
}
