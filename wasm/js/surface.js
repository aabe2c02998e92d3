/** One canvas layer: as sharp as the screen, within a budget. */

import { make } from "./build.js";

/** Denser than this no eye sees it move, and phones run out of memory. */
const DENSEST = 2;
/** Canvas pixels that one layer may take. */
const MOST_PIXELS = 4e6;

export class Surface {
  node = make("canvas", { "aria-hidden": "true" });
  #context = this.node.getContext("2d");
  /** Canvas pixels a CSS pixel. */
  density = 0;

  /**
   * Takes a size; what was painted is gone.
   *
   * @param {number} width CSS pixels
   * @param {number} height CSS pixels
   * @param {number} [wanted] canvas pixels a CSS pixel
   */
  resize(width, height, wanted = Math.min(devicePixelRatio || 1, DENSEST)) {
    this.density = Math.min(wanted, Math.sqrt(MOST_PIXELS / Math.max(1, width * height)));
    this.node.width = Math.round(width * this.density);
    this.node.height = Math.round(height * this.density);
    this.node.style.width = `${width}px`;
    this.node.style.height = `${height}px`;
  }

  /** Calls `painter` where there is anything to paint on. @param {(context: CanvasRenderingContext2D, density: number) => void} painter */
  paint(painter) {
    if (this.#context && this.node.width > 0 && this.node.height > 0) {
      painter(this.#context, this.density);
    }
  }

  /** Gives the memory back. */
  release() {
    this.node.width = 0;
    this.node.height = 0;
  }
}
