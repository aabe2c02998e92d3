/**
 * Where the film stands: beside the court, above it where that is too narrow, in its corner, or in
 * the browser's own window.
 */

import { make } from "../../build.js";

/** @import { BackcutSet } from "../../element.js" */
/** @import { Commands } from "../../reader.js" */

/** @typedef {"beside" | "corner" | "away"} Place */

export class Stage {
  #host;
  #ask;
  #video;
  #view;
  #pair = make("div", { class: "pair" });
  #moved;

  /** @param {BackcutSet} host @param {Commands} ask @param {HTMLVideoElement} video @param {(place: Place) => void} moved it stands elsewhere */
  constructor(host, ask, video, moved) {
    this.#host = host;
    this.#ask = ask;
    this.#video = video;
    this.#moved = moved;
    this.#view = make("div", { class: "film-view" }, video);
    video.addEventListener("enterpictureinpicture", () => this.#put("away"));
    video.addEventListener("leavepictureinpicture", () => this.#put("beside"));
  }

  /** @returns {Place} */
  get place() {
    return /** @type {Place} */ (this.#pair.dataset.film ?? "beside");
  }

  /** Puts the film beside the court, where it is not there yet. */
  open() {
    const court = this.#host.shadowRoot?.querySelector(".court");
    if (!court || this.#pair.isConnected) return;
    court.before(this.#pair);
    this.#pair.append(this.#view, court);
    this.#put("beside");
  }

  close() {
    if (this.place === "away") this.#back();
    if (!this.#pair.parentNode) return;
    const court = this.#pair.querySelector(".court");
    if (court) this.#pair.before(court);
    this.#pair.remove();
    this.#host.classList.remove("with-film");
    this.#ask.layout();
  }

  /** Into the browser's own window, or the court's corner where there is none; and back. */
  async toggle() {
    if (this.place === "away") return this.#back();
    if (this.place === "corner") return this.#put("beside");
    const own = document.pictureInPictureEnabled && "requestPictureInPicture" in this.#video;
    // Refused, or nobody's doing: the corner is always there.
    if (!own) return this.#put("corner");
    await this.#video.requestPictureInPicture().catch(() => this.#put("corner"));
  }

  #back() {
    document.exitPictureInPicture?.().catch(() => this.#put("beside"));
  }

  /** @param {Place} place */
  #put(place) {
    // The browser's own window may be left because the film is put away.
    if (!this.#pair.isConnected) return;
    this.#pair.dataset.film = place;
    // The default width is for one picture.
    this.#host.classList.toggle("with-film", place === "beside");
    this.#moved(place);
    this.#ask.layout();
  }
}
