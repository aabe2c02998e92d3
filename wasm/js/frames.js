/** Who is to be told of the next picture. */

/** @typedef {(now: number, frame: { mediaTime: number }) => void} FrameCallback */

export class Frames {
  #wanted = /** @type {Map<number, FrameCallback>} */ (new Map());
  #asked = 0;

  /** By which number it is cancelled. @param {FrameCallback} callback */
  request(callback) {
    this.#wanted.set((this.#asked += 1), callback);
    return this.#asked;
  }

  /** @param {number} asked */
  cancel(asked) {
    this.#wanted.delete(asked);
  }

  /** A picture is drawn. @param {number} mediaTime the seconds that it shows */
  tell(mediaTime) {
    for (const [asked, callback] of this.#wanted) {
      this.#wanted.delete(asked);
      // What the page does wrong there is no business of this one.
      queueMicrotask(() => callback(performance.now(), { mediaTime }));
    }
  }
}
