/**
 * Loads the wasm module, once a page, streaming where the server's media type allows it.
 */

import init, {
  Palette,
  Play,
  byteLimit,
  emptyCourtHeight,
  paintEmptyCourt,
} from "../pkg/raw/backcut.js";

/** The published module names its own wasm file; the sources use what wasm-pack made. */
const file = typeof WASM_FILE === "string" ? WASM_FILE : "../pkg/raw/backcut_bg.wasm";

/** @typedef {{ memory: WebAssembly.Memory }} Wasm */

let loading = /** @type {Promise<Wasm> | undefined} */ (undefined);

/**
 * The module's exports. A failure is not kept: the next set that asks tries again.
 *
 * @returns {Promise<Wasm>}
 */
export function loadWasm() {
  loading ??= start().catch((reason) => {
    loading = undefined;
    throw reason;
  });
  return loading;
}

/** @returns {Promise<Wasm>} */
async function start() {
  const response = await fetch(new URL(file, import.meta.url));
  if (!response.ok) throw new Error(`${response.url}: ${response.status} ${response.statusText}`);
  return init({ module_or_path: response });
}

export { Palette, Play, byteLimit, emptyCourtHeight, paintEmptyCourt };
