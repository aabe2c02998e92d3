/** Properties that are the attributes of the same name, as HTML reflects them. */

import { ATTRIBUTE } from "./names.js";

/** Attributes that are there or not; the others hold a text. */
const FLAGS = /** @type {const} */ (["autoplay", "loop", "mirrored", "notes"]);

/** @typedef {(typeof FLAGS)[number]} Flag */
/** @typedef {{ [name in Flag]: boolean } & { [name in Exclude<keyof typeof ATTRIBUTE, Flag>]: string }} Reflections */

/** A page has it; a server, which only imports, does not. */
const Base = /** @type {typeof HTMLElement} */ (globalThis.HTMLElement ?? class {});

class Reflecting extends Base {}
for (const name of Object.values(ATTRIBUTE)) {
  const flag = /** @type {readonly string[]} */ (FLAGS).includes(name);
  Object.defineProperty(Reflecting.prototype, name, {
    get() {
      return flag ? this.hasAttribute(name) : (this.getAttribute(name) ?? "");
    },
    set(value) {
      if (flag) this.toggleAttribute(name, !!value);
      else this.setAttribute(name, value);
    },
  });
}

/** An element with a property for each attribute. */
export const Reflected = /** @type {new () => HTMLElement & Reflections} */ (
  /** @type {unknown} */ (Reflecting)
);
