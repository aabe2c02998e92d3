/**
 * Plays a film with the set. While both stand, or somebody looks for an instant, the set leads;
 * while they play, the film does: its pictures come when they come, and the set can be drawn for any
 * instant. So the two are never further apart than a picture is long, and where the film waits the
 * set waits too.
 */

import { make } from "../../build.js";
import { FRAME } from "../../names.js";

/** @import { BackcutSet } from "../../element.js" */
/** @import { FullPlay } from "../../load.js" */
/** @import { Commands } from "../../reader.js" */

/** The set goes on so far past the film's last picture, seconds, though no new one came. */
const AHEAD = FRAME * 0.9;
/** A film is sought a little behind the start of a picture, seconds: its times are rounded. */
const INSIDE = 0.001;
/** A picture so far behind where the film is, seconds, is one from before a jump. */
const STRAY = 0.5;
/** A picture so far ahead of it, seconds at the film's own speed, is not due: a busy Firefox tells of some, 0.3 ahead. */
const NOT_DUE = 0.1;
/** A set that did not ask for so long, milliseconds, is not seen or held by a finger. */
const PATIENCE_MS = 500;
/** What browsers play at, times the film's own speed. From memory. */
const [SLOWEST, FASTEST] = [0.0625, 16];

/**
 * What the projector tells.
 *
 * @typedef {object} Told
 * @property {() => void} opened there is a film, and its length is known
 * @property {() => void} moved it is at another instant
 * @property {() => void} ran it played to its end, which the set has not reached
 * @property {() => void} failed it cannot be played
 */

export class Projector {
  video = make("video", { playsinline: "", preload: "auto" });
  #host;
  #ask;
  #told;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  /** The picture that is shown: its instant of the film, and since when. */
  #shown = { film: 0, at: 0 };
  /** Whether it was sought and has not told that it is there: until then what it shows is from before. */
  #arriving = false;
  /** Where it is sought next, once it is where it was sought last. */
  #next = /** @type {number | undefined} */ (undefined);
  /** Where it was sought last, as long as nothing moved since. */
  #sought = /** @type {number | undefined} */ (undefined);
  #alone = false;
  /** Whether it is to play: what differs from that was done by the reader, in the browser's own window. */
  #plays = false;
  /** When the set last asked, milliseconds. */
  #asked = 0;
  #watching = 0;
  #listening = /** @type {AbortController | undefined} */ (undefined);

  /** @param {BackcutSet} host @param {Commands} ask @param {Told} told */
  constructor(host, ask, told) {
    this.#host = host;
    this.#ask = ask;
    this.#told = told;
    this.video.muted = true;
  }

  /** Whether there is a film. */
  get ready() {
    return this.video.readyState > 0;
  }

  /** How long it is, seconds; of one that does not say, as long as it is known to be. */
  get length() {
    const { duration, seekable } = this.video;
    if (Number.isFinite(duration)) return duration;
    return seekable.length > 0 ? seekable.end(seekable.length - 1) : 0;
  }

  /** The film's instant, seconds. */
  get time() {
    return this.#sought ?? this.video.currentTime;
  }

  /** Whether it is moved without the set. */
  get alone() {
    return this.#alone;
  }

  set alone(on) {
    this.#alone = on;
    this.#stop();
    this.align();
  }

  /** @param {FullPlay | undefined} play */
  take(play) {
    this.#play = play;
    this.align();
  }

