/**
 * An ordinary link in an article moves a set on its page: `#turnstile&beat=3` or
 * `#turnstile&t=4.2&follow=3&coverage=switch`, after the set's id. It pauses there. Without script
 * the browser looks for an element of just that id, which may be the beat in words.
 */

import { TAG } from "./names.js";

/** @import { BackcutSet } from "./element.js" */

let listening = false;

/** Follows such links, from now on and once a page. */
export function followLinks() {
  if (listening) return;
  listening = true;
  addEventListener("hashchange", follow);
  // The page may have been opened by such a link.
  follow();
}

async function follow() {
  const [id = "", ...rest] = location.hash.slice(1).split("&");
  const set = id && document.getElementById(decoded(id));
  if (!set || set.localName !== TAG || rest.length === 0) return;
  const element = /** @type {BackcutSet} */ (set);
  const view = new URLSearchParams(rest.join("&"));
  // Where it cannot be shown there is nothing to move.
  if (!(await element.ready.then(() => true).catch(() => false))) return;
  element.pause();
  for (const name of ["coverage", "follow"]) {
    const value = view.get(name);
    if (value !== null) element.setAttribute(name, value);
  }
  const beat = Number(view.get("beat"));
  if (beat >= 1) element.beat = beat;
  const time = parseFloat(view.get("t") ?? "");
  if (time >= 0) element.currentTime = time;
  element.scrollIntoView({ block: "nearest" });
}

/** @param {string} text */
function decoded(text) {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
