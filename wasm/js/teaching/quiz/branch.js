/** Shows the line of a read while its answer is looked at, then puts back the line that was there. */

import { ATTRIBUTE, EVENT } from "../../names.js";

/** @import { BackcutSet } from "../../element.js" */

export class Branch {
  #host;
  /** What the attribute said before; undefined while it says so. @type {string | null | undefined} */
  #before;
  /** Ends what waits for the line that was asked for. */
  #awaited = /** @type {AbortController | undefined} */ (undefined);

  /** @param {BackcutSet} host */
  constructor(host) {
    this.#host = host;
  }

  /** Whether another line than the learner's own is shown, or asked for. */
  get on() {
    return this.#before !== undefined;
  }

  /** Whether a line is on its way. */
  get awaited() {
    return this.#awaited !== undefined;
  }

  /** @param {string} read as the attribute has it @param {() => void} then once it is there */
  show(read, then) {
    this.#before = this.#host.getAttribute(ATTRIBUTE.read);
    this.#await(then);
    this.#host.read = read;
  }

  /** Puts the line back; false where nothing is to be put back. @param {() => void} then once it is there */
  back(then) {
    if (!this.on && !this.awaited) return false;
    this.#await(then);
    this.#restore();
    return true;
  }

  /** The line did not come, nor will it. */
  fail() {
    this.#awaited?.abort();
    this.#awaited = undefined;
    // Only after all of the set has failed: it is loaded anew then.
    queueMicrotask(() => this.#restore());
  }

  #restore() {
    const before = this.#before;
    if (before === undefined) return;
    this.#before = undefined;
    if (before === null) this.#host.removeAttribute(ATTRIBUTE.read);
    else this.#host.setAttribute(ATTRIBUTE.read, before);
  }

  /** A line has beats and a length of its own, which the player has only then. @param {() => void} then */
  #await(then) {
    this.#awaited?.abort();
    const { signal } = (this.#awaited = new AbortController());
    const come = () => {
      this.#awaited = undefined;
      then();
    };
    this.#host.addEventListener(EVENT.loadedmetadata, come, { once: true, signal });
  }
}
