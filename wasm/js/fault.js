/** Why a set cannot be shown. */

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

  /**
   * @param {string} message
   * @param {readonly Fault[]} [faults]
   * @param {number} [more]
   * @param {unknown} [cause]
   */
  constructor(message, faults = [], more = 0, cause = undefined) {
    super(message, { cause });
    this.faults = faults;
    this.more = more;
  }

  /** From what the wasm module throws. @param {unknown} thrown */
  static from(thrown) {
    if (thrown instanceof SetError) return thrown;
    if (!Array.isArray(thrown)) return new SetError("The player could not start.", [], 0, thrown);
    const list = /** @type {Fault[] & { more?: number }} */ (thrown);
    const [first] = list;
    return new SetError(first ? sentence(first) : "The file is wrong.", [...list], list.more ?? 0);
  }
}

/** A fault for a reader. @param {Fault} fault */
export function sentence({ line, found, allowed, help }) {
  const what = allowed ? `${found}; ${allowed}` : found;
  return [`${line > 0 ? `Line ${line}: ` : ""}${what}.`, help].filter(Boolean).join(" ");
}
