/**
 * The custom element: its life in the page, its attributes, its events.
 */

import { commandsOf } from "./commands.js";
import { SetError } from "./fault.js";
import { Frames } from "./frames.js";
import { whenIdle, withResolvers } from "./later.js";
import { loadFull, loadLate } from "./load.js";
import { loadSet } from "./loading.js";
import { run, stop, unwatch, watch } from "./loop.js";
import { maskOf } from "./mask.js";
import { ATTRIBUTE, DEFENDED, EVENT } from "./names.js";
import { Opened } from "./opened.js";
import { Player } from "./player.js";
import { Reader } from "./reader.js";
import { Reflected } from "./reflected.js";
import { listen } from "./surroundings.js";
import { styles } from "./styles.js";
import { isTold } from "./told.js";

/** @import { Finding, Look, Module } from "./load.js" */
/** @import { EventName } from "./names.js" */

/** @import { FrameCallback } from "./frames.js" */
/** @import { Listener } from "./surroundings.js" */

/** So long what was taken out of the page may come back without loading anew, milliseconds. */
const GRACE_MS = 50;

/**
 * One set, playing.
 *
 * @attr {string} src - address of the set file; without it, a JSON script child is read
 * @attr {string} loading - `lazy`: the set is asked for once it comes near the window
 * @attr {string} poster - address of a picture that stands for the court until the set is there
 * @attr {boolean} autoplay - plays by itself once half of it is seen
 * @attr {boolean} loop - starts again at the end
 * @attr {string} court - rule set to show it on
 * @attr {string} level - level of the athletes
 * @attr {boolean} mirrored - left and right change places
 * @attr {string} follow - the followed players, as `3` or `1 4`
 * @attr {string} coverage - the defence, by its name in a set file; without it nobody defends
 * @attr {string} read - the read that is made: `2`, or `2.1` for the first one within it; `defended`
 *     leaves it to the defence
 * @attr {boolean} notes - what was found is flagged and listed
 * @attr {string} film - address of a film of the set, which plays beside it when the reader wants that
 * @attr {string} sync - sets of the page with the same word share one clock
 * @attr {string} share - address of a page that opens links, in place of the package's frame page
 * @attr {string} keys - `no-characters` where letters, digits and marks shall be no keys
 * @attr {string} units - `metres` or `feet`, in place of what the court's rule book measures in
 * @attr {string} theme - `light` or `dark`
 * @cssprop {length} --backcut-room - [100svh] the height that the whole reader should not outgrow
 * @slot - the first child stands for the court until the set is there: a picture, or a link to the
 *     file; the rest is for where there is no script, or no set: the beats in words
 */
export class BackcutSet extends Reflected {
  static observedAttributes = Object.values(ATTRIBUTE);

  #player = new Player((name) => this.#onPlayer(name));
  #ask;
  #reader;
  #opened = new Opened();
  #error = /** @type {SetError | null} */ (null);
  #ready = withResolvers();
  /** Ends the last load, if that is still under way. */
  #loading = /** @type {AbortController | undefined} */ (undefined);
  /** Ends what listens to the page. */
  #listening = /** @type {AbortController | undefined} */ (undefined);
  #releasing = 0;
  #near = false;
  #seen = false;
  #halfSeen = false;
  #scrubbing = false;
  /** Whether something changed while nobody saw it. */
  #stale = false;
  #started = false;
  #frames = new Frames();

