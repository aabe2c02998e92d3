// Folding by height: the key, some of the court, the strip, more of the court.

import assert from "node:assert/strict";
import { test } from "node:test";
import { fit } from "../../wasm/js/fit.js";

/** 940 high in all: 180 of it rest, court 480, strip 240, key 40; folded the strip is 80 high. */
const parts = { rest: 180, court: 480, strip: 240, folded: 80, key: 40 };
const at = (room, narrow = false) => fit(760, narrow, { ...parts, room });

test("what fits stays whole, to the pixel", () => {
  assert.deepEqual(at(940), { key: false, strip: false, court: 760 });
  assert.deepEqual(at(939), { key: true, strip: false, court: 760 });
});

test("then the court gives what it can spare", () => {
  assert.deepEqual(at(900), { key: true, strip: false, court: 760 });
  const { strip, court } = at(850);
  assert.equal(strip, false);
  assert.equal(parts.rest + parts.strip + (parts.court * court) / 760, 850);
});

test("the strip folds before the court is less than comfortable", () => {
  const most = parts.rest + parts.strip + (parts.court * 640) / 760;
  assert.equal(at(Math.ceil(most)).strip, false);
  assert.deepEqual(at(Math.floor(most)), { key: true, strip: true, court: 760 });
});

test("the court shrinks last, by just what is lacking", () => {
  assert.equal(at(740).court, 760);
  const { court } = at(640);
  assert.equal(parts.rest + parts.folded + (parts.court * court) / 760, 640);
});

test("it shrinks to 420 pixels and no further, and never grows", () => {
  assert.equal(at(100).court, 420);
  assert.equal(fit(358, true, { ...parts, room: 100 }).court, 358);
});

test("on a phone key and strip are folded however high it is", () => {
  assert.deepEqual(at(2000, true), { key: true, strip: true, court: 760 });
});
