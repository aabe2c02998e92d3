/** A layer over the court, to point at a place: by tap, or by a cross that keys move. */

import { glyph, make, write } from "../../build.js";

/** @import { FullPlay } from "../../load.js" */

/** So far a key moves the cross, metres: alone, and with Shift. */
const STEP = 0.25;
const STRIDE = 1;
/** Where it stands first, metres: in the middle of the half court. */
const FIRST = { x: 0, y: 4 };
/** By key: to the right, and away from the ring. @type {Readonly<Record<string, readonly [number, number]>>} */
const WAYS = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

export class Aim {
  #what;
  #answer;
  #cross = glyph("0 0 24 24", "M12 1 V23 M1 12 H23", "cross");
  #at = { ...FIRST };
  /** The set that is pointed at. @type {FullPlay | undefined} */
  play;
  /** Tells where the cross is. */
  said = make("p", { class: "unseen", role: "status" });
  node = make("div", { class: "aim" }, this.#cross);

  /** @param {string} what it is, in a word @param {(x: number, y: number) => void} answer takes a place, metres @param {() => void} press is told of any touch */
  constructor(what, answer, press) {
    this.#what = what;
    this.#answer = answer;
    this.node.addEventListener("pointerdown", press);
    this.node.addEventListener("click", (event) => {
      const box = this.node.getBoundingClientRect();
      // A page may show the element scaled; the box is what is seen.
      const scale = this.node.clientWidth / box.width;
      const floor = this.#floor(
        (event.clientX - box.left) * scale,
        (event.clientY - box.top) * scale,
      );
      if (floor) answer(floor.x, floor.y);
    });
  }

  /** Takes a question: where a place is asked for, keys reach it. @param {string} kind @param {string} question */
  show(kind, question) {
    this.rest();
    if (kind !== "place") return;
    this.#at = { ...FIRST };
    const named = {
      "data-on": "",
      role: "application",
      tabindex: "0",
      "aria-roledescription": this.#what,
      "aria-label": question,
      "aria-describedby": "how standing",
    };
    for (const [name, value] of Object.entries(named)) this.node.setAttribute(name, value);
    this.node.focus();
  }

  /** Nothing is asked for. */
  rest() {
    write(this.said, "");
    this.#cross.toggleAttribute("data-on", false);
    for (const { name } of [...this.node.attributes]) {
      if (name !== "class") this.node.removeAttribute(name);
    }
  }

  /** @param {KeyboardEvent} event */
  onKey(event) {
    const way = WAYS[event.key];
    if (way) this.#move(way, event.shiftKey ? STRIDE : STEP);
    else if (event.key === "Enter" || event.key === " ") this.#answer(this.#at.x, this.#at.y);
    else return;
    event.preventDefault();
  }

  /** @param {readonly [number, number]} way @param {number} by metres */
  #move([across, along], by) {
    const { clientWidth, clientHeight } = this.node;
    const [first, last] = [this.#floor(0, 0), this.#floor(clientWidth, clientHeight)];
    if (!first || !last) return;
    const x = Math.min(last.x, Math.max(first.x, this.#at.x + across * by));
    const y = Math.min(last.y, Math.max(first.y, this.#at.y + along * by));
    this.#at = { x, y };
    const [left = 0, top = 0] = this.play?.pixelAt(clientWidth, x, y) ?? [];
    this.#cross.style.translate = `${left}px ${top}px`;
    this.#cross.toggleAttribute("data-on", true);
    write(this.said, this.play?.whereabouts(x, y) ?? "");
  }

  /** The floor under a place of the layer. @param {number} left @param {number} top CSS pixels */
  #floor(left, top) {
    const [x, y] = this.play?.floorAt(this.node.clientWidth, left, top) ?? [];
    return x === undefined || y === undefined ? undefined : { x, y };
  }
}
