// lottie-web; the global comes from the <script> that players.mjs puts in the page's head.
export function loader(renderer) {
  return async function load(el, src) {
    const data = await (await fetch(`${src}.lottie.json`)).json();
    const anim = window.lottie.loadAnimation({
      container: el,
      renderer,
      loop: false,
      autoplay: false,
      animationData: data,
      rendererSettings: { clearCanvas: true },
    });
    anim.setSubframe(true);
    const frameReady = new Promise((ok) =>
      anim.isLoaded ? ok() : anim.addEventListener("DOMLoaded", ok),
    ).then(() => anim.goToAndStop(0, true));
    await frameReady;
    return {
      seek: (t) => anim.goToAndStop(t * 60, true),
      frameReady,
      destroy: () => anim.destroy(),
    };
  };
}
