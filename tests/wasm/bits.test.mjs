// The wasm build moves like the native one, to the last bit: both are held against one list.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { before, test } from "node:test";
import { Play, initSync } from "../../wasm/pkg/raw/backcut.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const sets = readdirSync(`${root}/web-demo/sets`)
  .filter((name) => name.endsWith(".json"))
  .map((name) => ({ name, bytes: readFileSync(`${root}/web-demo/sets/${name}`) }));

/** Each line: set, frames a second, hash, hash mirrored; tests/golden.rs makes and holds it. */
const native = new Map(
  readFileSync(`${root}/tests/golden/hashes.txt`, "utf8")
    .trim()
    .split("\n")
    .map((line) => line.split(" "))
    .map(([name, fps, ...hashes]) => [`${name}.json`, { fps: Number(fps), hashes }]),
);

before(() => {
  initSync({ module: readFileSync(`${root}/wasm/pkg/raw/backcut_bg.wasm`) });
});

for (const { name, bytes } of sets) {
  test(`${name} moves alike natively and in wasm, mirrored too`, () => {
    const { fps, hashes } = native.get(name);
    const moved = [false, true].map((mirror) => {
      const play = Play.open(bytes, undefined, undefined, mirror);
      const hash = play.frameHash(fps);
      play.free();
      return hash;
    });
    assert.deepEqual(moved, hashes);
  });
}

test("the frame buffer says where everybody is, in the order that is documented", () => {
  const { memory } = initSync({ module: readFileSync(`${root}/wasm/pkg/raw/backcut_bg.wasm`) });
  const play = Play.open(sets[0].bytes, undefined, undefined, false);
  play.frame(0.5);
  const [t, , , z, holder, ...players] = new Float32Array(
    memory.buffer,
    play.framePointer,
    play.frameLength,
  );
  assert.equal(t, 0.5);
  assert.ok(z >= 0 && holder >= 1 && holder <= 5);
  assert.equal(players.length, 25);
  for (let i = 0; i < 25; i += 5) assert.equal(players[i], (play.players >> (i / 5)) & 1);
  play.free();
});

test("a level or court by a wrong name is a fault that names the right ones", () => {
  try {
    Play.open(sets[0].bytes, "fibba", undefined, false);
    assert.fail("opened");
  } catch (faults) {
    assert.equal(faults[0].code, "unknown-option");
    assert.match(faults[0].message, /fibba.*fiba, nba/);
  }
});

test("every kind of bad input is told as faults, never by a trap", () => {
  const inputs = [
    "",
    "{",
    "[".repeat(200_000),
    "1e999",
    "x".repeat(1_000_000),
    '{"backcut": 2}',
    "\u0000",
  ];
  for (const input of inputs) {
    assert.throws(
      () => Play.open(new TextEncoder().encode(input), undefined, undefined, false),
      (faults) =>
        Array.isArray(faults) && faults.length > 0 && typeof faults[0].message === "string",
      input.slice(0, 20),
    );
  }
});
