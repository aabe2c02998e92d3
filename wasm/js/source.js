/**
 * Where the parts of the package come from: files beside the first module, by names that bundlers
 * recognise. A page that carries all of it inside takes `inlined.js` in place of this one.
 */

/** Fetches a wasm file. @param {URL} address */
export async function compile(address) {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${response.url}: ${response.status} ${response.statusText}`);
  const streams = response.headers.get("content-type") === "application/wasm";
  if (!streams) console.warn(`Slow: the Content-Type of ${response.url} is not application/wasm.`);
  return streams
    ? WebAssembly.compileStreaming(response)
    : WebAssembly.compile(await response.arrayBuffer());
}

/** @returns {Promise<typeof import("./late.js")>} */
export const importLate = () => import(LATE_FILE);

/** @returns {Promise<typeof import("./spanish.js")>} */
export const importSpanish = () => import(SPANISH_FILE);

/** @returns {Promise<typeof import("./sharing.js")>} */
export const importSharing = () => import(SHARING_FILE);

/** @returns {Promise<typeof import("./teaching.js")>} */
export const importTeaching = () => import(TEACHING_FILE);

/** Where the package lies, for what a page elsewhere needs of it. @type {URL | undefined} */
export const home = /* @__PURE__ */ new URL(".", import.meta.url);

/** @returns {Promise<typeof import("./full.js")>} */
export const importFull = () => import(FULL_FILE);
