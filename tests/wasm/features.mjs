// Which features beyond the first version of WebAssembly a module uses, read from its sections and
// every instruction. Binary format: WebAssembly Core Specification 2.0, chapter 5.

import { HEADER, Reader } from "../../.ci/binary.mjs";

const SECTION = { type: 1, import: 2, table: 4, element: 9, code: 10, dataCount: 12 };
const EXTERNREF = 0x6f;

/** One instruction; adds what it takes to `used`. */
function instruction(reader, used) {
  const code = reader.byte();
  const numbers = (count) => {
    for (let i = 0; i < count; i += 1) reader.number();
  };
  if (code >= 0x02 && code <= 0x04) {
    // A block's type: one value or none, or else a whole function's.
    if (reader.bytes[reader.at] < 0x40) used.add("multi-value");
    return numbers(1);
  }
  if (code === 0x0e) {
    reader.list(() => reader.number());
    return numbers(1);
  }
  if (code === 0x11) return numbers(2);
  if ([0x0c, 0x0d, 0x10, 0x3f, 0x40, 0x41, 0x42].includes(code)) return numbers(1);
  if (code >= 0x20 && code <= 0x24) return numbers(1);
  if (code >= 0x28 && code <= 0x3e) return numbers(2);
  if (code === 0x43) return reader.take(4);
  if (code === 0x44) return reader.take(8);
  if (code >= 0xc0 && code <= 0xc4) return used.add("sign extension");
  if (code === 0xfc) {
    const more = reader.number();
    if (more <= 7) return used.add("saturating conversion");
    if (more === 8 || more === 10) numbers(2);
    else if (more === 9 || more === 11) numbers(1);
    else throw new Error(`instruction 0xfc ${more}`);
    return used.add("bulk memory");
  }
  if (code === 0xfd) {
    const more = reader.number();
    if (more <= 11 || more === 92 || more === 93) numbers(2);
    else if (more === 12 || more === 13) reader.take(16);
    else if (more >= 21 && more <= 34) reader.take(1);
    else if (more >= 84 && more <= 91) {
      numbers(2);
      reader.take(1);
    } else if (more > 255) throw new Error(`instruction 0xfd ${more}`);
    return used.add("vectors");
  }
  const plain = [0x00, 0x01, 0x05, 0x0b, 0x0f, 0x1a, 0x1b];
  if (plain.includes(code) || (code >= 0x45 && code <= 0xbf)) return;
  // Threads, references, tail calls, exceptions and whatever else there is.
  throw new Error(`instruction 0x${code.toString(16)}`);
}

/** @param {Uint8Array} bytes a module @returns {Set<string>} throws at what it does not know */
export function featuresOf(bytes) {
  const used = new Set();
  const reader = new Reader(bytes);
  reader.take(HEADER);
  while (!reader.done) {
    const id = reader.byte();
    const section = reader.part();
    if (id === SECTION.dataCount) used.add("bulk memory");
    if (id === SECTION.type) {
      section.list(() => {
        section.take(1);
        const types = [section.list(() => section.byte()), section.list(() => section.byte())];
        if (types[1].length > 1) used.add("multi-value");
        if (types.flat().includes(EXTERNREF)) used.add("references");
      });
    }
    if (id === SECTION.table && section.number() > 1) used.add("references");
    if (id === SECTION.code) {
      section.list(() => {
        const body = section.part();
        body.list(() => [body.number(), body.byte()]);
        while (!body.done) instruction(body, used);
      });
    }
  }
  return used;
}
