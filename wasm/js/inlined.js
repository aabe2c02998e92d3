/**
 * The parts of the package for a page that carries all of them inside: a file opened from disk may
 * fetch nothing. The modules are bundled into one; each wasm file stands in a script element that no
 * browser runs, with the file's name as id, packed by gzip, in base64.
 */

import * as full from "./full.js";
import * as late from "./late.js";
import * as sharing from "./sharing.js";
import * as spanish from "./spanish.js";
import * as teaching from "./teaching.js";

/** Unpacks a wasm file out of the page. @param {URL} address */
export async function compile({ pathname }) {
  const file = pathname.slice(pathname.lastIndexOf("/") + 1);
  const text = document.getElementById(file)?.textContent;
  if (!text) throw new Error(`The page does not carry ${file}.`);
  const packed = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
  const bytes = new Response(packed).body?.pipeThrough(new DecompressionStream("gzip"));
  return WebAssembly.compile(await new Response(bytes).arrayBuffer());
}

export const importLate = async () => late;

export const importSpanish = async () => spanish;

export const importSharing = async () => sharing;

export const importTeaching = async () => teaching;

/** The page lies wherever somebody put it: nowhere that others could load from. @type {URL | undefined} */
export const home = undefined;

export const importFull = async () => full;
