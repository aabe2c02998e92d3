/**
 * What plays: time, speed and state, without a page. The element asks and is told; it never keeps
 * a time of its own. Words and order of events are the media element's (WHATWG HTML).
 */

/** @import { EventName } from "./names.js" */

/** Seconds between two `timeupdate`s while playing; the standard allows 0.015 to 0.25. */
const UPDATE = 0.1;
/** Backward from a beat's start by less than this goes to the beat before, seconds. */
const JUST_STARTED = 0.4;
/** The last picture of a beat lies so far before the next beat, seconds. */
const BEFORE_NEXT = 0.001;

/** What is no number is refused, as where the Web's interfaces ask for one. @param {number} value */
function finite(value) {
  if (!Number.isFinite(value)) throw new TypeError(`no number: ${value}`);
  return value;
}

export class Player {
  /** Starts again at the end. */
  loop = false;
  /** Cuts from beat to beat and never moves by itself. */
  stepwise = false;
  /**
   * Tells the time while it plays, where that is not the reader's clock, from how many times the
   * chosen speed is due.
   *
   * @type {(pace: number) => number | undefined}
   */
  lead = () => undefined;

  /** Times the chosen speed at a time, for stretches that are shown slowly. @type {(time: number) => number} */
  pace = () => 1;

  #emit;
  #starts = /** @type {readonly number[]} */ ([0]);
  #duration = NaN;
  #time = 0;
  #rate = 1;
  #paused = true;
  #sinceUpdate = 0;
  /** Calls of `play` that came before the set did. */
  #waiting = /** @type {{ resolve: () => void, reject: (reason: unknown) => void }[]} */ ([]);

  /** @param {(name: EventName) => void} emit */
  constructor(emit) {
    this.#emit = emit;
  }

  /** Whether a set is open. */
  get ready() {
    return !Number.isNaN(this.#duration);
  }

  /** Seconds; NaN before the set is there. */
  get duration() {
    return this.#duration;
  }

  get paused() {
    return this.#paused;
  }

  get ended() {
    return this.ready && this.#time >= this.#duration && !this.loop;
  }

  get time() {
    return this.#time;
  }

  get rate() {
    return this.#rate;
  }

  set rate(value) {
    if (finite(value) < 0) throw new DOMException(`no speed: ${value}`, "NotSupportedError");
    if (value === this.#rate) return;
    this.#rate = value;
    this.#emit("ratechange");
  }

  /** The beat that is on, counted from 0. */
  get beat() {
    return Math.max(
      0,
      this.#starts.findLastIndex((start) => start <= this.#time),
    );
  }

  /** When a beat starts, counted from 0; the end for one that is not there. @param {number} beat */
  startOf(beat) {
    return this.#starts[beat] ?? this.#duration;
  }

  /** How many beats there are. */
  get beats() {
    return this.#starts.length;
  }

  /**
   * A set is there. What was asked for before is done now.
   *
   * @param {number} duration
   * @param {ArrayLike<number>} starts when each beat starts, seconds
   */
  open(duration, starts) {
    this.#duration = duration;
    this.#starts = starts.length > 0 ? Array.from(starts) : [0];
    this.#time = Math.min(this.#time, duration);
    if (this.stepwise && this.#time === 0) this.#time = this.#lastPicture(0);
    this.#emit("loadedmetadata");
    if (this.stepwise && !this.#paused) {
      this.#paused = true;
      this.#start();
    }
    for (const { resolve } of this.#waiting.splice(0)) resolve();
  }

  /**
   * The set is gone, or never came.
   *
   * @param {Error} [reason] why, for those who wait for it to play
   */
  close(reason = new DOMException("The set was taken away.", "AbortError")) {
    this.#duration = NaN;
    this.#paused = true;
    for (const { reject } of this.#waiting.splice(0)) reject(reason);
  }

  /** Plays, from the beginning where the end is reached. @returns {Promise<void>} */
  play() {
    if (this.ready) {
      this.#start();
      return Promise.resolve();
    }
    if (this.#paused) {
      this.#paused = false;
      this.#emit("play");
    }
    return new Promise((resolve, reject) => this.#waiting.push({ resolve, reject }));
  }

  pause() {
    const reason = new DOMException("Paused before the set was there.", "AbortError");
    for (const { reject } of this.#waiting.splice(0)) reject(reason);
    if (this.#paused) return;
    this.#paused = true;
    this.#emit("timeupdate");
    this.#emit("pause");
  }

  /** @param {number} time seconds; outside the set its nearer end is meant */
  seek(time) {
    this.#time = Math.max(0, Math.min(finite(time), this.ready ? this.#duration : time));
    if (!this.ready) return;
    this.#emit("seeking");
    this.#emit("timeupdate");
    this.#emit("seeked");
  }

  /** To a later or earlier beat, by whole beats. @param {number} by */
  step(by) {
    if (this.stepwise) return this.seek(this.#lastPicture(this.beat + by));
    if (by > 0) return this.seek(this.startOf(this.beat + by));
    const start = this.startOf(this.beat);
    const back = this.#time - start < JUST_STARTED ? this.beat + by : this.beat + by + 1;
    this.seek(this.startOf(Math.max(0, back)));
  }

  /**
   * Lets time pass.
   *
   * @param {number} seconds of the reader's clock
   */
  advance(seconds) {
    if (this.#paused || !this.ready) return;
    const pace = this.pace(this.#time);
    this.#time = this.lead(pace) ?? this.#time + seconds * this.#rate * pace;
    if (this.#time >= this.#duration) {
      if (this.loop && this.#duration > 0) {
        this.#time %= this.#duration;
        this.#emit("seeking");
        this.#emit("seeked");
      } else {
        this.#finish();
        return;
      }
    }
    this.#sinceUpdate += seconds;
    if (this.#sinceUpdate >= UPDATE) {
      this.#sinceUpdate = 0;
      this.#emit("timeupdate");
    }
  }

  #start() {
    if (this.stepwise) {
      this.seek(this.#lastPicture(this.ended ? 0 : this.beat + 1));
      return;
    }
    if (this.ended) this.seek(0);
    if (!this.#paused) return;
    this.#paused = false;
    this.#sinceUpdate = 0;
    this.#emit("play");
  }

  #finish() {
    this.#time = this.#duration;
    this.pause();
    this.#emit("ended");
  }

  /** @param {number} beat */
  #lastPicture(beat) {
    const next = this.#starts[Math.max(0, beat) + 1];
    return next === undefined ? this.#duration : Math.max(0, next - BEFORE_NEXT);
  }
}
