/**
 * A page's own colours may be unreadable together. Each pair is checked (WCAG 2.2, 1.4.3 and
 * 1.4.11); a colour that fails becomes the ink, the paper, or black or white.
 */

/** What is read against what, and the least ratio: 4.5 for words, 3 for marks. */
const PAIRS = /** @type {const} */ ([
  ["ink", "paper", 4.5],
  ["soft", "paper", 4.5],
  ["line", "paper", 3],
  ["faint", "paper", 3],
  ["offence", "paper", 3],
  ["offence-to-come", "paper", 3],
  ["follow", "paper", 4.5],
  ["follow-to-come", "paper", 3],
  ["ball", "paper", 3],
  ["offence-number", "offence", 4.5],
  ["follow-number", "follow", 4.5],
]);

const pen = (() => {
  /** @type {CanvasRenderingContext2D | null | undefined} */
  let made;
  return () => (made ??= document.createElement("canvas").getContext("2d"));
})();

/** Relative luminance of a CSS colour, or undefined for what is no opaque colour. @param {string} colour */
function luminance(colour) {
  const context = pen();
  if (!context) return undefined;
  // Two starts: a word that is no colour leaves both as they were.
  const read = ["#000000", "#ffffff"].map((start) => {
    context.fillStyle = start;
    context.fillStyle = colour;
    return context.fillStyle;
  });
  const hex = read[0] === read[1] && /^#(..)(..)(..)$/.exec(read[0] ?? "");
  if (!hex) return undefined;
  const [r, g, b] = hex.slice(1).map((pair) => {
    const c = parseInt(pair, 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
}

/** Contrast ratio of two luminances. @param {number} a @param {number} b */
const ratio = (a, b) => (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);

/**
 * The colours that do not hold, by name, with what stands in for them.
 *
 * @param {Map<string, string>} colours by name
 * @returns {Map<string, string>}
 */
export function standIns(colours) {
  const out = new Map();
  const now = (/** @type {string} */ name) => out.get(name) ?? colours.get(name) ?? "";
  for (const [name, ground, least] of PAIRS) {
    const [mark, below] = [luminance(now(name)), luminance(now(ground))];
    if (below === undefined || (mark !== undefined && ratio(mark, below) >= least)) continue;
    // System colours of a forced palette are no hexadecimal; they are left as they are.
    if (mark === undefined && CSS.supports("color", now(name))) continue;
    const choices = [now("ink"), now("paper"), "#000000", "#ffffff"];
    const holds = choices.find((c) => ratio(luminance(c) ?? below, below) >= least);
    if (holds) out.set(name, holds);
  }
  return out;
}
