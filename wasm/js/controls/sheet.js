/**
 * What goes on paper in place of the moving picture: each beat drawn, with its words, and the whole
 * strip. It is there while the page is being printed, and gone after that.
 */

import { make } from "../build.js";
import { Surface } from "../surface.js";
import { FACES } from "../palette.js";
import { captionOf } from "../told.js";

/** @import { Module, OpenSet } from "../load.js" */

/** Black on white, grey only as tint; in the order of the page's colours. */
const PAPER =
  "#FFF #EFEFEF #EFEFEF #000 #3A3A3A #757575 #BFBFBF #000 #000 #FFF #000 #000 #FFF #000 #000 #FFF";
/** Widths of a beat and of what goes across, CSS pixels; paper is finer than a screen. */
const HALF = 340;
const WHOLE = 700;
const DENSITY = 3;

export class Sheet {
  #surfaces = /** @type {Surface[]} */ ([]);
  node = make("div", { class: "sheet" });

  /** @param {Module} module @param {OpenSet} play @param {string} address of the set file, or nothing */
  show(module, play, address) {
    this.clear();
    const palette = new module.Palette(PAPER.replaceAll(" ", "\n"), FACES[0][1], FACES[1][1]);
    const beats = play.beatStarts.length;
    const [, , , , height = 0] = play.stripGeometry(WHOLE, 0, false);
    for (let i = 0; i < beats; i += 1) {
      const surface = this.#surface(HALF, play.courtHeight(HALF));
      surface.paint((context, density) => play.paintBeat(context, palette, HALF, density, i));
      const title = make("h3", {}, play.beatTitle(i));
      this.node.append(make("div", {}, surface.node, title, make("p", {}, captionOf(play, i))));
    }
    const strip = this.#surface(WHOLE, height);
    // No beat is on.
    strip.paint((context, density) =>
      play.paintStrip(context, palette, WHOLE, density, beats, 0, false, false),
    );
    const key = this.#surface(WHOLE, play.keyHeight(WHOLE));
    key.paint((context, density) => play.paintKey(context, palette, WHOLE, density));
    this.node.append(strip.node, key.node);
    if (address) this.node.append(make("a", { href: address }, address));
    palette.free();
  }

  /** Gives the canvases' memory back. */
  clear() {
    for (const surface of this.#surfaces.splice(0)) surface.release();
    this.node.replaceChildren();
  }

  /** @param {number} width @param {number} height */
  #surface(width, height) {
    const surface = new Surface();
    surface.resize(width, height, DENSITY);
    this.#surfaces.push(surface);
    return surface;
  }
}
