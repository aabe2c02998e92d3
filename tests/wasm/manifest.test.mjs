// custom-elements.json names all that a page may use of the element, and nothing else. It is made from
// comments; here it is held against what the code does.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";
import { BackcutSet } from "../../wasm/pkg/backcut.js";
import { TAG } from "../../wasm/js/names.js";
import { COLOURS, FACES } from "../../wasm/js/palette.js";

const pkg = new URL("../../wasm/pkg/", import.meta.url);
const js = new URL("../../wasm/js/", import.meta.url);
const json = (name) => JSON.parse(readFileSync(new URL(name, pkg), "utf8"));

const source = readdirSync(js, { recursive: true })
  .filter((name) => name.endsWith(".js"))
  .map((name) => readFileSync(new URL(name, js), "utf8"))
  .join("\n");

const { modules } = json("custom-elements.json");
const [declaration] = modules[0].declarations;

const sorted = (names) => [...new Set(names)].sort();
const names = (list) => list.map(({ name }) => name).sort();
const matches = (pattern) => sorted([...source.matchAll(pattern)].map(([, name]) => name));

test("the package names its manifest and carries it", () => {
  const manifest = json("package.json");
  assert.equal(manifest.customElements, "custom-elements.json");
  assert.ok(manifest.files.includes("custom-elements.json"));
  assert.equal(declaration.tagName, TAG);
  assert.equal(modules[0].path, manifest.exports["."].default.slice(2));
});

test("its attributes are those that the element watches", () => {
  assert.deepEqual(names(declaration.attributes), sorted(BackcutSet.observedAttributes));
});

test("its fields and methods are those of the class, and those without a setter are read only", () => {
  const reflected = Object.getPrototypeOf(BackcutSet.prototype);
  const own = [reflected, BackcutSet.prototype]
    .flatMap((prototype) => Object.entries(Object.getOwnPropertyDescriptors(prototype)))
    .filter(
      ([name]) =>
        !/^(constructor|(connected|disconnected|\w+Changed|connectedMove)Callback)$/.test(name),
    )
    .map(([name, { get, set }]) => ({
      name,
      kind: get ? "field" : "method",
      readonly: Boolean(get && !set),
    }));
  const listed = declaration.members.map(({ name, kind, readonly = false }) => ({
    name,
    kind,
    readonly,
  }));
  const byName = (a, b) => (a.name < b.name ? -1 : 1);
  assert.deepEqual(listed.sort(byName), own.sort(byName));
});

test("its events are those that are fired", () => {
  // The player's names reach the page through one line of the element.
  const told = matches(/#emit\("(\w+)"\)/g);
  const own = matches(/new CustomEvent\(EVENT\.(\w+)/g);
  assert.deepEqual(names(declaration.events), sorted([...told, ...own]));
});

test("its parts are those that nodes have", () => {
  assert.deepEqual(names(declaration.cssParts), matches(/part: PART\.(\w+)/g));
});

test("its custom properties are those that the style asks for, with the light value", () => {
  const rows = [...COLOURS, ...FACES].map(([name, value]) => [`--backcut-${name}`, value]);
  const listed = declaration.cssProperties.map((property) => [property.name, property.default]);
  const measures = matches(/\((--backcut-[\w-]+), [^)]/g).map((name) => {
    return [name, new RegExp(`${name}, ([^)]*)\\)`).exec(source)?.[1]];
  });
  assert.deepEqual(listed, [...rows, ...measures]);
});

test("everything in it is described", () => {
  const { attributes, members, events, cssParts, cssProperties, slots } = declaration;
  for (const entry of [attributes, members, events, cssParts, cssProperties, slots].flat()) {
    assert.match(entry.description, /\w.*\w/, entry.name);
  }
});
