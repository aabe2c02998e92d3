// dotlottie-web, software renderer (Rust and C++ in wasm, pixels copied to a 2D canvas)
import { DotLottie } from "/node_modules/@lottiefiles/dotlottie-web/dist/index.js";
DotLottie.setWasmUrl("/node_modules/@lottiefiles/dotlottie-web/dist/dotlottie-player.wasm");
export async function load(el, src) {
  const canvas = document.createElement("canvas");
  canvas.width = 800 * devicePixelRatio;
  canvas.height = 450 * devicePixelRatio;
  canvas.style.cssText = "width:100%;height:100%;display:block";
  el.append(canvas);
  const player = new DotLottie({
    canvas,
    src: `${src}.lottie.json`,
    autoplay: false,
    loop: false,
    useFrameInterpolation: true,
    renderConfig: { autoResize: false, freezeOnOffscreen: false, devicePixelRatio },
  });
  const frameReady = new Promise((ok, no) => {
    player.addEventListener("load", ok);
    player.addEventListener("loadError", (e) => no(e.error));
  }).then(() => player.setFrame(0.01));
  await frameReady;
  return {
    seek: (t) => player.setFrame(Math.min(719.99, t * 60)),
    frameReady,
    destroy: () => player.destroy(),
  };
}
