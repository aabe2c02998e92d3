// The wasm build moves like the native one, to the last bit: both are held against one list.

import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { before, test } from "node:test";
import * as first from "../../wasm/pkg/raw/backcut.js";
import * as full from "../../wasm/pkg/full/backcut.js";

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

const memory = {};

before(() => {
  for (const [folder, module] of Object.entries({ raw: first, full })) {
    const bytes = readFileSync(`${root}/wasm/pkg/${folder}/backcut_bg.wasm`);
    memory[folder] = module.initSync({ module: bytes }).memory;
  }
});

/** The frame buffer at `t`. */
function frame(folder, play, t) {
  play.frame(t);
  return new Float32Array(memory[folder].buffer, play.framePointer, play.frameLength);
}

/** Each line: set, coverage, hash. */
const defences = readFileSync(`${root}/tests/golden/defences.txt`, "utf8")
  .trim()
  .split("\n")
  .map((line) => line.split(" "));

for (const { name, bytes } of sets) {
  test(`${name} is defended alike natively and in wasm`, () => {
    const play = full.Play.open(bytes, undefined, undefined, false);
    const native = defences.filter(([set]) => `${set}.json` === name);
    const here = play.coverages.map((coverage) => {
      play.defend(coverage);
      return [native[0][0], coverage, play.defenceHash.toString(16).padStart(16, "0")];
    });
    play.free();
    assert.deepEqual(here, native);
  });

  test(`${name} moves alike natively and in wasm, mirrored too`, () => {
    const { fps, hashes } = native.get(name);
    const moved = [false, true].map((mirror) => {
      const play = full.Play.open(bytes, undefined, undefined, mirror);
      const hash = play.frameHash(fps).toString(16).padStart(16, "0");
      play.free();
      return hash;
    });
    assert.deepEqual(moved, hashes);
  });

  test(`${name} moves alike in both modules`, () => {
    const plays = [first, full].map(({ Play }) => Play.open(bytes, undefined, undefined, false));
    assert.equal(plays[0].duration, plays[1].duration);
    for (let t = 0; t < plays[0].duration; t += 1 / 30) {
      assert.deepEqual(frame("raw", plays[0], t), frame("full", plays[1], t));
    }
    plays.forEach((play) => play.free());
  });
}

test("the frame buffer says where everybody is, in the order that is documented", () => {
  const play = first.Play.open(sets[0].bytes, undefined, undefined, false);
  const [t, , , z, holder, ...players] = frame("raw", play, 0.5);
  assert.equal(t, 0.5);
  assert.ok(z >= 0 && holder >= 1 && holder <= 5);
  assert.equal(players.length, 25);
  for (let i = 0; i < 25; i += 5) assert.equal(players[i], (play.players >> (i / 5)) & 1);
  play.free();
});

test("a level or court by a wrong name is a fault that names the right ones", () => {
  try {
    full.Play.open(sets[0].bytes, "fibba", undefined, false);
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
    const open = ({ Play }) => {
      Play.open(new TextEncoder().encode(input), undefined, undefined, false);
    };
    assert.throws(
      () => open(full),
      (faults) =>
        Array.isArray(faults) && faults.length > 0 && typeof faults[0].message === "string",
      input.slice(0, 20),
    );
    // The first module refuses the same without a word.
    assert.throws(
      () => open(first),
      (reason) => reason === undefined,
      input.slice(0, 20),
    );
  }
});

const faulty = fileURLToPath(new URL("../../core/tests/faults/", import.meta.url));
test("both modules refuse the same files, but for slow stretches, which the first takes on trust", () => {
  const files = readdirSync(faulty).filter((name) => name.endsWith(".json"));
  assert.ok(files.length > 50);
  for (const name of files) {
    const bytes = readFileSync(`${faulty}/${name}`);
    const open = ({ Play }) => Play.open(bytes, undefined, undefined, false);
    let faults = [];
    assert.throws(
      () => open(full),
      (thrown) => Boolean((faults = thrown)),
      name,
    );
    if (faults.every(({ pointer }) => pointer.startsWith("/slow"))) {
      // It knows that there are some, and such a set goes on with the full one.
      const play = open(first);
      assert.equal(play.slowed, true, name);
      play.free();
    } else assert.throws(() => open(first), undefined, name);
  }
});
