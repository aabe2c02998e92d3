// Stretches shown slowly: how fast it plays where.

import assert from "node:assert/strict";
import { test } from "node:test";
import { Player } from "../../wasm/js/player.js";
import { paceOf } from "../../wasm/js/slow.js";

test("the slowest of the stretches that are on holds, from its start up to its end", () => {
  const pace = paceOf(Float64Array.of(1, 3, 0.5, 2, 4, 0.25));
  assert.deepEqual([0.9, 1, 2, 3, 3.9, 4].map(pace), [1, 0.5, 0.25, 0.25, 0.25, 1]);
  assert.equal(paceOf(undefined)(2), 1);
});

test("a slow stretch slows the chosen speed and leaves that as it is", () => {
  const player = new Player(() => {});
  player.open(10, [0]);
  player.pace = paceOf(Float64Array.of(1, 2, 0.5));
  player.rate = 2;
  player.play();
  const times = [0, 0, 0, 0].map(() => {
    player.advance(0.5);
    return player.time;
  });
  assert.deepEqual(times, [1, 1.5, 2, 3]);
  assert.equal(player.rate, 2);
});
