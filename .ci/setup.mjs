// Installs what a fresh machine lacks, into this folder where that is possible: the wasm target,
// the wasm tools, the development packages and, for the tests, a browser. Quick when nothing is
// missing. Uses only what Node brings, since it runs before anything is installed.

import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { createHash } from "node:crypto";
import { pathToFileURL } from "node:url";
import { find, output, root, run, start, tools } from "./process.mjs";

const WASM_PACK = "0.15.1";
const WASM_TARGET = "wasm32-unknown-unknown";
/** The browsers of the tests: names under which each is installed, best first, and what Debian calls it. */
const BROWSERS = {
  Chromium: {
    commands: ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"],
    debian: ["chromium", "fonts-dejavu-core"],
  },
  Firefox: { commands: ["firefox-esr", "firefox"], debian: ["firefox-esr"] },
};

/** Ends the run with one sentence about what is missing. */
function missing(sentence) {
  console.error(sentence);
  process.exit(1);
}

function rust() {
  if (!find("cargo"))
    missing("Rust is missing: install it from https://rustup.rs, then run this again.");
  const rustup = find("rustup");
  const libraries = output("rustc", ["--print", "target-libdir", "--target", WASM_TARGET]);
  if (!libraries || !existsSync(libraries)) {
    if (!rustup)
      missing(
        `Rust's target ${WASM_TARGET} is missing: install it with your system's package manager.`,
      );
    run("rustup", ["target", "add", WASM_TARGET]);
  }
  for (const [component, command] of [
    ["clippy", "cargo-clippy"],
    ["rustfmt", "cargo-fmt"],
  ]) {
    if (output(command, ["--version"])) continue;
    if (!rustup)
      missing(`Rust's ${component} is missing: install it with your system's package manager.`);
    run("rustup", ["component", "add", component]);
  }
}

/** The wasm-bindgen that the lock file names: its command line tool must be of the same version. */
function lockedBindgen() {
  const lock = readFileSync(join(root, "Cargo.lock"), "utf8");
  const version = /name = "wasm-bindgen"\nversion = "([^"]+)"/.exec(lock)?.[1];
  return version ?? missing("Cargo.lock names no wasm-bindgen.");
}

async function wasmTools() {
  const wanted = [
    ["wasm-pack", "wasm-pack", WASM_PACK],
    ["wasm-bindgen-cli", "wasm-bindgen", lockedBindgen()],
  ];
  const lacking = wanted.filter(
    ([, command, version]) => !output(join(tools, command), ["--version"])?.endsWith(` ${version}`),
  );
  if (lacking.length === 0) return;
  console.log("Building the wasm tools (once, about two minutes)");
  const crates = lacking.map(([crate, , version]) => `${crate}@${version}`);
  // Unoptimised and without debug data: they run for seconds, building them takes minutes.
  await start(
    "cargo",
    ["install", "--locked", "--debug", "--root", join(root, ".tools"), ...crates],
    {
      CARGO_PROFILE_DEV_DEBUG: "0",
      CARGO_TARGET_DIR: join(root, ".tools", "target"),
    },
  );
}

async function packages() {
  const lock = createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .digest("hex");
  const stamp = join(root, "node_modules", ".installed-from");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === lock) return;
  await start("npm", ["ci", "--no-audit", "--no-fund"]);
  writeFileSync(stamp, lock);
}

/** The full path of an installed browser, if any. @param {"Chromium" | "Firefox"} name */
export function browser(name) {
  return BROWSERS[name].commands.map(find).find(Boolean);
}

async function browsersOfTests() {
  const lacking = () => Object.keys(BROWSERS).filter((name) => !browser(name));
  const packages = lacking().flatMap((name) => BROWSERS[name].debian);
  if (packages.length === 0) return;
  const isRoot = process.getuid?.() === 0;
  if (isRoot && find("apt-get")) {
    await start("apt-get", ["update"]);
    await start("apt-get", ["install", "-y", "--no-install-recommends", ...packages]);
  }
  const names = lacking().join(" and ");
  if (names)
    missing(
      `The tests need ${names}: install what is missing, on Debian with \`sudo apt-get install ${packages.join(" ")}\`.`,
    );
}

/** Installs what building needs and, with `browsers`, what the browser tests need too. */
export async function setup({ browsers = false } = {}) {
  rust();
  // One builds, the others fetch and unpack.
  await Promise.all([wasmTools(), packages(), browsers && browsersOfTests()]);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) await setup({ browsers: true });
