/**
 * The element's look, as one constructed style sheet for the page: a strict content security policy
 * allows that where it allows no style element.
 */

import { sheetOf } from "./adopted.js";
import { COLOURS, FACES } from "./palette.js";

const LIGHT = 1;
const DARK = 2;
const FORCED = 3;

/** @param {1 | 2 | 3} column */
function colours(column) {
  return COLOURS.map((row) => `--_${row[0]}: var(--backcut-${row[0]}, ${row[column]});`).join(" ");
}

const FACE = FACES.map(([name, stack]) => `--_${name}: var(--backcut-${name}, ${stack});`).join(
  " ",
);

// The empty `::before` holds a line's height while no words are there yet; the margin under the
// controls, that of a row that comes after the first picture.
const CSS = `
:host { ${FACE} ${colours(LIGHT)}
  display: block; box-sizing: border-box; max-inline-size: 800px; margin-inline: auto; color-scheme: light; }
@media (prefers-color-scheme: dark) { :host(:not([theme="light"])) { ${colours(DARK)} color-scheme: dark; } }
:host([theme="dark"]) { ${colours(DARK)} color-scheme: dark; }
@media (forced-colors: active) { :host(:defined) { ${colours(FORCED)} forced-color-adjust: none; } }
:host([hidden]), [hidden] { display: none !important; }

.reader { background: var(--_paper); color: var(--_ink); border: 1px solid var(--_rule);
  padding: 12px 20px 16px; font: 15px/1.35 var(--_sans); font-variant-numeric: tabular-nums;
  text-align: start; -webkit-text-size-adjust: 100%; }
.reader *, .reader *::before, .reader *::after { box-sizing: border-box; }
h2, h3, p, ul { margin: 0; padding: 0; }
h2, h3 { font-family: var(--_serif); font-weight: 700; line-height: 1.2; }
h2 { font-size: 27px; }
h3 { font-size: 22px; }
:is(h2, h3, .about)::before { content: "\u200b"; }
.about, .count { color: var(--_soft); font-size: 14px; }
.scale { color: var(--_soft); font-size: 13px; }
.unseen { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); }

header, .line { display: flex; flex-wrap: wrap; align-items: baseline; column-gap: 12px; }
header { padding-block-end: 4px; }
header { max-block-size: var(--backcut-room, 100svh); }
.words, .line .scale, .fold { margin-inline-start: auto; }
.words { display: flex; gap: 12px; }

.court { position: relative; margin-inline: auto; aspect-ratio: 15.8 / 9.8; touch-action: pan-y pinch-zoom; }
.court > [role] { block-size: 100%; }
.court canvas, .strip canvas, .marks canvas { position: absolute; inset: 0 auto auto 0; display: block; }
.close-up { position: absolute; }
.close-up[data-large] { inset: 0 !important; inline-size: auto !important; block-size: auto !important; }
slot, [data-state="loading"] ::slotted(:not(:first-child)) { display: none; }
[data-poster]:not([data-state="open"]) slot { display: block; }
[data-poster]:not([data-state="open"]) .court { display: none; }
:is(slot img, ::slotted(:is(img, svg))) { display: block; inline-size: 100%; block-size: auto; }

.beat { position: relative; padding-block: 8px; }
.captions { display: grid; min-block-size: 2.7em; margin-block-start: 3px; }
.captions { font: 16.5px/1.35 var(--_serif); }
.captions p { grid-area: 1 / 1; }
.captions p[hidden] { display: block !important; visibility: hidden; }
[data-wordless][data-state="open"] .captions { display: none; }

.strip { position: relative; block-size: 198px; touch-action: pan-y;
  user-select: none; -webkit-user-select: none; direction: ltr; }
.playhead { position: absolute; inset: 25px auto auto 0; inline-size: 2px; background: var(--_ink); pointer-events: none; }
.tab { position: absolute; inset: 0 auto auto 0; inline-size: 60px; block-size: 21px; border-radius: 2px;
  background: var(--_ink); color: var(--_paper); font: 600 12.5px/21px var(--_sans); text-align: center; pointer-events: none; }
[data-state="loading"] :is(.playhead, .tab, .key) { display: none; }
[data-state="loading"] :is(h2, h3) { visibility: hidden; }

[data-mute] > :not(.court) { visibility: hidden; }

button, select { font: inherit; color: inherit; background: none; border: 0; border-radius: 0; margin: 0; padding: 0; cursor: pointer; }
button, select, [role="slider"], a { outline-offset: 2px; }
:focus { outline: none; }
:focus-visible { outline: 2px solid var(--_ink); z-index: 1; }
svg { fill: none; stroke: currentColor; stroke-width: 1.6; stroke-linecap: round; stroke-linejoin: round; overflow: visible; flex: none; }
.chevron { block-size: 11px; inline-size: 11px; stroke-width: 2; }
.glyph { block-size: 15px; inline-size: 13px; fill: currentColor; stroke: none; }
a { color: inherit; text-underline-offset: 3px; }

.controls { margin-block-start: 8px; border-block: 1px solid var(--_line); }
.row { display: flex; align-items: stretch; box-sizing: content-box; min-block-size: 44px; }
.row + .row { border-block-start: 1px solid var(--_line); }
.play { display: flex; align-items: center; justify-content: center; gap: 10px; min-inline-size: 104px;
  min-block-size: 44px; padding-inline: 12px; background: var(--_ink); color: var(--_paper); font-size: 16px; font-weight: 700; }
.cell { position: relative; display: flex; align-items: center; justify-content: center; flex: 1 1 auto; min-inline-size: 44px; }
.row > .cell:not(:first-child)::before { content: ""; position: absolute;
  inset: 11px auto 11px 0; inline-size: 1px; background: var(--_rule); }
.play + .cell::before { content: none !important; }
.stepper button { display: grid; place-items: center; align-self: stretch; min-inline-size: 44px; }
.word { display: inline-grid; place-content: center; justify-items: center; min-block-size: 44px; min-inline-size: 44px; padding-inline: 6px; }
.word[data-word]::after { content: attr(data-word); block-size: 0; overflow: hidden; font-weight: 700; visibility: hidden; }
.word[aria-pressed="true"] { font-weight: 700; }
.word[aria-pressed="true"] { background: linear-gradient(currentColor, currentColor) bottom center / calc(100% - 12px) 4px no-repeat; }
header .word { min-block-size: 28px; padding: 0; background-size: 100% 4px !important; }
.fold { display: inline-grid; grid-auto-flow: column; align-items: center; gap: 6px; font-size: 14px; padding-inline-end: 0;
  margin-block: -12px; white-space: nowrap; }
.count { white-space: nowrap; }

.controls:has(+ .key) { margin-block-end: 45px; }
.key { padding-block-start: 10px; }
[data-folded]:not([data-more]) .key, .reader:not([data-folded]) .more { display: none; }
.row:not(.narrow-only) > .more { flex: none; margin-inline-start: auto; padding-inline: 14px; }
.marks { position: relative; }

.fault { display: none; padding-block: 14px 4px; }
.fault p { margin-block-start: 6px; font: 16.5px/1.35 var(--_serif); overflow-wrap: anywhere; }
.fault p::first-letter { text-transform: uppercase; }
.fault .others { color: var(--_soft); font: 14px/1.35 var(--_sans); }
[data-state="fault"] .fault { display: block; }
[data-state="fault"] :is(header, .close-up, .beat, .strip, .controls, .key) { display: none; }

.narrow-only { display: none !important; }
[data-narrow] .wide-only { display: none !important; }
[data-narrow] .narrow-only { display: flex !important; }
[data-narrow].reader { padding: 8px; }
[data-narrow] h2 { font-size: 20px; }
[data-narrow] h3 { font-size: 18px; }
[data-narrow] header { justify-content: space-between; padding-inline: 2px; }
[data-narrow] .captions { font-size: 16px; }
[data-narrow] .beat { padding-block: 4px 6px; padding-inline: 2px; }
[data-narrow][data-state="loading"] .strip { block-size: 83px; }
[data-narrow] .line { flex-wrap: nowrap; }
[data-narrow] .row { min-block-size: 46px; }
[data-narrow] .controls { margin-inline: -8px; margin-block-end: -8px; }
[data-narrow] .row.first > * { flex: 1 1 0; }
[data-narrow] .stepper { min-inline-size: auto; }
[data-narrow] .row.first .play { order: 1; }
[data-narrow] .row.first .stepper:last-of-type { order: 2; }
[data-narrow] .row.first .cell::before { content: none; }
[data-narrow] .words { justify-content: space-around; min-block-size: 46px; border-block-start: 1px solid var(--_line); }
[data-narrow]:not([data-more]) .words { display: none; }
[data-narrow] .key { padding-block: 16px 6px; }

@media (forced-colors: active) { button, select { border: 1px solid ButtonText; } }
`;

let sheet = /** @type {CSSStyleSheet | undefined} */ (undefined);

/** The sheet, made when it is first asked for. */
export const styles = () => (sheet ??= sheetOf(CSS));
