/**
 * Everything that is seen: the court, the beat, the strip, the controls. It paints what the player
 * says and passes on what the reader asks for.
 */

import { button, make, write } from "./build.js";
import { Caption } from "./controls/caption.js";
import { FaultNote } from "./controls/fault.js";
import { Follow } from "./controls/follow.js";
import { Heading } from "./controls/heading.js";
import { Key } from "./controls/key.js";
import { Speed } from "./controls/speed.js";
import { Strip } from "./controls/strip.js";
import { Transport } from "./controls/transport.js";
import { PART } from "./names.js";
import { paletteOf } from "./palette.js";
import { Surface } from "./surface.js";

/** @import { Palette } from "../pkg/raw/backcut.js" */
/** @import { Module, OpenSet } from "./load.js" */
/** @import { Player } from "./player.js" */
/** @import { SetError } from "./fault.js" */

/**
 * What a reader can ask for.
 *
 * @typedef {object} Commands
 * @property {() => void} toggle plays or pauses
 * @property {(time: number) => void} seek
 * @property {(seconds: number) => void} move
 * @property {(by: number) => void} beat
 * @property {(by: number) => void} frame
 * @property {(rate: number) => void} rate
 * @property {(mask: number) => void} follow bit 0 is player 1; the same again: all
 * @property {() => void} fullScreen
 * @property {() => void} fold
 * @property {(on: boolean) => void} scrub
 */

/**
 * What the controls show.
 *
 * @typedef {object} State
 * @property {number} time
 * @property {number} duration
 * @property {boolean} paused
 * @property {boolean} ended
 * @property {boolean} stepwise
 * @property {number} rate
 * @property {number} beat counted from 0
 * @property {string} beatTitle
 * @property {number} follow
 * @property {number} players who takes part, bits as in `follow`
 * @property {boolean} folded
 * @property {boolean} foldable
 * @property {boolean} full
 * @property {number} bodyScale how much larger than life bodies are drawn
 */

/** Narrower than this, the controls stand as on a phone; CSS pixels inside the reader. */
const NARROW = 600;

export class Reader {
  follow = 0;
  full = false;

  #host;
  #player;
  #module = /** @type {Module | undefined} */ (undefined);
  #play = /** @type {OpenSet | undefined} */ (undefined);
  #palette = /** @type {Palette | undefined} */ (undefined);
  #players = 0b11111;
  #titles = /** @type {string[]} */ ([]);
  #width = 0;
  #narrow = false;
  /** Whether the strip shows all rows though it would rather be folded. */
  #unfolded = false;
  /** The beat and followed players that are painted in the strip. */
  #painted = "";

