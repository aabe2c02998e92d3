// Builds the package: wasm by wasm-pack, then one minified module beside a wasm file that carries
// its hash in its name.
//
//     wasm/pkg/raw/                 what wasm-pack makes; the sources in wasm/js import it
//     wasm/pkg/backcut.js           what a page loads
//     wasm/pkg/backcut_bg-HASH.wasm what that loads
//     wasm/pkg/types/               its types
//     wasm/pkg/custom-elements.json what a page may use of the element

import { createHash } from "node:crypto";
import { copyFileSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { customElements } from "./manifest.mjs";
import { root, run } from "./process.mjs";
import { setup } from "./setup.mjs";

const pkg = join(root, "wasm", "pkg");

function wasm() {
  run("wasm-pack", [
    ...["build", "wasm", "--target", "web", "--release", "--mode", "no-install"],
    ...["--no-pack", "--out-dir", "pkg/raw", "--out-name", "backcut", "--", "--locked"],
  ]);
}

/** The glue would look for the wasm file under a name that is not published: we always pass one. */
const withoutDefaultFile = {
  name: "without-default-file",
  setup(build) {
    build.onLoad({ filter: /raw[/\\]backcut\.js$/ }, ({ path }) => {
      const text = readFileSync(path, "utf8");
      const contents = text.replace("new URL('backcut_bg.wasm', import.meta.url)", "undefined");
      if (contents === text) throw new Error("the glue no longer names its wasm file as expected");
      return { contents, loader: "js" };
    });
  },
};

async function bundle() {
  const bytes = readFileSync(join(pkg, "raw", "backcut_bg.wasm"));
  const hash = createHash("sha256").update(bytes).digest("hex").slice(0, 12);
  const file = `backcut_bg-${hash}.wasm`;
  for (const name of readdirSync(pkg).filter(
    (n) => /^backcut_bg-.*\.wasm$/.test(n) && n !== file,
  )) {
    rmSync(join(pkg, name));
  }
  copyFileSync(join(pkg, "raw", "backcut_bg.wasm"), join(pkg, file));
  const esbuild = await import("esbuild");
  await esbuild.build({
    entryPoints: [join(root, "wasm", "js", "index.js")],
    outfile: join(pkg, "backcut.js"),
    bundle: true,
    minify: true,
    format: "esm",
    target: "es2022",
    define: { WASM_FILE: JSON.stringify(`./${file}`) },
    plugins: [withoutDefaultFile],
    logLevel: "warning",
  });
}

function manifest() {
  const { license } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const version = /^version = "(.*)"$/m.exec(readFileSync(join(root, "Cargo.toml"), "utf8"))?.[1];
  const manifest = {
    name: "backcut",
    version,
    description: 'Plays a written basketball set on a page: <backcut-set src="set.json">',
    license,
    type: "module",
    exports: { ".": { types: "./types/index.d.ts", default: "./backcut.js" } },
    customElements: "custom-elements.json",
    files: ["backcut.js", "backcut_bg-*.wasm", "custom-elements.json", "types"],
    sideEffects: ["./backcut.js"],
  };
  writeFileSync(join(pkg, "package.json"), `${JSON.stringify(manifest, null, 2)}\n`);
  writeFileSync(join(pkg, manifest.customElements), customElements());
}

function types() {
  const emit = ["--noEmit", "false", "--declaration", "--emitDeclarationOnly"];
  run("tsc", ["-p", "wasm/js", ...emit, "--rootDir", "wasm/js", "--outDir", "wasm/pkg/types"]);
}

/** Makes wasm/pkg. */
export async function build() {
  mkdirSync(pkg, { recursive: true });
  wasm();
  await bundle();
  types();
  manifest();
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  setup();
  await build();
}
