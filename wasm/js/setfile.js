/** Where the set file of an element comes from. */

import { SetError } from "./fault.js";
import { loadFull } from "./load.js";

/** @import { BackcutSet } from "./element.js" */

/** An address that holds the set itself, in its fragment, or is nothing else and should. */
const LINK = /^#|#(.*&)?set=/;

/**
 * The file at `src`, or in it where it is a link that holds a set; else the JSON script among the
 * element's children.
 *
 * @param {BackcutSet} element
 * @param {string} src
 * @param {AbortSignal} signal
 * @returns {Promise<Uint8Array>}
 */
export async function fileOf(element, src, signal) {
  if (!src) {
    const inline = element.querySelector('script[type="application/json"]');
    if (!inline) throw new SetError((say) => say.noFile);
    return new TextEncoder().encode(inline.textContent ?? "");
  }
  if (LINK.test(src)) {
    const { openLink } = await loadFull();
    // It has something to show too, which holds no longer.
    signal.throwIfAborted();
    return openLink(src, element);
  }
  const response = await fetch(src, { signal }).catch((reason) => {
    throw new SetError((say) => say.noAnswer, [], 0, reason);
  });
  const { ok, status } = response;
  if (!ok) throw new SetError((say) => say.refused({ status }));
  return new Uint8Array(await response.arrayBuffer());
}
