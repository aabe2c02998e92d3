// Reads a wasm module's bytes. Binary format: WebAssembly Core Specification, chapter 5.

/** Bytes before the first section: magic number and version. */
export const HEADER = 8;

export class Reader {
  at = 0;
  /** @param {Uint8Array} bytes */
  constructor(bytes) {
    this.bytes = bytes;
  }
  get done() {
    return this.at >= this.bytes.length;
  }
  /** The next bytes. */
  take(count) {
    return this.bytes.subarray(this.at, (this.at += count));
  }
  byte() {
    return this.take(1)[0];
  }
  /** A LEB128 number, as far as it is unsigned; of a signed one only the length matters. */
  number() {
    let value = 0;
    for (let shift = 0; ; shift += 7) {
      const byte = this.byte();
      value += (byte & 0x7f) * 2 ** shift;
      if (byte < 0x80) return value;
    }
  }
  name() {
    return Buffer.from(this.take(this.number())).toString();
  }
  /** What follows its own length. */
  part() {
    return new Reader(this.take(this.number()));
  }
  list(each) {
    return Array.from({ length: this.number() }, each);
  }
}
