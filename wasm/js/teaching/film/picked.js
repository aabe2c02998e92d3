/**
 * Where a film comes from: an address, or a file that the reader picks, which goes nowhere. The
 * address that stands for such a file is a `blob:`, and a page's policy may not have that.
 */

/** @import { BackcutSet } from "../../element.js" */

/**
 * What a reader picked, by where: to hear the set in another language makes all that is seen anew.
 *
 * @type {WeakMap<BackcutSet, File>}
 */
const kept = new WeakMap();

export class Picked {
  /** Whether the page's policy kept out the file that was picked. */
  refused = false;
  #host;
  #video;
  #own = "";

  /** @param {BackcutSet} host @param {HTMLVideoElement} video */
  constructor(host, video) {
    this.#host = host;
    this.#video = video;
  }

  /** Listens for what the page's policy refuses, until `signal`. @param {() => void} refused @param {AbortSignal} signal */
  listen(refused, signal) {
    const heard = (
      /** @type {SecurityPolicyViolationEvent} */ { blockedURI, effectiveDirective },
    ) => {
      const own = effectiveDirective === "media-src" && blockedURI.startsWith("blob");
      if (!own || !this.#own) return;
      this.refused = true;
      refused();
    };
    document.addEventListener("securitypolicyviolation", heard, { signal });
  }

  /** @param {string} address */
  load(address) {
    this.#forget();
    kept.delete(this.#host);
    this.#video.src = address;
  }

  /** @param {File} file */
  pick(file) {
    this.#forget();
    kept.set(this.#host, file);
    try {
      // Needs no address, so no policy refuses it; not every browser can.
      this.#video.srcObject = file;
    } catch {
      this.#own = URL.createObjectURL(file);
      this.#video.src = this.#own;
    }
  }

  /** Takes what was picked here before, if anything was. */
  again() {
    const file = kept.get(this.#host);
    if (file) this.pick(file);
    return file !== undefined;
  }

  #forget() {
    this.#video.srcObject = null;
    if (this.#own) URL.revokeObjectURL(this.#own);
    this.#own = "";
    this.refused = false;
  }
}
