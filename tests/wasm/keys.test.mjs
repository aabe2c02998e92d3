// The list of keys says what the keys do.

import assert from "node:assert/strict";
import { test } from "node:test";
import { KEYS, NO_CHARACTERS } from "../../wasm/js/keys.js";
import { late } from "../../wasm/pkg/words/late.js";
import { first } from "../../wasm/pkg/words/first.js";
import { listed } from "../../wasm/js/controls/keys.js";

const host = (keys = null) => ({ getAttribute: () => keys });
const say = { ...first(String), ...late(String) };

test("every key that acts is listed once, and nothing else", () => {
  const caps = listed(host(), say).flatMap(({ caps }) => caps);
  assert.equal(caps.length, Object.keys(KEYS).length);
  assert.equal(new Set(caps).size, caps.length);
  for (const { does } of listed(host(), say)) assert.notEqual(does, "");
});

test("keys that ask for the same stand together", () => {
  const rows = new Map(listed(host(), say).map(({ caps, does }) => [does, caps]));
  assert.deepEqual(rows.get("Play or pause"), ["Space", "K"]);
  assert.deepEqual(rows.get("Follow that player too; again: no longer"), ["1", "2", "3", "4", "5"]);
  assert.deepEqual(rows.get("1 second back"), ["Left"]);
});

test("without characters the list has none", () => {
  const caps = listed(host(NO_CHARACTERS), say).flatMap(({ caps }) => caps);
  assert.ok(caps.includes("Space") && caps.includes("Left"));
  assert.deepEqual(
    caps.filter((cap) => cap.length === 1),
    [],
  );
});
