/** Why a set cannot be shown. */

import { english } from "./words.js";

/** @import { Say } from "../pkg/words/say.js" */

/**
 * One thing that is wrong with a set file.
 *
 * @typedef {object} Fault
 * @property {string} code stable name of this sort of fault
 * @property {string} pointer JSON Pointer of the place
 * @property {number} line counted from 1; 0: the whole file
 * @property {number} column counted from 1
 * @property {string} found
 * @property {string} allowed
 * @property {string | undefined} help
 * @property {string} message all of it in one line
 */

/** Faults of a set file, or a set or module that did not come. */
export class SetError extends Error {
  name = "SetError";
  /** What is wrong with the file; empty where the file is not to blame. @type {readonly Fault[]} */
  faults;
  /** How many more there are than `faults` holds. */
  more;

  /** Tells why, in a language. @type {(say: Say) => string} */
  told;

  /**
   * @param {(say: Say) => string} told
   * @param {readonly Fault[]} [faults]
   * @param {number} [more]
   * @param {unknown} [cause]
   */
  constructor(told, faults = [], more = 0, cause = undefined) {
    super(told(english), { cause });
    this.told = told;
    this.faults = faults;
    this.more = more;
  }

  /** From what the wasm module throws. @param {unknown} thrown */
  static from(thrown) {
    if (thrown instanceof SetError) return thrown;
    if (!Array.isArray(thrown)) return new SetError((say) => say.noStart, [], 0, thrown);
    const list = /** @type {Fault[] & { more?: number }} */ (thrown);
    const [first] = list;
    // The reader of set files says what it finds in English.
    const told = (/** @type {Say} */ say) => (first ? sentence(english, first) : say.fileWrong);
    return new SetError(told, [...list], list.more ?? 0);
  }
}

/** A fault for a reader. @param {Say} say @param {Fault} fault */
export function sentence(say, { line, found, allowed, help }) {
  const what = `${allowed ? `${found}; ${allowed}` : found}.`;
  const where = line > 0 ? say.faultInLine({ line, fault: what }) : what;
  return help ? `${where} ${help}` : where;
}
