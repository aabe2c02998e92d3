/**
 * Loop: any stretch of the set, over and over. It lies on a rail under the strip, with a handle at
 * each end.
 */

import { button, make, write } from "../build.js";
import { ATTRIBUTE } from "../names.js";
import { NO_CHARACTERS } from "../keys.js";
import { keepTo, leaveRange } from "../shown.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay } from "../load.js" */
/** @import { Commands } from "../commands.js" */

/** Keys for the two ends: where it starts, where it ends. */
const KEYS = { from: "s", to: "e" };
/** The shortest stretch, seconds. */
const LEAST = 0.2;
/** What an arrow key moves a handle by, seconds. */
const STEP = 0.1;
/** Width that the strip is asked for, pixels: its margins are the same at any. */
const WIDTH = 1000;

/** @typedef {"from" | "to"} End */

export class Loop {
  #host;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  #stretch = /** @type {{ from: number, to: number } | undefined} */ (undefined);
  #listening = /** @type {AbortController | undefined} */ (undefined);
  #is = make("p", { class: "why", role: "status" });
  #bar = make("div", { class: "bar" });
  #say;
  #clear;
  #handles;
  #rail;
  node;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, { say }) {
    this.#host = host;
    this.#say = say;
    const setter = (/** @type {End} */ end, /** @type {string} */ word) =>
      button(
        { class: "cell word", "aria-keyshortcuts": KEYS[end] },
        () => this.#move(end, host.currentTime),
        word,
      );
    this.#clear = button({ class: "cell word" }, () => this.#set(undefined), say.loopClear);
    this.#handles = {
      from: this.#handle("from", say.loopStarts),
      to: this.#handle("to", say.loopEnds),
    };
    const { from, to } = this.#handles;
    this.#rail = make("div", { class: "rail", hidden: "" }, this.#bar, from, to);
    const row = make(
      "div",
      { class: "row" },
      setter("from", say.loopFrom),
      setter("to", say.loopTo),
      button({ class: "cell word" }, () => this.#beat(), say.loopBeat),
      this.#clear,
    );
    const about = { class: "loop", role: "group", "aria-label": say.loop, hidden: "" };
    this.node = make("div", about, this.#is, row);
  }

  /** @param {FullPlay | undefined} play */
  take(play) {
    this.#play = play;
    if (this.#listening) this.#set(undefined);
  }

  begin() {
    const { signal } = (this.#listening = new AbortController());
    const root = this.#host.shadowRoot;
    root?.querySelector(".strip")?.after(this.#rail);
    root?.addEventListener("keydown", (event) => this.#onKey(event), { signal });
    this.#beat();
  }

  end() {
    this.#listening?.abort();
    this.#listening = undefined;
    this.#set(undefined);
    this.#rail.remove();
  }

  update() {}

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
    const at = Math.min(Math.max(time, 0), duration);
    const { from, to } = this.#stretch ?? { from: 0, to: duration };
    this.#set(
      end === "from"
        ? {
            from: Math.min(at, duration - LEAST),
            to: Math.max(to, Math.min(at, duration - LEAST) + LEAST),
          }
        : { from: Math.min(from, Math.max(at, LEAST) - LEAST), to: Math.max(at, LEAST) },
    );
  }

  /** @param {{ from: number, to: number } | undefined} stretch */
  #set(stretch) {
    this.#stretch = stretch;
    this.#clear.disabled = !stretch;
    this.#rail.hidden = !stretch;
    if (!stretch) {
      leaveRange(this.#host);
      write(this.#is, this.#say.nothingLooped);
      return;
    }
    const { from, to } = stretch;
    keepTo(this.#host, from, to, true);
    write(this.#is, this.#say.looped({ from, to }));
    this.#place(stretch);
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
      handle.setAttribute("aria-valuetext", this.#say.atSeconds({ t }));
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
    node.addEventListener("keydown", (event) => {
      const by = { ArrowLeft: -STEP, ArrowDown: -STEP, ArrowRight: STEP, ArrowUp: STEP }[event.key];
      if (by === undefined || !this.#stretch) return;
      event.preventDefault();
      this.#move(end, this.#stretch[end] + by);
    });
    node.addEventListener("pointerdown", (event) => {
      if (event.button === 0) node.setPointerCapture(event.pointerId);
    });
    node.addEventListener("pointermove", (event) => {
      if (!node.hasPointerCapture(event.pointerId)) return;
      const box = this.#rail.getBoundingClientRect();
      const [left = 0, right = box.width] = this.#play?.stripGeometry(box.width, 0, false) ?? [];
      this.#move(end, ((event.clientX - box.left - left) / (right - left)) * this.#host.duration);
    });
    return node;
  }

  /** @param {Event} event */
  #onKey(event) {
    if (!(event instanceof KeyboardEvent) || event.altKey || event.ctrlKey || event.metaKey) return;
    if (this.#host.getAttribute(ATTRIBUTE.keys) === NO_CHARACTERS) return;
    const target = event.composedPath()[0];
    if (target instanceof Element && target.matches("input,textarea,select")) return;
    for (const end of /** @type {End[]} */ (["from", "to"])) {
      if (event.key.toLowerCase() === KEYS[end]) this.#move(end, this.#host.currentTime);
    }
  }
}
