/** What a link asks to be shown of a set, by the words that stand behind it. */

import { ATTRIBUTE, EVENT } from "./names.js";

/** @import { BackcutSet } from "./element.js" */

/**
 * Seconds; a beat counted from 1; players as the attribute has them; a defence by name, empty for
 * none; times the real speed. What is not asked for is undefined.
 *
 * @typedef {object} Shown
 * @property {number | undefined} [from]
 * @property {number | undefined} [until]
 * @property {number | undefined} [beat]
 * @property {string | undefined} [follow]
 * @property {string | undefined} [read] counted from 1, then the one within it: `2.1`
 * @property {string | undefined} [coverage]
 * @property {number | undefined} [speed]
 * @property {boolean | undefined} [paused]
 */

/** The most that may be asked for, as in a link that holds a set: seconds, beats, times the real speed. */
const MOST = { time: 3600, beat: 65535, speed: 16 };

/** What `t=3.4,6&beat=2&follow=1,4&paused` and the like ask for; what means nothing is passed over. @param {string} words @returns {Shown} */
export function shownBy(words) {
  const asked = new URLSearchParams(words);
  const number = (/** @type {string | null | undefined} */ text, /** @type {number} */ most) => {
    const value = /^\d+(\.\d*)?$/.test(text ?? "") ? Number(text) : NaN;
    return value <= most ? value : undefined;
  };
  const [from, until] = (asked.get("t") ?? "")
    .replace(/^npt:/, "")
    .split(",")
    .map((text) => number(text, MOST.time));
  const backwards = until !== undefined && until <= (from ?? 0);
  return {
    from: backwards ? undefined : from,
    until: backwards ? undefined : until,
    beat: number(asked.get("beat"), MOST.beat) || undefined,
    read: /^[1-9]\d{0,4}(\.[1-9]\d{0,4}){0,31}$/.exec(asked.get("read") ?? "")?.[0],
    follow: asked.get("follow") ?? undefined,
    coverage: asked.get("coverage") ?? undefined,
    speed: number(asked.get("speed"), MOST.speed) || undefined,
    paused: asked.has("paused") && asked.get("paused") !== "false",
  };
}

/**
 * Shows that of `element`, now or once its set is there. A range is played and then stands at its
 * end, unless it is to be paused, or the reader wants nothing to move by itself.
 *
 * @param {BackcutSet} element
 * @param {Shown} shown
 */
export function show(element, { from, until, beat, read, follow, coverage, speed, paused }) {
  if (coverage !== undefined) element.setAttribute(ATTRIBUTE.coverage, coverage);
  const otherLine = read !== undefined && read !== element.read;
  if (read !== undefined) element.setAttribute(ATTRIBUTE.read, read);
  if (follow !== undefined) element.setAttribute(ATTRIBUTE.follow, follow);
  if (speed !== undefined) element.playbackRate = speed;
  if (paused) {
    element.autoplay = false;
    element.pause();
  }
  const place = () => {
    if (from !== undefined) element.currentTime = from;
    else if (beat !== undefined) element.beat = beat;
  };
  // A line that is not there yet has beats and a length of its own.
  if (otherLine && element.readyState) {
    element.addEventListener(EVENT.loadedmetadata, place, { once: true });
  } else if (from === undefined) element.ready.then(place).catch(() => {});
  if (from !== undefined) element.currentTime = from;
  leaveRange(element);
  if (until === undefined || paused) return;
  if (from === undefined) element.currentTime = 0;
  keepTo(element, from ?? 0, until, element.loop);
  const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
  // Rejected where there is no set, which is said already.
  if (!still) element.play().catch(() => {});
}

/**
 * What ends the range that an element plays. Kept with the element: each published module that plays
 * one has this source for itself, and they need know of each other's.
 */
const RANGE = Symbol.for("backcut-range");

/** @typedef {BackcutSet & { [RANGE]?: AbortController }} Ranged */

/** Lets it play on beyond its range. @param {Ranged} element */
export function leaveRange(element) {
  element[RANGE]?.abort();
}

/**
 * Has it stand at `until` when it gets there, once; or, as long as it plays, never leave the range.
 *
 * @param {Ranged} element
 * @param {number} from seconds
 * @param {number} until seconds
 * @param {boolean} again
 */
export function keepTo(element, from, until, again) {
  leaveRange(element);
  const range = new AbortController();
  element[RANGE] = range;
  let asked = 0;
  const watch = () => {
    if (range.signal.aborted || element.paused) return;
    // One that waits since it was paused would go on too.
    element.cancelVideoFrameCallback(asked);
    const { currentTime, duration } = element;
    if (!again && currentTime >= until) {
      range.abort();
      element.pause();
      element.currentTime = until;
      return;
    }
    // Before it is, too, what the page has start again at its end.
    const before = currentTime < from && from < duration;
    if (again && (currentTime >= until || before)) element.currentTime = from;
    asked = element.requestVideoFrameCallback(watch);
  };
  element.addEventListener("play", watch, range);
  if (again) {
    // A range that ends with the set.
    const anew = () => {
      element.currentTime = from;
      element.play().catch(() => {});
    };
    element.addEventListener("ended", anew, range);
  }
  watch();
}
