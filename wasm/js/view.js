/**
 * Looks into wasm memory. A view dies when the memory grows, so it is made anew when that happened.
 */

export class FrameView {
  #memory;
  #view = new Float32Array();

  /** @param {WebAssembly.Memory} memory */
  constructor(memory) {
    this.#memory = memory;
  }

  /**
   * The numbers of the last frame: `t`, the ball's `x y z` and holder (0: nobody), then for each of
   * five players `present x y facing speed`. Valid until the next call.
   *
   * @param {{ readonly framePointer: number, readonly frameLength: number }} play
   */
  of(play) {
    const pointer = play.framePointer;
    const view = this.#view;
    if (view.buffer !== this.#memory.buffer || view.byteOffset !== pointer) {
      this.#view = new Float32Array(this.#memory.buffer, pointer, play.frameLength);
    }
    return this.#view;
  }
}
