/**
 * What a page needs once, however many sets stand on it: one animation frame loop, one observer of
 * what is seen, one of sizes. While nothing plays, no frame is asked for.
 */

import { LONGEST_STEP } from "./names.js";

/** How near to the window a set is drawn already, so that it is there when it scrolls in. */
const NEAR = "50% 0px";
/** From this share on, a set is seen well enough to start by itself. */
const HALF = 0.5;

/** @typedef {(seconds: number) => void} Tick */
/**
 * @typedef {object} Watcher
 * @property {(near: boolean) => void} onNear it comes near to the window, or leaves
 * @property {(any: boolean, half: boolean) => void} onSeen how much of it is in the window
 * @property {() => void} onSize its size or place in the page changed
 */

const running = /** @type {Set<Tick>} */ (new Set());
let request = 0;
let last = 0;

/** Calls `tick` on each animation frame until it is told to stop. @param {Tick} tick */
export function run(tick) {
  if (running.size === 0) last = 0;
  running.add(tick);
  request ||= requestAnimationFrame(frame);
}

/** @param {Tick} tick */
export function stop(tick) {
  running.delete(tick);
  if (running.size > 0 || request === 0) return;
  cancelAnimationFrame(request);
  request = 0;
}

/** @param {number} now milliseconds */
function frame(now) {
  request = 0;
  const seconds = last === 0 ? 0 : Math.min((now - last) / 1000, LONGEST_STEP);
  last = now;
  for (const tick of running) tick(seconds);
  if (running.size > 0) request ||= requestAnimationFrame(frame);
}

const watchers = /** @type {WeakMap<Element, Watcher>} */ (new WeakMap());
let observers = /** @type {{ observe(e: Element): void, unobserve(e: Element): void }[]} */ ([]);

/** Watches where an element is and how large. @param {Element} element @param {Watcher} watcher */
export function watch(element, watcher) {
  if (observers.length === 0) observers = [near(), seen(), sizes()];
  watchers.set(element, watcher);
  for (const observer of observers) observer.observe(element);
}

/** @param {Element} element */
export function unwatch(element) {
  for (const observer of observers) observer.unobserve(element);
  watchers.delete(element);
}

function near() {
  return new IntersectionObserver(
    (entries) => {
      for (const entry of entries) watchers.get(entry.target)?.onNear(entry.isIntersecting);
    },
    { rootMargin: NEAR },
  );
}

function seen() {
  return new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting, intersectionRatio } of entries) {
        watchers.get(target)?.onSeen(isIntersecting, intersectionRatio >= HALF);
      }
    },
    { threshold: [0, HALF] },
  );
}

function sizes() {
  return new ResizeObserver((entries) => {
    for (const { target } of entries) watchers.get(target)?.onSize();
  });
}
