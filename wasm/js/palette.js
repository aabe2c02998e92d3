/**
 * The colours by what they are for. A page sets any of them as `--backcut-NAME`; the element reads
 * them all through `--_NAME`, which falls back to the light or dark value here.
 */

/** @import { Late } from "./load.js" */

/** Name, light, dark, forced colours: in the order in which the painter knows them. */
export const COLOURS = /** @type {const} */ ([
  /** Ground of the reader. */
  ["paper", "#F7F3E9", "#12191D", "Canvas"],
  /** The restricted area. */
  ["lane", "#EFE7D5", "#1B262B", "Canvas"],
  /** The beat that is on, in the strip. */
  ["band", "#EDE4D0", "#1E2A2F", "Canvas"],
  /** Words, trails, screens, the playhead, Play. */
  ["ink", "#1C2730", "#EFE8D8", "CanvasText"],
  /** Second words and rulers. */
  ["soft", "#545E63", "#A9B2B1", "CanvasText"],
  /** The court's lines, rules of the controls. */
  ["line", "#777E79", "#77837F", "GrayText"],
  /** Hairlines between rows and cells. */
  ["rule", "#DAD2C1", "#2E3A3F", "GrayText"],
  /** Trails done or to come. */
  ["faint", "#6F7576", "#9B9991", "GrayText"],
  /** Bodies and bars. */
  ["offence", "#0B5A60", "#63BDB7", "CanvasText"],
  /** Numbers on bodies. */
  ["offence-number", "#FFFFFF", "#0C1316", "Canvas"],
  /** Bars after the playhead. */
  ["offence-to-come", "#528889", "#4B8C89", "GrayText"],
  /** Whoever is followed. */
  ["follow", "#AE3F28", "#F08E6B", "Highlight"],
  /** Their numbers. */
  ["follow-number", "#FFFFFF", "#0C1316", "HighlightText"],
  /** Their bars after the playhead. */
  ["follow-to-come", "#C06A56", "#BB7258", "Highlight"],
  /** The ball and its row. */
  ["ball", "#AC6E0A", "#E2A83B", "CanvasText"],
  /** The ground of lists that unroll. */
  ["field", "#FDFBF5", "#182126", "Canvas"],
]);

/** Type faces, the same in light and dark. */
export const FACES = /** @type {const} */ ([
  /** The face for what a coach says. */
  ["serif", 'Charter, "Bitstream Charter", "Sitka Text", Cambria, "DejaVu Serif", Georgia, serif'],
  /** The face for what one operates. */
  ["sans", 'system-ui, "Segoe UI", Roboto, "Helvetica Neue", "DejaVu Sans", Arial, sans-serif'],
]);

/**
 * What a palette is made of, as it holds for `host` now; colours that cannot be read together are
 * replaced, for the canvases and, on `node`, for the words, once it is known how.
 *
 * @param {Element} host
 * @param {HTMLElement} node
 * @param {Late["standIns"] | undefined} standIns
 * @returns {[colours: string, serif: string, sans: string]}
 */
export function coloursOf(host, node, standIns) {
  const style = getComputedStyle(host);
  const value = (/** @type {string} */ name) => style.getPropertyValue(`--_${name}`).trim();
  const colours = new Map(COLOURS.map(([name]) => [name, value(name)]));
  const better = standIns?.(colours) ?? new Map();
  for (const name of colours.keys()) {
    const stand = better.get(name);
    if (stand) node.style.setProperty(`--_${name}`, stand);
    else node.style.removeProperty(`--_${name}`);
  }
  const held = [...colours].map(([name, colour]) => better.get(name) ?? colour);
  return [held.join("\n"), value("serif"), value("sans")];
}
