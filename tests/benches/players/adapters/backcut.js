// Ours. The whole reader is there: strip, key, caption and controls, not the court alone.

export const load = loader();

/** @param {string} [coverage] */
export function loader(coverage) {
  return async (el, src) => {
    const set = document.createElement("backcut-set");
    set.src = `${src}.set.json`;
    if (coverage) set.coverage = coverage;
    el.append(set);
    await customElements.whenDefined("backcut-set");
    const canvases = () => [...set.shadowRoot.querySelectorAll(".court canvas, .strip canvas")];
    const painted = () => canvases().some((canvas) => canvas.width > 0);
    const near = () => el.getBoundingClientRect().top < innerHeight;
    const defended = () => !coverage || set.looks !== null;
    const frame = () => new Promise((next) => requestAnimationFrame(next));
    const frameReady = (async () => {
      await set.ready;
      // One that nobody is near is not drawn: that is how it is meant to be.
      while (!defended() || (near() && !painted())) await frame();
    })();
    await frameReady;
    return {
      seek: (t) => (set.currentTime = t),
      // What stands is painted once; a seek paints the upper layer.
      flush: () => canvases()[1]?.getContext("2d").getImageData(0, 0, 1, 1),
      frameReady,
      destroy: () => set.remove(),
    };
  };
}
