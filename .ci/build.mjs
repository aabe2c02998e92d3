// Builds the package: two wasm modules by wasm-pack, each beside one minified module and with its
// hash in its name.
//
//     wasm/pkg/raw/, wasm/pkg/full/   what wasm-pack makes; the sources in wasm/js import it
//     wasm/pkg/backcut.js             what a page loads
//     wasm/pkg/backcut_bg-HASH.wasm   what that loads
//     wasm/pkg/late-HASH.js           what that loads after the first picture
//     wasm/pkg/full-HASH.js           what that loads when it is asked for more
//     wasm/pkg/full_bg-HASH.wasm      what that loads
//     wasm/pkg/types/                 its types
//     wasm/pkg/custom-elements.json   what a page may use of the element

import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { customElements } from "./manifest.mjs";
import { root, run } from "./process.mjs";
import { setup } from "./setup.mjs";
import { shorten } from "./shorten.mjs";

const pkg = join(root, "wasm", "pkg");

/** @param {string} folder @param {string} level of optimisation @param {...string} features */
function wasm(folder, level, ...features) {
  const args = [
    ...["build", "wasm", "--target", "web", "--release", "--mode", "no-install"],
    ...["--no-pack", "--out-dir", `pkg/${folder}`, "--out-name", "backcut", "--", "--locked"],
    ...features,
  ];
  run("wasm-pack", args, { CARGO_PROFILE_RELEASE_OPT_LEVEL: level });
}

/** What wasm-pack made in `folder`, its names shortened. */
function made(folder) {
  const file = (name) => readFileSync(join(pkg, folder, name));
  return shorten(file("backcut_bg.wasm"), file("backcut.js").toString());
}

/** Writes `contents` under a name with their hash, which it returns. */
function published(stem, ending, contents) {
  const hash = createHash("sha256").update(contents).digest("hex").slice(0, 12);
  const name = `${stem}-${hash}.${ending}`;
  writeFileSync(join(pkg, name), contents);
  return name;
}

/** One module of all that `entry` imports, `glue` in place of the long one. */
async function bundled(entry, glue, files) {
  const esbuild = await import("esbuild");
  const named = Object.entries(files).map(([key, name]) => [key, JSON.stringify(`./${name}`)]);
  const withGlue = {
    name: "with-glue",
    setup(build) {
      build.onLoad({ filter: /(raw|full)[/\\]backcut\.js$/ }, () => ({ contents: glue }));
    },
  };
  const { outputFiles } = await esbuild.build({
    entryPoints: [join(root, "wasm", "js", entry)],
    bundle: true,
    minify: true,
    format: "esm",
    target: "es2022",
    define: Object.fromEntries(named),
    plugins: [withGlue],
    logLevel: "warning",
    write: false,
  });
  return outputFiles[0].contents;
}

async function bundle() {
  for (const name of readdirSync(pkg).filter((n) => /-[0-9a-f]{12}\.(js|wasm)$/.test(n))) {
    rmSync(join(pkg, name));
  }
  const [first, full] = [made("raw"), made("full")];
  const fullModule = await bundled("full.js", full.glue, {
    WASM_FILE: published("full_bg", "wasm", full.wasm),
  });
  const module = await bundled("index.js", first.glue, {
    WASM_FILE: published("backcut_bg", "wasm", first.wasm),
    LATE_FILE: published("late", "js", await bundled("late.js", "", {})),
    FULL_FILE: published("full", "js", fullModule),
  });
  writeFileSync(join(pkg, "backcut.js"), module);
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
    files: [
      "backcut.js",
      "backcut_bg-*.wasm",
      "late-*.js",
      "full-*.js",
      "full_bg-*.wasm",
      "custom-elements.json",
      "types",
    ],
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
  // The first is small above all; the other is asked for by somebody who waits for its answer.
  wasm("raw", "z", "--no-default-features");
  wasm("full", "2");
  await bundle();
  types();
  manifest();
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  setup();
  await build();
}
