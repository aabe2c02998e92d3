// A server for the bench: Brotli as a CDN would send it, nothing cached, isolated, for fine timers.

import { readFile, readdir } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { brotliCompressSync, constants } from "node:zlib";
import { lottie } from "./lottie.mjs";
import { scene } from "./motion.mjs";
import { players } from "./players.mjs";
import { set } from "./set.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const pkg = join(here, "../../../wasm/pkg");
const TYPES = {
  ".js": "text/javascript",
  ".json": "application/json",
  ".wasm": "application/wasm",
};
const MOTION = {
  "/motion/court.scene.json": scene,
  "/motion/court.lottie.json": lottie,
  "/motion/court.set.json": set,
};

const wasm = (await readdir(pkg)).find((name) => /^backcut_bg-.*\.wasm$/.test(name));

function page(name) {
  const { head, adapter = name } = players[name];
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>${name}</title>
<meta name="viewport" content="width=device-width,initial-scale=1"><link rel="icon" href="data:,">
<script>performance.mark("script");</script>
${typeof head === "string" ? head : head(wasm)}
<link rel="modulepreload" href="/page.js"><link rel="modulepreload" href="/adapters/${adapter}.js">
<style>body{margin:0}.stage{width:800px;height:450px;overflow:hidden}</style><main></main>
<script type="module">import { load } from "/adapters/${adapter}.js"; import { start } from "/page.js"; start(load);</script></html>`;
}

async function answer(path) {
  const play = path.match(/^\/play\/([\w-]+)$/)?.[1];
  if (play && players[play]) return { body: Buffer.from(page(play)), type: "text/html" };
  const type = TYPES[extname(path)] ?? "application/octet-stream";
  if (MOTION[path]) return { body: Buffer.from(JSON.stringify(MOTION[path])), type };
  const [folder, file] = path.startsWith("/pkg/") ? [pkg, path.slice(5)] : [here, path.slice(1)];
  const inside = normalize(file);
  if (inside.startsWith("..")) throw new Error("outside");
  return { body: await readFile(join(folder, inside)), type };
}

const packed = new Map();

async function pack(path) {
  if (!packed.has(path)) {
    const { body, type } = await answer(path);
    const params = {
      [constants.BROTLI_PARAM_QUALITY]: 11,
      [constants.BROTLI_PARAM_SIZE_HINT]: body.length,
    };
    packed.set(path, { body: brotliCompressSync(body, { params }), type });
  }
  return packed.get(path);
}

export async function serve() {
  const server = createServer(async (request, response) => {
    try {
      const { body, type } = await pack(new URL(request.url, "http://localhost").pathname);
      response.writeHead(200, {
        "content-type": type,
        "content-encoding": "br",
        "content-length": body.length,
        "cache-control": "no-store",
        "cross-origin-opener-policy": "same-origin",
        "cross-origin-embedder-policy": "require-corp",
        "cross-origin-resource-policy": "same-origin",
      });
      response.end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
  return { url: `http://127.0.0.1:${server.address().port}`, close: () => server.close() };
}
