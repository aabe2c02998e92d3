/**
 * The strip: two layers, what was and what is to come, parted at the playhead. Dragging anywhere in
 * it scrubs; to assistive technology it is one slider over time.
 */

import { make, write } from "../build.js";
import { PART } from "../names.js";
import { Surface } from "../surface.js";

/** @import { Palette } from "../../pkg/raw/backcut.js" */
/** @import { OpenSet } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */

/** A finger that moved less than this has tapped, pixels. */
const TAP = 6;

export class Strip {
  #done = new Surface();
  #toCome = new Surface();
  #tab = make("span", { class: "tab" });
  #head = make("div", { class: "playhead", "aria-hidden": "true" });
  #ask;
  #width = 0;
  #left = 0;
  #right = 1;
  #duration = 1;
  node;

  /** @param {Commands} ask */
  constructor(ask) {
    this.#ask = ask;
    this.#toCome.node.className = "to-come";
    this.node = make(
      "div",
      {
        class: "strip",
        part: PART.strip,
        role: "slider",
        tabindex: "0",
        "aria-label": ask.say.time,
      },
      this.#toCome.node,
      this.#done.node,
      this.#head,
      this.#tab,
    );
    this.#scrub();
  }

  /** Takes a width. @param {OpenSet} play @param {number} width @param {State} state */
  layout(play, width, { follow, folded }) {
    const [left = 0, right = 1, header = 0, ruler = 0, height = 0] = play.stripGeometry(
      width,
      follow,
      folded,
    );
    this.#width = width;
    this.#left = left;
    this.#right = right;
    this.#duration = Math.max(play.duration, 0.001);
    this.node.style.height = `${height}px`;
    this.#head.style.top = `${header - 5}px`;
    this.#head.style.height = `${ruler - header + 8}px`;
    this.#tab.style.top = `${ruler + 3}px`;
    for (const layer of [this.#done, this.#toCome]) layer.resize(width, height);
  }

  /** @param {OpenSet} play @param {Palette} palette @param {State} state */
  paint(play, palette, { beat, follow, folded }) {
    this.#done.paint((context, density) =>
      play.paintStrip(context, palette, this.#width, density, beat, follow, folded, false),
    );
    this.#toCome.paint((context, density) =>
      play.paintStrip(context, palette, this.#width, density, beat, follow, folded, true),
    );
  }

  /** Puts the playhead at `time`. @param {number} time */
  place(time) {
    const x = this.#left + (time / this.#duration) * (this.#right - this.#left);
    this.#done.node.style.clipPath = `inset(0 ${this.#width - x}px 0 0)`;
    this.#toCome.node.style.clipPath = `inset(0 0 0 ${x}px)`;
    this.#head.style.transform = `translateX(${x - 1}px)`;
    write(this.#tab, this.#ask.say.instant({ time }));
    this.#tab.style.transform = `translateX(${Math.min(x, this.#width - TAB / 2) - TAB / 2}px)`;
  }

  /** Tells where it stands; not on each frame, or a screen reader would never be quiet. @param {State} state */
  tell({ time, duration, beat, beatTitle }) {
    const total = Number.isNaN(duration) ? 0 : duration;
    this.node.setAttribute("aria-valuemin", "0");
    this.node.setAttribute("aria-valuemax", total.toFixed(2));
    this.node.setAttribute("aria-valuenow", time.toFixed(2));
    const at = { time, duration: total, beat: beat + 1, title: beatTitle };
    this.node.setAttribute("aria-valuetext", this.#ask.say.where(at));
  }

  release() {
    this.#done.release();
    this.#toCome.release();
  }

  #scrub() {
    let from = /** @type {{ id: number, x: number } | undefined} */ (undefined);
    const { node } = this;
    node.addEventListener("pointerdown", (event) => {
      if (event.button !== 0 || !event.isPrimary) return;
      from = { id: event.pointerId, x: event.clientX };
      // A finger may be about to scroll the page: it seeks once it moves sideways, or lifts.
      if (event.pointerType === "mouse") this.#grab(event);
    });
    node.addEventListener("pointermove", (event) => {
      if (event.pointerId !== from?.id) return;
      if (node.hasPointerCapture(event.pointerId)) this.#to(event);
      else if (Math.abs(event.clientX - from.x) >= TAP) this.#grab(event);
    });
    node.addEventListener("pointerup", (event) => {
      if (event.pointerId !== from?.id) return;
      if (!node.hasPointerCapture(event.pointerId)) this.#to(event);
      this.#ask.scrub(false);
      from = undefined;
    });
    node.addEventListener("pointercancel", () => {
      this.#ask.scrub(false);
      from = undefined;
    });
  }

  /** @param {PointerEvent} event */
  #grab(event) {
    this.node.setPointerCapture(event.pointerId);
    this.#ask.scrub(true);
    this.#to(event);
  }

  /** @param {PointerEvent} event */
  #to(event) {
    const box = this.node.getBoundingClientRect();
    // A page may show the element scaled; the box is what is seen.
    const x = ((event.clientX - box.left) / box.width) * this.#width;
    const share = (x - this.#left) / (this.#right - this.#left);
    this.#ask.seek(Math.min(1, Math.max(0, share)) * this.#duration);
  }
}

/** Width of the tab with the time, pixels. */
const TAB = 60;
