/** The marks that tie set and film: a list, and what is kept of it when the set is opened anew. */

import { button, make } from "../../build.js";

/** @import { BackcutSet } from "../../element.js" */
/** @import { FilmMark, FullPlay } from "../../load.js" */

const WORDS = {
  none: "Not tied yet: the film starts with the set. Move the film alone to an instant you know, and mark it.",
  at: (/** @type {number} */ film) => `Film ${film.toFixed(2)} s`,
  go: (/** @type {number} */ t) => `${t.toFixed(2)} s`,
  remove: "Remove",
};

export class Marks {
  #host;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  /** Of the set with that name at that address. */
  #edited = { set: "", marks: /** @type {readonly FilmMark[]} */ ([]) };
  #changed;
  #list = make("ul", { class: "film-marks" });
  #none = make("p", { class: "fine" }, WORDS.none);
  node = make("div", {}, this.#none, this.#list);

  /** @param {BackcutSet} host @param {() => void} changed */
  constructor(host, changed) {
    this.#host = host;
    this.#changed = changed;
  }

  /** Another set, or another line of the same, which takes over what was edited. @param {FullPlay | undefined} play */
  take(play) {
    this.#play = play;
    if (play && this.#edited.set === this.#name(play)) {
      while (play.filmMarks.length > 0) play.untieFilm(0);
      for (const { t, film } of this.#edited.marks) play.tieFilm(t, film);
    }
    this.#show();
  }

  /** Why these two instants cannot be tied; nothing where they are from now on. @param {number} t @param {number} film */
  tie(t, film) {
    const refused = this.#play?.tieFilm(t, film);
    if (!refused) this.#edit();
    return refused;
  }

  #edit() {
    const play = this.#play;
    if (play) this.#edited = { set: this.#name(play), marks: play.filmMarks };
    this.#show();
    this.#changed();
  }

  /** @param {FullPlay} play */
  #name(play) {
    return `${this.#host.src} ${play.title}`;
  }

  #show() {
    const marks = this.#play?.filmMarks ?? [];
    this.#none.hidden = marks.length > 0;
    this.#list.replaceChildren(...marks.map((mark, index) => this.#row(mark, index)));
  }

  /** @param {FilmMark} mark @param {number} index */
  #row({ t, film, text }, index) {
    const go = () => {
      this.#host.pause();
      this.#host.currentTime = t;
    };
    const remove = () => {
      this.#play?.untieFilm(index);
      this.#edit();
    };
    return make(
      "li",
      {},
      button({ class: "when" }, go, WORDS.go(t)),
      make("div", {}, make("p", {}, text), make("p", { class: "fine" }, WORDS.at(film))),
      button(
        { class: "word", "aria-label": `${WORDS.remove} ${WORDS.go(t)}` },
        remove,
        WORDS.remove,
      ),
    );
  }
}
