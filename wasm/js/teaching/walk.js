/**
 * Walk-through: plays to the next stop and stands there, says why, and shows as ghosts where
 * everybody goes from there.
 */

import { button, make, write } from "../build.js";
import { paceOf } from "../slow.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay, Stop } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */

/** Nearer than this, two instants are one, seconds. */
const SAME = 0.001;
/** What has its own use for Enter. */
const KEEPS = "button,summary,a,input,textarea,select";

export class Walk {
  #host;
  #ask;
  #leave;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  #stops = /** @type {readonly Stop[]} */ ([]);
  /** Ends what it listens to; there while it is on. */
  #listening = /** @type {AbortController | undefined} */ (undefined);
  /** Where the ghosts stand, seconds. */
  #ghosts = /** @type {number | undefined} */ (undefined);
  #stepwise = false;
  #asked = 0;
  #why = make("p", { class: "why", role: "status" });
  #count = make("span", { class: "count" });
  #on;
  #back;
  #slow;
  node;

  /** @param {BackcutSet} host @param {Commands} ask @param {() => void} leave */
  constructor(host, ask, leave) {
    this.#host = host;
    this.#ask = ask;
    this.#leave = leave;
    const { say } = ask;
    const cell = (/** @type {string} */ word, /** @type {() => void} */ act) =>
      button({ class: "cell word", "data-word": word }, act, word);
    this.#on = button({ class: "play" }, () => this.#goOn(), say.goOn);
    this.#back = cell(say.toLastStop, () => this.#goBack());
    this.#slow = cell(say.slowStretches, () => this.#pace());
    const out = cell(say.leaveWalk, leave);
    this.node = make(
      "div",
      { class: "walk", role: "group", "aria-label": say.walkThrough, hidden: "" },
      this.#why,
      make("div", { class: "row" }, this.#on, this.#back, this.#count, this.#slow, out),
    );
  }

  /** @param {FullPlay | undefined} play */
  take(play) {
    this.#play = play;
    this.#stops = play?.stops ?? [];
    this.#ghosts = undefined;
    this.#slow.hidden = !play?.slowed;
    this.#slow.setAttribute("aria-pressed", "true");
    if (this.#listening && play) this.#stand(Math.max(0, this.#last(SAME)));
  }

  begin() {
    const { toggle } = this.#ask;
    const { signal } = (this.#listening = new AbortController());
    this.#ask.toggle = () => (this.#host.paused ? this.#goOn() : this.#host.pause());
    signal.addEventListener("abort", () => (this.#ask.toggle = toggle));
    const root = this.#host.shadowRoot;
    root?.addEventListener("keydown", (event) => this.#onKey(event), { signal, capture: true });
    const court = root?.querySelector(".court");
    court?.addEventListener("click", (event) => this.#onTap(event), { signal });
    this.#host.addEventListener("ended", () => this.#say(), { signal });
    this.#stand(this.#host.ended ? 0 : Math.max(0, this.#last(SAME)));
    this.#on.focus({ preventScroll: true });
  }

  end() {
    this.#listening?.abort();
    this.#listening = undefined;
    this.#host.cancelVideoFrameCallback(this.#asked);
    this.#haunt(undefined);
    this.#host.currentTime += 0;
  }

  /** @param {State} state */
  update({ stepwise }) {
    this.#stepwise = stepwise;
  }

  /** Somebody may have gone elsewhere by the strip. @param {State} state */
  instant({ paused }) {
    if (!paused || !this.#listening) return;
    // What is painted by now has the old ghosts.
    if (this.#haunt(this.#next()?.t)) this.#host.currentTime += 0;
    this.#say();
  }

  /** The last stop that is not later than now, or `-1`. @param {number} more seconds that do not count */
  #last(more) {
    return this.#stops.findLastIndex(({ t }) => t <= this.#host.currentTime + more);
  }

  #next() {
    return this.#stops[this.#last(SAME) + 1] ?? { t: this.#host.duration };
  }

  /** @param {number} stop */
  #stand(stop) {
    const { t } = this.#stops[stop] ?? { t: 0 };
    this.#host.cancelVideoFrameCallback(this.#asked);
    this.#host.pause();
    this.#haunt(this.#stops[stop + 1]?.t ?? this.#host.duration);
    this.#host.currentTime = t;
    this.#say();
  }

  /** Plays to the next stop; who asks again on the way is there at once. */
  #goOn() {
    if (this.#host.ended) return this.#stand(0);
    const next = this.#last(SAME) + 1;
    const until = this.#stops[next]?.t;
    if (this.#stepwise || !this.#host.paused) {
      if (until !== undefined) return this.#stand(next);
      this.#host.currentTime = this.#host.duration;
      this.#host.pause();
      return this.#say();
    }
    this.#haunt(until ?? this.#host.duration);
    write(this.#why, "");
    this.#host.play().catch(() => {});
    const watch = () => {
      if (until !== undefined && this.#host.currentTime >= until) this.#stand(next);
      else this.#asked = this.#host.requestVideoFrameCallback(watch);
    };
    watch();
  }

  #goBack() {
    this.#stand(Math.max(0, this.#last(-SAME)));
  }

  /** @param {number | undefined} until */
  #haunt(until) {
    if (until === this.#ghosts) return false;
    this.#ghosts = until;
    this.#ask.attempt(() => this.#play?.showGhosts(until));
    return true;
  }

  /** Says why it stands, where it does. */
  #say() {
    const at = this.#last(SAME);
    const stop = this.#stops[at];
    const here = stop && Math.abs(stop.t - this.#host.currentTime) <= SAME;
    const { say } = this.#ask;
    write(this.#why, this.#host.ended ? say.walkedThrough : here ? stop.text : "");
    write(this.#on, this.#host.ended ? say.againFromStart : say.goOn);
    write(this.#count, say.stopOf({ n: Math.max(0, at) + 1, all: this.#stops.length }));
    this.#back.disabled = this.#last(-SAME) < 0;
  }

  #pace() {
    const on = this.#slow.getAttribute("aria-pressed") !== "true";
    this.#slow.setAttribute("aria-pressed", String(on));
    this.#ask.stretch(paceOf(on ? this.#play?.slow : undefined));
  }

  /** @param {Event} event */
  #onKey(event) {
    if (!(event instanceof KeyboardEvent)) return;
    const target = event.composedPath()[0];
    const free = target instanceof Element && !target.matches(KEEPS);
    if (event.key === "Enter" && free) this.#goOn();
    // An open list of keys closes first.
    else if (event.key === "Escape" && !this.#host.shadowRoot?.querySelector("dialog[open]")) {
      this.#leave();
    } else return;
    event.preventDefault();
  }

  /** @param {Event} event */
  #onTap(event) {
    const target = event.composedPath()[0];
    // The close-up has its own use for it.
    if (target instanceof Element && target.closest("button")) return;
    // So that keys act too.
    this.#on.focus({ preventScroll: true });
    this.#goOn();
  }
}
