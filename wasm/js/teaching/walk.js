/**
 * Walk-through: plays to the next stop and stands there, says why, and shows as ghosts where
 * everybody goes from there.
 */

import { button, make, write } from "../build.js";
import { actOf, pressed } from "../keys.js";
import { LONGEST_STEP } from "../names.js";

/** @import { BackcutSet } from "../element.js" */
/** @import { ModeAct } from "../keys.js" */
/** @import { FullPlay, Stop } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */

/** Nearer than this, two instants are one, seconds. */
const SAME = 0.001;
/** What has its own use for Enter. */
const ENTERED = "button,summary,a";

export class Walk {
  #host;
  #ask;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  #stops = /** @type {readonly Stop[]} */ ([]);
  /** Ends what it listens to; there while it is on. */
  #listening = /** @type {AbortController | undefined} */ (undefined);
  /** The stop that it plays to, one more than there are for the end; none where it stands. */
  #to = /** @type {number | undefined} */ (undefined);
  /** The picture after which it looks whether it is there. */
  #asked = 0;
  /** Where the ghosts stand, seconds. */
  #ghosts = /** @type {number | undefined} */ (undefined);
  /** Whether nothing moves by itself. */
  #stepwise = false;
  #why = make("p", { class: "why", role: "status" });
  #count = make("span", { class: "count" });
  #on;
  #back;
  /** What keys ask for. @type {Record<ModeAct<"walk">, () => void>} */
  #acts;
  node;

