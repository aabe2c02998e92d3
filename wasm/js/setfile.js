/** Where the set file of an element comes from. */

import { SetError } from "./fault.js";

/**
 * The file at `src`, else the JSON script among the element's children.
 *
 * @param {HTMLElement} element
 * @param {string} src
 * @param {AbortSignal} signal
 * @returns {Promise<Uint8Array>}
 */
export async function fileOf(element, src, signal) {
  if (!src) {
    const inline = element.querySelector('script[type="application/json"]');
    if (!inline) throw new SetError("The page names no set file.");
    return new TextEncoder().encode(inline.textContent ?? "");
  }
  const response = await fetch(src, { signal }).catch((reason) => {
    throw new SetError("The set file did not come.", [], 0, reason);
  });
  if (!response.ok) throw new SetError(`The set file did not come: ${response.status}.`);
  return new Uint8Array(await response.arrayBuffer());
}