  begin() {
    const { video } = this;
    this.#listening = new AbortController();
    const by = { signal: this.#listening.signal };
    const on = (
      /** @type {EventTarget} */ target,
      /** @type {string} */ name,
      /** @type {() => void} */ act,
    ) => target.addEventListener(name, act, by);
    on(this.#host, "pause", () => {
      this.#stop();
      this.align();
    });
    on(this.#host, "seeked", () => {
      // Where both play it goes on as soon as the set asks.
      this.#stop();
      this.align();
    });
    on(video, "loadedmetadata", () => {
      this.#forget();
      this.#told.opened();
      this.align();
    });
    on(video, "seeked", () => this.#arrived());
    on(video, "timeupdate", () => {
      if (this.#plays && performance.now() - this.#asked > PATIENCE_MS) this.#stop();
    });
    on(video, "pause", () => {
      if (this.#plays && video.paused && !video.ended) this.#host.pause();
    });
    on(video, "play", () => {
      if (!this.#plays && !video.paused && !this.#alone) this.#host.play().catch(() => {});
    });
    on(video, "ended", () => this.#ran());
    on(video, "error", () => this.#told.failed());
    this.#ask.lead(this.#lead);
    this.#watch();
    this.align();
  }

  end() {
    this.#listening?.abort();
    this.#ask.lead(() => undefined);
    this.#stop();
    this.#forget();
    if (this.#watching) this.video.cancelVideoFrameCallback(this.#watching);
    this.#watching = 0;
  }

  /** Brings the film to where the set is. */
  align() {
    if (!this.#alone && this.#play) this.seek(this.#play.filmAt(this.#host.currentTime));
  }

  /** Brings the film alone somewhere. @param {number} film seconds; outside the film its nearer end is meant */
  seek(film) {
    const { video } = this;
    if (!this.ready) return;
    const at = Math.max(0, Math.min(film, video.duration || film));
    this.#sought = at;
    if (this.#arriving || video.seeking) this.#next = at;
    else if (Math.abs(video.currentTime - at - INSIDE) > INSIDE / 2) this.#go(at);
    this.#told.moved();
  }

  /** @param {number} film */
  #go(film) {
    this.#arriving = true;
    this.video.currentTime = film + INSIDE;
  }

  #arrived() {
    const { video } = this;
    // The reader may have sought again, in the browser's own window.
    if (video.seeking) return;
    const next = this.#next;
    this.#forget();
    if (next !== undefined) this.#go(next);
    else this.#shown = { film: this.time, at: performance.now() };
  }

  /** A film that is loaded anew or put away tells of no earlier seek. */
  #forget() {
    this.#arriving = false;
    this.#next = undefined;
  }

  /** The set's instant, as the film has it. @param {number} pace times the chosen speed */
  #lead = (pace) => {
    const { video } = this;
    const play = this.#play;
    const t = this.#host.currentTime;
    const now = performance.now();
    this.#asked = now;
    // That it has ended is told in a moment, and then it is decided how to go on.
    if (this.#plays && video.ended) return t;
    if (!play || !this.#covers(play.filmAt(t))) {
      this.#stop();
      return undefined;
    }
    const rate = this.#host.playbackRate * pace * play.filmRate(t);
    const bounded = rate > 0 ? Math.max(SLOWEST, Math.min(rate, FASTEST)) : 0;
    if (video.playbackRate !== bounded) video.playbackRate = bounded;
    if (!this.#plays || video.paused) this.#start();
    if (this.#arriving || video.seeking) return t;
    if (!this.#watching) this.#shown = { film: video.currentTime, at: now };
    const { film, at } = this.#shown;
    const since = Math.max(0, now - at) / 1000;
    // A film that went on past the set's end between two looks has the set end, or begin, no later.
    const most = Math.min(play.setAt(film) + AHEAD, play.duration);
    return Math.max(t, Math.min(play.setAt(film + since * bounded), most));
  };

  /** Whether there is film at that instant. @param {number} film */
  #covers(film) {
    const { video } = this;
    const within = film > -FRAME / 2 && film < (video.duration || 0);
    return this.ready && !this.#alone && within && !video.ended;
  }

  #start() {
    const { video } = this;
    this.#plays = true;
    this.#sought = undefined;
    video.play().catch((reason) => {
      if (reason.name === "AbortError" || !this.#plays) return;
      // A browser may let no film be heard that nobody asked to hear.
      if (!video.muted) video.muted = true;
      else this.#host.pause();
    });
  }

  #stop() {
    this.#plays = false;
    if (!this.video.paused) this.video.pause();
  }

  #ran() {
    if (!this.#plays) return;
    this.#stop();
    if (this.#host.loop) this.#host.currentTime = 0;
    else {
      this.#host.pause();
      this.#told.ran();
    }
  }

  /** Keeps in mind which picture is shown, where the browser tells. */
  #watch() {
    const { video } = this;
    if (!("requestVideoFrameCallback" in video)) return;
    this.#watching = video.requestVideoFrameCallback((_, { mediaTime, expectedDisplayTime }) => {
      const ahead = mediaTime - video.currentTime;
      const early = ahead > NOT_DUE * Math.max(1, video.playbackRate);
      const stray = this.#arriving || video.seeking || early || ahead < -STRAY;
      if (!stray) this.#shown = { film: mediaTime, at: expectedDisplayTime };
      if (this.#plays) this.#told.moved();
      this.#watch();
    });
  }
}
