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
/* Quiz: what would tell an answer goes, so the question stands under the court. */
[data-quiz] :is(.words, .beat, .roles, .strip, .controls, .teach, .key, .judged, .sharing, .close-up) { display: none !important; }
.aim { position: absolute; inset: 0; }
.aim[data-on] { cursor: crosshair; }
.aim .cross { position: absolute; inset: -12px auto auto -12px; inline-size: 24px; block-size: 24px; stroke: var(--_follow); stroke-width: 2.5; visibility: hidden; pointer-events: none; }
.aim .cross[data-on] { visibility: visible; }
.quiz { display: grid; gap: 8px; }
.quiz .line > .word { margin-inline-start: auto; text-decoration: underline; text-underline-offset: 3px; }
.quiz h3:focus { outline: none; }
.quiz fieldset .play { margin-block-start: 8px; }
.quiz .how { color: var(--_soft); font-size: 14px; }
.quiz .reason { font: 16.5px/1.35 var(--_serif); }
.quiz .reason strong { font: 700 15px var(--_sans); margin-inline-end: 6px; }
.quiz .told { min-block-size: 2.7em; font: 16.5px/1.35 var(--_serif); }
.quiz .slide { display: flex; align-items: center; gap: 12px; padding-block-end: 8px; }
.quiz .slide input { flex: 1 1 0; min-inline-size: 0; block-size: 44px; }
.quiz .slide .count { min-inline-size: 96px; text-align: end; }
.quiz fieldset { border: 0; margin: 0; padding: 0; min-inline-size: 0; }
.quiz .choices { display: grid; }
.quiz .choices[data-short] { grid-auto-flow: column; justify-content: start; gap: 8px; }
.quiz label { display: flex; align-items: center; gap: 10px; min-block-size: 44px; min-inline-size: 52px; }
.quiz input { inline-size: 22px; block-size: 22px; margin: 0; accent-color: var(--_ink); flex: none; }
.quiz label[data-right] { font-weight: 700; text-decoration: underline 3px; text-underline-offset: 4px; }
.quiz .acts { display: flex; flex-wrap: wrap; gap: 4px 18px; }
.quiz :disabled.play { opacity: .5; }
[data-narrow] .quiz { padding-inline: 2px; }

/* Walk-through and loop. */
:is(.walk, .loop) .row { flex-wrap: wrap; }
:is(.walk, .loop) .row > .cell { flex: none; padding-inline: 14px; }
:is(.walk, .loop) [disabled] { color: var(--_soft); cursor: default; text-decoration: none; }
:is(.walk, .loop) > .why { font: 16.5px/1.35 var(--_serif); }
.walk > .why { min-block-size: 2.7em; }
.loop .row > .cell:first-child { padding-inline-start: 0; }
.walk .count { align-self: center; padding-inline: 14px; }

.rail { position: relative; block-size: 30px; margin-block-start: 2px; direction: ltr; touch-action: pan-y; }
.rail .bar { position: absolute; inset-block: 13px auto; block-size: 4px; background: var(--_ink); }
.handle { position: absolute; inset-block: 0; inline-size: 44px; margin-inline-start: -22px; cursor: ew-resize; touch-action: none; }
.handle::before { content: ""; position: absolute; inset: 5px auto 5px 17px; inline-size: 10px; border: 2px solid var(--_ink); background: var(--_paper); }
.handle.from::before { border-inline-end: 0; }
.handle.to::before { border-inline-start: 0; }
`;

let sheet = /** @type {CSSStyleSheet | undefined} */ (undefined);

/** Gives an element's tree this look as well. @param {ShadowRoot} root */
export function teachingStyles({ adoptedStyleSheets }) {
  sheet ??= sheetOf(CSS);
  if (!adoptedStyleSheets.includes(sheet)) adoptedStyleSheets.push(sheet);
}
