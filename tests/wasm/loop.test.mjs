// The page's one loop and a player, against a clock that is wound by hand.

import assert from "node:assert/strict";
import { afterEach, beforeEach, test } from "node:test";
import { run, stop } from "../../wasm/js/loop.js";
import { Player } from "../../wasm/js/player.js";

let asked = /** @type {((now: number) => void) | undefined} */ (undefined);
let requests = 0;

beforeEach(() => {
  asked = undefined;
  requests = 0;
  globalThis.requestAnimationFrame = (callback) => {
    assert.equal(asked, undefined, "one loop a page");
    asked = callback;
    return (requests += 1);
  };
  globalThis.cancelAnimationFrame = () => {
    asked = undefined;
  };
});
afterEach(() => {
  delete globalThis.requestAnimationFrame;
  delete globalThis.cancelAnimationFrame;
});

/** The next frame, at `now` milliseconds. */
function frame(now) {
  const callback = asked;
  asked = undefined;
  callback?.(now);
}

/** A set of `duration` seconds that plays in the loop. */
function playing(duration, loop = true) {
  const player = new Player(() => {});
  player.open(duration, [0]);
  player.loop = loop;
  player.play();
  const tick = (seconds) => player.advance(seconds);
  run(tick);
  return { player, tick };
}

test("ten minutes of looping drift by less than a frame, at even and at uneven frames", () => {
  for (const step of [() => 1000 / 60, (i) => 4 + ((i * 7919) % 61)]) {
    const { player, tick } = playing(9.1);
    let now = 1000;
    const start = now;
    frame(now);
    for (let i = 0; now - start < 600_000; i += 1) frame((now += step(i)));
    const clock = ((now - start) / 1000) % 9.1;
    const apart = Math.abs(player.time - clock);
    assert.ok(
      Math.min(apart, 9.1 - apart) < 1e-6,
      `${player.time} by the player, ${clock} by the clock`,
    );
    stop(tick);
  }
});

test("after a time in which no frame came it goes on where it was", () => {
  const { player, tick } = playing(60);
  frame(1000);
  frame(1016);
  const before = player.time;
  // The tab was hidden for ten minutes.
  frame(601_016);
  assert.ok(player.time - before <= 0.1, `${before} to ${player.time}`);
  frame(601_032);
  assert.ok(Math.abs(player.time - before - 0.116) < 1e-9);
  stop(tick);
});

test("however many play, one frame is asked for; once none does, none is", () => {
  const all = [playing(9), playing(9), playing(9)];
  assert.equal(requests, 1);
  for (let i = 0; i < 10; i += 1) frame(i * 16);
  assert.equal(requests, 11);
  for (const { tick } of all) stop(tick);
  assert.equal(asked, undefined);
});
