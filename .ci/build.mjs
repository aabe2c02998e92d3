// Builds the package: two wasm modules by wasm-pack, each beside one minified module and with its
// hash in its name.
//
//     wasm/pkg/raw/, wasm/pkg/full/   what wasm-pack makes; the sources in wasm/js import it
//     wasm/pkg/backcut.js             what a page loads
//     wasm/pkg/backcut_bg-HASH.wasm   what that loads
//     wasm/pkg/words/                 what .ci/words.mjs makes of the message catalogues; imported too
//     wasm/pkg/words-es-HASH.js       what that loads on a page in Spanish
//     wasm/pkg/late-HASH.js           what that loads after the first picture
//     wasm/pkg/sharing-HASH.js        what that loads when somebody shares
//     wasm/pkg/teaching-HASH.js       what that loads when somebody teaches by it
//     wasm/pkg/full-HASH.js           what that loads when it is asked for more
//     wasm/pkg/full_bg-HASH.wasm      what that loads
//     wasm/pkg/inlined.js             all the modules in one, for a page that carries the wasm inside
//     wasm/pkg/frame.html, frame.js   a page of one set, for sites that allow only frames
//     wasm/pkg/snippet.html           the lines that a page needs, with version and hash
//     wasm/pkg/types/                 its types
//     wasm/pkg/custom-elements.json   what a page may use of the element

