/** The words of the interface, in the language of the page around an element. */

import { first } from "../pkg/words/first.js";

/** @import { Say, Words } from "../pkg/words/say.js" */

/** English, as far as it is there: each module brings its own. */
export const english = /** @type {Say} */ ({});

/** Takes the English of a module. @param {Words} words */
export function learn(words) {
  const number = (/** @type {number} */ value, /** @type {number} */ digits) =>
    value.toFixed(digits);
  const plural = (/** @type {number} */ value, /** @type {number} */ digits) =>
    new Intl.PluralRules("en", { minimumFractionDigits: digits }).select(value);
  Object.assign(english, words(number, plural));
}

learn(first);
