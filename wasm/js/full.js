/** The full module, beside its wasm file; published as a module of its own. */

import {
  Palette,
  Play,
  byteLimit,
  emptyCourtHeight,
  initSync,
  paintEmptyCourt,
} from "../pkg/full/backcut.js";

const wasmFile =
  typeof FULL_WASM_FILE === "string" ? FULL_WASM_FILE : "../pkg/full/backcut_bg.wasm";

/** @param {(file: string, base: string) => Promise<WebAssembly.Module>} compile */
export async function load(compile) {
  const { memory } = initSync({ module: await compile(wasmFile, import.meta.url) });
  return { memory, Play, Palette, byteLimit, emptyCourtHeight, paintEmptyCourt };
}
