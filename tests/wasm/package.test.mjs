// What is published: its size, what it may not contain, and that a server can import it.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { brotliCompressSync } from "node:zlib";
import { featuresOf } from "./features.mjs";

const pkg = new URL("../../wasm/pkg/", import.meta.url);
const budget = JSON.parse(readFileSync(new URL("budget.json", import.meta.url), "utf8"));

const published = readdirSync(pkg).filter((name) => /-[0-9a-f]{12}\.(js|wasm)$/.test(name));
const [firstWasm, wordsModule, lateModule, sharingModule, teachingModule, fullModule, fullWasm] = [
  "backcut_bg",
  "words-es",
  "late",
  "sharing",
  "teaching",
  "full",
  "full_bg",
].map((stem) => published.find((name) => name.startsWith(`${stem}-`)));
const compressed = (name) => brotliCompressSync(readFileSync(new URL(name, pkg))).length;

test("no part of an embed grows past its budget", () => {
  const [module, wasm] = [compressed("backcut.js"), compressed(firstWasm)];
  const full = compressed(fullModule) + compressed(fullWasm);
  const late = compressed(lateModule);
  const [sharing, teaching] = [compressed(sharingModule), compressed(teachingModule)];
  const spanish = compressed(wordsModule);
  const now = { module, wasm, total: module + wasm, late, spanish, sharing, teaching, full };
  console.log(`Brotli bytes: ${JSON.stringify(now)}`);
  for (const [name, most] of Object.entries(budget)) {
    assert.ok(now[name] <= most, `${name}: ${now[name]} bytes, budget ${most}`);
  }
});

test("each module names exactly the files that it loads", () => {
  const files = (name) => {
    const text = readFileSync(new URL(name, pkg), "utf8");
    return new Set(text.match(/[\w-]+-[0-9a-f]{12}\.(?:js|wasm)/g));
  };
  assert.equal(published.length, 7);
  assert.deepEqual(files("backcut.js"), new Set([firstWasm, lateModule, fullModule, wordsModule]));
  assert.deepEqual(files(lateModule), new Set([sharingModule, teachingModule, wordsModule]));
  assert.deepEqual(files(fullModule), new Set([fullWasm]));
});

test("the modules use four features of WebAssembly beyond its first version, and no other", () => {
  // Chromium, Firefox and Safari have had vectors since March 2023 (Safari 16.4), the others since
  // 2021 at the latest. From memory.
  const known = ["bulk memory", "saturating conversion", "sign extension", "vectors"];
  for (const name of [firstWasm, fullWasm]) {
    const used = featuresOf(readFileSync(new URL(name, pkg)));
    assert.deepEqual([...used].sort(), known, name);
  }
});

test("nothing in it is evaluated from text, and no address is built in", () => {
  for (const name of ["backcut.js", lateModule, sharingModule, teachingModule, fullModule]) {
    const text = readFileSync(new URL(name, pkg), "utf8");
    assert.doesNotMatch(text, /\beval\(|new Function\(|blob:/);
    const addresses = text.match(/https?:\/\/[\w./-]+/g) ?? [];
    assert.deepEqual(
      addresses.filter((a) => a !== "http://www.w3.org/2000/svg"),
      [],
    );
  }
});

test("a server may import it: nothing happens", async () => {
  const { BackcutSet } = await import(new URL("backcut.js", pkg));
  assert.equal(typeof BackcutSet, "function");
  assert.equal(globalThis.customElements, undefined);
});
