/** The user's own film beside the set: both play, stand and are sought together. */

import { button, glyph, make, write } from "../build.js";
import { FRAME } from "../names.js";
import { Marks } from "./film/marks.js";
import { Projector } from "./film/projector.js";
import { Picked } from "./film/picked.js";
import { Stage } from "./film/stage.js";

/** @import { Mode } from "../controls/teach.js" */
/** @import { BackcutSet } from "../element.js" */
/** @import { FullPlay } from "../load.js" */
/** @import { Commands, State } from "../reader.js" */

const WORDS = {
  film: "Film",
  pick: "Pick a film",
  another: "Another film",
  window: "Picture in picture",
  beside: "Side by side",
  sound: "Sound",
  alone: "Move the film alone",
  mark: "Mark this",
  save: "Copy set file with the marks",
  previous: "Film: previous frame",
  next: "Film: next frame",
  stays: "The film stays on this device. Nothing is uploaded.",
  apart: (/** @type {number} */ t) =>
    `The set stands at ${t.toFixed(2)} s. Bring the film to the same instant, then mark it.`,
  tied: (/** @type {number} */ t, /** @type {number} */ film) =>
    `${t.toFixed(2)} s of the set is ${film.toFixed(2)} s of the film.`,
  ended: "The film ends here. Play goes on with the set alone.",
  failed: "The browser cannot play this film. MP4 and WebM are the surest.",
  absent: "The film of this page did not come, or the browser cannot play it.",
  refused:
    "This page’s policy keeps out films of your own. Whoever runs it can allow them: media-src has to name the scheme blob.",
  copied: "The set file is copied, with the marks in it.",
  byHand: "The browser lets nothing be copied here. Copy the set file by hand:",
  toCopy: "To copy",
  at: (/** @type {number} */ film, /** @type {number} */ of) =>
    of ? `${film.toFixed(2)} of ${of.toFixed(1)} s` : `${film.toFixed(2)} s`,
};

