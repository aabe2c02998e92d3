/** The look of what comes after the first picture. */

import { sheetOf } from "./adopted.js";

const CSS = `
.followed { display: contents; }
.label { align-self: center; color: var(--_soft); margin-inline-end: 14px; }
.who { display: grid; place-items: center; min-inline-size: 46px; color: var(--_follow); }
.body { inline-size: 36px; block-size: 32px; fill: var(--_offence); stroke: none; }
.body .ring { fill: none; }
.body text { fill: var(--_offence-number); font: 700 14px var(--_sans); }
[aria-pressed="true"] .body { fill: var(--_follow); }
[aria-pressed="true"] .body .ring { stroke: var(--_follow); stroke-width: 1.5; }
[aria-pressed="true"] .body text { fill: var(--_follow-number); }
.choice select { appearance: none; inline-size: 100%; min-block-size: 46px; padding-inline: 10px 24px; font-weight: 700; text-align: start; }
.choice select option { background: var(--_field); color: var(--_ink); }
.choice .chevron { position: absolute; inset-inline-end: 10px; pointer-events: none; }
.who[aria-pressed="true"] { background: linear-gradient(currentColor, currentColor) bottom center / calc(100% - 12px) 4px no-repeat; }
[data-narrow] .choice { justify-content: flex-start; }

.sharing { padding-block: 10px 2px; border-block-end: 1px solid var(--_rule); font-size: 15px; }
.ways { display: flex; flex-wrap: wrap; column-gap: 18px; }
.ways .word { padding: 0; text-decoration: underline; text-underline-offset: 3px; }
.ways .word::after { content: none; }
.sharing .fine { color: var(--_soft); font-size: 14px; min-block-size: 1.35em; }
.sharing textarea { inline-size: 100%; font: 13px/1.4 ui-monospace, monospace; color: inherit; background: var(--_field);
  border: 1px solid var(--_line); border-radius: 0; padding: 8px; margin-block: 4px 8px; }
.qr > div { inline-size: min(100%, 320px); margin-block: 6px 10px; }
.qr svg { display: block; inline-size: 100%; background: #FFF; fill: #000; stroke: none; shape-rendering: crispEdges; forced-color-adjust: none; }

.teach { border-block-end: 1px solid var(--_line); }
.judged { padding-block: 10px 2px; font-size: 15px; }
.judged > div, .judged ul { display: grid; gap: 8px; }
.judged ul { list-style: none; }
.judged li { display: grid; grid-template-columns: 20px 1fr auto; gap: 10px; align-items: start; font-family: var(--_serif); font-size: 16px; }
.judged strong { font-family: var(--_sans); font-size: 14px; }
.judged .look { font: 16.5px/1.35 var(--_serif); color: var(--_follow); }
.judged .cure, .judged .fine { color: var(--_soft); }
.judged .fine { font-size: 13px; }
.mark { position: relative; display: grid; place-items: center; block-size: 20px; margin-block-start: 1px; }
.mark .flag { inline-size: 20px; block-size: 20px; fill: var(--_ink); stroke: none; }
.mark b { position: absolute; color: var(--_paper); font: 700 11px/1 var(--_sans); }
.when { color: var(--_soft); font: 14px/1.3 var(--_sans); min-inline-size: 44px; min-block-size: 24px; text-align: end; text-decoration: underline; text-underline-offset: 3px; }
details { margin-block-start: 6px; }
summary { min-block-size: 44px; align-content: center; cursor: pointer; font-weight: 700; }
.judged .wide { overflow-x: auto; }
table { border-collapse: collapse; inline-size: 100%; }
th { font-weight: 400; text-align: start; }
thead th { color: var(--_soft); font-size: 13px; vertical-align: bottom; padding: 0 8px 4px; min-inline-size: 78px; }
thead small { display: block; font-size: 12px; }
tbody tr { border-block: 1px solid var(--_rule); }
thead td { border: 0; }
tbody th { padding-inline-end: 10px; white-space: nowrap; }
[aria-current="true"] th { font-weight: 700; }
tbody td { border-inline-start: 1px solid var(--_rule); padding: 0; }
td button { --open: 0; display: block; inline-size: 100%; min-block-size: 44px; padding-inline: 8px; text-align: start;
  background: linear-gradient(var(--_follow-to-come), var(--_follow-to-come)) 0 100% / calc(var(--open) * 100%) 5px no-repeat; }
td small { color: var(--_soft); }
[data-narrow] [hidden] { display: none !important; }
[data-narrow] .judged { padding-inline: 2px; }
[data-narrow] .choice { flex: 1 0 auto; max-inline-size: 100%; }
.row.narrow-only { flex-wrap: wrap; }
[data-narrow] .row > .cell.more { flex: 1 0 auto; }
.choice select { field-sizing: content; }
[data-narrow] .choice select { padding-inline: 4px 18px; font-size: 14px; }
[data-narrow] .choice .chevron { inset-inline-end: 4px; }
[data-narrow] .row .cell.word { padding-inline: 9px; }
[data-narrow] .when { min-block-size: 44px; }
.row .choice.wide-only { flex: none; min-inline-size: 190px; }
.row .cell.word { flex: none; padding-inline: 14px; }
[data-narrow] .words { flex-wrap: wrap; justify-content: flex-start; gap: 0 18px; padding-inline: 2px; }
.words .narrow-only { flex-direction: column; place-content: center; align-items: center; }
/* What a pointer or an open strip shows. */
@media (hover: hover) { button:hover, .choice:hover { text-decoration: underline; text-underline-offset: 3px; } }
.stepper button:active .chevron { stroke-width: 3; }
.strip { cursor: ew-resize; }
.close-up { cursor: zoom-in; }
.close-up[data-large] { cursor: zoom-out; }
.fold[aria-expanded="true"] .chevron { transform: scaleY(-1); }
/* Too narrow for words between the chevrons: they stand above, and what is left goes to the next line. */
.row.wide-only { flex-wrap: wrap; }
.controls { container-type: inline-size; }
@container (inline-size < 372px) {
  .stepper { min-block-size: 50px; padding-block-start: 14px; }
  .stepper > span { position: absolute; inset: 4px 0 auto; text-align: center; font-size: 13px; pointer-events: none; }
  .stepper button { margin-block-start: -14px; padding-block-start: 18px; }
  .row.narrow-only > .cell { flex: 1 0 45% !important; min-block-size: 44px; }
}

/* What a page says of its own words and would be inherited. */
.reader { text-transform: none; text-indent: 0; text-shadow: none; white-space: normal; }

/* Words in the page's script, whatever way the page runs; time always runs to the right. */
.reader :is(h2, h3, h4, p, dd, li, td, th, summary, button, label, .count, .about > span) { unicode-bidi: plaintext; }
.stepper { direction: ltr; }

.keys { inline-size: min(440px, 100vw - 32px); max-block-size: calc(100vh - 32px); overflow: auto; padding: 12px 20px; color: inherit; background: var(--_paper); border: 1px solid var(--_line); overscroll-behavior: contain; }
.keys::backdrop { background: rgb(0 0 0 / .45); }
.keys .line { justify-content: space-between; }
.keys dl { margin: 8px 0; }
.keys h4 { margin: 16px 0 0; }
.keys dl div { display: grid; grid-template-columns: 2fr 3fr; gap: 10px; padding-block: 4px; border-block-start: 1px solid var(--_rule); }
.keys dd { margin: 0; }
kbd { font: inherit; font-weight: 700; padding-inline: 5px; border: 1px solid var(--_line); }
.keys label { display: flex; align-items: center; gap: 10px; min-block-size: 44px; }
.keys input { inline-size: 24px; block-size: 24px; margin: 0; accent-color: var(--_ink); }

:host(:fullscreen), :host(.full) { max-inline-size: none; overflow: auto; background: var(--_paper); }
:host(.full) { position: fixed; inset: 0; max-inline-size: none !important; z-index: 2147483647; }
:host(:fullscreen) .reader, :host(.full) .reader { border: 0; margin-inline: auto; max-inline-size: max(420px, calc((100vh - 400px) * 1.65)); }

.sheet { display: none; }
@media print {
  .reader { --_paper: #FFF; --_ink: #000; --_soft: #3A3A3A; }
  :host(:defined) { color-scheme: light; }
  .controls, .sharing, .judged, .key, .fold, .words, .close-up { display: none !important; }
  [data-print] { border: 0; padding: 0; }
  [data-print] :is(.court, .beat, .strip) { display: none; }
  [data-print] .sheet { display: grid; grid-template-columns: 1fr 1fr; gap: 16px; }
  .sheet > div { break-inside: avoid; }
  .sheet p { font: 16.5px/1.35 var(--_serif); }
  .sheet canvas { inline-size: 100% !important; block-size: auto !important; }
  .sheet > :not(div) { grid-column: 1 / 3; }
}
`;

let sheet = /** @type {CSSStyleSheet | undefined} */ (undefined);

/** Gives an element's tree this look as well. @param {ShadowRoot} root */
export function lateStyles({ adoptedStyleSheets }) {
  sheet ??= sheetOf(CSS);
  if (!adoptedStyleSheets.includes(sheet)) adoptedStyleSheets.push(sheet);
}