  constructor() {
    super();
    const root = this.attachShadow({ mode: "open" });
    root.adoptedStyleSheets = [styles()];
    const ask = (this.#ask = commandsOf(this, {
      player: this.#player,
      reader: () => this.#reader,
      paint: (act) => this.#guarded(act),
      attempt: (act) => this.#attempt(act),
      scrub: (on) => {
        this.#scrubbing = on;
        this.#settle();
      },
      judge: () => this.#judge(),
      goFull: () => this.#goFull(),
      revoice: () => this.#revoice(),
    }));
    this.#reader = new Reader(this, this.#player, ask);
    root.append(this.#reader.node);
    root.addEventListener("keydown", (event) => ask.key(event));
  }

  // -- life ---------------------------------------------------------------------------------

  connectedCallback() {
    clearTimeout(this.#releasing);
    this.#ask.hear();
    // Who listens still was only moved.
    if (this.#listening) return this.#settle();
    this.#listening = new AbortController();
    // First of all: on a phone what it asks for is long on its way.
    this.#reload();
    this.#listen(this.#listening.signal);
    watch(this, {
      onNear: (near) => {
        this.#near = near;
        if (!near) {
          this.#reader.rest();
          this.#stale = true;
        } else if (this.loading === "lazy" && !this.readyState) this.#load();
        this.#settle();
      },
      onSeen: (any, half) => {
        this.#seen = any;
        this.#halfSeen = half;
        this.#settle();
        this.#startBySelf();
      },
      onSize: () => this.#guarded(() => this.#reader.resize()),
    });
    // Before it is first painted: on a phone all stands otherwise, and would move.
    this.#reader.resize();
  }

  /** Moved within the page by `moveBefore`: nothing to do, and nothing is lost. */
  connectedMoveCallback() {}

  disconnectedCallback() {
    stop(this.#tick);
    this.#releasing = setTimeout(() => this.#release(), GRACE_MS);
  }

  /** @param {string} name @param {string | null} before @param {string | null} now */
  attributeChangedCallback(name, before, now) {
    if (before === now) return;
    switch (name) {
      case ATTRIBUTE.src:
        this.#player.close();
        this.#player.seek(0);
        this.#reload();
        break;
      case ATTRIBUTE.loading:
        if (!this.readyState) this.#reload();
        break;
      case ATTRIBUTE.court:
      case ATTRIBUTE.level:
      case ATTRIBUTE.mirrored:
      case ATTRIBUTE.read:
        this.#reload();
        break;
      case ATTRIBUTE.poster:
        this.#reader.poster = now;
        break;
      case ATTRIBUTE.loop:
        this.#player.loop = now !== null;
        break;
      case ATTRIBUTE.follow:
        this.#reader.follow = maskOf(now);
        this.#guarded(() => this.#reader.update());
        break;
      case ATTRIBUTE.coverage:
      case ATTRIBUTE.notes:
        this.#judge();
        // Another defence may lead to another line.
        if (name === ATTRIBUTE.coverage && this.read === DEFENDED) this.#reload();
        break;
      case ATTRIBUTE.theme:
        this.#guarded(() => this.#reader.recolour());
        break;
      case ATTRIBUTE.autoplay:
        this.#startBySelf();
        break;
    }
  }

  // -- what a page can ask for ----------------------------------------------------------------

  /** The beat that is on, counted from 1 as people count. Setting it seeks to its start. */
  get beat() {
    return this.#player.beat + 1;
  }
  set beat(value) {
    this.#player.seek(this.#player.startOf(value - 1));
  }

  /** The chances against the defence on the floor; null before that is there. @returns {Look[] | null} */
  get looks() {
    const { play } = this.#opened;
    return play && "looks" in play && this.coverage ? play.looks : null;
  }

  /** What was found; null before that is known. @returns {Finding[] | null} */
  get findings() {
    const { play } = this.#opened;
    return play && "findings" in play && this.notes ? play.findings : null;
  }

  /** Seconds. Setting it seeks at once and exactly. */
  get currentTime() {
    return this.#player.time;
  }
  set currentTime(value) {
    this.#player.seek(value);
  }

  /** Seconds; NaN before the set is there. */
  get duration() {
    return this.#player.duration;
  }
  /** Whether it stands; so it does before it is played. */
  get paused() {
    return this.#player.paused;
  }
  /** Whether it stands at its end. */
  get ended() {
    return this.#player.ended;
  }

  /** Whether it is on its way to another time; that takes none, so never. */
  get seeking() {
    return false;
  }

  /** 1 is the speed of a game. */
  get playbackRate() {
    return this.#player.rate;
  }
  set playbackRate(value) {
    this.#player.rate = value;
  }

  /** 0 before the set is there, 4 (have enough data) from then on. */
  get readyState() {
    return this.#player.ready ? 4 : 0;
  }

  /** Why there is no set, or null. */
  get error() {
    return this.#error;
  }

  /** Settles when the set is there, or cannot be. @returns {Promise<void>} */
  get ready() {
    return this.#ready.promise;
  }

  /** Plays, now or as soon as the set is there. @returns {Promise<void>} */
  play() {
    if (this.#error) return Promise.reject(this.#error);
    return this.#player.play();
  }

  /**
   * Has `callback` called once the next picture is drawn, with the time of the page and
   * `{ mediaTime }`, the seconds that it shows. Words of the WICG's draft for video elements.
   *
   * @param {FrameCallback} callback
   * @returns {number} by which it is cancelled
   */
  requestVideoFrameCallback(callback) {
    return this.#frames.request(callback);
  }

  /** Takes that back. @param {number} asked */
  cancelVideoFrameCallback(asked) {
    this.#frames.cancel(asked);
  }

  /** Stops it where it is. */
  pause() {
    this.#player.pause();
  }

  /**
   * The instant that is shown as numbers: `t`, the ball's `x y z` and holder, then five times
   * `present x y facing speed`; metres and radians. Valid until the next call; null without a set.
   *
   * @returns {Float32Array | null}
   */
  get frame() {
    return this.#opened.frame(this.#player.time);
  }

  // -- loading --------------------------------------------------------------------------------

  /**
   * Loads the set, or loads it again; one that is lazy, once somebody is near. Attributes that are
   * there from the start do not count as a change.
   */
  #reload() {
    const due = this.#near || this.loading !== "lazy" || this.readyState > 0;
    if (this.#listening && this.isConnected && due) this.#load();
  }

  #load() {
    if (this.#error) {
      this.#error = null;
      this.#ready = withResolvers();
    }
    this.#loading?.abort();
    this.#loading = new AbortController();
    loadSet(
      this,
      this.#loading.signal,
      () => this.#reader.wait(),
      (module) => (this.#opened.module ??= module),
      (module, bytes) => this.#open(module, bytes),
      (reason) => this.#fail(reason),
    );
  }

  /** @param {Module} module @param {Uint8Array} bytes */
  #open(module, bytes) {
    const play = this.#show(module, bytes);
    this.#player.open(play.duration, play.beatStarts);
    this.#ready.resolve();
    this.#startBySelf();
    whenIdle(async () => {
      this.#reader.early = false;
      this.#guarded(() => this.#reader.complete());
      // Without it the set plays as well.
      const late = await loadLate().catch(() => undefined);
      if (late) {
        this.#attempt(() => this.#reader.refine(late));
        late.attend(this, this.#ask, this.#listening?.signal);
      }
      this.#guarded(() => this.#reader.recolour());
      if (this.#opened.play !== play) return;
      if (!isTold(play) || this.#judging || this.#ask.voice) this.#goFull();
    });
  }

  /** @param {Module} module @param {Uint8Array} bytes */
  #show(module, bytes) {
    const play = this.#opened.open(module, bytes, this);
    this.#askJudging();
    this.#reader.show(module, play);
    this.#guarded(() => this.#reader.layout());
    return play;
  }

  get #judging() {
    return this.coverage !== "" || this.read !== "" || this.notes || this.#reader.timing;
  }

  /** Has the set judged as attributes and reader ask; false where that takes the full module. */
  #askJudging() {
    return this.#opened.judge(this, this.#reader.timing);
  }

  /** Another defence is asked for, or notes are. */
  #judge() {
    // What was asked for before may be why there is no set.
    if (this.#error) return this.#reload();
    if (!this.#opened.play) return;
    this.#attempt(() => {
      if (this.#askJudging()) this.#guarded(() => this.#reader.judged());
      else if (this.#judging) this.#goFull();
    });
  }

  /** Goes on with the full module; the instant is kept. Without it the set plays on as it is. */
  async #goFull() {
    const { file } = this.#opened;
    const full = await loadFull().catch(() => undefined);
    if (!full || !file || file !== this.#opened.file || full === this.#opened.module) return;
    // The line that a read takes has a length of its own.
    this.#attempt(() => (this.read ? this.#open(full, file) : this.#show(full, file)));
  }

  /** Makes what is seen anew. */
  #revoice() {
    const reader = new Reader(this, this.#player, this.#ask);
    const { module, file } = this.#opened;
    this.#attempt(() => {
      reader.replace(this.#reader);
      this.#reader = reader;
      if (this.#error) reader.fail(module, this.#error, this.src);
      else if (module && file) this.#show(module, file);
      else reader.layout();
    });
  }

  /** @param {unknown} reason */
  #fail(reason) {
    const error = (this.#error = SetError.from(reason));
    this.#player.close(error);
    try {
      this.#reader.fail(this.#opened.module, error, this.src);
    } catch {
      // It is said by then; a module that traps paints no empty court.
    }
    this.#opened.close();
    this.#settle();
    this.#ready.reject(error);
    const detail = { faults: error.faults, more: error.more };
    this.dispatchEvent(new CustomEvent(EVENT.error, { detail }));
  }

  #release() {
    this.#loading?.abort();
    this.#listening?.abort();
    this.#listening = undefined;
    unwatch(this);
    this.#near = false;
    this.#player.close();
    this.#attempt(() => {
      this.#reader.release();
      this.#opened.close();
    });
  }

  // -- playing --------------------------------------------------------------------------------

  /** @param {EventName} name */
  #onPlayer(name) {
    // A seek tells three things at once; one look at the last of them is enough.
    if (name === EVENT.seeked) this.#draw(() => this.#reader.instant());
    else if (name !== EVENT.timeupdate && name !== EVENT.seeking) {
      this.#settle();
      this.#guarded(() => this.#reader.update());
    }
    queueMicrotask(() => this.dispatchEvent(new Event(name)));
  }

  /** One animation frame. @param {number} seconds */
  #tick = (seconds) => {
    this.#player.advance(seconds);
    if (!this.#player.paused) this.#draw(() => this.#reader.draw());
  };

  /** @param {() => void} paint a picture of another instant */
  #draw(paint) {
    this.#guarded(paint);
    this.#frames.tell(this.currentTime);
  }

  /** Lets the clock run, or stops it: it runs only where somebody may see it. */
  #settle() {
    const runs = !this.#player.paused && this.#seen && !this.#scrubbing && this.isConnected;
    if (runs) run(this.#tick);
    else stop(this.#tick);
    if (this.#near && this.#stale) this.#guarded(() => this.#reader.layout());
  }

  /** Paints, or keeps in mind that it should. @param {() => void} paint */
  #guarded(paint) {
    this.#stale = !this.#near;
    if (this.#near) this.#attempt(paint);
  }

  /** Asks the module for something; a trap in it shows as a fault. @param {() => void} act */
  #attempt(act) {
    try {
      act();
    } catch (reason) {
      // Said once; what fails after that is but the empty court.
      if (!this.#error) this.#fail(reason);
    }
  }

  #startBySelf() {
    if (this.#started || !this.autoplay || !this.#halfSeen || !this.#player.ready) return;
    this.#started = true;
    if (!this.#player.stepwise) this.#player.play();
  }

  /** Follows what changes around it. @param {AbortSignal} signal */
  #listen(signal) {
    /** @type {Listener} */
    const to = {
      onStill: (still) => {
        this.#player.stepwise = still;
        if (still) this.#player.pause();
        this.#guarded(() => this.#reader.update());
      },
      onFull: (full) => {
        this.#reader.full = full;
        this.#guarded(() => this.#reader.update());
      },
      onColours: () => this.#guarded(() => this.#reader.recolour()),
      onDensity: () => this.#guarded(() => this.#reader.layout()),
      onWindow: () => this.#guarded(() => this.#reader.resize()),
      // Seen or not: it may be on paper.
      onPrint: (on) => this.#attempt(() => this.#reader.print(on ? this.src : undefined)),
    };
    listen(this, to, signal);
  }
}