/** @implements {Mode} */
export class Film {
  #host;
  #projector;
  #source;
  #stage;
  #marks;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  /** The address that the page names, as it was loaded; none once the reader picked a file. */
  #address = "";
  #on = new AbortController();
  #input = make("input", { type: "file", accept: "video/*", hidden: "", "aria-label": WORDS.pick });
  #pick = button({ class: "word" }, () => this.#input.click(), WORDS.pick);
  #place = button({ class: "word" }, () => this.#stage.toggle(), WORDS.window);
  #sound = button(
    { class: "word", "data-word": WORDS.sound, "aria-pressed": "false" },
    () => this.#hear(),
    WORDS.sound,
  );
  #alone = button(
    { class: "word", "data-word": WORDS.alone, "aria-pressed": "false" },
    () => this.#part(!this.#projector.alone),
    WORDS.alone,
  );
  #mark = button({ class: "word" }, () => this.#tie(), WORDS.mark);
  #scrubber = make("input", {
    type: "range",
    min: "0",
    max: "0",
    step: String(FRAME),
    "aria-label": WORDS.film,
  });
  #time = make("span", { class: "film-time" });
  #status = make("p", { class: "film-status", role: "status" });
  /** What could not be copied, to be copied by hand. */
  #field = make("textarea", { readonly: "", rows: "3", "aria-label": WORDS.toCopy, hidden: "" });
  #save = button({ class: "word" }, () => this.#copy(), WORDS.save);
  #running;
  node;

  /** @param {BackcutSet} host @param {Commands} ask */
  constructor(host, ask) {
    this.#host = host;
    this.#projector = new Projector(host, ask, {
      opened: () => this.#opened(),
      moved: () => this.#moved(),
      ran: () => write(this.#status, WORDS.ended),
      failed: () => this.#fail(),
    });
    const { video } = this.#projector;
    video.setAttribute("aria-label", WORDS.film);
    this.#source = new Picked(video);
    this.#stage = new Stage(host, ask, video, () => this.#placed());
    this.#marks = new Marks(host, () => this.#retied());
    const step = (
      /** @type {string} */ word,
      /** @type {number} */ by,
      /** @type {string} */ path,
    ) =>
      button(
        { class: "cell", "aria-label": word },
        () => this.#move(this.#projector.time + by * FRAME),
        glyph("0 0 8 14", path, "chevron"),
      );
    this.#running = make(
      "div",
      {},
      make(
        "div",
        { class: "film-line" },
        step(WORDS.previous, -1, "M7 1 L1 7 L7 13"),
        this.#scrubber,
        step(WORDS.next, 1, "M1 1 L7 7 L1 13"),
        this.#time,
      ),
      make("div", { class: "ways" }, this.#alone, this.#mark),
    );
    this.node = make(
      "div",
      { class: "film", role: "group", "aria-label": WORDS.film },
      make("div", { class: "ways" }, this.#pick, this.#place, this.#sound, this.#input),
      this.#running,
      this.#status,
      this.#marks.node,
      make("div", { class: "ways" }, this.#save),
      this.#field,
      make("p", { class: "fine" }, WORDS.stays),
    );
    this.#input.addEventListener("change", () => this.#picked());
    this.#scrubber.addEventListener("input", () => this.#move(this.#scrubber.valueAsNumber));
    video.addEventListener("volumechange", () =>
      this.#sound.setAttribute("aria-pressed", String(!video.muted)),
    );
    this.#show();
  }

  /** @param {FullPlay | undefined} play another set or line, or none */
  take(play) {
    this.#play = play;
    this.#marks.take(play);
    this.#projector.take(play);
    this.#show();
  }

  begin() {
    this.#on = new AbortController();
    this.#source.listen(() => this.#fail(), this.#on.signal);
    this.#projector.begin();
    const { film } = this.#host;
    if (film && film !== this.#address) {
      this.#address = film;
      this.#source.load(film);
    } else if (this.#projector.ready) this.#opened();
    this.#show();
  }

  end() {
    this.#on.abort();
    this.#projector.end();
    this.#stage.close();
  }

  /** @param {State} _ */
  update(_) {
    this.#show();
  }

  /** @param {State} _ */
  instant(_) {
    this.#show();
  }

  #picked() {
    const file = this.#input.files?.[0];
    if (!file) return;
    this.#host.pause();
    this.#address = "";
    write(this.#status, "");
    this.#source.pick(file);
    // The same file again is another pick.
    this.#input.value = "";
  }

  #opened() {
    const { video } = this.#projector;
    this.#scrubber.max = String(Number.isFinite(video.duration) ? video.duration : 0);
    this.#stage.open();
    this.#show();
  }

  #fail() {
    this.#stage.close();
    this.#show();
    const theirs = this.#address ? WORDS.absent : WORDS.failed;
    write(this.#status, this.#source.refused ? WORDS.refused : theirs);
  }

  #placed() {
    write(this.#place, this.#stage.place === "beside" ? WORDS.window : WORDS.beside);
  }

  #hear() {
    const { video } = this.#projector;
    video.muted = !video.muted;
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
    const refused = this.#marks.tie(this.#host.currentTime, this.#projector.time);
    if (refused) write(this.#status, refused);
    else this.#part(false);
  }

  #retied() {
    this.#projector.align();
    this.#show();
  }

  /** The film is at another instant. */
  #moved() {
    const { time, video } = this.#projector;
    const told = WORDS.at(time, Number.isFinite(video.duration) ? video.duration : 0);
    this.#scrubber.valueAsNumber = time;
    this.#scrubber.setAttribute("aria-valuetext", told);
    write(this.#time, told);
  }

  #show() {
    const { ready, alone, time } = this.#projector;
    const t = this.#host.currentTime;
    write(this.#pick, ready ? WORDS.another : WORDS.pick);
    this.#running.hidden = !ready;
    this.#place.hidden = !ready;
    this.#sound.hidden = !ready;
    this.#alone.setAttribute("aria-pressed", String(alone));
    this.#mark.hidden = !alone;
    this.#save.hidden = !this.#play?.filmMarks.length;
    if (!ready) return;
    this.#moved();
    if (this.#host.paused) write(this.#status, alone ? WORDS.apart(t) : WORDS.tied(t, time));
    else write(this.#status, "");
  }

  async #copy() {
    const text = this.#play?.text;
    if (!text) return;
    const done = await navigator.clipboard?.writeText(text).then(
      () => true,
      () => false,
    );
    this.#field.hidden = done === true;
    write(this.#status, done ? WORDS.copied : WORDS.byHand);
    if (done) return;
    this.#field.value = text;
    this.#field.select();
  }
}
