/**
 * The frame page, for sites that allow only frames: shows the set that the address names, or holds,
 * after the `#`, and tells the page around it how high it is. By itself it is where links open.
 *
 * `lang=es` in that address has it speak Spanish.
 *
 * The page asks, from its own origin, with `{ backcut: "size", room }`, where `room` is the height of
 * its window, and gets `{ backcut: "size", height }` now and whenever that changes. Only the window
 * around the frame is heard, and only its origin, as the browser tells it, is answered.
 */

import { ATTRIBUTE, TAG } from "./names.js";

/** Heights that a window may have, CSS pixels; what else is told is no height. */
const ROOM = { least: 200, most: 10_000 };

/** What names an address. @type {Set<string>} */
const OWN = new Set([ATTRIBUTE.src, ATTRIBUTE.poster, ATTRIBUTE.share]);

/** What lies on another site is not shown: the frame would speak with this site's name. */
function own(/** @type {string} */ address) {
  const url = URL.parse(address, location.href);
  return url?.origin === location.origin ? url.href : "";
}

/** What the page is in where its address does not say. */
const LANGUAGE = document.documentElement.lang;

const element = document.createElement(TAG);

function show() {
  const asked = new URLSearchParams(location.hash.slice(1));
  // What names no file is a link that holds the set itself, or should: no attributes, but a view.
  const link = asked.has("set") || !asked.has(ATTRIBUTE.src);
  for (const name of Object.values(ATTRIBUTE)) {
    const named = link ? null : asked.get(name);
    const value = named !== null && OWN.has(name) ? own(named) : named;
    if (value !== null) change(name, value);
    else if (!link || name !== ATTRIBUTE.src) element.removeAttribute(name);
  }
  if (link) change(ATTRIBUTE.src, location.hash || "#");
  // It is the page's here: nothing else is on it.
  document.documentElement.lang = asked.get("lang") || LANGUAGE;
}

/** To the same again is no change: it would load the set again. @param {string} name @param {string} value */
function change(name, value) {
  if (value !== element.getAttribute(name)) element.setAttribute(name, value);
}

let asker = /** @type {string | undefined} */ (undefined);

function tell() {
  if (!asker) return;
  const height = Math.ceil(element.getBoundingClientRect().height);
  parent.postMessage({ backcut: "size", height }, asker);
}

/** @param {MessageEvent} event */
function hear({ source, origin, data }) {
  // A page without an origin of its own cannot be told from others.
  if (source !== parent || parent === window || origin === "null") return;
  if (data?.backcut !== "size") return;
  asker = origin;
  const { room } = data;
  if (room >= ROOM.least && room <= ROOM.most) {
    element.style.setProperty("--backcut-room", `${Math.floor(room)}px`);
    dispatchEvent(new Event("resize"));
  }
  tell();
}

document.body.style.margin = "0";
show();
document.body.append(element);
addEventListener("hashchange", show);
addEventListener("message", hear);
new ResizeObserver(tell).observe(element);
