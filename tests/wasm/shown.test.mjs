// A range that is played: what keeps an element to it, from whichever module.

import assert from "node:assert/strict";
import { test } from "node:test";
import { keepTo, leaveRange } from "../../wasm/js/shown.js";
// Each published module has this source for itself.
import * as elsewhere from "../../wasm/js/shown.js?elsewhere";

/** As much of an element as a range needs; `picture` shows the next one. */
class Played extends EventTarget {
  paused = false;
  currentTime = 0;
  duration = 10;
  #wanted = new Map();
  #asked = 0;

  requestVideoFrameCallback(callback) {
    this.#wanted.set((this.#asked += 1), callback);
    return this.#asked;
  }

  cancelVideoFrameCallback(asked) {
    this.#wanted.delete(asked);
  }

  pause() {
    this.paused = true;
  }

  play() {
    this.paused = false;
    this.dispatchEvent(new Event("play"));
    return Promise.resolve();
  }

  picture(time) {
    this.currentTime = time;
    for (const [asked, callback] of [...this.#wanted]) {
      this.#wanted.delete(asked);
      callback();
    }
    return this.currentTime;
  }
}

test("over and over, whoever plays is never outside of the range", () => {
  const set = new Played();
  set.currentTime = 3;
  keepTo(set, 2, 4, true);
  assert.equal(set.picture(3.9), 3.9);
  assert.equal(set.picture(4), 2);
  assert.equal(set.picture(7), 2);
  // From its end a page may start the set again.
  assert.equal(set.picture(0), 2);
  assert.equal(set.picture(1.9), 2);
  set.pause();
  assert.equal(set.picture(1), 1);
  set.play();
  assert.equal(set.currentTime, 2);
});

test("over and over up to the end, it starts again where the range does", () => {
  const set = new Played();
  keepTo(set, 6, 10, true);
  set.pause();
  set.currentTime = 10;
  set.dispatchEvent(new Event("ended"));
  assert.deepEqual([set.currentTime, set.paused], [6, false]);
});

test("once, it stands at the end, and who starts before is let be", () => {
  const set = new Played();
  keepTo(set, 2, 4, false);
  assert.equal(set.picture(1), 1);
  assert.equal(set.picture(4.1), 4);
  assert.ok(set.paused);
  set.play();
  assert.equal(set.picture(5), 5);
});

test("a range gives way to another's, and ends by another's hand", () => {
  const set = new Played();
  set.currentTime = 2;
  keepTo(set, 2, 4, true);
  elsewhere.keepTo(set, 5, 6, true);
  assert.equal(set.picture(5.5), 5.5);
  leaveRange(set);
  assert.equal(set.picture(9), 9);
});