import { createHash } from "node:crypto";
import {
  copyFileSync,
  cpSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { customElements } from "./manifest.mjs";
import { root, run } from "./process.mjs";
import { setup } from "./setup.mjs";
import { shorten } from "./shorten.mjs";
import { snippet } from "./snippet.mjs";
import { words } from "./words.mjs";

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

/** A module with its style sheet, the one template text of several lines, without the blanks that are for people. */
function tight(text) {
  return text.replace(/`\n[^`]*`/g, (css) =>
    css
      .replace(/\s*([{};,])\s*/g, "$1")
      .replace(/;}/g, "}")
      .replace(/: /g, ":"),
  );
}

/**
 * One module of all that `entry` imports: glue by the folder it is for, in place of the long one;
 * `defined` is what the sources ask for by name; `instead` has modules in place of others.
 */
async function bundled(entry, glue, defined, instead = {}) {
  const esbuild = await import("esbuild");
  const named = Object.entries(defined).map(([key, value]) => [key, JSON.stringify(value)]);
  const withParts = {
    name: "with-parts",
    setup(build) {
      build.onLoad({ filter: /(raw|full)[/\\]backcut\.js$/ }, ({ path }) => {
        return { contents: glue[basename(dirname(path))] };
      });
      build.onLoad({ filter: /styles\.js$/ }, ({ path }) => {
        return { contents: tight(readFileSync(path, "utf8")) };
      });
      for (const [name, path] of Object.entries(instead)) {
        build.onResolve({ filter: new RegExp(`[/]${name}$`) }, ({ resolveDir, path: asked }) => {
          return { path: join(resolveDir, dirname(asked), path) };
        });
      }
    },
  };
  const { outputFiles } = await esbuild.build({
    entryPoints: [join(root, "wasm", "js", entry)],
    bundle: true,
    minify: true,
    format: "esm",
    target: "es2022",
    charset: "utf8",
    define: Object.fromEntries(named),
    plugins: [withParts],
    // They stay where they are, beside this one.
    external: Object.values(defined).filter((name) => name.endsWith(".js")),
    logLevel: "warning",
    write: false,
  });
  return outputFiles[0].contents;
}

async function bundle() {
  for (const name of readdirSync(pkg).filter((n) => /-[0-9a-f]{12}\.(js|wasm)$/.test(n))) {
    rmSync(join(pkg, name));
  }
  const [raw, full] = [made("raw"), made("full")];
  const glue = { raw: raw.glue, full: full.glue };
  const firstFile = `./${published("backcut_bg", "wasm", raw.wasm)}`;
  const wholeFile = `./${published("full_bg", "wasm", full.wasm)}`;
  const apart = { WASM_FILE: firstFile, FULL_WASM_FILE: wholeFile };
  const fullModule = await bundled("full.js", glue, apart);
  const spanish = await bundled("spanish.js", glue, {});
  const SPANISH_FILE = `./${published("words-es", "js", spanish)}`;
  const sharing = await bundled("sharing.js", glue, {});
  const teaching = await bundled("teaching.js", glue, {});
  const late = {
    SPANISH_FILE,
    SHARING_FILE: `./${published("sharing", "js", sharing)}`,
    TEACHING_FILE: `./${published("teaching", "js", teaching)}`,
  };
  const module = await bundled("index.js", glue, {
    ...apart,
    LATE_FILE: `./${published("late", "js", await bundled("late.js", glue, late))}`,
    FULL_FILE: `./${published("full", "js", fullModule)}`,
    SPANISH_FILE,
  });
  writeFileSync(join(pkg, "backcut.js"), module);
  const inlined = await bundled("index.js", glue, apart, { "source.js": "inlined.js" });
  writeFileSync(join(pkg, "inlined.js"), inlined);
  writeFileSync(join(pkg, "frame.js"), await bundled("frame.js", glue, apart));
  copyFileSync(join(root, "wasm", "js", "frame.html"), join(pkg, "frame.html"));
  return { firstFile, wholeFile };
}

/** @param {{ firstFile: string, wholeFile: string }} files */
function manifest({ firstFile, wholeFile }) {
  const { license } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const version = /^version = "(.*)"$/m.exec(readFileSync(join(root, "Cargo.toml"), "utf8"))?.[1];
  const manifest = {
    name: "backcut",
    version,
    description: 'Plays a written basketball set on a page: <backcut-set src="set.json">',
    license,
    type: "module",
    exports: {
      ".": { types: "./types/index.d.ts", default: "./backcut.js" },
      // For a page that asks for them ahead, by whatever name its bundler gives them.
      "./wasm": firstFile,
      "./full-wasm": wholeFile,
      "./inlined.js": { types: "./types/index.d.ts", default: "./inlined.js" },
      "./react": { types: "./types/react.d.ts" },
      "./preact": { types: "./types/preact.d.ts" },
      "./frame.html": "./frame.html",
      "./frame.js": "./frame.js",
      "./snippet.html": "./snippet.html",
      "./custom-elements.json": "./custom-elements.json",
      "./package.json": "./package.json",
    },
    customElements: "custom-elements.json",
    files: [
      "backcut.js",
      "backcut_bg-*.wasm",
      "late-*.js",
      "sharing-*.js",
      "teaching-*.js",
      "full-*.js",
      "words-es-*.js",
      "full_bg-*.wasm",
      "inlined.js",
      "frame.html",
      "frame.js",
      "snippet.html",
      "custom-elements.json",
      "types",
    ],
    sideEffects: ["./backcut.js", "./frame.js", "./inlined.js"],
  };
  writeFileSync(join(pkg, "package.json"), `${JSON.stringify(manifest, null, 2)}\n`);
  writeFileSync(join(pkg, manifest.customElements), customElements());
  writeFileSync(join(pkg, "snippet.html"), snippet(pkg, version, basename(firstFile)));
}

function types() {
  const emit = ["--noEmit", "false", "--declaration", "--emitDeclarationOnly"];
  run("tsc", ["-p", "wasm/js", ...emit, "--rootDir", "wasm/js", "--outDir", "wasm/pkg/types"]);
  const folder = join(pkg, "types");
  for (const name of readdirSync(folder, { recursive: true })) {
    if (!name.endsWith(".d.ts")) continue;
    const text = readFileSync(join(folder, name), "utf8");
    // What wasm-pack made lies elsewhere in the package, or not at all.
    writeFileSync(
      join(folder, name),
      text
        .replace(/\.\.\/pkg\/(raw|full)\/backcut\.js/g, "./$1-wasm.js")
        .replaceAll("../pkg/words/", "./words/"),
    );
  }
  const declares = (path) => !path.endsWith(".js");
  cpSync(join(pkg, "words"), join(folder, "words"), { recursive: true, filter: declares });
  for (const name of ["raw", "full"]) {
    const text = readFileSync(join(pkg, name, "backcut.d.ts"), "utf8");
    // Needs a newer library than a page's own project may have.
    const plain = text.replace(/^\s*\[Symbol\.dispose\]\(\): void;\n/gm, "");
    writeFileSync(join(folder, `${name}-wasm.d.ts`), plain);
  }
  // What holds for frameworks that need not be installed here.
  cpSync(join(root, "wasm", "types"), folder, { recursive: true });
}

/** Makes wasm/pkg. */
export async function build() {
  mkdirSync(pkg, { recursive: true });
  // The first is small above all; the other is asked for by somebody who waits for its answer.
  wasm("raw", "z", "--no-default-features");
  wasm("full", "2");
  await words();
  const files = await bundle();
  types();
  manifest(files);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  await setup();
  await build();
}
