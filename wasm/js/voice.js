/** In which language and units an element speaks. */

import { isInSpanish, languageAround } from "./around.js";

/** @import { Say } from "../pkg/words/say.js" */
/** @import { BackcutSet } from "./element.js" */
/** @import { Commands } from "./reader.js" */

/**
 * Has an element speak as the page around it does, if it does not yet. Sentences about the set are
 * with the full module; it is asked for them where they are not in English, or in other units than
 * the court's.
 *
 * @param {BackcutSet} element
 * @param {Commands} ask
 * @param {(tag: string) => Say | Promise<Say>} spanish
 */
export async function speak(element, ask, spanish) {
  const around = languageAround(element);
  const heard = `${around} ${element.units}`;
  if (heard === ask.heard) return;
  const first = ask.heard === undefined;
  ask.heard = heard;
  const tag = isInSpanish(element) ? around : "";
  ask.voice = `${tag} ${element.units}`.trim();
  // So it speaks already.
  if (first && !ask.voice) return;
  const say = tag ? await spanish(tag) : ask.english;
  if (heard !== ask.heard) return;
  ask.revoice(say);
  if (ask.voice) ask.goFull();
}
