/**
 * Everything that is seen: the court, the beat, the strip, the controls. It paints what the player
 * says and passes on what the reader asks for.
 */

import { button, make, write } from "./build.js";
import { Caption } from "./controls/caption.js";
import { Court } from "./controls/court.js";
import { FaultNote } from "./controls/fault.js";
import { Heading } from "./controls/heading.js";
import { Key } from "./controls/key.js";
import { Speed } from "./controls/speed.js";
import { Strip } from "./controls/strip.js";
import { Transport } from "./controls/transport.js";
import { fit } from "./fit.js";
import { run, stop } from "./loop.js";
import { ATTRIBUTE, PART } from "./names.js";
import { coloursOf } from "./palette.js";
import { captionOf, inWords } from "./told.js";

/** @import { Palette } from "../pkg/raw/backcut.js" */
/** @import { Late, Module, OpenSet } from "./load.js" */
/** @import { BackcutSet } from "./element.js" */
/** @import { Player } from "./player.js" */
/** @import { SetError } from "./fault.js" */

/** @typedef {import("./commands.js").Commands} Commands */

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
 * @property {boolean} captions
 * @property {boolean} timing what holds the set up is shown
 * @property {number} bodyScale how much larger than life bodies are drawn
 */

/** Narrower than this, the controls stand as on a phone; CSS pixels inside the reader. */
const NARROW = 600;
/** Room over the key, CSS pixels; the style has it too. */
const ABOVE_KEY = 10;

/** What the style lets a node have, CSS pixels; NaN where it says nothing. @param {Element} node @param {"maxWidth" | "maxHeight"} side */
const most = (node, side) => parseFloat(getComputedStyle(node)[side]);

export class Reader {
  follow = 0;
  full = false;
  timing = false;
  /** Until the court has been seen, strip and key are but room. */
  early = true;
  #host;
  #player;
  #ask;
  #module = /** @type {Module | undefined} */ (undefined);
  #play = /** @type {OpenSet | undefined} */ (undefined);
  #palette = /** @type {Palette | undefined} */ (undefined);
  #colours = "";
  #players = 0b11111;
  #titles = /** @type {string[]} */ ([]);
  /** What it has, CSS pixels. */
  #width = 0;
  #room = 0;
  #narrow = /** @type {boolean | undefined} */ (undefined);
  /** Whether the strip folds for want of room. */
  #foldable = false;
  /** Whether the strip shows all rows though it would rather be folded. */
  #unfolded = false;
  #captions = true;
  /** The beat and followed players that are painted in the strip. */
  #painted = "";

  #slot = make("slot");
  #more;
  #court;
  #controls;
  #lists = make("div", { class: "row narrow-only" });
  #heading;
  #caption;
  #strip;
  #transport;
  #speed;
  /** The second row of a wide reader and of a narrow one; what is in them comes after the first picture. */
  #second = make("div", { class: "row wide-only" });
  #key;
  #late = /** @type {Late | undefined} */ (undefined);
  #extras = /** @type {InstanceType<Late["Extras"]> | undefined} */ (undefined);
  #sheet = /** @type {InstanceType<Late["Sheet"]> | undefined} */ (undefined);
  #fault;
  node;

