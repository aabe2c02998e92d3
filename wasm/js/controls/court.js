/**
 * The court: one layer for what stands, one for what moves, and a button over the close-up in its
 * corner, which fills the court with it, and back.
 */

import { button, make } from "../build.js";
import { PART } from "../names.js";
import { Surface } from "../surface.js";

/** @import { Palette } from "../../pkg/raw/backcut.js" */
/** @import { Module, OpenSet } from "../load.js" */
/** @import { Commands } from "../reader.js" */

export class Court {
  /** CSS pixels. */
  width = 0;
  /** Whether the close-up fills it. */
  large = false;
  #say;
  #floor = new Surface();
  #movers = new Surface();
  #picture = make("div", { role: "img" }, this.#floor.node, this.#movers.node);
  #closeUp;
  node;

  /** @param {Commands} ask */
  constructor(ask) {
    this.#say = ask.say;
    this.#closeUp = button({ class: "close-up", hidden: "" }, () => ask.large());
    this.node = make("div", { class: "court", part: PART.court }, this.#picture, this.#closeUp);
    this.tell(ask.say.court);
  }

  /** Says what is seen. @param {string} words */
  tell(words) {
    this.#picture.setAttribute("aria-label", words);
  }

  /**
   * Paints what stands for as long as a beat lasts.
   *
   * @param {Palette} palette
   * @param {OpenSet} play
   * @param {number} beat
   */
  paintFloor(palette, play, beat) {
    this.#look(play, beat);
    this.#resize(play.courtHeight(this.width));
    this.#floor.paint((context, density) => play.paintCourt(context, palette, this.width, density));
  }

  /** @param {Module} module @param {Palette} palette */
  paintEmpty(module, palette) {
    this.#resize(module.emptyCourtHeight(this.width));
    this.#floor.paint((context, density) =>
      module.paintEmptyCourt(context, palette, this.width, density),
    );
  }

  /** @param {number} height */
  #resize(height) {
    const { width } = this;
    place(this.node, { width, height });
    for (const layer of [this.#floor, this.#movers]) layer.resize(width, height);
  }

  /** @param {Palette} palette @param {OpenSet} play @param {number} time @param {number} follow */
  paint(palette, play, time, follow) {
    this.#movers.paint((context, density) =>
      play.paintMovers(context, palette, this.width, density, time, follow),
    );
  }

  release() {
    this.#floor.release();
    this.#movers.release();
  }

  /** Where the beat's close-up is; a beat without one shows the whole court again. @param {OpenSet} play @param {number} beat */
  #look(play, beat) {
    const [left, top = 0, width = 0, height = 0] = play.closeUp(this.width, beat);
    this.large &&= width > 0;
    play.lookAt(this.width, this.large ? beat : undefined);
    this.#closeUp.hidden = left === undefined;
    const say = this.#say;
    this.#closeUp.setAttribute("aria-label", this.large ? say.reduce : say.enlarge);
    this.#closeUp.toggleAttribute("data-large", this.large);
    place(this.#closeUp, { left: left ?? 0, top, width, height });
  }
}

/** @param {HTMLElement} node @param {Record<string, number>} box CSS pixels */
function place(node, box) {
  for (const [name, value] of Object.entries(box)) node.style.setProperty(name, `${value}px`);
}
