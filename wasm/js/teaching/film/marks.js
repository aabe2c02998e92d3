/** The marks that tie set and film: a list, and what is kept of it when the set is opened anew. */

import { button, make } from "../../build.js";

/** @import { BackcutSet } from "../../element.js" */
/** @import { FilmMark, FullPlay } from "../../load.js" */
/** @import { Say } from "../../../pkg/words/say.js" */

/**
 * What a reader edited, by where: the marks of the set with that name at that address.
 *
 * @type {WeakMap<BackcutSet, { set: string, marks: readonly FilmMark[] }>}
 */
const edited = new WeakMap();

export class Marks {
  #host;
  #say;
  #play = /** @type {FullPlay | undefined} */ (undefined);
  #changed;
  #list = make("ul", { class: "film-marks" });
  #none = make("p", { class: "fine" });
  node = make("div", {}, this.#none, this.#list);

  /** @param {BackcutSet} host @param {Say} say @param {() => void} changed */
  constructor(host, say, changed) {
    this.#host = host;
    this.#say = say;
    this.#none.append(say.filmUntied);
    this.#changed = changed;
  }

  /** Another set, or another line of the same, which takes over what was edited. @param {FullPlay | undefined} play */
  take(play) {
    this.#play = play;
    const before = edited.get(this.#host);
    if (play && before?.set === this.#name(play)) {
      while (play.filmMarks.length > 0) play.untieFilm(0);
      for (const { t, film } of before.marks) play.tieFilm(t, film);
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
    if (play) edited.set(this.#host, { set: this.#name(play), marks: play.filmMarks });
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
    const say = this.#say;
    return make(
      "li",
      {},
      button({ class: "when" }, go, say.instant({ time: t })),
      make("div", {}, make("p", {}, text), make("p", { class: "fine" }, say.filmAt({ film }))),
      button({ class: "word", "aria-label": say.removeMark({ time: t }) }, remove, say.remove),
    );
  }
}
