/**
 * Loop: any stretch of the set, over and over. It lies on a rail under the strip, with a handle at
 * each end. Who steps through it comes from its end to its start, and so does who has nothing move.
 */

import { button, make, write } from "../build.js";
import { HANDLE_STEP, actOf, acts, pressed } from "../keys.js";
import { FRAME } from "../names.js";
import { keepTo, leaveRange } from "../shown.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */

/** The shortest stretch, seconds. */
const LEAST = 0.2;
/** From picture to picture where nothing moves, seconds. */
const PICTURE = 0.5;
/** Nearer than this, two instants are one; so far before a beat's start the last one still shows, seconds. */
const SAME = 0.001;
/** Width that the strip is asked for, pixels: its margins are the same at any. */
const WIDTH = 1000;

/** @typedef {"from" | "to"} End */

export class Loop {
  #host;
  #ask;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  #stretch = /** @type {{ from: number, to: number } | undefined} */ (undefined);
  /** Ends what it listens to; there while it is on. */
  #listening = /** @type {AbortController | undefined} */ (undefined);
  /** Whether nothing moves by itself. */
  #stepwise = false;
  #is = make("p", { class: "why", role: "status" });
  #bar = make("div", { class: "bar" });
  #next;
  #setters;
  #clear;
  #handles;
  #rail;
  node;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, ask) {
    this.#host = host;
    this.#ask = ask;
    const { say } = ask;
    const cell = (/** @type {string} */ word, /** @type {() => void} */ act) =>
      button({ class: "cell word" }, act, word);
    const setter = (/** @type {End} */ end, /** @type {string} */ word) =>
      cell(word, () => this.#move(end, host.currentTime));
    this.#next = button({ class: "play", hidden: "" }, () => this.#picture(), say.pictureOn);
    this.#setters = { s: setter("from", say.loopFrom), e: setter("to", say.loopTo) };
    this.#clear = cell(say.loopClear, () => this.#set(undefined));
    this.#handles = {
      from: this.#handle("from", say.loopStarts),
      to: this.#handle("to", say.loopEnds),
    };
    const { from, to } = this.#handles;
    this.#rail = make("div", { class: "rail", hidden: "" }, this.#bar, from, to);
    const { s: starts, e: ends } = this.#setters;
    const beat = cell(say.loopBeat, () => this.#beat());
    const row = make("div", { class: "row" }, this.#next, starts, ends, beat, this.#clear);
    const about = { class: "loop", role: "group", "aria-label": say.loop, hidden: "" };
    this.node = make("div", about, this.#is, row);
  }

  /** @param {FullPlay | undefined} play another set or line, or none */
  take(play) {
    this.#play = play;
    if (this.#listening) this.#set(undefined);
  }

  begin() {
    const { signal } = (this.#listening = new AbortController());
    const { frame } = this.#ask;
    this.#ask.frame = (by) => this.#frame(by, frame);
    signal.addEventListener("abort", () => (this.#ask.frame = frame));
    const root = this.#host.shadowRoot;
    root?.querySelector(".strip")?.after(this.#rail);
    root?.addEventListener("keydown", (event) => this.#onKey(event), { signal });
    for (const [key, node] of Object.entries(this.#setters)) {
      if (acts(key, this.#host)) node.setAttribute("aria-keyshortcuts", key);
      else node.removeAttribute("aria-keyshortcuts");
    }
    this.#beat();
  }

  end() {
    this.#listening?.abort();
    this.#listening = undefined;
    this.#set(undefined);
    this.#rail.remove();
  }

  /** @param {State} state */
  update({ stepwise }) {
    if (stepwise === this.#stepwise) return;
    this.#stepwise = stepwise;
    this.#tell();
  }

  instant() {}

  /** The beat that is on. */
  #beat() {
    const { beat, duration } = this.#host;
    const starts = this.#play?.beatStarts ?? [];
    this.#set({ from: starts[beat - 1] ?? 0, to: starts[beat] ?? duration });
  }

  /** Brings one end to `time`; the other gives way. @param {End} end @param {number} time */
  #move(end, time) {
    const { duration } = this.#host;
    const { from, to } = this.#stretch ?? { from: 0, to: duration };
    if (end === "from") {
      const at = Math.max(0, Math.min(time, duration - LEAST));
      this.#set({ from: at, to: Math.max(to, at + LEAST) });
    } else {
      const at = Math.min(duration, Math.max(time, LEAST));
      this.#set({ from: Math.min(from, at - LEAST), to: at });
    }
  }

  /** @param {{ from: number, to: number } | undefined} stretch */
  #set(stretch) {
    this.#stretch = stretch;
    if (stretch) {
      keepTo(this.#host, stretch.from, stretch.to, true);
      this.#place(stretch);
    } else leaveRange(this.#host);
    this.#tell();
  }

  /** Says which stretch it is. */
  #tell() {
    const stretch = this.#stretch;
    const { say } = this.#ask;
    this.#clear.disabled = !stretch;
    this.#rail.hidden = !stretch;
    this.#next.hidden = !stretch || !this.#stepwise;
    const told = this.#stepwise ? say.steppedRound : say.looped;
    write(this.#is, stretch ? told(stretch) : say.nothingLooped);
  }

  /** A frame on or back, round the stretch for who is in it. @param {number} by @param {(by: number) => void} frame without a stretch */
  #frame(by, frame) {
    const { from, to } = this.#stretch ?? { from: Infinity, to: 0 };
    const isIn = (/** @type {number} */ time) => time > from - SAME && time < to + SAME;
    const { currentTime } = this.#host;
    if (!isIn(currentTime) || isIn(currentTime + by * FRAME)) return frame(by);
    this.#host.pause();
    this.#host.currentTime = by > 0 ? from : to;
  }

  /** Shows a picture of the stretch some time later, its last one after that, then its first. */
  #picture() {
    if (!this.#stretch) return;
    const { from, to } = this.#stretch;
    const { currentTime, duration } = this.#host;
    const last = to < duration ? to - SAME : to;
    const isIn = currentTime > from - SAME && currentTime < last;
    this.#host.currentTime = isIn ? Math.min(currentTime + PICTURE, last) : from;
  }

  /** Puts bar and handles where they belong. @param {{ from: number, to: number }} stretch */
  #place({ from, to }) {
    const { duration } = this.#host;
    const [left = 0, right = WIDTH] = this.#play?.stripGeometry(WIDTH, 0, false) ?? [];
    const x = (/** @type {number} */ t) =>
      `calc(${left}px + (100% - ${left + WIDTH - right}px) * ${t / duration})`;
    for (const end of /** @type {End[]} */ (["from", "to"])) {
      const handle = this.#handles[end];
      const t = { from, to }[end];
      handle.style.setProperty("left", x(t));
      handle.setAttribute("aria-valuemin", "0");
      handle.setAttribute("aria-valuemax", duration.toFixed(1));
      handle.setAttribute("aria-valuenow", t.toFixed(1));
      handle.setAttribute("aria-valuetext", this.#ask.say.atSeconds({ t }));
    }
    this.#bar.style.setProperty("left", x(from));
    this.#bar.style.setProperty("right", `calc(100% - ${x(to)})`);
  }

  /** @param {End} end @param {string} name */
  #handle(end, name) {
    const node = make("div", {
      class: `handle ${end}`,
      role: "slider",
      tabindex: "0",
      "aria-label": name,
    });
    node.addEventListener("keydown", (event) => this.#onHandleKey(end, event));
    node.addEventListener("pointerdown", (event) => {
      if (event.button === 0) node.setPointerCapture(event.pointerId);
    });
    node.addEventListener("pointermove", (event) => {
      if (!node.hasPointerCapture(event.pointerId)) return;
      const box = this.#rail.getBoundingClientRect();
      // A page may show the element scaled; the box is what is seen.
      const width = this.#rail.offsetWidth;
      const [left = 0, right = width] = this.#play?.stripGeometry(width, 0, false) ?? [];
      const x = ((event.clientX - box.left) / box.width) * width;
      this.#move(end, ((x - left) / (right - left)) * this.#host.duration);
    });
    return node;
  }

  /** @param {End} end @param {KeyboardEvent} event */
  #onHandleKey(end, event) {
    const does = actOf("loop", pressed(event, this.#host));
    const now = this.#stretch?.[end];
    if (!does || now === undefined) return;
    const { duration } = this.#host;
    const to = {
      earlier: now - HANDLE_STEP,
      later: now + HANDLE_STEP,
      earliest: 0,
      latest: duration,
    };
    // Where it starts and ends is asked for anywhere.
    if (does === "start" || does === "end") return;
    event.preventDefault();
    this.#move(end, to[does]);
  }

  /** @param {Event} event */
  #onKey(event) {
    const does = actOf("loop", pressed(event, this.#host));
    if (does !== "start" && does !== "end") return;
    event.preventDefault();
    this.#move(does === "start" ? "from" : "to", this.#host.currentTime);
  }
}
