// The players: what an embedding page has in its head, and the adapter. A row of ours with a defence
// moves as many bodies as the others do, and needs the module that simulates it.

const LIB = "/node_modules";

export const players = {
  blank: { head: "" },
  "canvas-by-hand": { head: "" },
  "lottie-web-canvas": {
    head: `<script defer src="${LIB}/lottie-web/build/player/lottie_light_canvas.min.js"></script>`,
  },
  "lottie-web-svg": {
    head: `<script defer src="${LIB}/lottie-web/build/player/lottie_light.min.js"></script>`,
  },
  "dotlottie-web": {
    head: `<link rel="modulepreload" href="${LIB}/@lottiefiles/dotlottie-web/dist/index.js">`,
  },
  // With the preload lines of the snippet, and as the bare tag.
  backcut: {
    adapter: "backcut",
    head: (wasm) => `<link rel="modulepreload" href="/pkg/backcut.js">
      <link rel="preload" href="/pkg/${wasm}" as="fetch" type="application/wasm" crossorigin>
      <link rel="preload" href="/motion/court.set.json" as="fetch" crossorigin>
      <script type="module" src="/pkg/backcut.js"></script>`,
  },
  "backcut-bare": {
    adapter: "backcut",
    head: `<script type="module" src="/pkg/backcut.js"></script>`,
  },
  "backcut-defended": { head: `<script type="module" src="/pkg/backcut.js"></script>` },
};
