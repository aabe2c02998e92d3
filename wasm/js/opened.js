/** The set that is open, in whichever module it is. */

import { ATTRIBUTE } from "./names.js";
import { FrameView } from "./view.js";

/** @import { BackcutSet } from "./element.js" */
/** @import { Module, OpenSet } from "./load.js" */

export class Opened {
  /** Where sets are opened; the full one stays, once it is there. @type {Module | undefined} */
  module;
  /** @type {OpenSet | undefined} */
  play;
  /** What is open. @type {Uint8Array | undefined} */
  file;
  #view = /** @type {FrameView | undefined} */ (undefined);

  /**
   * Opens a file in place of what was open; throws what the module throws, and then all stays.
   *
   * @param {Module} module
   * @param {Uint8Array} file
   * @param {BackcutSet} host whose attributes may say otherwise than the file
   */
  open(module, file, host) {
    const play = module.Play.open(
      // More is refused anyway, and need not be copied to be refused.
      file.subarray(0, module.byteLimit() + 1),
      host.getAttribute(ATTRIBUTE.court),
      host.getAttribute(ATTRIBUTE.level),
      host.mirrored,
      host.read,
      host.coverage,
      host,
    );
    this.play?.free();
    this.play = play;
    this.module = module;
    this.file = file;
    this.#view = new FrameView(module.memory);
    return play;
  }

  /** Puts the defence on the floor and flags what is found; false where this module cannot. @param {BackcutSet} host @param {boolean} timing */
  judge({ coverage, notes }, timing) {
    const { play } = this;
    if (!play || !("defend" in play)) return false;
    play.defend(coverage || undefined);
    play.judge(notes);
    play.showTiming(timing);
    return true;
  }

  /** The instant `time` as numbers, if a set is open. @param {number} time */
  frame(time) {
    if (!this.play || !this.#view) return null;
    this.play.frame(time);
    return this.#view.of(this.play);
  }

  /** Gives the set back; a module that trapped may not take it, and need not. */
  close() {
    const { play } = this;
    this.play = undefined;
    this.file = undefined;
    try {
      play?.free();
    } catch {
      // It is let go of all the same.
    }
  }
}