  #floor = new Surface();
  #movers = new Surface();
  #slot = make("slot");
  #court = make(
    "div",
    { class: "court", part: PART.court, role: "img", "aria-label": "Court" },
    this.#floor.node,
    this.#movers.node,
  );
  #more = button(
    { class: "cell word narrow-only", "aria-expanded": "false" },
    () => this.#toggleMore(),
    "More",
  );
  #heading;
  #caption;
  #strip;
  #transport;
  #speed;
  #follow;
  #key = new Key();
  #fault = new FaultNote();
  node;

  /** @param {Element} host @param {Player} player @param {Commands} ask */
  constructor(host, player, ask) {
    this.#host = host;
    this.#player = player;
    this.#heading = new Heading(ask);
    this.#caption = new Caption(ask);
    this.#strip = new Strip(ask);
    this.#transport = new Transport(ask);
    this.#speed = new Speed(ask);
    this.#follow = new Follow(ask);
    const { play, beat, frame } = this.#transport.nodes;
    const controls = make(
      "div",
      { class: "controls", part: PART.controls },
      make("div", { class: "row first" }, play, beat, frame, ...this.#speed.nodes.words),
      this.#follow.nodes.row,
      make(
        "div",
        { class: "row narrow-only" },
        this.#speed.nodes.list,
        this.#follow.nodes.list,
        this.#more,
      ),
    );
    this.node = make(
      "section",
      { class: "reader", part: PART.reader, "data-state": "loading" },
      this.#heading.node,
      this.#court,
      this.#slot,
      this.#caption.node,
      this.#strip.node,
      controls,
      this.#key.node,
      this.#fault.node,
    );
    // What the page put inside stands for the court until that is there.
    this.#slot.addEventListener("slotchange", () => {
      this.node.toggleAttribute("data-poster", this.#slot.assignedElements().length > 0);
    });
    this.update();
  }

  /** Says that the set is on its way. */
  wait() {
    this.#caption.say("Loading the set");
  }

  /** Shows an open set. @param {Module} module where it is open @param {OpenSet} play */
  show(module, play) {
    this.#use(module);
    this.#play = play;
    this.#players = play.players;
    const beats = Array.from(play.beatStarts, (_, i) => i);
    this.#titles = beats.map((i) => play.beatTitle(i));
    this.#heading.show(play);
    this.#caption.show(
      this.#titles,
      beats.map((i) => ("caption" in play ? play.caption(i) : play.said(i))),
    );
    this.node.setAttribute("aria-label", play.title);
    this.node.dataset.state = "open";
    this.layout();
  }

  /**
   * Shows why there is no set.
   *
   * @param {Module | undefined} module what can paint an empty court
   * @param {SetError} error
   * @param {string} address
   */
  fail(module, error, address) {
    this.#use(module);
    this.#play = undefined;
    this.#fault.show(error.message, Math.max(0, error.faults.length + error.more - 1), address);
    this.node.dataset.state = "fault";
    this.#width = 0;
    this.layout();
  }

  /** Takes the width it has, and paints all anew. */
  layout() {
    const style = getComputedStyle(this.node);
    const inside =
      this.node.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
    // Nothing is seen of an element without a size; it is asked again once it has one.
    if (!(inside > 0)) return;
    this.#width = Math.floor(inside);
    this.#narrow = this.#width < NARROW;
    this.node.toggleAttribute("data-narrow", this.#narrow);
    this.recolour();
  }

  /** Takes the colours that hold now, and paints all anew. */
  recolour() {
    this.#palette?.free();
    this.#palette = undefined;
    const open = this.node.dataset.state === "open" || this.node.dataset.state === "fault";
    if (this.#width === 0 || !open || !this.#module) return;
    this.#palette = paletteOf(this.#module, this.#host, this.node);
    this.#paintFloor(this.#module, this.#palette);
    if (!this.#play) return;
    this.#key.paint(this.#play, this.#palette, this.#width);
    this.#painted = "";
    this.update();
  }

  /** Brings everything up to date; for changes of state, not for each frame. */
  update() {
    const { state } = this;
    for (const part of [
      this.#heading,
      this.#caption,
      this.#transport,
      this.#speed,
      this.#follow,
      this.#key,
    ]) {
      part.update(state);
    }
    this.#strip.tell(state);
    if (this.#play) this.#court.setAttribute("aria-label", this.#inWords(this.#play, state));
    this.draw();
  }

  /** Paints the picture of the player's time. */
  draw() {
    const play = this.#play;
    const palette = this.#palette;
    if (!play || !palette || this.#width === 0) return;
    const { time } = this.#player;
    this.#movers.paint((context, density) =>
      play.paintMovers(context, palette, this.#width, density, time, this.follow),
    );
    const painted = `${this.#player.beat} ${this.follow}`;
    if (painted !== this.#painted) {
      this.#painted = painted;
      const { state } = this;
      this.#caption.update(state);
      this.#strip.layout(play, this.#width, state);
      this.#strip.paint(play, palette, state);
    }
    this.#strip.place(time);
  }

  /** Has the beat read out. */
  announce() {
    this.#caption.announce(this.state);
  }

  fold() {
    this.#unfolded = !this.#unfolded;
    this.layout();
  }

  /** Gives the canvases' memory and the colours back. */
  release() {
    this.#play = undefined;
    this.#palette?.free();
    this.#palette = undefined;
    this.#floor.release();
    this.#movers.release();
    this.#strip.release();
    this.#key.release();
    this.#painted = "";
  }

  /** @returns {State} */
  get state() {
    const player = this.#player;
    return {
      time: player.time,
      duration: player.duration,
      paused: player.paused,
      ended: player.ended,
      stepwise: player.stepwise,
      rate: player.rate,
      beat: player.beat,
      beatTitle: this.#titles[player.beat] ?? "",
      follow: this.follow,
      players: this.#players,
      folded: this.#narrow && !this.#unfolded,
      foldable: this.#narrow,
      full: this.full,
      bodyScale: this.#play?.bodyScale(this.#width) ?? 1,
    };
  }

  /** Colours belong to the module that paints with them. @param {Module | undefined} module */
  #use(module) {
    if (module === this.#module) return;
    this.#palette?.free();
    this.#palette = undefined;
    this.#module = module;
  }

  /** The picture for those who do not see it. @param {OpenSet} play @param {State} state */
  #inWords(play, { time, beat, beatTitle }) {
    if ("describe" in play) return play.describe(time);
    return `Beat ${beat + 1}, ${beatTitle}: ${play.said(beat)}`;
  }

  /** @param {Module} module @param {Palette} palette */
  #paintFloor(module, palette) {
    const play = this.#play;
    const height = play ? play.courtHeight(this.#width) : module.emptyCourtHeight(this.#width);
    this.#court.style.height = `${height}px`;
    this.#floor.resize(this.#width, height);
    this.#movers.resize(this.#width, height);
    this.#floor.paint((context, density) => {
      if (play) play.paintCourt(context, palette, this.#width, density);
      else module.paintEmptyCourt(context, palette, this.#width, density);
    });
  }

  #toggleMore() {
    const open = this.node.toggleAttribute("data-more");
    this.#more.setAttribute("aria-expanded", String(open));
    write(this.#more, open ? "Less" : "More");
  }
}
