/** The full module, beside its wasm file; published as a module of its own. */

import {
  Palette,
  Play,
  byteLimit,
  emptyCourtHeight,
  initSync,
  openLink as unpack,
  paintEmptyCourt,
} from "../pkg/full/backcut.js";
import { show } from "./shown.js";

/** @import { BackcutSet } from "./element.js" */
/** @import { Shown } from "./shown.js" */

/** The set file in a link; has `element` show what the link asks for. @param {string} link @param {BackcutSet} element */
function openLink(link, element) {
  const { bytes, view } = opened(link);
  show(element, { ...view, follow: view.follow || undefined });
  return bytes;
}

/** @param {string} link */
function opened(link) {
  try {
    return /** @type {{ bytes: Uint8Array, view: Shown }} */ (unpack(link));
  } catch (thrown) {
    // A link has no lines that a reader could look for.
    if (Array.isArray(thrown)) for (const fault of thrown) fault.line = 0;
    throw thrown;
  }
}

/** @param {(address: URL) => Promise<WebAssembly.Module>} compile */
export async function load(compile) {
  const { memory } = initSync({ module: await compile(new URL(FULL_WASM_FILE, import.meta.url)) });
  return { memory, Play, Palette, byteLimit, emptyCourtHeight, paintEmptyCourt, openLink };
}
