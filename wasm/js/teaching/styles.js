/** The look of the modes that teach. */

import { sheetOf } from "../adopted.js";

const CSS = `
.teaching > div { padding-block: 10px; border-block-end: 1px solid var(--_rule); font-size: 15px; }
`;

let sheet = /** @type {CSSStyleSheet | undefined} */ (undefined);

/** Gives an element's tree this look as well. @param {ShadowRoot} root */
export function teachingStyles({ adoptedStyleSheets }) {
  sheet ??= sheetOf(CSS);
  if (!adoptedStyleSheets.includes(sheet)) adoptedStyleSheets.push(sheet);
}
