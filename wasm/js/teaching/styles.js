/** The look of the modes that teach. */

import { sheetOf } from "../adopted.js";

const CSS = `
.teaching > div { padding-block: 10px; border-block-end: 1px solid var(--_rule); font-size: 15px; }

.roles .line { justify-content: space-between; }
.roles .cards { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 300px), 1fr)); gap: 4px 28px; align-items: start; }
.roles header { display: flex; align-items: baseline; justify-content: flex-start; gap: 8px; padding: 8px 0 2px; border-block-end: 2px solid var(--_ink); }
.roles b { font: 700 26px/1 var(--_sans); }
.roles h4 { margin: 0; font: 700 18px/1.2 var(--_serif); }
.roles :is(h4, .begin)::first-letter { text-transform: uppercase; }
.roles .begin { padding-block: 4px; color: var(--_soft); }
.roles ol { margin: 0; padding: 0; list-style: none; counter-reset: step; }
.roles li { counter-increment: step; position: relative; padding: 0 8px 8px 34px; border-block-start: 1px solid var(--_rule); font: 16px/1.35 var(--_serif); }
.roles li::before { content: counter(step) "."; position: absolute; inset: 11px auto auto 10px; font-weight: 700; }
.roles li[aria-current] { background: var(--_band); box-shadow: inset 4px 0 var(--_follow); }
.roles .step { display: flex; justify-content: space-between; gap: 12px; inline-size: 100%; min-block-size: 44px; align-items: center; padding-block: 6px; text-align: start; }
.roles .when { flex: none; min-block-size: 0; text-decoration: none; }
.roles .read { font-style: italic; }
`;

let sheet = /** @type {CSSStyleSheet | undefined} */ (undefined);

/** Gives an element's tree this look as well. @param {ShadowRoot} root */
export function teachingStyles({ adoptedStyleSheets }) {
  sheet ??= sheetOf(CSS);
  if (!adoptedStyleSheets.includes(sheet)) adoptedStyleSheets.push(sheet);
}
