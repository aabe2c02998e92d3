/** Spanish, for where it is spoken around an element; published as a module of its own. */

import { es } from "../pkg/words/es.js";

export { speak } from "./voice.js";

/** @import { Say } from "../pkg/words/say.js" */

const made = /** @type {Map<string, Say>} */ (new Map());

/** All words in Spanish; numbers as the country of `tag` writes them. @param {string} tag */
export function spanish(tag) {
  const say = made.get(tag) ?? es(...rules(tag));
  made.set(tag, say);
  return say;
}

/** @param {string} tag @returns {Parameters<typeof es>} */
function rules(tag) {
  const each = [0, 1, 2];
  const numbers = each.map(
    (digits) =>
      new Intl.NumberFormat(tag, { minimumFractionDigits: digits, maximumFractionDigits: digits }),
  );
  const plurals = each.map(
    (digits) => new Intl.PluralRules(tag, { minimumFractionDigits: digits }),
  );
  return [
    (value, digits) => numbers[digits]?.format(value) ?? String(value),
    (value, digits) => plurals[digits]?.select(value) ?? "other",
  ];
}
