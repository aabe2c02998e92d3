/**
 * Where the parts of the package come from: files beside the first module. A page that carries all
 * of it inside takes `inlined.js` in place of this one.
 */

/** The published modules have names of their own; the sources run as they are. */
const lateFile = typeof LATE_FILE === "string" ? LATE_FILE : "./late.js";
const fullFile = typeof FULL_FILE === "string" ? FULL_FILE : "./full.js";

/** Fetches a wasm file as seen from the module at `base`. @param {string} file @param {string} base */
export async function compile(file, base) {
  const response = await fetch(new URL(file, base));
  if (!response.ok) throw new Error(`${response.url}: ${response.status} ${response.statusText}`);
  const streams = response.headers.get("content-type") === "application/wasm";
  return streams
    ? WebAssembly.compileStreaming(response)
    : WebAssembly.compile(await response.arrayBuffer());
}

/** @returns {Promise<typeof import("./late.js")>} */
export const importLate = () => import(lateFile);

/** @returns {Promise<typeof import("./full.js")>} */
export const importFull = () => import(fullFile);
