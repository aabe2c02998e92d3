/** The user's own film beside the set: both play, stand and are sought together. */

import { Marks } from "./film/marks.js";
import { Panel } from "./film/panel.js";
import { Picked } from "./film/picked.js";
import { Projector } from "./film/projector.js";
import { Stage } from "./film/stage.js";

/** @import { Mode } from "../controls/teach.js" */
/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay } from "../load.js" */
/** @import { Commands } from "../reader.js" */

/** @implements {Mode} */
export class Film {
  #host;
  #say;
  #projector;
  #picked;
  #stage;
  #marks;
  #panel;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  /** The address that the page names, once it was asked for; none once the reader picked a file. */
  #address = "";
  #begun = false;
  /** Ends what listens, as long as there is a set to listen for. */
  #on = /** @type {AbortController | undefined} */ (undefined);
  /** What stands when a reader was told something that holds until something changes. */
  #noted = "";
  node;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, ask) {
    const { say } = ask;
    this.#host = host;
    this.#say = say;
    this.#projector = new Projector(host, ask, {
      opened: () => this.#opened(),
      moved: () => this.#moved(),
      ran: () => this.#note(say.filmEnded),
      failed: () => this.#fail(),
    });
    const { video } = this.#projector;
    video.setAttribute("aria-label", say.film);
    video.addEventListener("volumechange", () => this.#panel.heard(!video.muted));
    this.#picked = new Picked(host, video);
    this.#stage = new Stage(host, ask, video, (place) => this.#panel.beside(place === "beside"));
    this.#marks = new Marks(host, say, () => {
      this.#projector.align();
      this.#show();
    });
    const acts = {
      pick: (/** @type {File} */ file) => this.#pick(file),
      place: () => this.#stage.toggle(),
      hear: () => {
        video.muted = !video.muted;
      },
      part: () => this.#part(!this.#projector.alone),
      tie: () => this.#tie(),
      move: (/** @type {number} */ film) => this.#move(film),
      step: (/** @type {number} */ by) => this.#move(this.#projector.time + by),
      save: () => this.#save(),
    };
    this.#panel = new Panel(say, acts, this.#marks.node);
    this.node = this.#panel.node;
  }

  /** @param {FullPlay | undefined} play another set or line, or none */
  take(play) {
    this.#play = play;
    this.#marks.take(play);
    this.#projector.take(play);
    if (!play) this.#stop();
    else if (this.#begun) this.#start();
    this.#show();
  }

  begin() {
    this.#begun = true;
    this.#start();
    this.#show();
  }

  end() {
    this.#begun = false;
    this.#stop();
  }

  #start() {
    if (this.#on) return;
    this.#on = new AbortController();
    this.#picked.listen(() => this.#fail(), this.#on.signal);
    this.#projector.begin();
    const { film } = this.#host;
    if (!this.#address && !this.#projector.ready && this.#picked.again()) return;
    if (film && film !== this.#address) {
      this.#address = film;
      this.#picked.load(film);
    } else if (this.#projector.ready) this.#opened();
  }

  /** Lets go of everything, as long as it is off or no set is there. */
  #stop() {
    this.#on?.abort();
    this.#on = undefined;
    this.#projector.end();
    this.#stage.close();
  }

  update() {
    this.#show();
  }

  instant() {
    this.#show();
  }

  /** @param {File} file */
  #pick(file) {
    this.#host.pause();
    this.#address = "";
    this.#panel.tell("");
    this.#picked.pick(file);
  }

  #opened() {
    this.#stage.open();
    this.#show();
  }

  #fail() {
    this.#stage.close();
    this.#show();
    const say = this.#say;
    const unplayed = this.#address ? say.filmAbsent : say.filmUnplayable;
    this.#panel.tell(this.#picked.refused ? say.filmRefused : unplayed);
  }

  /** @param {boolean} apart */
  #part(apart) {
    if (apart) this.#host.pause();
    this.#projector.alone = apart;
    this.#show();
  }

  /** Scrubs, with the set or without. @param {number} film */
  #move(film) {
    const play = this.#play;
    if (this.#projector.alone || !play) return this.#projector.seek(film);
    this.#host.pause();
    this.#host.currentTime = play.setAt(film);
  }

  #tie() {
    // An instant of a read is none of what was filmed.
    if (this.#host.currentTime > this.#until) return this.#note(this.#say.tieAsDrawn);
    const refused = this.#marks.tie(this.#host.currentTime, this.#projector.time);
    if (refused) this.#note(refused);
    else this.#part(false);
  }

  async #save() {
    if (this.#play) this.#note(await this.#panel.copy(this.#play.text));
  }

  /** @param {string} words that hold until something changes */
  #note(words) {
    this.#noted = this.#stands;
    this.#panel.tell(words);
  }

  /** Until when the set does what was filmed, seconds. */
  get #until() {
    return this.#play?.filmedUntil ?? Infinity;
  }

  get #stands() {
    const { currentTime, paused } = this.#host;
    return `${currentTime} ${paused} ${this.#projector.alone}`;
  }

  /** The film is at another instant. */
  #moved() {
    const { time, length } = this.#projector;
    this.#panel.at(time, length);
  }

  #show() {
    const { ready, alone, time } = this.#projector;
    this.#panel.show({ ready, alone, marked: Boolean(this.#play?.filmMarks.length) });
    if (!ready) return;
    this.#moved();
    if (this.#noted === this.#stands) return;
    const { currentTime, paused } = this.#host;
    const stands = alone
      ? this.#say.filmApart({ time: currentTime })
      : this.#say.filmTied({ time: currentTime, film: time });
    if (currentTime > this.#until) this.#panel.tell(this.#say.filmOfDrawn({ time: this.#until }));
    else this.#panel.tell(paused ? stands : "");
  }
}
