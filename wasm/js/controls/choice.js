/** A choice as a list that unrolls, where there is no room for its words side by side. */

import { glyph, make } from "../build.js";

/**
 * @param {string} label
 * @param {readonly { value: string, word: string }[]} options
 * @param {(value: string) => void} choose
 * @param {string} [width] of the reader it is for, as the style names it
 */
export function choice(label, options, choose, width = "narrow-only") {
  const select = make(
    "select",
    { "aria-label": label },
    ...options.map(({ value, word }) => make("option", { value }, word)),
  );
  select.addEventListener("change", () => choose(select.value));
  const node = make(
    "div",
    { class: `cell choice ${width}` },
    select,
    glyph("0 0 14 8", "M1 1 L7 7 L13 1", "chevron"),
  );
  return { node, select };
}
