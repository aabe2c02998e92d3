/** What changes around an element and concerns it. */

/**
 * @typedef {object} Listener
 * @property {(still: boolean) => void} onStill less motion is asked for, or no longer
 * @property {() => void} onColours
 * @property {() => void} onDensity
 * @property {() => void} onWindow its size
 * @property {(full: boolean) => void} onFull it has the screen, or gave it back
 * @property {(printing: boolean) => void} onPrint the page goes to paper, or came back
 */

/**
 * Tells `to` what changes around `element`, until `signal` ends it.
 *
 * @param {Element} element
 * @param {Listener} to
 * @param {AbortSignal} signal
 */
export function listen(element, to, signal) {
  const still = matchMedia("(prefers-reduced-motion: reduce)");
  const onStill = () => to.onStill(still.matches);
  onStill();
  still.addEventListener("change", onStill, { signal });
  for (const query of ["(prefers-color-scheme: dark)", "(forced-colors: active)"]) {
    matchMedia(query).addEventListener("change", to.onColours, { signal });
  }
  const onFull = () => to.onFull(document.fullscreenElement === element);
  element.addEventListener("fullscreenchange", onFull, { signal });
  const onDensity = () => {
    if (signal.aborted) return;
    to.onDensity();
    const density = matchMedia(`(resolution: ${devicePixelRatio}dppx)`);
    density.addEventListener("change", onDensity, { once: true, signal });
  };
  onDensity();
  addEventListener("resize", to.onWindow, { signal });
  addEventListener("beforeprint", () => to.onPrint(true), { signal });
  addEventListener("afterprint", () => to.onPrint(false), { signal });
}
