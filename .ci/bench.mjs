// Measures and prints a table: opening a set and asking for a frame natively, opening it and
// drawing a frame in Chromium at 800 pixels, and what an embed weighs. Times differ from machine
// to machine; no test depends on them.

import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync } from "node:zlib";
import { build } from "./build.mjs";
import { output, root } from "./process.mjs";
import { browser as installed, setup } from "./setup.mjs";

await setup({ browsers: true });
await build();

const native = output("cargo", [
  "bench",
  "-q",
  "--locked",
  "-p",
  "backcut-tests",
  "--bench",
  "play",
]);
if (native === undefined) throw new Error("the native benchmark did not run");
const rows = native.split("\n").map((line) => line.split(", "));

const { serve } = await import("../tests/browser/server.mjs");
const { chromium } = await import("playwright-core");
const server = await serve({
  "/": { type: "text/html", body: "<!doctype html><title>Bench</title>" },
});
const browser = await chromium.launch({
  executablePath: installed("Chromium"),
  args: ["--no-sandbox", "--disable-gpu"],
});
const page = await browser.newPage();
await page.goto(server.origin);

/** Runs in the page: medians in microseconds. */
async function measure(name) {
  const { default: init, Palette, Play } = await import("/wasm/pkg/raw/backcut.js");
  await init();
  const bytes = new Uint8Array(await (await fetch(`/web-demo/sets/${name}.json`)).arrayBuffer());
  // The clock is coarse, so several are timed together.
  const median = (times, batch, act) => {
    const taken = Array.from({ length: times }, (_, i) => {
      const start = performance.now();
      for (let k = 0; k < batch; k += 1) act(i * batch + k);
      return ((performance.now() - start) * 1000) / batch;
    });
    return taken.sort((a, b) => a - b)[times >> 1];
  };
  const open = median(21, 10, () => Play.open(bytes, undefined, undefined, false).free());
  const play = Play.open(bytes, undefined, undefined, false);
  const canvas = new OffscreenCanvas(800, 600);
  const context = canvas.getContext("2d");
  const palette = new Palette(Array(16).fill("#123").join("\n"), "serif", "sans-serif");
  const step = play.duration / 600;
  const draw = median(21, 25, (i) => play.paintMovers(context, palette, 800, 1, i * step, 1));
  return [open, draw];
}

console.log("set            native: open µs  frame ns   browser: open µs  drawn frame µs (script)");
for (const [name, open, frame] of rows) {
  const inPage = await page.evaluate(measure, name);
  const cells = [
    open.padStart(15),
    frame.padStart(9),
    ...inPage.map((x) => x.toFixed(0).padStart(17)),
  ];
  console.log(name.padEnd(14) + cells.join(" "));
}
await browser.close();
server.close();

const pkg = join(root, "wasm", "pkg");
for (const name of readdirSync(pkg).filter((n) => /\.(js|wasm)$/.test(n))) {
  const bytes = readFileSync(join(pkg, name));
  console.log(`${name}: ${bytes.length} bytes, ${brotliCompressSync(bytes).length} Brotli`);
}
