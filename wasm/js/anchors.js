/**
 * An ordinary link in an article moves a set on its page: `#turnstile&beat=3` or
 * `#turnstile&t=4.2&follow=3&coverage=switch`, after the set's id. It pauses there, or plays what
 * `t=4.2,6` names. Without script the browser looks for an element of just that id, which may be the
 * beat in words.
 */

import { TAG } from "./names.js";
import { show, shownBy } from "./shown.js";

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
  const [id = "", ...words] = location.hash.slice(1).split("&");
  const set = id && document.getElementById(decoded(id));
  if (!set || set.localName !== TAG || words.length === 0) return;
  const element = /** @type {BackcutSet} */ (set);
  // Where it cannot be shown there is nothing to move.
  if (!(await element.ready.then(() => true).catch(() => false))) return;
  element.pause();
  show(element, shownBy(words.join("&")));
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