  /** @param {BackcutSet} host @param {Player} player @param {Commands} ask */
  constructor(host, player, ask) {
    this.#host = host;
    this.#player = player;
    this.#ask = ask;
    const { say } = ask;
    this.#more = button(
      { class: "cell word more", "aria-expanded": "false" },
      () => this.#toggleMore(),
      say.more,
    );
    this.#key = new Key(say);
    this.#fault = new FaultNote(say);
    this.#heading = new Heading(ask);
    this.#court = new Court(ask);
    this.#caption = new Caption(ask);
    this.#strip = new Strip(ask);
    this.#transport = new Transport(ask);
    this.#speed = new Speed(ask);
    const { play, beat, frame } = this.#transport.nodes;
    this.#controls = make(
      "div",
      { class: "controls", part: PART.controls },
      make("div", { class: "row first" }, play, beat, frame, ...this.#speed.nodes),
      this.#second,
      this.#lists,
    );
    this.node = make(
      "section",
      { class: "reader", part: PART.reader, "data-state": "loading" },
      this.#heading.node,
      this.#court.node,
      this.#slot,
      this.#caption.node,
      this.#strip.node,
      this.#controls,
      this.#key.node,
      this.#fault.node,
    );
    // While it plays it is quiet; whoever comes to it hears where it is.
    this.#strip.node.addEventListener("focus", () => this.#strip.tell(this.state));
    // What the page put inside stands for the court until that is there.
    this.#slot.addEventListener("slotchange", () => {
      const shown = this.#slot.assignedElements({ flatten: true });
      this.node.toggleAttribute("data-poster", shown.length > 0);
    });
    this.update();
  }

  /** Takes the place of one that speaks another language. @param {Reader} other */
  replace(other) {
    this.follow = other.follow;
    this.full = other.full;
    this.timing = other.timing;
    this.early = other.early;
    this.#unfolded = other.#unfolded;
    if (!other.#captions) this.hush();
    this.poster = this.#host.getAttribute(ATTRIBUTE.poster);
    other.#extras?.end();
    other.node.replaceWith(this.node);
    other.release();
    if (other.#late) this.refine(other.#late);
  }

  /** What stands for the court until that is there, if the page put nothing inside. @param {string | null} address */
  set poster(address) {
    this.#slot.replaceChildren(...(address ? [make("img", { src: address, alt: "" })] : []));
    this.node.toggleAttribute("data-poster", Boolean(address));
  }

  /** Says that the set is on its way. */
  wait() {
    this.#caption.say(this.#ask.say.loading);
  }

  /** Takes an open set; it is painted by the next layout. @param {Module} module where it is open @param {OpenSet} play */
  show(module, play) {
    this.#use(module);
    this.#hold(play);
    this.#players = play.players;
    const beats = Array.from(play.beatStarts, (_, i) => i);
    this.#titles = beats.map((i) => play.beatTitle(i));
    if (this.#spoken) this.#heading.about(play);
    this.#heading.title = play.title;
    this.#caption.show(
      this.#titles,
      beats.map((i) => captionOf(play, i)),
    );
    // Its words take room, which is measured next.
    this.#caption.update(this.state);
    this.node.setAttribute("aria-label", play.title);
    this.node.dataset.state = "open";
    this.#late?.tellLanguages(this.#host, play);
  }

  /** Takes what came after the first picture. @param {Late} late */
  refine(late) {
    if (this.#late) return;
    this.#late = late;
    this.#sheet = new late.Sheet();
    this.#extras = new late.Extras(this.#host, this.#ask);
    const { wide, narrow, words, row, below } = this.#extras.nodes;
    this.node.append(this.#sheet.node);
    this.#second.append(...wide);
    this.#lists.append(...narrow);
    this.#heading.words.prepend(...words);
    this.#controls.after(row, below);
    // It stays the last of its row.
    this.#more.parentElement?.append(this.#more);
    this.#extras.take(this.#play);
    this.#extras.update(this.state);
    if (this.#play) late.tellLanguages(this.#host, this.#play);
  }

  /** Whether the set tells what it has in the language of the page; the first module knows English alone. */
  get #spoken() {
    return !this.#ask.voice || (this.#play && "caption" in this.#play);
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
    this.#hold(undefined);
    this.#fault.show(error, address);
    this.node.dataset.state = "fault";
    this.#width = 0;
    this.#bleach();
    this.layout();
  }

  /** Takes the room it has, if that is another. */
  resize() {
    if (this.#inside() !== this.#width || this.#tall() !== this.#room) this.layout();
  }

  /** Takes the room it has, and paints all anew. */
  layout() {
    const inside = this.#inside();
    // Nothing is seen of an element without a size; it is asked again once it has one.
    if (!(inside > 0)) return;
    this.#width = inside;
    this.#room = this.#tall();
    this.#shape(inside < NARROW);
    this.#fold(inside < NARROW);
    this.recolour(true);
  }

  #inside() {
    const { paddingLeft, paddingRight } = getComputedStyle(this.node);
    return Math.floor(this.node.clientWidth - parseFloat(paddingLeft) - parseFloat(paddingRight));
  }

  /** Height of the window, from the style: what is left while a phone shows its own bars. */
  #tall() {
    return most(this.#heading.node, "maxHeight") || innerHeight;
  }

  /** Lays the controls as on a phone, or not. @param {boolean} narrow */
  #shape(narrow) {
    // Not each time: what is moved loses the focus.
    if (narrow === this.#narrow) return;
    this.#narrow = narrow;
    this.node.toggleAttribute("data-narrow", narrow);
    (narrow ? this.#lists : this.#second).append(this.#more);
    (narrow ? this.#controls : this.#heading.node).append(this.#heading.words);
  }

  /** Folds what the window has no room for. @param {boolean} narrow */
  #fold(narrow) {
    const play = this.#play;
    // Something may stand beside it.
    const width = Math.min(this.#width, most(this.#court.node, "maxWidth") || this.#width);
    let fitted = { key: narrow, strip: narrow, court: width };
    if (play) {
      const strip = (/** @type {boolean} */ folded) =>
        play.stripGeometry(this.#width, this.follow, folded)[4] ?? 0;
      // What judging adds may reach below the window: it is read, not watched.
      const below = this.#extras ? [this.#extras.nodes.below] : [];
      const parts = [this.#court.node, this.#strip.node, this.#key.node, ...below];
      fitted = fit(width, narrow, {
        // Heights are told in whole pixels; their rest may add up to one.
        room: this.#room - 1,
        rest: parts.reduce((rest, part) => rest - part.offsetHeight, this.node.offsetHeight),
        court: play.courtHeight(width),
        strip: strip(false),
        folded: strip(true),
        key: play.keyHeight(this.#width) + ABOVE_KEY,
      });
    }
    this.#foldable = fitted.strip;
    this.#court.width = fitted.court;
    this.node.toggleAttribute("data-folded", fitted.key);
  }

  /** Takes the colours that hold now; paints all anew if they are others, or if it must. */
  recolour(must = false) {
    const { state } = this.node.dataset;
    if (this.#width === 0 || !this.#module || !(state === "open" || state === "fault")) return;
    const colours = coloursOf(this.#host, this.node, this.#late?.standIns);
    if (!this.#palette || String(colours) !== this.#colours) {
      this.#bleach();
      this.#palette = new this.#module.Palette(...colours);
      this.#colours = String(colours);
    } else if (!must) return;
    if (!this.#play) return this.#court.paintEmpty(this.#module, this.#palette);
    this.#key.layout(this.#play, this.#width);
    if (!this.early && this.#spoken) this.#key.paint(this.#play, this.#palette);
    this.#painted = "";
    this.update();
  }

  /** Paints what waited for the court to be seen. */
  complete() {
    if (!this.#play || !this.#palette) return;
    if (this.#spoken) this.#key.paint(this.#play, this.#palette);
    this.#strip.paint(this.#play, this.#palette, this.state);
  }

  /** Brings everything up to date; for changes of state, not for each frame. */
  update() {
    const { state } = this;
    for (const part of [this.#heading, this.#caption, this.#speed, this.#key]) {
      part.update(state);
    }
    this.#extras?.update(state);
    this.#paint();
    this.#besides();
  }

  /**
   * Another instant is asked for. The picture is there at once; what is beside it follows with the
   * next frame: to paint words on a canvas has the browser bring the page's styles up to date, so
   * each change of them between two pictures would be paid for anew.
   */
  instant() {
    this.#paint();
    run(this.#besides);
  }

  #besides = () => {
    stop(this.#besides);
    this.#ask.attempt(() => {
      const { state } = this;
      this.#transport.update(state);
      this.#extras?.instant(state);
      this.#strip.tell(state);
      if (this.#play) this.#court.tell(inWords(this.#play, this.#ask.say, state));
      this.#strip.place(state.time);
    });
  };

  /** Shows the player's time; for each frame while it plays. */
  draw() {
    this.#paint();
    this.#strip.place(this.#player.time);
  }

  #paint() {
    const play = this.#play;
    const palette = this.#palette;
    if (!play || !palette || this.#width === 0) return;
    const { time, beat } = this.#player;
    const painted = `${beat} ${this.follow}`;
    const anew = painted !== this.#painted;
    if (anew) this.#court.paintFloor(palette, play, beat);
    this.#court.paint(palette, play, time, this.follow);
    if (anew) {
      this.#painted = painted;
      const { state } = this;
      this.#caption.update(state);
      this.#key.update(state);
      this.#strip.layout(play, this.#width, state);
      if (!this.early) this.#strip.paint(play, palette, state);
    }
  }

  /** The defence is another one, or something was found. */
  judged() {
    this.#extras?.take(this.#play);
    this.#painted = "";
    this.update();
  }

  /** Has the beat read out. */
  announce() {
    this.#caption.announce(this.state);
  }

  fold() {
    this.#unfolded = !this.#unfolded;
    this.layout();
  }

  /** Fills the court with the close-up, or shows all of it again. */
  enlarge() {
    this.#court.large = !this.#court.large;
    this.#painted = "";
    // First the picture: how large it shows bodies is told beside it.
    this.draw();
    this.update();
  }

  /** Hides what the captions say, or shows it again. */
  hush() {
    this.#captions = !this.#captions;
    this.node.toggleAttribute("data-wordless", !this.#captions);
    this.layout();
  }

  /** Lays out what goes on paper, with the set file's address, or clears it away. @param {string | undefined} address */
  print(address) {
    const printing = address !== undefined && this.#sheet && this.#play;
    const module = this.#module;
    if (printing && module)
      this.#sheet?.show(module, printing, address && new URL(address, document.baseURI).href);
    else this.#sheet?.clear();
    this.node.toggleAttribute("data-print", Boolean(printing));
  }

  /** Gives the canvases' memory back, for as long as nobody is near. */
  rest() {
    this.#court.release();
    this.#strip.release();
    this.#key.release();
    this.#painted = "";
  }

  /** Gives all back. */
  release() {
    stop(this.#besides);
    this.#hold(undefined);
    this.#bleach();
    this.rest();
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
      folded: this.#foldable && !this.#unfolded,
      foldable: this.#foldable,
      full: this.full,
      captions: this.#captions,
      timing: this.timing,
      bodyScale: this.#play?.bodyScale(this.#court.width) ?? 1,
    };
  }

  /** Another set, or none: nothing may be asked of one that is gone. @param {OpenSet | undefined} play */
  #hold(play) {
    this.#play = play;
    this.#extras?.take(play);
  }

  /** Colours belong to the module that paints with them. @param {Module | undefined} module */
  #use(module) {
    if (module === this.#module) return;
    this.#bleach();
    this.#module = module;
  }

  /** Gives the colours back; where that traps they are gone all the same. */
  #bleach() {
    const palette = this.#palette;
    this.#palette = undefined;
    palette?.free();
  }

  #toggleMore() {
    const open = this.node.toggleAttribute("data-more");
    this.#more.setAttribute("aria-expanded", String(open));
    const { say } = this.#ask;
    write(this.#more, open ? say.less : say.more);
  }
}
