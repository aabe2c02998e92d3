/**
 * Where a film comes from: an address, or a file that the reader picks, which goes nowhere. The
 * address that stands for such a file is a `blob:`, and a page's policy may not have that.
 */

export class Picked {
  #video;
  #own = "";
  #refused;

  /** @param {HTMLVideoElement} video @param {() => void} refused */
  constructor(video, refused) {
    this.#video = video;
    this.#refused = refused;
  }

  /** Listens for what the page's policy refuses, until `signal`. @param {AbortSignal} signal */
  listen(signal) {
    const heard = (
      /** @type {SecurityPolicyViolationEvent} */ { blockedURI, effectiveDirective },
    ) => {
      const film = effectiveDirective.startsWith("media-src") && blockedURI.startsWith("blob");
      if (film && this.#own) this.#refused();
    };
    document.addEventListener("securitypolicyviolation", heard, { signal });
  }

  /** @param {string} address */
  load(address) {
    this.#forget();
    this.#video.src = address;
  }

  /** @param {File} file */
  pick(file) {
    this.#forget();
    try {
      // Needs no address, so no policy refuses it; not every browser can.
      this.#video.srcObject = file;
    } catch {
      this.#own = URL.createObjectURL(file);
      this.#video.src = this.#own;
    }
  }

  #forget() {
    this.#video.srcObject = null;
    if (this.#own) URL.revokeObjectURL(this.#own);
    this.#own = "";
  }
}