  /** @param {BackcutSet} host @param {Commands} ask @param {() => void} leave ends it */
  constructor(host, ask, leave) {
    this.#host = host;
    this.#ask = ask;
    const { say } = ask;
    const cell = (/** @type {string} */ word, /** @type {() => void} */ act) =>
      button({ class: "cell word", "data-word": word }, act, word);
    this.#acts = { goOn: () => this.#goOn(), goBack: () => this.#goBack(), leave };
    this.#on = button({ class: "play" }, this.#acts.goOn, say.goOn);
    this.#back = cell(say.toLastStop, this.#acts.goBack);
    this.node = make(
      "div",
      { class: "walk", role: "group", "aria-label": say.walkThrough, hidden: "" },
      this.#why,
      make(
        "div",
        { class: "row" },
        ...[this.#on, this.#back, this.#count, cell(say.leaveWalk, leave)],
      ),
    );
  }

  /** @param {FullPlay | undefined} play another set or line, or none */
  take(play) {
    this.#rest();
    this.#play = play;
    this.#stops = play?.stops ?? [];
    this.#ghosts = undefined;
    if (this.#listening && play) this.#stand(Math.max(0, this.#last(SAME)));
  }

  begin() {
    const { toggle } = this.#ask;
    const { signal } = (this.#listening = new AbortController());
    this.#ask.toggle = () => (this.#host.paused ? this.#goOn() : this.#host.pause());
    signal.addEventListener("abort", () => (this.#ask.toggle = toggle));
    const root = this.#host.shadowRoot;
    root?.addEventListener("keydown", (event) => this.#onKey(event), { signal });
    const court = root?.querySelector(".court");
    court?.addEventListener("click", (event) => this.#onTap(event), { signal });
    const stood = () => {
      this.#rest();
      this.#say();
    };
    // On the way somebody may go elsewhere.
    const aim = () => {
      if (this.#to !== undefined) this.#to = this.#last(SAME) + 1;
    };
    this.#host.addEventListener("pause", stood, { signal });
    this.#host.addEventListener("seeking", aim, { signal });
    this.#stand(this.#over ? 0 : Math.max(0, this.#last(SAME)));
    this.#on.focus({ preventScroll: true });
  }

  end() {
    this.#listening?.abort();
    this.#listening = undefined;
    this.#rest();
    this.#haunt(undefined);
    this.#paint();
  }

  /** @param {State} state */
  update({ stepwise }) {
    this.#stepwise = stepwise;
  }

  /** Somebody may have gone elsewhere by the strip. @param {State} state */
  instant({ paused }) {
    if (!paused || !this.#listening) return;
    // What is painted by now has the old ghosts.
    if (this.#haunt(this.#timeOf(this.#last(SAME) + 1))) this.#paint();
    this.#say();
  }

  /** The last stop that is not later than now, or `-1`. @param {number} more seconds that do not count */
  #last(more) {
    return this.#stops.findLastIndex(({ t }) => t <= this.#host.currentTime + more);
  }

  /** When a stop is; the end for one that is not there. @param {number} stop */
  #timeOf(stop) {
    return this.#stops[stop]?.t ?? this.#host.duration;
  }

  /** Whether nothing comes any more. */
  get #over() {
    return this.#host.currentTime >= this.#host.duration;
  }

  /** Stands at a stop; at the end for one that is not there. @param {number} stop */
  #stand(stop) {
    this.#rest();
    this.#host.pause();
    this.#haunt(this.#timeOf(stop + 1));
    // Of a set that is about to be shown nobody knows the end yet.
    this.#host.currentTime = this.#timeOf(stop) || 0;
    this.#say();
  }

  /** Plays to the next stop; who asks again on the way is there at once. */
  #goOn() {
    if (this.#over) return this.#stand(0);
    const next = this.#last(SAME) + 1;
    if (this.#stepwise || !this.#host.paused) return this.#stand(next);
    this.#to = next;
    this.#haunt(this.#timeOf(next));
    write(this.#why, "");
    this.#host.play().catch(() => {});
    this.#watch();
  }

  #goBack() {
    this.#stand(Math.max(0, this.#last(-SAME)));
  }

  /** Looks after each picture whether it is there. */
  #watch() {
    if (this.#to === undefined) return;
    const { currentTime, loop, playbackRate } = this.#host;
    // Where the page has the set start again at its end, it would never be seen there.
    const before = loop && this.#to === this.#stops.length ? LONGEST_STEP * playbackRate : 0;
    if (currentTime >= this.#timeOf(this.#to) - before) return this.#stand(this.#to);
    this.#asked = this.#host.requestVideoFrameCallback(() => this.#watch());
  }

  /** It plays to no stop any more. */
  #rest() {
    this.#to = undefined;
    this.#host.cancelVideoFrameCallback(this.#asked);
  }

  /** Has ghosts stand where everybody is then; whether they stood elsewhere. @param {number | undefined} until seconds */
  #haunt(until) {
    if (until === this.#ghosts) return false;
    this.#ghosts = until;
    this.#ask.attempt(() => this.#play?.showGhosts(until));
    return true;
  }

  /** Has this instant painted anew. */
  #paint() {
    this.#host.currentTime += 0;
  }

  /** Says why it stands, where it does. */
  #say() {
    const at = this.#last(SAME);
    const stop = this.#stops[at];
    const here = stop && Math.abs(stop.t - this.#host.currentTime) <= SAME;
    const { say } = this.#ask;
    write(this.#why, this.#over ? say.walkedThrough : here ? stop.text : "");
    write(this.#on, this.#over ? say.againFromStart : say.goOn);
    write(this.#count, say.stopOf({ n: Math.max(0, at) + 1, all: this.#stops.length }));
    this.#back.disabled = this.#last(-SAME) < 0;
  }

  /** @param {Event} event */
  #onKey(event) {
    const key = pressed(event, this.#host);
    if (!key || !(event instanceof KeyboardEvent)) return;
    const target = event.composedPath()[0];
    const isIn = (/** @type {string} */ what) => target instanceof Element && target.closest(what);
    const does = actOf("walk", event.shiftKey ? `Shift+${key}` : key);
    if (!does) return;
    // What is shared is put away first; and a button that is not ours does what it says.
    if (isIn(does === "leave" ? ".sharing" : ENTERED) && target !== this.#on) return;
    event.preventDefault();
    // Who still holds the key has not read the reason.
    if (!event.repeat) this.#acts[does]();
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
