/** The full module, beside its wasm file; published as a module of its own. */

import {
  Palette,
  Play,
  byteLimit,
  emptyCourtHeight,
  initSync,
  paintEmptyCourt,
} from "../pkg/full/backcut.js";

/** @param {(address: URL) => Promise<WebAssembly.Module>} compile */
export async function load(compile) {
  const { memory } = initSync({ module: await compile(new URL(FULL_WASM_FILE, import.meta.url)) });
  return { memory, Play, Palette, byteLimit, emptyCourtHeight, paintEmptyCourt };
}
