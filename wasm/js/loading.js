/** How a set comes to be open: its file and a module that opens it, and what is told meanwhile. */

import { loadFull, loadModule } from "./load.js";
import { fileOf } from "./setfile.js";

/** @import { BackcutSet } from "./element.js" */
/** @import { Module } from "./load.js" */

/** So long nothing is said about a set that is on its way, milliseconds. */
const PATIENCE_MS = 400;

/**
 * Loads the set of `element`. Whoever ends it by `signal` hears of nothing any more.
 *
 * @param {BackcutSet} element
 * @param {AbortSignal} signal
 * @param {() => void} wait it takes long
 * @param {(module: Module) => Module} keep takes the first module that is there, and says which one is to open the set
 * @param {(module: Module, bytes: Uint8Array) => void} open
 * @param {(reason: unknown) => void} fail
 */
export async function loadSet(element, signal, wait, keep, open, fail) {
  const patience = setTimeout(wait, PATIENCE_MS);
  signal.addEventListener("abort", () => clearTimeout(patience));
  try {
    // Both at once: on a phone each wait for the other would be a round trip.
    // Kept even where no file comes: it paints the empty court.
    const first = loadModule().then(keep);
    // The line of a read is known to the full one alone; where that does not come it is as drawn.
    const opener = element.read ? loadFull().catch(() => first) : first;
    const file = fileOf(element, element.src, signal);
    const [module, bytes] = await Promise.all([opener, file, first]);
    if (signal.aborted) return;
    try {
      open(module, bytes);
    } catch (reason) {
      // The first module refuses without a word; the full one says why.
      if (reason !== undefined) throw reason;
      const full = await loadFull();
      if (!signal.aborted) open(full, bytes);
    }
  } catch (reason) {
    if (!signal.aborted) fail(reason);
  } finally {
    clearTimeout(patience);
  }
}
