/** The look of the modes that teach. */

import { sheetOf } from "../adopted.js";

const CSS = `
.teaching > div { padding-block: 10px; border-block-end: 1px solid var(--_rule); font-size: 15px; }

/* Film. */
.pair { position: relative; display: flex; flex-wrap: wrap; gap: 16px; container-type: inline-size; }
.pair > .court { flex: none; margin-inline: auto; }
.film-view { position: relative; flex: 1 1 100%; order: -1; aspect-ratio: 16 / 9; max-block-size: 45svh; background: #000; }
.film-view video { position: absolute; inset: 0; inline-size: 100%; block-size: 100%; object-fit: contain; }
@container (inline-size >= 700px) {
  [data-film="beside"] > .court { max-inline-size: calc(50cqi - 8px); margin: 0; }
  [data-film="beside"] > .film-view { flex-basis: 0; order: 1; aspect-ratio: auto; max-block-size: none; }
}
[data-film="corner"] > .film-view { position: absolute; inset: auto 8px 8px auto; inline-size: 30%; z-index: 1; outline: 1px solid var(--_paper); }
[data-film="away"] > .film-view { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }
:host(.with-film) { max-inline-size: 1240px; }
.film-line { display: flex; align-items: center; gap: 8px; }
.film-line .cell { flex: none; min-block-size: 44px; }
.film-line input { flex: 1 1 0; min-inline-size: 0; block-size: 44px; margin: 0; accent-color: var(--_ink); }
.film-time { min-inline-size: 108px; text-align: end; white-space: nowrap; }
.film-status { min-block-size: 1.35em; padding-block: 4px; color: var(--_soft); }
.film-marks { list-style: none; }
.film-marks li { display: grid; grid-template-columns: auto 1fr auto; gap: 12px; align-items: center; border-block-end: 1px solid var(--_rule); }
.film-marks div p:first-child { font: 16px/1.35 var(--_serif); }
.film [aria-pressed="true"] { text-decoration: none; }
.film .fine { color: var(--_soft); font-size: 13px; }
.film textarea { inline-size: 100%; font: 12px/1.35 monospace; }
@media print { .film, .film-view { display: none !important; } }
`;

let sheet = /** @type {CSSStyleSheet | undefined} */ (undefined);

/** Gives an element's tree this look as well. @param {ShadowRoot} root */
export function teachingStyles({ adoptedStyleSheets }) {
  sheet ??= sheetOf(CSS);
  if (!adoptedStyleSheets.includes(sheet)) adoptedStyleSheets.push(sheet);
}
