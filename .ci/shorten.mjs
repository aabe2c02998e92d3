// Shortens the names by which a wasm module and its glue know each other. They are long and end in
// hashes, nobody reads them, and together they weigh a hundredth of an embed. Leaves out what the glue
// has for others.
//
// Binary format: WebAssembly Core Specification, chapter 5.

import { HEADER, Reader } from "./binary.mjs";

const CUSTOM = 0;
const IMPORTS = 2;
const EXPORTS = 7;
/** What our own code asks for by name. */
const KEPT = "memory";

function number(value) {
  const bytes = [];
  for (; value >= 0x80; value = Math.floor(value / 128)) bytes.push((value % 128) | 0x80);
  return [...bytes, value];
}

const text = (name) => [...number(Buffer.byteLength(name)), ...Buffer.from(name)];

/** a, b, … z, aa, ab, … */
function short(n) {
  const letter = String.fromCharCode(97 + (n % 26));
  return n < 26 ? letter : short(Math.floor(n / 26) - 1) + letter;
}

/** The bytes of one import or export that follow its name: its kind and its type or index. */
function description(reader, imported) {
  const start = reader.at;
  const [kind] = reader.take(1);
  if (imported && kind !== 0)
    throw new Error(`an import of kind ${kind}; only functions are known`);
  reader.number();
  return reader.bytes.subarray(start, reader.at);
}

function section(body, renamed, imported) {
  const reader = new Reader(body);
  const count = reader.number();
  const out = number(count);
  for (let i = 0; i < count; i++) {
    const from = imported ? reader.name() : undefined;
    const name = reader.name();
    if (name !== KEPT) renamed.set(name, short(renamed.size));
    if (from !== undefined) out.push(...text(from));
    out.push(...text(renamed.get(name) ?? KEPT), ...description(reader, imported));
  }
  return out;
}

/**
 * What the glue does for others: browsers too old to play anyway, callers of older versions, and
 * sets that nobody gave back. Ours are given back, and a finalizer that traps would throw into the
 * page.
 */
const FOR_OTHERS = /** @type {[RegExp, string][]} */ ([
  [/^if \(Symbol\.dispose\) .*$/gm, ""],
  [/^ *\w+Finalization\.(un)?register\(.*\);$/gm, ""],
  [/^const \w+Finalization = [^;]*;$/gm, ""],
  [/^if \(!\('encodeInto' in [^]*?^}$/gm, ""],
  [/^ {4}if \(realloc === undefined\) {[^]*?^ {4}}$/gm, ""],
  [/^ {4}if \(module !== undefined\) {[^]*?^ {4}}$/gm, "({ module } = module);"],
]);

/**
 * @param {Uint8Array} wasm
 * @param {string} glue
 * @returns {{ wasm: Uint8Array, glue: string }}
 */
export function shorten(wasm, glue) {
  const [imports, exports] = [new Map(), new Map()];
  const reader = new Reader(wasm);
  const out = [reader.take(HEADER)];
  while (!reader.done) {
    const [id] = reader.take(1);
    let body = reader.take(reader.number());
    // Names of tools and the like: nothing a browser needs.
    if (id === CUSTOM) continue;
    if (id === IMPORTS) body = section(body, imports, true);
    if (id === EXPORTS) body = section(body, exports, false);
    out.push([id, ...number(body.length)], body);
  }
  for (const [what, by] of FOR_OTHERS) {
    if (glue.match(what) === null) throw new Error(`the glue has no ${what}`);
    glue = glue.replace(what, by);
  }
  for (const [name, to] of imports) glue = replaced(glue, `${name}: function`, `${to}: function`);
  // Not all of them are used by the glue.
  glue = glue.replace(/\bwasm\.(\w+)/g, (used, name) => {
    return exports.has(name) ? `wasm.${exports.get(name)}` : used;
  });
  return { wasm: Buffer.concat(out.map((part) => Uint8Array.from(part))), glue };
}

/** `from` stands exactly once, or the glue is not what this was written for. */
function replaced(glue, from, to) {
  const parts = glue.split(from);
  if (parts.length !== 2) throw new Error(`the glue has ${parts.length - 1} times "${from}"`);
  return parts.join(to);
}
