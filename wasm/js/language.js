/** What becomes of the language and the units around a set while it stands on the page. */

import { isInSpanish, languageAround } from "./around.js";
import { ATTRIBUTE } from "./names.js";
import { importSpanish } from "./source.js";
import { speak } from "./voice.js";

/** @import { BackcutSet } from "./element.js" */
/** @import { OpenSet } from "./load.js" */
/** @import { Commands } from "./reader.js" */

const followed = /** @type {WeakSet<AbortSignal>} */ (new WeakSet());

/** Has `element` speak as its page does, now and after each change, until `signal` ends it. @param {BackcutSet} element @param {Commands} ask @param {AbortSignal} signal */
export function followLanguage(element, ask, signal) {
  if (signal.aborted || followed.has(signal)) return;
  followed.add(signal);
  const spanish = (/** @type {string} */ tag) =>
    importSpanish().then(
      (module) => module.spanish(tag),
      () => ask.english,
    );
  ask.hear = () => speak(element, ask, spanish);
  const observer = new MutationObserver(ask.hear);
  observer.observe(element, { attributeFilter: [ATTRIBUTE.units] });
  for (let node = /** @type {Element | undefined} */ (element); node;) {
    const root = node.getRootNode();
    observer.observe(root, { subtree: true, attributeFilter: ["lang"] });
    node = root instanceof ShadowRoot ? root.host : undefined;
  }
  signal.addEventListener("abort", () => observer.disconnect());
  ask.hear();
}

/**
 * Tells assistive technology which words are in which language, where that is not one language for
 * all: an author's are in the page's, and ours in English.
 *
 * @param {BackcutSet} element
 * @param {OpenSet} play
 */
export function tellLanguages(element, play) {
  const around = languageAround(element);
  const reader = element.shadowRoot?.querySelector(".reader");
  if (!reader || isInSpanish(element) || /^en(-|$)/i.test(around)) return;
  reader.setAttribute("lang", "en");
  for (const title of reader.querySelectorAll("h2, .beat h3")) title.setAttribute("lang", around);
  reader.querySelectorAll(".captions p").forEach((caption, beat) => {
    if (play.said(beat)) caption.setAttribute("lang", around);
  });
}
